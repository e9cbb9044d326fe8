"""The solids and outlines that workings take away, in the part frame (mm).

Each reaches past the surfaces it breaks, so that no faces coincide.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import singledispatch
from itertools import pairwise

import shapely
from cadquery import Edge, Solid, Vector, Wire

from rodwright import geometry
from rodwright.geometry import TOUCH, Box, vector
from rodwright.geometry import Vector as Triple
from rodwright.unit import Bevel, Easing, FingerPull, Hole, Mitre, Mortise, PocketHole, Working

_BEYOND = 1.0
"""How far (mm) cutters reach past the surface they break."""


@singledispatch
def cutters(working: Working, size: Triple) -> Iterator[Solid]:
    """The solids that a working takes away from a blank of this size.

    Raises:
        TypeError: nothing here says how a working of this kind is cut.
    """
    if not working.fills_bounds:
        raise TypeError(f"no cutter cuts a {working.word}")
    yield _box(_reaching(working.bounds(size), size))


@cutters.register
def _(working: Mitre | Bevel, size: Triple) -> Iterator[Solid]:
    yield _cut_off(size, working)


@cutters.register
def _(working: Easing, size: Triple) -> Iterator[Solid]:
    yield _hollow(size, working)


@cutters.register
def _(working: Hole, size: Triple) -> Iterator[Solid]:
    yield _cylinder(size, working, working.position, working.diameter / 2)


@cutters.register
def _(working: Mortise, size: Triple) -> Iterator[Solid]:
    yield (
        _slot(size, working) if working.round_ends else _box(_reaching(working.bounds(size), size))
    )


@cutters.register
def _(working: PocketHole, size: Triple) -> Iterator[Solid]:
    yield from _pocket(size, working)


@cutters.register
def _(working: FingerPull, size: Triple) -> Iterator[Solid]:
    yield _cove(size, working)


def seen_along(size: Triple, working: Working, axis: int) -> shapely.Polygon | None:
    """What a working takes off, seen along an axis; None unless it runs right through it.

    None for round workings too.
    """
    if isinstance(working, Mitre | Bevel):
        return shapely.Polygon(_cut_profile(size, working)) if _third(working) == axis else None
    if not working.fills_bounds:
        return None
    box = _reaching(working.bounds(size), size)
    if box.low[axis] >= 0 or box.high[axis] <= size[axis]:
        return None
    # Sums of lengths that should be equal differ in their last digits; no sliver may stay.
    low, high = ([round(place, 9) for place in corner] for corner in (box.low, box.high))
    first, second = (i for i in range(3) if i != axis)
    return shapely.box(low[first], low[second], high[first], high[second])


def through(size: Triple, hole: Hole, axis: int) -> bool:
    """Whether a hole runs right through along an axis."""
    return hole.surface.axis == axis and (hole.depth is None or hole.depth >= size[axis])


def along(axis: int, length: float) -> Vector:
    """A vector of this length along an axis."""
    return Vector(*geometry.along(axis, length))


def _reaching(box: Box, size: Triple) -> Box:
    low = [-_BEYOND if a <= 0 else a for a in box.low]
    high = [
        length + _BEYOND if b >= length else b for b, length in zip(box.high, size, strict=True)
    ]
    return Box(vector(low), vector(high))


def _box(box: Box) -> Solid:
    return Solid.makeBox(*box.size, pnt=Vector(*box.low))


def _third(cut: Mitre | Bevel) -> int:
    """The axis along which a flat cut is the same everywhere."""
    first, second = (cut.end, cut.long) if isinstance(cut, Mitre) else (cut.surface, cut.edge)
    return 3 - first.axis - second.axis


def _cut_profile(size: Triple, cut: Mitre | Bevel) -> list[tuple[float, float]]:
    """The part beyond a flat cut of a rectangle somewhat larger than the blank's section."""
    ((point, normal),) = cut.planes(size)
    first, second = (i for i in range(3) if i != _third(cut))
    low, wide, deep = -_BEYOND, size[first] + _BEYOND, size[second] + _BEYOND
    corners = [(low, low), (wide, low), (wide, deep), (low, deep)]
    heights = [
        (x - point[first]) * normal[first] + (y - point[second]) * normal[second]
        for x, y in corners
    ]
    profile = []
    for i, (corner, height) in enumerate(zip(corners, heights, strict=True)):
        before, there = corners[i - 1], heights[i - 1]
        if min(height, there) < 0 < max(height, there):
            share = there / (there - height)
            x, y = (b + (a - b) * share for a, b in zip(corner, before, strict=True))
            profile.append((x, y))
        if height >= 0:
            profile.append(corner)
    return profile


def _mitre_profile(size: Triple, mitre: Mitre) -> list[tuple[float, float]]:
    """What a mitre takes off, always drawn along the cut first and then back outside the end.

    Open CASCADE divides the rounds that a cut crosses from where its outline begins: drawn so,
    the facets of two members that meet at a mitre come out alike, and share their corners.
    """
    end, long = mitre.end, mitre.long
    across, slope = size[long.axis] + 2 * _BEYOND, math.tan(math.radians(mitre.angle))
    end_at, inward = (size[end.axis], -1.0) if end.at_high else (0.0, 1.0)
    long_at, away = (size[long.axis], -1.0) if long.at_high else (0.0, 1.0)
    outside = end_at - inward * (_BEYOND + _BEYOND * slope)
    near, far = long_at - away * _BEYOND, long_at + away * (across - _BEYOND)
    profile = [
        (end_at - inward * _BEYOND * slope, near),
        (end_at + inward * (across - _BEYOND) * slope, far),
        (outside, far),
        (outside, near),
    ]
    return profile if end.axis < long.axis else [point[::-1] for point in profile]


def _cut_off(size: Triple, cut: Mitre | Bevel) -> Solid:
    third = _third(cut)
    profile = _mitre_profile(size, cut) if isinstance(cut, Mitre) else _cut_profile(size, cut)
    points = [Vector(*point[:third], -_BEYOND, *point[third:]) for point in profile]
    outline = Wire.makePolygon(points, close=True)
    return Solid.extrudeLinear(outline, [], along(third, size[third] + 2 * _BEYOND))


def _hollow(size: Triple, easing: Easing) -> Solid:
    """A bar along the arris, hollowed by the quarter circle that touches both its surfaces."""
    run = easing.run
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
    return Solid.extrudeLinear(Wire.assembleEdges([*lines, arc]), [], along(run, high - low))


def _depths(size: Triple, working: Hole | Mortise) -> tuple[float, float]:
    """Where a pocket square to a surface begins, outside it, and how far it goes from there.

    The second is negative from a high surface.
    """
    axis = working.surface.axis
    depth = size[axis] + _BEYOND if working.depth is None else working.depth
    if working.surface.at_high:
        return size[axis] + _BEYOND, -depth - _BEYOND
    return -_BEYOND, depth + _BEYOND


def _cylinder(
    size: Triple, working: Hole | Mortise, middle: tuple[float, float], radius: float
) -> Solid:
    axis = working.surface.axis
    start, run = _depths(size, working)
    base = Vector(*middle[:axis], start, *middle[axis:])
    return Solid.makeCylinder(radius, abs(run), base, along(axis, math.copysign(1.0, run)))


def _slot(size: Triple, mortise: Mortise) -> Solid:
    """A pocket with half round ends; round all over where it is as long as wide."""
    axis, radius = mortise.surface.axis, min(mortise.extent) / 2
    x, y = (at + each / 2 for at, each in zip(mortise.position, mortise.extent, strict=True))
    reach = max(mortise.extent) / 2
    if reach - radius < TOUCH:
        return _cylinder(size, mortise, (x, y), radius)
    start, run = _depths(size, mortise)
    lengthwise = mortise.extent[0] > mortise.extent[1]

    def point(over: float, aside: float) -> Vector:
        """From how far over along the longer extent, and how far aside."""
        place = (x + over, y + aside) if lengthwise else (x + aside, y + over)
        return Vector(*place[:axis], start, *place[axis:])

    straight = reach - radius
    edges = [
        Edge.makeLine(point(-straight, -radius), point(straight, -radius)),
        Edge.makeThreePointArc(point(straight, -radius), point(reach, 0), point(straight, radius)),
        Edge.makeLine(point(straight, radius), point(-straight, radius)),
        Edge.makeThreePointArc(
            point(-straight, radius), point(-reach, 0), point(-straight, -radius)
        ),
    ]
    return Solid.extrudeLinear(Wire.assembleEdges(edges), [], along(axis, run))


def _pocket(size: Triple, pocket: PocketHole) -> Iterator[Solid]:
    """The pocket from its floor out, and the screw's hole from within it to past the end."""
    end, surface = pocket.end, pocket.surface
    slope = math.radians(pocket.angle)
    leaves, way = [pocket.position] * 3, [0.0] * 3
    leaves[end.axis] = size[end.axis] if end.at_high else 0.0
    leaves[surface.axis] = size[surface.axis] - pocket.exit if surface.at_high else pocket.exit
    way[end.axis] = math.cos(slope) * (-1 if end.at_high else 1)
    way[surface.axis] = math.sin(slope) * (1 if surface.at_high else -1)
    exit_at, inward = Vector(*leaves), Vector(*way)
    far = math.hypot(*size) + pocket.diameter + pocket.screw
    for radius, start, towards in (
        (pocket.diameter / 2, pocket.stop, inward),
        (pocket.screw / 2, pocket.stop + _BEYOND, -inward),
    ):
        yield Solid.makeCylinder(radius, far + start, exit_at + inward * start, towards)


def _cove(size: Triple, pull: FingerPull) -> Solid:
    """What a round nose sweeps: a bar with a ball at either end, or run on past the blank.

    It is turned about its axis from the side that lies outside the blank, so that no seam shows.
    """
    run, surface, edge = pull.run, pull.surface, pull.edge
    above, radius = pull.radius - pull.depth, pull.radius
    first, last = pull.lets_in(size)
    low = -_BEYOND if first is None else first
    high = size[run] + _BEYOND if last is None else last

    def point(at: float, out: float) -> Vector:
        """From how far along the arris, and how far outwards from the axis."""
        place = [0.0, 0.0, 0.0]
        place[run] = at
        place[edge.axis] = size[edge.axis] - pull.position if edge.at_high else pull.position
        beyond = above + out
        place[surface.axis] = size[surface.axis] + beyond if surface.at_high else -beyond
        return Vector(*place)

    def end(at: float, ball: bool, way: int) -> list[Edge]:
        """From the axis out to the bar, at its low end (-1) or its high one."""
        rim = point(at, radius)
        if not ball:
            return [Edge.makeLine(point(at, 0.0), rim)]
        slant = radius * math.sqrt(0.5)
        middle = point(at + way * slant, slant)
        return [Edge.makeThreePointArc(point(at + way * radius, 0.0), middle, rim)]

    tips = (
        low if first is None else low - radius,
        high if last is None else high + radius,
    )
    edges = [
        *end(low, first is not None, -1),
        *([Edge.makeLine(point(low, radius), point(high, radius))] if high - low > TOUCH else []),
        *end(high, last is not None, 1),
        Edge.makeLine(point(tips[1], 0.0), point(tips[0], 0.0)),
    ]
    outline = Wire.assembleEdges(edges)
    return Solid.revolve(outline, [], 360.0, point(tips[0], 0.0), point(tips[1], 0.0))
