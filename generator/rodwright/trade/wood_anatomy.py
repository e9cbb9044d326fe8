"""What woods are made of, as far as the eye sees it: rings, pores, rays; lengths in mm.

Ordinary sizes as handbooks of wood anatomy give them; from memory.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Pores = Literal["none", "ring", "diffuse"]


@dataclass(frozen=True, slots=True)
class Anatomy:
    """``ring`` is the mean width of a growth ring.  ``pores`` is how the pores lie (a softwood has
    none), ``pore`` how wide the widest are.  ``ray`` are height (along the grain), width and
    the radial reach of rays that the eye sees, all 0 where it sees none.  ``earlywood`` is what a
    ring has of pores (ring porous), ``latewood`` the part of a ring that is dark (softwoods)."""

    ring: float
    pores: Pores
    pore: float = 0.0
    ray: tuple[float, float, float] = (0.0, 0.0, 0.0)
    earlywood: float = 0.7
    latewood: float = 0.25


_OAK = Anatomy(2.2, "ring", 0.3, (22.0, 0.4, 55.0), earlywood=0.7)
_ASH = Anatomy(2.8, "ring", 0.25, earlywood=0.8)
_BEECH = Anatomy(2.2, "diffuse", 0.07, (2.8, 0.15, 14.0))
_MAPLE = Anatomy(2.4, "diffuse", 0.08, (0.9, 0.08, 5.0))
_BIRCH = Anatomy(2.0, "diffuse", 0.11)
_CHERRY = Anatomy(2.8, "diffuse", 0.06, (0.8, 0.08, 5.0))
_WALNUT = Anatomy(3.2, "diffuse", 0.18)
_PINE = Anatomy(2.4, "none", latewood=0.28)
_SPRUCE = Anatomy(2.2, "none", latewood=0.18)
_FIR = Anatomy(2.4, "none", latewood=0.33)
_POPLAR = Anatomy(4.0, "diffuse", 0.08)
_TROPICAL = Anatomy(4.5, "diffuse", 0.2)
_TEAK = Anatomy(3.0, "ring", 0.26, earlywood=0.4)

ANATOMIES: dict[str, Anatomy] = {
    "oak": _OAK,
    "european oak": _OAK,
    "white oak": _OAK,
    "red oak": Anatomy(2.6, "ring", 0.32, (12.0, 0.35, 40.0), earlywood=0.8),
    "ash": _ASH,
    "european ash": _ASH,
    "elm": Anatomy(2.6, "ring", 0.25, earlywood=0.7),
    "chestnut": Anatomy(2.8, "ring", 0.3, earlywood=0.8),
    "hickory": Anatomy(2.2, "ring", 0.25, earlywood=0.6),
    "robinia": Anatomy(2.4, "ring", 0.25, earlywood=0.6),
    "teak": _TEAK,
    "beech": _BEECH,
    "european beech": _BEECH,
    "maple": _MAPLE,
    "soft maple": _MAPLE,
    "sycamore": Anatomy(2.4, "diffuse", 0.08, (1.2, 0.1, 8.0)),
    "birch": _BIRCH,
    "cherry": _CHERRY,
    "walnut": _WALNUT,
    "butternut": _WALNUT,
    "alder": _BIRCH,
    "aspen": _POPLAR,
    "basswood": _POPLAR,
    "poplar": _POPLAR,
    "tulipwood": _POPLAR,
    "sweetgum": _POPLAR,
    "obeche": _TROPICAL,
    "ramin": _TROPICAL,
    "mahogany": _TROPICAL,
    "african mahogany": _TROPICAL,
    "sapele": _TROPICAL,
    "meranti": _TROPICAL,
    "light red meranti": _TROPICAL,
    "iroko": _TROPICAL,
    "afrormosia": _TROPICAL,
    "spanish cedar": _TROPICAL,
    "pine": _PINE,
    "scots pine": _PINE,
    "eastern white pine": Anatomy(2.6, "none", latewood=0.15),
    "radiata pine": Anatomy(5.0, "none", latewood=0.25),
    "southern pine": Anatomy(3.0, "none", latewood=0.42),
    "parana pine": Anatomy(2.5, "none", latewood=0.12),
    "spruce": _SPRUCE,
    "norway spruce": _SPRUCE,
    "white fir": _SPRUCE,
    "hemlock": _SPRUCE,
    "douglas fir": _FIR,
    "larch": Anatomy(1.8, "none", latewood=0.35),
    "cypress": _PINE,
    "western red cedar": Anatomy(1.6, "none", latewood=0.2),
}
"""Of the woods that ``MATERIALS`` names."""
