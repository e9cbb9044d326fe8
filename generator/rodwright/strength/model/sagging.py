"""What a model says of levels: how far they sag, and with what they bear on what carries them.

N and mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from rodwright.strength.bearings import Bearing
from rodwright.strength.model.mesh import Grid
from rodwright.strength.model.solving import Moved, tie_forces

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from rodwright.strength.model.whole import Model

WITHIN = 12
"""Places within an element at which a level's sag is looked up."""


def lines_down(grid: Grid, moved: Moved) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """How far a level has gone down and how it slopes, at its lines from left to right, front to
    back: mm and radians."""
    rows = range(len(grid.ticks[1]))
    numbers = [[grid.numbers[i, j] for j in rows] for i in range(len(grid.ticks[0]))]
    return -moved.moves[numbers, 2], moved.moves[numbers, 4]


def curve(grid: Grid, moved: Moved, row: int | None = None) -> Curve:
    """The line that a level bends in: at one of its lines from front to back, or the mean of
    them."""
    down, slope = lines_down(grid, moved)
    if row is not None:
        return Curve(grid.ticks[0], tuple(down[:, row].tolist()), tuple(slope[:, row].tolist()))
    deep = np.diff(np.array(grid.ticks[1]))
    shares = (np.append(deep, 0.0) + np.append(0.0, deep)) / 2 / deep.sum()
    return Curve(grid.ticks[0], tuple((down @ shares).tolist()), tuple((slope @ shares).tolist()))


@dataclass(frozen=True, slots=True)
class Curve:
    """A line that bends by cubics between ``ticks``: how far it is down there, and its slope."""

    ticks: tuple[float, ...]
    down: tuple[float, ...]
    slope: tuple[float, ...]

    def at(self, x: float) -> float:
        """How far down it is at a place."""
        number = max(0, min(sum(tick <= x for tick in self.ticks), len(self.ticks) - 1) - 1)
        start, length = self.ticks[number], self.ticks[number + 1] - self.ticks[number]
        s = (x - start) / length
        return (
            self.down[number] * (1 - 3 * s**2 + 2 * s**3)
            + self.down[number + 1] * (3 * s**2 - 2 * s**3)
            + self.slope[number] * length * (s - 2 * s**2 + s**3)
            + self.slope[number + 1] * length * (s**3 - s**2)
        )

    def sag(self, start: float, stop: float) -> float:
        """The most that it is off the straight line between two places."""
        return self.off(self.lowest(start, stop), start, stop)

    def lowest(self, start: float, stop: float) -> float:
        """Where it is most off the straight line between two places."""
        between = np.linspace(start, stop, WITHIN * len(self.ticks) + 1)
        return float(max(between, key=lambda x: abs(self.off(x, start, stop))))

    def off(self, x: float, start: float, stop: float) -> float:
        """How far below the straight line between two places it is at another."""
        left, right = self.at(start), self.at(stop)
        return self.at(x) - left - (right - left) * (x - start) / (stop - start)


def front_to_back(grid: Grid, moved: Moved, front: float, back: float) -> float:
    """The most that a level sags between two lines from left to right that hold it, mm."""
    rows = range(len(grid.ticks[1]))
    found = []
    for i in range(len(grid.ticks[0])):
        numbers = [grid.numbers[i, j] for j in rows]
        down, slope = -moved.moves[numbers, 2], -moved.moves[numbers, 3]
        line = Curve(grid.ticks[1], tuple(down.tolist()), tuple(slope.tolist()))
        found.append(line.off(line.lowest(front, back), front, back))
    return max(found, key=abs)


def spans_of(bearing: Bearing) -> tuple[tuple[float, float], ...]:
    """From where to where its sag is counted, x in the unit frame: as its beam has it."""
    low = bearing.level.box.low[0]
    if bearing.bent is not None:
        sags = (each for each in bearing.bent.sags() if not each.overhang)
        return tuple((low + each.start, low + each.stop) for each in sags)
    return bearing.spans


def sag_of(model: Model, bearing: Bearing, moved: Moved) -> float:
    """The greatest sag of a level's spans, the mean over its depth, mm."""
    line = curve(model.mesh.grids[bearing.level.ref], moved)
    return max((line.sag(*span) for span in spans_of(bearing)), key=abs, default=0.0)


def borne_on(model: Model, refs: tuple[str, ...], other: str, moved: Moved) -> float:
    """With what a level (its panels' ``refs``) bears on another part by their joints, N down."""
    total = 0.0
    for number, level_is_second in _between(model, refs, other):
        if number not in moved.off_ties:
            up = float(tie_forces(model.mesh, model.mesh.ties[number], moved.moves)[2])
            total += up if level_is_second else -up
    return total


def _between(model: Model, refs: tuple[str, ...], other: str) -> Iterator[tuple[int, bool]]:
    for number, tie in enumerate(model.mesh.ties):
        joint = model.unit.joints[tie.joint]
        if joint.first == other and joint.second in refs:
            yield number, True
        elif joint.second == other and joint.first in refs:
            yield number, False


def greatest_moments(model: Model, moved: Moved) -> dict[int, float]:
    """The moment about y that each joint carries, N mm, by its place in the unit's list."""
    found: dict[int, float] = {}
    for number, tie in enumerate(model.mesh.ties):
        if number not in moved.off_ties:
            moment = float(tie_forces(model.mesh, tie, moved.moves)[4])
            found[tie.joint] = found.get(tie.joint, 0.0) + moment
    return {joint: abs(moment) for joint, moment in found.items()}
