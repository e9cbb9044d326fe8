"""Where cuts have to be tried: at sums of lengths, and at no other place."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np

from rodwright.cutting.bounds.dual_feasible import Whole

_MOST = 260
"""Places along a side at most: with more, lengths are rounded down to a coarser step first."""


@dataclass(frozen=True, slots=True)
class Cut:
    """A cut at point ``at``: pieces of ``first`` points and more are divided by it, and what is
    left of them beyond the cut are those of ``rest``."""

    at: int
    first: int
    rest: Whole | slice


@dataclass(frozen=True, slots=True)
class Raster:
    """The places along a side, in whole steps of ``step`` (1 where nothing was rounded).

    Whatever fits a side fits it rounded as well: pieces are rounded down.  ``points`` begin with 0
    and end with the whole side; ``cuts`` are those that divide the side unequally or in the
    middle, each to be tried once.
    """

    step: int
    points: Whole
    cuts: tuple[Cut, ...]

    @property
    def exact(self) -> bool:
        """Whether nothing was rounded."""
        return self.step == 1

    def point(self, length: int) -> int:
        """The first place at which a piece so long has room."""
        return int(np.searchsorted(self.points, length // self.step))

    def below(self, length: int) -> int:
        """The last place within so long a side."""
        return int(np.searchsorted(self.points, length // self.step, side="right")) - 1


def raster(lengths: Iterable[tuple[int, int]], side: int) -> Raster:
    """The raster of a side for some lengths, each with how many there are at most."""
    wanted = [(length, count) for length, count in lengths if length <= side]
    points = _sums(wanted, side)
    step = 1
    if len(points) > _MOST:
        step = -(-side // _MOST)
        points = _sums([(length // step, count) for length, count in wanted], side // step)
    if points[-1] != side // step:
        points = np.append(points, side // step)
    return Raster(step, points, _cuts(points))


def _sums(lengths: Sequence[tuple[int, int]], side: int) -> Whole:
    """All sums up to a side of at most so many of each length, with 0."""
    sums = 1
    mask = (1 << side + 1) - 1
    for length, count in lengths:
        left, step = min(count, side // length if length else 0), 1
        while left:
            step = min(step, left)
            sums |= sums << length * step & mask
            left -= step
            step *= 2
    bits = np.frombuffer(sums.to_bytes(side // 8 + 1, "little"), np.uint8)
    return np.flatnonzero(np.unpackbits(bits, bitorder="little"))


def _cuts(points: Whole) -> tuple[Cut, ...]:
    cuts = []
    for at, where in enumerate(points[1:-1].tolist(), start=1):
        first = int(np.searchsorted(points, 2 * where))
        if first == len(points):
            break
        rest = np.searchsorted(points, points[first:] - where, side="right") - 1
        if rest[-1] - rest[0] == len(rest) - 1 and (np.diff(rest) == 1).all():
            cuts.append(Cut(at, first, slice(int(rest[0]), int(rest[-1]) + 1)))
        else:
            cuts.append(Cut(at, first, rest))
    return tuple(cuts)
