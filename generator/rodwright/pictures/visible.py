"""What can be seen of flat facets, as exact areas.

Works in screen coordinates (see ``camera``), where a facet's depth is linear in x and y.
A facet loses the parts of its area where another one is nearer.  They are compared through
plane equations, so a facet may be nearer over one part of an overlap and farther over another.
Lines are left to Open CASCADE (see ``hidden``), which knows no areas.
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


@dataclass(frozen=True, eq=False, slots=True)
class Seen:
    """Facets seen by a camera.

    ``facing`` (k,) are the facets turned to the viewer, ``areas`` (k,) what shows of each
    (shapely polygons, some empty), ``outlines`` (k,) the same with nothing in front.
    """

    facing: Indices
    areas: NDArray[np.object_]
    outlines: NDArray[np.object_]


def see(facets: Facets, camera: Camera, among: Indices | None = None) -> Seen:
    """The facets turned to the camera, and what shows of each.

    Where it is known among which facets all those are that show, the others are left out: what
    hides a facet anywhere is hidden itself there or shows.
    """
    facing, outlines, planes = _project(facets, camera, among)
    areas = outlines.copy()
    one, other = _overlapping(outlines)
    overlaps, pair = _surfaces(shapely.intersection(outlines[one], outlines[other]))
    front, behind = np.concatenate([[one[pair], other[pair]], [other[pair], one[pair]]], axis=1)
    overlaps = np.concatenate([overlaps, overlaps])
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
    return Seen(facing, areas, outlines)


def mouth_lines(facets: Facets, camera: Camera) -> Array:
    """The outlines of the mouths of small holes that show, screen coordinates, (m, 2, 2).

    Of a mouth that is partly covered, the stretches whose ends both show.
    """
    corners = camera.screen(facets.points)[facets.triangles]
    facing, _ = _towards(facets, camera)
    rim = np.flatnonzero((facets.mouths & facing)[facets.facet_of])
    if not len(rim):
        return np.empty((0, 2, 2))
    # Every triangle of a fan has two corners next to each other on the rim: its second and third.
    ends = corners[rim][:, 1:]
    first = np.concatenate([[True], np.diff(facets.facet_of[rim]) != 0])
    last = np.concatenate([first[1:], [True]])
    start = corners[rim][:, 0]
    closing = np.concatenate(
        [
            np.stack([start, corners[rim][:, 1]], 1)[first],
            np.stack([corners[rim][:, 2], start], 1)[last],
        ]
    )
    ends = np.concatenate([ends, closing])
    solid = corners[facing[facets.facet_of] & ~facets.mouths[facets.facet_of]]
    triangles = shapely.polygons(solid[:, :, :2])
    point, triangle = shapely.STRtree(triangles).query(
        shapely.points(ends.reshape(-1, 3)[:, :2]), predicate="intersects"
    )
    at, (a, b, c) = ends.reshape(-1, 3)[point], (solid[triangle, i] for i in range(3))
    normal = np.cross(b - a, c - a)
    ahead = np.einsum("ij,ij->i", normal, a - at)
    covered = np.zeros(2 * len(ends), dtype=np.bool_)
    covered[point[ahead > NEARER * normal[:, 2]]] = True
    return np.asarray(ends[~covered.reshape(-1, 2).any(axis=1), :, :2])


def _towards(facets: Facets, camera: Camera) -> tuple[NDArray[np.bool_], Array]:
    """Which facets (f,) are turned to the camera, and the planes (f, 3) they lie in, of which
    those seen edge-on are no use."""
    corners = camera.screen(facets.points)[facets.triangles]
    vectors = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    # Sums over a facet's triangles keep slivers, whose own vectors are poor, from mattering.
    whole, *twice = (
        np.bincount(facets.facet_of, weights=weights, minlength=len(facets.normals))
        for weights in (np.linalg.norm(vectors, axis=1), *vectors.T)
    )
    middle = [
        np.bincount(facets.facet_of, weights=weights, minlength=len(facets.normals))
        / np.bincount(facets.facet_of, minlength=len(facets.normals))
        for weights in corners.mean(axis=1).T
    ]
    with np.errstate(divide="ignore", invalid="ignore"):
        slopes = -twice[0] / twice[2], -twice[1] / twice[2]
        rest = middle[2] - slopes[0] * middle[0] - slopes[1] * middle[1]
    return twice[2] > LEAST_SLOPE * whole, np.column_stack([*slopes, rest])


def _project(
    facets: Facets, camera: Camera, among: Indices | None
) -> tuple[Indices, NDArray[np.object_], Array]:
    towards, planes = _towards(facets, camera)
    facing = np.flatnonzero(towards)
    if among is not None:
        facing = np.intersect1d(facing, among)
    order = np.full(len(facets.normals), -1)
    order[facing] = np.arange(len(facing))
    chosen = [i for i, number in enumerate(order[facets.ring_of].tolist()) if number >= 0]
    points = camera.screen(facets.points)[:, :2]
    corners = np.concatenate([facets.rings[i] for i in chosen])
    lengths = [len(facets.rings[i]) for i in chosen]
    rings = shapely.linearrings(points[corners], indices=np.repeat(np.arange(len(chosen)), lengths))
    return facing, _filled(rings, order[facets.ring_of[chosen]], len(facing)), planes[facing]


def _filled(rings: NDArray[np.object_], owner: Indices, count: int) -> NDArray[np.object_]:
    """What lies within the outer ring of each of ``count`` facets and outside its others."""
    outlines = shapely.polygons(rings)
    several = np.bincount(owner, minlength=count) > 1
    found = np.empty(count, dtype=object)
    found[owner] = outlines
    for number in np.flatnonzero(several).tolist():
        mine = outlines[owner == number]
        outer, *openings = sorted(mine, key=lambda each: -each.area)
        # Openings that touch the outer ring, or each other, are no rings of one polygon.
        found[number] = shapely.difference(outer, shapely.union_all(openings))
    return found


def _overlapping(outlines: NDArray[np.object_]) -> tuple[Indices, Indices]:
    """Pairs of different outlines whose boxes meet."""
    first, second = shapely.STRtree(outlines).query(outlines)
    return first[first < second], second[first < second]


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
