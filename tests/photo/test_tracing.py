"""Tracing against closed forms, and against itself."""

from __future__ import annotations

import importlib.util
from dataclasses import replace

import numpy as np
import pytest

from kit.scenes import ball, before, block
from rodwright.photo import tracing
from rodwright.photo.scene import Body, Camera, Lamp, Scene, Surface, Texture
from rodwright.photo.tracing import Quality, trace, trace_from
from rodwright.problems import ProblemsError

_GREY = Surface((0.5, 0.5, 0.5), gloss=0.0)
_ROOM = block(_GREY, (500, -1500, -500), (-500, 500, 500))
_LAMP = Lamp((-200, -200, 490), ((0.0, 400.0, 0.0), (400.0, 0.0, 0.0)), (5.0, 5.0, 5.0))


def test_a_grey_block_in_a_white_furnace() -> None:
    """A convex body of reflectance r in radiance 1 shows r."""
    scene = Scene((block(_GREY),), (), before(focal=5.5), sky=(1.0, 1.0, 1.0))
    shown = trace(scene, Quality(16, 256)).radiance
    assert shown.mean() == pytest.approx(0.5, rel=0.01)
    assert np.abs(shown - 0.5).max() < 0.08  # what noise of 256 paths is left


def test_an_integrating_sphere() -> None:
    """A lamp of power P in a hollow ball of reflectance r and area A: what its walls send to each
    other falls evenly everywhere, r P / (A (1 - r)), so a wall that the lamp itself doesn't shine
    on has the radiance r / pi times that."""
    radius, edge, radiance, reflectance = 500.0, 20.0, 1000.0, 0.7
    outside = ball(Surface((reflectance,) * 3, gloss=0.0), radius)
    hollow = replace(outside, normals=-outside.normals, triangles=outside.triangles[:, ::-1])
    lamp = Lamp((-10, -10, 0), ((edge, 0.0, 0.0), (0.0, edge, 0.0)), (radiance,) * 3)
    falls = reflectance * np.pi * radiance * edge**2 / (4 * np.pi * radius**2 * (1 - reflectance))
    below = replace(before(), eye=(0.0, -300.0, -300.0), focal=3.0)
    shown = trace(Scene((hollow,), (lamp,), below), Quality(16, 512, 64)).radiance
    assert shown.mean() == pytest.approx(reflectance / np.pi * falls, rel=0.01)


def test_a_texture_stands_upright() -> None:
    """Its first row is at the top of the wall, and its first column at the left."""
    pixels = np.full((32, 32, 3), 255, np.uint8)
    pixels[:16, :16], pixels[16:, 16:] = (255, 0, 0), (0, 0, 255)
    corners = np.array([[-50.0, 0, -50], [50, 0, -50], [50, 0, 50], [-50, 0, 50]])
    wall = Body(
        "wall",
        corners,
        np.tile([0.0, -1.0, 0.0], (4, 1)),
        np.array([[0, 1, 2], [0, 2, 3]]),
        Surface(Texture(pixels), gloss=0.0),
        corners[:, [0, 2]] / 100 + 0.5,
    )
    camera = Camera((0.0, -400.0, 0.0), 0.0, 16, 16, 5.0)
    shown = trace(Scene((wall,), (), camera, sky=(1.0, 1.0, 1.0)), Quality(16, 16)).radiance
    for row, column, colour in ((3, 3, (1, 0, 0)), (12, 12, (0, 0, 1)), (3, 12, (1, 1, 1))):
        assert shown[row, column] == pytest.approx(colour, abs=0.1)


def test_one_seed_gives_equal_pixels_and_another_other_noise() -> None:
    scene = Scene((_ROOM,), (_LAMP,), before(400.0, 32, 24, 1.0))
    first, again, other = (
        trace(scene, Quality(32, 8), seed=seed).radiance.tobytes() for seed in (3, 3, 4)
    )
    assert first == again != other
    one, two = (np.frombuffer(each, dtype=np.float32).mean() for each in (first, other))
    assert one == pytest.approx(two, rel=0.05)


def test_cameras_of_one_scene_see_what_each_sees_alone() -> None:
    scene = Scene((_ROOM, block(_GREY)), (_LAMP,), before(450.0, 32, 24, 1.0))
    cameras = [scene.camera, replace(scene.camera, eye=(60.0, -400.0, 50.0), turn=-9.0)]
    shares: list[float] = []
    together = list(trace_from(scene, cameras, Quality(32, 4), progress=shares.append))
    for camera, made in zip(cameras, together, strict=True):
        alone = trace(replace(scene, camera=camera), Quality(32, 4))
        assert made.radiance.tobytes() == alone.radiance.tobytes()
    assert shares == [0.5, 1.0]


def test_a_large_picture_is_made_in_passes(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(tracing, "_PATHS_A_PASS", 32 * 24 * 2)
    scene = Scene((_ROOM,), (_LAMP,), before(400.0, 32, 24, 1.0))
    shares: list[float] = []
    trace(scene, Quality(32, 8), progress=shares.append)
    assert shares == [0.25, 0.5, 0.75, 1.0]


def test_specks_are_held_back_and_the_light_is_not() -> None:
    """What is cut off of single bright paths takes less than a hundredth of the light."""
    scene = Scene((_ROOM,), (_LAMP,), before(400.0, 32, 24, 1.0))
    held = trace(scene, Quality(32, 256)).radiance
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(tracing, "_FIREFLY", 1e9)
        free = trace(scene, Quality(32, 256)).radiance
    walls = free.max(axis=2) < 4.0
    assert held[walls].mean() == pytest.approx(free[walls].mean(), rel=0.01)


def test_what_guides_the_denoiser_is_the_colour() -> None:
    blue = Surface((0.1, 0.2, 0.6))
    traced = trace(Scene((block(blue),), (), before(focal=5.5), (1.0, 1.0, 1.0)), Quality(16, 4))
    assert traced.reflectance[8, 8] == pytest.approx([0.1, 0.2, 0.6], abs=1e-4)


@pytest.mark.parametrize("missing", ["mitsuba", "pyoidn"])
def test_without_the_libraries_it_says_how_to_install_them(
    missing: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    found = importlib.util.find_spec
    monkeypatch.setattr(tracing, "find_spec", lambda name: None if name == missing else found(name))
    with pytest.raises(ProblemsError) as told:
        trace(Scene((), (), before()), Quality(16, 1))
    assert [str(each) for each in told.value.problems] == [
        f"{missing}, which photographs are made with, isn't installed\n"
        f"  Install it: `pip install {missing}`."
    ]
