"""Lines and cut areas of a view within a window; mm, in the view's frame."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

from shapely import LineString, Polygon, box
from shapely.geometry.base import BaseGeometry

from rodwright.pictures.drafting.views import Cut, Line, Point

Window = tuple[Point, Point]
"""The lower left and the upper right corner."""


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
    """What a window leaves of what is cut."""
    frame = _frame(window)
    return tuple(
        Cut(
            cut.ref,
            tuple(tuple(ring.coords[:-1]) for ring in (piece.exterior, *piece.interiors)),
            cut.kind,
        )
        for cut in cuts
        for piece in _pieces(Polygon(cut.rings[0], cut.rings[1:]).intersection(frame), "Polygon")
    )


def _frame(window: Window) -> Polygon:
    return box(*window[0], *window[1])


def _pieces(geometry: BaseGeometry, kind: str) -> list[BaseGeometry]:
    each = list(getattr(geometry, "geoms", [geometry]))
    return [piece for piece in each if piece.geom_type == kind and not piece.is_empty]
