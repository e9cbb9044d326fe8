"""Knots: branches that grew out from the pith."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from rodwright.photo.woods.chance import Numbers
from rodwright.photo.woods.figures import Figure
from rodwright.photo.woods.logs import Log, Place

_REACH = 3000.0
"""mm along a log in which branches are thought of, to both sides of a board's start."""
_WIDE = (3.0, 8.0)
"""Radius of a branch where it is seen, mm: small knots, as joiners let pass."""


@dataclass(frozen=True, slots=True)
class _Branch:
    """A branch: where it leaves the pith (mm), which way round, how thick (mm) and how it rises
    (mm to 1 mm of radius)."""

    at: float
    angle: float
    thick: float
    rise: float


@dataclass(frozen=True, slots=True)
class Knots:
    """The branches that a board has met."""

    branches: tuple[_Branch, ...]

    def at(self, place: Place) -> tuple[Numbers, Numbers]:
        """How much darker each point is for knots, and by how much they swell the rings, mm."""
        dark, bulge = np.zeros_like(place.x), np.zeros_like(place.x)
        for branch in self.branches:
            near = np.flatnonzero(
                np.abs(place.x - branch.at - branch.rise * place.radius) < 9 * branch.thick
            )
            if not len(near):
                continue
            radius = place.radius[near]
            turn = (place.angle[near] - branch.angle + np.pi) % (2 * np.pi) - np.pi
            beside = turn * radius
            along = place.x[near] - branch.at - branch.rise * radius
            away = np.hypot(along, beside) / branch.thick
            within = np.clip((1.0 - away) * 4 + 0.5, 0, 1)
            rim = np.exp(-(((away - 1.0) / 0.13) ** 2))
            core = 0.42 + 0.12 * np.cos(away * 13)
            dark[near] += within * core + 0.45 * rim + 0.1 * np.exp(-((away / 2.0) ** 2))
            bulge[near] += branch.thick * 1.1 * np.exp(-((away / 2.1) ** 2)) * (1 - within)
        return dark.astype(np.float32), bulge.astype(np.float32)


def knots_of(
    figure: Figure, log: Log, size: tuple[float, float], rng: np.random.Generator
) -> Knots:
    """The few knots of a board of so much width and thickness, mm."""
    count = rng.poisson(figure.knots * 2 * _REACH / 1000)
    made = []
    width, thickness = size
    for _ in range(count):
        y = rng.uniform(-width / 2, width / 2) - log.pith[0]
        z = rng.uniform(-thickness / 2, thickness / 2) - log.pith[1]
        made.append(
            _Branch(
                float(rng.uniform(-_REACH, _REACH)),
                float(np.arctan2(y, z)),
                float(rng.uniform(*_WIDE)),
                float(rng.uniform(0.1, 0.5)),
            )
        )
    return Knots(tuple(made))
