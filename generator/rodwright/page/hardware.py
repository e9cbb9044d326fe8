"""Bought-in pieces as a browser draws them: the same as in photographs, of far fewer triangles.

All lengths in mm, frame of the part that they are on.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from rodwright.page.document import Shape, Surface
from rodwright.page.shapes import packed
from rodwright.page.surfaces import ware_surface
from rodwright.photo.knobs import knob_profile
from rodwright.photo.turned import turned_along
from rodwright.pictures.triangles import Array, Mesh, merged
from rodwright.unit import Block, Rod, Unit
from rodwright.unit import Shape as Form
from rodwright.unit.fittings import shapes_by

_ROUND = 20
"""Flats that a round is drawn with."""


@dataclass(frozen=True, slots=True)
class Hardware:
    """What is drawn as one: bought-in pieces on the part ``ref``, all of one ``surface`` (with its
    name).  ``inner`` ones are seen only where doors and drawers stand open."""

    ref: str
    forms: tuple[Form, ...]
    surface: tuple[str, Surface]
    inner: bool


def hardware_of(unit: Unit) -> tuple[Hardware, ...]:
    """All that is bought in for a unit and seen."""
    alike = shapes_by(unit.fittings, key=lambda each: (each.ref, each.ware, each.inner))
    return tuple(
        Hardware(ref, forms, ware_surface(ware, unit.part(ref).finish), inner)
        for (ref, ware, inner), forms in alike.items()
    )


@lru_cache(maxsize=256)
def hardware_shape(forms: tuple[Form, ...]) -> tuple[str, Shape]:
    """The name (a digest of it) and the drawing of bought-in pieces; they have no drawn edges."""
    return packed(*hardware_mesh(forms), np.zeros((0, 2, 3)))


def hardware_mesh(forms: tuple[Form, ...]) -> Mesh:
    """The same as plain triangles."""
    return merged(map(_mesh, forms))


def _mesh(form: Form) -> Mesh:
    if isinstance(form, Block):
        return _block(form)
    if isinstance(form, Rod):
        radius, long = form.diameter / 2, math.dist(form.start, form.end)
        profile = [(0.0, 0.0), (radius, 0.0), (radius, long), (0.0, long)]
    else:
        profile = knob_profile(form)
    return turned_along(profile, form.start, form.end, _ROUND)


def _block(block: Block) -> Mesh:
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
    return Mesh(np.concatenate(points), np.concatenate(normals), np.array(triangles).reshape(-1, 3))
