"""Ctrl-C while something searches: the first ends the search, the second the command."""

from __future__ import annotations

import signal
import sys
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from types import FrameType

INTERRUPTED = 130
"""Exit code after a second Ctrl-C: 128 and the number of the signal, as shells have it."""


@contextmanager
def first_stops(stop: Callable[[], None]) -> Iterator[None]:
    """Within, the first Ctrl-C calls ``stop`` and a second one leaves at once."""
    if threading.current_thread() is not threading.main_thread():
        yield  # signals come to the main thread alone
        return
    pressed = False

    def on_signal(_number: int, _frame: FrameType | None) -> None:
        nonlocal pressed
        if pressed:
            raise SystemExit(INTERRUPTED)
        pressed = True
        stop()
        with suppress(OSError, RuntimeError):
            print(
                "\nStopping: the best plan so far is taken. Ctrl-C again leaves without one.",
                file=sys.stderr,
                flush=True,
            )

    before = signal.signal(signal.SIGINT, on_signal)
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)
