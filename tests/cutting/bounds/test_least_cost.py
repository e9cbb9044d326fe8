"""Bounds against plans that are known: published ones, and sheets cut at random."""

from __future__ import annotations

from random import Random

import pytest

from kit.cut_at_random import cut_at_random
from kit.cutting_published import Instance, instances, problem
from rodwright.cutting import Piece, Supply
from rodwright.cutting.bounds.least_cost import free_bound
from rodwright.cutting.sheet_problem import Rules
from rodwright.cutting.sheet_question import problem_of

BINS = instances("sheet_bins.json")
BEYOND_SCALES = {
    "Class_01_40_3_O",
    "Class_03_20_2_O",
    "Class_03_20_6_O",
    "Class_07_20_2_R",
    "Class_07_20_8_R",
    "Class_08_20_7_O",
    "Class_08_20_1_R",
    "gcut11_O",
}
"""Those whose optimum by saw no scale proves; each bound is one sheet short of it."""


@pytest.mark.parametrize("instance", BINS, ids=lambda each: each["name"])
def test_published_optima_are_reached_or_one_sheet_short(instance: Instance) -> None:
    short = instance["name"] in BEYOND_SCALES
    asked = problem(instance)
    assert asked.money.length(free_bound(asked) or 0) == instance["best_known"] - short


@pytest.mark.parametrize("kerf", [0, 2])
def test_no_plan_costs_less(kerf: int) -> None:
    random = Random(20_26 + kerf)
    for _ in range(250):
        cut = cut_at_random(random, kerf=kerf)
        asked = problem_of(cut.pieces, cut.stock, Rules(), kerf=kerf)
        bound = free_bound(asked)
        assert bound is not None
        assert asked.money.length(bound) <= cut.cost


def test_what_stock_holds_too_little_is_proven() -> None:
    """Five squares of 60 in two sheets of 100 x 100, one to each."""
    asked = problem_of([Piece("a", 60, 60, 5)], [Supply("s", 100, 100, 2)], Rules())
    assert free_bound(asked) is None


def test_free_sheets_are_used_before_paid_ones() -> None:
    """Of four pieces that take a sheet each one goes on the only one that costs nothing."""
    stock = [Supply("whole", 100, 100, price=7.5), Supply("shelf", 60, 60, 1, price=0)]
    asked = problem_of([Piece("a", 60, 60, 4)], stock, Rules())
    assert asked.money.length(free_bound(asked) or 0) == 22.5


def test_bounds_are_sums_that_can_be_paid() -> None:
    """Area alone says 2.2 sheets of 5, or 11, and no sum of fives and sevens is that."""
    stock = [Supply("a", 10, 10, price=5), Supply("b", 10, 10, price=7)]
    asked = problem_of([Piece("p", 10, 1, 22)], stock, Rules())
    assert asked.money.length(free_bound(asked) or 0) == 12


def test_a_thousand_sizes_are_bounded_by_their_area_at_least() -> None:
    random = Random(7)
    pieces = [Piece(f"p{i}", random.randint(60, 900), random.randint(60, 600)) for i in range(1000)]
    asked = problem_of(pieces, [Supply("s", 2440, 1220)], Rules(), kerf=3.2, turning=True)
    area = asked.area / asked.sheets[0].area
    assert area <= (free_bound(asked) or 0) < area + 2
