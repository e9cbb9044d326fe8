"""Light by formulas known elsewhere."""

import math

import pytest

from rodwright.geometry.boxes import Box
from rodwright.photo.light import irradiance, light_in
from rodwright.photo.scene import Lamp


def test_a_far_small_lamp_gives_its_intensity_over_the_square() -> None:
    lamp = Lamp((-5.0, -3000.0, -5.0), ((0.0, 0.0, 10.0), (10.0, 0.0, 0.0)), (1.0, 1.0, 1.0))
    assert irradiance(lamp, (0.0, 0.0, 0.0)) == pytest.approx(100 / 3000**2, rel=1e-3)


def test_a_square_over_a_point_by_the_closed_form() -> None:
    """The view factor of a parallel rectangle from a point below its corner (Howell, catalogue of
    radiation configuration factors, B-3, from memory), four corners together."""
    half, away = 1000.0, 1500.0
    lamp = Lamp(
        (-half, -away, -half), ((0.0, 0.0, 2 * half), (2 * half, 0.0, 0.0)), (1.0, 1.0, 1.0)
    )
    share = half / away
    root = math.sqrt(1 + share**2)
    factor = 4 / (2 * math.pi) * 2 * (share / root) * math.atan(share / root)
    assert irradiance(lamp, (0.0, 0.0, 0.0)) == pytest.approx(math.pi * factor, rel=2e-3)


@pytest.mark.parametrize("side", [-1, 1])
def test_the_window_is_at_its_side_and_shines_into_the_room(side: int) -> None:
    room = Box((-2000.0, -5000.0, 0.0), (3000.0, 300.0, 2400.0))
    shown = Box((0.0, 0.0, 0.0), (1000.0, 300.0, 2000.0))
    light = light_in(room, shown, side, 0.5)
    window, fill = light.lamps
    (a, b, c), (x, y, z) = window.edges
    out = (b * z - c * y, c * x - a * z, a * y - b * x)
    assert out[0] * side < 0
    assert out[1] == out[2] == 0
    assert (window.corner[0] - 500) * side > 0
    assert fill.corner[1] < -4000
    for lamp in light.lamps:
        for one in (0, 1):
            for other in (0, 1):
                corner = tuple(
                    lamp.corner[i] + one * lamp.edges[0][i] + other * lamp.edges[1][i]
                    for i in range(3)
                )
                assert room.contains_point(corner)  # type: ignore[arg-type]


def test_exposure_undoes_how_light_the_lamps_are() -> None:
    """A wider room is darker, so that it is exposed longer."""
    shown = Box((0.0, 0.0, 0.0), (1000.0, 300.0, 2000.0))
    near = light_in(Box((-1000.0, -5000.0, 0.0), (2000.0, 300.0, 2400.0)), shown, -1, 0.5)
    far = light_in(Box((-3000.0, -5000.0, 0.0), (4000.0, 300.0, 2400.0)), shown, -1, 0.5)
    assert far.exposure > near.exposure
