"""How finishes look: what they do to the colour of a surface, and to how it shines."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.scene import Colour, Surface, Texture
from rodwright.unit.finish import Finish, Sheen

Reflectance = NDArray[np.float64]
"""(..., 3): red, green and blue, 0 to 1; linear, with the primaries of sRGB."""

_INSIDE = 0.596
"""What share of diffuse light is thrown back from within a film of refractive index 1.5, by
Fresnel's formulas; Egan and Hilgeman's fit, -1.440/n2 + 0.710/n + 0.668 + 0.0636 n (Applied Optics
12, 1973, from memory), gives as much."""
_SOAKED: Mapping[str, float] = MappingProxyType({"oil": 0.55, "lacquer": 0.25})
"""How much of a surface a finish wets through: oil soaks in, lacquer lies on it.  Chosen so that
pale woods darken by what is usual; from memory."""
_AMBER: Mapping[str, Colour] = MappingProxyType(
    {"oil": (0.99, 0.95, 0.84), "lacquer": (1.0, 0.99, 0.965)}
)
"""What a film lets through, in red, green and blue: oils are yellow; from memory."""
_PALE: Colour = (0.716, 0.558, 0.328)
"""Reflectance of the pale wood that a stain's colour is shown on: birch."""


def finished_colour(bare: Reflectance, finish: Finish | None) -> Reflectance:
    """What bare reflectances become under a finish, each by itself.

    Oil and lacquer wet a surface: light that is thrown back within them falls on it again
    (Lekner and Dorf, Why some things are darker when wet, Applied Optics 27, 1988, from memory), so
    that it is darker and richer in colour.  A stain takes the same share of light everywhere, which
    keeps the figure.  Paint covers it.
    """
    bare = np.asarray(bare, dtype=np.float64)
    if finish is None:
        return bare
    if finish.kind == "paint":
        return np.broadcast_to(linear(finish.colour), bare.shape).copy()
    if finish.kind == "stain":
        through = np.minimum(1.0, linear(finish.colour) / _PALE)
        return bare * through
    wet = (1 - _INSIDE) * bare / (1 - _INSIDE * bare)
    soaked = _SOAKED[finish.kind]
    return (bare + soaked * (wet - bare)) * _AMBER[finish.kind]


def linear(colour: str) -> Reflectance:
    """The reflectances of a colour ``#rrggbb``: the tone curve of sRGB (IEC 61966-2-1) undone."""
    encoded = np.array([int(colour[i : i + 2], 16) for i in (1, 3, 5)]) / 255
    return np.where(encoded <= 0.04045, encoded / 12.92, ((encoded + 0.055) / 1.055) ** 2.4)


_ROUGHNESS: Mapping[Sheen, float] = MappingProxyType({"matt": 0.6, "satin": 0.4, "gloss": 0.12})


def finished_surface(colour: Colour | Texture, material: str, finish: Finish | None) -> Surface:
    """A material of this colour as light meets it under a finish, or bare."""
    if finish is not None:
        return Surface(colour, _ROUGHNESS[finish.sheen], 0.5)
    words = material.casefold()
    if "glass" in words:
        return Surface(colour, 0.0, 0.5, clear=True)
    if "melamine" in words:
        return Surface(colour, 0.45, 0.5)
    return Surface(colour, 0.75, 0.3)
