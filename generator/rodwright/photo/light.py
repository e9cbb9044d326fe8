"""A room's light: a window at the side, and what comes from the rest of the room behind the camera.

Lengths in mm, unit frame; radiances in units of their own: pictures are exposed by what is metered.
"""

from __future__ import annotations

from rodwright.geometry.boxes import Box
from rodwright.photo.scene import Colour, Lamp

_WINDOW: Colour = (0.93, 1.0, 1.10)
"""Daylight from the sky, a little cool (a choice)."""
_FILL: Colour = (1.04, 1.0, 0.95)
"""What a room throws back, a little warm (a choice)."""
_WINDOW_RADIANCE, _FILL_RADIANCE = 10.0, 1.15
"""How strongly each shines (a choice: the side away from the window keeps its drawing)."""
_SILL, _HEAD, _WIDE = 800.0, 2250.0, 1900.0
"""Heights of a window above the floor, and its width, mm (common practice, no source)."""
_BEFORE = 700.0
"""How far before the unit it begins, mm (a choice): its light falls on the front aslant."""
_OFF = 20.0


def light_in(room: Box, shown: Box, side: int) -> tuple[Lamp, ...]:
    """The light of a room, its window at a ``side`` (-1: left), for a picture of a box in it."""
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
    return (window, fill)


def _times(colour: Colour, by: float) -> Colour:
    return (colour[0] * by, colour[1] * by, colour[2] * by)
