"""Convex polyhedra: cut by a plane, and measured."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

Polyhedron = list[Array]
"""The faces of a convex body: corners (n, 3) in turn, anticlockwise seen from outside."""

_ON = 1e-9
"""mm.  Corners as near to a plane as this lie on it."""


def box_faces(low: Array, high: Array) -> Polyhedron:
    """The six faces of a box between two opposite corners."""
    faces = []
    for axis in range(3):
        first, second = (axis + 1) % 3, (axis + 2) % 3
        for end in (low, high):
            face = np.empty((4, 3))
            face[:, axis] = end[axis]
            face[:, first] = [low[first], high[first], high[first], low[first]]
            face[:, second] = [low[second], low[second], high[second], high[second]]
            faces.append(face if end is high else face[::-1])
    return faces


def clipped(body: Polyhedron, normal: Array, reach: float) -> Polyhedron:
    """What is left of a body when all at ``normal . point > reach`` is cut away.

    ``normal`` is of length 1.  No faces at all where nothing is left.
    """
    heights = [face @ normal - reach for face in body]
    if not body or max(each.max() for each in heights) <= _ON:
        return body
    if min(each.min() for each in heights) >= -_ON:
        return []
    kept, cap = [], []
    for face, height in zip(body, heights, strict=True):
        corners = []
        for i, (at, here) in enumerate(zip(face, height, strict=True)):
            before, there = face[i - 1], height[i - 1]
            if min(here, there) < -_ON and max(here, there) > _ON:
                corners.append(before + (at - before) * (there / (there - here)))
                cap.append(corners[-1])
            if here <= _ON:
                corners.append(at)
                if here >= -_ON:
                    cap.append(at)
        if len(corners) > 2:
            kept.append(np.array(corners))
    return [*kept, _in_turn(np.array(cap), normal)]


def _in_turn(points: Array, normal: Array) -> Array:
    """Corners of a convex polygon, in any order, put anticlockwise seen from its normal."""
    from_middle = points - points.mean(axis=0)
    right = from_middle[np.argmax((from_middle**2).sum(axis=1))]
    up = np.cross(normal, right)
    return points[np.argsort(np.arctan2(from_middle @ up, from_middle @ right))]


def moments_of(body: Polyhedron) -> Array:
    """Volume and first moments: the sum of the tetrahedra from one corner over all faces."""
    if not body:
        return np.zeros(4)
    apex = body[0][0]
    corners = (
        np.concatenate(
            [np.stack(np.broadcast_arrays(face[:1], face[1:-1], face[2:]), axis=1) for face in body]
        )
        - apex
    )
    volumes = np.einsum("ij,ij->i", corners[:, 0], np.cross(corners[:, 1], corners[:, 2])) / 6
    volume = volumes.sum()
    firsts = volumes @ corners.sum(axis=1) / 4 + volume * apex
    return np.array([volume, *firsts])
