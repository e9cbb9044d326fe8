"""The most that can be cut from one sheet by guillotine cuts, and how much it is at most.

First any number of each piece are allowed: where the best pattern then has no more than there are,
it is the answer.  Else all rectangles are joined that a pattern of some value may hold, for values
from what it can be at most downwards, by larger and larger steps: what isn't found at one proves
that it is less.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from rodwright.cutting.bounds.any_number import best_puts, best_values, ground
from rodwright.cutting.bounds.constructed import construct
from rodwright.cutting.bounds.joined import Effort, Joined
from rodwright.cutting.bounds.relaxed import Relaxed, better_prices, relax
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Put, Sheet, Size

_EXACT = 1500
"""Places along a side for the first, exact answer."""

_ROUNDS = 60
"""Prices of pieces that are tried."""

_CONSTRUCTED = 3
"""Of so many prices, one is also used to cut a pattern by."""

_STEP = 400
"""The first step down is such a part of the bound."""


@dataclass(frozen=True, slots=True)
class Best:
    """The best pattern found: its ``value``, its pieces, and the ``bound`` that none exceeds."""

    value: int
    puts: tuple[Put, ...]
    bound: int

    @property
    def proven(self) -> bool:
        """Whether it is the best there is."""
        return self.value >= self.bound


def best_of_sheet(
    sizes: Sequence[Size],
    values: Sequence[int],
    sheet: Sheet,
    patience: Patience,
    *,
    pairs: int = 40_000_000,
) -> Best:
    """The pieces that are worth most together: ``values`` are of one piece of each size.

    Each is whole and at least 0.  ``pairs`` of rectangles are looked at at most; some ten million
    take a second.  Flaws aren't known to it.  A KeyboardInterrupt ends it with what is known.
    """
    search = _Search(sizes, values, sheet)
    try:
        search.any_number()
        if not search.best.proven and not patience.over():
            search.relax(patience)
        if not search.best.proven and not patience.over():
            search.downwards(Effort(pairs), patience)
    except KeyboardInterrupt:
        patience.stop()
    return search.best


class _Search:
    """What is known of the best pattern, as it is found."""

    def __init__(self, sizes: Sequence[Size], values: Sequence[int], sheet: Sheet) -> None:
        self._sizes = sizes
        self._values = values
        self._sheet = sheet
        self._counts = [size.count for size in sizes]
        self._relaxed: list[Relaxed] = []
        self.best = Best(0, (), sum(v * c for v, c in zip(values, self._counts, strict=True)))

    def any_number(self) -> None:
        """Allow any number of each piece, which is the answer if there are enough of them."""
        on = ground(self._sizes, self._sheet, most=_EXACT, whole=True)
        best = best_values(on, self._values)
        self._at_most(int(best[-1, -1]))
        puts = best_puts(on, self._values, best)
        used = Counter(put.size for put in puts)
        if on.exact and all(many <= self._counts[size] for size, many in used.items()):
            self._found(puts)

    def relax(self, patience: Patience) -> None:
        """Prices for pieces, and patterns cut by them."""
        self._on = ground(self._sizes, self._sheet)
        within = ground(self._sizes, self._sheet, up=True)
        lowest = None
        tried = better_prices(self._solve, self._values, self._counts, self.best.value, _ROUNDS)
        for number, (prices, most) in enumerate(tried):
            if lowest is None or most < lowest[1]:
                lowest = prices, most
                self._at_most(most)
            if number % _CONSTRUCTED == 0:
                reduced = (np.array(self._values) - prices).tolist()
                self._found(construct(within, reduced, self._counts))
            if self.best.proven or patience.over():
                break
        assert lowest is not None
        self._relaxed = [
            relax(self._on, self._values, self._counts, prices)
            for prices in (lowest[0], np.zeros_like(lowest[0]))
        ]

    def _solve(self, values: Sequence[int]) -> tuple[int, tuple[Put, ...]]:
        best = best_values(self._on, values)
        return int(best[-1, -1]), best_puts(self._on, values, best)

    def downwards(self, effort: Effort, patience: Patience) -> None:
        """Join rectangles for values from the bound down."""
        step = 1 + self.best.bound // _STEP
        while not self.best.proven:
            target = max(self.best.value + 1, self.best.bound - step + 1)
            joined = Joined(self._on, self._values, self._counts, self._relaxed)
            ended = joined.search(target, effort, patience)
            if joined.best > self.best.value:
                self._found(joined.puts())
            if not ended:
                return
            self._at_most(max(target - 1, self.best.value))
            step *= 2

    def _at_most(self, bound: int) -> None:
        self.best = replace(self.best, bound=min(self.best.bound, bound))

    def _found(self, puts: tuple[Put, ...]) -> None:
        value = sum(self._values[put.size] for put in puts)
        if value > self.best.value:
            self.best = replace(self.best, value=value, puts=puts)
