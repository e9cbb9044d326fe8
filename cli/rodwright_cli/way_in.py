"""`rodwright way-in`: can it be carried in, stood up, and put into its place?"""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say
from rodwright_cli.json_out import Json, say_json


def way_in(
    spec: Annotated[Path, typer.Argument(help="The spec file, with a `way_in`.")],
    out: Annotated[
        Path | None,
        typer.Option("-o", "--out", help="Folder for pictures of every step; none unless given."),
    ] = None,
    json: Json = False,
) -> None:
    """Work out the way in: every step, what is short, and what would help.  1 if it doesn't go."""
    import rodwright
    from rodwright_cli import show

    read = rodwright.read_spec(spec)
    unit = rodwright.set_out(read)
    with read.located(), show.progress() as step:
        step("looking for a way in")
        answer = rodwright.way_in(unit)
        files = rodwright.write_way_in(answer, out) if out is not None else ()
    if json:
        from rodwright.handover.way_in_json import way_in_json

        say_json(way_in_json(answer))
    else:
        show.way_in(answer)
        if out is not None:
            say(f"{len(files)} files in {out}.")
    raise typer.Exit(int(not answer.goes))
