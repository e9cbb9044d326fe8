"""Flat faces of a room: polygons, cut off at planes, as bodies of a scene.  mm, unit frame."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.geometry.halfspaces import Plane, beyond
from rodwright.geometry.vectors import Vector
from rodwright.photo.scene import Body, Surface

Polygon = Sequence[Vector]
"""Corners of a convex face, anticlockwise seen from the side that is looked at."""
_THIN = 1e-9
"""mm2: faces smaller than this are none."""


def cut_off(polygon: Polygon, plane: Plane) -> list[Vector]:
    """What a plane leaves of a convex polygon (Sutherland and Hodgman's way of clipping); nothing
    where all of it lies beyond."""
    left: list[Vector] = []
    for number, corner in enumerate(polygon):
        before = polygon[number - 1]
        one, other = beyond(plane, before), beyond(plane, corner)
        if (one > 0) is not (other > 0):
            share = one / (one - other)
            x, y, z = (a + share * (b - a) for a, b in zip(before, corner, strict=True))
            left.append((x, y, z))
        if other <= 0:
            left.append(corner)
    return left


def faces(name: str, polygons: Iterable[Polygon], surface: Surface) -> Body | None:
    """Polygons of one surface as a body; None where there is none of any area."""
    points: list[Vector] = []
    normals, triangles = [], []
    for polygon in polygons:
        corners = np.array(polygon)
        for second in range(1, len(polygon) - 1):
            fan = corners[[0, second, second + 1]]
            normal = np.cross(fan[1] - fan[0], fan[2] - fan[0])
            size = float(np.linalg.norm(normal))
            if size > _THIN:
                triangles.append(np.arange(3) + len(points))
                points += map(tuple, fan.tolist())
                normals += [normal / size] * 3
    if not triangles:
        return None
    return Body(name, np.array(points), np.array(normals), np.array(triangles), surface)


def sides_of(box: Box) -> Iterator[Polygon]:
    """The six sides of a box, seen from outside."""
    (a, b, c), (x, y, z) = box.low, box.high
    yield ((a, b, c), (x, b, c), (x, b, z), (a, b, z))
    yield ((x, y, c), (a, y, c), (a, y, z), (x, y, z))
    yield ((a, y, c), (a, b, c), (a, b, z), (a, y, z))
    yield ((x, b, c), (x, y, c), (x, y, z), (x, b, z))
    yield ((a, b, z), (x, b, z), (x, y, z), (a, y, z))
    yield ((a, y, c), (x, y, c), (x, b, c), (a, b, c))


def upright(
    start: tuple[float, float], stop: tuple[float, float], foot: float, top: float
) -> Polygon:
    """A wall from one point of the floor to another, seen with the first at the left."""
    (a, b), (x, y) = start, stop
    return ((a, b, foot), (x, y, foot), (x, y, top), (a, b, top))


def level(
    low: tuple[float, float], high: tuple[float, float], at: float, *, down: bool = False
) -> Polygon:
    """A level rectangle between two corners, seen from above, or from below (``down``)."""
    (a, b), (x, y) = low, high
    corners = ((a, b, at), (x, b, at), (x, y, at), (a, y, at))
    return corners[::-1] if down else corners
