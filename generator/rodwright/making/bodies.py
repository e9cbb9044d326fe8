"""Parts as convex bodies, for sweeping; mm, unit frame.

What bores, easings and other round workings take is left on: no part stands in it, so a sweep past
it is only ever judged too strictly.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.halfspaces import Plane
from rodwright.mass.polyhedra import Polyhedron, box_faces, clipped
from rodwright.unit import Part, ShapeKey

Array = NDArray[np.float64]

_SAME = 6
"""Decimals to which two directions, or two places in mm, are the same."""


@dataclass(frozen=True, slots=True, eq=False)
class Body:
    """A part as convex pieces that touch each other.

    ``corners`` are those of each piece (pieces, corners, 3), the last one repeated where a piece
    has fewer than others; ``normals`` (n, 3) and ``edges`` (m, 3) are the unit vectors square to
    all their faces and along all their edges, one of each two that are opposite.  ``bounds`` are
    the low and the high corner of the box round all of them.  ``square`` says that all faces lie
    square to the unit's axes, ``is_box`` that the body fills its bounds.
    """

    corners: Array
    normals: Array
    edges: Array
    bounds: Array
    square: bool
    is_box: bool


def body_of(part: Part) -> Body:
    """A part where it stands.

    Raises:
        ValueError: its workings leave nothing.
    """
    local = _pieces(part.shape)
    turn = np.array(part.placement.axes)
    corners = local.corners @ turn + np.array(part.placement.origin)
    return _placed(corners, local.normals @ turn, local.edges @ turn)


def turned(body: Body, axis: tuple[float, float], angle: float) -> Body:
    """A body turned about the upright line through ``axis`` (x and y, mm) by ``angle`` degrees,
    anticlockwise seen from above."""
    cos, sin = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    turn = np.array([[cos, sin, 0.0], [-sin, cos, 0.0], [0.0, 0.0, 1.0]])
    at = np.array([*axis, 0.0])
    return _placed((body.corners - at) @ turn + at, body.normals @ turn, body.edges @ turn)


def unlike(directions: Array) -> Array:
    """Directions (n, 3) at unit length without those that are zero, or along another."""
    lengths = np.linalg.norm(directions, axis=1)
    kept = directions[lengths > 1e-6] / lengths[lengths > 1e-6, None]
    found: dict[tuple[float, ...], Array] = {}
    for each in kept:
        lead = next(value for value in each if abs(value) > 1e-6)
        one = each if lead > 0 else -each
        found.setdefault(tuple((np.round(one, _SAME) + 0.0).tolist()), one)
    return np.array(list(found.values())).reshape(-1, 3)


def _placed(corners: Array, normals: Array, edges: Array) -> Body:
    normals = unlike(normals)
    bounds = np.array([corners.min(axis=(0, 1)), corners.max(axis=(0, 1))])
    square = bool((np.abs(normals).max(axis=1) > 1 - 1e-9).all())
    return Body(corners, normals, unlike(edges), bounds, square, square and len(corners) == 1)


@lru_cache(maxsize=4096)
def _pieces(shape: ShapeKey) -> Body:
    """A shape's pieces in the part frame."""
    size, workings = shape
    planes = [plane for each in workings for plane in each.planes(size)]
    corners = [_unlike_points(np.concatenate(body)) for body in convex_pieces(shape)]
    most = max(map(len, corners))
    padded = np.array([np.concatenate([c, np.repeat(c[-1:], most - len(c), 0)]) for c in corners])
    normals = unlike(np.concatenate([np.eye(3), np.array([n for _, n in planes]).reshape(-1, 3)]))
    edges = unlike(np.concatenate([np.cross(one, normals) for one in normals]))
    bounds = np.array([padded.min(axis=(0, 1)), padded.max(axis=(0, 1))])
    return Body(padded, normals, edges, bounds, False, False)


def convex_pieces(shape: ShapeKey) -> list[Polyhedron]:
    """What boxes and planes leave of a blank, as convex pieces that touch; part frame.

    Raises:
        ValueError: the workings leave nothing.
    """
    size, workings = shape
    planes = [plane for each in workings for plane in each.planes(size)]
    boxes = _left(Box.of_size(size), [each.bounds(size) for each in workings if each.fills_bounds])
    bodies = [body for box in boxes if (body := _cut(box, planes))]
    if not bodies:
        raise ValueError("the workings of a part leave nothing of it")
    return bodies


def _unlike_points(points: Array) -> Array:
    """Points (n, 3) without those that stand where another does."""
    _, first = np.unique(np.round(points, _SAME), axis=0, return_index=True)
    return points[np.sort(first)]


def _cut(box: Box, planes: Sequence[Plane]) -> Polyhedron:
    """What planes leave of a box; no faces where that is nothing."""
    body = box_faces(np.array(box.low), np.array(box.high))
    for at, normal in planes:
        body = clipped(body, np.array(normal), float(np.dot(at, normal)))
    return body


def _left(blank: Box, taken: Sequence[Box]) -> Iterator[Box]:
    """What boxes leave of a blank, as boxes that don't overlap, as long as they can be."""
    edges = []
    for axis in range(3):
        places = [blank.low[axis], blank.high[axis]]
        for box in taken:
            places += [box.low[axis], box.high[axis]]
        inside = sorted({min(max(at, places[0]), places[1]) for at in places})
        edges.append([at for i, at in enumerate(inside) if i == 0 or at - inside[i - 1] > TOUCH])
    filled = np.ones([len(each) - 1 for each in edges], dtype=bool)
    for box in taken:
        spans = [
            slice(
                sum(at < low - TOUCH for at in each[:-1]),
                sum(at < high - TOUCH for at in each[:-1]),
            )
            for each, low, high in zip(edges, box.low, box.high, strict=True)
        ]
        filled[tuple(spans)] = False
    while filled.any():
        start = np.argwhere(filled)[0]
        stop = start + 1
        for axis in range(3):
            while stop[axis] < filled.shape[axis]:
                beside = [slice(a, b) for a, b in zip(start, stop, strict=True)]
                beside[axis] = slice(stop[axis], stop[axis] + 1)
                if not filled[tuple(beside)].all():
                    break
                stop[axis] += 1
        filled[tuple(slice(a, b) for a, b in zip(start, stop, strict=True))] = False
        low, high = ([edges[i][at[i]] for i in range(3)] for at in (start, stop))
        yield Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))
