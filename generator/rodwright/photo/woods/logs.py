"""Where in its log a board was sawn, and what follows of it: radius and way round at each point.

A board's own frame: x along the grain, y across its width from its middle, z through its thickness
from its middle; mm.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np

from rodwright.photo.woods.chance import Numbers, Waves, noise

Sawn = Literal["flat", "quarter"]
_TAPER = (0.004, 0.011)
"""By how much a log grows thinner, mm of radius to 1 mm of length (common practice, no source)."""
_CLEAR = 12.0
"""mm.  The pith lies at least so far outside a board."""


@dataclass(frozen=True, slots=True, eq=False)
class Log:
    """A log seen from a board of it.

    ``pith`` is where the pith lies in y and z where x is 0, ``leaning`` how much it moves in y and
    z with 1 mm of x, ``taper`` what rings lose of their radius with it, negative towards the root.
    """

    pith: tuple[float, float]
    leaning: tuple[float, float]
    taper: float
    lobed: tuple[float, float]
    wander: tuple[Waves, Waves]
    swell: Waves
    ragged: float

    def at(self, points: Numbers) -> Place:
        """Where points of the board lie in the log."""
        x, y, z = points.T
        still = np.zeros_like(x)
        across = y - self.pith[0] - self.leaning[0] * x - self.wander[0](x, still)
        through = z - self.pith[1] - self.leaning[1] * x - self.wander[1](x, still)
        plain = np.maximum(np.hypot(across, through), np.float32(0.5))
        angle = np.arctan2(across, through)
        much, turn = self.lobed
        radius = plain * (1 + much * np.cos(angle - turn))
        radius += self.swell(x, angle * np.hypot(*self.pith)) - self.taper * x
        # The edges of rings are ragged where one looks close.
        radius += np.float32(self.ragged) * noise(x / 45, across / 5, through / 5)
        return Place(
            x, across, through, radius.astype(np.float32), angle, across / plain, through / plain
        )


@dataclass(frozen=True, slots=True, eq=False)
class Place:
    """Points in a log: ``x`` along it, ``across`` and ``through`` from the pith, the ``radius`` of
    the ring they lie in (mm), the ``angle`` round the pith (radians), and the direction of the
    radius in y and z."""

    x: Numbers
    across: Numbers
    through: Numbers
    radius: Numbers
    angle: Numbers
    out_y: Numbers
    out_z: Numbers


def log_of(
    width: float, thickness: float, sawn: Sawn, ring: float, rng: np.random.Generator
) -> Log:
    """A log that a board of this size may have been sawn from."""
    # Degrees between the radius to the board's middle and its thickness.
    if sawn == "quarter":
        lean = rng.uniform(82, 90) * rng.choice((-1, 1))
        distance = width / 2 + rng.uniform(45, 160)
    else:
        lean = rng.triangular(-34, 0, 34)
        distance = rng.uniform(55, 170) + 0.15 * width
        least = thickness / 2 + _CLEAR
        distance = max(distance, least / np.cos(np.radians(lean)))
    side = rng.choice((-1, 1))
    pith = (
        float(distance * np.sin(np.radians(lean))),
        float(-side * distance * np.cos(np.radians(lean))),
    )
    # Few boards are sawn quite along the pith; rings then run out of the face as arches do.
    downhill = rng.choice((-1, 1))
    leaning = (float(rng.normal(0, 0.003)), float(downhill * side * rng.uniform(0.002, 0.014)))
    return Log(
        pith,
        leaning,
        float(rng.uniform(*_TAPER) * downhill),
        (float(rng.uniform(0.0, 0.06)), float(rng.uniform(-np.pi, np.pi))),
        (Waves(rng, 1.5, (900, 3000), (1, 2), 2), Waves(rng, 1.0, (900, 3000), (1, 2), 2)),
        Waves(rng, 0.22 * ring, (250, 900), (70, 260), 5),
        0.06 * ring,
    )
