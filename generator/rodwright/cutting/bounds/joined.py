"""Rectangles joined from pieces, side by side, as far as a pattern worth enough may hold them.

Bottom-up search for the best of one sheet, as P. Y. Wang builds rectangles (Two algorithms for
constrained two-dimensional cutting stock problems, Operations Research 31, 1983), pruned by what
can be added outside of each (M. Hifi, An improvement of Viswanathan and Bagchi's exact algorithm
for constrained two-dimensional cutting stock, Computers & Operations Research 24, 1997; both from
memory).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from rodwright.cutting.bounds.any_number import Ground
from rodwright.cutting.bounds.dual_feasible import Whole
from rodwright.cutting.bounds.relaxed import Relaxed
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Put

_PAIRS = 200_000
"""Pairs of rectangles looked at in one go, so that memory stays small."""

_KEPT = 100
"""A joined rectangle takes as much effort as so many pairs."""

_FIRST = 1024
"""Rectangles that there is room for at first."""


@dataclass(slots=True)
class Effort:
    """How many pairs of rectangles may still be looked at: by that a search ends, not by time."""

    pairs: int


class _Origin(NamedTuple):
    """Where a rectangle comes from: a way of a piece, or two others joined along or across."""

    way: int = -1
    first: int = -1
    second: int = -1
    axis: int = 0


class Joined:
    """All rectangles that a pattern worth ``target`` or more may be joined from.

    ``best`` is the value of the best one so far, whether it is as much or not.  Unless it is
    ``rising``, the target stays where it is, so that all patterns are found, however much better
    ones are known.
    """

    def __init__(
        self,
        on: Ground,
        values: Sequence[int],
        counts: Sequence[int],
        relaxed: Sequence[Relaxed],
        *,
        rising: bool = True,
    ) -> None:
        self.best = 0
        self.target = 1
        self._rising = rising
        self._on = on
        self._values = np.array(values, dtype=np.int64)
        self._counts = np.array(counts, dtype=np.int32)
        self._relaxed = relaxed
        self._best_at = -1
        self._number = 0
        self._sides = np.zeros((2, _FIRST), dtype=np.int64)
        self._worth = np.zeros((1 + len(relaxed), _FIRST), dtype=np.int64)
        self._holds = np.zeros((_FIRST, len(counts)), dtype=np.int32)
        self._origin: list[_Origin] = []
        self._seen: dict[bytes, list[tuple[int, int]]] = {}

    def search(self, target: int, effort: Effort, patience: Patience) -> bool:
        """Join all there are that may lead to a target, or beyond what is found by then.

        Whether it came to its end, so that nothing is worth more than what was found, or
        as much as the target.
        """
        self.target = target
        self._pieces()
        done = 0
        while done < self._number:
            upto = min(self._number, done + max(1, _PAIRS // self._number))
            effort.pairs -= (upto - done) * upto
            if effort.pairs < 0 or patience.over():
                return False
            for axis in (0, 1):
                effort.pairs -= _KEPT * self._join(done, upto, axis)
            done = upto
        return True

    def patterns(self, least: int) -> Iterator[tuple[Put, ...]]:
        """All that are worth so much, one for each set of pieces."""
        sets: set[bytes] = set()
        for at in np.flatnonzero(self._worth[0, : self._number] >= least).tolist():
            held = self._holds[at].tobytes()
            if held not in sets:
                sets.add(held)
                yield self.puts(at)

    def puts(self, at: int | None = None) -> tuple[Put, ...]:
        """One of them piece by piece, or the best."""
        found: list[Put] = []
        begin = self._best_at if at is None else at
        left = [(begin, 0, 0)] if begin >= 0 else []
        while left:
            at, x, y = left.pop()
            origin = self._origin[at]
            if origin.way >= 0:
                found.append(Put(self._on.size[origin.way], x, y, self._on.turned[origin.way]))
                continue
            moved = int(self._sides[origin.axis, origin.first])
            left.append((origin.first, x, y))
            left.append((origin.second, x + moved * (not origin.axis), y + moved * origin.axis))
        return tuple(found)

    def _pieces(self) -> None:
        """Begin with single pieces."""
        on = self._on
        sides = np.stack((on.length, on.width))
        holds = np.zeros((len(on.size), len(self._counts)), dtype=np.int32)
        holds[np.arange(len(on.size)), on.size] = 1
        worth = np.stack([self._values, *(each.reduced for each in self._relaxed)])[:, on.size]
        for way in np.flatnonzero(self._enough(sides, worth)).tolist():
            self._add(sides[:, way], worth[:, way], holds[way], _Origin(way=way))

    def _join(self, low: int, high: int, axis: int) -> int:
        """Join those from ``low`` on with all before ``high``, along the sheet (0) or across; how
        many came of it."""
        limit = (self._on.sheet.length, self._on.sheet.width)[axis]
        lie = self._sides[axis, :high]
        fit = np.add.outer(lie[low:], lie) <= limit
        one, other = np.nonzero(np.tril(fit, low))
        one += low
        sides = np.empty((2, len(one)), dtype=np.int64)
        sides[axis] = lie[one] + lie[other]
        across = self._sides[1 - axis]
        sides[1 - axis] = np.maximum(across[one], across[other])
        worth = self._worth[:, one] + self._worth[:, other]
        good = np.flatnonzero(self._enough(sides, worth))
        holds = self._holds[one[good]] + self._holds[other[good]]
        there = (holds <= self._counts).all(axis=1)
        for at, held in zip(good[there].tolist(), holds[there], strict=True):
            origin = _Origin(first=int(one[at]), second=int(other[at]), axis=axis)
            self._add(sides[:, at], worth[:, at], held, origin)
        return int(there.sum())

    def _enough(self, sides: Whole, worth: Whole) -> NDArray[np.bool_]:
        """Which rectangles may be in a pattern that is worth the target."""
        on = self._on
        along = np.searchsorted(on.along.points, sides[0] // on.along.step, side="right") - 1
        across = np.searchsorted(on.across.points, sides[1] // on.across.step, side="right") - 1
        enough = np.ones(len(along), dtype=np.bool_)
        for each, reduced in zip(self._relaxed, worth[1:], strict=True):
            enough &= reduced + each.outside[along, across] + each.extra >= self.target
        return enough

    def _add(self, sides: Whole, worth: Whole, holds: NDArray[np.int32], origin: _Origin) -> None:
        length, width = int(sides[0]), int(sides[1])
        alike = self._seen.setdefault(holds.tobytes(), [])
        if any(x <= length and y <= width for x, y in alike):
            return
        alike.append((length, width))
        if self._number == len(self._holds):
            self._grow()
        at = self._number
        self._sides[:, at], self._worth[:, at], self._holds[at] = sides, worth, holds
        self._origin.append(origin)
        self._number += 1
        if worth[0] > self.best:
            self.best, self._best_at = int(worth[0]), at
            if self._rising:
                self.target = max(self.target, self.best + 1)

    def _grow(self) -> None:
        self._sides = np.concatenate((self._sides, np.zeros_like(self._sides)), axis=1)
        self._worth = np.concatenate((self._worth, np.zeros_like(self._worth)), axis=1)
        self._holds = np.concatenate((self._holds, np.zeros_like(self._holds)), axis=0)
