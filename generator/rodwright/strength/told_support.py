"""How a level lies, in a maker's words."""

from __future__ import annotations

from rodwright.lengths import format_length
from rodwright.strength.bearings import Bearing, Line, Seat, lying_of
from rodwright.strength.held_plates import held_share, is_plate
from rodwright.strength.sagging import OVERHANG, Sagged
from rodwright.unit import JointKind, Unit

_HOW = {
    JointKind.BUTT: "butted against {} (taken as carried: see that it is)",
    JointKind.HOUSING: "housed in {}",
    JointKind.REBATE: "in a rebate of {}",
    JointKind.GROOVE: "in a groove of {}",
    JointKind.MITRE: "mitred to {}",
    JointKind.RESTING: "on pins in {}",
    JointKind.SCREWED: "screwed to {}",
    JointKind.PINNED: "pinned to {}",
    JointKind.TONGUE: "tongued into {}",
    JointKind.DOWEL: "dowelled to {}",
    JointKind.BISCUIT: "biscuited to {}",
    JointKind.LOOSE_TENON: "on loose tenons in {}",
    JointKind.POCKET_SCREW: "pocket-screwed to {}",
    JointKind.KNOCK_DOWN: "on knock-down fittings in {}",
}


def said(unit: Unit, length: float) -> str:
    """A length with the maker's unit."""
    return f"{format_length(length, unit.display_unit)} {unit.display_unit}"


def support_notes(unit: Unit, bearing: Bearing, sagged: Sagged) -> tuple[str, ...]:
    """What was taken to carry a level, and how."""
    if sagged.front_to_back:
        edges = " and ".join(f"its {line.edge} by {', '.join(line.on)}" for line in bearing.lines)
        spans = f"it spans {said(unit, sagged.span)} from front to back"
        return (f"held along {edges}; {_span(unit, sagged) if sagged.overhang else spans}",)
    ends = [_seat(seat) for seat in bearing.seats if seat.how == "end"]
    under = [seat.on or "feet" for seat in bearing.seats if seat.how == "under"]
    told = ", ".join(dict.fromkeys(ends))
    if under:
        told += f"{', ' if told else ''}runs over {', '.join(dict.fromkeys(under))}"
    notes = [f"{told}; {_span(unit, sagged)}"]
    if any(seat.stiffness and seat.stiffness.value for seat in bearing.seats):
        notes.append(
            "its joints hold its ends against turning (S, a stated estimate); for its strength "
            "they count as pins"
        )
    notes.extend(_line(bearing, line) for line in bearing.lines)
    return tuple(notes)


def _span(unit: Unit, sagged: Sagged) -> str:
    if not sagged.overhang:
        return f"the span is {said(unit, sagged.span)}"
    out = said(unit, sagged.span / OVERHANG)
    return f"it reaches {out} past the last and may go down there as a span of twice that may"


def _line(bearing: Bearing, line: Line) -> str:
    told = f"held along its {line.edge} by {', '.join(line.on)}"
    share = held_share(bearing.level, lying_of(bearing))
    if share == 1.0 and is_plate(bearing.level):
        return f"{told}, too far back to hold up its other edge"
    if share == 1.0:
        return f"{told}, which isn't counted on: its stiffness as a plate isn't known"
    return f"{told}, which leaves {share:.0%} of what it would sag (as a plate, at its free edge)"


def _seat(seat: Seat) -> str:
    how = _HOW.get(seat.joint.kind, "on {}") if seat.joint else "on {}"
    return how.format(seat.on or "a foot")
