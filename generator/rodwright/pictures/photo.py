"""A picture of placed parts in soft light, on a white floor, pixel by pixel."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PIL import Image
from scipy.ndimage import gaussian_filter

from rodwright.parts import Grain
from rodwright.pictures.camera import Array
from rodwright.pictures.colours import MOUTH_SHADE, film, linear
from rodwright.pictures.grain import wood
from rodwright.pictures.light import Shades, floor_irradiance, irradiance
from rodwright.pictures.raster import Raster, Window
from rodwright.pictures.stage import Stage

Numbers = NDArray[np.int32]

COARSE = 2
"""Light is worked out for every so many pixels each way, and spread over its facets."""
SMOOTHING = 4
"""Light is evened out over so many coarse pixels each way, within a facet."""
FLOOR_FADE = 0.22
"""The floor's shadows fade out over this share of the picture, towards its border."""


def photograph(stage: Stage, floor: float) -> Image.Image:
    """What the camera sees, a pixel to the page's unit (which must be even both ways).

    The parts stand, or float, over a floor at their lowest point; ``floor`` is how strongly
    its shadows are shown, 1 being true to the light.
    """
    facets, camera, window, size = stage.facets, stage.camera, stage.window, stage.page
    with Raster(facets.triangles, facets.facet_of) as raster:
        shown, depth = raster.draw(camera.screen(facets.points), window, size)
        coarse = shown[::COARSE, ::COARSE]
        light = _light(stage, raster, coarse, depth[::COARSE, ::COARSE])
    solid = shown >= 0
    points = camera.unit(_on_screen(window, size, depth)[solid])
    colours = _colours(stage, points, shown[solid])
    picture = np.empty((*shown.shape, 3), dtype=np.float32)
    picture[...] = _floor(light, coarse, size, floor)[..., None]
    picture[solid] = film(colours, _spread(light, coarse, shown)[solid])
    return Image.fromarray((picture * 255.0 + 0.5).astype(np.uint8))


def _on_screen(window: Window, size: tuple[int, int], depth: Shades) -> Array:
    """Screen coordinates of pixels, (h, w, 3)."""
    width, height = size
    x = window[0] + (np.arange(width) + 0.5) * (window[2] - window[0]) / width
    y = window[3] - (np.arange(height) + 0.5) * (window[3] - window[1]) / height
    return np.dstack([*np.meshgrid(x, y), depth])


def _light(stage: Stage, raster: Raster, shown: Numbers, depth: Shades) -> Shades:
    """The light on what each coarse pixel shows, be it a facet or the floor."""
    facets, camera, window = stage.facets, stage.camera, stage.window
    height, width = shown.shape
    solid = shown >= 0
    screen = _on_screen(window, (width, height), np.where(solid, depth, np.float32(0.0)))
    points = camera.unit(screen.reshape(-1, 3))
    normals = facets.normals[shown.ravel()]
    # Where nothing stands, the line of sight is carried on to the floor.
    free = np.flatnonzero(~solid.ravel())
    sight = camera.unit(screen.reshape(-1, 3)[free] - np.array([0.0, 0.0, 1.0])) - points[free]
    falling = sight[:, 2] < -1e-6
    free, sight = free[falling], sight[falling]
    fall = (float(facets.points[:, 2].min()) - points[free, 2]) / sight[:, 2]
    points[free] += sight * fall[:, None]
    normals[free] = (0.0, 0.0, 1.0)
    row, column = (index.ravel() for index in np.indices(shown.shape))
    known = solid.ravel().copy()
    # The floor is smooth: one block of pixels in four is enough.
    known[free] = (row[free] // 2 % 2 == 0) & (column[free] // 2 % 2 == 0)
    light = np.zeros(width * height, dtype=np.float32)
    light[known] = irradiance(
        facets,
        raster,
        points[known].astype(np.float32),
        normals[known].astype(np.float32),
        (2 * (row % 2) + column % 2)[known],
    )
    reach = np.zeros(width * height, dtype=np.bool_)
    reach[free] = True
    weight = known.astype(np.float32)
    for axis in (0, 1):
        light, weight = _evened(
            light.reshape(shown.shape), weight.reshape(shown.shape), shown, axis
        )
    sky = ~(solid | reach.reshape(shown.shape))
    return np.where(sky, np.float32(floor_irradiance()), light / np.maximum(weight, 1e-6))


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


def _spread(light: Shades, coarse: Numbers, shown: Numbers) -> Shades:
    """Coarse light over fine pixels, taken only from coarse pixels of the same facet."""
    rows, columns = (np.arange(length) / COARSE for length in shown.shape)
    total = np.zeros(shown.shape, dtype=np.float32)
    weight = np.full(shown.shape, 1e-6, dtype=np.float32)
    top, left = np.floor(rows).astype(int), np.floor(columns).astype(int)
    for down in (0, 1):
        for right in (0, 1):
            row = np.minimum(top + down, coarse.shape[0] - 1)
            column = np.minimum(left + right, coarse.shape[1] - 1)
            share = np.outer(
                np.abs(1.0 - down - (rows - top)), np.abs(1.0 - right - (columns - left))
            ).astype(np.float32)
            # A trace of weight for other facets, where no coarse pixel shows this one.
            share *= np.where(coarse[np.ix_(row, column)] == shown, np.float32(1), np.float32(1e-4))
            total += share * light[np.ix_(row, column)]
            weight += share
    return total / weight


def _colours(stage: Stage, points: Array, shown: Numbers) -> Shades:
    """The wood's own colours (n, 3) at points (n, 3) on parts, linear."""
    parts = stage.parts
    pixel = (stage.window[2] - stage.window[0]) / stage.page[0]
    body = stage.facets.body_of[shown]
    turns = np.array(
        [[p.placement.length, p.placement.width, p.placement.thickness] for p in parts]
    )
    origins = np.array([p.placement.origin for p in parts]) + stage.moves
    local = np.einsum("nij,nj->ni", turns[body], points - origins[body])
    crosswise = np.array([p.blank.grain is Grain.CROSSWISE for p in parts])[body]
    local[crosswise] = local[crosswise][:, [1, 0, 2]]
    figured = np.array([p.blank.grain is not Grain.NONE for p in parts], dtype=np.float32)[body]
    shade = 1.0 + figured * (wood(local, body, pixel) - 1.0)
    plain = np.array([linear(p.blank.stock.colour) for p in parts], dtype=np.float32)
    # Darker figure is a little redder than pale wood.
    tint = np.array([0.75, 1.0, 1.35], dtype=np.float32)
    shown_colours = plain[body] * shade[:, None] ** tint
    shown_colours[stage.facets.mouths[shown]] *= MOUTH_SHADE
    return np.asarray(shown_colours, dtype=np.float32)


def _floor(light: Shades, shown: Numbers, size: tuple[int, int], strength: float) -> Shades:
    """The floor's grey, 1 where nothing shades it and towards the picture's border."""
    free = (shown < 0).astype(np.float32)
    dark = strength * (1.0 - np.clip(light / floor_irradiance(), 0.0, 1.0)) * free
    soft, weight = (gaussian_filter(layer, 0.008 * max(size)) for layer in (dark, free))
    width, height = size
    shade = soft / np.maximum(weight, 1e-3)
    grown = np.asarray(Image.fromarray(shade).resize(size, Image.Resampling.BILINEAR))
    margin = FLOOR_FADE * min(size)
    x, y = np.arange(width) + 0.5, np.arange(height) + 0.5
    fades = [
        np.clip(np.minimum(along, length - along) / margin - 0.1, 0.0, 1.0)
        for along, length in ((x, width), (y, height))
    ]
    across, down = (fade * fade * (3.0 - 2.0 * fade) for fade in fades)
    return (1.0 - grown * np.outer(down, across)).astype(np.float32)
