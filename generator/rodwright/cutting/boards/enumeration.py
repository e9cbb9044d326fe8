"""All fills of a capacity that are worth so much."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from rodwright.cutting.boards.knapsack import Wholes

_CELLS = 25_000_000
"""Up to this size a table of the best fills with the last few items is made."""

Fill = tuple[tuple[int, int], ...]
"""Items by their places, and how many of each."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """Items, what they are worth, and how many there may be of each, in one order throughout."""

    sizes: Wholes
    values: Wholes
    counts: Wholes

    @staticmethod
    def of(sizes: Sequence[int], values: Sequence[int], counts: Sequence[int]) -> Wanted:
        """Those items."""
        return Wanted(*(np.array(each, np.int64) for each in (sizes, values, counts)))


@dataclass(slots=True)
class Fills:
    """Finds the fills by going through the items in their order, and back where what is left
    can't be worth enough.  Gives up after so many ``steps``."""

    items: Wanted
    capacity: int
    steps: int
    _best: NDArray[np.int64] = field(init=False)
    _rates: NDArray[np.float64] = field(init=False)

    def __post_init__(self) -> None:
        sizes, values = self.items.sizes, self.items.values
        rates = values / sizes
        self._rates = np.maximum.accumulate(rates[::-1])[::-1]
        cells = (len(sizes) + 1) * (self.capacity + 1)
        self._best = np.zeros((0, 0), np.int64)
        if cells <= _CELLS:
            self._best = _table(self.items, self.capacity)

    def worth(self, capacity: int, least: int) -> list[Fill] | None:
        """All fills of a capacity that are worth at least so much and have room for no item more.
        None if it gave up."""
        found: list[Fill] = []
        stack: list[tuple[int, int, int, Fill]] = [(0, capacity, 0, ())]
        while stack:
            self.steps -= 1
            if self.steps < 0:
                return None
            first, room, worth, fill = stack.pop()
            if worth >= least and not self._takes_more(room, fill):
                found.append(fill)
            stack.extend(self._further(first, room, worth, fill, least))
        return found

    def _further(
        self, first: int, room: int, worth: int, fill: Fill, least: int
    ) -> Iterator[tuple[int, int, int, Fill]]:
        """The fills with another item, from the first that is still to be looked at."""
        sizes, values = self.items.sizes[first:], self.items.values[first:]
        within = np.flatnonzero(sizes <= room)
        reach = worth + values[within] + self._most(first + within, room - sizes[within])
        for place in first + within[reach >= least]:
            item = int(place)
            size, value = int(self.items.sizes[item]), int(self.items.values[item])
            most = min(int(self.items.counts[item]), room // size)
            for many in range(1, most + 1):
                left, gained = room - many * size, worth + many * value
                if gained + self._most_after(item, left) >= least:
                    yield item + 1, left, gained, (*fill, (item, many))

    def _most(self, items: Wholes, rooms: Wholes) -> Wholes:
        """At most what rooms are worth if filled with items from these on."""
        if self._best.size:
            return np.asarray(self._best[items, rooms])
        return np.asarray(rooms * self._rates[items] * (1 + 1e-12) + 1).astype(np.int64)

    def _most_after(self, item: int, room: int) -> int:
        if item + 1 == len(self.items.sizes):
            return 0
        return int(self._most(np.array([item + 1]), np.array([room]))[0])

    def _takes_more(self, room: int, fill: Fill) -> bool:
        full = [item for item, many in fill if many == self.items.counts[item]]
        room_for = self.items.sizes <= room
        room_for[full] = False
        return bool(room_for.any())


def _table(items: Wanted, capacity: int) -> NDArray[np.int64]:
    """What every capacity is worth at most if filled with items from one on."""
    number = len(items.sizes)
    best = np.zeros((number + 1, capacity + 1), np.int64)
    for item in range(number - 1, -1, -1):
        row = best[item]
        row[:] = best[item + 1]
        size, value = int(items.sizes[item]), int(items.values[item])
        left, copies = min(int(items.counts[item]), capacity // size), 1
        while left > 0:
            many = min(copies, left)
            taken = many * size
            np.maximum(row[taken:], row[: capacity + 1 - taken] + many * value, out=row[taken:])
            left, copies = left - many, 2 * copies
    return best
