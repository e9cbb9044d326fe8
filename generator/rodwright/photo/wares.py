"""What bought-in pieces are of: metals, plastics, wooden knobs."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

import numpy as np

from rodwright.photo.finished import finished_colour, finished_surface
from rodwright.photo.scene import Colour, Surface
from rodwright.photo.woods.colours import colour_of
from rodwright.pictures.colours import linear
from rodwright.trade.materials import MATERIALS
from rodwright.unit import Ware
from rodwright.unit.finish import Finish

SURFACES: Mapping[Ware, Surface] = MappingProxyType({
    "steel": Surface((0.550, 0.556, 0.554), roughness=0.35, metal=True),
    "brass": Surface((0.910, 0.778, 0.423), roughness=0.3, metal=True),
    "black": Surface((0.035, 0.035, 0.036), roughness=0.5),
    "white": Surface((0.78, 0.77, 0.74), roughness=0.12),
    "plastic": Surface((0.06, 0.06, 0.062), roughness=0.6),
})  # fmt: skip
"""Reflectance of chromium, which bright steel is plated with or shines like, and of brass at normal
incidence, linear with the primaries of sRGB, from their optical constants (Akenine-Möller, Haines
and Hoffman, Real-Time Rendering, 4th ed., table 9.2: chromium seen, brass from memory); what is
black, white or plastic, and how dull each is, by eye, no source."""
_WOOD: Mapping[Ware, Colour] = MappingProxyType(
    {
        "wood": linear("#d2ab7c"),
        "oak": colour_of("european oak", MATERIALS["european oak"].colour),
        "walnut": colour_of("walnut", MATERIALS["walnut"].colour),
    }
)
"""Wooden knobs, bare: the first beech, by eye, no source; the others as boards are."""
_LACQUERED = Finish("lacquer")
"""What wooden knobs are finished with (common practice, no source)."""


def ware_surface(ware: Ware, under: Finish | None) -> Surface:
    """What a bought-in piece is of, on a part that is finished so."""
    if ware in SURFACES:
        return SURFACES[ware]
    finish = under if ware == "painted" and under and under.kind == "paint" else _LACQUERED
    bare = _WOOD.get(ware, _WOOD["wood"])
    red, green, blue = finished_colour(np.array(bare), finish).tolist()
    return finished_surface((red, green, blue), "beech", finish)
