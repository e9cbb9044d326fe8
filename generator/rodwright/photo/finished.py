"""How finishes look: what they do to the colour of a surface, and how it shines."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.scene import Colour, Surface, Texture
from rodwright.pictures.colours import linear
from rodwright.trade.materials import is_glass
from rodwright.unit.finish import Finish, FinishKind, Sheen

Reflectance = NDArray[np.float64]
"""(..., 3): red, green and blue, 0 to 1; linear, with the primaries of sRGB."""

_INSIDE = 0.596
"""What share of diffuse light is thrown back from within a film of refractive index 1.5, as oils
and lacquers have within 0.03 (from memory): Fresnel's formulas, summed over all directions."""
_OUTSIDE = 0.04
"""What share of light that meets it squarely a film of index 1.5 reflects outside, ((1.5 - 1) /
(1.5 + 1))^2 by Fresnel's formulas."""
_SOAKED: Mapping[FinishKind, float] = MappingProxyType({"oil": 0.6, "lacquer": 0.3})
"""How much of a surface a finish wets through: oil soaks in, lacquer bridges pores and fibres.
With these oak changes by 10 under oil and 4 under lacquer (CIELAB); two and three coats of wax on
white oak were measured at 12.0 and 10.6, darker, redder and yellower, one coat at 5.6 (Ayata and
Ayata, Modern Concepts and Developments in Agronomy 14 (3), 2024, its abstract)."""
_FILM: Mapping[FinishKind, Colour] = MappingProxyType(
    {"oil": (0.99, 0.95, 0.85), "lacquer": (1.0, 0.99, 0.965)}
)
"""What a film lets through, in red, green and blue: oils are yellow; from memory."""
_PALE: Colour = (0.72, 0.56, 0.33)
"""Reflectance of the pale wood that a stain's colour is shown on: bare birch, near enough."""


def finished_colour(bare: Reflectance, finish: Finish | None) -> Reflectance:
    """What bare reflectances become under a finish, each by itself.

    Oil and lacquer wet a surface: what is thrown back at their film from within falls on it again,
    and each time some of it is absorbed, so that a colour gets darker and richer (Lekner and Dorf,
    Why some things are darker when wet, Applied Optics 27, 1988, eq. 4, where what the film
    reflects outside belongs to the highlight).  A stain absorbs the same share of light everywhere,
    which keeps the figure; on pale wood it comes to its colour.  Paint covers all: its colour is
    what is seen beside the highlight, as on a maker's card, or dark ones would have none left.
    """
    bare = np.asarray(bare, dtype=np.float64)
    if finish is None:
        return bare
    if finish.kind == "paint":
        covering = _OUTSIDE + (1 - _OUTSIDE) * np.array(linear(finish.colour))
        return np.broadcast_to(covering, bare.shape).copy()
    if finish.kind == "stain":
        return bare * np.minimum(1.0, np.divide(linear(finish.colour), _PALE))
    wet = (1 - _INSIDE) * bare / (1 - _INSIDE * bare)
    return (bare + _SOAKED[finish.kind] * (wet - bare)) * _FILM[finish.kind]


_ROUGHNESS: Mapping[Sheen, float] = MappingProxyType({"matt": 0.4, "satin": 0.24, "gloss": 0.11})
"""Square roots of the microfacets' alpha: 7, 27 and 75 gloss units in the meter of ISO 2813 at 60
degrees.  EN 13300 calls 60 and more glossy, less than 10 at 85 degrees matt (from memory); a maker
of coatings has matt to 8, half matt 9 to 40 and gloss 71 to 90 (its page, seen)."""
_BARE, _FIBRES, _MELAMINE = (0.5, 0.35), (0.6, 0.3), (0.38, 0.5)
"""Roughness and gloss of planed wood, of fibre- and chipboard and of matt melamine; from memory."""


def finished_surface(colour: Colour | Texture, material: str, finish: Finish | None) -> Surface:
    """A material of this colour as light meets it under a finish, or bare."""
    if finish is not None:
        return Surface(colour, _ROUGHNESS[finish.sheen])
    if is_glass(material):
        return Surface(colour, 0.0, clear=True)
    words = material.casefold()
    if "melamine" in words:
        return Surface(colour, *_MELAMINE)
    fibres = any(each in words for each in ("mdf", "chipboard", "osb", "hardboard"))
    return Surface(colour, *(_FIBRES if fibres and "veneer" not in words else _BARE))
