"""Plans made board by board: each is filled as well as it can be with what is left.

Each board is filled to the most that goes on it, as in subset-sum heuristics for bins (M. Haouari,
M. Serairi, Heuristics for the variable sized bin-packing problem, Computers & Operations
Research 36, 2009).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from random import Random

from rodwright.cutting.boards.best import without_surplus
from rodwright.cutting.boards.column_generation import Rest
from rodwright.cutting.boards.offers import Offer, Oracle
from rodwright.cutting.boards.problem import BoardProblem, Pattern
from rodwright.cutting.boards.slants import required

_SCALE = 1000


def filled(
    problem: BoardProblem,
    oracle: Oracle,
    rest: Rest,
    bias: float,
    random: Random | None = None,
) -> list[Pattern]:
    """Patterns for the rest, made one after the other; what goes on no board is left.

    ``bias`` says how much more large pieces are worth for their size than small ones; what each is
    worth is changed a little at ``random``.
    """
    values = _values(problem, bias)
    if random:
        values = [max(1, round(value * random.uniform(0.8, 1.25))) for value in values]
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


def completed(problem: BoardProblem, oracle: Oracle, patterns: Sequence[Pattern]) -> list[Pattern]:
    """Patterns with all that they leave: in the room on their boards where it fits best, the
    largest pieces first, and then on further boards."""
    left = [item.count for item in problem.items]
    chosen = [without_surplus(pattern, left) for pattern in patterns]
    if not any(item.width for item in problem.items):
        _topped_up(problem, chosen, left)
    limits = [board.limit for board in problem.boards]
    for pattern in chosen:
        limit = limits[pattern.board]
        limits[pattern.board] = None if limit is None else limit - 1
    return chosen + filled(problem, oracle, Rest(tuple(left), tuple(limits)), 0.0)


def _topped_up(problem: BoardProblem, chosen: list[Pattern], left: list[int]) -> None:
    for item, length in enumerate(each.length for each in problem.items):
        while left[item]:
            rooms = [
                (run.length - required(problem, run.items) - length, number, place)
                for number, pattern in enumerate(chosen)
                for place, run in enumerate(pattern.runs)
            ]
            fitting = [room for room in rooms if room[0] >= 0]
            if not fitting:
                break
            _, number, place = min(fitting)
            runs = list(chosen[number].runs)
            runs[place] = replace(runs[place], items=(*runs[place].items, item))
            chosen[number] = Pattern.of(chosen[number].board, tuple(runs))
            left[item] -= 1


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
