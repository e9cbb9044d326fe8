"""How deep two meshes reach into each other, and how far apart they lie.

Overlaps and gaps are computed by manifold, the library that trimesh's own booleans rest on:
its overlap of two closed meshes is a closed mesh again, whatever faces coincide.  Plain boxes
square to the axes need only their bounds.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import manifold3d
import numpy as np
import trimesh
from numpy.typing import NDArray

from rodwright.geometry import Vector

PENETRATION = 0.01
"""Overlaps up to this depth (mm) are touching: a hundredth is far below any workshop's reach."""
_GRID = 5
_HAIR = (0.0021, 0.0017, 0.0013)

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Overlap:
    """How deep two bodies reach into each other (mm), the middle of where they do, and how much
    they share in all (mm3)."""

    depth: float
    place: Vector
    volume: float


class ClosedMesh:
    """A closed mesh (mm) with what is asked of it again and again.

    Raises:
        ValueError: the mesh isn't closed.
    """

    def __init__(self, mesh: trimesh.Trimesh) -> None:
        # On a grid of a hundred-thousandth of a mm, faces that touch coincide.
        self._vertices: Array = np.round(mesh.vertices, _GRID)
        self._faces = mesh.faces
        self.bounds: Array = np.array([self._vertices.min(axis=0), self._vertices.max(axis=0)])
        self.is_box = len(self._faces) == 12 and bool(
            np.logical_or(*(self._vertices == bound for bound in self.bounds)).all()
            and np.isclose(mesh.volume, np.ptp(self.bounds, axis=0).prod())
        )

    @cached_property
    def manifold(self) -> manifold3d.Manifold:
        """The same body for exact overlaps and gaps."""
        body = manifold3d.Manifold(
            manifold3d.Mesh64(
                np.ascontiguousarray(self._vertices, dtype=np.float64),
                np.ascontiguousarray(self._faces, dtype=np.uint64),
            )
        )
        if body.status() != manifold3d.Error.NoError:
            raise ValueError("the mesh of a part isn't closed")
        return body


def overlap(first: ClosedMesh, second: ClosedMesh) -> Overlap | None:
    """The deepest overlap of two bodies; None where they touch (0.01 mm at most) or are apart.

    The depth of an overlapping piece is its least width: the smallest extent of its convex
    hull along any of the hull's face normals.
    """
    low = np.maximum(first.bounds[0], second.bounds[0])
    high = np.minimum(first.bounds[1], second.bounds[1])
    shared = high - low
    if shared.min() <= PENETRATION:
        return None
    if first.is_box and second.is_box:
        return Overlap(float(shared.min()), _rounded((low + high) / 2), float(shared.prod()))
    body = first.manifold ^ second.manifold
    # Where faces touch, the body may carry fins without thickness.  What it shares with itself
    # moved a hair aside has none, and is thinner by the move along each normal.
    deepest = None
    for piece in (body ^ body.translate(_HAIR)).decompose():
        depth = _least_width(_points(piece))
        if depth > PENETRATION and (deepest is None or depth > deepest.depth):
            bounds = np.array(piece.bounding_box()).reshape(2, 3)
            deepest = Overlap(depth, _rounded(bounds.mean(axis=0)), body.volume())
    return deepest


def gap(first: ClosedMesh, second: ClosedMesh) -> tuple[float, Vector]:
    """Smallest distance (mm) between two bodies, 0 where they touch; and the middle between
    their bounds."""
    apart = np.maximum(first.bounds[0] - second.bounds[1], second.bounds[0] - first.bounds[1])
    low = np.maximum(first.bounds[0], second.bounds[0])
    high = np.minimum(first.bounds[1], second.bounds[1])
    place = _rounded((low + high) / 2)
    least = float(np.linalg.norm(np.maximum(apart, 0.0)))
    if first.is_box and second.is_box:
        return least, place
    both = np.stack((first.bounds, second.bounds))
    farthest = float(np.linalg.norm(both[:, 1].max(axis=0) - both[:, 0].min(axis=0)))
    # manifold compares all triangles within its reach, so look close by first.
    reach = least + 1.0
    while (found := first.manifold.min_gap(second.manifold, reach)) >= reach < farthest:
        reach *= 4
    return found, place


def _points(piece: manifold3d.Manifold) -> Array:
    vertices: Array = np.asarray(piece.to_mesh64().vert_properties, dtype=np.float64)[:, :3]
    return vertices


def _least_width(points: Array) -> float:
    if np.ptp(points, axis=0).min() + max(_HAIR) <= PENETRATION:
        return 0.0
    hull = trimesh.PointCloud(points).convex_hull
    along = np.ptp(hull.face_normals @ hull.vertices.T, axis=1)
    return float((along + np.abs(hull.face_normals @ np.array(_HAIR))).min())


def _rounded(values: Array) -> Vector:
    """A place to the millionth of a millimetre."""
    x, y, z = (round(float(value), 6) for value in values)
    return (x, y, z)
