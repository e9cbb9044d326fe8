"""A unit's parts, moved or in place, before a camera: what the pictures are made of."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import product

import numpy as np
import shapely

from rodwright.meshes import mesh_of
from rodwright.parts import Box, Hole, Part, ShapeKey, Unit, Vector
from rodwright.pictures.camera import Array, Camera, three_quarter
from rodwright.pictures.colours import MOUTH_SHADE, flat_colour
from rodwright.pictures.facets import Facets, as_one, facets_of, mouth, place
from rodwright.pictures.ink import DARK, Fill, Point, Stroke
from rodwright.pictures.light import LAMP_SAMPLES, light_among_boxes, rays
from rodwright.pictures.raster import Window
from rodwright.pictures.tags import Anchor, Frame
from rodwright.pictures.visible import Lines, Seen, contours, edges_shown, see, split

CONTOUR, CREASE = 2.6, 1.5
"""Widths of lines around a part and within it, page units."""
SMALL_HOLE = 15.0
"""Holes up to this diameter (mm) are pictured by their mouths alone: hundreds of drilled
walls would cost much time and show little."""
STAIR = 12
"""A slanting part is lit in drawings as if it were a stair of so many boxes."""
SHADOW_OPACITY = 0.009
"""Darkness of the floor's shadow in drawings, for each ray of the lamp."""


@dataclass(frozen=True, eq=False, slots=True)
class Stage:
    """Parts moved by ``moves`` (n, 3) mm, their facets, and the camera before them.

    ``window`` is the part of the screen that the page, ``page`` wide and high, shows.
    """

    parts: tuple[Part, ...]
    moves: Array
    facets: Facets
    camera: Camera
    window: Window
    page: tuple[int, int]

    def on_page(self, screen: Array) -> Array:
        """Screen coordinates (..., 2) in page coordinates."""
        scale = self.page[0] / (self.window[2] - self.window[0])
        return (screen - (self.window[0], self.window[3])) * (scale, -scale)


@lru_cache(maxsize=4096)
def body_of(shape: ShapeKey) -> Facets:
    """A shape's facets, part frame; small holes are no more than their mouths."""
    size, workings = shape
    small = [w for w in workings if isinstance(w, Hole) and w.diameter <= SMALL_HOLE]
    rest = tuple(working for working in workings if working not in small)
    body = facets_of(mesh_of((size, rest)))
    if not small:
        return body
    return as_one([body, *(each for hole in small for each in _mouths(hole, size))])


def _mouths(hole: Hole, size: Vector) -> Iterator[Facets]:
    axis = hole.surface.axis
    through = hole.depth is None or hole.depth >= size[axis]
    for at_high in (False, True) if through else (hole.surface.at_high,):
        centre, normal = list(hole.position), [0.0, 0.0, 0.0]
        centre.insert(axis, size[axis] if at_high else 0.0)
        normal[axis] = 1.0 if at_high else -1.0
        yield mouth(
            (centre[0], centre[1], centre[2]), (normal[0], normal[1], normal[2]), hole.diameter
        )


def placed(unit: Unit, moves: Mapping[str, Vector]) -> Facets:
    """The facets of a unit's parts, in their order, each moved if ``moves`` says so."""
    bodies = []
    for part in unit.parts:
        matrix = np.array(part.placement.matrix())
        matrix[:3, 3] += moves.get(part.ref, (0.0, 0.0, 0.0))
        bodies.append((body_of(part.shape), matrix))
    return place(bodies)


def set_stage(
    unit: Unit, moves: Mapping[str, Vector], page: tuple[int, int], frame: Frame
) -> Stage:
    """A unit before a camera, as large as fits into a frame on the page."""
    facets = placed(unit, moves)
    low, high = facets.points.min(axis=0).tolist(), facets.points.max(axis=0).tolist()
    camera = three_quarter(Box((low[0], low[1], low[2]), (high[0], high[1], high[2])))
    screen = camera.screen(facets.points)[:, :2]
    low, high = screen.min(axis=0), screen.max(axis=0)
    scale = max((high - low) / (frame.right - frame.left, frame.bottom - frame.top))
    x, y = (low + high) / 2
    left = x - scale * (frame.left + frame.right) / 2
    top = y + scale * (frame.top + frame.bottom) / 2
    window = (left, top - scale * page[1], left + scale * page[0], top)
    offsets = np.array([moves.get(part.ref, (0.0, 0.0, 0.0)) for part in unit.parts])
    return Stage(unit.parts, offsets, facets, camera, window, page)


def look(stage: Stage) -> Seen:
    """What shows of every facet."""
    return see(stage.facets, stage.camera)


def edge_marks(stage: Stage, seen: Seen) -> tuple[Stroke, ...]:
    """The visible edges: fine within a part, stronger around it."""
    shown, _ = split(stage.facets, stage.camera, seen, edges_shown(stage.facets, stage.camera))
    around = contours(stage.facets, stage.camera)[shown.edge]
    return tuple(
        Stroke(_lines(stage, Lines(shown.ends[chosen], shown.edge[chosen])), width, DARK)
        for chosen, width in ((~around, CREASE), (around, CONTOUR))
        if chosen.any()
    )


def area_marks(stage: Stage, seen: Seen) -> tuple[Fill, ...]:
    """The visible areas in flat colours, those of one part and colour together.

    Each separate area gets the light at its middle.
    """
    areas, number = shapely.get_parts(seen.areas, return_index=True)
    circles = shapely.maximum_inscribed_circle(areas, tolerance=1.0)
    middles = shapely.get_coordinates(shapely.get_point(circles, 0))
    planes = seen.planes[number]
    depth = np.einsum("ij,ij->i", middles, planes[:, :2]) + planes[:, 2]
    facet = seen.facing[number]
    body = stage.facets.body_of[facet]
    boxes = [(box, number) for number, part in enumerate(stage.parts) for box in _boxes_round(part)]
    bodies = np.array([number for _, number in boxes])
    light = light_among_boxes(
        stage.camera.unit(np.column_stack([middles, depth])),
        stage.facets.normals[facet],
        body,
        np.array([box.low for box, _ in boxes]) + stage.moves[bodies],
        np.array([box.high for box, _ in boxes]) + stage.moves[bodies],
        bodies,
    )
    gathered: dict[tuple[int, str], list[tuple[Point, ...]]] = {}
    shade = np.where(stage.facets.mouths[facet], MOUTH_SHADE, 1.0).tolist()
    for area, owner, lit, dark in zip(areas, body.tolist(), light.tolist(), shade, strict=True):
        colour = flat_colour(stage.parts[owner].blank.stock.colour, lit, dark)
        gathered.setdefault((owner, colour), []).extend(_rings(stage, area))
    return tuple(Fill(tuple(rings), colour) for (_, colour), rings in gathered.items())


def _boxes_round(part: Part) -> Iterator[Box]:
    """Boxes square to the unit that hold a part: one, or a stair of them round a slanting one."""
    placed, blank = part.placement, part.blank
    axes = (placed.length, placed.width, placed.thickness)
    slanting = [i for i, axis in enumerate(axes) if max(map(abs, axis)) < 1.0 - 1e-9]
    if not slanting:
        yield part.bounds()
        return
    longest = max(slanting, key=lambda axis: blank.size[axis])
    step = blank.size[longest] / STAIR
    for number in range(STAIR):
        corners = []
        for corner in product((False, True), repeat=3):
            point = [size * far for size, far in zip(blank.size, corner, strict=True)]
            point[longest] = step * (number + corner[longest])
            corners.append(placed.to_unit((point[0], point[1], point[2])))
        low, high = ([choose(each) for each in zip(*corners, strict=True)] for choose in (min, max))
        yield Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


def shadow_marks(stage: Stage, strength: float) -> tuple[Fill, ...]:
    """The floor's shadow, one pale area for each ray of the lamp."""
    marks = []
    for ray in rays()[-LAMP_SAMPLES:]:
        rings = _rings(stage, _shadow(stage, ray.towards))
        marks.append(Fill(tuple(rings), "#000000", SHADOW_OPACITY * strength))
    return tuple(marks)


def anchors(
    stage: Stage, seen: Seen, rows: Sequence[tuple[str, tuple[int, ...]]]
) -> tuple[Anchor, ...]:
    """For each row of parts a point on one of them, page coordinates.

    It lies on the largest area that shows of the part, which is the row's first or last that
    shows, whichever is nearer to the page's border.
    """
    best: dict[int, shapely.Geometry] = {}
    for number, facet in enumerate(seen.facing.tolist()):
        body = int(stage.facets.body_of[facet])
        for area in shapely.get_parts(seen.areas[number]):
            if body not in best or area.area > best[body].area:
                best[body] = area
    found = []
    for text, row in rows:
        showing = [number for number in row if number in best]
        if showing:
            ends = [_inside(stage, best[number]) for number in (showing[0], showing[-1])]
            at = min(ends, key=lambda point: min(point[0], stage.page[0] - point[0]))
        else:
            mine = stage.facets.body_of[stage.facets.facet_of] == row[0]
            corners = stage.facets.points[np.unique(stage.facets.triangles[mine])]
            x, y = stage.on_page(stage.camera.screen(corners)[:, :2].mean(axis=0)).tolist()
            at = (x, y)
        found.append(Anchor(text, at, hidden=not showing))
    return tuple(found)


def _inside(stage: Stage, area: shapely.Geometry) -> Point:
    """The middle of the largest circle in an area, page coordinates."""
    circle = shapely.maximum_inscribed_circle(area, tolerance=1.0)
    x, y = stage.on_page(shapely.get_coordinates(circle)[0]).tolist()
    return (x, y)


def _shadow(stage: Stage, towards: Vector) -> shapely.Geometry:
    """A ray's shadow on the floor, screen coordinates; each part throws that of its hull."""
    facets = stage.facets
    fall = (facets.points[:, 2] - facets.points[:, 2].min()) / towards[2]
    on_floor = facets.points - fall[:, None] * np.array(towards)
    body_of = np.zeros(len(on_floor), dtype=np.int64)
    body_of[facets.triangles] = facets.body_of[facets.facet_of][:, None]
    order = np.argsort(body_of, kind="stable")
    hulls = shapely.convex_hull(
        shapely.multipoints(stage.camera.screen(on_floor)[order, :2], indices=body_of[order])
    )
    return shapely.clip_by_rect(shapely.union_all(hulls, grid_size=0.01), *stage.window)


def _lines(stage: Stage, lines: Lines) -> tuple[tuple[Point, ...], ...]:
    return tuple(((ax, ay), (bx, by)) for (ax, ay), (bx, by) in stage.on_page(lines.ends).tolist())


def _rings(stage: Stage, shape: shapely.Geometry) -> list[tuple[Point, ...]]:
    rings = shapely.get_rings(shapely.get_parts(shape))
    return [
        tuple((x, y) for x, y in stage.on_page(shapely.get_coordinates(ring)[:-1]).tolist())
        for ring in rings
    ]
