"""A stage as a drawing: areas in flat colours, edges, and the floor's shadow."""

from __future__ import annotations

from itertools import product

import numpy as np
import shapely
from numpy.typing import NDArray

from rodwright.geometry import Vector
from rodwright.pictures.bodies import Body
from rodwright.pictures.camera import Array
from rodwright.pictures.colours import MOUTH_SHADE, flat_colour
from rodwright.pictures.hidden import lines
from rodwright.pictures.ink import DARK, Fill, Point, Stroke
from rodwright.pictures.light import LAMP_SAMPLES, rays
from rodwright.pictures.pens import thinned
from rodwright.pictures.photo import Lit
from rodwright.pictures.stage import Sight, Stage
from rodwright.pictures.visible import mouth_lines

CONTOUR, CREASE = 2.6, 1.5
"""Widths of lines around a part and within it, page units."""
FINEST = 0.7
"""The finest pen, for lines close beside each other."""
BESIDE = 2.5
"""So far (page units) from a line it is looked which parts show on either side."""
SHADOW_OPACITY = 0.0135
"""Darkness of the floor's shadow in drawings, for each ray of the lamp."""


def edge_marks(stage: Stage, sight: Sight) -> tuple[Stroke, ...]:
    """The visible edges: fine within a part, stronger around it."""
    shapes = [stage.bodies[number].placed_solid() for number in sight.showing.tolist()]
    shown, _ = lines(shapes, stage.camera, hidden=False)
    mouths = mouth_lines(stage.facets, stage.camera)
    ends = stage.on_page(np.concatenate([shown, mouths]))
    around = np.concatenate(
        [_around(stage, sight, ends[: len(shown)]), np.zeros(len(mouths), bool)]
    )
    marks = [
        Stroke(_lines(pieces), pen, DARK)
        for chosen, width in ((~around, CREASE), (around, CONTOUR))
        for pen, pieces in thinned(ends[chosen], width, FINEST, ends[~chosen]).items()
    ]
    return tuple(marks)


def _around(stage: Stage, sight: Sight, ends: Array) -> NDArray[np.bool_]:
    """Which lines (m,) lie between two parts, or a part and the floor, along most of them."""
    body = np.append(stage.facets.body_of, -1)[sight.shown]
    along = ends[:, 1] - ends[:, 0]
    across = np.column_stack([-along[:, 1], along[:, 0]])
    across *= BESIDE / np.maximum(np.linalg.norm(across, axis=1, keepdims=True), 1e-9)
    differ = np.zeros(len(ends), dtype=np.int64)
    shares = (0.2, 0.35, 0.5, 0.65, 0.8)
    for share in shares:
        at = ends[:, 0] + share * along
        sides = []
        for side in (at + across, at - across):
            column, row = np.clip(side, 0, np.array(stage.page) - 1).astype(int).T
            sides.append(body[row, column])
        differ += sides[0] != sides[1]
    return np.asarray(2 * differ > len(shares))


def area_marks(stage: Stage, sight: Sight, lit: Lit) -> tuple[Fill, ...]:
    """The visible areas in flat colours, those of one part and colour together.

    Each separate area gets the light at its middle.
    """
    areas, number = shapely.get_parts(sight.seen.areas, return_index=True)
    circles = shapely.maximum_inscribed_circle(areas, tolerance=2.0)
    middles = stage.on_page(shapely.get_coordinates(shapely.get_point(circles, 0)))
    facet = sight.seen.facing[number]
    light = lit.at(middles, facet)
    shade = np.where(stage.facets.mouths[facet], MOUTH_SHADE, 1.0).tolist()
    gathered: dict[tuple[int, str], list[tuple[Point, ...]]] = {}
    owners = stage.facets.body_of[facet].tolist()
    for area, owner, bright, dark in zip(areas, owners, light.tolist(), shade, strict=True):
        colour = flat_colour(stage.bodies[owner].colour, bright, dark)
        gathered.setdefault((owner, colour), []).extend(_rings(stage, area))
    return tuple(Fill(tuple(rings), colour) for (_, colour), rings in gathered.items())


def shadow_marks(stage: Stage, strength: float) -> tuple[Fill, ...]:
    """The floor's shadow, one pale area for each ray of the lamp."""
    corners = np.stack([_corners(body) for body in stage.bodies])
    floor = float(stage.facets.points[:, 2].min())
    return tuple(
        Fill(
            tuple(_rings(stage, _shadow(stage, corners, floor, ray.towards))),
            "#000000",
            SHADOW_OPACITY * strength,
        )
        for ray in rays()[-LAMP_SAMPLES:]
    )


def _corners(body: Body) -> Array:
    """The corners, (8, 3), of the box that a body fills, where it stands."""
    points = body.facets.points
    extent = points.min(axis=0), points.max(axis=0)
    corners = [
        [extent[high][i] for i, high in enumerate(corner)] for corner in product((0, 1), repeat=3)
    ]
    return np.asarray(np.array(corners) @ body.matrix[:3, :3].T + body.matrix[:3, 3])


def _shadow(stage: Stage, corners: Array, floor: float, towards: Vector) -> shapely.Geometry:
    """A ray's shadow on the floor, screen coordinates; each part throws that of its box."""
    fall = (corners[..., 2:] - floor) / towards[2]
    on_floor = stage.camera.screen((corners - fall * np.array(towards)).reshape(-1, 3))
    owner = np.repeat(np.arange(len(corners)), 8)
    hulls = shapely.convex_hull(shapely.multipoints(on_floor[:, :2], indices=owner))
    return shapely.clip_by_rect(shapely.union_all(hulls), *stage.window)


def _lines(ends: Array) -> tuple[tuple[Point, ...], ...]:
    return tuple(((ax, ay), (bx, by)) for (ax, ay), (bx, by) in ends.tolist())


def _rings(stage: Stage, shape: shapely.Geometry) -> list[tuple[Point, ...]]:
    rings = shapely.get_rings(shapely.get_parts(shape))
    return [
        tuple((x, y) for x, y in stage.on_page(shapely.get_coordinates(ring)[:-1]).tolist())
        for ring in rings
    ]
