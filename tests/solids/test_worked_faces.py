"""Faces and the workings that left them, held to the surfaces on which Open CASCADE has them."""

from __future__ import annotations

import math
from typing import get_args

import numpy as np
import pytest
from cadquery import Face
from cadquery import Vector as Place
from hypothesis import given
from OCP.BRepAdaptor import BRepAdaptor_Surface

from kit.samples import bookcase, worked_part
from kit.strategies import shapes
from rodwright.geometry import Vector
from rodwright.solids import solid_of
from rodwright.solids.worked_faces import taken, worked_faces
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    ShapeKey,
    Surface,
    Working,
)

SIZE = (400.0, 120.0, 20.0)


def on_the_blank(size: Vector, face: Face) -> bool:
    """Whether a face lies in one of the six planes of the blank."""
    box = face.BoundingBox()
    spans = ((box.xmin, box.xmax), (box.ymin, box.ymax), (box.zmin, box.zmax))
    return face.geomType() == "PLANE" and any(
        high - low < 1e-5 and min(abs(low), abs(low - length)) < 1e-5
        for (low, high), length in zip(spans, size, strict=True)
    )


# What each kind leaves, drawn on paper: how many faces, and how many of them are round.
ALONE: list[tuple[Working, int, int]] = [
    (Rebate(Surface.FACE, Surface.BACK_EDGE, 10.0, 8.0), 2, 0),
    (Rebate(Surface.FACE, Surface.BACK_EDGE, 10.0, 8.0, 50.0, 300.0), 4, 0),
    (Groove(Surface.FACE, 30.0, 6.0, 7.0), 3, 0),
    (Groove(Surface.FACE_EDGE, 7.0, 5.0, 6.0, 100.0, 220.0), 5, 0),
    (Housing(Surface.REVERSE, 150.0, 18.0, 6.0, 15.0), 4, 0),
    (Notch(370.0, 90.0, 30.0, 30.0), 2, 0),
    (Notch(100.0, 30.0, 30.0, 30.0), 4, 0),
    (Mitre(Surface.NEAR_END, 40.0, Surface.BACK_EDGE), 1, 0),
    (Easing(Surface.FACE, Surface.FACE_EDGE, 4.0), 1, 1),
    (Easing(Surface.FACE, Surface.FACE_EDGE, 4.0, 50.0, 300.0), 3, 1),
    (Hole(Surface.FACE, (320.0, 60.0), 8.0), 1, 1),
    (Hole(Surface.REVERSE, (280.0, 20.0), 5.0, 12.0), 2, 1),
    (Bevel(Surface.REVERSE, Surface.FACE_EDGE, 5.0, 4.0), 1, 0),
    (Mortise(Surface.BACK_EDGE, (310.0, 6.0), (30.0, 8.0), 20.0), 5, 0),
    (Mortise(Surface.FACE, (180.0, 70.0), (40.0, 8.0), 9.0, round_ends=True), 5, 2),
    (PocketHole(Surface.REVERSE, Surface.BACK_EDGE, 240.0, 10.0, 20.0, 9.5, 4.0), 3, 2),
    (FingerPull(Surface.FACE, Surface.FACE_EDGE, 4.0, 6.0, 4.0), 1, 1),
    (FingerPull(Surface.REVERSE, Surface.FAR_END, 30.0, 6.0, 4.0, 30.0, 90.0), 3, 1),
]


def test_every_kind_of_working_is_among_them() -> None:
    assert {each.__name__ for each in get_args(Working)} == {
        type(working).__name__ for working, _, _ in ALONE
    }


@pytest.mark.parametrize(
    ("working", "count", "round_ones"), ALONE, ids=lambda each: type(each).__name__
)
def test_every_kind_of_working_has_its_faces(working: Working, count: int, round_ones: int) -> None:
    shape: ShapeKey = (SIZE, (working,))
    faces = list(zip(solid_of(shape).Faces(), worked_faces(shape), strict=True))
    own = [face for face, left in faces if left == (0,)]
    assert len(own) == count
    assert sum(face.geomType() == "CYLINDER" for face in own) == round_ones
    assert {left for _, left in faces} == {(), (0,)}


def test_a_face_beside_a_slight_slant_is_left_by_one_working() -> None:
    """A bevel of 11 degrees cuts an eased arris: just outside its face isn't the arris's."""
    size = (80.0, 40.0, 10.0)
    easing = Easing(Surface.REVERSE, Surface.FACE_EDGE, 0.5)
    bevel = Bevel(Surface.REVERSE, Surface.NEAR_END, 2.6, 0.5)
    notch = Notch(0.0, 0.0, 1.0, 1.0)
    shape = (size, (notch, easing, Rebate(Surface.FACE, Surface.FACE_EDGE, 0.5, 0.5), bevel))
    slants = [
        left
        for face, left in zip(solid_of(shape).Faces(), worked_faces(shape), strict=True)
        if 3 in left
    ]
    assert slants == [(3,)]


@given(shapes())
def test_a_face_has_a_working_if_it_is_no_surface_of_the_blank(shape: ShapeKey) -> None:
    size, workings = shape
    solid = solid_of(shape)
    for face, left in zip(solid.Faces(), worked_faces(shape), strict=True):
        if face.Area() < 0.01:
            continue
        assert bool(left) is not on_the_blank(size, face)
        for index in left:
            if face.geomType() == "CYLINDER":
                found = BRepAdaptor_Surface(face.wrapped).Cylinder().Radius()
                assert any(
                    math.isclose(found, each, abs_tol=1e-6) for each in radii(workings[index])
                )
            elif face.geomType() == "SPHERE":
                found = BRepAdaptor_Surface(face.wrapped).Sphere().Radius()
                assert any(
                    math.isclose(found, each, abs_tol=1e-6) for each in radii(workings[index])
                )
            else:
                corners = np.array([vertex.toTuple() for vertex in face.Vertices()])
                assert any(
                    np.abs((corners - point) @ normal).max() < 1e-5
                    for point, normal in planes(size, workings[index])
                )


def radii(working: Working) -> list[float]:
    """The radii of the round faces that a working leaves."""
    match working:
        case Hole(diameter=diameter):
            return [diameter / 2]
        case Easing(radius=radius) | FingerPull(radius=radius):
            return [radius]
        case PocketHole(diameter=diameter, screw=screw):
            return [diameter / 2, screw / 2]
        case Mortise(extent=extent):
            return [min(extent) / 2]
    return []


def planes(size: Vector, working: Working) -> list[tuple[np.ndarray, np.ndarray]]:
    """A point and the normal of each plane in which a working may leave a face."""
    square = np.eye(3)

    def across(axis: int, place: float) -> tuple[np.ndarray, np.ndarray]:
        return square[axis] * place, square[axis]

    def floor(surface: Surface, depth: float) -> tuple[np.ndarray, np.ndarray]:
        return across(surface.axis, size[surface.axis] - depth if surface.at_high else depth)

    match working:
        case Mitre() | Bevel():
            ((point, normal),) = working.planes(size)
            return [(np.array(point), np.array(normal))]
        case Easing(surface, edge, _, start, stop):
            run = 3 - surface.axis - edge.axis
            return [across(run, start), across(run, size[run] if stop is None else stop)]
        case Hole(surface, _, _, depth):
            return [] if depth is None else [floor(surface, depth)]
        case PocketHole(surface, end, position, leaves, stop, _, _, angle):
            slope, point, way = math.radians(angle), np.zeros(3), np.zeros(3)
            point[3 - surface.axis - end.axis] = position
            point += floor(surface, leaves)[0] + floor(end, 0.0)[0]
            way[end.axis] = math.cos(slope) * (-1 if end.at_high else 1)
            way[surface.axis] = math.sin(slope) * (1 if surface.at_high else -1)
            return [(point + way * stop, way)]
    box = working.bounds(size)
    return [across(axis, each[axis]) for axis in range(3) for each in (box.low, box.high)]


@given(shapes(most=2))
def test_what_is_taken_is_what_the_solid_lacks(shape: ShapeKey) -> None:
    size, workings = shape
    points = np.random.default_rng(7).uniform(0.0, 1.0, (60, 3)) * size
    gone = np.zeros(len(points), dtype=bool)
    for working in workings:
        gone |= taken(size, working, points)
    solid = solid_of(shape)
    for point, away in zip(points, gone, strict=True):
        assert solid.isInside(Place(*point), 1e-6) is not away


def test_a_face_that_two_workings_share_has_both() -> None:
    # Two housings side by side, equally deep, have one floor.
    pair = (Housing(Surface.FACE, 100.0, 18.0, 6.0), Housing(Surface.FACE, 118.0, 18.0, 6.0))
    assert (0, 1) in worked_faces((SIZE, pair))


def test_every_working_of_a_piece_has_a_face() -> None:
    for part in [*bookcase().parts, worked_part()]:
        found = {index for left in worked_faces(part.shape) for index in left}
        assert found == set(range(len(part.workings)))
