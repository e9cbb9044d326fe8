"""Plans made board by board: each is filled as well as it can be with what is left.

Each board is filled to the most that goes on it, as in subset-sum heuristics for bins (M. Haouari,
M. Serairi, Heuristics for the variable sized bin-packing problem, Computers & Operations
Research 36, 2009).
"""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.cutting.boards.best import without_surplus
from rodwright.cutting.boards.column_generation import Rest
from rodwright.cutting.boards.offers import Offer, Oracle
from rodwright.cutting.boards.problem import BoardProblem, Pattern

_SCALE = 1000


def filled(problem: BoardProblem, oracle: Oracle, rest: Rest, bias: float) -> list[Pattern]:
    """Patterns for the rest, made one after the other; what goes on no board is left.

    ``bias`` says how much more large pieces are worth for their size than small ones.
    """
    values = _values(problem, bias)
    counts, limits = list(rest.counts), list(rest.limits)
    prices = [board.price for board in problem.boards]
    chosen: list[Pattern] = []
    while any(counts):
        offers = oracle.offers(values, counts, [0] * len(prices), 0)
        offers = [o for o in offers if o.patterns and limits[o.board] != 0]
        whole = sum(n * value for n, value in zip(counts, values, strict=True))
        pattern = _cheapest(offers, prices, values, whole)
        if pattern is None:
            break
        limit = limits[pattern.board]
        while all(n <= counts[item] for item, n in pattern.counts) and limit != 0:
            chosen.append(without_surplus(pattern, counts))
            limit = None if limit is None else limit - 1
        limits[pattern.board] = limit
    return chosen


def _values(problem: BoardProblem, bias: float) -> list[int]:
    sizes = [float(item.length * max(item.width, 1)) for item in problem.items]
    largest = max(sizes)
    return [max(1, round(_SCALE**2 * s / largest * (1 + bias * s / largest))) for s in sizes]


def _cheapest(
    offers: Sequence[Offer], prices: Sequence[int], values: Sequence[int], whole: int
) -> Pattern | None:
    """The pattern that costs least for what it is worth; one that ends it all, if that does."""

    def rate(pattern: Pattern) -> tuple[float, float]:
        worth = sum(n * values[item] for item, n in pattern.counts)
        price = prices[pattern.board]
        return (price * whole / min(worth, whole) if worth else float("inf"), -worth)

    patterns = [pattern for offer in offers for pattern in offer.patterns if pattern.counts]
    return min(patterns, key=rate, default=None)
