"""Shapes of parts as a browser draws them: packed points, normals, triangles and edges.

Flat faces are shaded flat and rounds round, whatever their facets.  A line is drawn wherever faces
meet at an angle, and along the middle of a rounded arris, which would have none.
"""

from __future__ import annotations

import base64
import hashlib
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from rodwright.page.carving import Array, Carved, carved
from rodwright.page.document import Shape
from rodwright.unit import ShapeKey

_SMOOTH = np.cos(np.radians(10.0))
"""A round and what it meets at less of an angle run on into each other."""
_FLAT = np.cos(np.radians(0.1))
"""Flat faces that meet at less of an angle are one."""
_ITS_END = 0.5
"""A facet that a round left is its flat end if its normal has less than this of the radius."""
_ON_LINE = 1e-6
"""mm"""
_STEPS = 10_000
"""To how many parts of a unit vector normals are told apart; a million points may be named so."""


@lru_cache(maxsize=1024)
def shape_of(key: ShapeKey) -> tuple[str, Shape]:
    """The name (a digest of it) and the drawing of a part's shape, in its own frame, mm.

    Raises:
        ValueError: the workings leave no single piece.
    """
    body = carved(key)
    normals = _normals(body)
    # Corners that have point and normal in common are one.
    at, steps = body.triangles.ravel(), np.rint(normals.reshape(-1, 3) * _STEPS).astype(np.int64)
    # One number for each: far sooner sorted than rows.
    named = at
    for axis in range(3):
        named = named * (2 * _STEPS + 1) + steps[:, axis] + _STEPS
    _, first, index = np.unique(named, return_index=True, return_inverse=True)
    return packed(
        body.points[at[first]],
        steps[first] / _STEPS,
        index.reshape(-1, 3),
        np.concatenate([_creases(body, normals), _arrises(body)]),
    )


def _normals(body: Carved) -> Array:
    """The normal at each corner of each triangle, (t, 3, 3)."""
    corners = body.points[body.triangles]
    areas = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    flat = areas / np.maximum(np.linalg.norm(areas, axis=1, keepdims=True), 1e-300)
    normals = np.repeat(flat[:, None], 3, axis=1)
    if not body.rounds:
        return normals
    on = np.flatnonzero(body.round_of >= 0)
    of = body.round_of[on]
    centre = np.array([each.centre for each in body.rounds])[of][:, None]
    ball = np.array([each.section == "half ball" for each in body.rounds])[of]
    axis = np.array([each.frame[2] for each in body.rounds])[of] * ~ball[:, None]
    # Wood lies round what was bored, and within what was rounded.
    way = np.array([1.0 if each.section == "corner" else -1.0 for each in body.rounds])[of]
    radial = corners[on] - centre
    radial -= np.einsum("tci,ti->tc", radial, axis)[..., None] * axis[:, None]
    radial *= way[:, None, None] / np.maximum(np.linalg.norm(radial, axis=2, keepdims=True), 1e-300)
    rounded = (radial.mean(axis=1) * flat[on]).sum(axis=1) > _ITS_END
    normals[on[rounded]] = radial[rounded]
    return normals


def _creases(body: Carved, normals: Array) -> Array:
    """The ends (k, 2, 3) of all sides along which two faces meet at an angle."""
    starts, stops = body.triangles, np.roll(body.triangles, -1, axis=1)
    turned = (starts > stops).ravel()
    low, high = np.minimum(starts, stops).ravel(), np.maximum(starts, stops).ravel()
    there = np.stack([normals, np.roll(normals, -1, axis=1)], axis=2).reshape(-1, 2, 3)
    there[turned] = there[turned][:, ::-1]
    # Each side of a closed body belongs to two triangles.
    order = np.argsort(low * len(body.points) + high)
    one, other = order[0::2], order[1::2]
    alike = (there[one] * there[other]).sum(axis=2).min(axis=1)
    rounded = np.repeat(body.round_of >= 0, 3)
    limit = np.where(rounded[one] | rounded[other], _SMOOTH, _FLAT)
    drawn = one[alike < limit]
    return np.asarray(body.points[np.column_stack([low[drawn], high[drawn]])])


def _arrises(body: Carved) -> Array:
    """The ends (k, 2, 3) of the lines along the middle of every rounded arris."""
    lines = [np.empty((0, 2, 3))]
    for number, each in enumerate(body.rounds):
        if each.section != "corner":
            continue
        triangles = body.triangles[body.round_of == number]
        over, down, _ = np.moveaxis((body.points - each.centre) @ each.frame.T, -1, 0)
        middle = (np.abs(over - down) < _ON_LINE) & (over < 0)
        sides = np.stack([triangles, np.roll(triangles, -1, axis=1)], axis=2).reshape(-1, 2)
        # Drawn by the triangle that runs up it: its neighbour runs down.
        sides = sides[middle[sides].all(axis=1) & (sides[:, 0] < sides[:, 1])]
        lines.append(body.points[sides])
    return np.concatenate(lines)


def packed(
    points: NDArray[np.floating],
    normals: NDArray[np.floating],
    triangles: NDArray[np.integer],
    edges: NDArray[np.floating],
) -> tuple[str, Shape]:
    """Arrays as a :class:`Shape`, with its name."""
    arrays = [
        points.astype("<f4").tobytes(),
        normals.astype("<f4").tobytes(),
        triangles.astype("<u4").tobytes(),
        edges.astype("<f4").tobytes(),
    ]
    name = hashlib.sha256(b"".join(arrays)).hexdigest()[:16]
    return name, Shape(*(base64.b64encode(each).decode("ascii") for each in arrays))
