"""The last word on a plan: proven where bounds alone don't reach it, or beaten."""

from __future__ import annotations

from random import Random

import pytest

from kit.cut_at_random import cut_at_random
from kit.cutting_checker import check_sheets
from kit.cutting_published import instances, problem
from rodwright.cutting import Piece, Plan, Supply
from rodwright.cutting.bounds.by_saw import SawBound, saw_bound
from rodwright.cutting.bounds.cheaper import cheaper
from rodwright.cutting.bounds.joined import Effort
from rodwright.cutting.bounds.least_cost import free_bound
from rodwright.cutting.bounds.settled import settled
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, Rules, SheetProblem
from rodwright.cutting.sheet_question import layouts_of, problem_of

BINS = {each["name"]: each for each in instances("sheet_bins.json")}


@pytest.mark.parametrize("name", ["Class_01_40_3_O", "Class_03_20_6_O"])
def test_published_optima_that_bounds_miss_are_proven(name: str) -> None:
    asked = problem(BINS[name])
    known = saw_bound(asked, Patience())
    assert known.cost == BINS[name]["best_known"] - 1
    assert settled(asked, known, BINS[name]["best_known"], Patience()).cost == known.cost + 1


def test_the_cheapest_plan_is_found_and_no_bound_exceeds_it() -> None:
    """Of random small questions, whose pieces were cut from sheets that cost so much."""
    random = Random(5)
    beaten = decided = 0
    for _ in range(15):
        cut = cut_at_random(random, kerf=1, most=4, side=20)
        asked = problem_of(cut.pieces, cut.stock, Rules(), kerf=1)
        known = saw_bound(asked, Patience())
        patterns = _cheapest(asked, known)
        if not patterns:
            continue
        decided += 1
        plan = Plan(
            layouts_of(asked, patterns, cut.pieces, cut.stock, lambda _: ()),
            sum(asked.money.length(asked.sheets[each.sheet].price) for each in patterns),
            asked.money.length(free_bound(asked) or 0),
            False,
            1.0,
        )
        check_sheets(plan, cut.pieces, cut.stock, kerf=1)
        assert plan.cost <= cut.cost
        beaten += plan.cost < cut.cost
        least = asked.money.whole(plan.cost)
        last = settled(asked, known, least + 1, Patience(), pairs=1_000_000)
        assert (known.cost or 0) <= (last.cost or 0) <= least
    assert beaten
    assert decided > 8


def _cheapest(asked: SheetProblem, known: SawBound) -> tuple[Pattern, ...]:
    """By trying one cost after the other from the bound on; nothing where that takes too long."""
    cost = known.cost or 0
    while True:
        last = cheaper(asked, known.proof, cost, Effort(2_000_000), Patience())
        if not last.none:
            return last.patterns
        cost += 1


def test_nothing_is_looked_for_below_a_bound_that_is_met() -> None:
    asked = problem_of([Piece("a", 60, 60, 3)], [Supply("s", 100, 100)], Rules())
    known = saw_bound(asked, Patience())
    assert settled(asked, known, 3, Patience()) is known
    assert cheaper(asked, known.proof, 2, Effort(1000), Patience()).none


@pytest.mark.parametrize("rules", [Rules(stages=2), Rules(first_cut="along")])
def test_other_rules_keep_the_known_bound(rules: Rules) -> None:
    asked = problem_of([Piece("a", 60, 60, 3)], [Supply("s", 100, 100)], rules)
    known: SawBound = saw_bound(asked, Patience())
    assert settled(asked, known, 4, Patience()) is known
