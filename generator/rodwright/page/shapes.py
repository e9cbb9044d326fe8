"""Solids as a browser draws them: packed points, normals, triangles and edges."""

from __future__ import annotations

import base64
import hashlib
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from rodwright.page.document import Shape
from rodwright.pictures.facets import facets_of
from rodwright.solids.meshes import mesh_of
from rodwright.unit import ShapeKey


@lru_cache(maxsize=1024)
def shape_of(key: ShapeKey) -> tuple[str, Shape]:
    """The name (a digest of it) and the drawing of a part's solid.

    Raises:
        ValueError: the workings leave no single solid.
    """
    mesh = mesh_of(key)
    directions, plane = np.unique(np.round(mesh.face_normals, 5) + 0.0, axis=0, return_inverse=True)
    corners = np.column_stack([mesh.faces.ravel(), np.repeat(plane.ravel(), 3)])
    own, index = np.unique(corners, axis=0, return_inverse=True)
    facets = facets_of(mesh)
    ends = [np.stack([ring, np.roll(ring, -1)], axis=1) for ring in facets.rings]
    pairs = np.unique(np.sort(np.concatenate(ends), axis=1), axis=0)
    return packed(
        mesh.vertices[own[:, 0]], directions[own[:, 1]], index.reshape(-1, 3), facets.points[pairs]
    )


def packed(
    points: NDArray[np.floating],
    normals: NDArray[np.floating],
    triangles: NDArray[np.integer],
    edges: NDArray[np.floating],
) -> tuple[str, Shape]:
    """Arrays as a :class:`Shape`, with its name."""
    arrays = [
        points.astype("<f4").tobytes(),
        normals.astype("<f4").tobytes(),
        triangles.astype("<u4").tobytes(),
        edges.astype("<f4").tobytes(),
    ]
    name = hashlib.sha256(b"".join(arrays)).hexdigest()[:16]
    return name, Shape(*(base64.b64encode(each).decode("ascii") for each in arrays))
