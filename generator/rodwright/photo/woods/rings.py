"""Growth rings along a radius: how dark, and how full of pores."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.woods.chance import Numbers
from rodwright.photo.woods.figures import Figure

_STEP = 0.05
"""mm, between figures of a table."""
_REACH = 700.0
"""mm: the radius that a table goes to."""
_SPREAD = 0.3
"""Of ring widths, as a standard deviation of their logarithm, ..."""
_ALIKE = 0.55
"""... and how like each ring is to the one before."""
_JUVENILE = (12, 1.35)
"""The first rings are wider."""


@dataclass(frozen=True, slots=True, eq=False)
class Table:
    """A property along a radius, kept as its sum from the pith, so that the mean over any stretch
    is a difference."""

    sums: NDArray[np.float64]

    @staticmethod
    def of(values: NDArray[np.float64]) -> Table:
        """A table of values a step apart."""
        return Table(np.concatenate([[0.0], np.cumsum(values) * _STEP]))

    def mean(self, radius: Numbers, stretch: Numbers) -> Numbers:
        """The mean over ``stretch`` mm about each radius, mm."""
        wide = np.maximum(stretch, _STEP)
        half = wide / 2
        found: Numbers = ((self._sum(radius + half) - self._sum(radius - half)) / wide).astype(
            np.float32
        )
        return found

    def _sum(self, radius: Numbers) -> NDArray[np.float64]:
        at = np.clip(radius / _STEP, 0, len(self.sums) - 1.001).astype(np.float64)
        low = at.astype(np.int32)
        before = self.sums.take(low)
        return before + (self.sums.take(low + 1) - before) * (at - low)


@dataclass(frozen=True, slots=True, eq=False)
class Rings:
    """The rings of one tree: ``edges`` are where each ends, mm from the pith; ``dark`` is how much
    darker than the mean, ``porous`` what part of the wood is pores."""

    edges: NDArray[np.float64]
    dark: Table
    porous: Table


def rings_of(figure: Figure, rng: np.random.Generator) -> Rings:
    """The rings of a tree of this wood."""
    anatomy = figure.anatomy
    edges = _edges(anatomy.ring * rng.uniform(0.75, 1.3), rng)
    radius = np.arange(0.0, _REACH, _STEP)
    number = np.searchsorted(edges, radius, side="right")
    start = np.concatenate([[0.0], edges])[number]
    width = np.diff(np.concatenate([[0.0], edges, [edges[-1] + anatomy.ring]]))[number]
    into = radius - start
    strength = np.clip(rng.normal(1.0, 0.22, len(edges) + 1), 0.4, 1.7)[number]
    porous = np.zeros_like(radius)
    if anatomy.pores == "none":
        dark = _softwood(into / width, anatomy.latewood)
    elif anatomy.pores == "ring":
        early = np.minimum(anatomy.earlywood, 0.65 * width)
        porous = 0.55 * _falling(into, early, 0.25) + 0.03
        dark = 0.9 * _falling(into, early, 0.3) + 0.3 * (into / width)
    else:
        left = width - into
        dark = np.exp(-((left / 0.3) ** 2)) + 0.45 * (into / width) ** 2
        porous = 0.16 - 0.09 * into / width
    dark = figure.rings * strength * dark + figure.bands * _bands(radius, rng)
    # What is finer than an ordinary ring is told by its mean everywhere: only contrast is wanted.
    return Rings(edges, Table.of(dark - dark.mean()), Table.of(porous))


def _edges(width: float, rng: np.random.Generator) -> NDArray[np.float64]:
    widths: list[float] = []
    last, reach = rng.normal(), 0.0
    while reach < _REACH:
        last = _ALIKE * last + np.sqrt(1 - _ALIKE**2) * rng.normal()
        young = _JUVENILE[1] if len(widths) < _JUVENILE[0] else 1.0
        widths.append(width * young * np.exp(_SPREAD * last))
        reach += widths[-1]
    return np.cumsum(widths)


def _falling(
    into: NDArray[np.float64], at: NDArray[np.float64], soft: float
) -> NDArray[np.float64]:
    """1 before a place, 0 after, over so many mm."""
    found: NDArray[np.float64] = 1 / (1 + np.exp((into - at) / (soft / 3)))
    return found


def _softwood(part: NDArray[np.float64], latewood: float) -> NDArray[np.float64]:
    """Light earlywood that darkens, faster towards the end, and stops at once."""
    rise = np.clip((part - (1 - 2.2 * latewood)) / (1.7 * latewood), 0, 1)
    found: NDArray[np.float64] = rise**2 * (3 - 2 * rise) + 0.12 * part
    return found


def _bands(radius: NDArray[np.float64], rng: np.random.Generator) -> NDArray[np.float64]:
    """Slow bands, some narrow and some broad, of root mean square 1."""
    total = np.zeros_like(radius)
    for length in (7.0, 13.0, 22.0, 45.0, 90.0):
        knots = np.arange(0.0, _REACH + 2 * length, length * 0.5)
        total += np.interp(radius, knots, rng.normal(size=len(knots)))
    found: NDArray[np.float64] = total / total.std()
    return found
