"""Pots, bowls, jars and plates: what is turned.  Lengths in mm.

Sizes and densities are from memory; colours are a choice: quiet ones, that leave the picture to
the unit.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.photo.contents.candidates import (
    Candidate,
    Candidates,
    Kind,
    any_of,
    mass_of,
    surfaces,
)
from rodwright.photo.scene import Body, Surface
from rodwright.photo.turned import turned_body

GLAZE = surfaces("#e9e5da #dcd8cc #a9b8b0 #7f8f93 #cdbb9b #5f6a6e", 0.2, 0.5)
CLAY = surfaces("#b9835f #c7a586 #a9a298 #8f6a52 #d1c3ad", 0.85, 0.15)
_PROFILES = {
    "bowl": ((0.0, 0.0), (0.42, 0.0), (0.44, 0.07), (0.72, 0.32), (0.92, 0.7), (1.0, 1.0),
             (0.95, 1.0), (0.86, 0.7), (0.6, 0.3), (0.0, 0.14)),
    "vase": ((0.0, 0.0), (0.58, 0.0), (0.8, 0.15), (0.96, 0.34), (1.0, 0.5), (0.9, 0.68),
             (0.6, 0.84), (0.47, 0.91), (0.55, 1.0), (0.49, 1.0), (0.4, 0.9), (0.4, 0.82)),
    "jar": ((0.0, 0.0), (0.93, 0.0), (1.0, 0.04), (1.0, 0.74), (0.93, 0.8), (0.93, 0.82),
            (0.99, 0.83), (0.99, 0.87), (0.6, 0.91), (0.15, 0.93), (0.14, 0.96), (0.2, 1.0),
            (0.0, 1.0)),
    "beaker": ((0.0, 0.0), (0.82, 0.0), (0.9, 0.05), (1.0, 1.0), (0.93, 1.0), (0.84, 0.1),
               (0.0, 0.08)),
    "plates": ((0.0, 0.0), (0.6, 0.0), (1.0, 0.14), (0.97, 0.17), (0.8, 0.19), (1.0, 0.31),
               (0.97, 0.34), (0.8, 0.36), (1.0, 0.48), (0.97, 0.51), (0.8, 0.53), (1.0, 0.65),
               (0.97, 0.68), (0.8, 0.7), (1.0, 0.96), (0.97, 1.0), (0.6, 0.8), (0.0, 0.8)),
}  # fmt: skip
"""Radius and height of what is turned, as shares of its own (a choice)."""
_POTS = (
    ("bowl", (130.0, 210.0), (0.42, 0.55), 330.0),
    ("vase", (100.0, 170.0), (1.2, 1.7), 300.0),
    ("jar", (95.0, 140.0), (1.05, 1.5), 520.0),
    ("beaker", (75.0, 95.0), (1.05, 1.25), 420.0),
    ("plates", (200.0, 260.0), (0.3, 0.42), 900.0),
)
"""What pots there are: width, height as a share of it, and kg/m3 of the round bar about it."""


def pots(glaze: tuple[Surface, ...], names: tuple[str, ...]) -> Kind:
    """Pots: a few of one kind beside each other."""
    kinds = [each for each in _POTS if each[0] in names]

    def candidates(random: np.random.Generator, deep: float, high: float) -> Candidates:
        while True:
            name, widths, shares, density = kinds[int(random.integers(len(kinds)))]
            surface = any_of(random, glaze)
            wide = min(float(random.uniform(*widths)), deep)
            tall = min(wide * float(random.uniform(*shares)), high - 15.0)
            for _ in range(int(random.integers(1, 4))):
                size = (wide, wide, tall)
                mass = mass_of(size, density) * np.pi / 4
                yield Candidate(size, mass, float(random.uniform(10, 28)), _turned(name, surface))

    return candidates


def _turned(name: str, surface: Surface) -> Callable[[Box], tuple[Body, ...]]:
    def bodies(box: Box) -> tuple[Body, ...]:
        radius, tall = box.size[0] / 2, box.size[2]
        profile = [(out * radius, up * tall) for out, up in _PROFILES[name]]
        x, y, _ = box.centre
        return (turned_body(name, profile, (x, y, box.low[2]), surface),)

    return bodies
