"""The straight bars with a round section, and halves of balls, that workings take away."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import Box

Array = NDArray[np.float64]
Intervals = tuple[Array, Array]

CORNER_CENTRE = (10 - 3 * math.pi) / (12 - 3 * math.pi)
"""Centre of what lies outside a quarter circle of radius 1, from either tangent: the square's
first moment less the quarter's, whose centre is 4 / (3 pi) from either radius."""

_TURNS = {
    "disc": (0.0, math.pi),
    "half disc": (math.pi / 2, math.pi),
    "corner": (0.0, math.pi / 2),
    "half ball": (0.0, math.pi),
}


@dataclass(frozen=True, slots=True, eq=False)
class Round:
    """A bar along ``frame[2]``, from ``start`` to ``stop`` from ``centre``.

    Its section, over ``frame[0]`` and ``frame[1]`` from the axis, is a disc, the half of one
    at positive ``frame[0]``, or the corner at negative both between a quarter circle and its
    tangents.  A half ball lies round the centre at positive ``frame[2]``, its section a disc
    there, and ends with its round.  In whole wood a bar ends at ``stop + slope *
    (place along frame[1])``; ``whole`` is false where that isn't so.  ``box`` holds all of it that
    may lie in wood.
    """

    section: Literal["disc", "half disc", "corner", "half ball"]
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
        return (
            (np.full_like(root, -self.radius), -root) if self.section == "corner" else (-root, root)
        )

    def moments(self) -> Array:
        """Volume and first moments (part frame) of the bar in whole wood.

        A bar cut off aslant has the volume of one cut square at its axis; its second moment
        over the section, ``area * radius^2 / 4`` for a disc, moves the centre.
        """
        if self.section == "half ball":
            volume, along = 2 / 3 * math.pi * self.radius**3, math.pi / 4 * self.radius**4
            return np.array([volume, *(volume * self.centre + along * self.frame[2])])
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

    def ends(self, points: Array) -> Array:
        """Where lines along it through points (n, 3) of its section leave it, unless it is cut off
        aslant."""
        if self.section != "half ball":
            return np.full(len(points), self.stop)
        f, s, _ = self.frame @ (points - self.centre).T
        return np.asarray(np.sqrt(np.maximum(self.radius**2 - f**2 - s**2, 0.0)))

    def holds(self, points: Array) -> NDArray[np.bool_]:
        """Which points (n, 3) of whole wood it takes away."""
        f, s, t = self.frame @ (points - self.centre).T
        if self.section == "half ball":
            return np.asarray((t > 0) & (f**2 + s**2 + t**2 < self.radius**2))
        along = (t > self.start) & (t < (self.stop if not self.slope else math.inf))
        clear = np.hypot(f, s) < self.radius
        if self.section == "disc":
            return np.asarray(along & clear)
        if self.section == "half disc":
            return np.asarray(along & clear & (f >= 0))
        return np.asarray(along & ~clear & (f < 0) & (s < 0))

    def pierced(self, points: Array, direction: Array) -> list[Intervals]:
        """Where lines through points (n, 3) along a direction run in the bar."""
        f, s, t = self.frame @ (points - self.centre).T
        df, ds, dt = self.frame @ direction
        if self.section == "half ball":
            middle = -(f * df + s * ds + t * dt)
            rest = middle**2 - (f**2 + s**2 + t**2 - self.radius**2)
            half = np.sqrt(np.maximum(rest, 0.0))
            ball = (middle - half, np.where(rest > 0, middle + half, -math.inf))
            return [_meet(ball, _between(t, dt, 0.0, math.inf))]
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
