"""The least cost by columns: what a mixture of patterns, whole or not, costs at least.

A pattern is all that is cut from one sheet.  A linear programme takes the cheapest mixture of
the patterns that are known; the prices of pieces that follow from it lead to better patterns, until
there is none (P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock
problem, Operations Research 9, 1961; from memory).  Prices of pieces prove a bound at any time: no
pattern may be worth more than its sheet costs, and where one is, all prices are lowered (A. A.
Farley, A note on bounding a class of linear programming problems, including cutting stock problems,
Operations Research 38, 1990; from memory) or each such sheet is paid for.  All that is proven
is so in exact whole numbers.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil
from typing import Protocol

from rodwright.cutting.bounds.least_cost import raised
from rodwright.cutting.bounds.linear import Programme, Reals
from rodwright.cutting.bounds.scales import Proof, cost_of_leaving
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, SheetProblem

_BETTER = 1e-7
"""By which part of the dearest price a pattern has to be better than its sheet costs."""

_CALM = 0.7
"""How much of the prices that proved most so far is in those that are tried next: prices that
follow from few patterns jump about (P. Wentges, Weighted Dantzig-Wolfe decomposition for linear
mixed-integer programming, International Transactions in Operational Research 4, 1997; from
memory)."""


@dataclass(frozen=True, slots=True)
class Priced:
    """What a kind of sheet is worth at most by some prices of pieces, and good patterns of it.

    A pattern may have more of a size than are wanted, where the pricing allows that.
    """

    most: int
    patterns: tuple[Pattern, ...]


class Pricing(Protocol):
    """Finds the best patterns of a kind of sheet."""

    def best(self, kind: int, worth: Sequence[int]) -> Priced:
        """By prices of the sizes, none less than 0."""
        ...


@dataclass(frozen=True, slots=True)
class Columns:
    """What came out: the ``proof`` of the least cost, the ``patterns`` it was found by, and
    whether no pattern of this pricing could have raised it further (``done``)."""

    proof: Proof
    patterns: tuple[Pattern, ...]
    done: bool


def columns(
    problem: SheetProblem, pricing: Pricing, proof: Proof, patience: Patience, *, rounds: int
) -> Columns:
    """Raise a proven bound by better and better patterns, at most so many times."""
    master = _Master(problem, pricing, proof)
    done = master.improve(rounds, patience)
    return Columns(master.proof, tuple(master.patterns), done)


class _Master:
    """The linear programme of the patterns that are known."""

    def __init__(self, problem: SheetProblem, pricing: Pricing, proof: Proof) -> None:
        self._problem = problem
        self._pricing = pricing
        self._unit = max(1, *(sheet.price for sheet in problem.sheets), 1)
        self._programme = self._begin()
        self._prices: Reals | None = None
        self.proof = proof
        self.patterns: list[Pattern] = []

    def _begin(self) -> Programme:
        programme = Programme()
        for size in self._problem.sizes:
            programme.row(size.count, float("inf"), [], [])
        for sheet in self._problem.sheets:
            programme.row(-float("inf"), sheet.count, [], [])
        left = cost_of_leaving(self._problem) / self._unit
        for number in range(len(self._problem.sizes)):
            programme.column(left, float("inf"), [number], [1.0])
        return programme

    def improve(self, rounds: int, patience: Patience) -> bool:
        """Whether the bound is as high as it gets."""
        self._try(self.proof.worth)
        calm = _CALM
        for _ in range(rounds):
            if patience.over() or not self._programme.solve():
                return False
            least = self._programme.least * self._unit
            if raised(self.proof.bound, self._problem) == raised(
                ceil(least - _BETTER * self._unit), self._problem
            ):
                return True
            worth = self._worth()
            mixed = [
                round(calm * a + (1 - calm) * b)
                for a, b in zip(self.proof.worth, worth, strict=True)
            ]
            if self._try(mixed):
                continue
            if not self._try(worth):
                return True
        return False

    def _worth(self) -> list[int]:
        """Prices of pieces by the patterns of the last solution, never less than 0."""
        scale = self._unit * self.proof.fine
        self._prices = self._programme.prices
        prices = self._prices[: len(self._problem.sizes)]
        return [max(0, int(each * scale)) for each in prices.tolist()]

    def _try(self, worth: Sequence[int]) -> bool:
        """Look for patterns by some prices, prove what they prove; whether one is better by
        the programme's own."""
        priced = [self._pricing.best(kind, worth) for kind in range(len(self._problem.sheets))]
        bound = proven(self._problem, worth, [each.most for each in priced], self.proof.fine)
        if bound.total > self.proof.total:
            self.proof = bound
        added = [self._add(pattern) for each in priced for pattern in each.patterns]
        return any(added)

    def _add(self, pattern: Pattern) -> bool:
        """Take a pattern in; whether it makes a difference."""
        if not pattern.puts:
            return False
        counts = self._problem.counts(pattern)
        row = len(self._problem.sizes) + pattern.sheet
        price = self._problem.sheets[pattern.sheet].price / self._unit
        if self._prices is not None:
            worth = sum(self._prices[size] * many for size, many in counts.items())
            if worth + self._prices[row] - price < _BETTER:
                return False
        self.patterns.append(pattern)
        self._programme.column(
            price, float("inf"), [*counts, row], [*map(float, counts.values()), 1.0]
        )
        return True


def proven(problem: SheetProblem, worth: Sequence[int], most: Sequence[int], fine: int) -> Proof:
    """What prices of pieces prove, if no sheet of a kind holds more than ``most`` by them.

    All prices are lowered until some kind of sheet isn't worth more than it costs, in the same
    proportion; what others are worth more is paid for each that there is.
    """
    best = Proof(0, (0,) * len(worth), fine)
    ratios = {(1, 1)} | {
        (sheet.price * fine, value)
        for sheet, value in zip(problem.sheets, most, strict=True)
        if value > sheet.price * fine
    }
    for part, whole in sorted(ratios):
        lowered = tuple(each * part // whole for each in worth)
        total = sum(a * size.count for a, size in zip(lowered, problem.sizes, strict=True))
        for sheet, value in zip(problem.sheets, most, strict=True):
            over = -(-value * part // whole) - sheet.price * fine
            total -= max(0, over) * sheet.count
        if total > best.total:
            best = Proof(total, lowered, fine)
    return best
