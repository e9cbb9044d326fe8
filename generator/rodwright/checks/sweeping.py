"""What turns about an upright axis, in plan: exact, by plane geometry alone.

Points are (x, y) in mm; polygons are convex, anticlockwise.  A polygon that turns first
meets one that stands still where a corner of either comes onto an edge of the other: all
those places lie on circles about the axis.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import product

Point = tuple[float, float]
Polygon = tuple[Point, ...]

_NONE = 1e-9


def rectangle(left: float, front: float, right: float, rear: float) -> Polygon:
    """The rectangle between two x and two y."""
    return ((left, front), (right, front), (right, rear), (left, rear))


def turned(polygon: Polygon, hinge: Point, degrees: float) -> Polygon:
    """A polygon turned about a point, anticlockwise where positive."""
    cosine, sine = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    a, b = hinge
    return tuple(
        (a + cosine * (x - a) - sine * (y - b), b + sine * (x - a) + cosine * (y - b))
        for x, y in polygon
    )


def overlap(first: Polygon, second: Polygon) -> float:
    """How deep two polygons reach into each other, mm: the least move that parts them.

    Less than 0 where they are apart.  By separating axes (Gottschalk, 1996): convex polygons
    are apart if and only if they are so along the normal of one of their edges.
    """
    return min(
        _along(normal, first, second) for polygon in (first, second) for normal in _normals(polygon)
    )


def _normals(polygon: Polygon) -> Iterator[Point]:
    for (x, y), (u, v) in _edges(polygon):
        length = math.hypot(u - x, v - y)
        if length > _NONE:
            yield ((v - y) / length, (x - u) / length)


def _edges(polygon: Polygon) -> Iterator[tuple[Point, Point]]:
    return zip(polygon, (*polygon[1:], polygon[0]), strict=True)


def _along(normal: Point, first: Polygon, second: Polygon) -> float:
    one, other = ([x * normal[0] + y * normal[1] for x, y in each] for each in (first, second))
    return min(max(one) - min(other), max(other) - min(one))


def first_contact(moving: Polygon, hinge: Point, angle: float, still: Polygon) -> float | None:
    """How far a polygon turns, in degrees, before it meets one that stands still.

    ``angle`` is how far it is to turn, anticlockwise where positive.  0 where they overlap
    from the start; None where nothing is met.
    """
    if overlap(moving, still) > 0:
        return 0.0
    way = math.copysign(1.0, angle)
    met = [
        *(
            _turn(at - start, way)
            for corner, edge in product(moving, _edges(still))
            for start, at in _crossings(corner, edge, hinge)
        ),
        *(
            _turn(start - at, way)
            for corner, edge in product(still, _edges(moving))
            for start, at in _crossings(corner, edge, hinge)
        ),
    ]
    least = min(met, default=math.inf)
    return least if least <= abs(angle) else None


def _turn(radians: float, way: float) -> float:
    """A difference of directions as degrees turned one way, 0 to 360."""
    return math.degrees(radians * way) % 360.0


def _crossings(
    corner: Point, edge: tuple[Point, Point], hinge: Point
) -> Iterator[tuple[float, float]]:
    """Directions from the hinge of a corner, and of the places where its circle cuts an edge."""
    x, y = corner[0] - hinge[0], corner[1] - hinge[1]
    radius = math.hypot(x, y)
    (a, b), (c, d) = ((u - hinge[0], v - hinge[1]) for u, v in edge)
    run = math.hypot(c - a, d - b)
    if radius < _NONE or run < _NONE:
        return
    along = ((c - a) / run, (d - b) / run)
    nearest = -(a * along[0] + b * along[1])
    square = radius * radius - (a + nearest * along[0]) ** 2 - (b + nearest * along[1]) ** 2
    if square < 0:
        return
    for place in (nearest - math.sqrt(square), nearest + math.sqrt(square)):
        if 0 <= place <= run:
            at = math.atan2(b + place * along[1], a + place * along[0])
            yield math.atan2(y, x), at
