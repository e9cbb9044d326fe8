"""A unit's parts as bodies, each with its eased edges and its own figure."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.vectors import Vector
from rodwright.photo.bodies.atlas import textured
from rodwright.photo.bodies.easing import eased
from rodwright.photo.bodies.outlines import Array
from rodwright.photo.scene import Body, Surface
from rodwright.photo.woods import looks_of
from rodwright.unit import Part, Unit

_EASED = {"board": 1.2, "sheet": 0.7}
"""How far the arrises of boards and of sheets are rounded, mm: by hand, with a block (common
practice, no source)."""


def unit_bodies(
    unit: Unit, moves: Mapping[str, Vector], *, texel: float, seed: int = 0
) -> tuple[Body, ...]:
    """Every part of a unit, each moved by ``moves`` (mm, by ref), and what is bought in with it.

    ``texel`` is how fine textures are, mm a pixel; equal seeds give equal figure.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    return tuple(
        _placed(_part_body(part, texel, seed), part, moves.get(part.ref, (0.0, 0.0, 0.0)))
        for part in unit.parts
    )


def _placed(body: Body, part: Part, move: Vector) -> Body:
    matrix = np.array(part.placement.matrix())
    return replace(
        body,
        points=body.points @ matrix[:3, :3].T + matrix[:3, 3] + np.array(move),
        normals=body.normals @ matrix[:3, :3].T,
    )


@lru_cache(maxsize=1024)
def _part_body(part: Part, texel: float, seed: int) -> Body:
    """A part in its own frame."""
    patches = eased(part.shape, _EASED[part.blank.stock.kind])
    looks = looks_of(part, seed)

    def reflectance(points: Array, normals: Array) -> NDArray[np.float32]:
        return looks.reflectance(points, normals, texel)

    if looks.even is None:
        points, normals, triangles, places, texture = textured(
            [(patch, texel) for patch in patches], reflectance
        )
        return Body(part.ref, points, normals, triangles, Surface(texture), places)
    starts = np.cumsum([0, *(len(patch.points) for patch in patches)])
    return Body(
        part.ref,
        np.concatenate([patch.points for patch in patches]),
        np.concatenate([patch.normals for patch in patches]),
        np.concatenate(
            [patch.triangles + start for patch, start in zip(patches, starts, strict=False)]
        ),
        Surface(looks.even, clear=looks.clear),
    )
