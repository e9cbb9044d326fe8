"""Options side by side."""

from __future__ import annotations

import numpy as np
import pytest
from PIL import Image

from kit.specs import unit_from
from rodwright.photo import abreast
from rodwright.photo.abreast import lettered, side_by_side
from rodwright.photo.contents import things_in
from rodwright.photo.framing import on_picture
from rodwright.photo.scene import Camera
from rodwright.photo.tracing import Quality

_NAMES = [
    "In oak",
    "Painted sage",
    "x" * 90,
    "A name of many words that takes a second line",
]


def _pictures(count: int) -> list[tuple[str, Image.Image]]:
    return [
        (_NAMES[number % 4], Image.new("RGB", (180, 240), (200, number * 10, 0)))
        for number in range(count)
    ]


@pytest.mark.parametrize(
    ("count", "across", "down"), [(1, 1, 1), (2, 2, 1), (3, 3, 1), (4, 4, 1), (5, 3, 2), (9, 3, 3)]
)
def test_pictures_stand_in_even_rows_whole(count: int, across: int, down: int) -> None:
    sheet = np.asarray(lettered(_pictures(count))).astype(int)
    assert across * 180 < sheet.shape[1] < across * 195 + 20
    assert sheet.shape[0] > down * 240
    for number in range(count):
        whole = (sheet == np.array([200, number * 10, 0])).all(axis=2)
        assert whole.sum() == 180 * 240


def test_names_stand_below_their_pictures_and_keep_to_them() -> None:
    """Every name leaves ink below its own picture, and none in the gutters between."""
    sheet = np.asarray(lettered(_pictures(4)).convert("L")).astype(int)
    gap = 180 // 24
    for number in range(4):
        left = gap + number * (180 + gap)
        below = sheet[gap + 240 :, left : left + 180]
        assert (below < 120).any()
        assert below[-2:].min() > 200  # nothing is cut off
        assert sheet[:, left - gap : left].min() > 200


def test_there_has_to_be_one() -> None:
    with pytest.raises(ValueError, match="no options"):
        side_by_side([], Quality(32, 1))


def test_what_stands_on_top_is_in_the_picture(monkeypatch: pytest.MonkeyPatch) -> None:
    unit = unit_from("size: {width: 900, height: 800, depth: 300}\nloads: books\n")
    things = things_in(unit, 0)
    assert max(thing.box.high[2] for thing in things) > unit.envelope.high[2] + 50
    cameras = []

    def seen(*_: object, camera: Camera, **__: object) -> None:
        cameras.append(camera)
        raise RuntimeError("seen")

    monkeypatch.setattr(abreast, "closed", seen)
    with pytest.raises(RuntimeError, match="seen"):
        side_by_side([("One", unit)], Quality(200, 1), contents=True)
    corners = [corner for thing in things for corner in thing.box.corners()]
    places = on_picture(cameras[0], corners)
    assert places.min() > 0.02
    assert places.max() < 0.98
