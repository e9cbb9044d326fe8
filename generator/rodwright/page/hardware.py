"""Bought-in pieces as a browser draws them: the same as in photographs, of far fewer triangles.

All lengths in mm, frame of the part that they are on.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import Vector
from rodwright.page.document import Shape
from rodwright.page.shapes import packed
from rodwright.photo.knobs import knob_profile
from rodwright.unit import Block, Fitting, Rod, Ware
from rodwright.unit import Shape as Form

_ROUND = 20
"""Flats that a round is drawn with."""
_SMOOTH = math.cos(math.radians(40.0))
"""Neighbouring rows of a turned piece that lean less than this to each other are one curve."""

Array = NDArray[np.float64]
_Mesh = tuple[Array, Array, NDArray[np.int64]]
"""Points, normals, triangles."""


def gathered(fittings: Iterable[Fitting]) -> dict[tuple[str, Ware, bool], tuple[Form, ...]]:
    """What is drawn as one: the shapes on one part that are of one ware, those that are seen only
    where doors and drawers stand open apart."""
    found: dict[tuple[str, Ware, bool], tuple[Form, ...]] = {}
    for each in fittings:
        key = (each.ref, each.ware, each.inner)
        found[key] = found.get(key, ()) + each.shapes
    return found


@lru_cache(maxsize=256)
def hardware_shape(forms: tuple[Form, ...]) -> tuple[str, Shape]:
    """The name (a digest of it) and the drawing of bought-in pieces; they have no drawn edges."""
    meshes = [_block(form) if isinstance(form, Block) else _round(form) for form in forms]
    starts = np.cumsum([0, *(len(points) for points, _, _ in meshes)])[:-1]
    return packed(
        np.concatenate([points for points, _, _ in meshes]),
        np.concatenate([normals for _, normals, _ in meshes]),
        np.concatenate(
            [triangles + start for (_, _, triangles), start in zip(meshes, starts, strict=True)]
        ),
        np.zeros((0, 2, 3)),
    )


def _block(block: Block) -> _Mesh:
    low, high = np.array(block.low), np.array(block.high)
    points: list[Array] = []
    normals: list[Array] = []
    triangles: list[int] = []
    for axis in range(3):
        first, second = (axis + 1) % 3, (axis + 2) % 3
        for side, at in ((-1.0, low), (1.0, high)):
            corners = np.repeat(at[None], 4, axis=0)
            corners[:, first] = np.array([low, high, high, low])[:, first]
            corners[:, second] = np.array([low, low, high, high])[:, second]
            normal = np.zeros(3)
            normal[axis] = side
            start = len(points) * 4
            turn = (0, 1, 2, 0, 2, 3) if side > 0 else (0, 2, 1, 0, 3, 2)
            triangles += [start + each for each in turn]
            points.append(corners)
            normals.append(np.repeat(normal[None], 4, axis=0))
    return np.concatenate(points), np.concatenate(normals), np.array(triangles).reshape(-1, 3)


def _round(form: Form) -> _Mesh:
    """A bar or a knob turned about the line from its start to its end."""
    assert not isinstance(form, Block)
    long = math.dist(form.start, form.end)
    if isinstance(form, Rod):
        radius = form.diameter / 2
        profile = [(0.0, 0.0), (radius, 0.0), (radius, long), (0.0, long)]
    else:
        profile = knob_profile(form)
    points, normals, triangles = _turned(profile)
    frame = _frame(form.start, form.end)
    return points @ frame + np.array(form.start), normals @ frame, triangles


def _turned(profile: Sequence[tuple[float, float]]) -> _Mesh:
    """A profile (radius and height, from below) turned about z, each stretch of it a band."""
    turns = np.arange(_ROUND) * (2 * math.pi / _ROUND)
    around = np.column_stack([np.cos(turns), np.sin(turns)])
    slants = _slants(profile)
    points: list[Array] = []
    normals: list[Array] = []
    triangles: list[tuple[int, int, int]] = []
    for number, ends in enumerate(pairwise(profile)):
        start = len(points) * _ROUND
        for at, (radius, up) in enumerate(ends):
            out, rise = _eased(slants, number, at)
            points.append(np.column_stack([around * radius, np.full(_ROUND, up)]))
            normals.append(np.column_stack([around * out, np.full(_ROUND, rise)]))
        for turn in range(_ROUND):
            a, b = start + turn, start + (turn + 1) % _ROUND
            c, d = a + _ROUND, b + _ROUND
            triangles += [(a, b, d)] if ends[0][0] > 0 else []
            triangles += [(a, d, c)] if ends[1][0] > 0 else []
    return np.concatenate(points), np.concatenate(normals), np.array(triangles)


def _slants(profile: Sequence[tuple[float, float]]) -> list[tuple[float, float]]:
    """The outward normal of each stretch of a profile, outwards and up."""
    found = []
    for (r0, z0), (r1, z1) in pairwise(profile):
        long = math.hypot(r1 - r0, z1 - z0)
        found.append(((z1 - z0) / long, (r0 - r1) / long))
    return found


def _eased(slants: Sequence[tuple[float, float]], number: int, at: int) -> tuple[float, float]:
    """The normal at an end of a stretch: between it and its neighbour's where both are a curve."""
    own, beside = slants[number], number + (1 if at else -1)
    if not 0 <= beside < len(slants):
        return own
    other = slants[beside]
    if own[0] * other[0] + own[1] * other[1] < _SMOOTH:
        return own
    out, rise = own[0] + other[0], own[1] + other[1]
    long = math.hypot(out, rise)
    return out / long, rise / long


def _frame(start: Vector, end: Vector) -> Array:
    up = np.subtract(end, start) / math.dist(start, end)
    first = np.cross(np.eye(3)[np.argmin(np.abs(up))], up)
    first /= np.linalg.norm(first)
    return np.array([first, np.cross(up, first), up])
