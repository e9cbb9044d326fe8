"""What can be seen of flat facets, as exact areas and lines.

Works in screen coordinates (see ``camera``), where a facet's depth is linear in x and y.
A facet loses the parts of its area where another one is nearer; an edge is hidden along
the stretches where a facet is nearer.  Both are compared through plane equations, so a
facet may be nearer over one part of an overlap and farther over another.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray

from rodwright.pictures.camera import Array, Camera
from rodwright.pictures.facets import Facets, Indices

LEAST_SLOPE = 1e-4
"""Facets seen more nearly edge-on than this (as a ratio of areas) show no area."""
NEARER = 0.01
"""A facet hides what lies more than this (mm of depth) behind it."""
GRID = 1e-4
"""Areas are computed on a grid this fine (mm), which keeps out slivers."""
LEAST_BREADTH = 0.02
"""Narrower areas (mm) are left out."""
LEAST_LENGTH = 0.02
"""Shorter stretches of line (mm) are left out."""


@dataclass(frozen=True, eq=False, slots=True)
class Seen:
    """Facets seen by a camera.

    ``facing`` (k,) are the facets turned to the viewer, ``areas`` (k,) what shows of each
    (shapely polygons, some empty), ``outlines`` (k,) the same with nothing in front;
    ``planes`` (k, 3) give depth as ``a x + b y + c``.
    """

    facing: Indices
    areas: NDArray[np.object_]
    outlines: NDArray[np.object_]
    planes: Array


@dataclass(frozen=True, eq=False, slots=True)
class Lines:
    """Stretches of edges on the screen, straight, from ``ends[:, 0]`` to ``ends[:, 1]``.

    ``ends`` (m, 2, 2); ``edge`` (m,) says which edge each belongs to.
    """

    ends: Array
    edge: Indices


def see(facets: Facets, camera: Camera) -> Seen:
    """The facets turned to the camera, and what shows of each."""
    facing, outlines, planes = _project(facets, camera)
    areas = outlines.copy()
    front, behind = _overlapping(outlines)
    overlaps = shapely.intersection(outlines[front], outlines[behind])
    overlaps, pair = _surfaces(overlaps)
    front, behind = front[pair], behind[pair]
    ahead = planes[front] - planes[behind]
    coordinates, owner = shapely.get_coordinates(overlaps, return_index=True)
    gaps = np.einsum("ij,ij->i", np.column_stack([coordinates, np.ones(len(owner))]), ahead[owner])
    nearest, farthest = np.full(len(front), -np.inf), np.full(len(front), np.inf)
    np.maximum.at(nearest, owner, gaps)
    np.minimum.at(farthest, owner, gaps)
    hiding: dict[int, list[shapely.Geometry]] = {}
    for number in np.flatnonzero(nearest > NEARER).tolist():
        overlap = overlaps[number]
        if farthest[number] < -NEARER:
            overlap = shapely.intersection(overlap, _half_plane(overlap, ahead[number]))
        hiding.setdefault(int(behind[number]), []).append(overlap)
    for number, hidden in hiding.items():
        cover = shapely.union_all(_surfaces(np.array(hidden))[0], grid_size=GRID)
        left = shapely.difference(areas[number], cover, grid_size=GRID)
        areas[number] = shapely.multipolygons(_surfaces(np.array([left]))[0])
    return Seen(facing, areas, outlines, planes)


def edges_shown(facets: Facets, camera: Camera) -> Indices:
    """The edges a camera could see: sharp ones, and contours of rounded surfaces."""
    turned = _towards(facets, camera)[facets.sides]
    contour = turned[:, 0] != turned[:, 1]
    return np.flatnonzero(turned.any(axis=1) & (facets.sharp | contour))


def contours(facets: Facets, camera: Camera) -> NDArray[np.bool_]:
    """Which edges (e,) bound their body on the screen: one side faces the camera only."""
    turned = _towards(facets, camera)[facets.sides]
    return np.asarray(turned[:, 0] != turned[:, 1])


def split(facets: Facets, camera: Camera, seen: Seen, edges: Indices) -> tuple[Lines, Lines]:
    """The visible and the hidden stretches of some edges."""
    points = camera.screen(facets.points)
    segments = points[facets.edges[edges]]
    lengths = np.linalg.norm(segments[:, 1, :2] - segments[:, 0, :2], axis=1)
    edges, segments = edges[lengths > LEAST_LENGTH], segments[lengths > LEAST_LENGTH]
    lines = shapely.linestrings(segments[:, :, :2])
    tree = shapely.STRtree(seen.outlines)
    line, facet = tree.query(lines, predicate="intersects")
    pieces, owner = shapely.get_parts(
        shapely.intersection(lines[line], seen.outlines[facet]), return_index=True
    )
    long = shapely.length(pieces) > LEAST_LENGTH / 10
    pieces, owner = pieces[long], owner[long]
    line, facet = line[owner], facet[owner]
    start = segments[line, 0]
    along = segments[line, 1] - start
    square = np.einsum("ij,ij->i", along[:, :2], along[:, :2])
    ends = shapely.get_coordinates(pieces).reshape(-1, 2, 2) - start[:, None, :2]
    spans = np.sort(np.einsum("ikj,ij->ik", ends, along[:, :2]) / square[:, None], axis=1)
    # How far the facet lies in front of the edge, at both ends of the piece.
    plane = seen.planes[facet]
    at = start[:, None, :] + spans[:, :, None] * along[:, None, :]
    gap = np.einsum("ikj,ij->ik", at[:, :, :2], plane[:, :2]) + plane[:, 2:] - at[:, :, 2]
    spans = _nearer_only(spans, gap)
    covered = spans[:, 1] > spans[:, 0]
    hidden: dict[int, list[tuple[float, float]]] = {}
    for number, (low, high) in zip(line[covered].tolist(), spans[covered].tolist(), strict=True):
        hidden.setdefault(number, []).append((low, high))
    return _stretches(segments, edges, hidden)


def _towards(facets: Facets, camera: Camera) -> NDArray[np.bool_]:
    """Which facets (f,) are turned to the camera."""
    twice = np.zeros(len(facets.normals))
    flat, tilted = _screen_areas(facets, camera)
    np.add.at(twice, facets.facet_of, tilted)
    whole = np.zeros(len(facets.normals))
    np.add.at(whole, facets.facet_of, flat)
    return np.asarray(twice > LEAST_SLOPE * whole)


def _screen_areas(facets: Facets, camera: Camera) -> tuple[Array, Array]:
    """Of each triangle twice its area in screen space, and its signed area on the screen."""
    corners = camera.screen(facets.points)[facets.triangles]
    vectors = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    return np.linalg.norm(vectors, axis=1), vectors[:, 2]


def _project(facets: Facets, camera: Camera) -> tuple[Indices, NDArray[np.object_], Array]:
    corners = camera.screen(facets.points)[facets.triangles]
    facing = np.flatnonzero(_towards(facets, camera))
    order = np.argsort(facets.facet_of, kind="stable")
    bounds = np.searchsorted(facets.facet_of[order], np.arange(len(facets.normals) + 1))
    outlines = np.empty(len(facing), dtype=object)
    planes = np.empty((len(facing), 3))
    for number, facet in enumerate(facing):
        mine = corners[order[bounds[facet] : bounds[facet + 1]]]
        triangles = shapely.polygons(mine[:, :, :2])
        sound = shapely.area(triangles) > GRID**2
        outlines[number] = shapely.union_all(triangles[sound])
        vectors = np.cross(mine[:, 1] - mine[:, 0], mine[:, 2] - mine[:, 0]).sum(axis=0)
        slope = -vectors[:2] / vectors[2]
        middle = mine.reshape(-1, 3).mean(axis=0)
        planes[number] = (*slope, middle[2] - slope @ middle[:2])
    return facing, outlines, planes


def _overlapping(outlines: NDArray[np.object_]) -> tuple[Indices, Indices]:
    """Pairs of different outlines whose boxes meet, both ways round."""
    first, second = shapely.STRtree(outlines).query(outlines)
    apart = first != second
    return first[apart], second[apart]


def _surfaces(shapes: NDArray[np.object_]) -> tuple[NDArray[np.object_], Indices]:
    """The polygons among the parts of some shapes, and which shape each belongs to."""
    parts, owner = shapely.get_parts(shapes, return_index=True)
    solid = shapely.area(parts) > LEAST_BREADTH / 2 * shapely.length(parts)
    return parts[solid], owner[solid]


def _half_plane(overlap: shapely.Geometry, ahead: Array) -> shapely.Geometry:
    """A rectangle over the side of the line ``ahead . (x, y, 1) = 0`` where it is positive."""
    slope = np.linalg.norm(ahead[:2])
    normal = ahead[:2] / slope
    low_x, low_y, high_x, high_y = shapely.bounds(overlap)
    centre = np.array([low_x + high_x, low_y + high_y]) / 2
    reach = high_x - low_x + high_y - low_y
    foot = centre - normal * (centre @ normal + ahead[2] / slope)
    along = np.array([-normal[1], normal[0]]) * reach
    deep = normal * (reach + abs(float((centre - foot) @ normal)))
    return shapely.polygons([foot - along, foot + along, foot + along + deep, foot - along + deep])


def _nearer_only(spans: Array, gap: Array) -> Array:
    """Cut spans (k, 2) down to where the gap, linear from end to end, is above ``NEARER``."""
    with np.errstate(divide="ignore", invalid="ignore"):
        share = (NEARER - gap[:, 0]) / (gap[:, 1] - gap[:, 0])
    crossing = spans[:, 0] + share * (spans[:, 1] - spans[:, 0])
    near = gap > NEARER
    low = np.where(near[:, 0], spans[:, 0], np.where(near[:, 1], crossing, spans[:, 1]))
    high = np.where(near[:, 1], spans[:, 1], np.where(near[:, 0], crossing, spans[:, 1]))
    return np.column_stack([low, high])


def _stretches(
    segments: Array, edges: Indices, hidden: dict[int, list[tuple[float, float]]]
) -> tuple[Lines, Lines]:
    shown: list[tuple[int, float, float]] = []
    covered: list[tuple[int, float, float]] = []
    lengths = np.linalg.norm(segments[:, 1, :2] - segments[:, 0, :2], axis=1)
    for number, length in enumerate(lengths.tolist()):
        least = LEAST_LENGTH / length
        at = 0.0
        for low, high in merged(hidden.get(number, []), least):
            if low - at > least:
                shown.append((number, at, low))
            covered.append((number, low, high))
            at = high
        if 1.0 - at > least:
            shown.append((number, at, 1.0))
    return _cut(segments, edges, shown), _cut(segments, edges, covered)


def merged(spans: list[tuple[float, float]], least: float) -> list[tuple[float, float]]:
    """Spans in order, those that overlap or lie within ``least`` of each other made one."""
    joined: list[tuple[float, float]] = []
    for low, high in sorted(spans):
        if joined and low <= joined[-1][1] + least:
            joined[-1] = (joined[-1][0], max(joined[-1][1], high))
        else:
            joined.append((low, high))
    return joined


def _cut(segments: Array, edges: Indices, pieces: list[tuple[int, float, float]]) -> Lines:
    number = np.array([piece[0] for piece in pieces], dtype=np.int64)
    spans = np.array([piece[1:] for piece in pieces]).reshape(-1, 2, 1)
    start = segments[number, 0, :2][:, None, :]
    along = segments[number, 1, :2][:, None, :] - start
    return Lines(start + spans * along, edges[number])
