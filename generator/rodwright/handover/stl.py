"""STL, binary, in mm.

One file for each row of the parts list, in the part frame, and one of the whole unit in
the unit frame.  STL knows neither units nor names; the header says mm.  Normals have unit
length, as the format asks, and follow from the corners by the right-hand rule.
"""

from __future__ import annotations

import io
import unicodedata
from functools import lru_cache
from typing import Any

import manifold3d
import numpy as np
from numpy.typing import NDArray
from stl import Mode
from stl.mesh import Mesh

from rodwright.solids.meshes import mesh_of
from rodwright.unit import ShapeKey, Unit

_GRID = 1 / 1024
"""Mm.  A power of two: STL's single precision holds its multiples exactly up to 16 m, where a
decimal grid would leave gaps between faces that ought to touch."""

_HAIR = _GRID
"""Mm: how far the surfaces of a part that lies askew are moved out in the whole unit."""

_HEADER, _HEADER_LENGTH = "Rodwright; millimetres", 80

_NO_AREA = 1e-12
"""Mm2: half of it is less than any triangle has whose corners single precision tells apart."""


@lru_cache(maxsize=4096)
def part_stl(shape: ShapeKey) -> bytes:
    """A shape's mesh as binary STL, part frame, mm.

    Raises:
        ValueError: the shape has no single closed solid.
    """
    return _binary(np.asarray(mesh_of(shape).triangles))


def unit_stl(unit: Unit) -> bytes:
    """The whole unit as binary STL, unit frame, mm.

    Parts that touch are united, so that no walls stay inside: each connected body is
    closed, as slicers and checkers ask.

    Raises:
        ValueError: a part has no single closed solid.
    """
    bodies = []
    for part in unit.parts:
        mesh, matrix = mesh_of(part.shape), np.array(part.placement.matrix())
        vertices = np.asarray(mesh.vertices)
        if not (np.abs(matrix[:3, :3]).max(axis=0) > 1.0 - 1e-9).all():
            # Off the grid, faces that touch aren't quite in one plane: a hair of overlap unites.
            size = np.array(part.blank.size)
            vertices = size / 2 + (vertices - size / 2) * (1.0 + 2 * _HAIR / size)
        placed = vertices @ matrix[:3, :3].T + matrix[:3, 3]
        faces = np.asarray(mesh.faces, dtype=np.uint32)
        bodies.append(manifold3d.Manifold(manifold3d.Mesh(_snapped(placed), faces)))
    united = manifold3d.Manifold.batch_boolean(bodies, manifold3d.OpType.Add).to_mesh()
    vertices = np.asarray(united.vert_properties)[:, :3]
    return _binary(vertices[np.asarray(united.tri_verts)])


def titled(content: bytes, title: str) -> bytes:
    """An STL file with a title in its header, as far as that has room, in plain letters."""
    plain = unicodedata.normalize("NFKD", title).encode("ascii", "ignore")
    return (_HEADER.encode() + b"; " + plain)[:_HEADER_LENGTH].ljust(_HEADER_LENGTH) + content[
        _HEADER_LENGTH:
    ]


class _Dateless(Mesh):  # type: ignore[misc]
    """An STL mesh whose header doesn't change with the time of day."""

    def get_header(self, name: str) -> str:  # noqa: ARG002
        """The 80 characters before the triangles."""
        return _HEADER.ljust(_HEADER_LENGTH)


def _snapped(vertices: NDArray[np.float64]) -> NDArray[np.float32]:
    """Vertices to the grid, so that faces which touch are in one plane."""
    return (np.round(vertices / _GRID) * _GRID).astype(np.float32)


def _binary(triangles: NDArray[np.floating[Any]]) -> bytes:
    data: Any = np.zeros(len(triangles), dtype=_Dateless.dtype)
    data["vectors"] = triangles
    data["normals"] = unit_normals(data["vectors"])
    file = io.BytesIO()
    mesh = _Dateless(data, remove_empty_areas=False, calculate_normals=False)
    # Unless told otherwise, saving writes vector products over the normals: as long as the
    # triangles are large.
    mesh.save("unit", fh=file, mode=Mode.BINARY, update_normals=False)
    return file.getvalue()


def unit_normals(triangles: NDArray[np.floating[Any]]) -> NDArray[np.float64]:
    """Unit normals of triangles (n x 3 corners x 3), by the right-hand rule.

    A triangle without area gets a direction square to its longest side.
    """
    corners = np.asarray(triangles, dtype=np.float64)
    sides = np.roll(corners, -1, axis=1) - corners
    normals = np.cross(sides[:, 0], sides[:, 1])
    lengths = np.linalg.norm(normals, axis=1)
    flat = lengths < _NO_AREA
    if flat.any():
        squared = (sides[flat] ** 2).sum(axis=2)
        longest = sides[flat, squared.argmax(axis=1)]
        normals[flat] = np.cross(longest, np.eye(3)[np.abs(longest).argmin(axis=1)])
        normals[flat & ~normals.any(axis=1)] = (0.0, 0.0, 1.0)  # three corners in one place
        lengths[flat] = np.linalg.norm(normals[flat], axis=1)
    return np.asarray(normals / lengths[:, None])
