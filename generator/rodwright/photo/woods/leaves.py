"""Veneered faces: leaves of one flitch side by side."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from rodwright.photo.scene import Colour
from rodwright.photo.woods.boards import Field
from rodwright.photo.woods.chance import Numbers, chance
from rodwright.photo.woods.figures import Figure
from rodwright.photo.woods.logs import Sawn
from rodwright.photo.woods.timber import timber

LEAF = (150.0, 280.0)
"""Width of leaves, mm (common practice, no source)."""
THICKNESS = 0.6
"""Of a leaf, mm: each shows the wood so much deeper in the flitch than the one before (common
practice, no source)."""
_FLITCH = 60.0
"""mm: how thick the flitch is that leaves are sliced from."""


@dataclass(frozen=True, slots=True)
class Laying:
    """How leaves are laid: their ``width``, how far into a leaf the sheet's edge lies and how far
    ``along`` the flitch its end (mm), and whether they are book matched."""

    width: float
    start: float
    along: float
    book: bool


def laying_of(key: tuple[object, ...]) -> Laying:
    """How the leaves of one face are laid."""
    rng = chance("leaves", *key)
    wide = float(rng.uniform(*LEAF))
    return Laying(
        wide, float(rng.uniform(0, wide)), float(rng.uniform(-900, 900)), bool(rng.integers(2))
    )


def leaves(figure: Figure, colour: Colour, sawn: Sawn, key: tuple[object, ...]) -> Field:
    """The field of a face of leaves, in the grain's frame: slip matched, or book matched, where
    every other leaf is turned over like a page."""
    laid = laying_of(key)
    wide = laid.width
    flitch = timber(figure, colour, (wide, _FLITCH), sawn, *key, "flitch")

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        y = points[:, 1] + np.float32(laid.start)
        number = np.floor(y / wide)
        across = y - (number + np.float32(0.5)) * np.float32(wide)
        if laid.book:
            across = np.where(number % 2 == 1, -across, across)
        deep = (number * np.float32(THICKNESS)) % np.float32(0.6 * _FLITCH)
        placed = np.column_stack([points[:, 0] + np.float32(laid.along), across, deep])
        # A leaf shows its face alone, whatever it is laid on.
        flat = np.zeros_like(normals)
        flat[:, 2] = 1.0
        return flitch.reflectance(placed.astype(np.float32), flat, texel)

    return field
