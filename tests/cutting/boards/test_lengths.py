"""Bought lengths: least cost, and its proof."""

from __future__ import annotations

import pytest

from kit.cutting_checker import check_boards
from rodwright.cutting import CannotCutError, Flaw, Piece, Plan, Supply, Trim, plan_boards


def planned(pieces: list[tuple[float, int]], stock: list[Supply], kerf: float = 0.0) -> Plan:
    """A plan for lengths and how many of each, held to the checker."""
    wanted = [Piece(f"{length:g}", length, count=count) for length, count in pieces]
    plan = plan_boards(wanted, stock, kerf=kerf)
    check_boards(plan, wanted, stock, kerf=kerf)
    return plan


def test_gilmore_and_gomorys_rolls() -> None:
    """Rolls of 100 in: P. C. Gilmore, R. E. Gomory, A linear programming approach to the cutting
    stock problem, Operations Research 9 (1961); 453 in later textbooks."""
    plan = planned([(45, 97), (36, 610), (31, 395), (14, 211)], [Supply("roll", 100)])
    assert (plan.cost, plan.bound, plan.proven) == (453, 453, True)


def test_fewest_is_said_where_it_is_proven() -> None:
    """Four of 900 from one of 4000 rather than from four of 1000 (by hand), at no cost or at one
    that is the same."""
    for price in (0.0, 5.0):
        stock = [
            Supply("short", 1000, count=4, price=price),
            Supply("long", 4000, count=1, price=4 * price),
        ]
        plan = planned([(900, 4)], stock)
        assert (plan.used, plan.proven, plan.fewest) == ({"long": 1}, True, True)


def test_perfect_fits_leave_no_offcut() -> None:
    """Three thirds and two cuts between them are a whole; 1/8 in kerf, 8 ft."""
    kerf, whole = 3.175, 2438.4
    third = (whole - 2 * kerf) / 3
    plan = planned([(third, 6)], [Supply("batten", whole)], kerf)
    assert plan.cost == 2
    assert plan.proven
    assert [layout.offcuts for layout in plan.layouts] == [(), ()]


def test_a_remainder_smaller_than_the_kerf_is_eaten() -> None:
    plan = planned([(499, 2)], [Supply("batten", 1003)], kerf=3)
    assert plan.used == {"batten": 1}
    assert plan.layouts[0].offcuts == ()
    plan = planned([(499, 2)], [Supply("batten", 1005)], kerf=3)
    assert [cut.length for cut in plan.layouts[0].offcuts] == [1]
    assert planned([(500, 2)], [Supply("batten", 1002)], kerf=3).cost == 2


def test_the_cheapest_lengths_are_bought() -> None:
    """Two of 1200 from one of 2400; the third from what is there already."""
    stock = [
        Supply("long", 2400, price=9),
        Supply("short", 1200, price=5),
        Supply("end", 1300, count=1, price=0),
    ]
    plan = planned([(1200, 3)], stock)
    assert (plan.cost, plan.proven, plan.used) == (9, True, {"long": 1, "end": 1})


def test_what_there_is_is_used_up_before_more_is_bought() -> None:
    stock = [Supply("cheap", 1000, count=2, price=1), Supply("dear", 1000, price=3)]
    plan = planned([(600, 5)], stock)
    assert (plan.cost, plan.proven) == (2 * 1 + 3 * 3, True)


def test_trims_are_cut_off_both_ends() -> None:
    board = Supply("board", 1000, trim=Trim(near=30, far=20))
    assert planned([(473, 2)], [board], kerf=4).cost == 1
    assert planned([(474, 2)], [board], kerf=4).cost == 2
    with pytest.raises(CannotCutError, match="too large: 951"):
        planned([(951, 1)], [board])


def test_a_flaw_parts_a_board_into_stretches_for_one_price() -> None:
    """A knot from 400 to 450: the cuts beside it lie in it."""
    board = Supply("board", 1000, price=7, flaws=(Flaw(400, 0, 50, 0),))
    plan = planned([(400, 1), (550, 1)], [board], kerf=4)
    assert (plan.cost, plan.proven) == (7, True)
    with pytest.raises(CannotCutError, match="flaws: 551"):
        planned([(551, 1)], [board])


@pytest.mark.parametrize(("near", "far"), [(400, 597), (398, 599)])
def test_a_flaw_narrower_than_the_cut_costs_good_wood_on_either_side(near: int, far: int) -> None:
    board = Supply("board", 1000, flaws=(Flaw(400, 0, 1, 0),))
    assert planned([(near, 1), (far, 1)], [board], kerf=3).cost == 1
    assert planned([(near + 1, 1), (far, 1)], [board], kerf=3).cost == 2


def test_too_little_stock_is_proven() -> None:
    with pytest.raises(CannotCutError, match="not enough"):
        planned([(600, 3)], [Supply("board", 1000, count=2)])
    with pytest.raises(CannotCutError, match="not enough: 600"):
        planned([(600, 1)], [Supply("board", 1000, count=0)])


def test_as_much_as_there_is_may_be_needed() -> None:
    plan = planned([(600, 3)], [Supply("board", 1000, count=3)])
    assert (plan.cost, plan.proven) == (3, True)


def test_nothing_to_cut_needs_nothing() -> None:
    plan = plan_boards([], [Supply("board", 1000)], kerf=3)
    assert (plan.layouts, plan.cost, plan.proven) == ((), 0, True)
