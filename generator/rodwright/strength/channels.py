"""What a part bears that is let into another: housings, grooves, rebates, tongues; N, mm.

What lies in the channel presses on its lower wall.  It may crush there; the wood below the wall may
shear off along the bottom of the channel; and a tongue may split off what it is cut from.
"""

from __future__ import annotations

from math import sqrt

from rodwright.geometry import TOUCH, Box
from rodwright.strength.meetings import Meeting
from rodwright.trade.creep import Duration, ServiceClass
from rodwright.trade.design_strength import Strength, design_strength
from rodwright.trade.fastenings import Bears
from rodwright.trade.sources import Figure, Source
from rodwright.unit import Part
from rodwright.unit.workings import Groove, Housing, Rebate

OPEN = Source("glue on end grain isn't counted on (Wood Handbook, ch. 10)", seen=False)
LEAST_BEARING = Figure(
    2.0 * 0.7 / 1.3,
    "N/mm2",
    Source(
        "no bearing strength is known: softwood's of the lowest class across its grain, 2.0 N/mm2 "
        "(EN 338, C14), kmod 0.7, gammaM 1.3",
        seen=False,
    ),
)
"""What anything bears square to its face, at least (EN 338; EN 1995-1-1, tables 2.3 and 3.1; all
from memory)."""
LEAST_SHEAR = Figure(
    0.5 * 0.45 / 1.3,
    "N/mm2",
    Source(
        "no shear strength is known: 0.5 N/mm2, below what sheets are published with, kmod 0.45, "
        "gammaM 1.3 (a stated estimate)",
        seen=False,
    ),
)
"""What anything bears in shear along its face, at least."""
_KN = 5.0
"""Factor of notches in solid wood (EN 1995-1-1, eq. 6.63, from memory; 4.5 in LVL)."""


def borne(meeting: Meeting, room: ServiceClass = 1) -> tuple[Bears, str] | None:
    """What the lower wall of a channel bears for years in a room of this service class, and in
    words which way it gives: nothing where it is open below.

    None where the second part isn't let in, or doesn't lie level in it.
    """
    channel = channel_of(meeting)
    second, first = meeting.second.bounds(), meeting.first.bounds()
    if channel is None or not _lies_level(meeting):
        return None
    below = channel.low[2] - first.low[2]
    if below <= TOUCH:
        return Bears(0.0, 0.0, "0", OPEN), "nothing lies under it: only glue on end grain holds it"
    long = meeting.patch.size[1 if meeting.axis == 0 else 0]
    tongue = min(channel.high[2], second.high[2]) - max(channel.low[2], second.low[2])
    thick = second.size[2]
    ways = [*_whole(meeting, meeting.reach, below, room)]
    if tongue < thick - TOUCH:
        own = _strength(meeting.second, "shear_strength", LEAST_SHEAR, room)
        left = notched(thick, tongue, meeting.reach / 2) * own.value * tongue * long / 1.5
        ways.append(Bears(left, left, "kv fv t b / 1.5", own.source))
    bears = min(ways, key=lambda way: way.allowed)
    says = {
        "fc d b": "it would be crushed on the lower wall first",
        "fv e b / 1.5": "the wood below it would shear off first",
        "kv fv t b / 1.5": "its tongue would split off first",
    }
    return bears, says[bears.formula]


def _lies_level(meeting: Meeting) -> bool:
    level = abs(meeting.second.placement.thickness[2]) > 0.5
    return level and meeting.axis != 2 and meeting.reach > TOUCH


def housing_bears(meeting: Meeting, deep: float, room: ServiceClass = 1) -> Bears | None:
    """What a housing would bear that let all the second's thickness in so ``deep``; None where
    nothing of the first lies under it, or it doesn't lie level."""
    below = meeting.second.bounds().low[2] - meeting.first.bounds().low[2]
    if below <= TOUCH or abs(meeting.second.placement.thickness[2]) < 0.5:
        return None
    return min(_whole(meeting, deep, below, room), key=lambda each: each.allowed)


def _whole(meeting: Meeting, deep: float, below: float, room: ServiceClass) -> tuple[Bears, Bears]:
    """What the wall of a channel so ``deep`` bears before it crushes, and before the wood ``below``
    it shears off."""
    long = meeting.patch.size[1 if meeting.axis == 0 else 0]
    bearing = _strength(meeting.second, "bearing", LEAST_BEARING, room)
    shears = _strength(meeting.first, "shear_strength", LEAST_SHEAR, room)
    crushed, off = bearing.value * deep * long, shears.value * below * long / 1.5
    return (
        Bears(crushed, crushed, "fc d b", bearing.source),
        Bears(off, off, "fv e b / 1.5", shears.source),
    )


def notched(whole: float, left: float, from_edge: float) -> float:
    """Share of its shear strength that a part ``whole`` mm thick has at an end notched to ``left``,
    where it bears ``from_edge`` mm before the notch (EN 1995-1-1, eq. 6.62, square notches, from
    memory).

    Raises:
        ValueError: nothing is left, or more than the whole.
    """
    if not 0 < left <= whole:
        raise ValueError("a notch leaves something, and no more than was there")
    a = left / whole
    bends = 0.8 * from_edge / whole * sqrt(1 / a - a * a)
    return min(1.0, _KN / (sqrt(whole) * (sqrt(a * (1 - a)) + bends))) if a < 1 else 1.0


def channel_of(meeting: Meeting) -> Box | None:
    """The channel of the first part that the second lies in, as a box of the unit frame."""
    first = meeting.first
    boxes = (
        first.placement.box_to_unit(working.bounds(first.blank.size))
        for working in first.workings
        if isinstance(working, Groove | Housing | Rebate)
    )
    return next((box for box in boxes if box.intersects(meeting.second.bounds())), None)


def _strength(part: Part, which: Strength, least: Figure, room: ServiceClass) -> Figure:
    """What a part may be stressed with for years; the least of all where it isn't known."""
    known = part.blank.stock.mechanics
    found = design_strength(known, which, Duration.LONG, room) if known is not None else None
    return found or least
