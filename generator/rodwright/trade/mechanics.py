"""How stiff and how strong boards are, with the source of each figure."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from rodwright.trade.sources import Figure


class Family(StrEnum):
    """What a material counts as for creep, duration of load and partial factors."""

    SOLID_WOOD = "solid wood"
    PLYWOOD = "plywood"
    BLOCKBOARD = "blockboard"
    OSB = "OSB"
    CHIPBOARD = "chipboard"
    MDF = "MDF"
    HARDBOARD = "hardboard"
    GLASS = "glass"


@dataclass(frozen=True, slots=True)
class Mechanics:
    """Stiffness and strength of a board or sheet of one thickness, in heated rooms.

    Moduli and strengths in N/mm2, of the whole thickness, lying flat: ``along`` is the modulus of
    elasticity with the span along the grain (of a sheet: along its length), ``across`` with the
    span square to it; ``shear`` the shear modulus of the plane that shears when it bends lying
    flat, ``panel_shear`` the one in its own plane, by which a back keeps a carcass square.
    ``bending`` and ``bending_across`` are bending strengths, ``shear_strength`` that of the plane
    that ``shear`` is of, ``bearing`` the strength in compression through the thickness;
    ``characteristic`` says whether strengths are such (what nineteen pieces in twenty reach) or
    means.  ``gravity`` is the specific gravity by which it holds screws; ``creep`` is kdef of
    EN 1995-1-1 for the service class it stands in.  What isn't known is None.
    """

    family: Family
    along: Figure
    across: Figure | None = None
    shear: Figure | None = None
    panel_shear: Figure | None = None
    bending: Figure | None = None
    bending_across: Figure | None = None
    shear_strength: Figure | None = None
    bearing: Figure | None = None
    characteristic: bool = True
    gravity: Figure | None = None
    creep: Figure | None = None
