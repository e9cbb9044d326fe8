"""Sloping cuts by the two points where they cross the edges of the piece; mm.

A saw is set by an angle, but what is marked out are two points and the line between them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import combinations

from rodwright.geometry import TOUCH
from rodwright.handover.words import degrees
from rodwright.paper.part_sheets.datum import AXES, Datum
from rodwright.paper.part_sheets.figures import Figure, Point
from rodwright.unit import Bevel, Mitre, Surface
from rodwright.unit.workings.frames import plain

Vector2 = tuple[float, float]
_PARALLEL = 1e-12
"""A part of a unit vector that is none."""


def _axes(cut: Mitre | Bevel) -> tuple[Surface, Surface]:
    """The two surfaces between which the corner lies that is cut off, the end or edge that is
    taken first."""
    if isinstance(cut, Mitre):
        return cut.end, cut.long.opposite
    first, second = sorted((cut.surface, cut.edge), key=lambda each: each.axis)
    return first, second


def crossings(size: Sequence[float], cut: Mitre | Bevel) -> tuple[tuple[Surface, float], ...]:
    """Where the line of a cut, seen along it, crosses the outline of the blank: the two surfaces
    that it crosses, each with how far along the other of the two axes; none where it misses."""
    ((point, normal),) = cut.planes((size[0], size[1], size[2]))
    first, second = sorted(taken_axes(cut))
    constant = point[first] * normal[first] + point[second] * normal[second]
    found: list[tuple[Vector2, tuple[Surface, float]]] = []
    for axis, other in ((second, first), (first, second)):
        for high in (False, True):
            at = size[axis] if high else 0.0
            if abs(normal[other]) < _PARALLEL:
                continue
            along = (constant - normal[axis] * at) / normal[other]
            if -TOUCH <= along <= size[other] + TOUCH:
                along = plain(min(max(along, 0.0), size[other]))
                spot = (at, along) if axis == first else (along, at)
                found.append((spot, (Surface.at(axis, high), along)))
    # At a corner it crosses two surfaces in one place.
    pairs = [(math.dist(one[0], two[0]), (one[1], two[1])) for one, two in combinations(found, 2)]
    apart, pair = max(pairs, key=lambda each: each[0], default=(0.0, ()))
    return pair if apart > TOUCH else ()


def leaves_box(size: Sequence[float], cut: Mitre | Bevel) -> bool:
    """Whether a cut takes anything off the blank to speak of."""
    return bool(crossings(size, cut))


def slant_figures(
    datum: Datum, cut: Mitre | Bevel
) -> tuple[dict[str, Figure], tuple[Surface, ...]]:
    """The figures of a cut, and the surfaces whose corner falls off.

    Of an arris of a face they are how far it goes over the one and down the other surface.
    """
    words, corner = datum.words, _axes(cut)
    axes = tuple(each.axis for each in corner)
    figures: dict[str, Figure] = {"angle": degrees(_off_square(datum.size, cut))}
    if isinstance(cut, Bevel) and 2 in axes and _whole(datum.size, cut) is None:
        for name, surface in zip(("down", "over"), corner, strict=True):
            figures[name] = words.say(_leg(cut, surface))
        return figures, corner
    for name, (surface, along) in zip(("from", "to"), crossings(datum.size, cut), strict=True):
        other = axes[1] if surface.axis == axes[0] else axes[0]
        at = words.say(datum.from_datum(other, along))
        figures[name] = Point(words.name(surface), AXES[other], at)
    return figures, corner


def whole_end(size: Sequence[float], cut: Mitre | Bevel) -> bool:
    """Whether a cut gives the piece its outline: not one that only takes the arris of a face."""
    return isinstance(cut, Mitre) or 2 not in taken_axes(cut) or _whole(size, cut) is not None


def taken_axes(cut: Mitre | Bevel) -> tuple[int, int]:
    """The part axes across the two surfaces whose corner a cut takes."""
    first, second = _axes(cut)
    return first.axis, second.axis


def _whole(size: Sequence[float], cut: Bevel) -> Surface | None:
    """The surface that a bevel takes off whole, an end before an edge; None for an arris."""
    for surface, other in (_axes(cut), _axes(cut)[::-1]):
        if _leg(cut, surface) >= size[other.axis] - TOUCH:
            return surface
    return None


def _leg(cut: Bevel, surface: Surface) -> float:
    """How much of one of its two surfaces a bevel takes, measured from the other."""
    return cut.width if surface is cut.surface else cut.depth


def _off_square(size: Sequence[float], cut: Mitre | Bevel) -> float:
    """Degrees between the cut and what it takes off whole, or else the end or the edge: what a saw
    is set to away from square."""
    if isinstance(cut, Mitre):
        return cut.angle
    surface = _whole(size, cut) or _axes(cut)[0]
    return cut.angle if cut.edge is surface else 90.0 - cut.angle
