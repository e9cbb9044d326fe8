"""Soft light: how brightly each point of a scene is lit.

The light is a bright dome with a broad lamp up to the left, over a pale floor that throws
some of it back.  The dome is cut into directions; a point gets the light of those that no
facet stands in the way of, by a depth map seen from each direction.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import Vector
from rodwright.pictures.camera import BLOCK, Array, looking_from
from rodwright.pictures.facets import Facets, Indices
from rodwright.pictures.raster import Raster, ends

Shades = NDArray[np.float32]

DOME = 64
"""Directions the whole round is cut into."""
LAMP: Vector = (-0.40, -0.55, 0.95)
"""Towards the middle of the lamp, unit frame."""
LAMP_SPREAD = np.radians(15.0)
LAMP_SAMPLES = 16
LAMP_STRENGTH = 1.0
"""Irradiance of the whole lamp beside that of the open dome, which is about 1 on the floor."""
FLOOR_RETURN = 0.45
"""Brightness of the floor's light from below, beside the dome's from above."""
SHARES = 4
"""Each point gets one ray in so many; its neighbours get the others (see ``Light``)."""
MAP_PIXELS = 384
MAP_SIZE = (MAP_PIXELS, MAP_PIXELS)
LEAST_SHADING = 3e-4
"""Smaller facets throw no shadows: their area as a share of the square of the scene's radius,
about ten pixels of a depth map."""
OFFSET = 0.0055
"""How far points are lifted off their facets before looking for light, as a share of the
scene's radius: enough to cover a depth map's pixels."""


@dataclass(frozen=True, slots=True)
class Ray:
    """Light from one direction: the unit vector towards it, and its strength."""

    towards: Vector
    strength: float


@cache
def rays() -> tuple[Ray, ...]:
    """All the light there is; the open floor's irradiance is ``floor_irradiance``."""
    golden = np.pi * (3.0 - np.sqrt(5.0))
    number = np.arange(DOME)
    z = 1.0 - (2.0 * number + 1.0) / DOME
    across = np.sqrt(1.0 - z * z)
    found = []
    for height, radius, angle in zip(z, across, golden * number, strict=True):
        x, y = radius * np.cos(angle), radius * np.sin(angle)
        brightness = 1.0 - 0.25 * y if height > 0 else FLOOR_RETURN
        # Equal shares of the round, so that an open dome of brightness 1 gives 1 on the floor.
        found.append(Ray((float(x), float(y), float(height)), float(brightness * 4.0 / DOME)))
    middle = looking_from(LAMP)
    for i in range(LAMP_SAMPLES):
        reach = LAMP_SPREAD * np.sqrt((i + 0.5) / LAMP_SAMPLES)
        x, y = reach * np.cos(golden * i), reach * np.sin(golden * i)
        aim = np.array(middle.towards) + x * np.array(middle.right) + y * np.array(middle.up)
        aim /= np.linalg.norm(aim)
        towards = (float(aim[0]), float(aim[1]), float(aim[2]))
        found.append(Ray(towards, LAMP_STRENGTH / LAMP_SAMPLES))
    return tuple(found)


def floor_irradiance() -> float:
    """What reaches the open floor."""
    return _on_floor(rays())


class Light:
    """The light in a scene: how much reaches any of its points."""

    def __init__(self, facets: Facets, raster: Raster) -> None:
        """Bring the facets before a raster, but for mouths of holes and what is too small to
        shade anything that shows."""
        low, high = facets.points.min(axis=0), facets.points.max(axis=0)
        self._middle, self._raster = (low + high) / 2, raster
        # A little more than what there is, so that the borders of maps are free.
        self._radius = 0.51 * float(np.linalg.norm(high - low))
        corners = facets.points[facets.triangles]
        vectors = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        areas = np.bincount(facets.facet_of, np.linalg.norm(vectors, axis=1) / 2)
        shading = ~facets.mouths & (areas > LEAST_SHADING * self._radius**2)
        used, triangles = np.unique(facets.triangles[shading[facets.facet_of]], return_inverse=True)
        raster.load(facets.points[used] - self._middle, triangles.reshape(-1, 3))

    def reaching(self, points: Array, facing: Indices, normals: Array, share: Indices) -> Shades:
        """How much light reaches points (n, 3) that lie on surfaces ``facing`` (n,), which number
        the unit ``normals`` (k, 3); unit frame, mm.

        ``share`` (n,), 0 to ``SHARES`` - 1, says which of the rays each point is tried with; the
        mean over neighbours with different shares is what they really get.
        """
        # Points of a surface, and surfaces that face alike, lie next to each other: whether they
        # are turned to a ray is then asked once for all of them.
        ways, way = np.unique(np.round(normals, 3), axis=0, return_inverse=True)
        order = np.lexsort((way[facing], share))
        lifted = points[order] - self._middle + OFFSET * self._radius * normals[facing[order]]
        at = np.ascontiguousarray(lifted.T, dtype=np.float32)
        key = (share * len(ways) + way[facing])[order]
        bounds = np.searchsorted(key, np.arange(SHARES * len(ways) + 1)).tolist()
        light = np.zeros(len(points), dtype=np.float32)
        everything = rays()
        for number in range(SHARES):
            chosen = everything[number::SHARES]
            # Every share is brought to the same light on the open floor.
            brought = floor_irradiance() / _on_floor(chosen)
            starts = bounds[number * len(ways) : (number + 1) * len(ways) + 1]
            for ray in chosen:
                slopes = ways @ np.array(ray.towards)
                towards = np.flatnonzero(slopes > 1e-3).tolist()
                turned = [
                    (i, starts[i], starts[i + 1]) for i in towards if starts[i] < starts[i + 1]
                ]
                if turned:
                    self._add(ray, brought * ray.strength, at, slopes, turned, light)
        answer = np.empty_like(light)
        answer[order] = light
        return answer

    def _add(
        self,
        ray: Ray,
        strength: float,
        at: Shades,
        slopes: Array,
        turned: list[tuple[int, int, int]],
        light: Shades,
    ) -> None:
        """Add one ray's light to the points of the surfaces turned to it."""
        radius, camera = self._radius, looking_from(ray.towards)
        window, reach = (-radius, -radius, radius, radius), (-radius, radius)
        shares = self._raster.draw(camera, window, reach, MAP_SIZE).ravel()
        # Columns and rows of the map, and the share of the way through it.
        near, far = ends(reach)
        per_mm, deep = MAP_PIXELS / (2 * radius), 1.0 / (near - far)
        axes = camera.axes() * np.array([[per_mm], [per_mm], [-deep]])
        axes = axes.astype(np.float32)
        for start, stop, each in _runs(turned):
            across, up, behind = axes @ at[:, start:stop]
            for pixel in (across, up):
                pixel += np.float32(MAP_PIXELS / 2)
                np.clip(pixel, 0, MAP_PIXELS - 1, out=pixel)
            place = up.astype(np.int32)
            place *= MAP_PIXELS
            place += across.astype(np.int32)
            behind += np.float32(near * deep)
            # What lies beyond the far end is lit where nothing else is.
            np.minimum(behind, 1.0, out=behind)
            lit = behind <= shares.take(place)
            for way, low, high in each:
                here = slice(low - start, high - start)
                light[low:high] += lit[here] * np.float32(slopes[way] * strength)


def _runs(
    turned: list[tuple[int, int, int]],
) -> Iterator[tuple[int, int, list[tuple[int, int, int]]]]:
    """Stretches (number, start, stop) that follow each other gathered, ``BLOCK`` points at most,
    with start and stop."""
    run: list[tuple[int, int, int]] = []
    for way, start, stop in turned:
        if run and run[-1][2] != start:
            yield run[0][1], run[-1][2], run
            run = []
        while stop > start:
            room = BLOCK - (start - run[0][1] if run else 0)
            run.append((way, start, min(stop, start + room)))
            start = run[-1][2]
            if start < stop or room <= 0:
                yield run[0][1], run[-1][2], run
                run = []
    if run:
        yield run[0][1], run[-1][2], run


def _on_floor(some: Sequence[Ray]) -> float:
    return sum(ray.strength * max(0.0, ray.towards[2]) for ray in some)
