"""What holds a part to others, and what is drilled for it, as far as no working says so."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.geometry import TOUCH
from rodwright.paper.part_sheets.purposes import named
from rodwright.unit import Joint, JointKind, Part, Unit

_IN_PLACE = ", marked from the pieces in place"
"""Said of holes for which no working has a place."""


def held_by(unit: Unit, pieces: Sequence[Part]) -> tuple[str, ...]:
    """For each kind of fixing what goes into or through equal pieces: how many to one joint, to
    what, and what is drilled for each."""
    return tuple(_told(unit, pieces))


def _told(unit: Unit, pieces: Sequence[Part]) -> Iterator[str]:
    refs = {piece.ref for piece in pieces}
    found: dict[tuple[str, str, str, int], list[str]] = {}
    for joint in unit.joints:
        unbored = joint.kind is JointKind.SCREWED and not _bored(unit, joint)
        for other in _others(joint, refs):
            for each in joint.fixings:
                drilled = each.pilot + _IN_PLACE if unbored and each.pilot else each.pilot
                kind = (each.name, each.size, drilled, each.count)
                found.setdefault(kind, []).append(other)
    for (name, size, pilot, count), others in found.items():
        what = f"{count} x {name}" if count > 1 else name
        to = f"to {named([others])}" + (" each" if len(set(others)) > 1 and count > 1 else "")
        yield ", ".join(filter(None, (what, size, to))) + (f": {pilot}" if pilot else "")


def _bored(unit: Unit, joint: Joint) -> bool:
    """Whether one of two parts has holes for the screws that hold them to each other."""
    one, other = unit.part(joint.first), unit.part(joint.second)
    return any(
        getattr(working, "use", "") == "screw"
        and here.placement.box_to_unit(working.bounds(here.blank.size))
        .grown(TOUCH)
        .intersects(there.bounds())
        for here, there in ((one, other), (other, one))
        for working in here.workings
    )


def _others(joint: Joint, refs: set[str]) -> Iterator[str]:
    if joint.first in refs:
        yield joint.second
    elif joint.second in refs:
        yield joint.first
