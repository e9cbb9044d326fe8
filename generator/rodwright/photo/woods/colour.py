"""Colours turned into linear reflectance with the primaries of sRGB."""

from __future__ import annotations

from rodwright.photo.scene import Colour


def linear_of(code: str) -> Colour:
    """The reflectance that ``#rrggbb`` stands for (tone curve of IEC 61966-2-1)."""
    red, green, blue = (_linear(int(code[at : at + 2], 16) / 255) for at in (1, 3, 5))
    return red, green, blue


def _linear(shown: float) -> float:
    return shown / 12.92 if shown <= 0.04045 else float(((shown + 0.055) / 1.055) ** 2.4)
