"""Colours turned into linear reflectance with the primaries of sRGB."""

from __future__ import annotations

import numpy as np

from rodwright.photo.scene import Colour

_WHITE = (0.95047, 1.0, 1.08883)
"""X, Y, Z of D65 (IEC 61966-2-1)."""
_TO_RGB = np.array(
    [
        [3.2404542, -1.5371385, -0.4985314],
        [-0.9692660, 1.8760108, 0.0415560],
        [0.0556434, -0.2040259, 1.0572252],
    ]
)
"""From X, Y, Z to red, green and blue: the inverse of the matrix of IEC 61966-2-1."""
_BEND = 6 / 29


def linear_of_lab(lightness: float, red: float, yellow: float) -> Colour:
    """The reflectance of a colour in CIELAB under D65 (ISO/CIE 11664-4); what sRGB can't show is
    the nearest in each primary."""
    middle = (lightness + 16) / 116
    bent = (middle + red / 500, middle, middle - yellow / 200)
    light = [white * _unbent(each) for white, each in zip(_WHITE, bent, strict=True)]
    found = np.clip(_TO_RGB @ light, 0.0, 1.0)
    return float(found[0]), float(found[1]), float(found[2])


def _unbent(value: float) -> float:
    return value**3 if value > _BEND else 3 * _BEND**2 * (value - 4 / 29)
