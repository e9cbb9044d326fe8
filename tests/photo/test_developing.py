"""What light is shown as."""

from __future__ import annotations

import colorsys
from io import BytesIO

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from rodwright.photo.developing import Meter, developed, jpeg, metered, webp
from rodwright.photo.stamp import stamp_in
from rodwright.photo.tracing import Traced

_EVEN = Meter((1.0, 1.0, 1.0))


def _traced(radiance: object, reflectance: object = 0.5) -> Traced:
    rows = np.atleast_3d(np.array(radiance, dtype=np.float32)).reshape(1, -1, 3)
    seen = np.broadcast_to(np.array(reflectance, dtype=np.float32), rows.shape)
    return Traced(rows, np.array(seen))


def _shown(radiance: object, meter: Meter = _EVEN) -> np.ndarray:
    return np.asarray(developed(_traced(radiance), meter))[0]


def test_a_colour_in_even_light_comes_out_as_itself() -> None:
    """Linear 0.2140 is sRGB 127.5 (IEC 61966-2-1); up to the shoulder nothing is changed."""
    assert _shown([0.2140, 0.0331, 0.6]).tolist() == [[127, 51, 203]]


def test_greys_stay_grey_and_in_order() -> None:
    steps = np.geomspace(0.001, 30.0, 200)
    shown = _shown(np.repeat(steps[:, None], 3, axis=1)).astype(int)
    assert (shown[:, 0] == shown[:, 1]).all() and (shown[:, 1] == shown[:, 2]).all()
    rises = np.diff(shown[:, 0])
    assert (rises >= 0).all()
    assert shown[-1, 0] == 255
    assert shown[steps < 1.0].max() < 255  # what is a little too bright still shows its shape


@given(
    hue=st.floats(0, 1),
    saturation=st.floats(0.1, 1),
    brightness=st.floats(0.2, 8.0),
)
def test_a_hue_is_kept_however_bright(hue: float, saturation: float, brightness: float) -> None:
    colour = np.array(colorsys.hsv_to_rgb(hue, saturation, 1.0)) * brightness
    from rodwright.photo.srgb import decoded

    back = decoded(_shown(colour)[0] / 255.0)
    ratio = back / back.max()
    assert ratio == pytest.approx(colour / colour.max(), abs=0.02)


def test_a_white_wall_is_near_neutral_in_coloured_light() -> None:
    light = np.array([2.0, 2.4, 3.0])
    reflectance = np.array([[0.8, 0.8, 0.8], [0.4, 0.3, 0.2], [0.5, 0.5, 0.5]])
    traced = _traced(light * reflectance, reflectance[None])
    shown = np.asarray(developed(traced, metered(traced)))[0].astype(int)
    assert np.ptp(shown[0]) <= 1
    assert 220 <= shown[0, 0] <= 235
    assert shown[1, 0] > shown[1, 1] > shown[1, 2]


def test_lamps_and_dark_things_don_t_mislead_the_meter() -> None:
    radiance = np.full((10, 3), 0.4)
    reflectance = np.full((10, 3), 0.8)
    plain = metered(_traced(radiance, reflectance[None]))
    radiance[0], reflectance[0] = 50.0, 0.0
    radiance[1], reflectance[1] = 0.3, 0.02
    assert metered(_traced(radiance, reflectance[None])) == plain
    assert metered(_traced(radiance, 0.0)) == _EVEN


def test_files() -> None:
    image = developed(_traced(np.full((64, 3), 0.3)), _EVEN)
    data = jpeg(image, "a comment")
    with Image.open(BytesIO(data)) as read:
        assert (read.format, read.size, read.info["comment"]) == ("JPEG", (64, 1), b"a comment")
    assert jpeg(image, "a comment") == data
    frames = [Image.new("RGB", (20, 30), (10 * number, 0, 0)) for number in range(3)]
    moving = webp(frames, [100, 100, 900], "a stamp")
    assert stamp_in(moving) == "a stamp" and stamp_in(data) == "a comment"
    with Image.open(BytesIO(moving)) as read:
        assert (read.format, read.size, read.n_frames) == ("WEBP", (20, 30), 3)  # type: ignore[attr-defined]
