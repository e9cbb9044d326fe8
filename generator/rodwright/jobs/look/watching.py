"""A file watched: what stands in it now, whatever becomes of it."""

from __future__ import annotations

import asyncio
import stat
from dataclasses import dataclass
from pathlib import Path
from time import monotonic

from rodwright.problems import Problem, ProblemsError
from rodwright.wishes.reading.documents import read_content

_OFTEN = 0.03
"""Seconds from one look at the file to the next."""
_SETTLED = 3.0
"""Seconds after which a file that looks the same holds the same: some disks tell times to two
seconds, so within them it is read again."""


@dataclass(frozen=True, slots=True)
class Seen:
    """What was found where the file is: its content, or why there is none."""

    content: bytes | None
    problems: tuple[Problem, ...] = ()


class Watched:
    """A file that is looked at again and again.

    The file is asked, rather than the system asked for word of its folder: that holds on network
    disks, through links, and when the folder itself is taken away and comes back.
    """

    def __init__(self, path: Path) -> None:
        """Look at the file for the first time."""
        self._path = path
        self._mark, self._since = _mark(path), monotonic()
        self.seen = _look(path)

    async def change(self) -> Seen:
        """Wait until something else is found there than was last."""
        while True:
            await asyncio.sleep(_OFTEN)
            mark = _mark(self._path)
            if mark != self._mark:
                self._mark, self._since = mark, monotonic()
            elif monotonic() - self._since > _SETTLED:
                continue
            now = _look(self._path)
            if now != self.seen:
                self.seen = now
                return now


def is_file(path: Path) -> bool:
    """Whether a plain file, which can be read again and again, is there."""
    try:
        return stat.S_ISREG(path.stat().st_mode)
    except (OSError, ValueError):
        return False


def _mark(path: Path) -> tuple[int, ...]:
    """What differs when a file does, without reading it; empty where there is none."""
    try:
        there = path.stat()
    except (OSError, ValueError):
        return ()
    return (there.st_dev, there.st_ino, there.st_mode, there.st_size, there.st_mtime_ns)


def _look(path: Path) -> Seen:
    try:
        return Seen(read_content(path))
    except ProblemsError as error:
        return Seen(None, error.problems)
