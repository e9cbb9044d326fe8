"""Boards that are ripped to strips."""

from __future__ import annotations

import pytest

from kit.cutting_checker import check_boards
from rodwright.cutting import CannotCutError, Flaw, Piece, Plan, Supply, Trim, plan_boards


def planned(sizes: list[tuple[float, float, int]], stock: list[Supply], kerf: float = 3.0) -> Plan:
    pieces = [Piece(f"{size[0]:g} x {size[1]:g}", *size) for size in sizes]
    plan = plan_boards(pieces, stock, kerf=kerf)
    check_boards(plan, pieces, stock, kerf=kerf)
    return plan


def test_strips_and_the_cuts_between_them_fill_a_board() -> None:
    """45 + 3 + 60 + 3 + 36 = 147 mm."""
    sizes = [(2000.0, 45.0, 1), (2000.0, 60.0, 1), (2000.0, 36.0, 1)]
    plan = planned(sizes, [Supply("board", 2000, 147)])
    assert (plan.cost, plan.proven) == (1, True)
    assert planned(sizes, [Supply("board", 2000, 146.9)]).cost == 2


def test_narrow_pieces_come_from_what_is_left_of_a_wider_strip() -> None:
    plan = planned([(1200, 60, 1), (700, 45, 1)], [Supply("board", 2000, 60)])
    assert plan.used == {"board": 1}


def test_edges_and_ends_are_trimmed() -> None:
    board = Supply("board", 2000, 150, trim=Trim(20, 20, 5, 5))
    plan = planned([(1960, 140, 1)], [board])
    (placed,) = plan.layouts[0].placed
    assert (placed.x, placed.y) == (20, 5)
    with pytest.raises(CannotCutError, match="too large"):
        planned([(1960, 141, 1)], [board])


def test_a_flaw_at_an_edge_hurts_the_strips_it_touches() -> None:
    board = Supply("board", 2000, 100, flaws=(Flaw(900, 0, 100, 30),))
    plan = planned([(2000, 67, 1), (900, 30, 1), (1000, 30, 1)], [board])
    assert plan.used == {"board": 1}


def test_a_bad_end_is_left() -> None:
    board = Supply("board", 2000, 100, flaws=(Flaw(1800, 0, 200, 100),))
    assert planned([(1800, 100, 2)], [board]).used == {"board": 2}
    with pytest.raises(CannotCutError, match="flaws"):
        planned([(1801, 100, 1)], [board])


def test_offcuts_are_what_is_left_of_strips_and_beside_them() -> None:
    plan = planned([(1500, 60, 1)], [Supply("board", 2000, 150)])
    assert [(c.length, c.width) for c in plan.layouts[0].offcuts] == [(2000, 87), (497, 60)]


def test_the_cheapest_boards_are_bought() -> None:
    stock = [Supply("wide", 2400, 200, price=20), Supply("narrow", 2400, 100, price=11)]
    sizes = [(2400.0, 95.0, 3)]
    plan = planned(sizes, stock)
    assert (plan.cost, plan.proven, plan.used) == (31, True, {"wide": 1, "narrow": 1})
