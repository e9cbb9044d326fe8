"""CadQuery solids to trimesh meshes."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
import trimesh
from cadquery import Face
from numpy.typing import NDArray
from OCP.BRep import BRep_Tool
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.IMeshTools import IMeshTools_MeshAlgoType, IMeshTools_Parameters
from OCP.TopAbs import TopAbs_REVERSED
from OCP.TopLoc import TopLoc_Location

from rodwright.solids import solid_of
from rodwright.unit import Part, ShapeKey

LINEAR_TOLERANCE = 0.02
"""How far (mm) a facet may stand off a curve: well under the 0.05 mm that counts as meeting."""
ANGULAR_TOLERANCE = 0.2
"""Largest turn (radians) between neighbouring facets: eight to a quarter round, smooth to see."""

Facets = tuple[NDArray[np.float64], NDArray[np.int64]]
"""Vertices (mm), and triangles that count them from 0, anticlockwise seen from outside."""


@lru_cache(maxsize=4096)
def mesh_of(shape: ShapeKey) -> trimesh.Trimesh:
    """The watertight mesh of a shape's solid, in the part frame, mm.

    Equal shapes give the same object; callers must not change it.

    Raises:
        ValueError: the shape's workings leave no single solid, or its mesh isn't closed.
    """
    vertices: list[NDArray[np.float64]] = []
    triangles: list[NDArray[np.int64]] = []
    before = 0
    for own, facets in facets_of(shape):
        vertices.append(own)
        triangles.append(facets + before)
        before += len(own)
    mesh = trimesh.Trimesh(np.concatenate(vertices), np.concatenate(triangles), process=True)
    if not mesh.is_volume:
        raise ValueError("the mesh of a solid isn't closed")
    return mesh


@lru_cache(maxsize=4096)
def facets_of(shape: ShapeKey) -> tuple[Facets, ...]:
    """The facets of each face of a shape's solid, in the order of its faces; part frame, mm.

    Raises:
        ValueError: the shape's workings leave no single solid.
    """
    solid = solid_of(shape)
    # CadQuery's own tessellate takes the linear tolerance as a part of each edge's length.
    BRepMesh_IncrementalMesh(solid.wrapped, _parameters())
    return tuple(map(_facets, solid.Faces()))


def _parameters() -> IMeshTools_Parameters:
    asked = IMeshTools_Parameters()
    asked.Deflection = LINEAR_TOLERANCE
    # Open CASCADE turns half the angle it is given from facet to facet (measured on cylinders).
    asked.Angle = 2 * ANGULAR_TOLERANCE
    # Faces with a hundred holes take a ninth of the time that Watson's algorithm takes.
    asked.MeshAlgo = IMeshTools_MeshAlgoType.IMeshTools_MeshAlgoType_Delabella
    return asked


def _facets(face: Face) -> Facets:
    location = TopLoc_Location()
    facets = BRep_Tool.Triangulation_s(face.wrapped, location)
    nodes = [facets.Node(number) for number in range(1, facets.NbNodes() + 1)]
    if not location.IsIdentity():
        move = location.Transformation()
        nodes = [node.Transformed(move) for node in nodes]
    triangles = [facets.Triangle(number).Get() for number in range(1, facets.NbTriangles() + 1)]
    if face.wrapped.Orientation() == TopAbs_REVERSED:
        triangles = [(a, c, b) for a, b, c in triangles]
    vertices = [(node.X(), node.Y(), node.Z()) for node in nodes]
    return np.array(vertices), np.array(triangles) - 1  # Open CASCADE counts from one


def placed_mesh(part: Part) -> trimesh.Trimesh:
    """A part's mesh in the unit frame, mm."""
    mesh = mesh_of(part.shape).copy()
    mesh.apply_transform(np.array(part.placement.matrix()))
    return mesh
