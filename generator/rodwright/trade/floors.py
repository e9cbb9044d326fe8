"""What floors of houses are built to carry; a floor is for a structural engineer to judge.

By EN 1991-1-1, from memory, unless said.
"""

from __future__ import annotations

from rodwright.trade.sources import Figure, Source

HOUSE_FLOOR = Figure(
    150.0,
    "kg/m2",
    Source(
        "EN 1991-1-1, table 6.2: 1.5 to 2.0 kN/m2 in dwellings (in the US 30 to 40 lb/ft2, IOBA "
        "Standard, A weighty subject)",
        seen=False,
    ),
)
"""Imposed load that floors of houses are designed for, at the least, all over."""
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
