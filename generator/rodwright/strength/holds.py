"""What a joint bears, by its kind, its fixings and what they go into; N, mm."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rodwright.strength.channels import borne
from rodwright.strength.lacking import lacking
from rodwright.strength.meetings import Meeting, grain_way
from rodwright.trade.connectors import CAM_SETBACK, PLUG_DEPTH
from rodwright.trade.creep import ServiceClass
from rodwright.trade.fastenings import (
    LEAST_INTO,
    TAPPING,
    WET,
    Bears,
    Entered,
    Into,
    nail_drawn,
    pressed_aside,
    screw_aside,
    screw_drawn,
)
from rodwright.trade.glued_in import (
    BISCUIT_SHARE,
    cheeks_drawn,
    dowel_drawn,
    dowel_sheared,
    tenon_sheared,
)
from rodwright.trade.mechanics import Family
from rodwright.trade.sources import Source
from rodwright.unit import Fixing, Joint, JointKind, Part, Role

_ENTERED: tuple[Entered, ...] = ("end", "edge", "face")
_OUTSIDE = Source("wet service: 0.7 of what is held dry (NDS 2018, table 11.3.3)", seen=False)
_TAPPING = Source("tapping screws hold a tenth more (Wood Handbook, ch. 8)")
_CHANNELS = (JointKind.HOUSING, JointKind.GROOVE, JointKind.TONGUE, JointKind.REBATE)
_SHORT = Bears(0.0, 0.0, "0", Source("it doesn't reach what it is to hold in"))
_NAMES = ("wood screw", "pocket screw", "countersunk screw", "panel pin", "dowel", "loose tenon",
          "biscuit", "cam bolt", "connecting bolt")  # fmt: skip


@dataclass(frozen=True, slots=True)
class Holds:
    """What holds a joint and what each of them bears.

    ``count`` pieces called ``name``; ``aside`` is what each bears across the joint, in the plane
    where its parts meet, ``drawn`` what each bears against the parts being drawn apart; None where
    nothing bears it.  ``lacking`` says what isn't known and has to be given, ``notes`` what was
    taken for granted.
    """

    count: int
    name: str
    aside: Bears | None
    drawn: Bears | None
    lacking: str = ""
    notes: tuple[str, ...] = ()

    def of(self, count: int) -> Holds:
        """The same with another number of them."""
        return replace(self, count=count)


def into_of(part: Part, axis: int) -> Into | None:
    """What a fixing along an axis of the unit goes into; None where the sheet isn't known.

    Its gravity is what its density makes, less 12 % moisture, where nothing else is known.
    """
    stock = part.blank.stock
    known = stock.mechanics
    if known is None and stock.kind == "sheet":
        return None
    family = known.family if known is not None else Family.SOLID_WOOD
    gravity = known.gravity if known is not None else None
    return Into(
        family,
        gravity.value if gravity is not None else stock.density / 1120,
        part.blank.thickness,
        _ENTERED[grain_way(part, axis)],
    )


def holds_of(joint: Joint, meeting: Meeting, room: ServiceClass = 1) -> Holds | None:
    """What holds a joint and what it bears for years in a room of this service class; None where
    nothing that carries does."""
    if joint.kind in _CHANNELS:
        found = borne(meeting, room)
        if found is None:
            return None
        bears, way = found
        return Holds(1, joint.kind.value, bears, None, notes=(way,))
    fixing = next((each for each in joint.fixings if each.name in _NAMES), None)
    if fixing is None or fixing.diameter is None or not fixing.count:
        return None
    for part in (meeting.first, meeting.second):
        if into_of(part, meeting.axis) is None:
            return Holds(
                fixing.count, fixing.name, None, None, lacking(part.blank.stock, "gravity")
            )
    holds = _fixed(joint, fixing, meeting)
    return _wetted(holds) if holds is not None and room == 3 else holds


def _wetted(holds: Holds) -> Holds:
    """The same outside, in the wet."""
    aside, drawn = (
        bears.times(WET, _OUTSIDE) if bears is not None else None
        for bears in (holds.aside, holds.drawn)
    )
    return replace(holds, aside=aside, drawn=drawn)


def _fixed(joint: Joint, fixing: Fixing, meeting: Meeting) -> Holds | None:
    """What fixings that are bought in bear."""
    match fixing.name:
        case "dowel":
            return _dowelled(fixing, meeting)
        case "loose tenon" | "biscuit":
            return _tenoned(fixing, meeting)
        case "cam bolt" | "connecting bolt":
            return _bolted(fixing, meeting)
        case _:
            return _driven(joint, fixing, meeting)


def headed(joint: Joint, meeting: Meeting) -> tuple[Part, Part, float, float]:
    """The part under a screw's head and the one that its thread is in, and how deep each is along
    the screw, mm.

    It goes through the first part, but through a back, and out of the pocket of the second.
    """
    slanted = joint.kind is JointKind.POCKET_SCREW
    if slanted or meeting.second.role is Role.BACK:
        return meeting.second, meeting.first, meeting.behind, meeting.through
    return meeting.first, meeting.second, meeting.through, meeting.behind


def depths(joint: Joint, fixing: Fixing, meeting: Meeting) -> tuple[float, float]:
    """How much of a screw or pin lies in the part under its head, and in the other, mm."""
    length = fixing.length or 0.0
    _, _, through, behind = headed(joint, meeting)
    if joint.kind is JointKind.POCKET_SCREW:
        # It leaves the end half-way along its length (:func:`pocket_screwed` of the set-out).
        return length / 2, min(length / 2, behind)
    sunk = PLUG_DEPTH if any(each.name == "plug" for each in joint.fixings) else 0.0
    lies = min(through - sunk, length)
    return lies, min(length - lies, behind)


def _driven(joint: Joint, fixing: Fixing, meeting: Meeting) -> Holds | None:
    """Screws, nails and pins."""
    head, thread, _, _ = headed(joint, meeting)
    lies, deep = depths(joint, fixing, meeting)
    side, main = into_of(head, meeting.axis), into_of(thread, meeting.axis)
    if side is None or main is None or fixing.diameter is None:
        return None
    if min(lies, deep) <= 0:
        return Holds(fixing.count, fixing.name, _SHORT, _SHORT)
    if fixing.name == "panel pin":
        aside = pressed_aside(fixing.diameter, fixing.diameter, (main, deep), (side, lies))
        return Holds(fixing.count, fixing.name, aside, nail_drawn(main, fixing.diameter, deep))
    aside = screw_aside(fixing.diameter, (main, deep), (side, lies))
    drawn = screw_drawn(main, fixing.diameter, deep)
    if fixing.name == "pocket screw":
        drawn = drawn.times(TAPPING, _TAPPING)
    shallow = deep < LEAST_INTO * fixing.diameter
    notes = (f"less than the {LEAST_INTO:g} diameters deep that NDS 2018 asks for",)
    return Holds(fixing.count, fixing.name, aside, drawn, notes=notes if shallow else ())


def _dowelled(fixing: Fixing, meeting: Meeting) -> Holds | None:
    """Dowels: cut across, or drawn out of the part where they hold less."""
    diameter, length = fixing.diameter or 0.0, fixing.length or 0.0
    shears = [shear_of(part) for part in (meeting.first, meeting.second)]
    in_first = min(length / 2, meeting.through - diameter / 2)
    if length <= 0 or in_first <= 0:
        return None
    drawn = [
        dowel_drawn(diameter, deep, shear)
        for shear, deep in zip(shears, (in_first, length - in_first), strict=True)
        if shear
    ]
    weaker = min(drawn, key=lambda each: each.allowed) if len(drawn) == 2 else None
    return Holds(
        fixing.count,
        fixing.name,
        dowel_sheared(diameter),
        weaker,
        notes=("glued, dowels of beech",),
    )


def _tenoned(fixing: Fixing, meeting: Meeting) -> Holds | None:
    """Loose tenons and biscuits: cut across, or drawn out by their cheeks."""
    thick, long, wide = fixing.diameter, fixing.length, fixing.width
    if not thick or not long or not wide:
        return None
    lies = fixing.name == "biscuit"
    area = BISCUIT_SHARE * long * wide / 2 if lies else long / 2 * wide
    shears = [shear_of(part) for part in (meeting.first, meeting.second)]
    known = [each for each in shears if each]
    drawn = cheeks_drawn(area, min(known)) if len(known) == 2 else None
    across = tenon_sheared(thick, long if lies else wide)
    return Holds(fixing.count, fixing.name, across, drawn, notes=("glued, of beech",))


def _bolted(fixing: Fixing, meeting: Meeting) -> Holds | None:
    """Bolts of knock-down fittings: pressed aside; a cam's is drawn out of the face by its
    thread."""
    first, second = (into_of(part, meeting.axis) for part in (meeting.first, meeting.second))
    if first is None or second is None or not fixing.diameter:
        return None
    note = "a stated estimate: what the maker of the fitting gives comes first"
    if fixing.name == "cam bolt":
        deep = min(fixing.length or 0.0, meeting.through)
        aside = screw_aside(fixing.diameter, (first, deep), (second, CAM_SETBACK))
        drawn = screw_drawn(first, fixing.diameter, deep)
        return Holds(fixing.count, fixing.name, aside, drawn, notes=(note,))
    main = (second, min(fixing.length or 0.0, meeting.behind))
    aside = pressed_aside(fixing.diameter, fixing.diameter, main, (first, meeting.through))
    return Holds(fixing.count, fixing.name, aside, None, notes=(note,))


def shear_of(part: Part) -> float | None:
    """Shear strength of a part along its grain, N/mm2; None where it isn't known."""
    known = part.blank.stock.mechanics
    strength = known.shear_strength if known is not None else None
    return strength.value if strength is not None else None
