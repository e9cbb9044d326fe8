"""What each kind of working takes away: boxes, straight bars with a round section, and halves of
balls.

What workings take beyond their planes is no piece; :mod:`rodwright.mass.wood` cuts it off.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import singledispatch

import numpy as np

from rodwright.geometry import Box, Vector, along, vector
from rodwright.mass.rounds import Array, Intervals, Round
from rodwright.unit import Easing, FingerPull, Hole, Mortise, PocketHole, Surface, Working

Piece = Box | Round


@singledispatch
def pieces(working: Working, size: Vector) -> Iterator[Piece]:
    """What a working takes away from a blank of this size, in pieces that don't meet each other.

    Raises:
        TypeError: nothing here says what a working of this kind takes.
    """
    if working.fills_bounds:
        yield working.bounds(size)
    elif not working.planes(size):
        raise TypeError(f"no arithmetic has the mass of a {working.word}")


@pieces.register
def _(working: Hole, size: Vector) -> Iterator[Piece]:
    depth = size[working.surface.axis] if working.depth is None else working.depth
    yield _bar(size, working.surface, working.position, working.diameter / 2, depth)


@pieces.register
def _(working: Mortise, size: Vector) -> Iterator[Piece]:
    box = working.bounds(size)
    if working.fills_bounds:
        yield box
        return
    position, extent, radius = working.position, working.extent, min(working.extent) / 2
    yield box.grown(along(working.long_axis, -radius))
    middle = [at + each / 2 for at, each in zip(position, extent, strict=True)]
    over = extent.index(max(extent))
    for side in (-1, 1):
        at = list(middle)
        at[over] += side * (max(extent) / 2 - radius)
        centre = (at[0], at[1])
        yield _bar(size, working.surface, centre, radius, working.depth, (over, side))


@pieces.register
def _(working: Easing, size: Vector) -> Iterator[Piece]:
    yield _arris(size, working)


@pieces.register
def _(working: PocketHole, size: Vector) -> Iterator[Piece]:
    yield from _pocket(size, working)


@pieces.register
def _(working: FingerPull, size: Vector) -> Iterator[Piece]:
    yield from _cove(size, working)


def _bar(
    size: Vector,
    surface: Surface,
    position: tuple[float, float],
    radius: float,
    depth: float,
    half: tuple[int, int] | None = None,
) -> Round:
    """A bar square to a surface; of ``half`` only that side of that one of its two axes."""
    axis = surface.axis
    across = [i for i in range(3) if i != axis]
    over, side = half or (0, 1)
    frame = np.zeros((3, 3))
    frame[0, across[over]] = side
    frame[1, across[1 - over]] = 1
    frame[2, axis] = 1
    depth = min(depth, size[axis])
    start, stop = (size[axis] - depth, size[axis]) if surface.at_high else (0.0, depth)
    centre, low, high = np.zeros(3), np.zeros(3), np.zeros(3)
    centre[across] = position
    low[across], high[across] = centre[across] - radius, centre[across] + radius
    low[axis], high[axis] = start, stop
    if half:
        (low if side > 0 else high)[across[over]] = centre[across[over]]
    return Round(
        "half disc" if half else "disc", centre, frame, radius, start, stop, _box(low, high)
    )


def _arris(size: Vector, easing: Easing) -> Round:
    run = easing.run
    frame, centre, low, high = np.zeros((3, 3)), np.zeros(3), np.zeros(3), np.array(size)
    frame[2, run] = 1
    for row, surface in enumerate((easing.surface, easing.edge)):
        i = surface.axis
        frame[row, i] = -1 if surface.at_high else 1
        centre[i] = size[i] - easing.radius if surface.at_high else easing.radius
        (low if surface.at_high else high)[i] = centre[i]
    low[run], high[run] = easing.start, size[run] if easing.stop is None else easing.stop
    return Round("corner", centre, frame, easing.radius, low[run], high[run], _box(low, high))


def _cove(size: Vector, pull: FingerPull) -> Iterator[Round]:
    """A bar whose axis lies above the surface, and half a ball where the cutter was let in."""
    run, bounds = pull.run, pull.bounds(size)
    frame, centre = np.zeros((3, 3)), np.zeros(3)
    frame[2, run] = 1
    for row, surface, inward in (
        (0, pull.surface, pull.depth - pull.radius),
        (1, pull.edge, pull.position),
    ):
        i = surface.axis
        frame[row, i] = -1 if surface.at_high else 1
        centre[i] = size[i] - inward if surface.at_high else inward
    first, last = pull.lets_in(size)
    low, high = 0.0 if first is None else first, size[run] if last is None else last
    if high > low:
        box = bounds.spanning(run, low, high)
        yield Round("disc", centre, frame, pull.radius, low, high, box, whole=False)
    for at, way in ((first, -1), (last, 1)):
        if at is None:
            continue
        middle, turned = centre.copy(), frame.copy()
        middle[run], turned[2, run] = at, way
        box = bounds.spanning(run, *sorted((at, at + way * pull.reach)))
        yield Round("half ball", middle, turned, pull.radius, 0.0, pull.radius, box, whole=False)


def _pocket(size: Vector, pocket: PocketHole) -> Iterator[Round]:
    """The pocket, from its floor out through the face; and the screw's hole, out at the end."""
    end, surface = pocket.end, pocket.surface
    third = pocket.run
    slope = math.radians(pocket.angle)
    leaves = np.zeros(3)  # where the axis leaves the end
    leaves[third] = pocket.position
    leaves[end.axis] = size[end.axis] if end.at_high else 0.0
    leaves[surface.axis] = size[surface.axis] - pocket.exit if surface.at_high else pocket.exit
    along = np.zeros(3)
    along[end.axis] = math.cos(slope) * (-1 if end.at_high else 1)
    along[surface.axis] = math.sin(slope) * (1 if surface.at_high else -1)
    sideways = np.zeros(3)
    sideways[third] = 1.0
    for way, radius, broken, reach in (
        (1, pocket.diameter / 2, surface, pocket.exit / math.sin(slope)),
        (-1, pocket.screw / 2, end, 0.0),
    ):
        frame = np.array([sideways, np.cross(sideways, along), way * along])
        start, axis = way * pocket.stop, broken.axis
        rise = -frame[1, axis] / frame[2, axis]
        low, high = _bounds(leaves, frame, radius, start, reach, rise)
        # Where the floor itself breaks out, what is left isn't a bar cut off aslant.
        yield Round(
            "disc",
            leaves,
            frame,
            radius,
            start,
            reach,
            _box(low, high),
            rise,
            whole=reach - abs(rise) * radius > start,
        )


def _bounds(
    centre: Array, frame: Array, radius: float, start: float, stop: float, slope: float
) -> Intervals:
    """Bounds of a bar whose end is cut off aslant: of its two ellipses."""
    lows, highs = [], []
    for at, lean in ((start, 0.0), (stop, slope)):
        middle = centre + at * frame[2]
        half = radius * np.hypot(frame[0], frame[1] + lean * frame[2])
        lows.append(middle - half)
        highs.append(middle + half)
    return np.minimum(*lows), np.maximum(*highs)


def _box(low: Array, high: Array) -> Box:
    return Box(vector(low), vector(high))
