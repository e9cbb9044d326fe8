"""`rodwright render`: photographs of the unit in a room."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


def render(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    out: Annotated[
        Path, typer.Option("-o", "--out", help="Folder for the files; made if it isn't there.")
    ],
    draft: Annotated[bool, typer.Option(help="Small and rough, in seconds.")] = False,
    seed: Annotated[int, typer.Option(help="Another number cuts the boards from other logs.")] = 0,
    json: Json = False,
) -> None:
    """Photograph the unit in a room: closed, open, taken apart."""
    import rodwright
    from rodwright_cli import show

    with show.progress() as step:
        made = rodwright.render(
            rodwright.read_spec(spec),
            out,
            grade="draft" if draft else "usual",
            seed=seed,
            progress=step,
        )
    if json:
        from rodwright.handover.verbs_json import build_json

        say_json(build_json(made.unit, made.folder, made.files, ()))
    else:
        show.sizes(made.unit)
