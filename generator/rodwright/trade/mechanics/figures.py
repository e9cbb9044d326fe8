"""What is known of how stiff and how strong a board is."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from rodwright.trade.sources import Figure, Source


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
    elasticity with the span along the grain (of a sheet: along that of its face), ``across`` with
    the span square to it; ``shear`` the shear modulus of the plane that shears when it bends lying
    flat, ``panel_shear`` the one in its own plane, by which a back keeps a carcass square.
    ``bending`` and ``bending_across`` are bending strengths, ``shear_strength`` that of the plane
    that ``shear`` is of, ``bearing`` the strength in compression through the thickness;
    ``characteristic`` says whether strengths are such (what nineteen pieces in twenty reach) or
    means.  ``gravity`` is the specific gravity (oven-dry) by which it holds screws; ``creep`` is
    kdef of EN 1995-1-1 for the service class it stands in.  What isn't known is None.

    ``table`` is the line of EN 1995-1-1's tables of creep and duration of load that it goes by
    (:mod:`rodwright.trade.creep`), and ``unlisted`` what it is itself, where those have no line for
    it.  ``borrowed`` says whose figures these are where they aren't its own (`its core, mdf`).
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
    table: str = ""
    unlisted: str = ""
    borrowed: str = ""


def stress(value: float, source: Source) -> Figure:
    """A modulus or a strength in N/mm2."""
    return Figure(value, "N/mm2", source)


def maybe(value: float | None, source: Source) -> Figure | None:
    """The same; None where it isn't known."""
    return None if value is None else stress(value, source)
