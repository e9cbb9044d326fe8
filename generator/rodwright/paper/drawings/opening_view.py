"""The opening as it was measured, with the unit in it and the gaps all round; mm, unit frame."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from rodwright.geometry import TOUCH
from rodwright.lengths import format_length
from rodwright.opening.gaps import Gap, bent_at, gap_along
from rodwright.opening.silhouettes import Silhouette, SlopeLine, slope_in_front
from rodwright.pictures.drafting.views import Cut, Dimension, Note, Point, Side, View
from rodwright.pictures.opening_walls import between, under_line
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
    slope = slope_in_front(unit)
    inner = _inner(plane)
    if slope is not None:
        ceiling = [(x, slope.ceiling(x)) for x in (unit.size[0], 0.0)]
        inner = under_line(inner, ceiling[0], ceiling[1])
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
        dimensions=tuple(_sizes(unit, plane, slope, low)),
        notes=tuple(_gap_notes(unit, opening.shape, slope)),
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


def _sizes(
    unit: Unit, plane: OpeningPlane, slope: SlopeLine | None, low: Point
) -> Iterator[Dimension]:
    """The opening's edges from corner to corner, or up to a slope, and the unit's own width and
    height."""
    bottom_left, bottom_right, top_right, top_left = plane.corners
    edges: dict[Side, tuple[Point, Point]] = {
        "below": (bottom_left, bottom_right),
        "above": (top_left, top_right),
        "left": (bottom_left, top_left),
        "right": (bottom_right, top_right),
    }
    for side, edge in edges.items():
        found = edge if slope is None else _under_ceiling(*edge, slope)
        if found is not None:
            yield _dimension(unit, *found, side, "opening", 1)
    width, height = carcass_size(unit)
    yield _dimension(unit, (0.0, low[1]), (width, low[1]), "below", "unit", 0)
    yield _dimension(unit, (low[0], 0.0), (low[0], height), "left", "unit", 0)


def _under_ceiling(a: Point, b: Point, slope: SlopeLine) -> tuple[Point, Point] | None:
    """What of an edge lies under a slope; None where nothing does."""
    over_a, over_b = (point[1] - slope.ceiling(point[0]) for point in (a, b))
    if over_a <= TOUCH and over_b <= TOUCH:
        return a, b
    if over_a > -TOUCH and over_b > -TOUCH:
        return None
    met = between(a, b, over_a / (over_a - over_b))
    return (a, met) if over_a < over_b else (met, b)


def _dimension(unit: Unit, a: Point, b: Point, side: Side, what: str, rank: int) -> Dimension:
    upright = side in ("left", "right")
    axis = 1 if upright else 0
    text = format_length(b[axis] - a[axis], unit.display_unit)
    return Dimension(a, b, text, "y" if upright else "x", side, f"{what} {side}", rank)


def _gap_notes(unit: Unit, shape: OpeningShape, slope: SlopeLine | None) -> Iterator[Note]:
    """The carcass's gaps near its corners and where an edge of the opening bends, and that under a
    slope, square to it."""
    size = carcass_size(unit)
    outline = Silhouette(*size, slope)
    for side in ("left", "right", "top", "bottom"):
        run = outline.run(side)
        if run is None:
            continue
        inset = _FROM_END * (run[1] - run[0])
        first, last = run[0] + inset, run[1] - inset
        bends = bent_at(shape.front, side, first + inset, last - inset)[1:-1]
        places = (first, *bends, last)
        for gap in gap_along("front", shape, size, side, places):
            if abs(gap.gap) > TOUCH:
                text = f"gap {format_length(gap.gap, unit.display_unit)}"
                yield Note(_at(gap, size), text, leader=True)
    if slope is not None and outline.slope_length:
        x, z = outline.on_slope(outline.slope_length / 2)
        text = f"gap {format_length(slope.gap, unit.display_unit)}, square"
        yield Note((x, z + slope.plumb / 2), text, leader=True)


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
