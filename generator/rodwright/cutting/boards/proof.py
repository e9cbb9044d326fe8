"""Bounds on the cost that are proven: worked out in whole numbers and fractions of them.

A bound by duality (P. C. Gilmore, R. E. Gomory, A linear programming approach to the cutting stock
problem, Operations Research 9, 1961; A. A. Farley, A note on bounding a class of linear
programming problems, including cutting stock problems, Operations Research 38, 1990): if no board
is worth more than its price, all pieces together cost at least what they are worth.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import ceil, gcd

from rodwright.cutting.boards.offers import Offer
from rodwright.cutting.boards.problem import BoardProblem

FINE = 2**36
"""Into how many parts the dearest price is divided, for what pieces are worth."""

_SUMS = 4_000_000
"""Up to how many steps of money sums of prices are told apart."""


def dual_bound(
    worth_of_all: int,
    offers: Sequence[Offer],
    prices: Sequence[int],
    limits: Sequence[int | None],
) -> tuple[Fraction, Fraction]:
    """The least that all pieces cost, in the unit of the prices, and the factor for that.

    ``worth_of_all`` is what the pieces are worth together; the offers say what each board is worth
    at most.  Worths may be scaled by any factor; then boards without a limit have to be worth
    no more than their price, and what others are worth beyond it is taken off.
    """
    factors = [
        (Fraction(price, offer.worth), limit)
        for offer, price, limit in zip(offers, prices, limits, strict=True)
        if offer.worth > 0
    ]
    top = min((factor for factor, limit in factors if limit is None), default=None)
    tried = [factor for factor, _ in factors if top is None or factor <= top]
    best = Fraction(0), Fraction(1)
    for factor in [*tried, Fraction(1) if top is None else top]:
        beyond = sum(
            (limit or 0) * max(Fraction(0), factor * offer.worth - price)
            for offer, price, limit in zip(offers, prices, limits, strict=True)
        )
        best = max(best, (factor * worth_of_all - beyond, factor))
    return best


class Costs:
    """The costs that some boards can add up to."""

    def __init__(self, problem: BoardProblem) -> None:
        self.step = gcd(*(board.price for board in problem.boards)) or 1
        self._prices = [
            (board.price // self.step, board.limit) for board in problem.boards if board.price
        ]
        self._sums = 1
        self._upto = 0

    def at_least(self, bound: Fraction) -> int:
        """The least sum of prices that isn't below a bound."""
        steps = max(0, ceil(bound / self.step))
        if steps > _SUMS or not self._prices:
            return steps * self.step
        highest = steps + max(price for price, _ in self._prices)
        if highest > self._upto:
            self._reach(2 * highest)
        above = self._sums >> steps
        return (
            (steps + (above & -above).bit_length() - 1) * self.step if above else steps * self.step
        )

    def _reach(self, upto: int) -> None:
        """Note all sums up to one as the bits of a whole number."""
        mask = (1 << (upto + 1)) - 1
        sums = 1
        for price, limit in self._prices:
            left = upto // price if limit is None else min(limit, upto // price)
            copies = 1
            while left > 0:
                many = min(copies, left)
                sums |= (sums << many * price) & mask
                left, copies = left - many, 2 * copies
        self._sums, self._upto = sums, upto
