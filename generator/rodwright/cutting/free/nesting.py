"""The least sheets that hold all pieces, anywhere on them: what a router cuts.

Filled sheets are drawn in many ways and kept; the cheapest of them that have every piece together
are found by a mixed integer programme (a set cover by patterns; M. Monaci, P. Toth: A
set-covering-based heuristic approach for bin-packing problems, INFORMS Journal on Computing 18(1),
2006; from memory).  What is still dearer than the bound is asked of a constraint solver: whether
cheaper sheets hold all; where it says no of every choice of them, the plan is proven.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from random import Random

from rodwright.cutting.bounds.least_cost import free_bound
from rodwright.cutting.free.covering import cheapest, relaxed_cover
from rodwright.cutting.free.fewer import fewer
from rodwright.cutting.free.filling import RULES, Way, drawn_way, fill, order_by
from rodwright.cutting.free.pool import Pool, greedy, left_by
from rodwright.cutting.free.squeezing import squeeze
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, SheetProblem

_EFFORT = 1_600_000
_EFFORT_EACH = 40_000
"""Steps of a search, at most, and for each piece; counted so that they are the same each time."""
_AFTER = 8
"""Part of them that is kept for a larger offcut, once nothing can cost less: one in so many."""
_COVERS = 3
"""How often in a search the cover is solved."""
_PRICINGS = 2
_FILLINGS = 40
"""Rounds of new patterns each time, and how many in each."""


@dataclass(frozen=True, slots=True)
class Nested:
    """The best patterns found; ``left`` are the pieces by size that found no place.

    ``bound`` is what all plans cost at least, in steps of the problem's money; None where there is
    proven to be too little stock.
    """

    patterns: tuple[Pattern, ...]
    left: tuple[int, ...]
    bound: int | None
    proven: bool


def nest(problem: SheetProblem, start: Sequence[Pattern], seed: int, patience: Patience) -> Nested:
    """Lay all pieces on sheets, never worse than ``start`` (none: an empty list).

    All pieces keep a kerf from each other.  A KeyboardInterrupt ends it with the best so far.
    """
    bound = free_bound(problem)
    pool = Pool(problem)
    pool.offer(start)
    pool.offer(greedy(pool, _set_ways(problem)[0]))
    if bound is not None:
        try:
            bound = _search(pool, bound, Random(seed), patience)
        except KeyboardInterrupt:
            patience.stop()
    proven = bound is not None and pool.cost <= bound
    return Nested(tuple(pool.best), tuple(pool.left), bound, proven)


def _search(pool: Pool, bound: int, random: Random, patience: Patience) -> int | None:
    """Better and better plans; the bound as it is raised on the way."""
    _tell(pool, bound, patience)
    _draw(pool, bound, random, patience)
    limit: int | None = bound
    if pool.cost > bound and not patience.over():
        limit = fewer(pool, bound, patience)
        _tell(pool, limit, patience)
    if not patience.over():
        squeeze(pool, random)
    return limit


def _draw(pool: Pool, bound: int, random: Random, patience: Patience) -> None:
    """Plans by every rule, then by weights that grow for pieces on badly filled sheets."""
    problem = pool.problem
    ways = _set_ways(problem)
    weights = [float(size.area) for size in problem.sizes]
    end = min(_EFFORT, _EFFORT_EACH * problem.pieces)
    cover, after = end // _COVERS, end // _AFTER
    met = False
    while pool.effort < end and not patience.over():
        way = ways.pop(0) if ways else drawn_way(problem, weights, random)
        plan = greedy(pool, way, random if not ways else None)
        better = pool.offer(plan)
        _reweigh(problem, weights, plan, random)
        if pool.effort >= cover and pool.cost > bound:
            cover += end // _COVERS
            better = _cover(pool, random) or better
        if better:
            _tell(pool, bound, patience)
        if pool.cost <= bound and not met:
            met, end = True, min(end, pool.effort + after)


def _set_ways(problem: SheetProblem) -> list[Way]:
    sizes = problem.sizes
    measures = (
        [float(size.area) for size in sizes],
        [float(max(size.length, size.width)) for size in sizes],
        [float(size.length) for size in sizes],
        [float(size.width) for size in sizes],
        [float(size.length + size.width) for size in sizes],
    )
    return [Way(order_by(problem, each), rule) for each in measures for rule in RULES]


def _reweigh(
    problem: SheetProblem, weights: list[float], plan: Sequence[Pattern], random: Random
) -> None:
    """What lies on a badly filled sheet, or nowhere, comes earlier next time: its weight is drawn
    towards its area by the share of a sheet that it spoilt (sequential value correction; G.
    Belov, G. Scheithauer: Setup and open-stacks minimization in one-dimensional stock cutting,
    INFORMS Journal on Computing 19(1), 2007; from memory)."""
    sizes = problem.sizes
    for pattern in plan:
        area = problem.sheets[pattern.sheet].area
        filled = sum(sizes[put.size].area for put in pattern.puts)
        for size in {put.size for put in pattern.puts}:
            value = sizes[size].area ** 1.03 * area / filled
            share = random.uniform(0.1, 0.5)
            weights[size] = (1 - share) * weights[size] + share * value
    for size, many in enumerate(left_by(problem, plan)):
        if many:
            weights[size] *= 1.2


def _cover(pool: Pool, random: Random) -> bool:
    """Whether patterns seen so far make a better plan, and such as these lack most.

    New ones are filled with what is worth most by the relaxed cover (column generation, its
    pricing problem solved by filling).
    """
    problem = pool.problem
    counts = [size.count for size in problem.sizes]
    relaxed = relaxed_cover(problem, pool.columns())
    for _ in range(_PRICINGS):
        if relaxed is None:
            return False
        new = 0
        for _ in range(_FILLINGS):
            way = drawn_way(problem, _prices(problem, relaxed.worth, random), random)
            for kind in range(len(problem.sheets)):
                new += pool.add(fill(problem, kind, counts, way))
        if not new:
            break
        relaxed = relaxed_cover(problem, pool.columns())
    if relaxed is None:
        return False
    plan = cheapest(problem, relaxed, pool.best)
    return plan is not None and pool.offer(plan)


def _prices(problem: SheetProblem, worth: Sequence[float], random: Random) -> list[float]:
    """What sizes are worth, for their area to some power."""
    power = random.choice((0.0, 0.5, 0.8, 1.0))
    return [each / size.area**power for each, size in zip(worth, problem.sizes, strict=True)]


def _tell(pool: Pool, bound: int | None, patience: Patience) -> None:
    if pool.rank is not None and bound is not None:
        money = pool.problem.money
        patience.told(money.length(pool.rank[0]), money.length(bound))
