"""Mitred pieces, head to tail."""

from __future__ import annotations

from math import sqrt

import pytest

from kit.cutting_checker import check_boards
from rodwright.cutting import Piece, Plan, Supply, plan_boards


def planned(pieces: list[Piece], board: Supply, kerf: float = 3.0) -> Plan:
    plan = plan_boards(pieces, [board], kerf=kerf)
    check_boards(plan, pieces, [board], kerf=kerf)
    return plan


def rail(length: float, slants: tuple[float, float], count: int, width: float = 0) -> Piece:
    return Piece(
        f"{length:g} {slants}", length, width, count, slants=slants, section=0 if width else 60
    )


@pytest.mark.parametrize("width", [0, 60])
def test_a_chain_of_mitres(width: float) -> None:
    """n pieces need sum(L) - (n - 1) s + (n - 1) kerf sqrt(2): 4 x 500 - 3 x 60 + 3 x 4.25."""
    needed = 4 * 500 - 3 * 60 + 3 * 4.25
    assert 3 * sqrt(2) == pytest.approx(4.25, abs=0.01)
    pieces = [rail(500, (60, 60), 4, width)]
    plan = planned(pieces, Supply("board", needed, width))
    assert (plan.cost, plan.proven) == (1, True)
    assert [each.flipped for each in plan.layouts[0].placed] == [False, True, False, True]
    assert planned(pieces, Supply("board", needed - 0.05, width)).cost == 2


def test_single_slants_pair() -> None:
    """Two with one slanted end each lie with these ends together."""
    pieces = [rail(500, (60, 0), 2)]
    assert planned(pieces, Supply("board", 1000 - 60 + 4.25)).cost == 1
    assert planned(pieces, Supply("board", 1000 - 60 + 4.2)).cost == 2


def test_left_and_right_hand_ends_need_one_between_them() -> None:
    """A left hand and a right hand don't pair, but both pair with what is mitred at both ends."""
    hands = [rail(500, (60, 0), 1), rail(501, (0, 60), 1)]
    assert planned(hands, Supply("board", 1004)).cost == 1
    assert planned(hands, Supply("board", 1003.9)).cost == 2
    between = [*hands, rail(300, (60, 60), 1)]
    assert planned(between, Supply("board", 1301 - 120 + 8.5)).cost == 1


def test_square_pieces_lie_beside_the_chain() -> None:
    pieces = [rail(500, (60, 60), 2), rail(400, (0, 0), 1)]
    assert planned(pieces, Supply("board", 1400 - 60 + 4.25 + 3)).cost == 1
    assert planned(pieces, Supply("board", 1400 - 60 + 4.25 + 2.95)).cost == 2


def test_what_is_left_has_a_square_end() -> None:
    plan = planned([rail(500, (60, 60), 2)], Supply("board", 2000))
    (offcut,) = plan.layouts[0].offcuts
    assert offcut.x == pytest.approx(1000 - 60 + 4.25 + 3, abs=0.03)
    assert offcut.x + offcut.length == 2000
