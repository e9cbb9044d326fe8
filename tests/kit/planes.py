"""The outline of an opening's plane, for shapely."""

from __future__ import annotations

from rodwright.unit import OpeningPlane


def outline(plane: OpeningPlane) -> list[tuple[float, float]]:
    """Its points (x, z) against the clock, from the bottom left."""
    bottom = [(point.along, point.across) for point in plane.bottom]
    right = [(point.across, point.along) for point in plane.right]
    top = [(point.along, point.across) for point in plane.top]
    left = [(point.across, point.along) for point in plane.left]
    return [*bottom[:-1], *right[:-1], *top[:0:-1], *left[:0:-1]]
