"""The terminal: what is shown there is what is meant, whatever a spec holds.

No control character reaches it raw, no text is taken for a picture, and a stream that takes
only some characters, or no more of them, is no fault of ours.
"""

from __future__ import annotations

import io
import os
import sys
from contextlib import suppress
from typing import Any, TextIO

from rich.console import Console
from rich.text import Text

from rodwright.problems import printable

OUTPUT_LOST = 74
"""Exit code where what was to be shown can't be: EX_IOERR of BSD's sysexits.h."""


class PlainConsole(Console):
    """A console whose text is its own markup and what can be printed, and nothing else."""

    def __init__(self, **more: Any) -> None:
        super().__init__(highlight=False, emoji=False, **more)

    def render_str(self, text: str, **more: Any) -> Text:
        """Text with its markup read, and what can't be printed made visible."""
        return super().render_str("\n".join(map(printable, text.split("\n"))), **more)

    def on_broken_pipe(self) -> None:
        """Leave quietly: whoever read has read enough."""
        give_up_output()
        raise SystemExit(OUTPUT_LOST)


def say(text: str) -> None:
    """Show text without markup, as it is but for what can't be printed."""
    try:
        print("\n".join(map(printable, text.split("\n"))))
    except BrokenPipeError:
        give_up_output()
        raise SystemExit(OUTPUT_LOST) from None


def take_any_text() -> None:
    """Let the streams replace the characters that they don't know."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")


def give_up_output() -> None:
    """Let nothing more be written to the output, which takes no more."""
    _give_up(sys.stdout)


def give_up_lost_words() -> None:
    """Let nothing more be written to where errors go, if that takes no more."""
    try:
        if sys.stderr is not None:
            sys.stderr.flush()
    except OSError:
        _give_up(sys.stderr)


def _give_up(stream: TextIO) -> None:
    with suppress(OSError, ValueError, AttributeError):
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, stream.fileno())
