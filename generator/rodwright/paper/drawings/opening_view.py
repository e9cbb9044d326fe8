"""The opening as it was measured, with the unit in it and the gaps all round; mm, unit frame."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from rodwright.geometry import TOUCH
from rodwright.lengths import format_length
from rodwright.opening.gaps import SIDES, Gap, bent_at, gap_along, side_length
from rodwright.pictures.drafting.views import Cut, Dimension, Note, Point, Side, View
from rodwright.unit import OpeningPlane, OpeningShape, Unit
from rodwright.unit.facts import carcass_size

_FROM_END = 0.08
"""Gaps are told this share of a side from its ends: at the corners two sides would meet."""
_BAND = 0.03
"""Walls are drawn as thick as this share of the opening."""


def opening_view(unit: Unit, front: View) -> View | None:
    """The front view within the walls, floor and top round it, each gap told where it was found;
    None where nothing was measured."""
    opening = unit.opening
    if opening is None or opening.shape is None:
        return None
    plane = opening.shape.front
    inner = _inner(plane)
    wall = _wall(inner)
    low, _, high, _ = wall.rings[0]
    return replace(
        front,
        name="In the opening",
        low=low,
        high=high,
        hidden=(),
        outline=tuple(zip(inner, (*inner[1:], inner[0]), strict=True)),
        cuts=(wall,),
        planes=(),
        moved=(),
        dimensions=tuple(_sizes(unit, plane, low)),
        notes=tuple(_gap_notes(unit, opening.shape)),
    )


def _inner(plane: OpeningPlane) -> tuple[Point, ...]:
    """The edges of the opening as one ring: floor, right wall, top, left wall."""
    found: list[Point] = []
    for side in ("bottom", "right", "top", "left"):
        upright = side in ("left", "right")
        points: list[Point] = [
            (each.across, each.along) if upright else (each.along, each.across)
            for each in plane.line(side)
        ]
        found += reversed(points) if side in ("top", "left") else points
    return tuple(
        point
        for point, after in zip(found, (*found[1:], found[0]), strict=True)
        if math.dist(point, after) > TOUCH
    )


def _wall(inner: tuple[Point, ...]) -> Cut:
    """Walls, floor and top as a band round the opening."""
    (left, right), (foot, head) = ((min(each), max(each)) for each in zip(*inner, strict=True))
    thick = _BAND * max(right - left, head - foot)
    outer = (
        (left - thick, foot - thick),
        (right + thick, foot - thick),
        (right + thick, head + thick),
        (left - thick, head + thick),
    )
    return Cut("wall", (outer, inner), "other")


def _sizes(unit: Unit, plane: OpeningPlane, low: Point) -> Iterator[Dimension]:
    """The opening's edges from corner to corner, and the unit's own width and height."""
    bottom_left, bottom_right, top_right, top_left = plane.corners
    edges: dict[Side, tuple[Point, Point]] = {
        "below": (bottom_left, bottom_right),
        "above": (top_left, top_right),
        "left": (bottom_left, top_left),
        "right": (bottom_right, top_right),
    }
    for side, (a, b) in edges.items():
        yield _dimension(unit, a, b, side, "opening", 1)
    width, height = carcass_size(unit)
    yield _dimension(unit, (0.0, low[1]), (width, low[1]), "below", "unit", 0)
    yield _dimension(unit, (low[0], 0.0), (low[0], height), "left", "unit", 0)


def _dimension(unit: Unit, a: Point, b: Point, side: Side, what: str, rank: int) -> Dimension:
    upright = side in ("left", "right")
    axis = 1 if upright else 0
    text = format_length(b[axis] - a[axis], unit.display_unit)
    return Dimension(a, b, text, "y" if upright else "x", side, f"{what} {side}", rank)


def _gap_notes(unit: Unit, shape: OpeningShape) -> Iterator[Note]:
    """The carcass's gaps near its corners, and where an edge of the opening bends."""
    size = carcass_size(unit)
    for side in SIDES:
        length = side_length(side, size)
        ends = (_FROM_END * length, (1 - _FROM_END) * length)
        places = bent_at(shape.front, side, *ends)
        for gap in gap_along("front", shape, size, side, places):
            if abs(gap.gap) > TOUCH:
                text = f"gap {format_length(gap.gap, unit.display_unit)}"
                yield Note(_at(gap, size), text, leader=True)


def _at(gap: Gap, size: tuple[float, float]) -> Point:
    """The middle of a gap."""
    width, height = size
    half = gap.gap / 2
    return {
        "left": (-half, gap.at),
        "right": (width + half, gap.at),
        "top": (gap.at, height + half),
        "bottom": (gap.at, -half),
    }[gap.side]
