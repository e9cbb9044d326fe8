"""How stiffly what is glued into two parts draws: dowels, loose tenons, biscuits; N and mm."""

from __future__ import annotations

from math import log, pi

from rodwright.strength.meetings import Meeting
from rodwright.trade.mechanics import Mechanics
from rodwright.trade.sources import Figure, Source
from rodwright.unit import Fixing

ROLLING = 0.1
"""Shear modulus across the layers of a sheet, as a share of that along them (rolling shear of
cross layers, from memory)."""
LOW_SHEAR = Source(
    "stated estimate, taken low: couple of what is glued in and pressed edge; how stiff its "
    "material is in shear round it isn't known, and counts as a tenth of that in its plane or, "
    "without that, 1/160 of its modulus (rolling shear; G = E/16 by EN 338)",
    seen=False,
)
"""Of a joint whose glued-in fixings stand in what isn't known enough in shear."""


def glued_in(fixing: Fixing, meeting: Meeting) -> float:
    """A dowel, loose tenon or biscuit glued into both parts, along its length, N/mm.

    The wood round a dowel shears as a sleeve out to the faces of the thinner part, k = 2 pi G L /
    ln(t / d) for a length L in it; beside a flat tenon between it and the faces, k = 2 G b L / s,
    s being the wood beside it.  Both halves give, one behind the other.
    """
    thick, half = fixing.diameter or 0.0, (fixing.length or 0.0) / 2
    gives = 0.0
    for part in (meeting.first, meeting.second):
        known = low_shear(part.blank.stock.mechanics)
        shear = known.value if known is not None else 0.0
        room = max(meeting.thickness, 1.5 * thick)
        if fixing.name == "dowel":
            stiffness = 2 * pi * shear * half / log(room / thick)
        else:
            # A biscuit is laid with its length along the meeting, and is pointed at both ends.
            lies = fixing.name == "biscuit"
            area = 0.7 * (fixing.length or 0.0) * (fixing.width or 0.0) / 2
            area = area if lies else half * (fixing.width or 0.0)
            stiffness = 2 * shear * area / ((room - thick) / 2)
        gives += 1 / stiffness
    return 1 / gives


def low_shear(mechanics: Mechanics | None) -> Figure | None:
    """Shear modulus round what is glued into a material, N/mm2: where it isn't known a low
    estimate, :data:`LOW_SHEAR`; None where nothing is known of the material.

    Layers of a sheet that run across roll on each other: a tenth of the shear modulus along them is
    a usual figure for that; those published for birch plywood give a third.
    """
    if mechanics is None:
        return None
    if mechanics.shear is not None:
        return mechanics.shear
    plane = mechanics.panel_shear
    least = plane.value * ROLLING if plane else mechanics.along.value / 16 * ROLLING
    return Figure(least, "N/mm2", LOW_SHEAR)
