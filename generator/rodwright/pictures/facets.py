"""Meshes as a picture sees them: flat facets."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np
import trimesh
from numpy.typing import NDArray
from scipy.sparse import coo_array
from scipy.sparse.csgraph import connected_components

from rodwright.geometry import Vector
from rodwright.pictures.camera import Array, looking_from

Indices = NDArray[np.int64]

FLAT = np.radians(0.1)
"""Neighbouring triangles that turn less than this lie in one facet."""
MOUTH_CORNERS = 16
PROUD = 0.05
"""How far (mm) mouths lie off their surface, to be seen before it."""


@dataclass(frozen=True, eq=False, slots=True)
class Facets:
    """One or more bodies cut up into flat facets.

    ``points`` (n, 3), in mm; ``triangles`` (t, 3) index them, counter-clockwise seen from
    outside; ``facet_of`` (t,) is each triangle's facet; ``normals`` (f, 3) point outwards;
    ``rings`` (r,) are the outlines of facets, as indices of points, and ``ring_of`` (r,) the
    facet of each, which has several if it has openings; ``body_of`` (f,) is each facet's body.
    ``mouths`` (f,) says which facets are the mouths of small holes, lying a hair proud.
    """

    points: Array
    triangles: Indices
    facet_of: Indices
    normals: Array
    rings: tuple[Indices, ...]
    ring_of: Indices
    body_of: Indices
    mouths: NDArray[np.bool_]


def facets_of(mesh: trimesh.Trimesh) -> Facets:
    """A watertight mesh cut up into facets: one body."""
    pairs, angles = mesh.face_adjacency, mesh.face_adjacency_angles
    count = len(mesh.faces)
    flat = pairs[angles < FLAT]
    graph = coo_array((np.ones(len(flat)), (flat[:, 0], flat[:, 1])), shape=(count, count))
    facet_count, facet_of = connected_components(graph, directed=False)
    # Summing the areas' vectors keeps slivers, whose own normals are poor, from mattering.
    corners = np.asarray(mesh.triangles)
    areas = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normals = np.zeros((facet_count, 3))
    np.add.at(normals, facet_of, areas)
    normals /= np.linalg.norm(normals, axis=1, keepdims=True)
    rings, ring_of = _rings(np.asarray(mesh.faces), facet_of)
    return Facets(
        np.asarray(mesh.vertices, dtype=np.float64),
        np.asarray(mesh.faces, dtype=np.int64),
        facet_of.astype(np.int64),
        normals,
        rings,
        ring_of,
        np.zeros(facet_count, dtype=np.int64),
        np.zeros(facet_count, dtype=np.bool_),
    )


def _rings(triangles: Indices, facet_of: Indices) -> tuple[tuple[Indices, ...], Indices]:
    """The outlines of facets: triangles' sides whose other side is another facet, in turn."""
    sides = np.concatenate([triangles, np.roll(triangles, -1, axis=1)]).reshape(2, -1).T
    facets = np.repeat(facet_of, 3)
    # Within a facet, sides come in pairs that run opposite ways.
    there = {(a, b, f) for a, b, f in zip(*sides.T.tolist(), facets.tolist(), strict=True)}
    onwards: dict[tuple[int, int], list[int]] = {}
    for a, b, facet in sorted(there):
        if (b, a, facet) not in there:
            onwards.setdefault((facet, a), []).append(b)
    rings, ring_of = [], []
    for (facet, start), ways in onwards.items():
        while ways:
            ring, at = [start], ways.pop()
            while at != start:
                ring.append(at)
                at = onwards[facet, at].pop()
            rings.append(np.array(ring, dtype=np.int64))
            ring_of.append(facet)
    return tuple(rings), np.array(ring_of, dtype=np.int64)


def mouth(centre: Vector, normal: Vector, diameter: float) -> Facets:
    """The mouth of a small hole as a facet of its own: a body to be joined to the drilled one."""
    view = looking_from(normal)
    turns = np.arange(MOUTH_CORNERS) * 2.0 * np.pi / MOUTH_CORNERS
    across = np.outer(np.cos(turns), view.right) + np.outer(np.sin(turns), view.up)
    points = np.array(centre) + PROUD * np.array(normal) + diameter / 2 * across
    corner = np.arange(MOUTH_CORNERS)
    fan = np.column_stack([np.zeros_like(corner), corner, np.roll(corner, -1)])[1:-1]
    return Facets(
        points,
        fan,
        np.zeros(len(fan), dtype=np.int64),
        np.array([normal]),
        (corner,),
        np.zeros(1, dtype=np.int64),
        np.zeros(1, dtype=np.int64),
        np.ones(1, dtype=np.bool_),
    )


def place(bodies: Iterable[tuple[Facets, Array]]) -> Facets:
    """Several bodies, each moved by its 4 x 4 matrix, gathered into one frame."""
    placed = list(bodies)
    matrices = [matrix for _, matrix in placed]
    parts = [body for body, _ in placed]
    point_starts = _starts([len(part.points) for part in parts])
    facet_starts = _starts([len(part.normals) for part in parts])
    return Facets(
        np.concatenate(
            [p.points @ m[:3, :3].T + m[:3, 3] for p, m in zip(parts, matrices, strict=True)]
        ),
        np.concatenate([p.triangles + s for p, s in zip(parts, point_starts, strict=True)]),
        np.concatenate([p.facet_of + s for p, s in zip(parts, facet_starts, strict=True)]),
        np.concatenate([p.normals @ m[:3, :3].T for p, m in zip(parts, matrices, strict=True)]),
        tuple(ring + s for p, s in zip(parts, point_starts, strict=True) for ring in p.rings),
        np.concatenate([p.ring_of + s for p, s in zip(parts, facet_starts, strict=True)]),
        np.concatenate([np.full(len(p.normals), i) for i, p in enumerate(parts)]),
        np.concatenate([p.mouths for p in parts]),
    )


def as_one(bodies: Iterable[Facets]) -> Facets:
    """Several bodies in one frame as a single body."""
    gathered = place((body, np.eye(4)) for body in bodies)
    return replace(gathered, body_of=np.zeros_like(gathered.body_of))


def _starts(counts: Sequence[int]) -> list[int]:
    return [0, *np.cumsum(counts)[:-1].tolist()]
