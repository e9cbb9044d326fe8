"""Common materials: their densities, with sources, and colours of our own.

Densities are in kg/m3 at the moisture content of a heated room.  Solid wood follows the
USDA Forest Products Laboratory's Wood Handbook (FPL-GTR-190, 2010): specific gravity at
12 % moisture (chapter 5, oven-dry mass, volume at 12 %) times 1120.  Imported woods are
listed there by their basic specific gravity, turned into that at 12 % by the handbook's
relation (chapter 4).  Panel densities are usual catalogue figures: weigh a sheet where it
matters, and give ``density`` in the spec.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from difflib import get_close_matches
from itertools import product
from typing import Literal

from rodwright.trade.sources import Source
from rodwright.trade.timber_classes import TIMBER_CLASSES

_AT_12 = "Wood Handbook FPL-GTR-190 (2010) ch. 5, specific gravity at 12 % x 1120"
_BASIC = "Wood Handbook FPL-GTR-190 (2010) ch. 5, basic specific gravity by ch. 4 at 12 % x 1120"
_LAVERS = Source("Lavers, The strength properties of timber (1983), UK grown at 12 %", seen=False)
_MERCHANT = Source("a panel merchant's page, European softwood core")
_GLASS = Source("EN 572-1, soda lime glass", seen=False)
_USUAL = Source("usual catalogue figure", seen=False)


@dataclass(frozen=True, slots=True)
class Material:
    """Density in kg/m3 and its source, colour as #rrggbb, and whether the face has grain.

    ``stiff_as`` is the material whose stiffness and strength it has, where it has none of its own,
    and ``stiff_because`` says what that is to it (`its core`).
    """

    density: float
    source: Source
    colour: str
    grained: bool = True
    stiff_as: str = ""
    stiff_because: str = ""


def _wood(specific_gravity: float, colour: str, *, seen: bool = True) -> Material:
    return Material(round(specific_gravity * 1120.0), Source(_AT_12, seen), colour)


def density_at_12(basic: float) -> float:
    """Density, kg/m3, at 12 % moisture of a wood of this basic specific gravity (oven-dry mass,
    green volume): ``G = basic / (1 - 0.265 a basic)`` with ``a = (30 - 12) / 30``, times 1120
    (Wood Handbook, chapter 4; from memory)."""
    return 1120.0 * basic / (1.0 - 0.265 * (30.0 - 12.0) / 30.0 * basic)


def _imported(basic: float, colour: str, *, seen: bool = False) -> Material:
    return Material(round(density_at_12(basic)), Source(_BASIC, seen), colour)


def _panel(
    density: float, colour: str, source: Source = _USUAL, *, grained: bool = True
) -> Material:
    return Material(density, source, colour, grained)


_WOODS = {
    "alder": _wood(0.41, "#c99b6d"),
    "ash": _wood(0.60, "#dcc7a1"),
    "basswood": _wood(0.37, "#e6d6b0"),
    "beech": _wood(0.64, "#d8b48c"),
    "birch": _wood(0.62, "#e2cda4"),
    "cherry": _wood(0.50, "#b9794f"),
    "chestnut": _wood(0.43, "#b98f62"),
    "douglas fir": _wood(0.48, "#cf9f6c"),
    "elm": _wood(0.50, "#b98d63"),
    "hemlock": _wood(0.45, "#d9bd8f"),
    "hickory": _wood(0.72, "#c39a6b"),
    "larch": _wood(0.52, "#c98f5a"),
    "maple": _wood(0.63, "#e6d3b1"),
    "oak": _wood(0.68, "#c8a271"),
    "pine": _wood(0.40, "#e4c48e"),
    "poplar": _wood(0.42, "#cfc49a"),
    "red oak": _wood(0.63, "#c99a72"),
    "soft maple": _wood(0.54, "#e0caa6"),
    "spruce": _wood(0.40, "#e8d3a6", seen=False),
    "tulipwood": _wood(0.42, "#cfc49a"),
    "walnut": _wood(0.55, "#7a5840"),
    "western red cedar": _wood(0.32, "#a9704c", seen=False),
    "white oak": _wood(0.68, "#c8a271"),
    "aspen": _wood(0.38, "#ece2c6"),
    "butternut": _wood(0.38, "#bd9a70"),
    "cypress": _wood(0.46, "#d8b983", seen=False),
    "eastern white pine": _wood(0.35, "#ead2a0", seen=False),
    "robinia": _wood(0.69, "#b08f4c"),
    "white fir": _wood(0.39, "#e6d2a8", seen=False),
    "southern pine": _wood(0.51, "#dfb877", seen=False),
    "sweetgum": _wood(0.52, "#b98a6a", seen=False),
    "african mahogany": _imported(0.44, "#9a5638", seen=True),
    "afrormosia": _imported(0.61, "#9c7440"),
    "iroko": _imported(0.54, "#a8763c"),
    "light red meranti": _imported(0.34, "#b98266", seen=True),
    "mahogany": _imported(0.45, "#8f4f32"),
    "meranti": _imported(0.46, "#9c5b41", seen=True),
    "obeche": _imported(0.30, "#e6d6a8"),
    "parana pine": _imported(0.46, "#d9b98a"),
    "radiata pine": _imported(0.42, "#e2c592"),
    "ramin": _imported(0.52, "#e4d3a4"),
    "sapele": _imported(0.55, "#8a4a31"),
    "spanish cedar": _imported(0.41, "#ad6f4c", seen=True),
    "teak": _imported(0.55, "#a9793f", seen=True),
    "european ash": _panel(700.0, "#dcc7a1"),
    "european beech": Material(689.0, _LAVERS, "#d8b48c"),
    "european oak": _panel(720.0, "#c8a271"),
    "norway spruce": Material(417.0, _LAVERS, "#e8d3a6"),
    "scots pine": _panel(520.0, "#e4c48e"),
    "sycamore": Material(561.0, _LAVERS, "#ead9bb"),
}


def _as(material: Material, other: str, because: str = "its core") -> Material:
    """A material that is as stiff and strong as another."""
    return replace(material, stiff_as=other, stiff_because=because)


# Strength classes, of no wood that is said: C of softwoods, D of hardwoods.
_CLASSES = {
    name.lower(): Material(each.density, each.source, "#e4c48e" if name[0] == "C" else "#c8a271")
    for name, each in TIMBER_CLASSES.items()
}
_CHIPBOARD = _panel(660.0, "#c2a57c", grained=False)
_STRANDS = _panel(620.0, "#cfae77", grained=False)
_PANELS = {
    "beech plywood": _panel(720.0, "#d8b48c"),
    "birch plywood": _panel(680.0, "#e5cfa3"),
    "douglas fir plywood": _panel(550.0, "#cf9f6c"),
    "hardwood plywood": _panel(650.0, "#d3b88c"),
    "okoume plywood": _panel(500.0, "#c99a7b"),
    "poplar plywood": _panel(450.0, "#e6d9b8"),
    "softwood plywood": _panel(550.0, "#d9b982"),
    "blockboard": _panel(450.0, "#dcc08d", _MERCHANT),
    "mdf": _panel(750.0, "#b79a78", grained=False),
    "mr mdf": _as(_panel(750.0, "#9fae86", grained=False), "mdf", "the dry board of its kind"),
    "mdf.la": _panel(750.0, "#b79a78", grained=False),
    "mdf.hls": _panel(750.0, "#9fae86", grained=False),
    "melamine-faced mdf": _as(_panel(780.0, "#efece6", grained=False), "mdf"),
    "hdf": _panel(870.0, "#a68662", grained=False),
    "chipboard": _as(_CHIPBOARD, "p2 chipboard", "the class sold for furniture"),
    "melamine-faced chipboard": _as(_panel(680.0, "#efece6", grained=False), "p2 chipboard"),
    "hardboard": _panel(950.0, "#8a6544", grained=False),
    "hb.la": _panel(950.0, "#8a6544", grained=False),
    "hb.hla2": _panel(950.0, "#7d5a3c", grained=False),
    "osb": _as(_STRANDS, "osb/3", "the class most sold"),
    "glass": _panel(2500.0, "#cfe4e2", _GLASS, grained=False),
} | {
    **{f"p{number} chipboard": _CHIPBOARD for number in (2, 4, 5, 6, 7)},
    **{f"osb/{number}": _STRANDS for number in (2, 3, 4)},
}
_VENEERS = ("oak", "ash", "beech", "birch", "cherry", "maple", "walnut", "sapele", "red oak")
_CORES = {"mdf": "mdf", "chipboard": "chipboard", "plywood": "birch plywood"}
# A veneer of 0.6 mm on both faces changes a panel's weight by less than its maker does.
_VENEERED = {
    f"{veneer}-veneered {core}": replace(
        _as(_PANELS[panel], _PANELS[panel].stiff_as or panel),
        colour=_WOODS[veneer].colour,
        grained=True,
    )
    for (core, panel), veneer in product(_CORES.items(), _VENEERS)
} | {
    f"{veneer} plywood": _panel(650.0, _WOODS[veneer].colour)
    for veneer in _VENEERS
    if f"{veneer} plywood" not in _PANELS
}

MATERIALS: dict[str, Material] = _WOODS | _CLASSES | _PANELS | _VENEERED
"""Materials by the name a spec calls them, in lower case."""

_SAME = {
    "american black walnut": "walnut",
    "baltic birch": "birch plywood",
    "baltic birch plywood": "birch plywood",
    "black walnut": "walnut",
    "black walnut plywood": "walnut plywood",
    "deal": "scots pine",
    "european redwood": "scots pine",
    "fibreboard": "mdf",
    "fir plywood": "douglas fir plywood",
    "float glass": "glass",
    "hard maple": "maple",
    "hard maple plywood": "maple plywood",
    "laminboard": "blockboard",
    "lime": "basswood",
    "moisture resistant mdf": "mr mdf",
    "particle board": "chipboard",
    "particleboard": "chipboard",
    "safety glass": "glass",
    "toughened glass": "glass",
    "tulip": "tulipwood",
    "black locust": "robinia",
    "khaya": "african mahogany",
    "loblolly pine": "southern pine",
    "monterey pine": "radiata pine",
    "southern yellow pine": "southern pine",
    "weymouth pine": "eastern white pine",
    "white oak plywood": "oak plywood",
    "whitewood": "norway spruce",
    "yellow poplar": "poplar",
    **{f"osb{number}": f"osb/{number}" for number in (2, 3, 4)},
    **{f"osb {number}": f"osb/{number}" for number in (2, 3, 4)},
    **{f"p{number}": f"p{number} chipboard" for number in (2, 4, 5, 6, 7)},
    **{f"chipboard p{number}": f"p{number} chipboard" for number in (2, 4, 5, 6, 7)},
}
"""Other names of the same materials, without hyphens."""


_ASKED = 3
"""Materials that a question names at most."""
_SAWN = re.compile(r"\b(quarter|flat|plain)[ -]?sawn\b")


def _plain(name: str) -> str:
    words = _SAWN.sub(" ", name.lower()).replace("-", " ").split()
    return " ".join(words).replace("plywood", "ply")


_BY_PLAIN_NAME = {_plain(name): name for name in MATERIALS} | {
    _plain(other): name for other, name in _SAME.items()
}


def material_called(name: str) -> Material | None:
    """The material that a name means, whatever its capitals and hyphens, how it says the wood was
    sawn, and whether it says ply or plywood; None where it isn't known."""
    known = name_of(name)
    return MATERIALS[known] if known else None


def name_of(name: str) -> str | None:
    """What ``MATERIALS`` calls the material that a name means; as :func:`material_called`."""
    return _BY_PLAIN_NAME.get(_plain(name))


def near_materials(name: str) -> str:
    """The materials that a name may mean, as a question: those with all its words, else the
    nearest; empty where none is near."""
    words = set(_plain(name).split())
    found = [each for each in MATERIALS if words and words <= set(_plain(each).split())]
    near = sorted(found)[:_ASKED] or get_close_matches(name.lower(), MATERIALS, n=1)
    return f"Did you mean {' or '.join(f'`{each}`' for each in near)}?" if near else ""


def known_materials(kind: Literal["sheet", "board"]) -> str:
    """What is known of solid wood (``board``) or of sheets, as a list in words."""
    if kind == "board":
        woods = ", ".join(sorted(_WOODS))
        return f"{woods}, and the strength classes C14 to C50 and D18 to D70 of EN 338"
    veneered = f"{'-, '.join(_VENEERS)}-veneered {', '.join(_CORES)}"
    return f"{', '.join(sorted(_PANELS))}; {veneered}"


def is_glass(name: str) -> bool:
    """Whether a material's name means glass."""
    return material_called(name) is MATERIALS["glass"]
