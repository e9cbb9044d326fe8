"""Bought-in pieces as bodies: knobs and pulls, hinges, slides, pins and feet.

All lengths in mm, part frame.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from functools import lru_cache

import numpy as np

from rodwright.geometry import Box
from rodwright.photo.bodies.easing import eased, whole
from rodwright.photo.knobs import knob_profile
from rodwright.photo.scene import Body, Surface
from rodwright.photo.turned import ROUND, turned_along
from rodwright.pictures.triangles import Mesh, merged
from rodwright.unit import Block, Rod, Shape

_METAL_EASED, _OF_SIZE = 0.5, 0.2
"""How far the edges of bought-in pieces are rounded, mm, and at most as a share of their size
(common practice, no source)."""


def ware_body(name: str, shapes: Iterable[Shape], surface: Surface) -> Body:
    """Bought-in pieces on one part, of one surface, in the part's frame."""
    return Body(name, *merged(map(_mesh, shapes)), surface)


@lru_cache(maxsize=4096)
def _mesh(shape: Shape) -> Mesh:
    if isinstance(shape, Block):
        return _block(shape)
    if isinstance(shape, Rod):
        profile = _rod(shape.diameter / 2, math.dist(shape.start, shape.end))
    else:
        profile = knob_profile(shape, 4)
    return turned_along(profile, shape.start, shape.end, ROUND)


def _block(block: Block) -> Mesh:
    size = Box(block.low, block.high).size
    width = min(_METAL_EASED, _OF_SIZE * min(size))
    points, normals, triangles = whole(eased((size, ()), width))
    return Mesh(points + np.array(block.low), normals, triangles)


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
