"""`rodwright page`: the unit as one HTML file to send."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.json_out import Json, say_json


def page(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    out: Annotated[
        Path, typer.Option("-o", "--out", help="Folder for the files; made if it isn't there.")
    ],
    photograph: Annotated[
        bool,
        typer.Option(
            "--photograph/--no-photograph",
            help="With the photographs in the folder, and if there is none, one made now.",
        ),
    ] = True,
    json: Json = False,
) -> None:
    """Write one HTML file to send: the unit to turn, open and take apart in any browser.

    Leaves with 1 on an error finding: then the page says that it is a draft.
    """
    import rodwright
    from rodwright_cli import show, show_page

    with show.progress() as step:
        made = rodwright.write_page(
            rodwright.read_spec(spec), out, photographs=photograph, progress=step
        )
    if json:
        from rodwright.handover.verbs_json import page_json

        say_json(page_json(made.unit, made.folder, made.files, made.findings, made.no_photograph))
    else:
        show_page.written(made)
        show.errors(made.findings)
    raise typer.Exit(show.exit_code(made.findings))
