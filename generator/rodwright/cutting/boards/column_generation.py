"""Column generation: patterns are made as they are needed, and a bound is proven by the way.

P. C. Gilmore, R. E. Gomory, A linear programming approach to the cutting stock problem, parts I
and II, Operations Research 9 (1961) and 11 (1963).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from rodwright.cutting.boards.best import Best
from rodwright.cutting.boards.master import Master, Mixed
from rodwright.cutting.boards.offers import Offer, Oracle
from rodwright.cutting.boards.problem import BoardProblem
from rodwright.cutting.boards.proof import FINE, dual_bound
from rodwright.cutting.progress import Patience

_MANY = 12
"""Patterns that are asked for at once for each board."""

_SLIGHT = 1e-7
"""By how much of the dearest price a pattern has to be worth more than it costs."""


@dataclass(frozen=True, slots=True)
class Rest:
    """What is still to be cut: how many of each item, from how many of each board."""

    counts: tuple[int, ...]
    limits: tuple[int | None, ...]

    @staticmethod
    def all_of(problem: BoardProblem) -> Rest:
        """All of it."""
        return Rest(
            tuple(item.count for item in problem.items),
            tuple(board.limit for board in problem.boards),
        )


@dataclass(frozen=True, slots=True)
class Worths:
    """What pieces are worth so that no pattern is worth more than it costs.

    ``values`` times ``factor`` are in the unit of the prices, as are ``prices``, which one more
    board is worth (its own price, or more where there are too few), and the ``bound`` that follows.
    """

    values: tuple[int, ...]
    factor: Fraction
    prices: tuple[Fraction, ...]
    bound: Fraction


class Columns:
    """The linear program and whoever makes patterns for it."""

    def __init__(
        self, problem: BoardProblem, oracle: Oracle, best: Best, patience: Patience, seed: int
    ) -> None:
        self._problem, self._oracle, self._best, self.patience = problem, oracle, best, patience
        self.master = Master(problem, best.penalties, seed)
        self._prices = [board.price for board in problem.boards]
        self._dearest = max(self._prices, default=1) or 1
        self._fine = max(1, FINE // self._dearest)

    def converge(
        self, rest: Rest, enough: int | None, rounds: int | None = None, *, proper: bool = False
    ) -> tuple[Mixed, int]:
        """Add patterns until none would help, or the bound is ``enough``, or has come as near as
        whole prices can tell, or so many rounds are over.  Without an ``enough``, none would help.
        ``proper`` patterns have no more of an item than is wanted: others are good for bounds, and
        plans are the better without them.

        Returns the last solution, and what the rest costs at least.
        """
        self.master.want(rest.counts, rest.limits, proper=proper)
        bound = 0
        done = 0
        while True:
            mixed = self.master.solve()
            proven, new = self._round(rest, mixed, proper=proper)
            bound = max(bound, self._best.rounded(proven))
            done += 1
            over = done == rounds
            if enough is not None:
                reachable = self._best.rounded(Fraction(mixed.cost - _SLIGHT * self._dearest))
                over |= bound >= min(enough, reachable)
            if over or not new or self.patience.over():
                return mixed, bound

    def worths(self, rest: Rest, mixed: Mixed) -> Worths:
        """What pieces are worth in a solution."""
        values = self._values(mixed)
        offers = self._oracle.offers(values, rest.counts, [2 * FINE * FINE] * len(self._prices), 0)
        return self._worths(rest, values, offers)

    def _worths(self, rest: Rest, values: Sequence[int], offers: Sequence[Offer]) -> Worths:
        together = sum(n * value for n, value in zip(rest.counts, values, strict=True))
        bound, factor = dual_bound(together, offers, self._prices, rest.limits)
        prices = (
            Fraction(price) if limit is None else max(Fraction(price), factor * offer.worth)
            for price, limit, offer in zip(self._prices, rest.limits, offers, strict=True)
        )
        return Worths(tuple(values), factor, tuple(prices), bound)

    def _values(self, mixed: Mixed) -> list[int]:
        least = _SLIGHT * self._dearest
        return [
            int(min(worth, penalty) * self._fine) if worth > least else 0
            for worth, penalty in zip(mixed.worth, self._best.penalties, strict=True)
        ]

    def _round(self, rest: Rest, mixed: Mixed, *, proper: bool) -> tuple[Fraction, int]:
        """One round of pricing: a bound, and how many patterns came of it."""
        values = self._values(mixed)
        least = _SLIGHT * self._dearest
        thresholds = [
            int((price + max(saved, 0.0) + least) * self._fine)
            for price, saved in zip(self._prices, mixed.saved, strict=True)
        ]
        offers = self._oracle.offers(values, rest.counts, thresholds, _MANY)
        new = self.master.add(
            pattern
            for offer in offers
            for pattern in offer.patterns
            if self._worth(pattern.counts, values) > thresholds[offer.board]
            and not (proper and any(n > rest.counts[item] for item, n in pattern.counts))
        )
        return self._worths(rest, values, offers).bound, new

    @staticmethod
    def _worth(counts: Sequence[tuple[int, int]], values: Sequence[int]) -> int:
        return sum(n * values[item] for item, n in counts)
