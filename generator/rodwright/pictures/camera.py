"""Cameras: from the unit frame to screen coordinates.

Screen coordinates are right-handed and in millimetres at the camera's target: x to the
right, y up, and depth towards the viewer (the larger, the nearer).  Planes stay planes,
with perspective too, so one plane equation over the screen gives a facet's depth anywhere.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import Box, Vector, vector
from rodwright.unit.directions import FORWARD, LEFT, X, Y, Z

Array = NDArray[np.float64]

BLOCK = 16384
"""Points are turned so many at a time: they stay in a processor's own memory, and no library
wakes threads for them that cost more than they save."""


@dataclass(frozen=True, slots=True)
class Camera:
    """Looks at ``target`` (unit frame) from the direction ``towards``.

    ``right``, ``up`` and ``towards`` are unit vectors of the unit frame, at right angles;
    ``distance`` is from eye to target in mm, or None for a parallel projection.
    """

    target: Vector
    right: Vector
    up: Vector
    towards: Vector
    distance: float | None = None

    def screen(self, points: Array) -> Array:
        """Unit-frame points, shape (n, 3), on the screen: x, y and depth, shape (n, 3)."""
        turned: Array = _turned(points - np.array(self.target), self.axes().T)
        if self.distance is None:
            return turned
        scale = self.distance / (self.distance - turned[:, 2])
        return np.column_stack(
            [turned[:, 0] * scale, turned[:, 1] * scale, self.distance * (scale - 1.0)]
        )

    def unit(self, points: Array) -> Array:
        """The reverse of ``screen``: unit-frame points, shape (n, 3)."""
        turned = points
        if self.distance is not None:
            scale = points[:, 2] / self.distance + 1.0
            turned = np.column_stack(
                [points[:, 0] / scale, points[:, 1] / scale, self.distance * (1.0 - 1.0 / scale)]
            )
        return np.asarray(_turned(turned, self.axes()) + np.array(self.target))

    def sights(self, points: Array) -> Array:
        """The directions, away from the viewer, in which screen points (n, 2) of depth 0 are
        seen; unit frame, (n, 3), of no fixed length."""
        if self.distance is None:
            return np.tile(-np.array(self.towards), (len(points), 1))
        aim = np.column_stack([points, np.full(len(points), -self.distance)])
        return _turned(aim, self.axes())

    def axes(self) -> Array:
        """The rows are right, up and towards: the turn from unit frame to screen."""
        return np.array([self.right, self.up, self.towards])


FRONT = Camera((0.0, 0.0, 0.0), X, Z, FORWARD)
"""The front view."""
FROM_LEFT = Camera((0.0, 0.0, 0.0), FORWARD, Z, LEFT)
"""The view from the left: the front of the unit lies to the right."""
PLAN = Camera((0.0, 0.0, 0.0), X, Y, Z)
"""The view from above: the front of the unit lies at the foot."""


def looking_from(towards: Vector) -> Camera:
    """A parallel view from any direction, upright where it can be; target at the origin."""
    aim = np.array(towards) / np.linalg.norm(towards)
    right = np.cross([0.0, 0.0, 1.0], aim)
    if np.linalg.norm(right) < 1e-9:
        right = np.array([1.0, 0.0, 0.0])
    right /= np.linalg.norm(right)
    up = np.cross(aim, right)
    return Camera((0.0, 0.0, 0.0), vector(right), vector(up), vector(aim))


def three_quarter(box: Box, turn: float = 28.0, tilt: float = 16.0) -> Camera:
    """From the front, ``turn`` degrees round to the right and ``tilt`` degrees above.

    The perspective is mild: the eye stands at 4.5 times the box's diagonal.
    """
    turn_rad, tilt_rad = np.radians(turn), np.radians(tilt)
    right = np.array([np.cos(turn_rad), np.sin(turn_rad), 0.0])
    level = np.array([np.sin(turn_rad), -np.cos(turn_rad), 0.0])
    towards = level * np.cos(tilt_rad) + np.array([0.0, 0.0, np.sin(tilt_rad)])
    up = np.cross(towards, right)
    return Camera(
        box.centre,
        vector(right),
        vector(up),
        vector(towards),
        4.5 * float(np.linalg.norm(box.size)),
    )


def _turned(points: Array, axes: Array) -> Array:
    turned: Array = np.empty(points.shape)
    for start in range(0, len(points), BLOCK):
        np.matmul(points[start : start + BLOCK], axes, out=turned[start : start + BLOCK])
    return turned
