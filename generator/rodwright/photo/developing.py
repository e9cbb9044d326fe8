"""Light to a picture that is shown: metering, tone curve, files."""

from __future__ import annotations

from dataclasses import dataclass
from io import BytesIO

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from rodwright.photo.scene import Colour
from rodwright.photo.srgb import encoded
from rodwright.photo.stamp import described
from rodwright.photo.tracing import Traced

_QUALITY = 90
"""Of JPEG files, in %."""
_WHITE_SHOWN = 1.05
"""What a white surface (reflectance 1) in the middle of the light is shown as, linear, before it is
eased: a white wall of 0.75 comes to sRGB 225, as lively as interiors are photographed for clients;
common practice, no source."""
_SHOULDER = 0.7
"""Linear; what is brighter is eased towards white, so that windows don't end in a hard rim."""
_REFLECTS = 0.1
"""Only what reflects this much tells of the light: in the dark the highlights do."""
_NEUTRAL, _ENOUGH = 0.85, 0.02
"""What reflects its least colour at least this much as well as its most tells of the light, if
there is this share of the picture of it: a unit of oak lights itself in oak's colour."""


@dataclass(frozen=True, slots=True)
class Meter:
    """What radiance is multiplied by, in red, green and blue, so that the picture is neither dark
    nor bright and a white surface is white."""

    gains: Colour


def metered(traced: Traced) -> Meter:
    """Exposure and white balance by the light that falls on what is grey or white (radiance over
    reflectance, the median of it); exposure alone, by all that is seen, where nothing is."""
    least, most = traced.reflectance.min(axis=2), traced.reflectance.max(axis=2)
    seen = least > _REFLECTS
    if not seen.any():
        return Meter((1.0, 1.0, 1.0))
    neutral = seen & (least >= _NEUTRAL * most)
    if neutral.mean() > _ENOUGH:
        light = _light(traced, neutral)
    else:
        light = np.full(3, _light(traced, seen).mean())
    red, green, blue = map(float, _WHITE_SHOWN / np.maximum(light, 1e-6))
    return Meter((red, green, blue))


def _light(traced: Traced, where: NDArray[np.bool_]) -> NDArray[np.float64]:
    light = traced.radiance[where] / traced.reflectance[where]
    middle: NDArray[np.float64] = np.median(light.astype(np.float64), axis=0)
    return middle


def developed(traced: Traced, meter: Meter) -> Image.Image:
    """The picture as a meter has it."""
    gains = np.array(meter.gains)
    shown = encoded(_eased(np.maximum(traced.radiance, 0.0) * gains))
    return Image.fromarray(np.round(shown * 255).astype(np.uint8))


def _eased(linear: NDArray[np.float64]) -> NDArray[np.float64]:
    """Colours held below white by their brightest channel, so that they keep their hue."""
    most = linear.max(axis=2, keepdims=True)
    room = 1.0 - _SHOULDER
    over = np.maximum(most - _SHOULDER, 0.0)
    held = np.where(over > 0, _SHOULDER + room * (1.0 - np.exp(-over / room)), most)
    shown: NDArray[np.float64] = np.clip(linear * (held / np.maximum(most, 1e-9)), 0.0, 1.0)
    return shown


def jpeg(image: Image.Image, stamp: str) -> bytes:
    """A picture as a JPEG file with its stamp."""
    file = BytesIO()
    image.save(file, format="JPEG", quality=_QUALITY, comment=stamp)
    return file.getvalue()


def webp(frames: list[Image.Image], milliseconds: list[int], stamp: str) -> bytes:
    """Pictures as a WebP file that moves, over and over; each is shown for its milliseconds."""
    file = BytesIO()
    frames[0].save(
        file,
        format="WEBP",
        save_all=True,
        append_images=frames[1:],
        duration=milliseconds,
        loop=0,
        quality=80,
        method=4,
        exif=described(stamp),
    )
    return file.getvalue()
