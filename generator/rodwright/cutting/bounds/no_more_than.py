"""Patterns with no more of each piece than there are: the best bound, and slowest."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

import numpy as np

from rodwright.cutting.bounds.any_number import best_puts, best_values, ground
from rodwright.cutting.bounds.columns import Priced
from rodwright.cutting.bounds.constructed import construct
from rodwright.cutting.bounds.joined import Effort, Joined
from rodwright.cutting.bounds.relaxed import better_prices, relax
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, Put, SheetProblem

_ROUNDS = 15
"""Prices of pieces that are tried."""

_ONCE = 4_000_000
"""The effort of one search at most."""

_EVEN = 10**6
"""What is better by less than one part in so many isn't."""


class NoMoreThan:
    """Prices by a search for the best pattern, or for a proof that none is worth its sheet.

    ``effort`` is for all prices together; when it is spent, what they prove is less.
    """

    def __init__(
        self, problem: SheetProblem, fine: int, effort: Effort, patience: Patience
    ) -> None:
        self._problem = problem
        self._fine = fine
        self._effort = effort
        self._patience = patience
        self._counts = [size.count for size in problem.sizes]
        self._grounds = [ground(problem.sizes, sheet) for sheet in problem.sheets]
        self._within = [ground(problem.sizes, sheet, up=True) for sheet in problem.sheets]

    def best(self, kind: int, worth: Sequence[int]) -> Priced:
        """By prices of the sizes, none less than 0."""
        on = self._grounds[kind]
        value, puts = self._solve(kind, worth)
        enough = self._problem.sheets[kind].price * self._fine
        if value <= enough or self._effort.pairs <= 0:
            return Priced(value, ())
        used = Counter(put.size for put in puts)
        if on.exact and all(many <= self._counts[size] for size, many in used.items()):
            return Priced(value, (Pattern(kind, puts),))
        return self._search(kind, worth, enough + enough // _EVEN)

    def _solve(self, kind: int, worth: Sequence[int]) -> tuple[int, tuple[Put, ...]]:
        on = self._grounds[kind]
        best = best_values(on, worth)
        self._effort.pairs -= best.size
        return int(best[-1, -1]), best_puts(on, worth, best)

    def _search(self, kind: int, worth: Sequence[int], enough: int) -> Priced:
        on = self._grounds[kind]
        lowest = None
        for prices, most in better_prices(
            lambda values: self._solve(kind, values), worth, self._counts, enough, _ROUNDS
        ):
            if lowest is None or most < lowest[1]:
                lowest = prices, most
        assert lowest is not None
        prices, most = lowest
        if most <= enough:
            return Priced(most, ())
        reduced = (np.array(worth) - prices).tolist()
        found = construct(self._within[kind], reduced, self._counts)
        if sum(worth[put.size] for put in found) > enough:
            return Priced(most, (Pattern(kind, found),))
        relaxed = [relax(on, worth, self._counts, each) for each in (prices, np.zeros_like(prices))]
        joined = Joined(on, worth, self._counts, relaxed)
        effort = Effort(max(0, min(self._effort.pairs, _ONCE)))
        self._effort.pairs -= effort.pairs
        ended = joined.search(enough + 1, effort, self._patience)
        self._effort.pairs += max(0, effort.pairs)
        patterns = (Pattern(kind, joined.puts()),) if joined.best > enough else ()
        return Priced(max(joined.best, enough) if ended else most, patterns)
