"""Shapes of simple things: prisms, lofts, books, folded cloth.  mm, unit frame."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.photo.planes import Polygon, faces
from rodwright.photo.scene import Body, Surface
from rodwright.pictures.triangles import Mesh, merged

_ROUND = 24
PAPER = Surface((0.68, 0.63, 0.53), 0.95, 0.1)
"""The edges of a book's pages (a choice)."""


def prism(plan: Sequence[tuple[float, float]], foot: float, top: float) -> Iterator[Polygon]:
    """An upright prism over a plan (x, y), anticlockwise seen from above."""
    for number, (x, y) in enumerate(plan):
        a, b = plan[number - 1]
        yield ((a, b, foot), (x, y, foot), (x, y, top), (a, b, top))
    yield [(x, y, top) for x, y in plan]
    yield [(x, y, foot) for x, y in reversed(plan)]


def chamfered(box: Box, by: float) -> Iterator[Polygon]:
    """A box whose upright edges, and those round its top, are taken off a little."""
    (a, b, c), (x, y, z) = box.low, box.high
    plan = [
        (a + by, b),
        (x - by, b),
        (x, b + by),
        (x, y - by),
        (x - by, y),
        (a + by, y),
        (a, y - by),
        (a, b + by),
    ]
    inner = [
        (u + math.copysign(by, (a + x) / 2 - u), w + math.copysign(by, (b + y) / 2 - w))
        for u, w in plan
    ]
    *sides, _, under = prism(plan, c, z - by)
    yield from sides
    yield under
    for number, (u, w) in enumerate(plan):
        (p, q), (r, s), (t, v) = plan[number - 1], inner[number], inner[number - 1]
        yield ((p, q, z - by), (u, w, z - by), (r, s, z), (t, v, z))
    yield [(u, w, z) for u, w in inner]


def loft(
    name: str, rings: Sequence[tuple[Vector, float, float]], surface: Surface, square: float = 2.0
) -> Body:
    """A smooth body through level rings, from its foot up: the middle of each, and how far it
    reaches from there along x and y.  ``square`` is the exponent of the superellipse that they are
    (2: ellipses)."""
    turns = np.arange(_ROUND) * 2 * np.pi / _ROUND
    cosine, sine = np.cos(turns), np.sin(turns)
    across = np.sign(cosine) * np.abs(cosine) ** (2 / square)
    along = np.sign(sine) * np.abs(sine) ** (2 / square)
    points = np.concatenate(
        [
            np.array(middle) + np.column_stack([wide * across, deep * along, 0 * turns])
            for middle, wide, deep in rings
        ]
        + [np.array([rings[0][0], rings[-1][0]])]
    )
    now = np.arange(_ROUND)
    after = (now + 1) % _ROUND
    foot, head = len(points) - 2, len(points) - 1
    triangles = [np.column_stack([after, now, np.full(_ROUND, foot)])]
    for ring in range(len(rings) - 1):
        a, b = ring * _ROUND + now, ring * _ROUND + after
        triangles.append(np.column_stack([a, b, b + _ROUND]))
        triangles.append(np.column_stack([a, b + _ROUND, a + _ROUND]))
    last = (len(rings) - 1) * _ROUND
    triangles.append(np.column_stack([last + now, last + after, np.full(_ROUND, head)]))
    every = np.concatenate(triangles)
    return Body(name, points, _smooth(points, every), every, surface)


def _smooth(points: NDArray[np.float64], triangles: NDArray[np.int64]) -> NDArray[np.float64]:
    """Normals at points: of the triangles round each, by their areas."""
    a, b, c = (points[triangles[:, i]] for i in range(3))
    facing = np.cross(b - a, c - a)
    normals = np.zeros_like(points)
    for i in range(3):
        np.add.at(normals, triangles[:, i], facing)
    sizes = np.linalg.norm(normals, axis=1, keepdims=True)
    return np.where(sizes > 0, normals / np.maximum(sizes, 1e-12), (0.0, 0.0, 1.0))


def book(box: Box, cover: Surface, band: Surface | None, lean: float = 0.0) -> tuple[Body, ...]:
    """A book that stands with its spine to the front (-y) and fills a box; ``lean`` is by how many
    degrees its head leans to the left: the box is then the one round it."""
    (a, b, c), _ = box.low, box.high
    wide, deep, high = _upright(box, lean)
    board, inset = min(2.5, wide / 5), min(3.0, wide / 6)
    cased = _case(wide, deep, high, board, inset)
    pages = Box((board, 4.0, 1.0), (wide - board, deep - 4.0, high - 4.0))
    parts: list[tuple[Surface, list[Polygon]]] = [(cover, list(cased))]
    parts.append((PAPER, list(prism(_plan(pages), 1.0, pages.high[2]))))
    if band is not None:
        foot = high * 0.72
        strip = ((inset, -0.2, foot), (wide - inset, -0.2, foot))
        parts.append((band, [(*strip, *((x, y, z + high * 0.09) for x, y, z in reversed(strip)))]))
    made: list[Body] = []
    for surface, polygons in parts:
        body = faces(
            "book",
            ([_leant(point, lean, (a, b, c), high) for point in polygon] for polygon in polygons),
            surface,
        )
        if body is not None:
            made.append(body)
    return tuple(made)


def _upright(box: Box, lean: float) -> Vector:
    """Thickness, depth and height of the book that leans in a box, by the box's size."""
    wide, deep, high = box.size
    if not lean:
        return (wide, deep, high)
    sine, cosine = math.sin(math.radians(lean)), math.cos(math.radians(lean))
    scale = cosine**2 - sine**2
    return ((wide * cosine - high * sine) / scale, deep, (high * cosine - wide * sine) / scale)


def leant_size(size: Vector, lean: float) -> Vector:
    """The size of the box round a book of a size that leans."""
    sine, cosine = math.sin(math.radians(lean)), math.cos(math.radians(lean))
    wide, deep, high = size
    return (wide * cosine + high * sine, deep, high * cosine + wide * sine)


def _leant(point: Vector, lean: float, at: Vector, high: float) -> Vector:
    """A point of a book in its own frame as it leans to the left in its box, which begins ``at``:
    it stands on its left lower corner, or flat where it doesn't lean."""
    x, y, z = point
    sine, cosine = math.sin(math.radians(lean)), math.cos(math.radians(lean))
    return (at[0] + high * sine + x * cosine - z * sine, at[1] + y, at[2] + x * sine + z * cosine)


def _case(wide: float, deep: float, high: float, board: float, inset: float) -> Iterator[Polygon]:
    """Spine and two boards."""
    spine = [
        (0.0, inset),
        (inset, 0.0),
        (wide - inset, 0.0),
        (wide, inset),
        (wide, 4.0),
        (0.0, 4.0),
    ]
    yield from prism(spine, 0.0, high)
    for left in (0.0, wide - board):
        yield from prism(
            [(left, 4.0), (left + board, 4.0), (left + board, deep), (left, deep)], 0.0, high
        )


def _plan(box: Box) -> list[tuple[float, float]]:
    (a, b, _), (x, y, _) = box.low, box.high
    return [(a, b), (x, b), (x, y), (a, y)]


def folded(box: Box, surface: Surface) -> Body:
    """A folded cloth: a cushion with soft edges."""
    x, y, _ = box.centre
    wide, deep, high = box.size[0] / 2, box.size[1] / 2, box.size[2]
    foot = box.low[2]
    swell = min(high * 0.35, 14.0)
    steps = [
        (0.0, swell),
        (0.12, swell * 0.35),
        (0.35, 0.0),
        (0.65, 0.0),
        (0.88, swell * 0.35),
        (1.0, swell),
    ]
    rings = [((x, y, foot + up * high), wide - less, deep - less) for up, less in steps]
    return loft("cloth", rings, surface, square=9.0)


def joined(bodies: Iterable[Body]) -> tuple[Body, ...]:
    """The same bodies, those of one surface made into one."""
    groups: dict[Surface, list[Body]] = {}
    for body in bodies:
        groups.setdefault(body.surface, []).append(body)
    made: list[Body] = []
    for surface, group in groups.items():
        meshes = (Mesh(each.points, each.normals, each.triangles) for each in group)
        made.append(Body(f"contents {len(made)}", *merged(meshes), surface))
    return tuple(made)
