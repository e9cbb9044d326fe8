"""`rodwright build`: every file of a unit."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


class PartsKind(StrEnum):
    """What the files of single parts are."""

    CUT = "cut"
    FINISHED = "finished"


def build(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    out: Annotated[
        Path, typer.Option("-o", "--out", help="Folder for the files; made if it isn't there.")
    ],
    pictures: Annotated[
        bool, typer.Option("--pictures/--no-pictures", help="Make the pictures too.")
    ] = True,
    parts: Annotated[
        PartsKind,
        typer.Option(
            help="Single parts and workings as the machine cuts them, or as finished, for a shop "
            "that trims and edges before it bores."
        ),
    ] = PartsKind.CUT,
    json: Json = False,
) -> None:
    """Write solids, lists, the whole model and pictures.  Leaves with 1 on an error finding."""
    import rodwright
    from rodwright_cli import show

    unit = rodwright.set_out(rodwright.read_spec(spec))
    with show.progress() as step:
        made = rodwright.build(unit, out, pictures=pictures, parts=parts.value, progress=step)
    if json:
        from rodwright.handover.verbs_json import build_json

        say_json(build_json(unit, made.folder, made.files, made.findings))
    else:
        show.sizes(unit)
        show.findings(made.findings)
        show.made(unit, made)
    raise typer.Exit(show.exit_code(made.findings))
