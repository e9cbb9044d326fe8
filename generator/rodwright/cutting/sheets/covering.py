"""Sheets as they were filled at any time, put together to the cheapest plan."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

from rodwright.cutting.bounds.linear import Programme
from rodwright.cutting.free.covering import how_many
from rodwright.cutting.sheet_problem import SheetProblem
from rodwright.cutting.sheets.filling import Filling
from rodwright.cutting.sheets.state import Found, Ground

_MOST = 400
"""Of how many sheets whole numbers are looked for: those that are dearest to leave out least."""


def covered(ground: Ground, seen: Iterable[Filling]) -> Found | None:
    """The cheapest plan of fillings, as far as it is found; pieces that are on two are taken off
    one."""
    known = _worth_it(ground.problem, list(seen))
    many = how_many(ground.problem, [filling.pattern() for filling in known])
    if many is None:
        return None
    missing = [size.count for size in ground.problem.sizes]
    chosen = []
    for filling, times in zip(known, many, strict=True):
        for _ in range(times):
            chosen.append(filling.copy())
            _take_off_doubles(chosen[-1], missing)
    left = [size for size, times in enumerate(missing) for _ in range(times)]
    return ground.found(chosen, left)


def _worth_it(problem: SheetProblem, seen: list[Filling]) -> list[Filling]:
    """Those that are in the cheapest mixture of parts of sheets, or would be at the least more."""
    if len(seen) <= _MOST:
        return seen
    programme = Programme()
    for size in problem.sizes:
        programme.row(size.count, float("inf"), [], [])
    for sheet in problem.sheets:
        programme.row(-float("inf"), sheet.count, [], [])
    counted = [Counter(filling.sizes()) for filling in seen]
    for filling, counts in zip(seen, counted, strict=True):
        rows = [*counts, len(problem.sizes) + filling.sheet]
        price = problem.sheets[filling.sheet].price
        programme.column(price, float("inf"), rows, [*counts.values(), 1])
    if not programme.solve():
        return seen[:_MOST]
    worth = programme.prices.tolist()
    dearer = [
        problem.sheets[filling.sheet].price
        - worth[len(problem.sizes) + filling.sheet]
        - sum(worth[size] * many for size, many in counts.items())
        for filling, counts in zip(seen, counted, strict=True)
    ]
    order = sorted(range(len(seen)), key=lambda number: (round(dearer[number], 6), number))
    return [seen[number] for number in order[:_MOST]]


def _take_off_doubles(filling: Filling, missing: list[int]) -> None:
    """Note what is on a sheet as no longer missing, and take off what wasn't."""
    doubles = []
    for field in filling.fields:
        for leaf in field.leaves():
            if missing[leaf.size]:
                missing[leaf.size] -= 1
            else:
                doubles.append((field, leaf))
    filling.take_off(doubles)
