"""Where the camera stands: at eye height, level, the unit filling the frame."""

from __future__ import annotations

from rodwright.geometry.boxes import Box
from rodwright.photo.scene import Camera

EYE_HEIGHT = 1500.0
"""Of the camera above the floor, mm; common practice, no source."""


def framed(box: Box, width: int, height: int) -> Camera:
    """A camera before a box (unit frame, mm) that just shows all of it."""
    middle = (box.low[0] + box.high[0]) / 2
    away = 2600.0
    eye = (middle, box.low[1] - away, EYE_HEIGHT)
    wide, high = box.size[0] * 1.35, box.size[2] * 1.2
    focal = min(away / wide, away / high * height / width)
    lift = ((box.low[2] + box.high[2]) / 2 - EYE_HEIGHT) / away * focal * width / height
    return Camera(eye, 0.0, width, height, focal, (0.0, lift))
