"""`rodwright book`: the job book for the bench, as one PDF."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


class Paper(StrEnum):
    """What the book is printed on."""

    A4 = "a4"
    LETTER = "letter"


def book(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    out: Annotated[
        Path, typer.Option("-o", "--out", help="Folder for the files; made if it isn't there.")
    ],
    paper: Annotated[
        Paper | None, typer.Option(help="What you print on; A4 unless said, in inches Letter.")
    ] = None,
    rack: Annotated[
        Path | None,
        typer.Option(help="Your rack file: what is at hand, what you buy, what you cut with."),
    ] = None,
    labels: Annotated[
        str | None,
        typer.Option(help='Sheet of labels: `"63.5 x 38.1"`, `"2 5/8 x 1"`; else the usual.'),
    ] = None,
    json: Json = False,
) -> None:
    """Write the job book as PDF: cautions, what to buy, plans, drawings, steps, lists.  Leaves
    with 1 on an error finding or where no cutting plan can be made."""
    import rodwright
    from rodwright.jobs.rack import read_rack
    from rodwright_cli import show

    at_hand = None if rack is None else read_rack(rack)
    with show.progress() as step:
        made = rodwright.book(
            rodwright.read_spec(spec),
            out,
            paper=None if paper is None else paper.value,
            rack=at_hand,
            labels=labels,
            progress=step,
        )
    if json:
        from rodwright.handover.verbs_json import build_json

        say_json(build_json(made.unit, made.folder, made.files, made.findings))
    else:
        show.sizes(made.unit)
        show.booked(made)
        show.errors(made.findings)
    raise typer.Exit(int(bool(show.exit_code(made.findings) or made.no_plan)))
