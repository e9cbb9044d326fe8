"""Where cuts have to be tried: at sums of lengths, and at no other place."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np

from rodwright.cutting.bounds.dual_feasible import Whole

MOST = 260
"""Places along a side: with more, lengths are rounded down to a coarser step first."""


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

    Whatever fits a side fits it rounded as well, since pieces are rounded down; or, if they
    are rounded ``up``, what fits rounded fits.  ``points`` begin with 0 and end with the whole
    side; each of ``cuts``, which lie in the middle at most, has to be tried once.
    """

    step: int
    up: bool
    points: Whole
    cuts: tuple[Cut, ...]

    @property
    def exact(self) -> bool:
        """Whether nothing was rounded."""
        return self.step == 1

    def length(self, point: int) -> int:
        """How far from 0 a place is."""
        return int(self.points[point]) * self.step

    def within(self, length: int) -> int:
        """The last place that so long a side has, if nothing was rounded up."""
        return int(np.searchsorted(self.points, length // self.step, side="right")) - 1

    def point(self, length: int) -> int:
        """The first place at which a piece so long has room."""
        return int(np.searchsorted(self.points, _rounded(length, self.step, up=self.up)))


def raster(
    lengths: Iterable[tuple[int, int]],
    side: int,
    *,
    most: int = MOST,
    whole: bool = False,
    up: bool = False,
) -> Raster:
    """The raster of a side for some lengths, each with how many there are at most.

    At ``most`` so many places; where that takes rounding it may be ``up``.  Is only the ``whole``
    side asked for, places behind its middle needn't be where pieces end: what cuts before it leave
    will do (G. Scheithauer and J. Terno, The G4-heuristic for the pallet loading problem, Journal
    of the Operational Research Society 47, 1996; from memory).
    """
    wanted = [(length, count) for length, count in lengths if length <= side]
    points = _places(wanted, side, whole=whole)
    step = 1
    if len(points) > most:
        step = -(-side // most)
        rounded = [(_rounded(length, step, up=up), count) for length, count in wanted]
        points = _places(rounded, side // step, whole=whole)
    return Raster(step, up, points, _cuts(points))


def _rounded(length: int, step: int, *, up: bool) -> int:
    return -(-length // step) if up else length // step


def _places(lengths: Sequence[tuple[int, int]], side: int, *, whole: bool) -> Whole:
    sums = _sums(lengths, side)
    if whole:
        near = sums[2 * sums <= side]
        left = sums[np.searchsorted(sums, side - near, side="right") - 1]
        sums = np.union1d(near, left)
    return sums if sums[-1] == side else np.append(sums, side)


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
