"""Facts of a unit: what it stands on, how large it is, what its opening leaves."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import unit_from
from rodwright.unit import Opening, Role
from rodwright.unit.facts import (
    carcass_size,
    fitted_size,
    frame_reach,
    is_on_feet,
    left_over,
    plinth_boards,
    size_going_in,
)

SIZE = "size: {width: 600, height: 700, depth: 500}\n"
FRAME = {"stock": "ash", "width": 45, "overhang": {"sides": 10}}


@pytest.mark.parametrize(
    ("more", "feet", "boards"),
    [
        ({}, False, 0),
        ({"base": {"kind": "plinth", "height": 80}}, False, 4),
        ({"base": {"kind": "toe_board", "height": 80}}, False, 0),
        ({"base": {"kind": "levellers", "height": 100}}, True, 0),
        ({"base": {"kind": "levellers", "height": 100, "board": {"toe_space": 45}}}, True, 0),
        ({"hung": True}, False, 0),
    ],
)
def test_what_it_stands_on(more: dict[str, Any], feet: bool, boards: int) -> None:
    unit = unit_from(SIZE, **more)
    assert is_on_feet(unit) is feet
    assert len(plinth_boards(unit)) == boards
    assert all(board.role is Role.PLINTH for board in plinth_boards(unit))


def test_a_face_frame_reaches_past_the_carcass() -> None:
    unit = unit_from(SIZE, face_frame=FRAME)
    assert carcass_size(unit) == pytest.approx((600, 700))
    assert frame_reach(unit) == pytest.approx({"left": 10, "right": 10, "top": 0})
    assert fitted_size(unit) == pytest.approx((620, 700, 500))
    assert frame_reach(unit_from(SIZE)) == {}


@pytest.mark.parametrize(("depth", "left"), [(None, (30, 20)), (490.0, (30, 20, -10))])
def test_what_an_opening_leaves(depth: float | None, left: tuple[float, ...]) -> None:
    unit = unit_from(SIZE)
    assert size_going_in(unit) == pytest.approx((600, 700, 500))
    assert left_over(unit, Opening(630, 720, depth)) == pytest.approx(left)
