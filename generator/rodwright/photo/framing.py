"""Where the camera stands: at eye height, level, a little to one side, near enough."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.photo.scene import Camera
from rodwright.unit import Swing, Unit

EYE_HEIGHT = 1500.0
"""Of the camera above the floor, mm; common practice, no source."""
TURN = 14.0
"""How far to one side the camera stands, degrees about the unit's middle; common practice, no
source."""
MARGIN = 0.08
"""Left free at either side of what is photographed, where it is tight: a share of the picture."""
SHORTEST, LONGEST = 35.0, 50.0
"""Focal lengths in mm, for a picture whose longer side is 36 mm; common practice, no source."""
USUAL_DISTANCE = 2600.0
"""mm from the camera to a unit of middling size; common practice, no source."""
FORMATS = (2 / 3, 3 / 4, 4 / 5, 1.0, 5 / 4, 4 / 3, 3 / 2)
"""Widths of pictures by their heights."""
_LONG_SIDE = 36.0
_LOW = 0.36
"""Of what is free above and below, the share below: floor is dull, wall lets it breathe."""

_Place = tuple[float, float]

Side = Literal[-1, 1]
"""The side from which something is looked at: -1 is the left."""


def side_of(unit: Unit) -> Side:
    """The side to photograph a unit from: where open doors hide least, away from a low ceiling."""
    ceiling = unit.surroundings.ceiling
    if ceiling and abs(ceiling[1][0]) > abs(ceiling[1][1]):
        return -1 if ceiling[1][0] > 0 else 1
    # Hinged at its left, a door opens clockwise seen from above, and then stands at its left.
    swings = [motion.angle for motion in unit.motions if isinstance(motion, Swing)]
    return 1 if sum(angle < 0 for angle in swings) * 2 >= len(swings) else -1


def format_for(box: Box, size: int) -> tuple[int, int]:
    """Width and height, in pixels, of a picture that suits a box seen from the front: upright,
    square or lying, its longer side ``size`` pixels."""
    across = box.size[0] * math.cos(math.radians(TURN)) + box.size[1] * math.sin(math.radians(TURN))
    shape = across / max(box.size[2], 1.0)
    suits = min(FORMATS, key=lambda each: abs(math.log(each / shape)))
    return (size, round(size / suits)) if suits > 1 else (round(size * suits), size)


def framed(
    box: Box,
    width: int,
    height: int,
    *,
    showing: Sequence[Box] = (),
    floor: float = 0.0,
    side: Side = 1,
    turn: float = TURN,
) -> Camera:
    """A level camera that shows all of a box (unit frame, mm), as large as the margins let it; or
    all of the boxes that it is ``showing``, which ``box`` lies round.

    It stands ``turn`` degrees to a ``side`` of the box's middle, at eye height over the ``floor``
    (z, mm), and looks towards the middle.  What is free above and below lies mostly above.
    """
    longer, widest = max(width, height), max(box.size[0], box.size[2])
    lens = _LONG_SIDE * USUAL_DISTANCE * (1 - 2 * MARGIN) / max(widest, 1.0)
    lens = min(max(lens, SHORTEST), LONGEST)
    focal = lens / _LONG_SIDE * longer / width
    angle = math.radians(side * turn)
    corners = [corner for each in showing or (box,) for corner in each.corners()]

    def standing(away: float) -> Camera:
        middle = box.centre
        x, y = middle[0] + away * math.sin(angle), middle[1] - away * math.cos(angle)
        return Camera((x, y, floor + EYE_HEIGHT), -side * turn, width, height, focal)

    def fits(away: float) -> bool:
        (left, bottom), (right, top) = _extent(standing(away), corners)
        return max(right - left, top - bottom) <= 1 - 2 * MARGIN

    near = math.dist(box.low[:2], box.high[:2]) / 2 + 100.0
    far = near + 2000.0
    while not fits(far):
        far *= 2
    for _ in range(60):
        half = (near + far) / 2
        near, far = (near, half) if fits(half) else (half, far)
    camera = standing(far)
    (left, bottom), (right, top) = _extent(camera, corners)
    free = 1 - 2 * MARGIN - (top - bottom)
    shift = ((left + right) / 2 - 0.5, bottom - MARGIN - _LOW * free)
    return Camera(camera.eye, camera.turn, width, height, focal, shift)


def on_picture(camera: Camera, points: Iterable[Vector]) -> NDArray[np.float64]:
    """Where points before a camera (unit frame, mm) lie on its picture: shares of its width from
    the left and of its height from the bottom, a row a point."""
    turn = math.radians(camera.turn)
    off = np.array(list(points)) - np.array(camera.eye)
    right = off[:, 0] * math.cos(turn) - off[:, 1] * math.sin(turn)
    ahead = off[:, 0] * math.sin(turn) + off[:, 1] * math.cos(turn)
    across = 0.5 + camera.focal * right / ahead - camera.shift[0]
    up = 0.5 + camera.focal * off[:, 2] / ahead * camera.width / camera.height - camera.shift[1]
    return np.column_stack([across, up])


def _extent(
    camera: Camera, points: Iterable[Vector]
) -> tuple[tuple[float, float], tuple[float, float]]:
    places = on_picture(camera, points)
    (left, bottom), (right, top) = places.min(axis=0).tolist(), places.max(axis=0).tolist()
    return (left, bottom), (right, top)
