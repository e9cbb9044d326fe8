"""Convex bodies between planes: corners, and whether two of them meet.

A plane is a point and a unit normal that points at what is cut away.  Lengths in mm, all of
one frame.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import combinations

from rodwright.geometry.tolerance import TOUCH

Vector = tuple[float, float, float]
Plane = tuple[Vector, Vector]

_PATCH = 1.0
"""mm2.  Bodies that share less than this touch along an edge or at a corner at most."""


def beyond(plane: Plane, point: Vector) -> float:
    """How far a point lies on the side that is cut away; negative inside."""
    (at, normal) = plane
    return sum((point[i] - at[i]) * normal[i] for i in range(3))


def moved(plane: Plane, by: float) -> Plane:
    """The plane moved along its normal, towards what is cut away."""
    at, normal = plane
    return (at[0] + by * normal[0], at[1] + by * normal[1], at[2] + by * normal[2]), normal


def turned(plane: Plane) -> Plane:
    """The same plane, the other side cut away."""
    at, (x, y, z) = plane
    return at, (-x, -y, -z)


def box_planes(low: Vector, high: Vector) -> list[Plane]:
    """The six planes of a box between two opposite corners."""
    planes: list[Plane] = []
    for axis in range(3):
        normal = [0.0, 0.0, 0.0]
        normal[axis] = 1.0
        x, y, z = normal
        planes += [(low, (-x, -y, -z)), (high, (x, y, z))]
    return planes


def vertices(planes: Sequence[Plane]) -> list[Vector]:
    """Corners of what planes leave (each perhaps more than once); none where nothing is left.

    Three planes meet in a point (Cramer's rule); a corner is one that no plane cuts away.
    The planes must bound a body, which may be flat.
    """
    found: list[Vector] = []
    shifts = [sum(at[i] * normal[i] for i in range(3)) for at, normal in planes]
    for first, second, third in combinations(range(len(planes)), 3):
        a, b, c = (planes[number][1] for number in (first, second, third))
        bc, ca, ab = _cross(b, c), _cross(c, a), _cross(a, b)
        whole = sum(a[i] * bc[i] for i in range(3))
        if abs(whole) < 1e-9:
            continue
        p, q, r = shifts[first], shifts[second], shifts[third]
        x, y, z = ((p * bc[i] + q * ca[i] + r * ab[i]) / whole for i in range(3))
        if all(
            x * normal[0] + y * normal[1] + z * normal[2] <= shift + TOUCH
            for (_, normal), shift in zip(planes, shifts, strict=True)
        ):
            found.append((x, y, z))
    return found


def bounds_of(points: Iterable[Vector]) -> tuple[Vector, Vector]:
    """The low and high corner of the box round some points."""
    xs, ys, zs = zip(*points, strict=True)
    return (min(xs), min(ys), min(zs)), (max(xs), max(ys), max(zs))


def patch(points: Sequence[Vector]) -> Vector | None:
    """The middle of the box round a body's corners; None where they span no area."""
    if len(points) < 3:
        return None
    start = points[0]
    far = max(points, key=lambda point: math.dist(start, point))
    along = _minus(far, start)
    if max(math.hypot(*_cross(along, _minus(point, start))) for point in points) < _PATCH:
        return None
    low, high = bounds_of(points)
    return ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2)


def _minus(a: Vector, b: Vector) -> Vector:
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def _cross(a: Vector, b: Vector) -> Vector:
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
