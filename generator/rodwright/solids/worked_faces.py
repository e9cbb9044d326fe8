"""Which workings have left which faces of a shape's solid.

A face was left by every working that took away the wood just outside it.  That is asked
point by point, of the middles of all facets of the face, and by the arithmetic of workings
alone, so that it needs no history of how the solid was made.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from cadquery import Face
from numpy.typing import NDArray
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.GeomAbs import GeomAbs_Cylinder

from rodwright.geometry import Box, Vector
from rodwright.mass.pieces import pieces
from rodwright.solids import solid_of
from rodwright.solids.meshes import facets_of
from rodwright.unit import ShapeKey, Working

_OUTSIDE = 5e-6
"""How far (mm) outside a face is asked: well over the kernel's tolerance of 1e-7, and so little
that where faces meet at a slant, the middle of a facet is hardly ever as near to the other."""
_NO_AREA = 1e-6
"""mm2; a facet with less of it has its middle on the face's edge, which says nothing."""

Points = NDArray[np.float64]
Mask = NDArray[np.bool_]


@lru_cache(maxsize=4096)
def worked_faces(shape: ShapeKey) -> tuple[tuple[int, ...], ...]:
    """For each face of a shape's solid, in its order, the workings that left it, counted from 0.

    None for what is left of the blank's own surfaces; several where workings share a face.

    Raises:
        ValueError: the shape's workings leave no single solid.
    """
    size, workings = shape
    if not workings:
        return ((),) * len(facets_of(shape))
    beside = [
        _just_outside(face, vertices[triangles])
        for face, (vertices, triangles) in zip(
            solid_of(shape).Faces(), facets_of(shape), strict=True
        )
    ]
    outside = np.concatenate(beside)
    face = np.repeat(np.arange(len(beside)), [len(points) for points in beside])
    within = np.all((outside > 0) & (outside < size), axis=1)
    outside, face = outside[within], face[within]
    left: list[list[int]] = [[] for _ in beside]
    for index, working in enumerate(workings):
        for number in np.flatnonzero(np.bincount(face[taken(size, working, outside)])):
            left[number].append(index)
    return tuple(map(tuple, left))


def _just_outside(face: Face, corners: Points) -> Points:
    """A point outside the middle of each of a face's facets, given by their corners."""
    normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    lengths = np.linalg.norm(normals, axis=1)
    wide = lengths > 2 * _NO_AREA
    outwards, middles = normals[wide] / lengths[wide, None], corners[wide].mean(axis=1)
    surface = BRepAdaptor_Surface(face.wrapped)
    if surface.GetType() == GeomAbs_Cylinder:
        # The facets cut the corner; from their middles out to the round itself.
        cylinder = surface.Cylinder()
        at, way = cylinder.Location(), cylinder.Axis().Direction()
        axis = np.array([way.X(), way.Y(), way.Z()])
        radial = middles - [at.X(), at.Y(), at.Z()]
        radial -= np.outer(radial @ axis, axis)
        away = np.linalg.norm(radial, axis=1)
        middles += radial * (cylinder.Radius() / away - 1.0)[:, None]
    return np.asarray(middles + outwards * _OUTSIDE)


def taken(size: Vector, working: Working, points: Points) -> Mask:
    """Which points (n x 3, part frame, mm) within a blank of this size a working takes away."""
    beyond = [(points - at) @ np.array(normal) > 0 for at, normal in working.planes(size)]
    within = [
        np.all((points > piece.low) & (points < piece.high), axis=1)
        if isinstance(piece, Box)
        else piece.holds(points)
        for piece in pieces(working, size)
    ]
    return np.asarray(np.logical_or.reduce([*beyond, *within]))
