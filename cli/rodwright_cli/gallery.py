"""`rodwright gallery`: pictures of every ready model."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say


def gallery(
    out: Annotated[Path, typer.Argument(help="Folder for pictures and their page.")] = Path(
        "gallery"
    ),
) -> None:
    """Make the pictures of every ready model, and a page that shows them."""
    from rodwright.jobs.gallery import write_gallery
    from rodwright_cli import show

    with show.progress() as step:
        page = write_gallery(out, step)
    say(f"The gallery is in {page}")
