"""The camera: level, at eye height, the whole of what is photographed in the picture."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.specs import unit_from
from rodwright.geometry.boxes import Box
from rodwright.photo.framing import (
    EYE_HEIGHT,
    FORMATS,
    MARGIN,
    format_for,
    framed,
    on_picture,
    side_of,
)
from rodwright.photo.scene import Camera
from rodwright.pictures.opened import opened
from rodwright.unit import Role

SIZES = st.floats(100.0, 5000.0)
BOXES = st.builds(
    lambda at, size: Box(at, tuple(a + b for a, b in zip(at, size, strict=True))),
    st.tuples(*[st.floats(-2000.0, 2000.0)] * 3),
    st.tuples(SIZES, st.floats(5.0, 1500.0), SIZES),
)


@given(box=BOXES, size=st.integers(100, 2000), side=st.sampled_from([-1, 1]))
def test_all_of_it_is_in_the_picture_and_fills_it(box: Box, size: int, side) -> None:
    width, height = format_for(box, size)
    camera = framed(box, width, height, floor=box.low[2], side=side)
    places = on_picture(camera, box.corners())
    (left, bottom), (right, top) = places.min(axis=0), places.max(axis=0)
    assert min(left, bottom, 1 - right, 1 - top) >= MARGIN - 1e-6
    assert max(right - left, top - bottom) == pytest.approx(1 - 2 * MARGIN, abs=1e-3)
    assert left == pytest.approx(1 - right, abs=1e-9)
    assert bottom <= 1 - top + 1e-9
    assert camera.eye[2] == pytest.approx(box.low[2] + EYE_HEIGHT)
    assert camera.eye[1] < box.low[1]


@given(box=BOXES, side=st.sampled_from([-1, 1]))
def test_uprights_stay_upright(box: Box, side) -> None:
    camera = framed(box, 600, 800, floor=0.0, side=side)
    for x, y, z in box.corners():
        foot, head = on_picture(camera, [(x, y, z), (x, y, z + 1234.5)])
        assert foot[0] == pytest.approx(head[0], abs=1e-12)
        assert head[1] > foot[1]


def test_a_point_straight_ahead_by_hand() -> None:
    """A camera 2 m off with a focal length of one width: 1 m across is half a picture."""
    camera = Camera((0.0, -2000.0, 1500.0), 0.0, 400, 800, 1.0, (0.1, -0.2))
    places = on_picture(camera, [(0.0, 0.0, 1500.0), (1000.0, 0.0, 2500.0)])
    # The middle of the picture lies a tenth right of and a fifth below the horizon's.
    assert places == pytest.approx(np.array([[0.4, 0.7], [0.9, 0.95]]))


def test_from_the_right_the_left_side_runs_away() -> None:
    box = Box((0.0, 0.0, 0.0), (1000.0, 400.0, 2000.0))
    camera = framed(box, 600, 900, side=1)
    assert camera.eye[0] > box.centre[0]
    heights = [
        float(np.ptp(on_picture(camera, [(x, 0.0, 0.0), (x, 0.0, 2000.0)])[:, 1]))
        for x in (0.0, 1000.0)
    ]
    assert heights[1] > heights[0]


@pytest.mark.parametrize(
    ("size", "shape"),
    [
        ((900.0, 300.0, 2300.0), 2 / 3),
        ((1600.0, 400.0, 1700.0), 1.0),
        ((3000.0, 400.0, 900.0), 1.5),
    ],
)
def test_the_format_goes_by_the_unit(size: tuple[float, float, float], shape: float) -> None:
    width, height = format_for(Box.of_size(size), 900)
    assert width / height == pytest.approx(shape, rel=0.01)
    assert max(width, height) == 900
    assert sorted(FORMATS) == list(FORMATS)


def test_what_stands_out_at_one_place_takes_no_room_at_others() -> None:
    """A door that stands open at the left: the box round all reaches far out at the right too."""
    case = Box((0.0, 0.0, 0.0), (1600.0, 450.0, 900.0))
    door = Box((0.0, -550.0, 100.0), (20.0, 0.0, 800.0))
    both = case.union(door)
    camera = framed(both, 900, 600, showing=(case, door))
    places = on_picture(camera, [*case.corners(), *door.corners()])
    assert places.min() >= MARGIN - 1e-6
    assert places.max() <= 1 - MARGIN + 1e-6
    away = [
        np.hypot(*np.subtract(each.eye[:2], both.centre[:2]))
        for each in (camera, framed(both, 900, 600))
    ]
    assert away[0] < away[1] - 50


@pytest.mark.parametrize(("hinge", "side"), [("left", 1), ("right", -1)])
def test_open_doors_stand_away_from_the_camera(hinge: str, side: int) -> None:
    unit = unit_from(
        "size: {width: 500, height: 900, depth: 300}\n",
        interior={"doors": {"count": 1, "hinges": hinge}},
    )
    assert side_of(unit) == side
    assert side_of(opened(unit)) == side
    (door,) = (part for part in opened(unit).parts if part.role is Role.DOOR)
    middle = unit.envelope.centre[0]
    assert (door.bounds().centre[0] - middle) * side < 0
