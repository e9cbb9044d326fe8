"""How much solid wood swells and shrinks across the grain.

Lengths in mm, moisture contents in per cent of the oven-dry weight.  The formula is
equation 13-2 of the USDA Forest Products Laboratory's Wood Handbook (FPL-GTR-190, 2010,
chapter 13), ``change = width x coefficient x (moisture at the end - moisture at the
start)``, good for moisture contents from 6 to 14 %; the coefficients are its table 13-5.
It gives means: boards of one tree differ, and boards that are neither quite flat-sawn nor
quite quarter-sawn move less in their width than the tangential figure says.  Along the
grain wood is taken not to move.

The handbook lists North American woods.  A British or European wood takes the figures of
the listed one that is nearest to it, which ``Wood.listed_as`` names.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from rodwright.trade.sources import Source

Rings = Literal["tangential", "radial"]
"""How the rings of a board lie: along its width, or square to it."""

DRIEST, DAMPEST = 6.0, 14.0
"""Moisture contents, %, between which the formula holds (Wood Handbook, ch. 13)."""

ACCEPTED = 2.5
"""Movement, mm, that a rigid joint lives with: about that of an oak rail 115 mm wide across the
grain of a stile, such as frames have always been made with (common practice, no source)."""

TABLE = Source("Wood Handbook FPL-GTR-190 (2010), table 13-5")
_REMEMBERED = Source(TABLE.work, seen=False)


@dataclass(frozen=True, slots=True)
class Wood:
    """How a wood moves: share of its width per 1 % of moisture, square and along the rings.

    ``radial`` is the coefficient of quarter-sawn boards' width, ``tangential`` of
    flat-sawn boards'; ``listed_as`` is the wood they are listed under.
    """

    listed_as: str
    radial: float
    tangential: float
    source: Source = TABLE


_ASH = Wood("ash, white", 0.00169, 0.00274)
_BASSWOOD = Wood("basswood, American", 0.00230, 0.00330)
_PINE = Wood("pine, red", 0.00130, 0.00252, _REMEMBERED)
_SUGAR_MAPLE = Wood("maple, sugar", 0.00165, 0.00353)
_YELLOW_POPLAR = Wood("yellow-poplar", 0.00158, 0.00289, _REMEMBERED)
_WHITE_OAK = Wood("white oak, commercial", 0.00180, 0.00365)

WOODS: dict[str, Wood] = {
    "alder": Wood("alder, red", 0.00151, 0.00256),
    "apple": Wood("apple", 0.00205, 0.00376),
    "ash": _ASH,
    "european ash": _ASH,
    "basswood": _BASSWOOD,
    "beech": Wood("beech, American", 0.00190, 0.00431),
    "birch": Wood("birch, yellow", 0.00256, 0.00338),
    "butternut": Wood("butternut", 0.00116, 0.00223),
    "cherry": Wood("cherry, black", 0.00126, 0.00248),
    "chestnut": Wood("chestnut, American", 0.00116, 0.00234),
    "douglas fir": Wood("Douglas-fir, coast-type", 0.00165, 0.00267, _REMEMBERED),
    "elm": Wood("elm, American", 0.00144, 0.00338),
    "european oak": _WHITE_OAK,
    "hemlock": Wood("hemlock, western", 0.00144, 0.00274, _REMEMBERED),
    "hickory": Wood("hickory, true", 0.00259, 0.00411, _REMEMBERED),
    "larch": Wood("larch, western", 0.00155, 0.00323, _REMEMBERED),
    "lime": _BASSWOOD,
    "mahogany": Wood("mahogany", 0.00172, 0.00238, _REMEMBERED),
    "maple": _SUGAR_MAPLE,
    "meranti": Wood("lauan, dark red", 0.00133, 0.00267, _REMEMBERED),
    "oak": _WHITE_OAK,
    "pine": _PINE,
    "poplar": _YELLOW_POPLAR,
    "red oak": Wood("red oak, commercial", 0.00158, 0.00369),
    "scots pine": _PINE,
    "spruce": Wood("spruce, Sitka", 0.00148, 0.00263, _REMEMBERED),
    "sycamore": _SUGAR_MAPLE,
    "teak": Wood("teak", 0.00101, 0.00186, _REMEMBERED),
    "tulip": _YELLOW_POPLAR,
    "tulipwood": _YELLOW_POPLAR,
    "walnut": Wood("walnut, black", 0.00190, 0.00274),
    "white fir": Wood("fir, white", 0.00112, 0.00245),
    "white oak": _WHITE_OAK,
}
"""Woods by the name a spec calls them, in lower case.

British sycamore is a maple; Scots pine and the American red pine are both two-needled hard
pines; the European oaks belong to the white oaks.
"""

UNKNOWN = Wood("the largest figures listed (persimmon; oak, overcup)", 0.00278, 0.00462)
"""What a wood that isn't listed is taken for, to be on the safe side."""


@lru_cache(maxsize=256)
def wood_of(material: str) -> Wood:
    """The listed wood that a material's name means: the longest name whose words are all in it.

    `quarter-sawn European oak` is european oak; a name that says nothing known is
    :data:`UNKNOWN`.
    """
    words = set(material.lower().replace("-", " ").split())
    known = [name for name in WOODS if words.issuperset(name.split())]
    return WOODS[max(known, key=len)] if known else UNKNOWN


def swelling(
    material: str,
    width: float,
    low: float,
    high: float,
    rings: Rings = "tangential",
) -> float:
    """By how much a solid board ``width`` mm across the grain swells from ``low`` to ``high`` %.

    Less than 0 where it dries.  ``rings`` says how they lie: along the width (tangential,
    flat-sawn, the worse case) or square to it (radial, quarter-sawn).  Meant for solid
    wood: sheet goods hardly move.

    Raises:
        ValueError: a moisture content is outside 6 to 14 %, where the formula doesn't hold.
    """
    for moisture in (low, high):
        if not DRIEST <= moisture <= DAMPEST:
            raise ValueError(f"moisture content {moisture:g} % is not in {DRIEST:g}-{DAMPEST:g} %")
    wood = wood_of(material)
    coefficient = wood.tangential if rings == "tangential" else wood.radial
    return width * coefficient * (high - low)
