"""CadQuery solids to trimesh meshes."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
import trimesh

from rodwright.parts import Part, ShapeKey
from rodwright.solids import solid_of

LINEAR_TOLERANCE = 0.02
"""How far (mm) a facet may stand off a curve: well under the 0.05 mm that counts as meeting."""
ANGULAR_TOLERANCE = 0.2
"""Largest turn (radians) between neighbouring facets: eight to a quarter round, smooth to see."""


@lru_cache(maxsize=4096)
def mesh_of(shape: ShapeKey) -> trimesh.Trimesh:
    """The watertight mesh of a shape's solid, in the part frame, mm.

    Equal shapes give the same object; callers must not change it.

    Raises:
        ValueError: the shape's workings leave no single solid, or its mesh isn't closed.
    """
    vertices, triangles = solid_of(shape).tessellate(LINEAR_TOLERANCE, ANGULAR_TOLERANCE)
    mesh = trimesh.Trimesh(
        np.array([vertex.toTuple() for vertex in vertices]), np.array(triangles), process=True
    )
    if not mesh.is_volume:
        raise ValueError("the mesh of a solid isn't closed")
    return mesh


def placed_mesh(part: Part) -> trimesh.Trimesh:
    """A part's mesh in the unit frame, mm."""
    mesh = mesh_of(part.shape).copy()
    mesh.apply_transform(np.array(part.placement.matrix()))
    return mesh
