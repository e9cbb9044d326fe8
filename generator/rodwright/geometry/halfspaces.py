"""Convex bodies between planes: corners, and whether two of them meet.

A plane is a point and a unit normal that points at what is cut away.  Lengths in mm, all of
one frame.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import combinations

from rodwright.geometry.boxes import Box
from rodwright.geometry.tolerance import TOUCH
from rodwright.geometry.vectors import Vector, along, cross, dot, minus, plus, times

Plane = tuple[Vector, Vector]

_PATCH = 1.0
"""mm2.  Bodies that share less than this touch along an edge or at a corner at most."""


def beyond(plane: Plane, point: Vector) -> float:
    """How far a point lies on the side that is cut away; negative inside."""
    (at, normal) = plane
    return dot(minus(point, at), normal)


def moved(plane: Plane, by: float) -> Plane:
    """The plane moved along its normal, towards what is cut away."""
    at, normal = plane
    return plus(at, times(normal, by)), normal


def turned(plane: Plane) -> Plane:
    """The same plane, the other side cut away."""
    at, (x, y, z) = plane
    return at, (-x, -y, -z)


def box_planes(box: Box) -> list[Plane]:
    """The six planes of a box."""
    return [
        plane
        for axis in range(3)
        for plane in ((box.low, along(axis, -1.0)), (box.high, along(axis, 1.0)))
    ]


def vertices(planes: Sequence[Plane]) -> list[Vector]:
    """Corners of what planes leave (each perhaps more than once); none where nothing is left.

    Three planes meet in a point (Cramer's rule); a corner is one that no plane cuts away.
    The planes must bound a body, which may be flat.
    """
    found: list[Vector] = []
    shifts = [dot(at, normal) for at, normal in planes]
    for first, second, third in combinations(range(len(planes)), 3):
        a, b, c = (planes[number][1] for number in (first, second, third))
        bc, ca, ab = cross(b, c), cross(c, a), cross(a, b)
        whole = dot(a, bc)
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


def patch(points: Sequence[Vector]) -> Vector | None:
    """The middle of the box round a body's corners; None where they span no area."""
    if len(points) < 3:
        return None
    start = points[0]
    far = max(points, key=lambda point: math.dist(start, point))
    longest = minus(far, start)
    if max(math.hypot(*cross(longest, minus(point, start))) for point in points) < _PATCH:
        return None
    return Box.of_points(points).centre
