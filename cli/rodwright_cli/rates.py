"""`rodwright rates`: a rates file to start from, and what one says."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say
from rodwright_cli.json_out import Json, say_json


class Action(StrEnum):
    """What is done with rates."""

    NEW = "new"
    CHECK = "check"


def rates(
    action: Annotated[
        Action,
        typer.Argument(
            help="Write a `new` rates file to start from, or `check` that one can be read."
        ),
    ],
    file: Annotated[Path, typer.Argument(help="The rates file.")] = Path("rates.yaml"),
    currency: Annotated[
        str, typer.Option("--currency", help="Of a new file: a code of ISO 4217.")
    ] = "EUR",
    inches: Annotated[
        bool,
        typer.Option("--inches", help="Of a new file: minutes and prices by feet and pounds."),
    ] = False,
    json: Json = False,
) -> None:
    """Your own rates, for `quote`: an hour of work, minutes, prices, overhead, margin, tax.

    Every figure of a new file is invented; put your own in before anybody is sent a price.
    """
    from rodwright.jobs.rates import new_rates, read_rates

    if action is Action.NEW:
        new_rates(file, currency, inches=inches)
    found = read_rates(file)
    if json:
        from rodwright.handover.json_text import json_text
        from rodwright.quote.quote_json import rates_document

        say_json(json_text({"file": str(file), **rates_document(found)}))
    elif action is Action.NEW:
        say(
            f"{file} is ready, and every figure in it is invented: put your own in, then run  "
            f"rodwright rates check {file}"
        )
    else:
        say(
            f"{file} can be read: {len(found.minutes)} operations and {len(found.prices)} prices, "
            f"in {found.currency}."
        )
