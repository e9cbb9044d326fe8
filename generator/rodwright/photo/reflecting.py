"""How surfaces reflect, held to what light there is: descriptions for Mitsuba.

A surface's colour is all that it sends back of light that meets it squarely, the highlight
included, as a spectrophotometer measures it in d/8 geometry (CIE 15).  What isn't metal is a
colour under a film of an index of refraction: light that goes in is weakened by what the film
reflects outside and inside, and coloured more where it goes to and fro within.  So what Mitsuba is
told as the colour below the film is found from the colour that the whole is to have.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.scene import Colour, Surface, Texture
from rodwright.photo.srgb import decoded, encoded

_INDEX = 1.5
"""Refractive index of window glass; from memory, all tables agree within 0.02."""
_DULLEST = 0.25
"""The widest highlight that is traced as one (the microfacets' alpha): Mitsuba's wider ones lose
light.  What is duller has a weaker one, by as much as a wider one would be fainter."""
_SHARPEST = 0.02
_UP = [0.0, 0.0, 1.0]
_GRID = 24
"""Directions along each side of the grid that a film's light is summed over: half a percent."""


@dataclass(frozen=True, slots=True)
class _Film:
    """What a film reflects square on, and what it makes of a colour below it: of ``below`` it
    sends ``through * below / (1 - inside * below)`` back."""

    outside: float
    through: float
    inside: float

    def reflects(self, below: NDArray[np.float64]) -> NDArray[np.float64]:
        return self.outside + self.through * below / (1.0 - self.inside * below)


def described(surface: Surface, colour: Callable[[Colour | Texture], Any]) -> dict[str, Any]:
    """A surface for Mitsuba; ``colour`` makes a colour or a texture of it."""
    if surface.clear:
        return {"type": "thindielectric", "int_ior": _INDEX}
    if surface.metal:
        return _twosided(
            {
                "type": "principled",
                "base_color": colour(surface.colour),
                "roughness": surface.roughness,
                "metallic": 1.0,
            }
        )
    shares = _shares(surface)
    below = colour(_below(surface.colour, shares))
    made: dict[str, Any] = {"type": "diffuse", "reflectance": below}
    sum_before = 0.0
    for share, film in shares:
        sum_before += share
        if film is not None:
            made = _blended(made, _plastic(film, below), share / sum_before)
    return _twosided(made)


_Lobe = tuple[float, float]
"""The alpha and the index of a film."""


def _shares(surface: Surface) -> list[tuple[float, _Lobe | None]]:
    """The shares of bare colour and of films, by which a surface is mixed."""
    root = np.sqrt(0.08 * surface.gloss)  # 0.08 times gloss is what it reflects square on
    index = float((1 + root) / (1 - root))
    if index < 1.01:
        return [(1.0, None)]
    alpha = surface.roughness**2
    seen = (1.0 - surface.coat) * min(1.0, _DULLEST / max(alpha, 1e-6))
    own = float(np.clip(alpha, _SHARPEST, _DULLEST))
    coat = float(np.clip(surface.coat_roughness**2, _SHARPEST, _DULLEST))
    bare = 1.0 - surface.coat - seen
    found: list[tuple[float, _Lobe | None]] = [
        (bare, None),
        (seen, (own, index)),
        (surface.coat, (coat, _INDEX)),
    ]
    return [each for each in found if each[0] > 1e-3]


def _below(colour: Colour | Texture, shares: list[tuple[float, _Lobe | None]]) -> Colour | Texture:
    """The colour under the films of which the whole comes to a colour, as far as it can."""
    table = np.linspace(0.0, 1.0, 1025)
    whole = sum(
        share * (table if film is None else _film(film).reflects(table)) for share, film in shares
    )

    def found(wanted: NDArray[np.float64]) -> NDArray[np.float64]:
        return np.interp(wanted, whole, table)

    if isinstance(colour, Texture):
        levels = np.round(encoded(found(decoded(np.arange(256) / 255.0))) * 255)
        return Texture(levels.astype(np.uint8)[colour.pixels])
    red, green, blue = map(float, found(np.array(colour)))
    return (red, green, blue)


@lru_cache(maxsize=256)
def _film(lobe: _Lobe) -> _Film:
    """A film's figures, measured on Mitsuba's own."""
    outside, half, whole = (_measured(lobe, below) for below in (0.0, 0.5, 1.0))
    half, whole = half - outside, whole - outside
    inside = (0.5 * whole - half) / (0.5 * whole - 0.5 * half)
    return _Film(outside, whole * (1.0 - inside), inside)


def _measured(lobe: _Lobe, below: float) -> float:
    """The share of light that a film over an even colour sends back, square on."""
    import mitsuba

    film: Any = mitsuba.load_dict(_plastic(lobe, {"type": "rgb", "value": [below] * 3}))
    context = mitsuba.BSDFContext()
    at: Any = mitsuba.SurfaceInteraction3f()
    at.t, at.n, at.wi, at.sh_frame = 1.0, _UP, _UP, mitsuba.Frame3f(mitsuba.Vector3f(_UP))
    steps = (np.arange(_GRID) + 0.5) / _GRID
    total = 0.0
    for one, first in enumerate(steps):
        for other, second in enumerate(steps):
            lot = float(steps[(7 * one + other) % _GRID])
            total += float(film.sample(context, at, lot, [float(first), float(second)])[1][0])
    return total / _GRID**2


def _plastic(lobe: _Lobe, below: Any) -> dict[str, Any]:
    alpha, index = lobe
    return {
        "type": "roughplastic",
        "alpha": alpha,
        "int_ior": index,
        "ext_ior": 1.0,
        "nonlinear": True,
        "diffuse_reflectance": below,
    }


def _blended(first: dict[str, Any], second: dict[str, Any], share: float) -> dict[str, Any]:
    if share > 0.999:
        return second
    return {"type": "blendbsdf", "weight": share, "first": first, "second": second}


def _twosided(inside: dict[str, Any]) -> dict[str, Any]:
    return {"type": "twosided", "bsdf": inside}
