"""Mixes of sheets that cost less, and plans on many small ones at hand instead of a bought one."""

from __future__ import annotations

from random import Random

import pytest

from rodwright.cutting import Piece, Supply
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Rules, SheetProblem
from rodwright.cutting.sheet_question import problem_of
from rodwright.cutting.sheets.building import dense_plans
from rodwright.cutting.sheets.filling import Effort
from rodwright.cutting.sheets.levels import cheaper_mixes
from rodwright.cutting.sheets.searching import Search
from rodwright.cutting.sheets.state import Found, Ground

KERF = 3.0


def _ground(problem: SheetProblem, unit: int, effort: int = 0) -> Ground:
    ways = tuple(size.ways for size in problem.sizes)
    return Ground(problem, ways, Random(0), Effort(effort, Patience()), 1, unit)


def _mixes(stock: list[Supply], cost: int, bound: int, unit: int) -> list[tuple[int, ...]]:
    pieces = [Piece("a", 100, 100, 10)]
    ground = _ground(problem_of(pieces, stock, Rules()), unit)
    return cheaper_mixes(ground, Found((0, cost, 0, 0), (), ()), bound)


def test_for_each_sum_that_is_less_the_most_area_it_buys() -> None:
    stock = [Supply("full", 200, 400, price=9), Supply("half", 200, 200, price=5)]
    assert _mixes(stock, 15, 0, 1) == [(1, 1)]
    assert _mixes(stock, 19, 0, 1) == [(2, 0), (0, 3), (1, 1)]
    assert _mixes(stock, 19, 15, 1) == [(2, 0), (0, 3)]


def test_all_that_costs_nothing_is_in_each() -> None:
    """Prices here are eleven times what they are, and one more for each sheet."""
    stock = [
        Supply("full", 200, 400, price=9 * 11 + 1),
        Supply("own", 200, 100, 3, price=1),
        Supply("half", 200, 200, price=5 * 11 + 1),
    ]
    assert _mixes(stock, 10 * 11 + 2, 0, 11) == [(1, 3, 0), (0, 3, 1)]
    assert _mixes(stock, 9 * 11 + 2, 0, 11) == [(0, 3, 1)]
    assert _mixes(stock, 5 * 11 + 2, 0, 11) == []


def test_each_piece_goes_on_some_sheet_of_a_mix() -> None:
    stock = [Supply("long", 300, 400, 1, price=50), Supply("short", 90, 2000, price=1)]
    pieces = [Piece("a", 80, 300, 1), Piece("b", 280, 300)]
    ground = _ground(problem_of(pieces, stock, Rules()), 1)
    assert cheaper_mixes(ground, Found((0, 60, 0, 0), (), ()), 0) == [(1, 2), (1, 1), (1, 0)]


@pytest.mark.parametrize("seed", range(2))
def test_a_plan_costs_no_more_than_the_sheets_its_pieces_were_cut_from(seed: int) -> None:
    """A bought half sheet and small sheets at hand, cut at random with some waste; the search
    begins with a whole sheet."""
    rng = Random(seed)
    own = [
        Supply(f"own {n}", rng.randint(700, 1300), rng.randint(300, 520), 1, price=1)
        for n in range(4)
    ]
    unit = 100
    full = Supply("full", 2440, 1220, price=82 * unit + 1)
    half = Supply("half", 1220, 1220, price=46 * unit + 1)
    sides = [(half.length, half.width, 6), *((each.length, each.width, 1) for each in own)]
    cut = [rect for length, width, many in sides for rect in _cut(rng, length, width, many)]
    pieces = [Piece(f"p{n}", length, width) for n, (length, width) in enumerate(cut)]
    problem = problem_of(pieces, [full, half, *own], Rules(), kerf=KERF)
    ground = _ground(problem, unit, 2_000_000)
    search = Search(ground, lambda _: None)
    search.take(next(dense_plans(ground)))
    search.improve(46 * unit, 2_000_000)
    assert search.best.whole
    assert search.best.cost // unit <= 46


def _cut(rng: Random, length: float, width: float, cuts: int) -> list[tuple[float, float]]:
    """The parts of a sheet after so many cuts, each through the largest, and less by some waste."""
    parts = [(length, width)]
    for _ in range(cuts):
        parts.sort(key=lambda part: part[0] * part[1])
        along, across = parts.pop()
        share = rng.uniform(0.3, 0.7)
        if along > across:
            at = round(along * share)
            parts += [(at, across), (along - at - KERF, across)]
        else:
            at = round(across * share)
            parts += [(along, at), (along, across - at - KERF)]
    return [(one * rng.uniform(0.95, 1), other) for one, other in parts]
