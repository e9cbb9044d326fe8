"""`rodwright rack`: what stands in the maker's rack, and what a plan takes out of it."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say
from rodwright_cli.json_out import Json, say_json


class Action(StrEnum):
    """What is done with a rack."""

    SHOW = "show"
    TAKE = "take"
    NEW = "new"


def rack(
    action: Annotated[
        Action,
        typer.Argument(
            help="`show` what is in a rack file, `take` out of it what a plan cut, or write a "
            "`new` one to start from."
        ),
    ],
    file: Annotated[
        Path, typer.Argument(help="The rack file; to take, the plan's `cut.json`.")
    ] = Path("rack.yaml"),
    rack: Annotated[
        Path | None,
        typer.Option("--rack", help="To take: the rack file, if it was moved since the plan."),
    ] = None,
    json: Json = False,
) -> None:
    """Your own rack: what is there, and what is left after cutting.

    `take` counts down what was cut, writes next month's offcuts in under the names on their labels,
    and keeps your comments.  No plan is taken twice, nor one whose stock was used or changed since.
    """
    if rack is not None and action is not Action.TAKE:
        raise typer.BadParameter("it goes with `take` alone", param_hint="--rack")
    if action is Action.SHOW:
        _show(file, json)
    elif action is Action.TAKE:
        _take(file, rack, json)
    else:
        _new(file, json)


def _show(file: Path, json: bool) -> None:
    from rodwright.jobs.rack import read_rack

    found = read_rack(file)
    if json:
        from rodwright.handover.rack_list import rack_json

        say_json(rack_json(found))
        return
    from rodwright_cli import show_rack

    show_rack.rack(found)


def _take(plan: Path, rack: Path | None, json: bool) -> None:
    from rodwright.jobs.rack import take_from_rack

    taken = take_from_rack(plan, rack)
    if json:
        from rodwright.handover.rack_list import taken_json

        say_json(taken_json(str(taken.rack), taken.plan, taken.used, taken.left, taken.came))
        return
    from rodwright_cli import show_rack

    show_rack.taken(taken)


def _new(file: Path, json: bool) -> None:
    from rodwright.jobs.rack import new_rack

    new_rack(file)
    if json:
        from rodwright.handover.json_text import json_text

        say_json(json_text({"file": str(file)}))
        return
    say(f"{file} is ready: put your own stock in, then run  rodwright rack show {file}")
