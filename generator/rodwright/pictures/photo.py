"""A picture of placed parts in soft light, on a white floor, pixel by pixel."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PIL import Image
from scipy.ndimage import gaussian_filter

from rodwright.pictures.bodies import Body
from rodwright.pictures.camera import Array
from rodwright.pictures.colours import MOUTH_SHADE, film, linear
from rodwright.pictures.facets import Indices
from rodwright.pictures.grain import wood
from rodwright.pictures.light import Light, Shades, floor_irradiance
from rodwright.pictures.raster import Raster
from rodwright.pictures.stage import Sight, Stage
from rodwright.unit import Grain

Numbers = NDArray[np.int32]

COARSE = 2
"""Light is worked out for every so many pixels each way, and spread over its facets."""
SMOOTHING = 4
"""Light is evened out over so many coarse pixels each way, within a facet."""
FLOOR_FADE = 0.22
"""The floor's shadows fade out over this share of the picture, towards its border."""
SOFTNESS = 16.0
"""The floor's shadows are softened by this much, in pixels."""
BAND = 64
"""Colours are worked out for so many rows at a time, which a processor's own memory holds."""
TINT = np.array([0.75, 1.0, 1.35], dtype=np.float32)
"""Darker figure is a little redder than pale wood: how much of it red, green and blue get."""


@dataclass(frozen=True, eq=False, slots=True)
class Lit:
    """The light on what every coarse pixel shows: ``light`` and ``facet`` (-1: the floor)."""

    light: Shades
    facet: Numbers

    def at(self, pixels: Array, facets: Indices) -> Shades:
        """The light at places of the page (n, 2) on facets that show there, or near by."""
        height, width = self.facet.shape
        column = np.clip(pixels[:, 0] / COARSE, 0, width - 1).astype(int)
        row = np.clip(pixels[:, 1] / COARSE, 0, height - 1).astype(int)
        count = int(max(facets.max(initial=0), self.facet.max(initial=0))) + 2
        number = self.facet.ravel() + 1
        total = np.bincount(number, weights=self.light.ravel(), minlength=count)
        mean = total / np.maximum(np.bincount(number, minlength=count), 1)
        there = self.facet[row, column] == facets
        known = np.isin(facets + 1, number)
        # A facet too narrow for any coarse pixel takes the light of what is there.
        rest = np.where(known, mean[facets + 1], self.light[row, column])
        return np.where(there, self.light[row, column], rest).astype(np.float32)


def light_up(stage: Stage, sight: Sight, raster: Raster) -> Lit:
    """The light on what a stage's camera sees, be it a facet or the floor."""
    facets, camera = stage.facets, stage.camera
    shown, depth = sight.shown[::COARSE, ::COARSE], sight.depth[::COARSE, ::COARSE]
    solid = shown >= 0
    row, column = np.nonzero(solid)
    places = _on_screen(stage, row * COARSE, column * COARSE)
    points = camera.unit(np.column_stack([places, depth[solid]]))
    # Where nothing stands, the line of sight is carried on to the floor, if it goes there.  The
    # floor is smooth: one block of pixels in four is enough.
    height, width = shown.shape
    low = _on_screen(stage, np.arange(height) * COARSE, np.zeros(height, dtype=np.int64))
    falling = camera.sights(low)[:, 2] < -1e-6
    block = (np.arange(height) // 2 % 2 == 0)[:, None] & (np.arange(width) // 2 % 2 == 0)
    floor = ~solid & falling[:, None] & block
    floor_row, floor_column = np.nonzero(floor)
    places = _on_screen(stage, floor_row * COARSE, floor_column * COARSE)
    ground = camera.unit(np.column_stack([places, np.zeros(len(places))]))
    sights = camera.sights(places)
    fall = (float(facets.points[:, 2].min()) - ground[:, 2]) / sights[:, 2]
    ground += sights * fall[:, None]
    row, column = np.concatenate([row, floor_row]), np.concatenate([column, floor_column])
    reaching = Light(facets, raster).reaching(
        np.concatenate([points, ground]),
        np.concatenate([shown[solid], np.full(len(ground), len(facets.normals))]),
        np.concatenate([facets.normals, [[0.0, 0.0, 1.0]]]),
        2 * (row % 2) + column % 2,
    )
    light, weight = np.zeros((2, height, width), dtype=np.float32)
    light[row, column], weight[row, column] = reaching, 1.0
    for axis in (0, 1):
        light, weight = _evened(light, weight, shown, axis)
    sky = ~solid & ~falling[:, None]
    light = np.where(sky, np.float32(floor_irradiance()), light / np.maximum(weight, 1e-6))
    return Lit(light, shown)


def photograph(stage: Stage, sight: Sight, lit: Lit, floor: float) -> Image.Image:
    """What the camera sees, a pixel to the page's unit (which must be even both ways).

    The parts stand, or float, over a floor at their lowest point; ``floor`` is how strongly
    its shadows are shown, 1 being true to the light.
    """
    height = len(sight.shown)
    picture = np.empty((*sight.shown.shape, 3), dtype=np.uint8)
    picture[...] = _floor(lit, stage.page, floor)[..., None]
    paint = _Paint(stage)
    for top in range(0, height, BAND):
        rows = slice(top, min(top + BAND, height))
        shown = sight.shown[rows]
        row, column = np.nonzero(shown >= 0)
        facet, deep = shown[row, column], sight.depth[rows][row, column]
        places = _on_screen(stage, row + top, column).astype(np.float32)
        light = _spread(lit, row + top, column, facet)
        picture[rows][row, column] = film(paint.colours(facet, places, deep), light)
    return Image.fromarray(picture)


def _on_screen(stage: Stage, row: Indices, column: Indices) -> Array:
    """The middles of pixels on the screen, (n, 2)."""
    x = stage.window[0] + (column + 0.5) / stage.scale
    y = stage.window[3] - (row + 0.5) / stage.scale
    return np.column_stack([x, y])


def _evened(light: Shades, weight: Shades, shown: Numbers, axis: int) -> tuple[Shades, Shades]:
    """Light and its weight summed along columns or rows over pixels that show one facet."""
    total, count = light.copy(), weight.copy()
    length = light.shape[axis]
    for step in range(1, SMOOTHING + 1):
        ahead = tuple(slice(step, None) if i == axis else slice(None) for i in (0, 1))
        back = tuple(slice(0, length - step) if i == axis else slice(None) for i in (0, 1))
        # The window is even, so that every share of the light weighs the same.
        same = (shown[ahead] == shown[back]) * np.float32(0.5 if step == SMOOTHING else 1.0)
        total[ahead] += same * light[back]
        total[back] += same * light[ahead]
        count[ahead] += same * weight[back]
        count[back] += same * weight[ahead]
    return total, count


def _spread(lit: Lit, row: Indices, column: Indices, facet: Numbers) -> Shades:
    """Coarse light at fine pixels, taken only from coarse pixels of the same facet."""
    height, width = lit.facet.shape
    total = np.zeros(len(facet), dtype=np.float32)
    weight = np.full(len(facet), 1e-6, dtype=np.float32)
    top, left = row // COARSE, column // COARSE
    below, beside = ((each % COARSE).astype(np.float32) / COARSE for each in (row, column))
    for down in (0, 1):
        for right in (0, 1):
            place = np.minimum(top + down, height - 1) * width + np.minimum(left + right, width - 1)
            share = np.abs(1 - down - below) * np.abs(1 - right - beside)
            # A trace of weight for other facets, where no coarse pixel shows this one.
            share *= np.where(lit.facet.take(place) == facet, np.float32(1), np.float32(1e-4))
            total += share * lit.light.take(place)
            weight += share
    return total / weight


class _Paint:
    """The own colours of what a stage shows."""

    def __init__(self, stage: Stage) -> None:
        self._facets, self._pixel = stage.facets, 1.0 / stage.scale
        bodies, camera = stage.bodies, stage.camera
        self._distance = camera.distance
        self._plain = np.array([linear(body.colour) for body in bodies], dtype=np.float32)
        figured = [body.grain is not Grain.NONE for body in bodies]
        self._figured = np.array(figured, dtype=np.float32)
        # Places along and across the grain, as sums of an offset and shares of screen places.
        views = np.array([camera.right, camera.up, camera.towards])
        self._along, self._across = (
            np.array(
                [
                    _seen(axis, body, seed, views, camera.target)
                    for seed, (body, axis) in enumerate(zip(bodies, axes, strict=True))
                ],
                dtype=np.float32,
            )
            for axes in zip(*map(_grain_axes, bodies), strict=True)
        )

    def colours(self, facet: Numbers, places: Shades, depth: Shades) -> Shades:
        """Linear colours (n, 3) at screen places (n, 2) and depths of facets."""
        body = self._facets.body_of[facet]
        x, y, z = places[:, 0], places[:, 1], depth
        if self._distance is not None:
            nearer = 1.0 / (depth / self._distance + 1.0)
            x, y, z = x * nearer, y * nearer, self._distance * (1.0 - nearer)
        along, across = (
            table[0] + table[1] * x + table[2] * y + table[3] * z
            for table in (self._along[body].T, self._across[body].T)
        )
        figure = self._figured[body] * (wood(along, across, self._pixel) - 1.0)
        colours = figure[:, None] * TINT
        colours += 1.0
        colours *= self._plain[body]
        colours[self._facets.mouths[facet]] *= MOUTH_SHADE
        return np.asarray(colours, dtype=np.float32)


def _grain_axes(body: Body) -> tuple[Array, Array]:
    """Directions along and across the grain in the body's own frame."""
    along, across, through = np.eye(3)
    if body.grain is Grain.CROSSWISE:
        along, across = across, along
    return along, across + 0.7 * through


def _seen(axis: Array, body: Body, seed: int, views: Array, target: Sequence[float]) -> list[float]:
    """How far along a body's own axis: at the camera's target, and a mm along each view axis."""
    turned = body.matrix[:3, :3] @ axis
    start = turned @ (np.array(target) - body.matrix[:3, 3]) + seed * (
        377.1 if axis[2] == 0 else 91.7
    )
    return [start, *(views @ turned)]


def _floor(lit: Lit, size: tuple[int, int], strength: float) -> NDArray[np.uint8]:
    """The floor's grey, white where nothing shades it and towards the picture's border."""
    # The floor is smooth: one coarse pixel in sixteen is enough.
    light = lit.light[::4, ::4]
    free = (lit.facet[::4, ::4] < 0).astype(np.float32)
    dark = strength * (1.0 - np.clip(light / floor_irradiance(), 0.0, 1.0)) * free
    soft, weight = (gaussian_filter(layer, SOFTNESS / (4 * COARSE)) for layer in (dark, free))
    width, height = size
    shade = soft / np.maximum(weight, 1e-3)
    grown = np.asarray(Image.fromarray(shade).resize(size, Image.Resampling.BICUBIC))
    margin = np.float32(FLOOR_FADE * min(size))
    fades = [
        np.clip(np.minimum(along, length - along) / margin - 0.1, 0.0, 1.0).astype(np.float32)
        for along, length in ((np.arange(width) + 0.5, width), (np.arange(height) + 0.5, height))
    ]
    across, down = (fade * fade * (3.0 - 2.0 * fade) for fade in fades)
    shaded = np.outer(down, across)
    shaded *= grown
    shaded *= -255.0
    shaded += 255.5
    return shaded.astype(np.uint8)
