"""`rodwright parts`: the parts list on the terminal."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer


def parts(spec: Annotated[Path, typer.Argument(help="The spec file.")]) -> None:
    """Show the parts list."""
    import rodwright
    from rodwright_cli import show

    unit = rodwright.set_out(rodwright.read_spec(spec))
    show.parts(unit)
    show.errors(rodwright.check(unit))
