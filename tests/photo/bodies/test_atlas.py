"""Textures: each pixel shows its own point, and no place lies outside its picture."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import HealthCheck, given, reject, settings
from numpy.typing import NDArray

from kit.strategies import shapes
from rodwright.photo.bodies.atlas import encoded, textured
from rodwright.photo.bodies.easing import eased
from rodwright.solids import solid_of
from rodwright.unit import Easing, ShapeKey, Surface

Array = NDArray[np.float64]
SIZE = np.array([600.0, 300.0, 40.0])


def by_place(points: Array, normals: Array, texel: float = 1.0) -> NDArray[np.float32]:
    """A reflectance that tells where a point is."""
    del normals, texel
    return (0.1 + 0.8 * points / 600.0).astype(np.float32)


def linear(pixels: Array) -> Array:
    values = pixels / 255
    made: Array = np.where(values <= 0.04045, values / 12.92, ((values + 0.055) / 1.055) ** 2.4)
    return made


def looked_up(pixels: Array, places: Array) -> Array:
    """A texture between the middles of its pixels, as a renderer reads it: bilinear."""
    height, width, _ = pixels.shape
    x, y = places[:, 0] * width - 0.5, (1 - places[:, 1]) * height - 0.5
    assert x.min() >= 0
    assert y.min() >= 0
    column, row = np.floor(x).astype(int), np.floor(y).astype(int)
    assert column.max() < width - 1
    assert row.max() < height - 1
    a, b = (x - column)[:, None], (y - row)[:, None]
    upper = pixels[row, column] * (1 - a) + pixels[row, column + 1] * a
    lower = pixels[row + 1, column] * (1 - a) + pixels[row + 1, column + 1] * a
    made: Array = upper * (1 - b) + lower * b
    return made


def held(shape: ShapeKey, texel: float, within: float) -> None:
    points, _, triangles, places, texture = textured(
        [(patch, texel) for patch in eased(shape, 0.8)], by_place
    )
    assert places.min() > 0.0
    assert places.max() < 1.0
    corners = points[triangles].mean(axis=1), places[triangles].mean(axis=1)
    found = looked_up(linear(texture.pixels.astype(float)), corners[1])
    assert found == pytest.approx(by_place(*2 * [corners[0]]), abs=0.006 + within * 0.8 / 600)


@given(shapes())
@settings(max_examples=15, suppress_health_check=[HealthCheck.too_slow])
def test_a_texture_has_at_each_place_what_the_wood_has_at_that_point(shape: ShapeKey) -> None:
    try:
        solid_of(shape)
    except ValueError:
        reject()  # it falls to pieces
    # Small patches have one colour, that of their middle.
    held(shape, 4.0, within=9.0)


def test_round_edges_have_the_wood_of_their_own_depth() -> None:
    held(((400.0, 100.0, 40.0), (Easing(Surface.FACE, Surface.BACK_EDGE, 30.0),)), 1.0, within=0.8)


def test_each_picture_has_a_border_that_goes_on_past_the_edge() -> None:
    points, _, _, places, texture = textured(
        [(patch, 2.0) for patch in eased(((100.0, 50.0, 20.0), ()), 0.8)], by_place
    )
    height, width, _ = texture.pixels.shape
    corner = int(np.argmin(np.abs(points - [0.0, 0.0, 20.0]).sum(axis=1)))
    column = int(places[corner, 0] * width)
    row = int((1 - places[corner, 1]) * height)
    around = texture.pixels[row - 1 : row + 2, column - 1 : column + 2]
    assert (around > 0).all()


def test_the_curve_of_srgb() -> None:
    # IEC 61966-2-1: 0.5 linear is 187.5 of 255, 0.0031308 is 10.3.
    shown = encoded(np.array([[0.0, 0.5, 1.0]], np.float32))
    assert shown.tolist() == [[0, 188, 255]]
    assert encoded(np.array([[0.003, 2.0, -1.0]], np.float32)).tolist() == [[10, 255, 0]]
