"""`rodwright look`: the unit on a page that follows its spec file."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from rodwright_cli.console import say


def look(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    port: Annotated[
        int, typer.Option(min=0, max=65535, help="The port it is served at; if not, a free one.")
    ] = 0,
    open_browser: Annotated[
        bool, typer.Option("--open/--no-open", help="Whether a browser is opened.")
    ] = True,
) -> None:
    """See the unit in a browser while its spec is written: the page follows the file as saved.

    Ends with Ctrl+C.
    """
    import webbrowser

    from rodwright.jobs.look import look as serve

    def ready(address: str) -> None:
        say(address)
        if open_browser:
            webbrowser.open(address)

    serve(spec, port=port, ready=ready)
