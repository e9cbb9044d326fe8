"""The straight bars with a round section that workings take away."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import Box, Vector, vector
from rodwright.unit import Easing, Hole, Mortise, PocketHole, Surface, Working

Array = NDArray[np.float64]
Intervals = tuple[Array, Array]

CORNER_CENTRE = (10 - 3 * math.pi) / (12 - 3 * math.pi)
"""Centre of what lies outside a quarter circle of radius 1, from either tangent: the square's
first moment less the quarter's, whose centre is 4 / (3 pi) from either radius."""

_TURNS = {"disc": (0.0, math.pi), "half disc": (math.pi / 2, math.pi), "corner": (0.0, math.pi / 2)}


@dataclass(frozen=True, slots=True, eq=False)
class Round:
    """A bar along ``frame[2]``, from ``start`` to ``stop`` from ``centre``.

    Its section, over ``frame[0]`` and ``frame[1]`` from the axis, is a disc, the half of one
    at positive ``frame[0]``, or the corner at negative both between a quarter circle and its
    tangents.  In whole wood it ends at ``stop + slope * (place along frame[1])``; ``whole``
    is false where that isn't so.  ``box`` holds all of it that may lie in wood; ``number``
    is its working's.
    """

    number: int
    section: Literal["disc", "half disc", "corner"]
    centre: Array
    frame: Array
    radius: float
    start: float
    stop: float
    box: Box
    slope: float = 0.0
    whole: bool = True

    @property
    def turn(self) -> tuple[float, float]:
        """The angles from which its section is reached: ``-radius * cos`` along ``frame[0]``."""
        return _TURNS[self.section]

    def across(self, place: Array) -> Intervals:
        """Extent of the section along ``frame[1]`` at places along ``frame[0]``."""
        root = np.sqrt(np.maximum(self.radius**2 - place**2, 0.0))
        return (np.full_like(root, -self.radius), -root) if self.section == "corner" else (
            -root, root)  # fmt: skip

    def moments(self) -> Array:
        """Volume and first moments (part frame) of the bar in whole wood.

        A bar cut off aslant has the volume of one cut square at its axis; its second moment
        over the section, ``area * radius^2 / 4`` for a disc, moves the centre.
        """
        area, first, second = math.pi * self.radius**2, 0.0, 0.0
        if self.section == "half disc":
            area, first = area / 2, 4 * self.radius / (3 * math.pi)
        elif self.section == "corner":
            area = (1 - math.pi / 4) * self.radius**2
            first = second = self.radius * (CORNER_CENTRE - 1)
        volume = area * (self.stop - self.start)
        skew = self.slope * area * self.radius**2 / 4
        along = (area * (self.stop**2 - self.start**2) + self.slope * skew) / 2
        local = np.array([volume * first, volume * second + skew, along])
        return np.array([volume, *(volume * self.centre + local @ self.frame)])

    def pierced(self, points: Array, direction: Array) -> list[Intervals]:
        """Where lines through points (n, 3) along a direction run in the bar."""
        f, s, t = self.frame @ (points - self.centre).T
        df, ds, dt = self.frame @ direction
        end = self.stop if not self.slope else math.inf
        inside = _meet(_between(t, dt, self.start, end), _cylinder(f, s, df, ds, self.radius))
        if self.section == "disc":
            return [inside]
        if self.section == "half disc":
            return [_meet(inside, _between(f, df, 0.0, math.inf))]
        square = _meet(
            _between(t, dt, self.start, end),
            _meet(_between(f, df, -self.radius, 0.0), _between(s, ds, -self.radius, 0.0)),
        )
        low, high = _cylinder(f, s, df, ds, self.radius)
        missed = high <= low
        return [
            (square[0], np.minimum(square[1], np.where(missed, math.inf, low))),
            (np.maximum(square[0], np.where(missed, math.inf, high)), square[1]),
        ]


def box_pierced(points: Array, direction: Array, low: Array, high: Array) -> Intervals:
    """Where lines through points (n, 3) along a direction run in a box."""
    x, y, z = (_between(points[:, i], direction[i], low[i], high[i]) for i in range(3))
    return _meet(x, _meet(y, z))


def rounds_of(size: Vector, working: Working, number: int) -> Iterator[Round]:
    """The bars that a working takes, none of which meet each other."""
    match working:
        case Hole():
            depth = size[working.surface.axis] if working.depth is None else working.depth
            yield _bar(size, working.surface, working.position, working.diameter / 2, depth, number)
        case Mortise(surface, position, extent, depth, True):
            radius = min(extent) / 2
            middle = [at + each / 2 for at, each in zip(position, extent, strict=True)]
            over = extent.index(max(extent))
            for side in (-1, 1):
                at = list(middle)
                at[over] += side * (max(extent) / 2 - radius)
                yield _bar(size, surface, (at[0], at[1]), radius, depth, number, (over, side))
        case Easing():
            yield _arris(size, working, number)
        case PocketHole():
            yield from _pocket(size, working, number)
        case _:
            return


def _bar(
    size: Vector,
    surface: Surface,
    position: tuple[float, float],
    radius: float,
    depth: float,
    number: int,
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
        number, "half disc" if half else "disc", centre, frame, radius, start, stop, _box(low, high)
    )


def _arris(size: Vector, easing: Easing, number: int) -> Round:
    run = 3 - easing.surface.axis - easing.edge.axis
    frame, centre, low, high = np.zeros((3, 3)), np.zeros(3), np.zeros(3), np.array(size)
    frame[2, run] = 1
    for row, surface in enumerate((easing.surface, easing.edge)):
        i = surface.axis
        frame[row, i] = -1 if surface.at_high else 1
        centre[i] = size[i] - easing.radius if surface.at_high else easing.radius
        (low if surface.at_high else high)[i] = centre[i]
    low[run], high[run] = easing.start, size[run] if easing.stop is None else easing.stop
    return Round(
        number, "corner", centre, frame, easing.radius, low[run], high[run], _box(low, high)
    )


def _pocket(size: Vector, pocket: PocketHole, number: int) -> Iterator[Round]:
    """The pocket, from its floor out through the face; and the screw's hole, out at the end."""
    end, surface = pocket.end, pocket.surface
    third = 3 - end.axis - surface.axis
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
            number, "disc", leaves, frame, radius, start, reach, _box(low, high), rise,
            whole=reach - abs(rise) * radius > start,
        )  # fmt: skip


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


def _between(at: Array, rate: float, low: float, high: float) -> Intervals:
    """Where ``low < at + rate * t < high``, as intervals of t."""
    if abs(rate) < 1e-12:
        inside = (at > low) & (at < high)
        return np.where(inside, -math.inf, math.inf), np.where(inside, math.inf, -math.inf)
    first, second = (low - at) / rate, (high - at) / rate
    return np.minimum(first, second), np.maximum(first, second)


def _cylinder(f: Array, s: Array, df: float, ds: float, radius: float) -> Intervals:
    """Where lines run within a radius of an axis that lies along neither f nor s."""
    square = df**2 + ds**2
    if square < 1e-24:
        return _between(np.hypot(f, s), 0.0, -1.0, radius)
    middle = -(f * df + s * ds) / square
    rest = middle**2 - (f**2 + s**2 - radius**2) / square
    half = np.sqrt(np.maximum(rest, 0.0))
    return middle - half, middle + half


def _meet(first: Intervals, second: Intervals) -> Intervals:
    return np.maximum(first[0], second[0]), np.minimum(first[1], second[1])
