"""Panels of fibres, chips and strands."""

from __future__ import annotations

import numpy as np

from rodwright.photo.scene import Colour
from rodwright.photo.woods.boards import Field
from rodwright.photo.woods.chance import Numbers, chance, drawn, noise

_TINT = np.array([0.85, 1.0, 1.15], np.float32)
_STRAND = (85.0, 17.0)
"""Length and width of the strands of OSB, mm (from memory)."""
_LAYERS = 6


def fibres(colour: Colour, key: tuple[object, ...], speckle: float) -> Field:
    """The field of a board of fibres: all but even, a little darker at its cut edges."""
    own = float(chance("fibres", *key).uniform(0, 100))
    base = np.array(colour, np.float32)

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        x, y, z = points.T
        much = np.float32(speckle * min(1.0, 1.5 / texel))
        dark = much * noise(x / 1.9 + own, y / 1.3, z / 1.3)
        dark += np.float32(0.4 * speckle) * noise(x / 23 + own, y / 17, z / 17)
        dark += np.float32(0.07) * (1 - normals[:, 2] ** 2)
        found: Numbers = base * np.exp(-dark[:, None] * _TINT)
        return found

    return field


def chips(colour: Colour, thickness: float, key: tuple[object, ...]) -> Field:
    """The field of chipboard: fine dust at the faces, coarse chips that lie flat in the core."""
    own = int(chance("chips", *key).integers(1, 1 << 20))
    base = np.array(colour, np.float32)

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        x, y, z = points.T
        inside = np.minimum(z, thickness - z) / thickness
        core = np.clip((inside - 0.16) / 0.1, 0, 1) * (1 - normals[:, 2] ** 2)
        fine = noise(x / 2.6 + own % 97, y / 2.2, z / 0.5) * min(1.0, 2.0 / texel)
        coarse = _chip(x, y, z, own) * min(1.0, 1.5 / texel)
        dark = 0.07 * fine * (1 - core) + 0.24 * coarse * core + 0.06 * core
        found: Numbers = base * np.exp(-dark.astype(np.float32)[:, None] * _TINT)
        return found

    return field


def _chip(x: Numbers, y: Numbers, z: Numbers, own: int) -> Numbers:
    """A shade, of mean 0, of the chip that each point lies in; some are gaps."""
    layer = np.floor(z / 0.8 + 0.35 * noise(x / 6, y / 6, z / 3)).astype(np.int32)
    mine = np.full_like(layer, own)
    start = 9 * drawn(layer, mine)
    along = np.floor((x + y) / 5.5 + start).astype(np.int32)
    aside = np.floor((x - y) / 4.0 + start).astype(np.int32)
    shade = drawn(layer, along, aside, mine)
    found: Numbers = 1.6 * (shade - 0.5) + np.where(shade > 0.94, 0.8, 0.0) - np.float32(0.048)
    return found


def strands(colour: Colour, key: tuple[object, ...]) -> Field:
    """The field of OSB: strands laid over each other, most of them along the board."""
    rng = chance("strands", *key)
    own = int(rng.integers(1, 1 << 20))
    turns = np.radians(rng.normal(0, 26, _LAYERS))
    shifts = rng.uniform(0, 500, (_LAYERS, 2))
    base = np.array(colour, np.float32)

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        x, y, z = points.T
        flat = normals[:, 2] ** 2
        best, dark = np.full_like(x, -1.0), np.zeros_like(x)
        # On the edges the strands lie in thin layers.
        level = np.where(flat > 0.5, np.where(z > 1.0, 9999, -9999), np.floor(z / 0.9))
        for number, (turn, shift) in enumerate(zip(turns, shifts, strict=True)):
            cos, sin = np.float32(np.cos(turn)), np.float32(np.sin(turn))
            u = (x * cos + y * sin + np.float32(shift[0])) / np.float32(_STRAND[0])
            v = (y * cos - x * sin + np.float32(shift[1])) / np.float32(_STRAND[1])
            row = np.floor(v).astype(np.int32)
            mine = np.full_like(row, own + number)
            deep = level.astype(np.int32)
            cell = np.floor(u + 5 * drawn(row, deep, mine)).astype(np.int32)
            rank = drawn(row, cell, deep, mine)
            shade = drawn(cell, row, mine, deep) - np.float32(0.5)
            edge = np.minimum(v - row, 1 - v + row) * np.float32(_STRAND[1])
            rim = np.clip(1.2 - edge / np.float32(max(0.8, texel)), 0, 1)
            grain = noise(u * 1.4 + number, v * 11 + number * 17, deep.astype(np.float32))
            value = 0.32 * shade + 0.14 * rim + 0.03 * grain - np.float32(0.02)
            above = rank > best
            dark = np.where(above, value, dark)
            best = np.maximum(best, rank)
        dark = dark + np.float32(0.1) * (1 - flat)
        found: Numbers = base * np.exp(-dark.astype(np.float32)[:, None] * _TINT)
        return found

    return field


def even(colour: Colour) -> Field:
    """The field of what has one colour."""
    base = np.array(colour, np.float32)

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        del normals, texel
        return np.tile(base, (len(points), 1))

    return field
