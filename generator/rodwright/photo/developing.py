"""Radiance to a picture that is shown: exposure, tone curve, file."""

from __future__ import annotations

from io import BytesIO

import numpy as np
from PIL import Image

from rodwright.photo.tracing import Radiance

_QUALITY = 90
"""Of JPEG files, in %."""


def developed(radiance: Radiance, exposure: float) -> Image.Image:
    """The picture: radiance times ``exposure``, in the tone curve of sRGB (IEC 61966-2-1)."""
    linear = np.clip(radiance * exposure, 0.0, 1.0)
    curved = np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * linear ** (1 / 2.4) - 0.055)
    return Image.fromarray(np.round(curved * 255).astype(np.uint8))


def jpeg(image: Image.Image) -> bytes:
    """A picture as a JPEG file."""
    file = BytesIO()
    image.save(file, format="JPEG", quality=_QUALITY)
    return file.getvalue()
