"""The most that goes into each capacity: the bounded knapsack problem, solved to the end.

In whole numbers throughout.  The method is Bellman's recursion (R. Bellman, Dynamic Programming,
Princeton 1957), with copies of an item taken in ones, twos, fours and so on (S. Martello,
P. Toth, Knapsack Problems, Wiley 1990, section 3.2).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

Wholes = NDArray[np.int64]
_DENSE = 400_000
"""Up to this capacity every one is worked out; above, only those at which there is more."""


class Knapsack(Protocol):
    """What the best fill of any capacity up to the greatest is worth, and what is in it."""

    def values(self, capacities: Wholes) -> Wholes:
        """What the best fills of some capacities are worth."""

    def fill(self, capacity: int) -> list[int]:
        """How many of each item are in the best fill of a capacity."""

    def steps(self) -> Wholes:
        """The capacities at which the best fill becomes worth more, from the least on."""


def solve(
    sizes: Sequence[int], values: Sequence[int], counts: Sequence[int], capacity: int
) -> Knapsack:
    """Solve for all capacities up to one; items of no value aren't taken."""
    chunks = list(_chunks(sizes, values, counts, capacity))
    if capacity <= _DENSE:
        return _Dense(chunks, len(sizes), capacity)
    return _Sparse(chunks, len(sizes), capacity)


def _chunks(
    sizes: Sequence[int], values: Sequence[int], counts: Sequence[int], capacity: int
) -> Iterator[tuple[int, int, int, int]]:
    """(item, copies, size, value), so that any number of an item is a sum of its chunks."""
    for item, (size, value, count) in enumerate(zip(sizes, values, counts, strict=True)):
        left, copies = min(count, capacity // size), 1
        while left > 0 and value > 0:
            many = min(copies, left)
            yield item, many, many * size, many * value
            left, copies = left - many, 2 * copies


class _Dense:
    def __init__(self, chunks: list[tuple[int, int, int, int]], items: int, capacity: int) -> None:
        self._chunks, self._items = chunks, items
        best = np.zeros(capacity + 1, np.int64)
        self._taken = np.zeros((len(chunks), capacity + 1), bool)
        for taken, (_, _, size, value) in zip(self._taken, chunks, strict=True):
            more = best[: capacity + 1 - size] + value
            np.greater(more, best[size:], out=taken[size:])
            np.maximum(more, best[size:], out=best[size:])
        self._best = best

    def values(self, capacities: Wholes) -> Wholes:
        found: Wholes = self._best[capacities]
        return found

    def fill(self, capacity: int) -> list[int]:
        counts = [0] * self._items
        for row in range(len(self._chunks) - 1, -1, -1):
            if self._taken[row, capacity]:
                item, many, size, _ = self._chunks[row]
                counts[item] += many
                capacity -= size
        return counts

    def steps(self) -> Wholes:
        return np.flatnonzero(np.diff(self._best)) + 1


class _Sparse:
    """Only the capacities at which the best fill becomes worth more (Pareto's frontier)."""

    def __init__(self, chunks: list[tuple[int, int, int, int]], items: int, capacity: int) -> None:
        self._chunks, self._items = chunks, items
        sizes, values = np.zeros(1, np.int64), np.zeros(1, np.int64)
        self._stages = [(sizes, values)]
        for _, _, size, value in chunks:
            within = int(np.searchsorted(sizes, capacity - size, side="right"))
            sizes = np.concatenate((sizes, sizes[:within] + size))
            values = np.concatenate((values, values[:within] + value))
            order = np.lexsort((-values, sizes))
            sizes, values = sizes[order], values[order]
            before = np.maximum.accumulate(values)
            better = np.concatenate(([True], values[1:] > before[:-1]))
            sizes, values = sizes[better], values[better]
            self._stages.append((sizes, values))

    def values(self, capacities: Wholes) -> Wholes:
        sizes, values = self._stages[-1]
        found: Wholes = values[np.searchsorted(sizes, capacities, side="right") - 1]
        return found

    def fill(self, capacity: int) -> list[int]:
        counts = [0] * self._items
        value = self._value(len(self._chunks), capacity)
        for stage in range(len(self._chunks), 0, -1):
            if self._value(stage - 1, capacity) < value:
                item, many, size, worth = self._chunks[stage - 1]
                counts[item] += many
                capacity, value = capacity - size, value - worth
        return counts

    def steps(self) -> Wholes:
        return self._stages[-1][0][1:]

    def _value(self, stage: int, capacity: int) -> int:
        sizes, values = self._stages[stage]
        return int(values[np.searchsorted(sizes, capacity, side="right") - 1])
