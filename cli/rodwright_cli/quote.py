"""`rodwright quote`: the quote for the client, and what it is made up of for the maker."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


class Paper(StrEnum):
    """What the quote is printed on."""

    A4 = "a4"
    LETTER = "letter"


def quote(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    rates: Annotated[
        Path,
        typer.Option(help="Your rates file; `rodwright rates new` starts one."),
    ],
    out: Annotated[
        Path, typer.Option("-o", "--out", help="Folder for the files; made if it isn't there.")
    ],
    rack: Annotated[
        Path | None,
        typer.Option(help="Your rack file: what is at hand, what you buy, what you cut with."),
    ] = None,
    photograph: Annotated[
        bool,
        typer.Option(
            "--photograph/--no-photograph",
            help="Show it by the photograph in the folder, or by one made now; else drawn.",
        ),
    ] = True,
    paper: Annotated[
        Paper | None, typer.Option(help="What you print on; A4 unless said, in inches Letter.")
    ] = None,
    json: Json = False,
) -> None:
    """Write the quote: a PDF for the client, the costing for you.  Leaves with 1 on an error
    finding or where a price is missing: then it is marked as a draft."""
    import rodwright
    from rodwright.jobs.rack import read_rack
    from rodwright.jobs.rates import read_rates
    from rodwright_cli import show, show_quote

    asked, at_hand = read_rates(rates), None if rack is None else read_rack(rack)
    with show.progress() as step:
        made = rodwright.quote_for(
            rodwright.read_spec(spec),
            asked,
            out,
            rack=at_hand,
            pictures="photographs" if photograph else "drawings",
            paper=None if paper is None else paper.value,
            progress=step,
        )
    if json:
        from rodwright.jobs.quote import quoted_json

        say_json(quoted_json(made))
    else:
        show_quote.quoted(made)
        show.errors(made.findings)
    raise typer.Exit(int(bool(show.exit_code(made.findings) or made.missing)))
