"""`rodwright page`: the unit as one HTML file to send."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say


def page(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    out: Annotated[
        Path, typer.Option("-o", "--out", help="Folder for the files; made if it isn't there.")
    ],
) -> None:
    """Write one HTML file to send: the unit to turn, open and take apart in any browser."""
    import rodwright

    say(str(rodwright.page_for(rodwright.read_spec(spec), out)))
