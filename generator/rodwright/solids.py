"""Parts to CadQuery solids, each in its part's own frame (mm)."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise

import shapely
from cadquery import Edge, Location, Plane, Solid, Vector, Wire

from rodwright.mass import mass_of
from rodwright.parts import (
    Box,
    Easing,
    Hole,
    Mitre,
    Part,
    ShapeKey,
    Working,
)
from rodwright.parts import Vector as Triple

_BEYOND = 1.0
"""How far (mm) cutting tools reach past the surface they break, so that no faces coincide."""
_AGREEMENT = 1e-5
"""Part of its volume by which a solid may differ from arithmetic, far above what either errs."""


@lru_cache(maxsize=4096)
def solid_of(shape: ShapeKey) -> Solid:
    """The solid of a shape: one valid closed solid in the part frame, mm.

    Equal shapes give the same object, so nothing is built twice; callers must not change
    it.

    Raises:
        ValueError: the workings leave nothing, or cut the piece into several, or the solid
            hasn't the volume that arithmetic gives.
    """
    size, workings = shape
    solid, others = _prism(size, workings)
    if others:
        solids = solid.cut(*(_tool(size, working) for working in others)).Solids()
        if len(solids) != 1:
            left = "nothing" if not solids else f"{len(solids)} pieces"
            raise ValueError(f"the workings of a {_shown(size)} blank leave {left}")
        (solid,) = solids
    volume, expected = solid.Volume(), mass_of(shape).volume
    if not math.isclose(volume, expected, rel_tol=_AGREEMENT):
        raise ValueError(
            f"the solid of a {_shown(size)} blank came out at {volume:.3f} mm3 instead of "
            f"{expected:.3f} mm3"
        )
    return solid


def location_of(part: Part) -> Location:
    """Where a part's solid stands in the unit frame."""
    placed = part.placement
    return Location(Plane(placed.origin, placed.length, placed.thickness))


def _shown(size: Triple) -> str:
    return " x ".join(f"{length:g}" for length in size)


def _prism(size: Triple, workings: Sequence[Working]) -> tuple[Solid, list[Working]]:
    """The blank with the boxes that run right through along one axis out, and other workings.

    Extruding the outline left takes a small part of the time of cutting in three dimensions.
    """
    cuts = {
        axis: {each: outline for each in workings if (outline := _outline(size, each, axis))}
        for axis in range(3)
    }
    axis = max(cuts, key=lambda each: len(cuts[each]))
    first, second = (i for i in range(3) if i != axis)
    blank = shapely.box(0.0, 0.0, size[first], size[second])
    left = blank.difference(shapely.union_all(list(cuts[axis].values())))
    if not cuts[axis] or not isinstance(left, shapely.Polygon) or left.is_empty:
        return Solid.makeBox(*size), list(workings)
    outer, *inner = (_wire(ring, axis) for ring in (left.exterior, *left.interiors))
    solid = Solid.extrudeLinear(outer, inner, _along(axis, size[axis]))
    return solid, [each for each in workings if each not in cuts[axis]]


def _outline(size: Triple, working: Working, axis: int) -> shapely.Polygon | None:
    """The box a working takes off, seen along an axis; None unless it runs right through.

    Mitres are left to be cut: the facets of a round then come out alike at both mitred
    ends, so that the members which meet there share vertices.
    """
    if isinstance(working, Mitre | Easing | Hole):
        return None
    box = _reaching(working.removal(size), size)
    if box.low[axis] >= 0 or box.high[axis] <= size[axis]:
        return None
    # Sums of lengths that should be equal differ in their last digits; no sliver may stay.
    low, high = ([round(place, 9) for place in corner] for corner in (box.low, box.high))
    first, second = (i for i in range(3) if i != axis)
    return shapely.box(low[first], low[second], high[first], high[second])


def _wire(ring: shapely.LinearRing, axis: int) -> Wire:
    """A ring in the plane where an axis is zero, without the points between straight stretches."""
    points = list(ring.coords)[:-1]
    corners = []
    for before, at, after in zip([points[-1], *points], points, [*points[1:], points[0]],
                                 strict=False):  # fmt: skip
        to, on = (at[0] - before[0], at[1] - before[1]), (after[0] - at[0], after[1] - at[1])
        turn = to[0] * on[1] - to[1] * on[0]
        if abs(turn) > 1e-9 * math.hypot(*to) * math.hypot(*on):
            corners.append([*at[:axis], 0.0, *at[axis:]])
    return Wire.makePolygon([Vector(*corner) for corner in corners], close=True)


def _along(axis: int, length: float) -> Vector:
    return Vector(*(length if i == axis else 0.0 for i in range(3)))


def _tool(size: Triple, working: Working) -> Solid:
    """The solid that a working takes away, reaching past the surfaces it breaks."""
    if isinstance(working, Mitre):
        return _mitre_tool(size, working)
    if isinstance(working, Easing):
        return _easing_tool(size, working)
    if isinstance(working, Hole):
        return _hole_tool(size, working)
    return _box(_reaching(working.removal(size), size))


def _reaching(box: Box, size: Triple) -> Box:
    low = [-_BEYOND if a <= 0 else a for a in box.low]
    high = [
        length + _BEYOND if b >= length else b for b, length in zip(box.high, size, strict=True)
    ]
    return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


def _box(box: Box) -> Solid:
    return Solid.makeBox(*box.size, pnt=Vector(*box.low))


def _mitre_tool(size: Triple, mitre: Mitre) -> Solid:
    """A wedge over the whole end, bounded by the cut."""
    end, long = mitre.end, mitre.long
    third = 3 - end.axis - long.axis
    across = size[long.axis] + 2 * _BEYOND
    slope = math.tan(math.radians(mitre.angle))
    end_at, inward = (size[end.axis], -1.0) if end.at_high else (0.0, 1.0)
    long_at, away = (size[long.axis], -1.0) if long.at_high else (0.0, 1.0)
    # Profile in the plane of the two axes: along the cut, then back outside the end.
    profile = [
        (end_at - inward * _BEYOND * slope, long_at - away * _BEYOND),
        (
            end_at + inward * (across - _BEYOND) * slope,
            long_at + away * (across - _BEYOND),
        ),
        (end_at - inward * (_BEYOND + _BEYOND * slope), long_at + away * (across - _BEYOND)),
        (end_at - inward * (_BEYOND + _BEYOND * slope), long_at - away * _BEYOND),
    ]
    points = []
    for along, over in profile:
        point = [0.0, 0.0, 0.0]
        point[end.axis], point[long.axis], point[third] = along, over, -_BEYOND
        points.append(Vector(*point))
    outline = Wire.makePolygon(points, close=True)
    return Solid.extrudeLinear(outline, [], _along(third, size[third] + 2 * _BEYOND))


def _easing_tool(size: Triple, easing: Easing) -> Solid:
    """A bar along the arris, hollowed by the quarter circle that touches both its surfaces."""
    run = 3 - easing.surface.axis - easing.edge.axis
    stop = size[run] if easing.stop is None else easing.stop
    low = -_BEYOND if easing.start <= 0 else easing.start
    high = size[run] + _BEYOND if stop >= size[run] else stop

    def point(over: float, down: float) -> Vector:
        """From how far in from the edge, and how far in from the surface."""
        place = [0.0, 0.0, 0.0]
        place[run] = low
        for surface, inward in ((easing.edge, over), (easing.surface, down)):
            place[surface.axis] = size[surface.axis] - inward if surface.at_high else inward
        return Vector(*place)

    radius, middle = easing.radius, easing.radius * (1 - math.sqrt(0.5))
    straight = [
        point(0.0, radius),
        point(-_BEYOND, radius),
        point(-_BEYOND, -_BEYOND),
        point(radius, -_BEYOND),
        point(radius, 0.0),
    ]
    lines = [Edge.makeLine(a, b) for a, b in pairwise(straight)]
    arc = Edge.makeThreePointArc(straight[-1], point(middle, middle), straight[0])
    return Solid.extrudeLinear(Wire.assembleEdges([*lines, arc]), [], _along(run, high - low))


def _hole_tool(size: Triple, hole: Hole) -> Solid:
    axis = hole.surface.axis
    others = [each for each in range(3) if each != axis]
    point, direction = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
    point[others[0]], point[others[1]] = hole.position
    high: bool = hole.surface.at_high
    point[axis] = size[axis] + _BEYOND if high else -_BEYOND
    direction[axis] = -1.0 if high else 1.0
    depth = size[axis] + _BEYOND if hole.depth is None else hole.depth
    return Solid.makeCylinder(
        hole.diameter / 2, depth + _BEYOND, Vector(*point), Vector(*direction)
    )
