"""Flat faces by their outlines: rings of points, drawn inwards and filled with triangles."""

from __future__ import annotations

from collections.abc import Sequence

import manifold3d
import numpy as np
import shapely
from numpy.typing import NDArray

Array = NDArray[np.float64]
Indices = NDArray[np.int64]

_SPIKE = 0.05
"""Outlines that turn back on themselves by more than this (1 and the cosine of the turn) aren't
drawn inwards."""
_ROOM = 1.2
"""So many times what is drawn inwards there is room for."""


def across(normal: Array) -> tuple[Array, Array]:
    """Two unit vectors that with ``normal`` make a right-handed frame, the first one along an axis
    where the plane allows it."""
    axis = np.zeros(3)
    axis[np.argmin(np.round(np.abs(normal), 9))] = 1.0
    first = axis - normal * (axis @ normal)
    first /= np.linalg.norm(first)
    return first, np.cross(normal, first)


def rings_of(sides: Sequence[tuple[int, int]]) -> list[list[int]] | None:
    """The rings that directed sides make, in the order in which each is first met; None where a
    point has more than one of them."""
    onwards = dict(sides)
    if len(onwards) != len(sides):
        return None
    rings = []
    while onwards:
        start = next(iter(onwards))
        ring, at = [], start
        while at in onwards:
            ring.append(at)
            at = onwards.pop(at)
        if at != start or len(ring) < 3:
            return None
        rings.append(ring)
    return rings


def inset(rings: Sequence[Array], width: float) -> list[Array] | None:
    """Rings (n, 2), the outer one anticlockwise and openings clockwise, each side drawn inwards by
    ``width``; None where there is no room for that."""
    # With some more room points never come together.
    if _drawn_in(rings, _ROOM * width) is None:
        return None
    return _drawn_in(rings, width)


def _drawn_in(rings: Sequence[Array], width: float) -> list[Array] | None:
    made = []
    for ring in rings:
        sides = np.roll(ring, -1, axis=0) - ring
        lengths = np.linalg.norm(sides, axis=1)
        if lengths.min() < 1e-9:
            return None
        left = np.column_stack([-sides[:, 1], sides[:, 0]]) / lengths[:, None]
        before = np.roll(left, 1, axis=0)
        turn = 1.0 + (left * before).sum(axis=1)
        if turn.min() < _SPIKE:
            return None
        moved = ring + width * (left + before) / turn[:, None]
        if (((np.roll(moved, -1, axis=0) - moved) * sides).sum(axis=1) <= 0.0).any():
            return None
        made.append(moved)
    areas = [_area(ring) for ring in made]
    outer = int(np.argmax(areas))
    if areas[outer] <= 0.0:
        return None
    openings = [ring for number, ring in enumerate(made) if number != outer]
    polygon = shapely.Polygon(made[outer], openings)
    return made if polygon.is_valid else None


def filled(rings: Sequence[Array]) -> Indices:
    """Triangles (m, 3) that fill rings, anticlockwise; they count the rings' points in turn and
    use every one of them."""
    return np.asarray(manifold3d.triangulate(rings, allow_convex=False), dtype=np.int64)


def _area(ring: Array) -> float:
    x, y = ring.T
    return float((x * np.roll(y, -1) - y * np.roll(x, -1)).sum() / 2)
