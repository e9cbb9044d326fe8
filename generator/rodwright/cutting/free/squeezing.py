"""The same sheets with a larger rectangle left whole on one of them."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from rodwright.cutting.free.filling import drawn_way, fill
from rodwright.cutting.free.packing import sizes_on
from rodwright.cutting.free.pool import Pool, effort_of
from rodwright.cutting.free.rectangles import largest_offcut
from rodwright.cutting.sheet_problem import Pattern, Sheet, SheetProblem

_SHEETS = 3
"""The emptiest sheets, which are tried."""
_HALVINGS = 9
_TRIES = 24
"""Ways that are drawn for each size of sheet that is tried."""
_EFFORT = 300_000
"""Steps at most."""


def squeeze(pool: Pool, random: Random) -> None:
    """Push together what lies on a sheet, into a part that is shorter or narrower, as far as that
    leaves a larger offcut than the best plan has."""
    if pool.rank is None:
        return
    problem = pool.problem
    limit = pool.effort + _EFFORT
    filled = [sum(problem.sizes[put.size].area for put in each.puts) for each in pool.best]
    order = sorted(range(len(filled)), key=lambda number: (filled[number], number))
    for number in order[:_SHEETS]:
        for along in (True, False):
            _push(pool, number, limit, random, along=along)


def _push(pool: Pool, number: int, limit: int, random: Random, *, along: bool) -> None:
    """Halve the way between what is surely too small and what is known to do."""
    problem = pool.problem
    pattern = pool.best[number]
    sheet = problem.sheets[pattern.sheet]
    area = sum(problem.sizes[put.size].area for put in pattern.puts)
    low, high = (
        (area // sheet.width, sheet.length) if along else (area // sheet.length, sheet.width)
    )
    for _ in range(_HALVINGS):
        if pool.effort > limit or high - low < 2:
            return
        middle = (low + high) // 2
        smaller = replace(sheet, length=middle) if along else replace(sheet, width=middle)
        puts = _packed(pool, pattern, smaller, random)
        if puts is None:
            low = middle
            continue
        high = middle
        if pool.rank and largest_offcut(puts, problem) > -pool.rank[3]:
            pool.offer([*pool.best[:number], puts, *pool.best[number + 1 :]])


def _packed(pool: Pool, pattern: Pattern, smaller: Sheet, random: Random) -> Pattern | None:
    """All that lies on a sheet, on a smaller one; None if no way was found."""
    problem: SheetProblem = replace(pool.problem, sheets=(smaller,))
    counts = sizes_on(problem, [pattern])
    weights = [float(size.area) for size in problem.sizes]
    for _ in range(_TRIES):
        packed = fill(problem, 0, counts, drawn_way(problem, weights, random))
        pool.effort += effort_of(packed)
        if len(packed.puts) == len(pattern.puts):
            return Pattern(pattern.sheet, packed.puts)
    return None
