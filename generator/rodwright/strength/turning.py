"""How stiffly a joint turns: between a pin, which doesn't resist turning, and fixed.

The joint is taken as a cracked section.  Where it is turned, one edge of the meeting is pressed
together over a strip, and what fixes it is drawn on the other side of that; nothing else is drawn:
no glue on end grain, no friction, no clamping by tightened screws, which timber gives up in time.
Pressure grows evenly from nothing at the neutral line, a distance ``x`` from the pressed edge, to
its greatest at the edge.  Over a meeting ``b`` wide, with ``n`` fixings of stiffness ``k`` along
their axes, ``p`` mm from the pressed edge, and a bedding of ``c`` N/mm3::

    c b x^2 / 2 = sum k (p - x)         forces along the fixings balance
    S = c b x^3 / 3 + sum k (p - x)^2   moment for a turn of one radian, N mm

Statics of an elastic section without tension, as any text on strength of materials has it for a
reinforced beam; its inputs are estimates, and tests of furniture joints scatter by a third and
more, so that the figure is good for about a factor of two.  It is taken low: tests found that most
of a case's stiffness comes from gluing whole surfaces (Tankut, African Journal of Biotechnology 8,
2009, abstract), which isn't counted.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import cos, radians

from rodwright.strength.glued_in import LOW_SHEAR, glued_in, low_shear
from rodwright.strength.meetings import Meeting, grain_way, meeting_of
from rodwright.trade.screws import POCKET_ANGLE
from rodwright.trade.sources import Figure, Source
from rodwright.unit import Fixing, Joint, JointKind, Part, Unit

__all__ = ["MEASURE", "THROUGH_THICKNESS", "lasting", "pull_of", "turning_of"]

MEASURE = "N mm/rad"
THROUGH_THICKNESS = 1 / 30
"""Modulus through the thickness of a board or sheet, as a share of that along it: the mean moduli
across and along the grain of softwoods (EN 338, from memory); hardwoods reach twice that."""
HEAD = 2.0
"""Diameter of a countersunk screw's head, in diameters (common practice, no source)."""
_POISSON = 0.3
_NO_TURNING = Source("a pin: it isn't counted on to resist turning")
_UNKNOWN = Source("counted as a pin, as the stiffness of the material isn't known")
_SCREWS = Source(
    "stated estimate: couple of screws and pressed edge; screws' axial stiffness 780 d^0.2 L^0.4 "
    "N/mm (Blass, Bejtka and Uibel 2006)",
    seen=False,
)
_GLUED_IN = Source(
    "stated estimate: couple of what is glued in and pressed edge; the wood round it shears",
    seen=False,
)
_HOUSED = Source(
    "stated estimate: the walls of the housing bear on what goes in; glue fills the play and "
    "counts for nothing else",
    seen=False,
)
_KNOCK_DOWN = Source(
    "stated estimate: couple of bolts and pressed edge; the fitting gives as much as its thread",
    seen=False,
)
_IN_CHANNELS = (JointKind.HOUSING, JointKind.GROOVE, JointKind.TONGUE)


def turning_of(unit: Unit, joint: Joint, about: int = 1) -> Figure:
    """Stiffness of a joint against turning about an axis of the unit, N mm per radian.

    ``about`` is 0 for x, 1 for y (front to back: so a shelf's end turns as it sags, a carcass and a
    face frame as they rack), 2 for z.  It is 0 for a pin: what rests, hangs or floats, what is only
    butted, glued or pinned (US: bradded), and whatever isn't known enough.  The source says how it
    was estimated.  It is the joint's alone, at once; see :func:`lasting`.
    """
    section = _section(unit, joint, about)
    if isinstance(section, Figure):
        return section
    return Figure(min(couple(section.bed, each) for each in section.ways), MEASURE, section.source)


def pull_of(unit: Unit, joint: Joint, moment: float, about: int = 1) -> float:
    """What all fixings of a joint together are drawn with, N, where it is turned with ``moment`` N
    mm; 0 where its stiffness doesn't come of fixings."""
    section = _section(unit, joint, about)
    if isinstance(section, Figure):
        return 0.0
    pulls = []
    for springs in section.ways:
        x = neutral(section.bed, springs)
        pulls.append(section.bed * x * x / 2 / couple(section.bed, springs))
    return max(pulls) * abs(moment)


@dataclass(frozen=True, slots=True)
class _Section:
    """The meeting as a section: ``bed`` as in :func:`couple`, the springs turned one way and the
    other, and where their stiffness comes from."""

    bed: float
    ways: tuple[list[tuple[float, float]], list[tuple[float, float]]]
    source: Source


def _section(unit: Unit, joint: Joint, about: int) -> _Section | Figure:
    """How fixings hold a joint against turning; its stiffness where none do."""
    meeting = meeting_of(unit, joint)
    if meeting is None or meeting.axis == about:
        return Figure(0.0, MEASURE, _NO_TURNING)
    beds = [_bedding(part, meeting, about) for part in (meeting.first, meeting.second)]
    if None in beds:
        known = joint.kind not in _RESISTING and not joint.fixings
        return Figure(0.0, MEASURE, _NO_TURNING if known else _UNKNOWN)
    if joint.kind in _IN_CHANNELS:
        return _housed(meeting, about)
    counted = (_axial(joint, fixing, meeting) for fixing in joint.fixings)
    held = [each for each in counted if each is not None and each[1] > 0]
    if not held:
        return Figure(0.0, MEASURE, _NO_TURNING)
    lever = 3 - meeting.axis - about
    wide, deep = meeting.patch.size[about], meeting.patch.size[lever]
    bed = wide / sum(1 / bed for bed in beds if bed)
    springs = [
        (place, stiffness)
        for count, stiffness, _ in held
        for place, stiffness in _places(count, stiffness, meeting.run == lever, deep)
    ]
    other_way = [(deep - place, stiffness) for place, stiffness in springs]
    return _Section(bed, (springs, other_way), held[0][2])


def lasting(turning: float, creep: float) -> float:
    """Stiffness of a joint after years, in the measure of ``turning``: joints creep twice as much
    as what they join, ``creep`` being kdef of that (EN 1995-1-1, 2.3.2.2)."""
    return turning / (1 + 2 * creep)


def couple(bed: float, springs: Sequence[tuple[float, float]]) -> float:
    """Stiffness, N mm per radian, of fixings in tension against a pressed edge.

    ``bed`` is how stiff a strip of the meeting one mm deep is, N/mm2 of its depth; ``springs`` are
    how far each fixing lies from the pressed edge, mm, and its stiffness, N/mm.
    """

    x = neutral(bed, springs)
    drawn = sum(stiff * (place - x) ** 2 for place, stiff in springs if place > x)
    return bed * x**3 / 3 + drawn


def neutral(bed: float, springs: Sequence[tuple[float, float]]) -> float:
    """How deep the pressed strip is, mm: where pressure and pull balance.  Arguments as
    :func:`couple`."""

    def pulled(x: float) -> float:
        return sum(stiff * (place - x) for place, stiff in springs if place > x)

    low, high = 0.0, max(place for place, _ in springs)
    for _ in range(60):
        x = (low + high) / 2
        low, high = (x, high) if bed * x * x / 2 < pulled(x) else (low, x)
    return low


def _places(count: int, stiffness: float, spread: bool, deep: float) -> list[tuple[float, float]]:
    """Where fixings stand between the edges, and how stiff each is: evenly spread over the depth,
    or all in the middle of it."""
    if not spread:
        return [(deep / 2, count * stiffness)]
    return [((number + 0.5) * deep / count, stiffness) for number in range(count)]


def _modulus(part: Part, axis: int) -> float | None:
    """Modulus of elasticity of a part along an axis of the unit, N/mm2."""
    mechanics = part.blank.stock.mechanics
    if mechanics is None:
        return None
    way = grain_way(part, axis)
    if way == 0:
        return mechanics.along.value
    through = mechanics.along.value * THROUGH_THICKNESS
    if way == 1:
        return mechanics.across.value if mechanics.across is not None else through
    return through


def _bedding(part: Part, meeting: Meeting, about: int) -> float | None:
    """How stiffly a part beds what presses on it, N/mm3: all of it gives, but no deeper than the
    meeting is thick (Saint-Venant)."""
    modulus = _modulus(part, meeting.axis)
    if modulus is None:
        return None
    lever = 3 - meeting.axis - about
    deep = meeting.through if part is meeting.first else meeting.behind
    return modulus / min(deep, meeting.patch.size[lever])


def _housed(meeting: Meeting, about: int) -> Figure:
    """The end of a part between the walls of its housing: pressed by one wall at the mouth and by
    the other at the bottom, S = c b h^3 / 12 over the depth h of the housing."""
    lever = 3 - meeting.axis - about
    modulus = _modulus(meeting.second, lever)
    if modulus is None or lever != meeting.across:
        return Figure(0.0, MEASURE, _NO_TURNING if modulus else _UNKNOWN)
    wide = meeting.patch.size[about]
    bed = modulus / meeting.second.bounds().size[lever]
    return Figure(bed * wide * meeting.reach**3 / 12, MEASURE, _HOUSED)


_Held = tuple[int, float, Source]
"""How many fixings, how stiff each is along its axis (N/mm), and where that comes from."""


def _axial(joint: Joint, fixing: Fixing, meeting: Meeting) -> _Held | None:
    """What a fixing gives against being drawn out; None where it isn't counted on."""
    if fixing.diameter is None or joint.kind not in _RESISTING:
        return None
    if "screw" in fixing.name and fixing.length is not None:
        return fixing.count, _screw(joint, fixing, meeting), _SCREWS
    if fixing.name in ("dowel", "loose tenon", "biscuit") and fixing.length is not None:
        told = [low_shear(part.blank.stock.mechanics) for part in (meeting.first, meeting.second)]
        if None in told:
            return None
        known = all(each.source != LOW_SHEAR for each in told if each is not None)
        return fixing.count, glued_in(fixing, meeting), _GLUED_IN if known else LOW_SHEAR
    if fixing.name == "cam bolt" and fixing.length is not None:
        return fixing.count, thread_stiffness(fixing.diameter, fixing.length) / 2, _KNOCK_DOWN
    if fixing.name == "connecting bolt":
        through = _modulus(meeting.first, meeting.axis)
        return (fixing.count, _punch(through, fixing.diameter), _KNOCK_DOWN) if through else None
    return None


def thread_stiffness(diameter: float, length: float) -> float:
    """How stiffly a thread is held, N/mm: 780 d^0.2 L^0.4, d and L in mm (Blass, Bejtka and Uibel,
    Tragfaehigkeit von Verbindungen mit selbstbohrenden Holzschrauben mit Vollgewinde, Karlsruhe
    2006, from memory: softwood, screws of 6 to 12 mm)."""
    return float(780 * diameter**0.2 * max(length, 0.0) ** 0.4)


def _punch(modulus: float, diameter: float) -> float:
    """How stiffly wood bears a round head, N/mm: a rigid punch on a half space, E D / (1 - nu^2)
    (Boussinesq; Timoshenko and Goodier, Theory of elasticity, from memory)."""
    return modulus * HEAD * diameter / (1 - _POISSON**2)


def _screw(joint: Joint, fixing: Fixing, meeting: Meeting) -> float:
    """Thread and head of a screw, one behind the other, along the meeting's axis, N/mm."""
    diameter, length = fixing.diameter or 0.0, fixing.length or 0.0
    slanted = joint.kind is JointKind.POCKET_SCREW
    head = meeting.second if slanted else meeting.first
    into = length / 2 if slanted else length - meeting.through
    through = _modulus(head, meeting.axis)
    held = thread_stiffness(diameter, into)
    if not through or not held:
        return 0.0
    stiffness = 1 / (1 / held + 1 / _punch(through, diameter))
    return stiffness * (cos(radians(POCKET_ANGLE)) ** 2 if slanted else 1.0)


_RESISTING = (
    *_IN_CHANNELS,
    JointKind.SCREWED,
    JointKind.DOWEL,
    JointKind.BISCUIT,
    JointKind.LOOSE_TENON,
    JointKind.POCKET_SCREW,
    JointKind.KNOCK_DOWN,
    JointKind.MITRE,
    JointKind.REBATE,
)
