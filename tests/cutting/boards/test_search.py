"""Ties, patience, and the same answer to the same question."""

from __future__ import annotations

from itertools import pairwise

import pytest

from kit.cutting_checker import check_boards
from rodwright.cutting import Piece, Supply, plan_boards
from rodwright.cutting.progress import Patience

MANY = [Piece(f"p{n}", 263 + 37 * n % 900, count=1 + n % 3) for n in range(14)]
STOCK = [Supply("long", 3000, price=10.5), Supply("short", 2100, price=7.9)]


def test_of_equal_costs_the_one_with_fewer_boards() -> None:
    stock = [Supply("offcut", 1000, count=3, price=0), Supply("old board", 3000, count=1, price=0)]
    plan = plan_boards([Piece("shelf", 900, count=3)], stock)
    assert plan.used == {"old board": 1}


def test_of_what_is_free_as_few_boards_as_can_be() -> None:
    """Strips of 45, 45, 45 and of 18, 38, 38, 18 with the cuts between them fill two of 154 mm."""
    widths = {45: (2400, 2400, 1180, 1180), 18: (2500, 900, 900), 38: (800, 800, 800, 1500)}
    pieces = [
        Piece(f"{width} {n}", length, width)
        for width, lengths in widths.items()
        for n, length in enumerate(lengths)
    ]
    stock = [Supply("at hand", 2520, 154, count=4, price=0)]
    plan = plan_boards(pieces, stock, kerf=3.2)
    check_boards(plan, pieces, stock, kerf=3.2)
    assert plan.used == {"at hand": 2}


def test_of_equal_boards_the_longest_remainder() -> None:
    """600 + 400 fill one; 600 + 300 and 500 + 400 would leave 100 twice."""
    pieces = [Piece(f"{length}", length) for length in (600, 500, 400, 300)]
    plan = plan_boards(pieces, [Supply("board", 1000)])
    assert [cut.length for layout in plan.layouts for cut in layout.offcuts] == [200]


def test_equal_patterns_stand_together() -> None:
    plan = plan_boards(MANY, STOCK, kerf=3)
    patterns = [(each.stock, tuple(p.length for p in each.placed)) for each in plan.layouts]
    assert len(patterns) - len(set(patterns)) == sum(
        one == other for one, other in pairwise(patterns)
    )


def test_the_same_question_has_the_same_answer() -> None:
    assert plan_boards(MANY, STOCK, kerf=3, seed=4) == plan_boards(MANY, STOCK, kerf=3, seed=4)


def test_progress_is_told_and_only_gets_better() -> None:
    told: list[tuple[float, float]] = []
    plan = plan_boards(MANY, STOCK, kerf=3, patience=Patience(told=lambda *at: told.append(at)))
    costs, bounds = zip(*told, strict=True)
    assert list(costs) == sorted(costs, reverse=True)
    assert list(bounds) == sorted(bounds)
    assert told[-1] == pytest.approx((plan.cost, plan.bound))


def test_no_time_still_makes_a_plan() -> None:
    plan = plan_boards(MANY, STOCK, kerf=3, patience=Patience(seconds=0))
    check_boards(plan, MANY, STOCK, kerf=3)
    assert plan.stopped
    assert not plan.left


@pytest.mark.parametrize("after", [1, 2])
def test_an_interrupt_leaves_the_best_so_far(after: int) -> None:
    told = 0

    def interrupt(_cost: float, _bound: float) -> None:
        nonlocal told
        told += 1
        if told == after + 1:
            raise KeyboardInterrupt

    plan = plan_boards(MANY, STOCK, kerf=3, patience=Patience(told=interrupt))
    check_boards(plan, MANY, STOCK, kerf=3)
    assert plan.stopped
    assert not plan.left
