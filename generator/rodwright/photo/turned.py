"""Bodies of revolution: pots, jars, pipes.  mm, unit frame."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.vectors import Vector
from rodwright.photo.scene import Body, Surface

_ROUND = 40
"""Sides of what is round."""
_SHARP = 0.7
"""Cosine of the bend in a profile below which it is an edge and not a curve."""


def turned_body(
    name: str,
    profile: Sequence[tuple[float, float]],
    foot: Vector,
    surface: Surface,
    *,
    axis: Literal[0, 1, 2] = 2,
) -> Body:
    """A ``profile`` of (radius, height) from the foot up, outside first, turned about an axis
    through ``foot``.

    Where the profile bends sharply there is an edge; elsewhere it is a curve.
    """
    line = np.array(profile, dtype=float)
    along = np.diff(line, axis=0)
    out = np.column_stack([along[:, 1], -along[:, 0]])
    out /= np.maximum(np.linalg.norm(out, axis=1, keepdims=True), 1e-12)
    turns = np.linspace(0, 2 * np.pi, _ROUND + 1)
    cosine, sine = np.cos(turns), np.sin(turns)
    points: list[NDArray[np.float64]] = []
    normals: list[NDArray[np.float64]] = []
    triangles: list[NDArray[np.int64]] = []
    for number in range(len(along)):
        ends = []
        for end, beside in ((number, number - 1), (number + 1, number + 1)):
            smooth = 0 <= beside < len(out) and float(out[number] @ out[beside]) > _SHARP
            normal = out[number] + out[beside] if smooth else out[number]
            ends.append((line[end], normal / np.linalg.norm(normal)))
        first = len(points) * (_ROUND + 1)
        for (radius, height), (level, up) in ends:
            points.append(np.column_stack([radius * cosine, radius * sine, height + 0 * turns]))
            normals.append(np.column_stack([level * cosine, level * sine, up + 0 * turns]))
        low = first + np.arange(_ROUND)
        high = low + _ROUND + 1
        triangles += [
            np.column_stack([low, low + 1, high + 1]),
            np.column_stack([low, high + 1, high]),
        ]
    order = np.roll([0, 1, 2], axis + 1)
    every, faced = np.concatenate(points)[:, order], np.concatenate(normals)[:, order]
    return Body(name, every + np.array(foot), faced, np.concatenate(triangles), surface)
