"""Parts and bought-in pieces as bodies of a scene."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np

from rodwright.geometry.vectors import Vector
from rodwright.photo.scene import Body, Surface
from rodwright.solids.meshes import facets_of
from rodwright.unit import Part, Unit


def unit_bodies(unit: Unit, moves: Mapping[str, Vector], *, texel: float) -> tuple[Body, ...]:
    """Every part of a unit, each moved by ``moves`` (mm, by ref), and what is bought in with it.

    ``texel`` is how fine textures are, mm a pixel.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    del texel
    return tuple(_part_body(part, moves.get(part.ref, (0.0, 0.0, 0.0))) for part in unit.parts)


def _part_body(part: Part, move: Vector) -> Body:
    points, normals, triangles = [], [], []
    before = 0
    matrix = np.array(part.placement.matrix())
    for own, facets in facets_of(part.shape):
        corners = own[facets].reshape(-1, 3)
        sides = np.cross(corners[1::3] - corners[0::3], corners[2::3] - corners[0::3])
        sides /= np.linalg.norm(sides, axis=1, keepdims=True)
        points.append(corners @ matrix[:3, :3].T + matrix[:3, 3] + np.array(move))
        normals.append(np.repeat(sides, 3, axis=0) @ matrix[:3, :3].T)
        triangles.append(np.arange(len(corners)).reshape(-1, 3) + before)
        before += len(corners)
    colour = part.blank.stock.colour
    encoded = np.array([int(colour[i : i + 2], 16) for i in (1, 3, 5)]) / 255
    red, green, blue = np.where(
        encoded <= 0.04045, encoded / 12.92, ((encoded + 0.055) / 1.055) ** 2.4
    )
    return Body(
        part.ref,
        np.concatenate(points),
        np.concatenate(normals),
        np.concatenate(triangles),
        Surface((float(red), float(green), float(blue))),
    )
