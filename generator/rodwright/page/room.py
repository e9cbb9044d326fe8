"""What stays in the room round a unit, as lines: the opening as measured, a sloping ceiling, and
what the unit is cut out round.  mm, unit frame."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.geometry.halfspaces import Plane, beyond
from rodwright.photo.planes import cut_off
from rodwright.photo.recess import Outline, Recess, recess_of
from rodwright.unit import Unit

Line = tuple[Vector, ...]
"""The points that a line goes through."""
_DIGITS = 3
"""Decimals of a millimetre."""


def room_lines(unit: Unit) -> tuple[Line, ...]:
    """Lines of the room round a unit; none where nothing is known of it."""
    recess, slope = recess_of(unit, 0.0), unit.surroundings.ceiling
    lines: list[Line] = []
    if recess is not None:
        opening = _opening(recess)
        lines += opening if slope is None else _under(opening, slope)
    if slope is not None:
        lines += _ceiling(unit, recess, slope)
    for obstacle in unit.surroundings.obstacles:
        lines += _box(obstacle.box)
    return tuple(tuple(map(_rounded, line)) for line in lines)


def _opening(recess: Recess) -> Iterator[Line]:
    """Its edges at the front and at the rear, and from corner to corner between them."""
    for number, y in enumerate((recess.front, recess.rear)):
        left, right, top = (edge[number] for edge in (recess.left, recess.right, recess.top))
        yield _at(y, (*left, *top, *reversed(right), left[0]))
    for near, far in (recess.left, recess.right):
        for place in (0, -1):
            (x, z), (u, w) = near[place], far[place]
            yield ((x, recess.front, z), (u, recess.rear, w))


def _under(lines: Iterable[Line], slope: Plane) -> Iterator[Line]:
    """What of lines lies under a sloping ceiling, stretch by stretch."""
    for one, other in (ends for line in lines for ends in pairwise(line)):
        low, high = sorted((one, other), key=lambda point: beyond(slope, point))
        under, over = beyond(slope, low), beyond(slope, high)
        if over <= TOUCH:
            yield one, other
        elif under < -TOUCH:
            share = under / (under - over)
            x, y, z = (a + share * (b - a) for a, b in zip(low, high, strict=True))
            yield low, (x, y, z)


def _ceiling(unit: Unit, recess: Recess | None, slope: Plane) -> Iterator[Line]:
    """A sloping ceiling over the opening or, where there is none, over the unit."""
    low, high = unit.envelope.low, unit.envelope.high
    across, deep, top = (low[0], high[0]), (low[1], high[1]), high[2]
    if recess is not None:
        across, deep, top = recess.reach, (recess.front, recess.rear), recess.highest
    (x, y, z), (along, back, up) = slope
    corners = [(across[turn in (1, 2)], deep[turn > 1]) for turn in range(4)]
    ring = [(u, v, z - (along * (u - x) + back * (v - y)) / up) for u, v in corners]
    left = cut_off(ring, ((0.0, 0.0, top), (0.0, 0.0, 1.0)))
    left = cut_off(left, ((0.0, 0.0, 0.0), (0.0, 0.0, -1.0)))
    if left:
        yield (*left, left[0])


def _box(box: Box) -> Iterator[Line]:
    """The edges of a box, each once."""
    (a, b, c), (x, y, z) = box.low, box.high
    for at in (c, z):
        yield ((a, b, at), (x, b, at), (x, y, at), (a, y, at), (a, b, at))
    for u, v in ((a, b), (x, b), (x, y), (a, y)):
        yield ((u, v, c), (u, v, z))


def _at(y: float, outline: Outline) -> Line:
    return tuple((x, y, z) for x, z in outline)


def _rounded(point: Vector) -> Vector:
    x, y, z = (round(each, _DIGITS) + 0.0 for each in point)
    return x, y, z
