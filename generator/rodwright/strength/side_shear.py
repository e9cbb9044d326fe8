"""How stiffly the sides of a carcass stand from front to back: as panels in shear; N and mm."""

from __future__ import annotations

from rodwright.trade.sources import Source
from rodwright.unit import Role, Unit

SHEAR_SHARE = 16.0
"""What a modulus of elasticity is divided by where no shear modulus is known."""
SHEAR_SHARE_SOURCE = Source(
    "stated estimate: the shear modulus of the sides isn't known, and counts as E/16, what EN 338 "
    "has for solid wood; it is more in most sheets"
)


def side_shear(unit: Unit) -> tuple[float, Source | None]:
    """The sum of G t B/h over the sides, N per mm that they sway, and where G comes from where it
    is estimated.  Sides of which nothing is known count for nothing."""
    stiffness, estimated = 0.0, False
    for part in unit.parts:
        mechanics = part.blank.stock.mechanics
        if part.role is not Role.SIDE or mechanics is None:
            continue
        known = mechanics.panel_shear or mechanics.shear
        estimated = estimated or known is None
        shear = known.value if known is not None else mechanics.along.value / SHEAR_SHARE
        _, deep, high = part.bounds().size
        stiffness += shear * part.blank.thickness * deep / high
    return stiffness, SHEAR_SHARE_SOURCE if estimated else None
