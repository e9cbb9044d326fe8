"""A plain surround for moving pictures: a light floor that turns up into a wall far off."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.boxes import Box
from rodwright.photo.framing import EYE_HEIGHT
from rodwright.photo.room import Room
from rodwright.photo.scene import Body, Camera, Lamp, Surface

_COVE = Surface((0.8, 0.8, 0.8), gloss=0.0)
_SKY = (1.0, 1.0, 1.0)
_KEY = 6.0
"""Radiance of the lamp, in red, green and blue alike; the sky has 1."""
_FAR, _ROUNDED, _HIGH = 5.0, 2.5, 3.5
"""How far the floor's rim is, how large the hollow between it and the wall, and how high the wall,
as multiples of the longest side of what stands there."""
_STEPS, _ROUNDS = 12, 64
_AWAY = 2.4
"""How far the camera stands off, as a multiple of the longest side."""
_MARGIN = 1.12


def studio_round(box: Box, floor: float) -> Room:
    """The surround of what fills a box (unit frame, mm), with its floor at a height."""
    large = max(box.size)
    x, y, _ = box.centre
    # Above, to the left and before it, looking down at its middle.
    side = 1.2 * large
    lamp = _facing(
        np.array([x - 1.3 * large, y - 1.3 * large, box.high[2] + 1.1 * large]),
        np.array(box.centre),
        side,
    )
    return Room((_cove(large, (x, y, floor)),), (lamp,), _SKY)


def _cove(large: float, middle: tuple[float, float, float]) -> Body:
    """A floor that turns up into a wall all round, with no edge to be seen; open above."""
    bend = np.linspace(0.0, np.pi / 2, _STEPS)
    out = np.concatenate([[0.0], _FAR - _ROUNDED + _ROUNDED * np.sin(bend), [_FAR]]) * large
    up = np.concatenate([[0.0], _ROUNDED * (1 - np.cos(bend)), [_HIGH]]) * large
    tilt = np.concatenate([[0.0], bend, [np.pi / 2]])
    turn = np.linspace(0.0, 2 * np.pi, _ROUNDS + 1)
    rings = [out[:, None] * np.cos(turn), out[:, None] * np.sin(turn)]
    points = np.stack([*rings, np.repeat(up[:, None], len(turn), axis=1)], axis=-1)
    inward = [-np.sin(tilt)[:, None] * np.cos(turn), -np.sin(tilt)[:, None] * np.sin(turn)]
    normals = np.stack([*inward, np.repeat(np.cos(tilt)[:, None], len(turn), axis=1)], axis=-1)
    across = len(turn)
    start = (np.arange(len(out) - 1)[:, None] * across + np.arange(_ROUNDS)).ravel()
    beyond = start + across
    triangles = np.concatenate(
        [
            np.stack([start, beyond, beyond + 1], axis=1),
            # At the middle the other half has no area.
            np.stack([start, beyond + 1, start + 1], axis=1)[_ROUNDS:],
        ]
    )
    return Body(
        "studio",
        points.reshape(-1, 3) + np.array(middle),
        normals.reshape(-1, 3),
        triangles,
        _COVE,
    )


def _facing(middle: NDArray[np.float64], target: NDArray[np.float64], side: float) -> Lamp:
    out = (target - middle) / np.linalg.norm(target - middle)
    one = np.cross(out, [0.0, 0.0, 1.0])
    one *= side / np.linalg.norm(one)
    other = np.cross(out, one)
    start = middle - one / 2 - other / 2
    corner, first, second = (tuple(map(float, each)) for each in (start, one, other))
    return Lamp(corner, (first, second), (_KEY, _KEY, _KEY))  # type: ignore[arg-type]


def round_it(box: Box, turns: Iterable[float], size: int, floor: float) -> list[Camera]:
    """Level cameras round a box (unit frame, mm), one for each turn (degrees from its front, to
    the right as seen from above), from all of which it fills one frame."""
    turns = list(turns)
    seen = [np.array(list(_seen(box, turn, floor))) for turn in turns]
    across = max(float(np.abs(each[:, 0]).max()) for each in seen) * _MARGIN
    top = max(float(each[:, 1].max()) for each in seen)
    bottom = min(float(each[:, 1].min()) for each in seen)
    high = (top - bottom) * _MARGIN
    width, height = _format_of(2 * across, high, size)
    focal = min(1 / (2 * across), height / width / high)
    lift = (top + bottom) / 2 * focal * width / height
    return [
        Camera(_eye(box, turn, floor), -turn, width, height, focal, (0.0, lift)) for turn in turns
    ]


def _eye(box: Box, turn: float, floor: float) -> tuple[float, float, float]:
    away = _AWAY * max(box.size)
    around = math.radians(turn)
    x, y, _ = box.centre
    return (x + away * math.sin(around), y - away * math.cos(around), floor + EYE_HEIGHT)


def _seen(box: Box, turn: float, floor: float) -> Iterator[tuple[float, float]]:
    """Where the corners are seen: across and up, as shares of their distance into the picture."""
    eye = _eye(box, turn, floor)
    around = math.radians(turn)
    ahead = np.array([-math.sin(around), math.cos(around), 0.0])
    right = np.array([math.cos(around), math.sin(around), 0.0])
    for x in (box.low[0], box.high[0]):
        for y in (box.low[1], box.high[1]):
            for z in (box.low[2], box.high[2]):
                off = np.array([x, y, z]) - eye
                deep = float(off @ ahead)
                yield float(off @ right) / deep, float(off[2]) / deep


def _format_of(wide: float, high: float, size: int) -> tuple[int, int]:
    """Width and height in pixels, the longer being ``size``: from twice as high as wide to twice
    as wide as high."""
    ratio = min(max(wide / high, 0.5), 2.0)
    return (size, round(size / ratio)) if ratio > 1 else (round(size * ratio), size)
