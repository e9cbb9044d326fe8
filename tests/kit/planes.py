"""Planes of an opening, and their outline for shapely."""

from __future__ import annotations

from rodwright.unit import LinePoint, OpeningPlane, Quadrilateral

CORNERS: Quadrilateral = ((-9.0, -2.0), (1197.0, 0.0), (1199.0, 2003.0), (-3.0, 2001.0))
STRAIGHT = OpeningPlane.straight(CORNERS)
BELLIED = OpeningPlane(
    CORNERS,
    (STRAIGHT.left[0], LinePoint(500.0, -2.0, 1.0), LinePoint(1500.0, -8.0, 2.0), STRAIGHT.left[1]),
    (STRAIGHT.right[0], LinePoint(900.0, 1195.0), STRAIGHT.right[1]),
    (STRAIGHT.bottom[0], LinePoint(700.0, -6.0), STRAIGHT.bottom[1]),
    (STRAIGHT.top[0], LinePoint(400.0, 1996.0), STRAIGHT.top[1]),
)


def outline(plane: OpeningPlane) -> list[tuple[float, float]]:
    """Its points (x, z) against the clock, from the bottom left."""
    bottom = [(point.along, point.across) for point in plane.bottom]
    right = [(point.across, point.along) for point in plane.right]
    top = [(point.along, point.across) for point in plane.top]
    left = [(point.across, point.along) for point in plane.left]
    return [*bottom[:-1], *right[:-1], *top[:0:-1], *left[:0:-1]]
