"""Where there is room in a unit: what stands there keeps clear of every part.  mm, unit frame."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.boxes import Box
from rodwright.geometry.halfspaces import box_planes
from rodwright.unit import Part, Unit

TOUCHES = 0.05
"""Things that reach into each other by less than this, mm, touch."""


@dataclass(slots=True)
class FreeRoom:
    """What is taken of the room in and on a unit: parts, each as the convex body between its
    blank's sides and what cuts it off, and the boxes of what was placed."""

    points: NDArray[np.float64]
    normals: NDArray[np.float64]
    lows: NDArray[np.float64]
    highs: NDArray[np.float64]
    placed: NDArray[np.float64]

    @classmethod
    def of(cls, unit: Unit) -> FreeRoom:
        """All of the room that the parts of a unit leave, what it is cut out round, and a ceiling
        that slopes over it."""
        bodies = [_planes(part) for part in unit.parts]
        boxes = [part.bounds() for part in unit.parts]
        most = max(len(points) for points, _ in bodies)
        # A plane more than once does no harm, so that all bodies have as many.
        points = np.array([np.resize(each, (most, 3)) for each, _ in bodies])
        normals = np.array([np.resize(each, (most, 3)) for _, each in bodies])
        if unit.surroundings.ceiling is not None:
            at, normal = map(np.array, unit.surroundings.ceiling)
            points = np.concatenate([points, np.broadcast_to(at, (1, most, 3))])
            normals = np.concatenate([normals, np.broadcast_to(-normal, (1, most, 3))])
            boxes.append(Box((-1e6, -1e6, -1e6), (1e6, 1e6, 1e6)))
        lows = np.array([box.low for box in boxes])
        highs = np.array([box.high for box in boxes])
        obstacles = [[each.box.low, each.box.high] for each in unit.surroundings.obstacles]
        return cls(points, normals, lows, highs, np.array(obstacles).reshape(-1, 2, 3))

    def is_clear(self, box: Box) -> bool:
        """Whether a box meets nothing.

        By separating planes: a box that lies wholly beyond one side of a body is clear of it.  It
        may be called taken where it slips past an edge of a bevelled part.
        """
        low, high = np.array(box.low) + TOUCHES, np.array(box.high) - TOUCHES
        if ((self.placed[:, 0] < high) & (self.placed[:, 1] > low)).all(axis=1).any():
            return False
        near = np.flatnonzero((self.lows < high).all(axis=1) & (self.highs > low).all(axis=1))
        if not len(near):
            return True
        normals = self.normals[near]
        # The corner of the box that lies least beyond each plane.
        least = np.where(normals > 0, low, high)
        beyond = ((least - self.points[near]) * normals).sum(axis=2)
        return bool((beyond > 0).any(axis=1).all())

    def height_over(self, box: Box, most: float) -> float:
        """How high a box may be made upwards, mm, at the most ``most``; to the millimetre."""
        low, high = 0.0, most
        while high - low > 1.0:
            half = (low + high) / 2
            if self.is_clear(box.spanning(2, box.low[2], box.low[2] + half)):
                low = half
            else:
                high = half
        return low

    def take(self, box: Box) -> None:
        """Note that something stands there."""
        self.placed = np.concatenate([self.placed, [[box.low, box.high]]])


def _planes(part: Part) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Points and normals of what bounds a part, unit frame."""
    size, placed = part.blank.size, part.placement
    planes = [*box_planes(Box.of_size(size))]
    planes += [plane for each in part.workings for plane in each.planes(size)]
    turn = np.array(placed.axes)
    points = np.array([at for at, _ in planes]) @ turn + np.array(placed.origin)
    return points, np.array([normal for _, normal in planes]) @ turn
