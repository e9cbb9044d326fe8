"""`rodwright look`: the unit on a page that follows its spec file."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from rodwright_cli.console import say

if TYPE_CHECKING:
    from rodwright.jobs.look import Reading, Served


def look(
    spec: Annotated[Path, typer.Argument(help="The spec file.")],
    port: Annotated[
        int, typer.Option(min=0, max=65535, help="The port it is served at; if not, a free one.")
    ] = 0,
    host: Annotated[
        str,
        typer.Option(
            metavar="ADDRESS",
            help="Serve it at this address of the machine, for others to see and change too "
            "(`0.0.0.0`: at all of them).",
        ),
    ] = "127.0.0.1",
    open_browser: Annotated[
        bool, typer.Option("--open/--no-open", help="Whether a browser is opened.")
    ] = True,
) -> None:
    """See the unit in a browser while its spec is written: the page follows the file as saved.

    Ends with Ctrl+C.
    """
    from rodwright.jobs.look import look as serve

    def ready(served: Served) -> None:
        for address in served.addresses:
            _say(address)
        if not served.loopback:
            _say(
                "  Others on the network can come to it: whoever has an address above sees the "
                "unit and can\n"
                "  change its figures. Only the long word in it keeps others out, and what is sent "
                "isn't\n"
                "  encrypted: give it to those you trust. Without --host this machine alone has it."
            )
        if open_browser:
            _open(served.addresses[0])
        _say(f"Following {spec}; Ctrl+C ends it.")

    serve(spec, host=host, port=port, ready=ready, read=_say_reading)


def _say_reading(reading: Reading) -> None:
    from datetime import datetime

    now = f"{datetime.now():%H:%M:%S}"
    if not reading.troubles:
        _say(f"{now}  {reading.parts} parts, {reading.seconds:.2f} s")
        return
    count = len(reading.troubles)
    _say(f"{now}  makes no unit: {count} {'thing is' if count == 1 else 'things are'} wrong")
    for each in reading.troubles:
        place = f"line {each.line}, column {each.column}: " if each.line is not None else ""
        _say(f"  {place}{each.message}\n    {each.remedy}")


def _open(address: str) -> None:
    """Have a browser show the page; where there is none, say what to do."""
    import threading

    def start() -> None:
        import webbrowser

        try:
            opened = webbrowser.open(address)
        except (webbrowser.Error, OSError):
            opened = False
        if not opened:
            _say("No browser could be started: open this address in one.")

    if _has_screen():
        # Some browsers are waited for until they end.
        threading.Thread(target=start, daemon=True).start()
    else:
        _say("There is no screen to open a browser on: open this address in one.")


def _has_screen() -> bool:
    """Whether a browser with windows can be opened; one for terminals would take this one over."""
    import os
    import sys

    if sys.platform in {"win32", "darwin"}:
        return True
    return any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY", "BROWSER"))


def _say(text: str) -> None:
    """Show text at once: the command goes on for hours."""
    import sys

    say(text)
    sys.stdout.flush()
