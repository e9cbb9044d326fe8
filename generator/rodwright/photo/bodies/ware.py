"""Bought-in pieces as bodies: knobs and pulls, hinges, slides, pins and feet.

All lengths in mm, part frame.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache

import numpy as np

from rodwright.geometry import Box
from rodwright.geometry.vectors import Vector
from rodwright.photo.bodies.easing import eased
from rodwright.photo.bodies.outlines import Array, Indices
from rodwright.photo.knobs import knob_profile
from rodwright.photo.scene import Body, Surface
from rodwright.photo.turned import turned_body
from rodwright.photo.wares import SURFACES
from rodwright.unit import Block, Fitting, Knob, Rod, Shape, Ware

_METAL_EASED, _OF_SIZE = 0.5, 0.2
"""How far the edges of bought-in pieces are rounded, mm, and at most as a share of their size
(common practice, no source)."""

Mesh = tuple[Array, Array, Indices]
"""Points, normals, and triangles."""


def ware_body(fittings: Sequence[Fitting], surface: Surface) -> Body:
    """Bought-in pieces on one part, of one surface, in the part's frame."""
    meshes = [_mesh(shape) for fitting in fittings for shape in fitting.shapes]
    starts = np.cumsum([0, *(len(points) for points, _, _ in meshes)])
    return Body(
        f"{fittings[0].ref} {fittings[0].ware}",
        np.concatenate([points for points, _, _ in meshes]),
        np.concatenate([normals for _, normals, _ in meshes]),
        np.concatenate(
            [triangles + start for (_, _, triangles), start in zip(meshes, starts, strict=False)]
        ),
        surface,
    )


def gathered(fittings: Iterable[Fitting]) -> dict[tuple[str, Ware], list[Fitting]]:
    """Fittings by the part that they are on and what they are of."""
    found: dict[tuple[str, Ware], list[Fitting]] = {}
    for each in fittings:
        found.setdefault((each.ref, each.ware), []).append(each)
    return found


@lru_cache(maxsize=4096)
def _mesh(shape: Shape) -> Mesh:
    if isinstance(shape, Block):
        return _block(shape)
    if isinstance(shape, Rod):
        return _turned(_rod(shape.diameter / 2, _long(shape)), shape.start, shape.end)
    return _turned(knob_profile(shape, 4), shape.start, shape.end)


def _block(block: Block) -> Mesh:
    size = Box(block.low, block.high).size
    width = min(_METAL_EASED, _OF_SIZE * min(size))
    patches = eased((size, ()), width)
    starts = np.cumsum([0, *(len(each.points) for each in patches)])
    return (
        np.concatenate([each.points for each in patches]) + np.array(block.low),
        np.concatenate([each.normals for each in patches]),
        np.concatenate(
            [each.triangles + start for each, start in zip(patches, starts, strict=False)]
        ),
    )


def _rod(radius: float, long: float) -> list[tuple[float, float]]:
    """The profile of a round bar with rounded ends; next to the rounds it is straight."""
    ease = min(_METAL_EASED, _OF_SIZE * radius, _OF_SIZE * long)
    turns = np.radians([0.0, 30.0, 60.0, 90.0])
    first = [
        (radius - ease + ease * float(np.sin(turn)), ease - ease * float(np.cos(turn)))
        for turn in turns
    ]
    last = [(at, long - up) for at, up in reversed(first)]
    return [
        (0.0, 0.0),
        (radius - 2 * ease, 0.0),
        *first,
        (radius, 2 * ease),
        (radius, long - 2 * ease),
        *last,
        (radius - 2 * ease, long),
        (0.0, long),
    ]


def _long(shape: Rod | Knob) -> float:
    return float(np.linalg.norm(np.subtract(shape.end, shape.start)))


def _turned(profile: Sequence[tuple[float, float]], start: Vector, end: Vector) -> Mesh:
    """A profile turned about the line from one point to another."""
    body = turned_body("", profile, (0.0, 0.0, 0.0), SURFACES["steel"])
    up = np.subtract(end, start)
    up /= np.linalg.norm(up)
    beside = np.eye(3)[np.argmin(np.abs(up))]
    first = np.cross(beside, up)
    first /= np.linalg.norm(first)
    frame = np.array([first, np.cross(up, first), up])
    return body.points @ frame + np.array(start), body.normals @ frame, body.triangles
