"""What floors of houses are built to carry; a floor is for a structural engineer to judge."""

from __future__ import annotations

from rodwright.amounts import AREA_WEIGHTS
from rodwright.lengths import LengthUnit
from rodwright.trade.sources import Figure, Source

HOUSE_FLOORS: dict[LengthUnit, Figure] = {
    "mm": Figure(
        150.0,
        "kg/m2",
        Source("EN 1991-1-1, table 6.2: 1.5 to 2.0 kN/m2 in dwellings", seen=False),
    ),
    "in": Figure(
        40 * AREA_WEIGHTS["in"].one,
        "kg/m2",
        Source(
            "IOBA Standard, A weighty subject: floors of houses in the US, 30 to 40 lb/ft2; 30 is "
            "that of bedrooms (from memory)"
        ),
    ),
}
"""Imposed load that floors of houses are designed for all over: for makers in millimetres the
least by Europe's code (EN 1991-1-1, table 6.2, from memory), for makers in inches what is usual in
the US (IOBA Standard)."""
HOUSE_FLOOR_POINT = Figure(
    204.0,
    "kg",
    Source("EN 1991-1-1, table 6.2: 2.0 kN on one spot in dwellings", seen=False),
)
"""What they are designed for on one spot: a unit that weighs no more in all loads none too much."""
AISLE = Figure(
    914.0,
    "mm",
    Source(
        "M. Krakower, SEAINT list of structural engineers (2000): book stacks with their aisles; "
        "36 in by IBC table 1607.1, read in Eng-Tips thread 339841"
    ),
)
"""How deep the floor before it is that a unit shares with who stands there."""
