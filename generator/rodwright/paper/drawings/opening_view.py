"""The opening as it was measured, with the unit in it and the gaps all round; mm, unit frame."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from rodwright.geometry import TOUCH
from rodwright.lengths import format_length
from rodwright.opening.gaps import SIDES, Gap, bent_at, gap_along, side_length
from rodwright.pictures.drafting.views import Dimension, Line, Note, Point, Side, View
from rodwright.unit import OpeningPlane, OpeningShape, Unit
from rodwright.unit.facts import carcass_size


def opening_view(unit: Unit, front: View) -> View | None:
    """The front view within the walls, floor and top round it, each gap told where it was found;
    None where nothing was measured."""
    opening = unit.opening
    if opening is None or opening.shape is None:
        return None
    plane = opening.shape.front
    outline = tuple(_outline(plane))
    points = [point for line in outline for point in line]
    across, up = zip(*points, front.low, front.high, strict=True)
    low, high = (min(across), min(up)), (max(across), max(up))
    return replace(
        front,
        name="In the opening",
        low=low,
        high=high,
        hidden=(),
        outline=outline,
        planes=(),
        moved=(),
        dimensions=tuple(_sizes(unit, plane, low)),
        notes=tuple(_gap_notes(unit, opening.shape)),
    )


def _outline(plane: OpeningPlane) -> Iterator[Line]:
    for side in SIDES:
        upright = side in ("left", "right")
        points: list[Point] = [
            (each.across, each.along) if upright else (each.along, each.across)
            for each in plane.line(side)
        ]
        yield from pairwise(points)


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
    """Each gap at the carcass's corners, and where an edge of the opening bends."""
    size = carcass_size(unit)
    for side in SIDES:
        length = side_length(side, size)
        places = bent_at(shape.front, side, 0.0, length)
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
