"""Boxes: what two share, reach and hold, told apart by shapely and trimesh."""

from __future__ import annotations

import pytest
import shapely
import trimesh
from hypothesis import given
from hypothesis import strategies as st

from rodwright.geometry import TOUCH, Box, Vector, minus, plus

PLACE, LENGTH = st.integers(-60, 60), st.integers(1, 60)
VECTOR = st.tuples(PLACE, PLACE, PLACE).map(lambda each: (each[0] / 2, each[1] / 2, each[2] / 2))
SIZE = st.tuples(LENGTH, LENGTH, LENGTH).map(lambda each: (each[0] / 2, each[1] / 2, each[2] / 2))
BOX = st.builds(lambda low, size: Box(low, plus(low, size)), VECTOR, SIZE)
AXIS = st.integers(0, 2)


def plan(box: Box, axis: int) -> shapely.Polygon:
    """A box seen along an axis."""
    first, second = (i for i in range(3) if i != axis)
    return shapely.box(box.low[first], box.low[second], box.high[first], box.high[second])


def mesh(*boxes: Box) -> trimesh.Trimesh:
    return trimesh.util.concatenate(
        [trimesh.creation.box(bounds=(box.low, box.high)) for box in boxes]
    )


@given(BOX)
def test_size_centre_and_corners(box: Box) -> None:
    solid = mesh(box)
    assert box.size == pytest.approx(solid.extents)
    assert box.centre == pytest.approx(solid.centroid)
    assert set(box.corners()) == {tuple(vertex) for vertex in solid.vertices.tolist()}
    assert len(box.corners()) == 8


@given(VECTOR, VECTOR)
def test_any_two_opposite_corners_give_the_same_box(one: Vector, other: Vector) -> None:
    box = Box.from_corners(one, other)
    assert box == Box.from_corners(other, one) == Box.of_points([one, other])
    assert set(zip(box.low, box.high, strict=True)) == {
        (min(pair), max(pair)) for pair in zip(one, other, strict=True)
    }


@given(st.lists(BOX, min_size=1, max_size=5))
def test_the_box_round_others_is_the_one_round_their_meshes(boxes: list[Box]) -> None:
    around = Box.of_boxes(boxes)
    low, high = mesh(*boxes).bounds
    assert (around.low, around.high) == (pytest.approx(low), pytest.approx(high))
    assert all(around.contains(box) for box in boxes)
    assert boxes[0].union(boxes[-1]) == Box.of_boxes([boxes[0], boxes[-1]])


def test_there_is_no_box_round_nothing() -> None:
    with pytest.raises(ValueError):
        Box.of_points([])
    with pytest.raises(ValueError):
        Box.of_boxes([])


@given(BOX, BOX, AXIS)
def test_what_two_boxes_share_is_what_their_plans_share(one: Box, other: Box, axis: int) -> None:
    shared = one.intersection(other)
    assert shared == other.intersection(one)
    assert shared.size == one.overlap(other)
    seen = plan(one, axis).intersection(plan(other, axis))
    if shared.is_empty:
        sides = [plan(one, each).intersection(plan(other, each)).area for each in range(3)]
        assert min(sides) == 0
    else:
        assert plan(shared, axis).equals(seen)
        assert one.contains(shared)
        assert other.contains(shared)


@given(BOX, BOX)
def test_two_boxes_intersect_where_they_share_volume(one: Box, other: Box) -> None:
    plans = [plan(one, axis).intersection(plan(other, axis)).area for axis in range(3)]
    assert one.intersects(other) == other.intersects(one) == (min(plans) > 0)
    assert one.intersects(other) is not one.intersection(other).is_empty
    assert one.intersects(one)


@given(BOX, BOX)
def test_two_boxes_touch_when_each_gives_way_by_half_their_penetration(
    one: Box, other: Box
) -> None:
    depth = one.penetration(other)
    assert depth == other.penetration(one)
    assert (depth > 0) is one.intersects(other)
    less = one.grown(-depth / 2), other.grown(-depth / 2)
    assert less[0].penetration(less[1]) == pytest.approx(0.0)


@given(BOX, BOX)
def test_boxes_that_meet_do_so_in_a_patch(one: Box, other: Box) -> None:
    patch = one.contact(other)
    apart = sum(extent > 0 for extent in one.overlap(other))
    assert (patch is not None) == (min(one.overlap(other)) >= 0 and apart >= 2)
    if patch is not None:
        assert one.contains_point(patch.centre)
        assert other.contains_point(patch.centre)


@pytest.mark.parametrize(
    ("by", "meets"),
    [
        ((10.0, 0.0, 0.0), True),
        ((10.0 + TOUCH / 2, 0.0, 0.0), True),
        ((10.0 + 2 * TOUCH, 0.0, 0.0), False),
        ((10.0, 10.0, 0.0), False),
        ((10.0, 10.0, 10.0), False),
        ((9.0, 9.0, 9.0), True),
    ],
)
def test_an_edge_or_a_corner_is_no_meeting(by: Vector, meets: bool) -> None:
    box = Box((0.0, 0.0, 0.0), (10.0, 10.0, 10.0))
    assert (box.contact(box.moved(by)) is not None) is meets


@given(BOX, BOX, VECTOR)
def test_what_a_box_contains(one: Box, other: Box, point: Vector) -> None:
    assert one.contains(other) == all(
        plan(one, axis).covers(plan(other, axis)) for axis in range(3)
    )
    assert one.contains_point(point) == (one.union(Box(point, point)) == one)


@given(BOX, SIZE)
def test_a_box_grown_reaches_that_much_farther(box: Box, by: Vector) -> None:
    grown = box.grown(by)
    assert minus(grown.high, box.high) == minus(box.low, grown.low) == pytest.approx(by)
    assert grown.grown((-by[0], -by[1], -by[2])) == box
    assert box.grown(by[0]) == box.grown((by[0], by[0], by[0]))


@given(BOX, AXIS, PLACE, LENGTH)
def test_a_box_with_other_ends_is_the_same_across(
    box: Box, axis: int, low: float, length: float
) -> None:
    other = box.spanning(axis, low, low + length)
    assert (other.low[axis], other.high[axis]) == (low, low + length)
    assert plan(other, axis).equals(plan(box, axis))
    assert box.spanning(axis) == box
    assert box.spanning(axis, high=box.high[axis]) == box
