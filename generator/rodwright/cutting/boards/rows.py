"""The best rows of pieces on strips of every length."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from rodwright.cutting.boards import knapsack
from rodwright.cutting.boards.knapsack import Wholes
from rodwright.cutting.boards.problem import BoardProblem, Item
from rodwright.cutting.boards.slants import required


class Rows:
    """What rows of some items are worth at most, and rows that are worth it, or nearly.

    Slanted ends are counted as if each of them faced one that is equal: half of what that saves
    is taken off its piece.  The row's two outer ends save nothing; where all slanted pieces are
    slanted at both ends, that is at least one saving less.  So the worth is never too little; it
    is what a row has if all slanted ends are equal.
    """

    def __init__(
        self,
        problem: BoardProblem,
        items: Sequence[int],
        values: Sequence[int],
        counts: Sequence[int],
        capacity: int,
    ) -> None:
        self._problem, self._counts = problem, counts
        held = [problem.items[item] for item in items]
        halves = [sum(_savings(problem, each)) // 2 for each in held]
        self._items = list(items)
        self._sizes = [each.length - half for each, half in zip(held, halves, strict=True)]
        self._values = [values[item] for item in items]
        bounds = [counts[item] for item in items]
        self._all = knapsack.solve(self._sizes, self._values, bounds, capacity)
        slanted = [each for each in held if each.slanted]
        self._charge = 0
        if slanted and all(min(each.slants) for each in slanted):
            self._charge = min(saving for each in slanted for saving in _savings(problem, each))
        self._square = self._all
        if self._charge:
            plain = [0 if e.slanted else v for e, v in zip(held, self._values, strict=True)]
            self._square = knapsack.solve(self._sizes, plain, bounds, capacity)

    def values(self, capacities: Wholes) -> Wholes:
        """What rows of these lengths (with the kerf) are worth at most."""
        if not self._charge:
            return self._all.values(capacities)
        askew = self._all.values(np.maximum(capacities - self._charge, 0))
        return np.maximum(askew, self._square.values(capacities))

    def steps(self) -> Wholes:
        """The lengths at which a row becomes worth more."""
        if not self._charge:
            return self._all.steps()
        return np.union1d(self._square.steps(), self._all.steps() + self._charge)

    def fill(self, capacity: int) -> tuple[int, ...]:
        """A row on this length that is worth most, or nearly so."""
        if not self._charge:
            return self._fitting(self._all.fill(capacity), capacity)
        here = np.array([capacity, max(capacity - self._charge, 0)])
        if self._square.values(here)[0] >= self._all.values(here)[1]:
            return self._fitting(self._square.fill(capacity), capacity)
        return self._fitting(self._all.fill(int(here[1])), capacity)

    def others(self, capacity: int, least: int, most: int) -> Iterator[tuple[int, ...]]:
        """More good rows on this length: the best with one item or another in it, if they are worth
        more than ``least``; so many at most."""
        if self._charge or not self._items:
            return
        sizes, values = np.array(self._sizes), np.array(self._values)
        beside = np.where(sizes <= capacity, capacity - sizes, 0)
        worth = np.where(sizes <= capacity, self._all.values(beside) + values, 0)
        worth[values <= 0] = 0
        found = 0
        for place in np.argsort(-worth, kind="stable"):
            if worth[place] <= least or found == most:
                return
            counts = self._all.fill(int(beside[place]))
            if counts[place] < self._counts[self._items[place]]:
                counts[place] += 1
                found += 1
                yield self._fitting(counts, capacity)

    def _fitting(self, counts: Sequence[int], capacity: int) -> tuple[int, ...]:
        """The items as a row; if their ends don't pair as was counted, less what is too much."""
        row = [item for item, n in zip(self._items, counts, strict=True) for _ in range(n)]
        while row and self._problem.joints and required(self._problem, row) > capacity:
            row.remove(min(row, key=self._rate))
        return tuple(row)

    def _rate(self, item: int) -> float:
        place = self._items.index(item)
        return self._values[place] / self._sizes[place]


def _savings(problem: BoardProblem, item: Item) -> tuple[int, int]:
    """What each end saves together with one that is equal."""
    near, far = item.slants
    return problem.saving(item.width, near, near), problem.saving(item.width, far, far)
