"""`rodwright render`: photographs of the unit in a room."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say
from rodwright_cli.json_out import Json, say_json


class Shown(StrEnum):
    """What there is to photograph."""

    CLOSED = "closed"
    OPEN = "open"
    APART = "apart"
    OPTIONS = "options"
    TURNTABLE = "turntable"
    BUILD_UP = "build-up"


def render(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    out: Annotated[
        Path, typer.Option("-o", "--out", help="Folder for the files; made if it isn't there.")
    ],
    of: Annotated[
        list[Shown] | None,
        typer.Option(
            help="What to photograph; may be given again. If not: closed, open, apart. Options "
            "stand side by side; turntable and build-up move."
        ),
    ] = None,
    draft: Annotated[bool, typer.Option("--draft", help="Small and rough, in seconds.")] = False,
    fine: Annotated[bool, typer.Option("--fine", help="Large and clean, in minutes.")] = False,
    contents: Annotated[
        bool, typer.Option("--contents", help="With what it is to carry: books, jars, boxes.")
    ] = False,
    size: Annotated[
        int | None, typer.Option(min=64, max=8000, help="The longer side, in pixels.")
    ] = None,
    seed: Annotated[
        int, typer.Option(min=0, help="Another number cuts the boards from other logs.")
    ] = 0,
    json: Json = False,
) -> None:
    """Photograph the unit in a room: closed, open, taken apart; its options; moving pictures.

    Leaves with 1 on an error finding.
    """
    import rodwright
    from rodwright_cli import show

    if draft and fine:
        raise typer.BadParameter("a picture is a draft or fine, not both")
    with show.progress() as step:
        made = rodwright.render(
            rodwright.read_spec(spec),
            out,
            pictures=[each.value for each in of or ()],
            grade="draft" if draft else "fine" if fine else "usual",
            contents=contents,
            size=size,
            seed=seed,
            progress=step,
        )
    if json:
        from rodwright.handover.verbs_json import build_json

        say_json(build_json(made.unit, made.folder, made.files, made.findings))
    else:
        show.errors(made.findings)
        for name in made.files:
            say(str(made.folder / name))
    raise typer.Exit(show.exit_code(made.findings))
