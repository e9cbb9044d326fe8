"""Parts to CadQuery solids, each in its part's own frame (mm)."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache

from cadquery import Location, Plane, Solid, Vector, Wire

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


@lru_cache(maxsize=4096)
def solid_of(shape: ShapeKey) -> Solid:
    """The solid of a shape: one valid closed solid in the part frame, mm.

    Equal shapes give the same object, so nothing is built twice; callers must not change
    it.

    Raises:
        ValueError: the workings leave nothing, or cut the piece into several.
    """
    size, workings = shape
    blank = Solid.makeBox(*size)
    tools = [_tool(size, working) for working in workings]
    if not tools:
        return blank
    cut = blank.cut(*tools)
    solids = cut.Solids()
    if len(solids) != 1:
        left = "nothing" if not solids else f"{len(solids)} pieces"
        raise ValueError(f"the workings of a {_shown(size)} blank leave {left}")
    return solids[0]


def location_of(part: Part) -> Location:
    """Where a part's solid stands in the unit frame."""
    placed = part.placement
    return Location(Plane(placed.origin, placed.length, placed.thickness))


def _shown(size: Triple) -> str:
    return " x ".join(f"{length:g}" for length in size)


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
    return _prism(points, third, size[third] + 2 * _BEYOND)


def _prism(points: Sequence[Vector], axis: int, length: float) -> Solid:
    direction = [0.0, 0.0, 0.0]
    direction[axis] = length
    outline = Wire.makePolygon(points, close=True)
    return Solid.extrudeLinear(outline, [], Vector(*direction))


def _easing_tool(size: Triple, easing: Easing) -> Solid:
    """A square bar along the arris less the cylinder that touches both its surfaces."""
    radius, surfaces = easing.radius, (easing.surface, easing.edge)
    run = 3 - easing.surface.axis - easing.edge.axis
    low, high, centre = [0.0, 0.0, 0.0], list(size), [0.0, 0.0, 0.0]
    for surface in surfaces:
        axis = surface.axis
        if surface.at_high:
            low[axis], high[axis] = size[axis] - radius, size[axis] + _BEYOND
            centre[axis] = size[axis] - radius
        else:
            low[axis], high[axis] = -_BEYOND, radius
            centre[axis] = radius
    stop = size[run] if easing.stop is None else easing.stop
    low[run] = -_BEYOND if easing.start <= 0 else easing.start
    high[run] = size[run] + _BEYOND if stop >= size[run] else stop
    bar = Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))
    centre[run] = low[run] - _BEYOND
    direction = [0.0, 0.0, 0.0]
    direction[run] = 1.0
    cylinder = Solid.makeCylinder(
        radius, high[run] - low[run] + 2 * _BEYOND, Vector(*centre), Vector(*direction)
    )
    return _box(bar).cut(cylinder).Solids()[0]


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
