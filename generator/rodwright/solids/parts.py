"""Parts to CadQuery solids, each in its part's own frame (mm)."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache

import shapely
from cadquery import Location, Plane, Solid, Vector, Wire

from rodwright.geometry import TOUCH
from rodwright.geometry import Vector as Triple
from rodwright.mass import mass_of
from rodwright.solids.cutters import along, cutters, seen_along, through
from rodwright.unit import Hole, Mitre, Part, ShapeKey, Working

_AGREEMENT = 1e-5
"""Part of its volume by which a solid may differ from arithmetic, far above what either errs."""
_ADAPTIVE = 1e-7
"""Relative error to which the kernel integrates each face, where its rule of fixed points fails."""
_NO_AREA = 1e-6
"""mm2: less is left between cuts only by rounding."""


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
        tools = [tool for working in others for tool in cutters(working, size)]
        solids = solid.cut(*tools).Solids()
        if len(solids) != 1:
            left = "nothing" if not solids else f"{len(solids)} pieces"
            raise ValueError(f"the workings of a {_shown(size)} blank leave {left}")
        (solid,) = solids
    expected = mass_of(shape).volume
    if not any(
        # Where rounds cross aslant, the kernel's rule of fixed points is some hundred-thousandths
        # out; the adaptive one isn't, but takes longer.
        math.isclose(volume := solid.Volume(tolerance), expected, rel_tol=_AGREEMENT)
        for tolerance in (None, _ADAPTIVE)
    ):
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
    """The blank with what runs right through along one axis out, and the other workings.

    Extruding the outline left takes a small part of the time of cutting in three dimensions.
    Mitres are left to be cut: the facets of a round then come out alike at both mitred
    ends, so that the members which meet there share vertices.
    """
    cuts = {
        axis: {
            each: outline
            for each in workings
            if not isinstance(each, Mitre) and (outline := seen_along(size, each, axis))
        }
        for axis in range(3)
    }
    bores = {
        axis: [each for each in workings if isinstance(each, Hole) and through(size, each, axis)]
        for axis in range(3)
    }
    axis = max(cuts, key=lambda each: len(cuts[each]) + len(bores[each]))
    first, second = (i for i in range(3) if i != axis)
    blank = shapely.box(0.0, 0.0, size[first], size[second])
    left = blank.difference(shapely.union_all(list(cuts[axis].values())))
    if isinstance(left, shapely.MultiPolygon):
        left = shapely.union_all([each for each in left.geoms if each.area > _NO_AREA])
    if not isinstance(left, shapely.Polygon) or left.is_empty:
        return Solid.makeBox(*size), list(workings)
    clear = _clear(left, bores[axis])
    if not cuts[axis] and not clear:
        return Solid.makeBox(*size), list(workings)
    outer, *inner = (_wire(ring, axis) for ring in (left.exterior, *left.interiors))
    for bore in clear:
        middle = Vector(*_raised(bore.position, axis))
        inner.append(Wire.makeCircle(bore.diameter / 2, middle, along(axis, 1.0)))
    solid = Solid.extrudeLinear(outer, inner, along(axis, size[axis]))
    return solid, [each for each in workings if each not in cuts[axis] and each not in clear]


def _clear(outline: shapely.Polygon, bores: Sequence[Hole]) -> list[Hole]:
    """The bores that lie clear within an outline, and of each other."""
    clear: list[Hole] = []
    for bore in dict.fromkeys(bores):
        middle, room = shapely.Point(bore.position), bore.diameter / 2 + TOUCH
        if (
            outline.contains(middle)
            and outline.boundary.distance(middle) > room
            and all(
                math.dist(bore.position, other.position) > room + other.diameter / 2
                for other in clear
            )
        ):
            clear.append(bore)
    return clear


def _raised(point: tuple[float, float], axis: int) -> list[float]:
    """A point of the plane where an axis is zero."""
    return [*point[:axis], 0.0, *point[axis:]]


def _wire(ring: shapely.LinearRing, axis: int) -> Wire:
    """A ring in the plane where an axis is zero, without the points between straight stretches."""
    points: list[tuple[float, float]] = []
    for point in ring.coords:
        if all(math.dist(point, other) > TOUCH for other in (*points[:1], *points[-1:])):
            points.append(point)
    corners = []
    for before, at, after in zip(
        [points[-1], *points], points, [*points[1:], points[0]], strict=False
    ):
        to, on = (at[0] - before[0], at[1] - before[1]), (after[0] - at[0], after[1] - at[1])
        turn = to[0] * on[1] - to[1] * on[0]
        if abs(turn) > 1e-9 * math.hypot(*to) * math.hypot(*on):
            corners.append(_raised(at, axis))
    return Wire.makePolygon([Vector(*corner) for corner in corners], close=True)
