"""Tracing against closed forms, and against itself."""

from __future__ import annotations

import importlib.util
import sys
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from kit.scenes import ball, before, block
from rodwright.photo import tracing
from rodwright.photo.scene import Lamp, Scene, Surface, Texture
from rodwright.photo.tracing import Quality, Tracer, trace
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
    together = list(Tracer().trace_from(scene, cameras, Quality(32, 4), progress=shares.append))
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


def test_textures_are_the_right_way_up() -> None:
    """Rows go from the top, places from the bottom left."""
    pixels = np.zeros((8, 8, 3), dtype=np.uint8)
    pixels[:4, :, 0], pixels[4:, :, 2], pixels[:, :4, 1] = 255, 255, 255
    body = block(Surface(Texture(pixels), gloss=0.0))
    places = (body.points[:, [0, 2]] + 100.0) / 200.0  # as seen from the front
    scene = Scene((replace(body, places=places),), (), before(), (1.0, 1.0, 1.0))
    seen = trace(scene, Quality(16, 4)).reflectance
    assert seen[4, 4].tolist() == [1.0, 1.0, 0.0]
    assert seen[4, 11].tolist() == [1.0, 0.0, 0.0]
    assert seen[11, 4].tolist() == [0.0, 1.0, 1.0]
    assert seen[11, 11].tolist() == [0.0, 0.0, 1.0]


def test_a_camera_shows_places_where_it_says() -> None:
    """By hand: 90 mm to the right of the axis and 40 above it at 1000 mm, with a focal length of
    twice the picture's width (32 pixels), is 5.76 to the right and 2.56 up; the shift moves it by
    3.2 to the left and 4.8 down."""
    camera = replace(before(1000.0, 32, 24, 2.0), turn=0.0, shift=(0.1, 0.2))
    spot = block(Surface((0.9, 0.9, 0.9)), (75, -2, 25), (105, 2, 55))
    turned = np.radians(10.0)
    for angle in (0.0, turned):
        eye = (-1000.0 * float(np.sin(angle)), -1000.0 * float(np.cos(angle)), 0.0)
        aside = replace(camera, eye=eye, turn=float(np.degrees(angle)))
        across = 90.0 * np.cos(angle)
        away = 1000.0 + 90.0 * np.sin(angle)
        seen = trace(Scene((spot,), (), aside, (1.0, 1.0, 1.0)), Quality(32, 4)).reflectance
        rows, columns = np.nonzero(seen[..., 0] > 0.2)
        assert np.mean(columns) + 0.5 == pytest.approx(16 + across / away * 64 - 3.2, abs=0.6)
        assert np.mean(rows) + 0.5 == pytest.approx(12 - 40 / away * 64 + 4.8, abs=0.6)


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


def test_without_a_library_of_the_system_it_says_which(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    said = "libatomic.so.1: cannot open shared object file: No such file or directory"
    (tmp_path / "mitsuba.py").write_text(f"raise ImportError({said!r})", encoding="utf-8")
    monkeypatch.syspath_prepend(tmp_path)
    monkeypatch.delitem(sys.modules, "mitsuba", raising=False)
    with pytest.raises(ProblemsError, match=r"missing: libatomic\.so\.1\n.*install libatomic1"):
        tracing.refuse_without_mitsuba()
