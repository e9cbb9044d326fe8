"""Workings as shapes on layers, in the frame of the part as cut: x, y over its worked face; mm."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.cnc.layers import Layer
from rodwright.cnc.shapes import Circle, Path, Point, Shape
from rodwright.geometry import TOUCH, Box, Vector
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Hole,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Surface,
    Working,
)

_FACES = (Surface.REVERSE, Surface.FACE)


def shapes_of(working: Working, size: Vector) -> Iterator[Shape]:
    """What a machine is shown of a working of a blank of this size; nothing of what is in the
    outline (notches, cuts over whole ends) or made by hand (slanting holes)."""
    match working:
        case Hole():
            yield _hole(working, size)
        case Easing():
            yield _easing(working, size)
        case FingerPull():
            layer = Layer(working.surface, working.word, working.radius, working.depth, sign="R")
            yield Path(layer.name, _rectangle(working.bounds(size)))
        case Mortise():
            yield _mortise(working, size)
        case Mitre() | Bevel() | Notch() | PocketHole():
            return
        case _:
            box = working.bounds(size)
            side, depth, up = _entered(box, size, working.surface)
            layer = Layer(side, working.called, _width(box, size), depth, up)
            yield Path(layer.name, _rectangle(box))


def by_hand(working: Working) -> str:
    """What of a working no machine with an upright tool makes, in words; empty for all others."""
    if isinstance(working, PocketHole):
        return f"{working.called}: by hand, with a jig"
    if isinstance(working, Mitre | Bevel) and _leans(working):
        return f"{working.called} at {working.angle:.1f} degrees off square: with a saw"
    return ""


def _leans(working: Mitre | Bevel) -> bool:
    """Whether it slants through the thickness."""
    across = (
        (working.end, working.long)
        if isinstance(working, Mitre)
        else (working.surface, working.edge)
    )
    return any(each.axis == 2 for each in across)


def _hole(hole: Hole, size: Vector) -> Shape:
    surface = hole.surface
    through = hole.depth is None or hole.depth >= size[surface.axis] - TOUCH
    if surface.axis == 2:
        layer = Layer(
            None if through else surface,
            hole.called,
            hole.diameter,
            None if through else hole.depth,
        )
        return Circle(layer.name, hole.position, hole.diameter)
    up = hole.position[1]
    layer = Layer(
        surface, hole.called, hole.diameter, size[surface.axis] if through else hole.depth, up
    )
    return Path(layer.name, _rectangle(hole.bounds(size)))


def _mortise(mortise: Mortise, size: Vector) -> Shape:
    box = mortise.bounds(size)
    side, depth, up = _entered(box, size, mortise.surface)
    if mortise.surface.axis != 2:
        depth, up = mortise.depth, (box.low[2] + box.high[2]) / 2
        side = mortise.surface
    layer = Layer(side, mortise.called, min(mortise.extent), depth, up)
    if mortise.round_ends and mortise.surface.axis == 2:
        points, bulges = _rounded(box)
        return Path(layer.name, points, bulges=bulges)
    return Path(layer.name, _rectangle(box))


def _easing(easing: Easing, size: Vector) -> Shape:
    """The arris, on the line that the edge has in the drawing."""
    box = easing.bounds(size)
    side = next((each for each in (easing.surface, easing.edge) if each.axis == 2), easing.surface)
    other = easing.edge if side is easing.surface else easing.surface
    along = 1 - other.axis if other.axis < 2 else 0
    fixed = size[other.axis] if other.at_high else 0.0
    reach = (box.low[along], box.high[along])
    ends = tuple((end, fixed) if along == 0 else (fixed, end) for end in reach)
    layer = Layer(side, "easing", easing.radius, sign="R")
    return Path(layer.name, ends, closed=False)


def _entered(
    box: Box, size: Vector, surface: Surface
) -> tuple[Surface | None, float | None, float | None]:
    """From which side a channel is cut, how deep it is and, from an edge, how far its middle lies
    above the lower face; no side and no depth of what goes right through."""
    low, high = box.low[2] <= TOUCH, box.high[2] >= size[2] - TOUCH
    if low and high:
        return None, None, None
    if high or low:
        return _FACES[high], box.size[2], None
    return surface, box.size[surface.axis], (box.low[2] + box.high[2]) / 2


def _width(box: Box, size: Vector) -> float:
    """How wide a channel is: the shorter of its sides over the face, but along an edge that it is
    cut in its height there."""
    if box.low[2] > TOUCH and box.high[2] < size[2] - TOUCH:
        return box.size[2]
    return min(box.size[0], box.size[1])


def _rectangle(box: Box) -> tuple[Point, ...]:
    (x, y, _), (far_x, far_y, _) = box.low, box.high
    return ((x, y), (far_x, y), (far_x, far_y), (x, far_y))


def _rounded(box: Box) -> tuple[tuple[Point, ...], tuple[float, ...]]:
    """A slot whose two ends are half circles, anticlockwise."""
    (x, y, _), (far_x, far_y, _) = box.low, box.high
    radius = min(box.size[0], box.size[1]) / 2
    if box.size[0] >= box.size[1]:
        points = (
            (x + radius, y),
            (far_x - radius, y),
            (far_x - radius, far_y),
            (x + radius, far_y),
        )
        return points, (0.0, 1.0, 0.0, 1.0)
    points = ((far_x, y + radius), (far_x, far_y - radius), (x, far_y - radius), (x, y + radius))
    return points, (0.0, 1.0, 0.0, 1.0)
