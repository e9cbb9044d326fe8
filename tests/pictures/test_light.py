"""Light among boxes, where the answer is known."""

import numpy as np
import pytest

from rodwright.pictures.colours import flat_colour, linear
from rodwright.pictures.light import floor_irradiance, light_among_boxes, rays

UP = np.array([[0.0, 0.0, 1.0]])


def _light(low: list[float], high: list[float], owner: int = -1) -> float:
    """Light on the floor at the origin beside one box."""
    point, body = np.zeros((1, 3)), np.array([0])
    light = light_among_boxes(point, UP, np.array([owner]), np.array([low]), np.array([high]), body)
    return float(light[0])


def test_open_floor_gets_all_the_light() -> None:
    assert _light([500.0, 500.0, -60.0], [600.0, 600.0, -50.0]) == pytest.approx(floor_irradiance())


def test_under_a_wide_lid_it_is_dark() -> None:
    assert _light([-1e6, -1e6, 10.0], [1e6, 1e6, 20.0]) == 0.0
    # A box takes no light from its own surface.
    assert _light([-1e6, -1e6, 10.0], [1e6, 1e6, 20.0], owner=0) > 0.0


def test_a_wall_takes_the_light_from_its_side() -> None:
    # An endless wall along y takes every ray that leans towards it.
    wall = _light([1.0, -1e6, -1e6], [2.0, 1e6, 1e6])
    expected = sum(
        ray.strength * ray.towards[2]
        for ray in rays()
        if ray.towards[2] > 0 and ray.towards[0] <= 0
    )
    assert wall == pytest.approx(expected, rel=1e-6)


def test_a_dome_of_even_light_is_a_whole_on_the_floor() -> None:
    # The mean of the cosine over the upper half round is 1/2, so equal shares of 4 / n give 1.
    upper = [ray for ray in rays()[:80] if ray.towards[2] > 0]
    assert sum(4.0 / 80 * ray.towards[2] for ray in upper) == pytest.approx(1.0, rel=0.01)


def test_linear_light() -> None:
    # IEC 61966-2-1: #bcbcbc is close to half the light of white; black and white are exact.
    assert linear("#ffffff") == pytest.approx((1.0, 1.0, 1.0))
    assert linear("#000000") == (0.0, 0.0, 0.0)
    assert linear("#bcbcbc") == pytest.approx((0.5, 0.5, 0.5), abs=0.005)


def test_more_light_is_brighter() -> None:
    tones = [flat_colour("#d9c19c", light) for light in (0.1, 0.8, 1.6)]
    assert tones == sorted(tones)
    assert flat_colour("#d9c19c", 0.8, 0.1) < tones[0]
