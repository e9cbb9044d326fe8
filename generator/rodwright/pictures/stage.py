"""A unit's parts, moved or in place, before a camera: what the pictures are made of."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from numpy.typing import NDArray

from rodwright.geometry import Box, Vector, vector
from rodwright.pictures.bodies import Body, bodies_of, placed_facets
from rodwright.pictures.camera import Array, Camera, three_quarter
from rodwright.pictures.facets import Facets, Indices
from rodwright.pictures.ink import Point
from rodwright.pictures.raster import Raster, Window
from rodwright.pictures.tags import Anchor, Frame
from rodwright.pictures.visible import Seen, see
from rodwright.unit import Unit
from rodwright.unit.directions import X, Y, Z

BAND = 300
"""A page is looked at in so many rows of pixels at a time: a raster's window keeps the room of
half a dozen pictures."""


@dataclass(frozen=True, eq=False, slots=True)
class Stage:
    """Bodies, their facets where they stand, and the camera before them.

    ``window`` is the part of the screen that the page, ``page`` wide and high, shows.
    """

    bodies: tuple[Body, ...]
    facets: Facets
    camera: Camera
    window: Window
    page: tuple[int, int]

    @property
    def scale(self) -> float:
        """Page units to a mm of the screen."""
        return self.page[0] / (self.window[2] - self.window[0])

    def on_page(self, screen: Array) -> Array:
        """Screen coordinates (..., 2) in page coordinates."""
        return (screen - (self.window[0], self.window[3])) * (self.scale, -self.scale)


@dataclass(frozen=True, eq=False, slots=True)
class Sight:
    """What a stage's camera sees, found once for all that is drawn of it.

    ``shown`` is the facet at each pixel of the page (-1: none), ``depth`` how deep it lies; both
    (h, w).  ``seen`` are the areas of all facets that any pixel shows.
    """

    shown: NDArray[np.int32]
    depth: NDArray[np.float32]
    seen: Seen
    showing: Indices
    """The bodies that show, by number."""


def set_stage(
    unit: Unit,
    moves: Mapping[str, Vector],
    page: tuple[int, int],
    frame: Frame,
    *,
    inner: bool = False,
) -> Stage:
    """A unit before a camera, as large as fits into a frame on the page; with its ``inner``
    fittings if asked for."""
    bodies = bodies_of(unit, moves, inner=inner)
    facets = placed_facets(bodies)
    around = Box(vector(facets.points.min(axis=0)), vector(facets.points.max(axis=0)))
    camera = three_quarter(around)
    screen = camera.screen(facets.points)[:, :2]
    low, high = screen.min(axis=0), screen.max(axis=0)
    scale = max((high - low) / (frame.right - frame.left, frame.bottom - frame.top))
    x, y = (low + high) / 2
    left = x - scale * (frame.left + frame.right) / 2
    top = y + scale * (frame.top + frame.bottom) / 2
    window = (left, top - scale * page[1], left + scale * page[0], top)
    return Stage(bodies, facets, camera, window, page)


def render(stage: Stage, raster: Raster) -> Sight:
    """What shows, pixel by pixel and facet by facet."""
    facets = stage.facets
    screen = stage.camera.screen(facets.points)
    raster.load(screen, facets.triangles, facets.facet_of)
    reach = (float(screen[:, 2].min()), float(screen[:, 2].max()))
    view, (width, height) = Camera((0.0, 0.0, 0.0), X, Y, Z), stage.page
    depth = np.empty((height, width), dtype=np.float32)
    shown = np.empty((height, width), dtype=np.int32)
    left, _, right, high = stage.window
    for top in range(0, height, BAND):
        foot = min(top + BAND, height)
        band = (left, high - foot / stage.scale, right, high - top / stage.scale)
        depth[top:foot] = raster.depths(view, band, reach, (width, foot - top))
        shown[top:foot] = raster.facets()
    count = np.bincount(shown.ravel() + 1, minlength=len(facets.normals) + 1)[1:]
    among = np.flatnonzero(count)
    seen = see(facets, stage.camera, among)
    return Sight(shown, depth, seen, np.unique(facets.body_of[among]))


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
