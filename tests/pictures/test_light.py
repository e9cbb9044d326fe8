"""Light among boxes, where the answer is known."""

import numpy as np
import pytest
import trimesh

from rodwright.pictures.camera import BLOCK
from rodwright.pictures.colours import flat_colour, linear
from rodwright.pictures.facets import facets_of
from rodwright.pictures.light import DOME, SHARES, Light, floor_irradiance, rays
from rodwright.pictures.raster import Raster

UP = np.array([[0.0, 0.0, 1.0]])


def _light(low: list[float], high: list[float], at: tuple[float, ...] = (0.0, 0.0, 0.0)) -> float:
    """Light on a level place beside one box; all shares of the rays together."""
    facets = facets_of(trimesh.creation.box(bounds=[low, high]))
    places = np.tile(at, (SHARES, 1))
    facing = np.zeros(SHARES, dtype=np.int64)
    with Raster() as raster:
        light = Light(facets, raster).reaching(places, facing, UP, np.arange(SHARES))
    return float(light.mean())


def test_open_floor_gets_all_the_light() -> None:
    assert _light([500.0, 500.0, -60.0], [600.0, 600.0, -50.0]) == pytest.approx(floor_irradiance())


def test_under_a_wide_lid_it_is_dark_and_on_it_bright() -> None:
    lid = ([-1000.0, -1000.0, 100.0], [1000.0, 1000.0, 120.0])
    assert _light(*lid) < 0.1 * floor_irradiance()
    assert _light(*lid, at=(0.0, 0.0, 120.0)) == pytest.approx(floor_irradiance())


def test_each_of_many_points_gets_its_own_light() -> None:
    facets = facets_of(
        trimesh.creation.box(bounds=[[-1000.0, -1000.0, 100.0], [1000.0, 1000.0, 120.0]])
    )
    # Under a lid and on it in turn; in all, more points than are looked at together.
    places = np.tile([[0.0, 0.0, 0.0], [0.0, 0.0, 120.0]], (SHARES * BLOCK, 1))
    facing = np.tile([0, 1], SHARES * BLOCK)
    share = np.repeat(np.arange(SHARES), 2 * BLOCK)
    with Raster() as raster:
        light = Light(facets, raster).reaching(places, facing, np.repeat(UP, 2, axis=0), share)
    assert light[1::2].tolist() == pytest.approx([floor_irradiance()] * (SHARES * BLOCK))
    assert light[::2].max() < 0.5 * floor_irradiance()
    assert all(
        len(set(light[::2][s * BLOCK : (s + 1) * BLOCK].tolist())) == 1 for s in range(SHARES)
    )


def test_a_wall_takes_the_light_from_its_side() -> None:
    # A wide and high wall takes every ray that leans towards it, by the brightness of each.
    wall = _light([100.0, -4000.0, -100.0], [200.0, 4000.0, 4000.0])
    shares = [rays()[number::SHARES] for number in range(SHARES)]
    expected = np.mean(
        [
            floor_irradiance()
            * sum(
                ray.strength * ray.towards[2]
                for ray in share
                if ray.towards[2] > 0 and ray.towards[0] <= 0.02
            )
            / sum(ray.strength * max(0.0, ray.towards[2]) for ray in share)
            for share in shares
        ]
    )
    assert wall == pytest.approx(expected, rel=0.05)


def test_a_dome_of_even_light_is_a_whole_on_the_floor() -> None:
    # The mean of the cosine over the upper half round is 1/2, so equal shares of 4 / n give 1.
    upper = [ray for ray in rays()[:DOME] if ray.towards[2] > 0]
    assert sum(4.0 / DOME * ray.towards[2] for ray in upper) == pytest.approx(1.0, rel=0.01)


def test_linear_light() -> None:
    # IEC 61966-2-1: #bcbcbc is close to half the light of white; black and white are exact.
    assert linear("#ffffff") == pytest.approx((1.0, 1.0, 1.0))
    assert linear("#000000") == (0.0, 0.0, 0.0)
    assert linear("#bcbcbc") == pytest.approx((0.5, 0.5, 0.5), abs=0.005)


def test_more_light_is_brighter() -> None:
    tones = [flat_colour("#d9c19c", light) for light in (0.1, 0.8, 1.6)]
    assert tones == sorted(tones)
    assert flat_colour("#d9c19c", 0.8, 0.1) < tones[0]
