"""Surfaces send back what their colour says and never more than they get.

In a white furnace (a sky of radiance 1 all round) what a surface shows is the share of light that
it sends back: its reflectance.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from kit.scenes import ball, before, block
from rodwright.photo.scene import Scene, Surface, Texture
from rodwright.photo.tracing import Quality, trace

_WHITE = (1.0, 1.0, 1.0)
_KINDS = {
    "chalk": Surface(_WHITE, gloss=0.0),
    "matt": Surface(_WHITE, roughness=1.0),
    "satin": Surface(_WHITE, roughness=0.5),
    "gloss": Surface(_WHITE, roughness=0.1),
    "crystal": Surface(_WHITE, roughness=0.3, gloss=1.0),
    "varnished": Surface(_WHITE, roughness=0.7, coat=1.0, coat_roughness=0.1),
    "half varnished": Surface(_WHITE, roughness=0.7, coat=0.5, coat_roughness=0.3),
    "mirror": Surface(_WHITE, roughness=0.05, metal=True),
    "brushed": Surface(_WHITE, roughness=0.4, metal=True),
    "pane": Surface(_WHITE, clear=True),
}


def _shown(body: object, *, samples: int, bounces: int = 64) -> np.ndarray:
    scene = Scene((body,), (), before(focal=4.9), sky=_WHITE)  # type: ignore[arg-type]
    return trace(scene, Quality(16, samples, bounces)).radiance


@pytest.mark.parametrize("kind", _KINDS)
def test_nothing_sends_back_more_than_it_gets(kind: str) -> None:
    shown = _shown(ball(_KINDS[kind]), samples=512)
    assert shown.mean() <= 1.005
    rows = np.hypot(*(np.mgrid[:16, :16] - 7.5)).round()  # rings of one angle, to average noise
    assert max(shown[rows == ring].mean() for ring in range(1, 11)) <= 1.015


@pytest.mark.parametrize("kind", [each for each in _KINDS if each != "pane"])
@pytest.mark.parametrize("level", [0.08, 0.3, 0.7])
def test_the_whole_comes_to_the_colour(kind: str, level: float) -> None:
    surface = replace(_KINDS[kind], colour=(level, level, level))
    if kind == "crystal" and level < 0.1:
        pytest.skip("its highlight alone is that much")
    shown = _shown(block(surface, (-300, -100, -300), (300, 100, 300)), samples=256)
    # Microfacets of rough metal lose what is reflected from one to the next.
    loss = 0.06 if kind == "brushed" else 0.01
    assert level * (1 - loss) - 0.003 <= shown.mean() <= level * 1.01 + 0.003


def test_a_texture_is_shown_as_the_same_colour() -> None:
    pixels = np.full((4, 4, 3), 188, dtype=np.uint8)  # sRGB 188 is 0.503 linear (IEC 61966-2-1)
    body = block(Surface(Texture(pixels)), (-300, -100, -300), (300, 100, 300))
    places = np.tile([[0.0, 0.0], [1.0, 0.0], [1.0, 1.0], [0.0, 1.0]], (6, 1))
    shown = _shown(replace(body, places=places), samples=256)
    assert shown.mean() == pytest.approx(0.503, rel=0.01)


def test_the_lightest_paint_is_light() -> None:
    """White enamel sends back 0.85 to 0.9; from memory."""
    for kind in ("matt", "satin", "gloss", "varnished"):
        surface = replace(_KINDS[kind], colour=(0.88, 0.88, 0.88))
        body = block(surface, (-300, -100, -300), (300, 100, 300))
        assert _shown(body, samples=256).mean() == pytest.approx(0.88, abs=0.01)
