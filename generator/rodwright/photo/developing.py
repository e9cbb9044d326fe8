"""Light to a picture that is shown: metering, tone curve, files."""

from __future__ import annotations

from dataclasses import dataclass
from io import BytesIO

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from rodwright.photo.scene import Colour
from rodwright.photo.srgb import encoded
from rodwright.photo.tracing import Traced

_QUALITY = 90
"""Of JPEG files, in %."""
_WHITE_SHOWN = 0.8
"""What a white surface (reflectance 1) in the middle of the light is shown as, linear: a wall of
0.8 comes to sRGB 211, as a photographer would expose it; common practice, no source."""
_SHOULDER = 0.7
"""Linear; what is brighter is eased towards white, so that windows don't end in a hard rim."""
_REFLECTS = 0.1
"""Only what reflects this much tells of the light: in the dark the highlights do."""


@dataclass(frozen=True, slots=True)
class Meter:
    """What radiance is multiplied by, in red, green and blue, so that the picture is neither dark
    nor bright and a white surface is white."""

    gains: Colour


def metered(traced: Traced) -> Meter:
    """Exposure and white balance by the light that falls on what is seen: radiance over
    reflectance, the median of it."""
    seen = traced.reflectance.min(axis=2) > _REFLECTS
    if not seen.any():
        return Meter((1.0, 1.0, 1.0))
    light = np.median(traced.radiance[seen] / traced.reflectance[seen], axis=0)
    red, green, blue = (_WHITE_SHOWN / max(float(each), 1e-6) for each in light)
    return Meter((red, green, blue))


def developed(traced: Traced, exposure: float = 1.0, meter: Meter | None = None) -> Image.Image:
    """The picture as the meter has it (its own, where none is given), times ``exposure``."""
    gains = np.array((meter or metered(traced)).gains) * exposure
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


def jpeg(image: Image.Image, comment: str = "") -> bytes:
    """A picture as a JPEG file, with a comment in it that isn't shown."""
    file = BytesIO()
    image.save(file, format="JPEG", quality=_QUALITY, comment=comment)
    return file.getvalue()


def webp(frames: list[Image.Image], milliseconds: list[int]) -> bytes:
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
    )
    return file.getvalue()
