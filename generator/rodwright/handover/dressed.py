"""What parts look like in files for viewers, as plain data, and their meshes cut by it.

A wood's face, its long edges and its ends have pictures of their own, and edges may have something
glued on them.  All lengths in mm, part frame.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.vectors import Vector
from rodwright.pictures.triangles import Array, Mesh

METRES = 0.001
"""mm in them."""
Y_UP = np.array([[1.0, 0, 0, 0], [0, 0, 1.0, 0], [0, -1.0, 0, 0], [0, 0, 0, 1.0]])
"""Rows: where the unit frame's x, y and z go in files in which y is up and z towards the viewer."""
PANE = 0.25
"""How much of a pane's own colour covers what is behind it; by eye."""
_LOOKS_OUT = 0.9
"""Cosine of the angle within which a triangle looks out of an edge."""
_ON_IT = 1.0
"""mm: how near the edge it lies."""
_AXES = {"face": (0, 1), "edge": (0, 2), "end": (1, 2)}
"""Of the grain's frame: what goes to the right and what up in each picture."""


@dataclass(frozen=True, slots=True)
class Pictures:
    """JPEGs of a material's faces, long edges and ends, which repeat.  ``size`` is what they show:
    along the grain, across it and through; a face has the first two, to the right and up, an edge
    the first and the last, an end the last two."""

    face: bytes
    edge: bytes
    end: bytes
    size: Vector


@dataclass(frozen=True, slots=True)
class Look:
    """How something looks: ``colour`` is ``#rrggbb`` (sRGB), the mean of its face's picture."""

    name: str
    colour: str
    roughness: float
    metal: bool = False
    clear: bool = False
    pictures: Pictures | None = None


@dataclass(frozen=True, slots=True)
class Dress:
    """How a part looks: its material, what is glued on ``edges`` by their side (``-x``, ``+y``),
    whether its grain runs along its width, and where in its wood it was cut: ``lie`` is by what
    the places along and across the grain are multiplied and what is added to them."""

    look: Look
    edges: Mapping[str, Look] = field(default_factory=dict)
    across: bool = False
    lie: tuple[float, float, float, float] = (1.0, 0.0, 1.0, 0.0)


@dataclass(frozen=True, slots=True)
class Ware:
    """A bought-in piece on the part ``ref``, in whose frame its mesh is."""

    ref: str
    name: str
    mesh: Mesh
    look: Look


def cut_by_side(mesh: Mesh, size: Vector, dress: Dress) -> dict[str, Mesh]:
    """A part's mesh by what its triangles show: ``face``, ``edge``, ``end``, or the side whose
    edging; all of it is ``face`` where nothing else is different."""
    corners = mesh.points[mesh.triangles]
    square = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    square /= np.maximum(np.linalg.norm(square, axis=1, keepdims=True), 1e-12)
    shown = np.full(len(mesh.triangles), "face", dtype="<U4")
    if dress.look.pictures is not None:
        along, across = (1, 0) if dress.across else (0, 1)
        faces = np.abs(square)
        narrow = faces[:, 2] < faces[:, :2].max(axis=1)
        shown[narrow] = np.where(faces[narrow, across] > faces[narrow, along], "edge", "end")
    for side in dress.edges:
        axis, high = "xyz".index(side[1]), side[0] == "+"
        near = np.abs(corners[..., axis] - (size[axis] if high else 0.0)).max(axis=1) < _ON_IT
        shown[near & (square[:, axis] * (1 if high else -1) > _LOOKS_OUT)] = side
    return {str(each): _part(mesh, shown == each) for each in dict.fromkeys(shown.tolist())}


def look_at(dress: Dress, shown: str) -> tuple[Look, bytes | None]:
    """The look of what :func:`cut_by_side` calls so, and its picture if it has one."""
    look = dress.edges.get(shown, dress.look)
    if look.pictures is None:
        return look, None
    return look, getattr(look.pictures, shown if shown in _AXES else "edge")


def places(mesh: Mesh, dress: Dress, shown: str) -> Array:
    """Where each point lies in the picture of what is shown, (n, 2): 1 is a whole picture; to the
    right and up from its lower left corner."""
    look, _ = look_at(dress, shown)
    if look.pictures is None:
        raise ValueError(f"{look.name} has no pictures")
    size = np.array(look.pictures.size)
    along, begin, across, beside = dress.lie
    if shown in _AXES:
        order = [1, 0, 2] if dress.across else [0, 1, 2]
        right, up = _AXES[shown]
    else:
        # What is glued on an edge has its grain along it.
        order = [1, 0, 2] if shown[1] == "x" else [0, 1, 2]
        right, up = _AXES["edge"]
    # Whole pictures left out, figures stay small and exact.
    start = np.array([begin % size[0], beside % size[1], 0.0])
    placed = mesh.points[:, order] * np.array([along, across, 1.0]) + start
    found: Array = (placed / size)[:, [right, up]]
    return found


def _part(mesh: Mesh, chosen: NDArray[np.bool_]) -> Mesh:
    triangles = mesh.triangles[chosen]
    used, own = np.unique(triangles, return_inverse=True)
    return Mesh(mesh.points[used], mesh.normals[used], own.reshape(-1, 3))
