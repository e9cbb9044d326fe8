"""A room's light: a window at the side, and what comes from the rest of the room behind the camera.

Lengths in mm, unit frame; radiances in units of their own, since ``exposure`` is set by them.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.photo.scene import Colour, Lamp

_WINDOW: Colour = (0.93, 1.0, 1.10)
"""Daylight from the sky, a little cool (a choice)."""
_FILL: Colour = (1.04, 1.0, 0.95)
"""What a room throws back, a little warm (a choice)."""
_WINDOW_RADIANCE, _FILL_RADIANCE = 10.0, 1.15
"""How strongly each shines (a choice: the side away from the window keeps its drawing)."""
_SILL, _HEAD, _WIDE = 800.0, 2250.0, 1900.0
"""Heights of a window above the floor, and its width, mm (common practice, no source)."""
_BEFORE = 500.0
"""How far before the unit it begins, mm (a choice): its light falls on the front aslant."""
_OFF = 20.0
_WHITE = 1.0
"""How a perfectly white, dull face is shown that faces the room as the unit's front does."""
_PATCHES = 12


@dataclass(frozen=True, slots=True)
class Light:
    """Lamps, and the exposure that shows what they light as it should be."""

    lamps: tuple[Lamp, ...]
    exposure: float


def light_in(room: Box, shown: Box, side: int, reflected: float) -> Light:
    """The light of a room, its window at a ``side`` (-1: left), for a picture of a box in it.

    ``reflected`` is the share of light that the room's faces throw back on average.
    """
    far = shown.low[1] - _BEFORE
    near = max(far - _WIDE, room.low[1] + _OFF)
    head = min(room.low[2] + _HEAD, room.high[2] - _OFF)
    sill, high = room.low[2] + _SILL, head - room.low[2] - _SILL
    x = room.low[0] + _OFF if side < 0 else room.high[0] - _OFF
    up, back, on = (0.0, 0.0, high), (0.0, near - far, 0.0), (0.0, far - near, 0.0)
    window = (
        Lamp((x, far, sill), (up, back), _times(_WINDOW, _WINDOW_RADIANCE))
        if side < 0
        else Lamp((x, near, sill), (up, on), _times(_WINDOW, _WINDOW_RADIANCE))
    )
    wide, tall = room.size[0] - 2 * _OFF, room.size[2] - 2 * _OFF
    fill = Lamp(
        (room.low[0] + _OFF, room.low[1] + _OFF, room.low[2] + _OFF),
        ((0.0, 0.0, tall), (wide, 0.0, 0.0)),
        _times(_FILL, _FILL_RADIANCE),
    )
    lamps = (window, fill)
    middle = shown.centre
    direct = sum(irradiance(lamp, (middle[0], shown.low[1], middle[2])) for lamp in lamps)
    thrown = sum(math.pi * _luminance(lamp.radiance) * _area(lamp) for lamp in lamps)
    a, b, c = room.size
    faces = 2 * (a * b + b * c + c * a)
    # As in an integrating sphere: what is thrown back again and again, evenly.
    indirect = thrown * reflected / (faces * (1 - reflected))
    return Light(lamps, _WHITE * math.pi / (direct + indirect))


def irradiance(lamp: Lamp, at: Vector) -> float:
    """What falls from a lamp on a face at a point that looks straight out of the unit's front
    (towards -y), nothing in between; in the measure of radiance times steradians."""
    shares = (np.arange(_PATCHES) + 0.5) / _PATCHES
    one, other = (np.array(edge) for edge in lamp.edges)
    out = np.cross(one, other)
    patch = float(np.linalg.norm(out)) / _PATCHES**2
    out = out / np.linalg.norm(out)
    u, v = np.meshgrid(shares, shares)
    spots = np.array(lamp.corner) + u[..., None] * one + v[..., None] * other
    way = spots - np.array(at)
    far = np.linalg.norm(way, axis=-1)
    leaving = np.clip(-(way @ out) / far, 0.0, None)
    arriving = np.clip(-way[..., 1] / far, 0.0, None)
    return _luminance(lamp.radiance) * float((leaving * arriving / far**2).sum()) * patch


def _luminance(colour: Colour) -> float:
    """The luminance of linear sRGB (IEC 61966-2-1)."""
    return 0.2126 * colour[0] + 0.7152 * colour[1] + 0.0722 * colour[2]


def _area(lamp: Lamp) -> float:
    return float(np.linalg.norm(np.cross(np.array(lamp.edges[0]), np.array(lamp.edges[1]))))


def _times(colour: Colour, by: float) -> Colour:
    return (colour[0] * by, colour[1] * by, colour[2] * by)
