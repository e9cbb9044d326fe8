"""A television, a turntable.  Lengths in mm.

Sizes and densities are from memory; colours are a choice: quiet ones, that leave the picture to
the unit.
"""

from __future__ import annotations

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.photo.contents.candidates import (
    Candidate,
    Candidates,
)
from rodwright.photo.contents.shapes import chamfered
from rodwright.photo.planes import faces, sides_of
from rodwright.photo.scene import Body, Surface
from rodwright.photo.turned import turned_body
from rodwright.pictures.colours import linear

_BLACK = Surface(linear("#1b1c1e"), 0.3, 0.5)
_STEEL = Surface((0.6, 0.6, 0.58), 0.3, 0.5, metal=True)


def television(_: np.random.Generator, deep: float, high: float) -> Candidates:
    """A television on its foot."""
    tall = min(620.0, high - 30.0)
    size = (tall * 1.72, min(220.0, deep), tall)

    def bodies(box: Box) -> tuple[Body, ...]:
        (x, y, _), (wide, _, tall), foot = box.centre, box.size, box.low[2]

        def part(half: float, rear: float, low: float, high: float) -> Box:
            return Box((x - half, y - 14, foot + low), (x + half, y + rear, foot + high))

        parts = (
            part(wide / 2, 14, tall * 0.08, tall),
            part(wide * 0.03, 8, 0.0, tall * 0.1),
            part(wide * 0.16, 14, 0.0, tall * 0.015).grown((0.0, box.size[1] / 2 - 14, 0.0)),
        )
        return tuple(
            body for part in parts if (body := faces("television", sides_of(part), _BLACK))
        )

    while True:
        yield Candidate(size, 18.0, 60.0, bodies)


def turntable(_: np.random.Generator, deep: float, high: float) -> Candidates:
    """A record player."""
    size = (440.0, min(355.0, deep), min(110.0, high - 10.0))

    def bodies(box: Box) -> tuple[Body, ...]:
        x, y, _ = box.centre
        foot, radius = box.low[2], min(box.size[1] * 0.43, 150.0)
        plinth = faces("plinth", chamfered(box.spanning(2, foot + 12, foot + 75), 3.0), _BLACK)
        platter = turned_body(
            "platter",
            ((0.0, 0.0), (radius, 0.0), (radius, 18.0), (0.0, 18.0)),
            (x - 40.0, y, foot + 78.0),
            _STEEL,
        )
        tube = Box((x + 150, y - 100, foot + 100), (x + 160, y + 130, foot + 108))
        arm = faces("arm", sides_of(tube), _STEEL)
        under = box.grown((-40.0, -30.0, 0.0)).spanning(2, foot, foot + 12)
        base = faces("feet", sides_of(under), _BLACK)
        return tuple(body for body in (plinth, platter, arm, base) if body is not None)

    while True:
        yield Candidate(size, 12.0, 80.0, bodies)
