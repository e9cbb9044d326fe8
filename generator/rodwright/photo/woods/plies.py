"""Plywood: faces peeled off a turning log, and plies at the edges."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.scene import Colour
from rodwright.photo.woods.boards import Field
from rodwright.photo.woods.chance import Numbers, Waves, chance, drawn, noise
from rodwright.photo.woods.figures import Figure
from rodwright.photo.woods.rings import rings_of

_TINT = np.array([0.8, 1.0, 1.22], np.float32)
PLY = {"birch": 1.45}
"""Thickness of a ply, mm, by the wood of the faces ..."""
OTHER_PLY = 2.4
"""... and of all others: softwood, poplar and okoume are peeled thicker (common practice, no
source)."""
_FACE_PLY = 0.7
"""An outer ply is thinner by so much: it is sanded (common practice, no source)."""
_CROSS = 0.24
"""How much darker the end grain of a ply is than its long grain; judged by eye."""
_GLUE = (0.12, 0.55)
"""Thickness of a glue line, mm, and how dark it is."""
_STEP = 0.02
"""mm, between figures of the table through a thickness."""


def ply_edges(thickness: float, ply: float) -> tuple[float, ...]:
    """Where plies meet, mm from the reverse, the two faces first and last: an odd number, three at
    the least, the outer two thinner than the rest."""
    inner = 2 * max(0, round(((thickness - 2 * _FACE_PLY * ply) / ply - 1) / 2)) + 1
    each = thickness / (inner + 2 * _FACE_PLY)
    face = _FACE_PLY * each
    return (0.0, *(face + number * each for number in range(inner + 1)), thickness)


def peeled(figure: Figure, colour: Colour, key: tuple[object, ...], *, hardwood: bool) -> Field:
    """The field of a veneer peeled off a turning log, in the grain's frame: broad wavy figure,
    since it follows the rings and leaves them slowly."""
    rng = chance("peeled", *key)
    ring = figure.anatomy.ring
    rings = rings_of(figure, rng)
    start = rng.uniform(90, 200)
    slow = Waves(rng, 2.2 * ring, (1400, 5000), (260, 700), 5)
    fast = Waves(rng, 0.6 * ring, (350, 1400), (70, 240), 5)
    across_shift, along_shift = rng.uniform(0, 1200), rng.uniform(0, 2400)
    own = int(rng.integers(1, 1 << 20))
    depth = 1.0 if hardwood else 0.6
    base = (np.array(colour) * np.exp(-rng.normal(0, 0.6 * figure.boards))).astype(np.float32)

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        del normals
        x = points[:, 0] + np.float32(along_shift)
        y = points[:, 1] + np.float32(across_shift)
        radius = np.float32(start) - y * np.float32(0.0022) + slow(x, y) + fast(x, y)
        radius += np.float32(0.05 * ring) * noise(x / 40, y / 5, np.zeros_like(x))
        # The face lies nearly in the rings: a texel sees little of a radius.
        dark = np.float32(depth) * rings.dark.mean(radius, np.full_like(x, 0.05 + 0.04 * texel))
        fine = min(1.0, 1.4 / texel) * figure.fibre
        dark += np.float32(1.5 * fine) * noise(x / 60 + own, y / 1.2, np.zeros_like(x))
        dark += np.float32(1.1 * figure.fibre) * noise(x / 500, y / 9, np.full_like(x, 7.5))
        dark += _pores(figure, x, y, own, texel)
        found: Numbers = base * np.exp(-dark[:, None] * _TINT)
        return found

    return field


def _pores(figure: Figure, x: Numbers, y: Numbers, own: int, texel: float) -> Numbers:
    """Fine dark streaks all over."""
    pitch = max(0.5, 0.8 * texel)
    column = np.floor(y / pitch).astype(np.int32)
    mine = np.full_like(column, own)
    cell = np.floor(x / 7 + 5 * drawn(column, mine)).astype(np.int32)
    there = drawn(column, cell, mine) < np.float32(0.06)
    much = 1.2 * figure.pores * min(1.0, 0.4 / pitch)
    return np.float32(much) * (there.astype(np.float32) - np.float32(0.06))


def plies(colour: Colour, thickness: float, ply: float, key: tuple[object, ...]) -> Field:
    """The field of the edges, in the grain's frame: long grain and end grain by turns."""
    edges = ply_edges(thickness, ply)
    level = np.arange(0.0, thickness + _STEP, _STEP)
    number = np.clip(np.searchsorted(edges, level, side="right") - 1, 0, len(edges) - 2)
    rng = chance("plies", *key)
    shade = rng.normal(0.0, 0.03, len(edges) - 1)
    glue = np.zeros_like(level)
    for edge in edges[1:-1]:
        glue[np.abs(level - edge) < _GLUE[0] / 2] = _GLUE[1]
    tables = []
    # At an end the face's own plies (the even ones) show end grain, along an edge the others.
    for dull in (0, 1):
        dark = shade[number] + glue + _CROSS * (number % 2 == dull)
        tables.append(np.concatenate([[0.0], np.cumsum(dark) * _STEP]))
    base = np.array(colour, np.float32)

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        end = normals[:, 0] ** 2 / np.maximum(normals[:, 0] ** 2 + normals[:, 1] ** 2, 1e-6)
        upright = np.sqrt(np.maximum(1 - normals[:, 2] ** 2, np.float32(0.01)))
        wide = np.maximum(np.float32(texel) * upright, np.float32(_STEP))
        low = np.clip(points[:, 2] - wide / 2, 0, thickness)
        high = np.clip(points[:, 2] + wide / 2, 0, thickness)
        high = np.maximum(high, low + np.float32(_STEP))
        at_end, at_edge = ((_sum(each, high) - _sum(each, low)) / (high - low) for each in tables)
        dark = (at_end * end + at_edge * (1 - end)) * upright
        run = points[:, 0] + points[:, 1]
        fine = np.float32(0.035 * min(1.0, 1.0 / texel))
        dark = dark + fine * noise(run / 9, run / 2.3, points[:, 2] / 0.7)
        found: Numbers = base * np.exp(-dark[:, None] * _TINT).astype(np.float32)
        return found

    return field


def _sum(table: NDArray[np.float64], at: Numbers) -> Numbers:
    found: Numbers = np.interp(at / _STEP, np.arange(len(table)), table).astype(np.float32)
    return found
