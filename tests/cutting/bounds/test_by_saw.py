"""Bounds for saws against plans that are known, and the patterns that they leave."""

from __future__ import annotations

from random import Random

import pytest

from kit.cut_at_random import cut_at_random
from kit.cutting_checker import check_sheets
from kit.cutting_published import Instance, instances, problem
from rodwright.cutting import Piece, Plan, Supply
from rodwright.cutting.bounds.by_saw import saw_bound
from rodwright.cutting.bounds.least_cost import free_bound
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, Rules, SheetProblem
from rodwright.cutting.sheet_question import layouts_of, left_of, problem_of

BINS = instances("sheet_bins.json")
SHORT = {
    "Class_01_40_3_O",
    "Class_03_20_2_O",
    "Class_03_20_6_O",
    "Class_07_20_2_R",
    "Class_08_20_7_O",
}
"""Those whose optimum needs more than a mixture of patterns with any number of each piece."""


@pytest.mark.parametrize("instance", BINS, ids=lambda each: each["name"])
def test_published_optima_are_reached_or_one_sheet_short(instance: Instance) -> None:
    asked = problem(instance)
    found = saw_bound(asked, Patience())
    short = instance["name"] in SHORT
    assert asked.money.length(found.cost or 0) == instance["best_known"] - short


@pytest.mark.parametrize("kerf", [0, 2])
def test_no_plan_costs_less_and_patterns_can_be_cut(kerf: int) -> None:
    random = Random(11 + kerf)
    for _ in range(40):
        cut = cut_at_random(random, kerf=kerf)
        asked = problem_of(cut.pieces, cut.stock, Rules(), kerf=kerf)
        found = saw_bound(asked, Patience())
        assert found.cost is not None
        assert (free_bound(asked) or 0) <= found.cost
        assert asked.money.length(found.cost) <= cut.cost
        for pattern in found.patterns:
            _check_pattern(asked, pattern, cut.pieces, cut.stock)


def _check_pattern(
    asked: SheetProblem, pattern: Pattern, pieces: list[Piece], stock: list[Supply]
) -> None:
    counts = asked.counts(pattern)
    left = [size.count - counts.get(number, 0) for number, size in enumerate(asked.sizes)]
    plan = Plan(
        layouts_of(asked, [pattern], pieces, stock, lambda _: ()),
        cost=asked.money.length(asked.sheets[pattern.sheet].price),
        bound=0,
        proven=False,
        kerf=asked.grid.length(asked.kerf),
        left=left_of(asked, left, pieces),
    )
    check_sheets(plan, pieces, stock, kerf=plan.kerf)


def test_worth_of_pieces_pays_no_sheet_more_than_it_costs() -> None:
    """Nine squares of 40 to a sheet of 120 x 120: a ninth of its price each."""
    asked = problem_of([Piece("a", 40, 40, 50)], [Supply("s", 120, 120, price=18)], Rules())
    found = saw_bound(asked, Patience())
    assert asked.money.length(found.cost or 0) == 6 * 18
    assert found.proof.worth[0] * 9 <= asked.sheets[0].price * found.proof.fine


def test_who_has_no_patience_gets_what_is_proven_so_far() -> None:
    asked = problem(next(each for each in BINS if each["name"] == "gcut11_O"))
    stopped = Patience()
    stopped.stop()
    assert saw_bound(asked, stopped).cost == free_bound(asked)


def test_stock_that_can_only_freely_be_enough_is_too_little_for_a_saw() -> None:
    """Four pieces fill a sheet like sails round a hole, but no saw cuts them out of it."""
    sails = [Piece("a", 60, 40, 2), Piece("b", 40, 60, 2)]
    asked = problem_of(sails, [Supply("s", 100, 100, 1)], Rules())
    assert free_bound(asked) is not None
    assert saw_bound(asked, Patience()).cost is None
