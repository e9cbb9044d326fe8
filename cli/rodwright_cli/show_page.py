"""A page to send on the terminal: where it is, and what it lacks."""

from __future__ import annotations

from rich.markup import escape

from rodwright.jobs.page import PAGE, Sent
from rodwright_cli.console import PlainConsole


def written(made: Sent) -> None:
    """Where the files are, and why there is no photograph although one is wanted."""
    console = PlainConsole()
    if made.no_photograph:
        console.print(f"[yellow]no photograph[/yellow] {escape(made.no_photograph)}")
    page = escape(str(made.folder / PAGE))
    console.print(f"{page} is for the client: one file that works from disk, without a network.")
    console.print(
        "page.glb and page.usdz beside it place the unit in a room, with a phone or a viewer."
    )
