"""Bodies of revolution: knobs and bars, pots, jars, pipes.  All lengths in mm."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import Literal

import numpy as np

from rodwright.geometry.vectors import Vector
from rodwright.photo.scene import Body, Surface
from rodwright.pictures.triangles import Array, Mesh, merged

Profile = Sequence[tuple[float, float]]
"""Radius and height from the foot up, outside first."""

ROUND = 40
"""Sides of what is round in a photograph."""
_SHARP = 0.7
"""Cosine of the bend in a profile below which it is an edge and not a curve."""


def turned(profile: Profile, sides: int) -> Mesh:
    """A profile turned about the z axis, its foot in the origin, with so many ``sides``.

    Where the profile bends sharply there is an edge; elsewhere it is a curve.
    """
    line = np.array(profile, dtype=float)
    along = np.diff(line, axis=0)
    out = np.column_stack([along[:, 1], -along[:, 0]])
    out /= np.maximum(np.linalg.norm(out, axis=1, keepdims=True), 1e-12)
    bands = []
    for number, ends in enumerate(pairwise(line)):
        own = out[number]
        normals = []
        for beside in (number - 1, number + 1):
            smooth = 0 <= beside < len(out) and float(own @ out[beside]) > _SHARP
            normal = own + out[beside] if smooth else own
            normals.append(normal / np.linalg.norm(normal))
        bands.append(_band(ends, normals, sides))
    return merged(bands)


def turned_along(profile: Profile, start: Vector, end: Vector, sides: int) -> Mesh:
    """A profile turned about the line from ``start``, where its foot is, towards ``end``."""
    up = np.subtract(end, start) / math.dist(start, end)
    first = np.cross(np.eye(3)[np.argmin(np.abs(up))], up)
    first /= np.linalg.norm(first)
    frame = np.array([first, np.cross(up, first), up])
    points, normals, triangles = turned(profile, sides)
    return Mesh(points @ frame + np.array(start), normals @ frame, triangles)


def turned_body(
    name: str,
    profile: Profile,
    foot: Vector,
    surface: Surface,
    *,
    axis: Literal[0, 1, 2] = 2,
) -> Body:
    """A profile turned about an axis through ``foot``; unit frame."""
    points, normals, triangles = turned(profile, ROUND)
    order = np.roll([0, 1, 2], axis + 1)
    return Body(name, points[:, order] + np.array(foot), normals[:, order], triangles, surface)


def _band(ends: tuple[Array, Array], normals: Sequence[Array], sides: int) -> Mesh:
    """A stretch of a profile between two ends, each with its normal, turned."""
    turns = np.arange(sides) * (2 * math.pi / sides)
    cosine, sine = np.cos(turns), np.sin(turns)

    def ring(radius: float, up: float) -> Array:
        return np.column_stack([radius * cosine, radius * sine, np.full(sides, up)])

    low = np.arange(sides)
    onwards = np.roll(low, -1)
    high, high_onwards = low + sides, onwards + sides
    triangles = np.zeros((0, 3), dtype=np.int64)
    # On the axis a ring is a point: a side has but one triangle there.
    if ends[0][0] > 0:
        triangles = np.column_stack([low, onwards, high_onwards])
    if ends[1][0] > 0:
        triangles = np.concatenate([triangles, np.column_stack([low, high_onwards, high])])
    return Mesh(
        np.concatenate([ring(*each) for each in ends]),
        np.concatenate([ring(*each) for each in normals]),
        triangles,
    )
