"""Are screws and dowels far enough from edges and ends, and their pilot holes of a good size?"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH, Vector, along
from rodwright.strength.meetings import Meeting, meeting_of
from rodwright.trade.connectors import DOWEL_EDGE
from rodwright.trade.screws import FROM_CORNER, PILOTS, SIDE, WIDEST_PILOT
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import Fixing, Hole, Joint, JointKind, Part, Unit

_USES = {JointKind.SCREWED: "screw", JointKind.DOWEL: "dowel"}
_ROUNDED = 0.05
"""Sizes told in inches differ from those in mm by no more than this, mm."""
_FROM_FACE = {"screw": SIDE, "dowel": 1.0}
"""Least distance from the faces of an edge, in diameters."""


@dataclass(frozen=True, slots=True)
class _Bored:
    """A hole for a fixing in a part: where its middle is, unit frame, and its diameter, mm."""

    part: Part
    at: Vector
    diameter: float


def fixing_places(unit: Unit) -> Iterator[Finding]:
    """Findings about fixings too near an edge or an end, and about pilot holes too narrow or too
    wide, by the holes that are bored; what is marked from the pieces in place is left out."""
    for joint in unit.joints:
        use = _USES.get(joint.kind)
        meeting = meeting_of(unit, joint) if use is not None else None
        fixing = next((each for each in joint.fixings if each.diameter), None)
        if use is None or meeting is None or fixing is None:
            continue
        second = _bored(meeting, meeting.second, -meeting.into, use)
        first = _bored(meeting, meeting.first, None, use)
        yield from _near(unit, meeting, fixing, use, first, second)
        if use == "screw" and second:
            yield from _pilots(unit, joint, fixing, second)


def _bored(meeting: Meeting, part: Part, way: int | None, use: str) -> list[_Bored]:
    """The holes of a use that are bored into a part along the meeting's axis, inside its patch;
    where ``way`` is given, those that go in that way alone."""
    found = []
    for hole in part.workings:
        if not isinstance(hole, Hole) or hole.use != use:
            continue
        out = along(hole.surface.axis, 1.0 if hole.surface.at_high else -1.0)
        axes = part.placement.axes
        looks = sum(axes[i][meeting.axis] * out[i] for i in range(3))
        if abs(looks) < 0.5 or (way is not None and looks * -way < 0):
            continue
        local = [0.0, 0.0, 0.0]
        for axis, place in zip(hole.surface.across, hole.position, strict=True):
            local[axis] = place
        local[hole.surface.axis] = part.blank.size[hole.surface.axis] * hole.surface.at_high
        at = part.placement.to_unit((local[0], local[1], local[2]))
        ways = (meeting.run, meeting.across)
        box = meeting.patch
        if all(box.low[i] - TOUCH <= at[i] <= box.high[i] + TOUCH for i in ways):
            found.append(_Bored(part, at, hole.diameter))
    return found


def _near(
    unit: Unit,
    meeting: Meeting,
    fixing: Fixing,
    use: str,
    first: list[_Bored],
    second: list[_Bored],
) -> Iterator[Finding]:
    """The nearest that any of them comes to an edge that they go into, and to an end of it."""
    diameter = fixing.diameter or 0.0
    grip = meeting.second.blank.stock.grip
    corner = FROM_CORNER[grip] if use == "screw" else DOWEL_EDGE
    told = (
        (second, meeting.across, _FROM_FACE[use], "the face"),
        (second, meeting.run, corner, "the end"),
        (first, meeting.across, _FROM_FACE[use], "the edge"),
    )
    for bored, axis, diameters, what in told:
        if not bored:
            continue
        nearest = min(bored, key=lambda each: _left(each, axis))
        left, least = _left(nearest, axis), diameters * diameter
        if left >= least - _ROUNDED:
            continue
        part = nearest.part
        yield Finding(
            Severity.WARNING,
            Rule.FIXING_NEAR_EDGE,
            f"{use}s of {length_in(unit, diameter)} in {named(part)} lie {length_in(unit, left)} "
            f"from {what} of its edge"
            if part is meeting.second
            else f"{use}s of {length_in(unit, diameter)} in {named(part)} lie "
            f"{length_in(unit, left)} from {what}",
            f"Keep them {length_in(unit, least)} from it, {diameters:g} diameters, or use "
            f"{use}s no thicker than {length_in(unit, left / diameters)}.",
            (part.ref,),
            left,
            least,
            place=nearest.at,
            case=(use, what, diameter, diameters),
        )


def _left(bored: _Bored, axis: int) -> float:
    box = bored.part.bounds()
    return min(bored.at[axis] - box.low[axis], box.high[axis] - bored.at[axis])


def _pilots(unit: Unit, joint: Joint, fixing: Fixing, bored: list[_Bored]) -> Iterator[Finding]:
    """Pilot holes against the screw's root: so narrow that the wood splits or the screw breaks, or
    so wide that the thread finds nothing."""
    part = unit.part(joint.second)
    grip, diameter = part.blank.stock.grip, fixing.diameter or 0.0
    sizes = trade_sizes(unit.display_unit)
    right = sizes.pilot(diameter, grip)
    least = PILOTS[grip] * diameter - sizes.drill
    most = max(WIDEST_PILOT[grip] * diameter, right)
    for size in sorted({each.diameter for each in bored}):
        narrow = size < least - _ROUNDED
        if not narrow and size <= most + _ROUNDED:
            continue
        limit = least if narrow else most
        yield Finding(
            Severity.WARNING,
            Rule.PILOT_TOO_NARROW if narrow else Rule.PILOT_TOO_WIDE,
            f"pilot holes of {length_in(unit, size)} in {named(part)} are too "
            f"{'narrow' if narrow else 'wide'} for screws of {length_in(unit, diameter)}",
            f"Drill {length_in(unit, right)} there.",
            (part.ref,),
            size,
            limit,
            source="Wood Handbook, ch. 8 (from memory), and common practice in sheets",
            case=(diameter,),
        )
