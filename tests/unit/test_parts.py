"""Parts, placements, boxes and the unit."""

from __future__ import annotations

import math
from dataclasses import FrozenInstanceError, replace

import numpy as np
import pytest
from hypothesis import given, settings

from kit.closed_forms import SIZE
from kit.samples import bookcase, worked_part
from kit.strategies import placements
from rodwright.geometry import Box, cross
from rodwright.unit import Groove, Housing, Mitre, Notch, Placement, Rebate, Surface

S = Surface


def test_surfaces_lie_where_the_part_frame_says() -> None:
    lie = {surface: (surface.axis, surface.at_high) for surface in Surface}
    assert lie == {
        S.FACE: (2, True), S.REVERSE: (2, False), S.FACE_EDGE: (1, False),
        S.BACK_EDGE: (1, True), S.NEAR_END: (0, False), S.FAR_END: (0, True),
    }  # fmt: skip


@pytest.mark.parametrize(
    ("working", "low", "high"),
    [
        (Rebate(S.REVERSE, S.BACK_EDGE, 10, 8, 0, 300), (0, 110, 0), (300, 120, 8)),
        (Rebate(S.FACE, S.NEAR_END, 12, 5), (0, 0, 15), (12, 120, 20)),
        (Groove(S.FACE, 30, 6, 7, 20), (20, 30, 13), (400, 36, 20)),
        (Groove(S.FACE_EDGE, 7, 5, 6, 100, 220), (100, 0, 7), (220, 6, 12)),
        (Groove(S.BACK_EDGE, 7, 5, 6), (0, 114, 7), (400, 120, 12)),
        (Housing(S.REVERSE, 150, 18, 6, 15), (150, 15, 0), (168, 120, 6)),
        (Housing(S.FACE, 250, 12, 5, 0, 100), (250, 0, 15), (262, 100, 20)),
        (Notch(370, 90, 30, 30), (370, 90, 0), (400, 120, 20)),
    ],
)
def test_removals(
    working: Rebate | Groove | Housing | Notch,
    low: tuple[float, float, float],
    high: tuple[float, float, float],
) -> None:
    assert working.bounds(SIZE) == Box(low, high)


@pytest.mark.parametrize("angle", [5.0, 42.5, 45.0, 60.0])
@pytest.mark.parametrize("end", [S.NEAR_END, S.FAR_END])
@pytest.mark.parametrize("long", [S.FACE, S.REVERSE, S.FACE_EDGE, S.BACK_EDGE])
def test_a_mitre_passes_through_its_long_and_its_short_point(
    end: Surface, angle: float, long: Surface
) -> None:
    ((point, normal),) = Mitre(end, angle, long).planes(SIZE)
    run = SIZE[long.axis] * math.tan(math.radians(angle))
    long_point, short_point, corner = np.array(SIZE) / 2, np.array(SIZE) / 2, np.array(SIZE) / 2
    end_at, inward = (SIZE[0], -1) if end.at_high else (0.0, 1)
    long_at = SIZE[long.axis] if long.at_high else 0.0
    long_point[0], long_point[long.axis] = end_at, long_at
    short_point[0], short_point[long.axis] = end_at + inward * run, SIZE[long.axis] - long_at
    corner[0], corner[long.axis] = end_at, SIZE[long.axis] - long_at
    assert np.linalg.norm(normal) == pytest.approx(1.0)
    assert np.dot(long_point - point, normal) == pytest.approx(0.0, abs=1e-9)
    assert np.dot(short_point - point, normal) == pytest.approx(0.0, abs=1e-9)
    assert np.dot(corner - point, normal) > 0  # the waste is on the normal's side
    assert np.dot(np.array(SIZE) / 2 - point, normal) < 0


def test_boxes() -> None:
    box = Box((1.0, 2.0, 3.0), (11.0, 22.0, 33.0))
    assert box.size == (10.0, 20.0, 30.0)
    assert box.centre == (6.0, 12.0, 18.0)


@settings(max_examples=60)
@given(placements())
def test_a_placement_is_a_rigid_motion_without_mirroring(placement: Placement) -> None:
    matrix = np.array(placement.matrix())
    turn = matrix[:3, :3]
    np.testing.assert_allclose(turn @ turn.T, np.eye(3), atol=1e-12)
    assert np.linalg.det(turn) == pytest.approx(1.0)
    moved = matrix @ (12.0, 34.5, -7.0, 1.0)
    assert placement.to_unit((12.0, 34.5, -7.0)) == pytest.approx(tuple(moved[:3]))
    assert placement.thickness == pytest.approx(tuple(np.cross(*turn.T[:2])))


@settings(max_examples=60)
@given(placements())
def test_bounds_hold_the_blanks_corners(placement: Placement) -> None:
    part = replace(worked_part(), placement=placement, workings=())
    corners = np.array(
        [
            placement.to_unit((x, y, z))
            for x in (0.0, part.blank.length)
            for y in (0.0, part.blank.width)
            for z in (0.0, part.blank.thickness)
        ]
    )
    bounds = part.bounds()
    assert bounds.low == pytest.approx(tuple(corners.min(axis=0)), abs=1e-9)
    assert bounds.high == pytest.approx(tuple(corners.max(axis=0)), abs=1e-9)


def test_cross_product_is_right_handed() -> None:
    assert cross((1.0, 0.0, 0.0), (0.0, 1.0, 0.0)) == (0.0, 0.0, 1.0)
    assert cross((2.0, 3.0, 4.0), (5.0, 6.0, 7.0)) == tuple(np.cross((2, 3, 4), (5, 6, 7)))


def test_trimming_leaves_the_finished_size_alone() -> None:
    blank = replace(worked_part().blank, trim_length=3.0, trim_width=2.0)
    assert blank.size == (400.0, 120.0, 20.0)
    assert blank.rough_size == (403.0, 122.0, 20.0)


def test_a_shape_is_blank_and_workings_and_nothing_else() -> None:
    part = worked_part()
    other = replace(
        part, ref="X2", name="Other", placement=bookcase().part("BK1").placement, lipped=("front",)
    )
    assert other.shape == part.shape
    assert hash(other.shape) == hash(part.shape)
    assert replace(part, workings=part.workings[1:]).shape != part.shape
    longer = replace(part, blank=replace(part.blank, length=401.0))
    assert longer.shape != part.shape


def test_shapes_gather_equal_parts_in_order() -> None:
    unit = bookcase()
    gathered = [[part.ref for part in parts] for parts in unit.shapes.values()]
    assert gathered == [
        ["SD1", "SD2"], ["BT1", "SH1", "TP1"], ["BK1"], ["ST1"], ["ST2"], ["RL1"], ["RL2"],
    ]  # fmt: skip


def test_the_units_size_is_width_height_depth() -> None:
    assert bookcase().size == (800.0, 1000.0, 328.0)


def test_the_envelope_holds_the_parts() -> None:
    unit = bookcase()
    bounds = [part.bounds() for part in unit.parts]
    for i in range(3):
        assert min(box.low[i] for box in bounds) == pytest.approx(unit.envelope.low[i])
        assert max(box.high[i] for box in bounds) == pytest.approx(unit.envelope.high[i])


def test_parts_are_found_by_ref() -> None:
    unit = bookcase()
    assert unit.part("SH1").name == "Shelf"
    with pytest.raises(KeyError):
        unit.part("SH9")


def test_two_parts_cannot_share_a_ref() -> None:
    unit = bookcase()
    with pytest.raises(ValueError, match="same ref"):
        replace(unit, parts=(*unit.parts, unit.parts[0]))


def test_parts_do_not_change() -> None:
    with pytest.raises(FrozenInstanceError):
        worked_part().ref = "X2"  # type: ignore[misc]
