"""Holes bored square into flat surfaces, clear of all else, put into facets without booleans.

A row of holes for shelf pins is most of what is carved of a side: each mouth is taken out of the
facets of its surface, and the hole's wall and floor are added.  All lengths in mm, part frame.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import manifold3d as m3
import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.mass.rounds import Round

_CLEAR = 0.01
"""mm of wood that must be left round a hole, or it isn't clear of what is beside it."""
_LEAST = 1e-6
"""Area (mm2) below which a facet is no facet."""
_GOLDEN = (math.sqrt(5) - 1) / 2
"""Multiples of it lie nowhere near each other between whole numbers."""

Array = NDArray[np.float64]
Indices = NDArray[np.int64]


@dataclass(frozen=True, eq=False, slots=True)
class Facets:
    """``points`` (n, 3), ``triangles`` (t, 3), and ``round_of`` (t,): the number of the round that
    left each, -1 where it is flat."""

    points: Array
    triangles: Indices
    round_of: Indices


@dataclass(frozen=True, eq=False, slots=True)
class Bore:
    """A hole's ``ring`` of points (n, 3), in the order of its mouth's outline clockwise seen from
    outside the surface that it was bored into, from there to ``floor`` along ``axis``; and the
    number of its round."""

    ring: Array
    axis: int
    at_high: bool
    floor: float
    through: bool
    number: int


def clear(pieces: Sequence[Box | Round], size: Vector) -> NDArray[np.bool_]:
    """Which of all that is taken from a blank are holes that :func:`bored` can make: square to a
    surface, with wood between them and all edges and all else."""
    boxes = [each if isinstance(each, Box) else each.box for each in pieces]
    low, high = (np.array([getattr(box, end) for box in boxes]) for end in ("low", "high"))
    beside = (low[:, None] - _CLEAR < high) & (low < high[:, None] + _CLEAR)
    alone = beside.all(axis=2).sum(axis=1) == 1
    within = (low > _CLEAR) & (high < np.array(size) - _CLEAR)
    discs = [isinstance(each, Round) and each.section == "disc" for each in pieces]
    square = np.array([_square(each) for each in pieces])
    # Along its own axis it reaches a surface.
    return np.asarray(discs & square & alone & (within.sum(axis=1) == 2))


def _square(piece: Box | Round) -> bool:
    return isinstance(piece, Round) and not piece.slope and int(np.count_nonzero(piece.frame)) == 3


def bore(piece: Round, size: Vector, facets: int, number: int) -> Bore:
    """A hole of so many facets all round; ``number`` is its round's."""
    axis = int(np.argmax(np.abs(piece.frame[2])))
    from_low, to_high = piece.start <= TOUCH, piece.stop >= size[axis] - TOUCH
    at_high = not from_low
    across = _across(axis, at_high)
    # Each is turned otherwise: points of many holes on one line would leave facets without area.
    turns = (np.arange(facets) + number * _GOLDEN % 1.0) * (2 * math.pi / facets)
    ring = np.empty((facets, 3))
    ring[:, across[0]] = piece.centre[across[0]] + piece.radius * np.cos(turns)
    ring[:, across[1]] = piece.centre[across[1]] - piece.radius * np.sin(turns)
    ring[:, axis] = size[axis] if at_high else 0.0
    through = from_low and to_high
    floor = size[axis] if through else piece.start if at_high else piece.stop
    return Bore(ring, axis, at_high, floor, through, number)


def _across(axis: int, at_high: bool) -> tuple[int, int]:
    """The axes of a surface: seen from outside the second is a quarter turn anticlockwise."""
    one, other = (axis + 1) % 3, (axis + 2) % 3
    return (one, other) if at_high else (other, one)


def bored(body: Facets, bores: Sequence[Bore], size: Vector) -> Facets | None:
    """A closed body with holes in it, each clear of all that was taken from it; None where the
    outline of a surface isn't plain enough for that."""
    points, triangles, numbers = [body.points], [], []
    mouths: dict[tuple[int, bool], list[tuple[Array, Indices]]] = {}
    count = len(body.points)
    for each in bores:
        sides = len(each.ring)
        deep = each.ring.copy()
        deep[:, each.axis] = each.floor
        points += [each.ring, deep]
        mouth, end = count + np.arange(sides), count + sides + np.arange(sides)
        count += 2 * sides
        mouths.setdefault((each.axis, each.at_high), []).append((each.ring, mouth))
        made = [_wall(mouth, end)]
        if each.through:
            other = mouths.setdefault((each.axis, not each.at_high), [])
            other.append((deep[::-1], end[::-1]))
        else:
            made.append(np.column_stack([np.full(sides - 2, end[0]), end[2:], end[1:-1]]))
        triangles += made
        numbers.append(np.full(sum(map(len, made)), each.number))
    kept = np.ones(len(body.triangles), dtype=bool)
    for (axis, at_high), rings in mouths.items():
        plane = size[axis] if at_high else 0.0
        flat: NDArray[np.bool_] = np.abs(body.points[:, axis] - plane) < TOUCH
        on = np.asarray(flat[body.triangles].all(axis=1))
        again = _opened(body, on, _across(axis, at_high), rings)
        if again is None:
            return None
        kept &= ~on
        triangles.append(again)
        numbers.append(np.full(len(again), -1))
    whole = Facets(
        np.concatenate(points),
        np.concatenate([body.triangles[kept], *triangles]),
        np.concatenate([body.round_of[kept], *numbers]),
    )
    a, b, c = np.moveaxis(whole.points[whole.triangles], 1, 0)
    plain = np.linalg.norm(np.cross(b - a, c - a), axis=1).min() > 2 * _LEAST
    return whole if plain else None


def _wall(mouth: Indices, end: Indices) -> Indices:
    onwards, end_onwards = np.append(mouth[1:], mouth[0]), np.append(end[1:], end[0])
    return np.concatenate(
        [np.column_stack([onwards, mouth, end]), np.column_stack([onwards, end, end_onwards])]
    )


def _opened(
    body: Facets, on: NDArray[np.bool_], across: tuple[int, int], rings: list[tuple[Array, Indices]]
) -> Indices | None:
    """A flat surface's facets with mouths in it."""
    loops = _outlines(body.triangles[on])
    if loops is None:
        return None
    outlines = [body.points[loop] for loop in loops] + [ring for ring, _ in rings]
    names = np.concatenate([*loops, *(name for _, name in rings)])
    found = m3.triangulate([each[:, across] for each in outlines])
    return np.asarray(names[np.asarray(found, dtype=np.int64)])


def _outlines(triangles: Indices) -> list[Indices] | None:
    """The points of each outline of some facets, in its order; None where two touch in one."""
    starts, stops = triangles.ravel().tolist(), np.roll(triangles, -1, axis=1).ravel().tolist()
    sides = set(zip(starts, stops, strict=True))
    border = [side for side in sides if side[::-1] not in sides]
    onwards = dict(border)
    if len(onwards) != len(border):
        return None
    loops = []
    while onwards:
        at, beyond = onwards.popitem()
        loop = [at]
        while beyond != loop[0]:
            loop.append(beyond)
            beyond = onwards.pop(beyond)
        loops.append(np.array(loop))
    return loops
