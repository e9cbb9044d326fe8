"""Colours: linear light, film, and the flat shades of drawings."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

if TYPE_CHECKING:
    from rodwright.pictures.light import Shades  # it draws with VTK, which colours have no use for

EXPOSURE = 0.60
BOUNCED = (0.42, 0.36, 0.30)
"""Light off the wood itself, thrown about too often to have a direction: red, green, blue."""
MOUTH_SHADE = 0.12
"""How much of the wood's brightness is left in the mouth of a small hole."""

BRIGHTEST, STEPS = 3.0, 1 << 15
"""The film goes up to this brightness, beyond which all is white, in so many steps."""


@lru_cache(maxsize=256)
def linear(colour: str) -> tuple[float, float, float]:
    """``#rrggbb`` as linear light, 0 to 1 (IEC 61966-2-1, sRGB)."""
    parts = [int(colour[i : i + 2], 16) / 255.0 for i in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
    return red, green, blue


@lru_cache(maxsize=1)
def _film() -> NDArray[np.uint8]:
    """The film's values, 0 to 255, for brightness from 0 to ``BRIGHTEST`` in even steps."""
    shown = np.linspace(0.0, BRIGHTEST, STEPS)
    eased = np.where(shown < 0.7, shown, 1.0 - 0.3 * np.exp((0.7 - shown) / 0.3))
    curved = 1.055 * np.maximum(eased, 1e-6) ** (1 / 2.4) - 0.055
    return np.round(255.0 * np.where(eased <= 0.0031308, 12.92 * eased, curved)).astype(np.uint8)


def film(colours: Shades, light: Shades) -> NDArray[np.uint8]:
    """How wood of linear colours (n, 3) looks in some light (n,): sRGB values 0 to 255.

    The brightest is eased into white.
    """
    shown = light[:, None] + np.array(BOUNCED, dtype=np.float32)
    shown *= colours
    shown *= np.float32(EXPOSURE * (STEPS - 1) / BRIGHTEST)
    np.minimum(shown, STEPS - 1, out=shown)
    return _film().take(shown.astype(np.int32))


def flat_colour(stock: str, light: float, shade: float = 1.0) -> str:
    """A stock's colour, darkened by ``shade``, in some light: ``#rrggbb``."""
    colours = np.array([linear(stock)], dtype=np.float32) * np.float32(shade)
    shown = film(colours, np.array([light], dtype=np.float32))[0]
    red, green, blue = (int(value) for value in shown)
    return f"#{red:02x}{green:02x}{blue:02x}"
