"""The figure of solid wood, at any point of a board."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from rodwright.photo.scene import Colour
from rodwright.photo.woods.chance import Numbers, Waves, chance, drawn, noise
from rodwright.photo.woods.figures import Figure
from rodwright.photo.woods.knots import Knots, knots_of
from rodwright.photo.woods.logs import Log, Place, Sawn, log_of
from rodwright.photo.woods.rings import Rings, rings_of

_TINT = np.array([0.8, 1.0, 1.22], np.float32)
"""What is darker in wood is redder: what a depth is multiplied by in red, green and blue."""
_END = 0.3
"""How much darker end grain is: it drinks light (the end grain of 60 woods has a lower L*:
Journal of Wood Science 66, 2020, https://doi.org/10.1186/s10086-020-01883-2; how much is judged by
eye)."""
_FIBRE = (90.0, 1.1)
"""Length and width of the streaks that fibres make, mm."""
_PORE_LENGTH = 26.0
"""Pores are cut to streaks so many times as long as they are wide."""


@dataclass(frozen=True, slots=True, eq=False)
class Timber:
    """One board: its wood, its place in a log, its tree's rings."""

    figure: Figure
    log: Log
    rings: Rings
    knots: Knots
    drift: Waves
    curl: Waves
    base: Numbers
    own: int

    def depths(self, points: Numbers, normals: Numbers, texel: float) -> Numbers:
        """How much darker each point is than the wood's mean: natural logarithm of reflectance.

        ``points`` and ``normals`` are in the board's own frame.
        """
        place = self.log.at(points)
        knotted, bulge = self.knots.at(place)
        outward = normals[:, 1] * place.out_y + normals[:, 2] * place.out_z
        fine = texel * np.sqrt(np.maximum(1 - outward * outward, np.float32(0.01)))
        radius = place.radius + bulge
        dark = self.rings.dark.mean(radius, fine)
        dark += self._pores(place, self.rings.porous.mean(radius, fine), texel)
        dark += self._fibres(place, texel)
        if self.figure.rays:
            dark += self._rays(place, normals, texel)
        end = normals[:, 0] * normals[:, 0]
        dark += _END * end
        dark += self.drift(place.x, place.across)
        dark += knotted
        return dark

    def reflectance(self, points: Numbers, normals: Numbers, texel: float) -> Numbers:
        """The reflectance at points of the board's own frame, (n, 3)."""
        depth = self.depths(points, normals, texel)
        found: Numbers = self.base * np.exp(-depth[:, None] * _TINT)
        return found

    def _fibres(self, place: Place, texel: float) -> Numbers:
        long, wide = _FIBRE
        much = self.figure.fibre * min(1.0, 1.3 * wide / texel)
        fine = noise(place.x / long + self.own, place.across / wide, place.through / wide)
        broad = noise(
            place.x / (4 * long), place.across / (4.7 * wide) + 31, place.through / (4.7 * wide)
        )
        found: Numbers = np.float32(1.5 * much) * fine + np.float32(1.2 * self.figure.fibre) * broad
        return found

    def _pores(self, place: Place, porous: Numbers, texel: float) -> Numbers:
        """Streaks of open pores, their own mean told apart from where each one lies."""
        pore, deep = self.figure.anatomy.pore, self.figure.pores
        if not deep:
            return np.zeros_like(porous)
        usual = np.float32(deep * self.rings.porous.sums[-1] / 700.0)
        pitch = max(1.3 * pore, 0.8 * texel)
        shown = np.float32(min(1.0, 1.3 * pore / pitch))
        column = np.floor(place.across / pitch).astype(np.int32)
        layer = np.floor(place.through / pitch).astype(np.int32)
        own = np.full_like(column, self.own)
        start = drawn(column, layer, own)
        cell = np.floor(place.x / (_PORE_LENGTH * pore) + 7 * start).astype(np.int32)
        open_ = (drawn(column, layer, cell, own) < porous).astype(np.float32)
        found: Numbers = np.float32(deep) * (porous + shown * (open_ - porous)) - usual
        return found

    def _rays(self, place: Place, normals: Numbers, texel: float) -> Numbers:
        """Ribbons that stand in the radius: lines on a flat-sawn face, flecks on a quarter-sawn."""
        height, wide, reach = self.figure.anatomy.ray
        round_ = np.float32(np.hypot(*self.log.pith))
        apart = 4.5 * wide
        along = place.angle * round_ + self.curl(place.x, place.radius)
        tangential = np.abs(normals[:, 1] * place.out_z - normals[:, 2] * place.out_y)
        level = along / apart
        lane = np.floor(level).astype(np.int32)
        own = np.full_like(lane, self.own + 1)
        first = drawn(lane, own)
        row = place.x / height + 9 * first
        rank = place.radius / reach + 5 * drawn(lane, np.floor(row).astype(np.int32), own)
        cell = (np.floor(row).astype(np.int32), np.floor(rank).astype(np.int32))
        there = drawn(lane, *cell, own) < np.float32(0.7)
        # An ellipse in the ribbon's own plane, soft by what a texel sees of its width.
        u = 2 * (row - cell[0]) - 1
        v = 2 * (rank - cell[1]) - 1
        inside = np.clip(2.5 * (1 - u * u - v * v), 0, 1)
        seen = texel * np.sqrt(np.maximum(1 - tangential * tangential, np.float32(0.0004)))
        soft = np.maximum(seen, np.float32(0.15 * wide))
        middle = np.abs(level - lane - np.float32(0.5)) * apart
        cover = np.clip((wide / 2 + soft / 2 - middle) / soft, 0, 1)
        cover *= np.minimum(1, wide / soft)
        # On the radius's own face a ray shines; cut across it is dark.
        shine = np.float32(1.0) - np.float32(2.1) * tangential**4
        found: Numbers = np.float32(self.figure.rays) * there * inside * cover * shine
        return found


def timber(
    figure: Figure, colour: Colour, size: tuple[float, float], sawn: Sawn, *words: object
) -> Timber:
    """A board of so much width and thickness (mm), its chance decided by the words."""
    rng = chance("timber", *words)
    log = log_of(*size, sawn, figure.anatomy.ring, rng)
    rings = rings_of(figure, rng)
    shift = np.exp(-rng.normal(0, figure.boards) * _TINT)
    hue = np.exp(rng.normal(0, 0.008) * np.array([1.0, 0.0, -1.6]))
    base = (np.array(colour) * shift * hue).astype(np.float32)
    height, wide, reach = figure.anatomy.ray if any(figure.anatomy.ray) else (20.0, 0.0, 20.0)
    return Timber(
        figure,
        log,
        rings,
        knots_of(figure, log, size, rng),
        Waves(rng, 0.012, (500, 3000), (60, 400)),
        Waves(rng, 1.1 * wide, (0.9 * height, 4 * height), (2 * reach, 7 * reach), 6),
        base,
        int(rng.integers(1, 1 << 20)),
    )
