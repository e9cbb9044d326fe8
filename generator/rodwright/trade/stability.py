"""What storage furniture is tried by so that it doesn't tip over, with the source of each figure.

Forces and loads in kg (1 kg weighs 9.80665 N), lengths in mm.  The figures of the tests themselves
are from memory: read the standard before quoting one.
"""

from __future__ import annotations

from rodwright.amounts import GRAVITY, WEIGHTS
from rodwright.trade.sources import Figure, Source

POUND = WEIGHTS["in"].one
"""kg; by definition (NIST Special Publication 811, appendix B.8)."""
NEWTON = 1 / GRAVITY
"""The kilograms that weigh one newton: standard gravity (NIST Special Publication 811)."""
INCH = 25.4
"""mm; by definition (NIST Special Publication 811, appendix B.8)."""
_CUBIC_FOOT = (12 * INCH / 100) ** 3
"""dm3; from the inch (NIST Special Publication 811)."""

STATICS = Source("statics: moments about the line that it stands on")
PRACTICE = Source("common practice, no source")
SCOPE = Source("ASTM F2057-23, scope")
BUSINESS_GUIDANCE = Source("CPSC, Clothing Storage Units business guidance; 16 CFR 1261")

LEAST_HEIGHT = Figure(27 * INCH, "mm", SCOPE)
"""Height from which a free-standing clothing storage unit is within ASTM F2057-23."""
LEAST_MASS = Figure(30 * POUND, "kg", SCOPE)
"""Mass from which it is; ASTM F2057-23."""
LEAST_VOLUME = Figure(3.2 * _CUBIC_FOOT, "dm3", SCOPE)
"""Enclosed volume from which it is; ASTM F2057-23."""
BELOW_OBSTRUCTION = Figure(INCH / 8, "mm", BUSINESS_GUIDANCE)
"""A drawer's volume counts up to this below what is over it; CPSC, 16 CFR 1261: https://www.cpsc.gov."""
BEHIND_DOORS = Figure(0.5, "", BUSINESS_GUIDANCE)
"""The share that counts of what stands still behind doors; CPSC, 16 CFR 1261: https://www.cpsc.gov."""

CLOTHING = Figure(
    8.5 * POUND / _CUBIC_FOOT * 1000, "kg/m3", Source("ASTM F2057-23, 9.2.1", seen=False)
)
"""Weight of clothing for each volume of drawer, with all that opens open; ASTM, from memory."""
PULL = Figure(10 * POUND, "kg", Source("ASTM F2057-23, 9.2.2", seen=False))
"""Horizontal pull that a unit must stand, at its top or at ``PULL_HEIGHT``; ASTM, from memory."""
PULL_HEIGHT = Figure(56 * INCH, "mm", Source("ASTM F2057-23, 9.2.2", seen=False))
"""Greatest height of that pull; ASTM, from memory."""
CHILD = Figure(60 * POUND, "kg", Source("SGS SafeGuardS 48/23, on the STURDY Act"))
"""Weight of a child that climbs; ASTM F2057-23, 9.2.3 puts it on the front edge, from memory."""
CARPET = Figure(0.43 * INCH, "mm", Source("ASTM F2057-23, 9.2.3", seen=False))
"""By how much the rear stands higher on a carpet, whose edge is at the wall; ASTM, from memory."""
OPEN_ELEMENT = Figure(75 * NEWTON, "kg", Source("EN 14749, stability", seen=False))
"""Load straight down on the front of one open drawer or door of an empty unit; EN 14749, from
memory and of low confidence."""
RESTRAINT = Figure(50 * POUND, "kg", Source("ASTM F3096", seen=False))
"""What a tip restraint is tried with; ASTM F3096, from memory."""

FIXED_BELOW_TOP = Figure(50.0, "mm", PRACTICE)
"""How far below the top of the carcass it is fixed to the wall; common practice, no source."""
CONTENTS_HEIGHT = Figure(150.0, "mm", PRACTICE)
"""What stands on a level has its centre half-way to the next one up, and no higher than this over
its own: half the height of a large book; common practice, no source."""
FIX_FROM = Figure(600.0, "mm", PRACTICE)
"""Height from which a freestanding unit is fixed to the wall whatever its figures; common practice,
no source."""
INTERLOCK = Figure(30 * POUND, "kg", BUSINESS_GUIDANCE)
"""What a drawer that an interlock holds shut has to bear for 5 s; ASTM F2057 by way of the CPSC,
https://www.cpsc.gov."""
