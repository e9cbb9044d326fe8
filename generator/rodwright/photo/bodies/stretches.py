"""Stretches of an edge of which some are flush with another part; mm."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from rodwright.geometry.vectors import Vector
from rodwright.photo.bodies.outlines import Array

Stretch = tuple[Vector, Vector]
"""A stretch of an edge, from one point to another."""
_BESIDE = 0.02
"""How far beside an edge (mm) a stretch of it may lie."""


def stretches(
    start: Array, along: Array, length: float, flush: Array, least: float
) -> Iterator[tuple[float, float, bool]]:
    """The stretches of an edge, one after the other, from where to where (mm from its start), and
    whether they are flush: those of ``flush`` (n, 2, 3) that lie on it.  None is shorter than
    ``least``, unless the edge is."""
    off = flush - start
    places = off @ along
    beside = np.linalg.norm(off - places[:, :, None] * along, axis=2).max(axis=1, initial=0.0)
    at = 0.0
    for near, far in sorted(np.sort(places[beside < _BESIDE], axis=1).tolist()):
        first = near if near - at >= least else at
        last = far if length - far >= least else length
        if last - first < least or last <= at:
            continue
        if first > at:
            yield at, first, False
        yield first, last, True
        at = last
    if at < length:
        yield at, length, False
