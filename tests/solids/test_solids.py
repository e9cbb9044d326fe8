"""Solids against closed forms, and mitred corners against plane trigonometry."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from cadquery import Shape, Solid, Vertex
from hypothesis import example, given, settings

from kit.closed_forms import CROSSING, SINGLE, Case
from kit.samples import bookcase, worked_part
from kit.strategies import placements, shapes
from rodwright.solids import location_of, solid_of
from rodwright.unit import (
    Easing,
    Groove,
    Hole,
    Mitre,
    Notch,
    Part,
    Placement,
    PocketHole,
    ShapeKey,
    Surface,
    Working,
)

S = Surface


@pytest.mark.parametrize("case", [*SINGLE, *CROSSING], ids=lambda case: case.name)
def test_workings(case: Case) -> None:
    solid = solid_of(case.shape)
    assert solid.Volume() == pytest.approx(case.volume, rel=1e-8)
    assert solid.Center().toTuple() == pytest.approx(case.centroid, abs=1e-4)


def _assert_sound(shape: ShapeKey) -> None:
    solid = solid_of(shape)
    assert solid.ShapeType() == "Solid"
    assert solid.isValid()
    (shell,) = solid.Shells()
    assert shell.wrapped.Closed()
    assert solid.Volume() > 0
    for vertex in solid.Vertices():
        for at, length in zip(vertex.toTuple(), shape[0], strict=True):
            assert -1e-6 < at < length + 1e-6


@pytest.mark.parametrize("part", [*bookcase().parts, worked_part()], ids=lambda part: part.ref)
def test_sample_parts_are_sound(part: Part) -> None:
    _assert_sound(part.shape)


# Three rounds that cross aslant beside each other: measured with too few points, the solid came
# out 1 mm3 too small.
@example(
    (
        (80.0, 40.0, 10.0),
        (
            Notch(0.0, 0.0, 1.0, 1.0),
            Hole(S.NEAR_END, (2.0, 2.0), 2.0),
            PocketHole(S.REVERSE, S.NEAR_END, 3.1, 4.0, 6.0, 4.0, 2.0, 15.0),
        ),
    )
)
@settings(max_examples=60)
@given(shapes())
def test_random_shapes_are_sound(shape: ShapeKey) -> None:
    _assert_sound(shape)


@settings(max_examples=25)
@given(shapes())
def test_the_order_of_workings_does_not_matter(shape: ShapeKey) -> None:
    size, workings = shape
    turned = solid_of((size, workings[::-1]))
    assert turned.Volume(1e-9) == pytest.approx(solid_of(shape).Volume(1e-9), rel=1e-7)


def test_equal_shapes_are_built_once() -> None:
    unit, again = bookcase(), bookcase()
    for part in unit.parts:
        assert solid_of(part.shape) is solid_of(again.part(part.ref).shape)
    assert solid_of(unit.part("SD1").shape) is solid_of(unit.part("SD2").shape)
    assert solid_of(unit.part("SD1").shape) is not solid_of(unit.part("SH1").shape)


@pytest.mark.parametrize(
    ("workings", "left"),
    [
        ((Notch(190.0, 0.0, 10.0, 120.0),), "2 pieces"),
        ((Notch(100.0, 0.0, 10.0, 120.0), Notch(200.0, 0.0, 10.0, 120.0)), "3 pieces"),
        ((Groove(S.FACE, 50.0, 6.0, 20.0),), "2 pieces"),
        ((Groove(S.FACE, 50.0, 6.0, 12.0), Groove(S.REVERSE, 50.0, 6.0, 12.0)), "2 pieces"),
        ((Notch(0.0, 0.0, 400.0, 120.0),), "nothing"),
        ((Groove(S.FACE, 0.0, 120.0, 20.0),), "nothing"),
    ],
)
def test_a_part_must_stay_one_piece(workings: tuple[Working, ...], left: str) -> None:
    with pytest.raises(ValueError, match=f"400 x 120 x 20 blank leave {left}"):
        solid_of(((400.0, 120.0, 20.0), workings))


def test_a_through_hole_leaves_a_tube_and_a_blind_one_a_floor() -> None:
    size = (400.0, 120.0, 20.0)
    through = solid_of((size, (Hole(S.FACE, (320.0, 60.0), 8.0),)))
    blind = solid_of((size, (Hole(S.FACE, (320.0, 60.0), 8.0, 12.0),)))
    assert len(through.Faces()) == 7
    assert len(blind.Faces()) == 8
    (floor,) = [face for face in blind.Faces() if math.isclose(face.Center().z, 8.0)]
    assert floor.Area() == pytest.approx(math.pi * 16)


def test_an_easing_is_a_quarter_round_that_touches_both_surfaces() -> None:
    solid = solid_of(((400.0, 120.0, 20.0), (Easing(S.FACE, S.FACE_EDGE, 4.0),)))
    (round_face,) = [face for face in solid.Faces() if face.geomType() == "CYLINDER"]
    assert round_face.Area() == pytest.approx(math.pi / 2 * 4 * 400)
    ends = sorted((vertex.Y, vertex.Z) for vertex in round_face.Vertices())
    assert ends[0] == pytest.approx((0.0, 16.0))
    assert ends[-1] == pytest.approx((4.0, 20.0))


# --- mitred corners ------------------------------------------------------------------

CORNERS = [85 + step / 2 for step in range(21)]
WIDTH, THICKNESS = 45.0, 22.0


def _member(length: float, end: Surface, corner: float, frame: bool) -> ShapeKey:
    """A frame's rail or stile, or one wall of a box, mitred for half a corner."""
    long = S.FACE_EDGE if frame else S.REVERSE
    size = (length, WIDTH, THICKNESS) if frame else (length, THICKNESS, WIDTH)
    return size, (Mitre(end, 90 - corner / 2, long),)


@pytest.mark.parametrize("frame", [True, False], ids=["frame", "bevel"])
@pytest.mark.parametrize("corner", CORNERS)
def test_long_and_short_points(corner: float, frame: bool) -> None:
    """The cut is the hypotenuse over the member's width: it runs width x tan(saw angle)."""
    run = WIDTH * math.tan(math.radians(90 - corner / 2))
    across = 1 if frame else 2
    solid = solid_of(_member(400.0, S.NEAR_END, corner, frame))
    points = [vertex.toTuple() for vertex in solid.Vertices()]
    assert len(points) == 8
    outside = [point[0] for point in points if point[across] < WIDTH / 2]
    inside = [point[0] for point in points if point[across] > WIDTH / 2]
    assert max(outside) - min(outside) == pytest.approx(400.0)
    assert max(inside) - min(inside) == pytest.approx(400.0 - run)
    both = solid_of(
        (
            _member(400.0, S.NEAR_END, corner, frame)[0],
            (
                *_member(400.0, S.NEAR_END, corner, frame)[1],
                *_member(400.0, S.FAR_END, corner, frame)[1],
            ),
        )
    )
    inside = [v.X for v in both.Vertices() if v.toTuple()[across] > WIDTH / 2]
    assert max(inside) - min(inside) == pytest.approx(400.0 - 2 * run)


def _placed(shape: ShapeKey, placement: Placement) -> Shape:
    part = replace(worked_part(), placement=placement)
    return solid_of(shape).moved(location_of(part))


def _cut_face(solid: Shape, corner: float) -> Shape:
    """The face on the plane that halves the corner, which lies at the unit's origin."""
    half = math.radians(corner / 2)
    faces = [
        face
        for face in solid.Faces()
        if all(
            abs(vertex.X * math.sin(half) - vertex.Y * math.cos(half)) < 1e-9
            for vertex in face.Vertices()
        )
    ]
    assert len(faces) == 1
    return faces[0]


@pytest.mark.parametrize("frame", [True, False], ids=["frame", "bevel"])
@pytest.mark.parametrize("corner", CORNERS)
def test_two_mitred_members_close_a_corner(corner: float, frame: bool) -> None:
    """Long points at the origin; one along x, the other turned by the corner's angle."""
    turn = math.radians(corner)
    inwards = (math.sin(turn), -math.cos(turn), 0.0)
    towards = (-math.cos(turn), -math.sin(turn), 0.0)
    start = (-300.0 * towards[0], -300.0 * towards[1], 0.0)
    if frame:
        first = Placement((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
        second = Placement(start, towards, inwards)
    else:  # on edge: widths upright, the reverse outside, where the long points are
        first = Placement((0.0, 0.0, THICKNESS), (1.0, 0.0, 0.0), (0.0, 0.0, -1.0))
        second = Placement((start[0], start[1], THICKNESS), towards, (0.0, 0.0, -1.0))
    rail = _placed(_member(400.0, S.NEAR_END, corner, frame), first)
    stile = _placed(_member(300.0, S.FAR_END, corner, frame), second)
    assert rail.intersect(stile).Volume() == pytest.approx(0.0, abs=1e-6)
    assert rail.distance(stile) == pytest.approx(0.0, abs=1e-9)
    faces = [_cut_face(solid, corner) for solid in (rail, stile)]
    for face, other in (faces, faces[::-1]):
        assert face.Area() == pytest.approx(THICKNESS * WIDTH / math.sin(math.radians(corner / 2)))
        for vertex in face.Vertices():
            assert other.distance(vertex) < 1e-9
    joined = rail.fuse(stile)
    assert len(joined.Solids()) == 1
    assert joined.Volume() == pytest.approx(rail.Volume() + stile.Volume())


# --- placing -------------------------------------------------------------------------


@settings(max_examples=60)
@given(placements())
def test_placements_and_locations_agree(placement: Placement) -> None:
    part = replace(worked_part(), placement=placement)
    location, matrix = location_of(part), placement.matrix()
    transform = location.wrapped.Transformation()
    for row in range(3):
        for column in range(4):
            assert transform.Value(row + 1, column + 1) == pytest.approx(
                matrix[row][column], abs=1e-9
            )
    assert matrix[3] == (0.0, 0.0, 0.0, 1.0)
    for point in ((0.0, 0.0, 0.0), (400.0, 0.0, 0.0), (12.0, 34.5, -7.0)):
        moved = Vertex.makeVertex(*point).moved(location)
        assert placement.to_unit(point) == pytest.approx(moved.toTuple(), abs=1e-9)


@settings(max_examples=40)
@given(placements())
def test_bounds_are_the_placed_blanks(placement: Placement) -> None:
    part = replace(worked_part(), placement=placement, workings=())
    box = Solid.makeBox(*part.blank.size).moved(location_of(part)).BoundingBox(tolerance=1e-6)
    bounds = part.bounds()
    assert bounds.low == pytest.approx((box.xmin, box.ymin, box.zmin), abs=1e-5)
    assert bounds.high == pytest.approx((box.xmax, box.ymax, box.zmax), abs=1e-5)
