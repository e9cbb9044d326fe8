"""What holds a unit to a wall: plugs in masonry, screws in studs, nothing in plasterboard alone.

Lengths in mm, forces in N.  The wall itself is the builder's or engineer's to judge.
Common practice, no source, unless a figure says its own.
"""

from __future__ import annotations

from rodwright.trade.sources import Figure, Source

WALL_SAFETY = Figure(
    2.0,
    "",
    Source("a fixings supplier's page on load rating: work at less than half of what breaks it"),
)
"""What breaks a fixing over what it may carry, at least."""
SCREW = (6.0, 80.0)
"""Diameter and length of the screws that a unit is hung by (common practice, no source)."""
LEAST_FIXINGS = 2
"""The fewest at the top, one near each end (common practice, no source)."""
LEAST_BACK = 9.0
"""The thinnest back that is screwed through to hang a unit by (common practice, no source)."""
BELOW_TOP = 50.0
"""From the unit's top to its upper fixings (common practice, no source)."""
FROM_END = 50.0
"""From the unit's sides to the outermost (common practice, no source)."""
HEAD = 2.0
"""Diameter of a screw's head, in diameters (common practice, no source)."""
PULL_THROUGH = Figure(
    10.0,
    "N/mm2",
    Source("heads pulled through panels, f_head by EN 14592 declarations", seen=False),
)
"""What a head bears before it is pulled through a panel, N/mm2 of the square of its diameter."""

PLUG = Figure(
    300.0,
    "N",
    Source("8 mm nylon plug in solid brick, 30 kg straight out; take what its maker says", False),
)
"""What one plug may carry for years, straight out or downwards."""
PLUG_SPACING = 100.0
"""Least distance between plugs (common practice, no source)."""

STUD_CENTRES = Figure(600.0, "mm", Source("rulesofthumb.info: 600 under 12.5 mm plasterboard"))
"""Studs stand no further apart."""
STUD_GRAVITY = Figure(0.40, "", Source("spruce or pine of class C16, 370 kg/m3 dry", seen=False))
"""Specific gravity of a stud."""
STUD_WIDTH = 38.0
"""How wide a stud is (common practice, no source)."""
SCREWS_A_STUD = 2
"""How many screws go into one stud at the top, one above the other (common practice, no source)."""
PLASTERBOARD = 12.5
"""Thickness of plasterboard over studs (https://rulesofthumb.info)."""
BOARD_FAILS = Figure(
    60.0 * 9.81,
    "N",
    Source("rulesofthumb.info: 60 kg straight out breaks the board, whatever the fixing"),
)
"""What breaks plasterboard round any fixing."""

CABINET_TEST = Figure(
    227.0, "kg", Source("ANSI/KCMA A161.1, older editions: 500 lb on a wall cabinet, no failure")
)
"""What wall cabinets are tried with."""
TALL_CABINET_TEST = Figure(
    272.0,
    "kg",
    Source("ANSI/KCMA A161.1-2012: 600 lb on a wall cabinet over 24 in high (ProSales magazine)"),
)
"""The same of those higher than :data:`TALL`."""
TALL = 610.0
"""Height of a wall cabinet, 24 in (ANSI/KCMA A161.1-2012, from memory)."""
