"""Surfaces as plain triangles that are shaded by their points' normals."""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Indices = NDArray[np.int64]


class Mesh(NamedTuple):
    """Points (mm) and normals (n, 3), and triangles (m, 3) that count them from 0, anticlockwise
    seen from outside."""

    points: Array
    normals: Array
    triangles: Indices


def merged(meshes: Iterable[Mesh]) -> Mesh:
    """Meshes of one frame as one.

    Raises:
        ValueError: there is none.
    """
    every = list(meshes)
    starts = np.cumsum([0, *(len(each.points) for each in every[:-1])])
    return Mesh(
        np.concatenate([each.points for each in every]),
        np.concatenate([each.normals for each in every]),
        np.concatenate([each.triangles + start for each, start in zip(every, starts, strict=True)]),
    )
