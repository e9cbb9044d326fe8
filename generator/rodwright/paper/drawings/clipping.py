"""Lines and cut areas of a view within a window; mm, in the view's frame."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

from shapely import LineString, Polygon, box
from shapely.geometry.base import BaseGeometry

from rodwright.pictures.drafting.views import Cut, Line, Point

Window = tuple[Point, Point]
"""The lower left and the upper right corner."""
_ON = 1e-6
"""mm."""


def lines_within(lines: Iterable[Line], window: Window) -> tuple[Line, ...]:
    """What a window leaves of some lines."""
    frame = _frame(window)
    return tuple(
        (a, b)
        for line in lines
        for piece in _pieces(LineString(line).intersection(frame), "LineString")
        for a, b in pairwise(piece.coords)
    )


def cuts_within(cuts: Iterable[Cut], window: Window) -> tuple[Cut, ...]:
    """What a window leaves of what is cut, broken off at its sides."""
    frame = _frame(window)
    found = []
    for cut in cuts:
        inside = Polygon(cut.rings[0], cut.rings[1:]).intersection(frame)
        for piece in _pieces(inside, "Polygon"):
            rings = tuple(tuple(ring.coords[:-1]) for ring in (piece.exterior, *piece.interiors))
            sides = [(a, b) for r in rings for a, b in zip(r, (*r[1:], r[0]), strict=True)]
            broken = tuple(side for side in sides if _at_a_side(side, window))
            found.append(Cut(cut.ref, rings, cut.kind, broken))
    return tuple(found)


def _at_a_side(line: Line, window: Window) -> bool:
    """Whether a line lies on a side of the window."""
    return any(
        abs(line[0][axis] - corner[axis]) < _ON and abs(line[1][axis] - corner[axis]) < _ON
        for corner in window
        for axis in (0, 1)
    )


def _frame(window: Window) -> Polygon:
    return box(*window[0], *window[1])


def _pieces(geometry: BaseGeometry, kind: str) -> list[BaseGeometry]:
    each = list(getattr(geometry, "geoms", [geometry]))
    return [piece for piece in each if piece.geom_type == kind and not piece.is_empty]
