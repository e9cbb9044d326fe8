"""Folded linen, boots, and what hangs on a rail.  Lengths in mm.

Sizes and densities are from memory; colours are a choice: quiet ones, that leave the picture to
the unit.
"""

from __future__ import annotations

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.photo.contents.candidates import (
    Candidate,
    Candidates,
    any_of,
    mass_of,
    surfaces,
)
from rodwright.photo.contents.shapes import folded, loft
from rodwright.photo.scene import Body, Surface
from rodwright.photo.turned import turned_body

_LINEN = surfaces("#e8e4da #d8d0c0 #b9c0bf #cfc4b2 #98a39f #ddd9d2 #a79f90", 0.95, 0.1)
_LEATHER = surfaces("#3a322c #4c5245 #2c2e31 #5a4636", 0.45, 0.4)
_WOOL = surfaces("#3b4148 #6d6a60 #7a5a45 #4d5a4f #8d8a83 #2e2f33", 0.95, 0.1)
_STEEL = Surface((0.6, 0.6, 0.58), 0.3, 0.5, metal=True)
_LINEN_DENSITY = 136.0
"""kg/m3: folded clothes, 8.5 lb/ft3 (ASTM F2057-23, section 9.2, from memory)."""


def linen(random: np.random.Generator, deep: float, high: float) -> Candidates:
    """Piles of folded cloth."""
    while True:
        wide, thick = float(random.uniform(250, 340)), float(random.uniform(32, 58))
        count = min(int(random.integers(2, 7)), int((high * 0.86) // thick))
        colours = [any_of(random, _LINEN)]
        for _ in range(max(count, 1) - 1):
            same = random.random() < 0.6
            colours.append(colours[-1] if same else any_of(random, _LINEN))
        size = (wide, min(float(random.uniform(290, 350)), deep), thick * len(colours))

        def pile(
            box: Box, colours: list[Surface] = colours, thick: float = thick
        ) -> tuple[Body, ...]:
            return tuple(
                folded(
                    box.spanning(2, box.low[2] + thick * i, box.low[2] + thick * (i + 1)), surface
                )
                for i, surface in enumerate(colours)
            )

        yield Candidate(size, mass_of(size, _LINEN_DENSITY), float(random.uniform(18, 45)), pile)


def boots(random: np.random.Generator, deep: float, high: float) -> Candidates:
    """Pairs of boots, their toes to the front; shoes where there is no height for them."""
    while True:
        long = min(float(random.uniform(255, 295)), deep)
        tall = min(float(random.choice([115.0, 200.0, 290.0])), high - 15.0)
        surface = any_of(random, _LEATHER)
        size = (210.0, long, tall)

        def pair(box: Box, surface: Surface = surface) -> tuple[Body, ...]:
            return tuple(_boot(box, at, surface) for at in (0.24, 0.76))

        yield Candidate(size, 1.6 if tall > 250 else 1.1, 24.0, pair)


def _boot(box: Box, at: float, surface: Surface) -> Body:
    x = box.low[0] + at * box.size[0]
    front, long, tall = box.low[1], box.size[1], box.size[2]
    foot, half = box.low[2], 46.0
    ankle = min(105.0, tall * 0.8)
    rings = [
        (0.0, 0.50, 0.97, 0.92),
        (14.0, 0.50, 1.0, 1.0),
        (16.0, 0.5, 0.95, 0.93),
        (ankle * 0.45, 0.51, 0.95, 0.92),
        (ankle * 0.7, 0.6, 0.76, 0.82),
        (ankle, 0.72, 0.5, 0.72),
        (tall * 0.97, 0.71, 0.54, 0.84),
        (tall, 0.71, 0.52, 0.8),
    ]
    made: list[tuple[Vector, float, float]] = []
    for up, middle, share, wide in sorted(rings):
        made.append(((x, front + middle * long, foot + up), half * wide, long / 2 * share))
    return loft("boot", made, surface, square=2.6)


def garment(box: Box, random: np.random.Generator) -> tuple[Body, ...]:
    """Something that hangs on a hanger in a box, its shoulders along y."""
    surface = any_of(random, _WOOL)
    x, y, _ = box.centre
    wide, deep, (foot, head) = box.size[0] / 2, box.size[1] / 2, (box.low[2], box.high[2])
    sag = (head - foot) * 0.5
    levels = (
        (foot, 0.9, 0.86),
        (foot + sag * 0.3, 1.0, 0.9),
        (head - sag * 0.55, 0.9, 0.93),
        (head - 85.0, 0.8, 1.0),
        (head - 60.0, 0.65, 0.93),
        (head - 25.0, 0.6, 0.35),
        (head, 0.5, 0.2),
    )
    rings = [((x, y, z), wide * share, deep * other) for z, share, other in levels]
    return (loft("garment", rings, surface, square=2.4),)


def rail(left: float, right: float, y: float, z: float, radius: float) -> Body:
    """A rail along x that clothes hang on."""
    profile = ((radius, 0.0), (radius, right - left))
    return turned_body("rail", profile, (left, y, z), _STEEL, axis=0)
