"""What drawers run on: slides at their sides or under them, and wooden runners; mm.

Common practice, no source, unless said.
"""

from __future__ import annotations

from rodwright.trade.sources import Figure, Source

SIDE_CLEARANCE = 12.7
"""Gap (mm) that a side slide takes at each side of a box: half an inch, as makers of ball-bearing
slides publish it (from memory)."""
RUNNER_CLEARANCE = 1.0
"""Gap at each side of a box on runners, mm."""
LEAST_CLEARANCE = 1.0
"""Gap that a box over under slides needs at each side, mm."""
BELOW = {"side": 12.0, "under": 15.0}
"""From the front's lower edge up to the box, mm."""
ABOVE = {"side": 12.0, "under": 12.0, "runners": 2.0}
"""From the box up to the front's upper edge, mm: room to lift it off its slides, or little enough
that a runner above keeps it from tipping."""
STEPS = {"mm": 50.0, "in": 50.8}
"""Slides come in lengths of 50 mm or 2 in."""
SHORTEST = {"side": 4, "under": 4, "runners": 1}
"""Steps of the shortest that are made."""
DRAWN = {"side": 1.0, "under": 1.0, "runners": 2 / 3}
"""How much of its length a drawer is drawn out: all of it on slides of full extension, on runners
as far as it doesn't drop."""
SLIDE_SCREWS = 6
"""Screws for one slide, half of them in the carcass."""
SLIDE_SCREW = 16.0
"""Length of the longest screws for slides, mm."""
RUNNER_WIDTH = 25.0
"""How far a runner reaches under a box, mm, if its sides aren't thicker."""
FIRST_HOLE = 37.0
"""From the front of a slide to its first hole."""
PACKERS_APART = 300.0
"""Most clear distance between packers under one slide."""
DRAWER_LOAD = Figure(
    15 * 0.45359237 / 0.3048**2,
    "kg/m2",
    Source("KCMA A161.1, drawers, 15 lb/ft2 (FDMC, March 2017)"),
)
"""What drawers are tested with, kg for each m2 of their bottom, over 25000 cycles."""
FRONT_PULL = Figure(
    50 * 0.45359237,
    "kg",
    Source("Architectural Woodwork Standards, 1st ed., 2009, app. A: pulls are tested at 50 lb"),
)
"""What a drawer's pull is tested with, straight out."""
