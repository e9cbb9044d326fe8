"""Facts of a unit: what it stands on, how large it is, what its opening leaves."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import unit_from
from rodwright.unit import Opening, Role, Unit
from rodwright.unit.facts import (
    box_as_fitted,
    carcass_size,
    fitted_size,
    frame_reach,
    is_on_feet,
    left_over,
    plinth_boards,
    size_as_fitted,
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


def _in_opening(frame: dict[str, Any], overlap: float, sides: float = 5) -> Unit:
    return unit_from(
        "opening: {width: 610, height: 707, depth: 500}\n",
        face_frame=frame,
        fit={"sides": sides, "top": 7, "overlap": overlap},
    )


def test_a_scribed_frame_ends_at_the_walls() -> None:
    """By hand: carcass 600 x 700, frame 14 past it at both sides and the top: 628 x 714, and the
    opening 610 x 707, so 9 go at each side and 7 at the top."""
    frame = {**FRAME, "overhang": {"sides": 14, "top": 14}}
    unit = _in_opening(frame, 2)
    assert unit.size[:2] == pytest.approx((628, 714))
    assert size_as_fitted(unit) == pytest.approx((610, 707, unit.size[2]))
    box = box_as_fitted(unit)
    assert (box.low[0], box.high[0], box.high[2]) == pytest.approx((-5, 605, 707))


def test_what_is_not_cut_on_site_stays_as_it_is_made() -> None:
    free = unit_from(SIZE, face_frame=FRAME)
    assert box_as_fitted(free) == free.envelope
    narrow = _in_opening({**FRAME, "overhang": {"sides": 3, "top": 3}}, 2)
    assert size_as_fitted(narrow) == pytest.approx((606, 703, narrow.size[2]))
    unscribed = _in_opening({**FRAME, "overhang": {"sides": 14, "top": 14}}, 0)
    assert size_as_fitted(unscribed) == pytest.approx(unscribed.size)


@pytest.mark.parametrize(("depth", "left"), [(None, (30, 20)), (490.0, (30, 20, -10))])
def test_what_an_opening_leaves(depth: float | None, left: tuple[float, ...]) -> None:
    unit = unit_from(SIZE)
    assert size_going_in(unit) == pytest.approx((600, 700, 500))
    assert left_over(unit, Opening(630, 720, depth)) == pytest.approx(left)
