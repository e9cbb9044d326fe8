"""Is there room for a driver behind the heads of screws that are driven in place?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.unit import BASE, CASE, PANELS, SURROUND, JointKind, Part, Unit

ROOM = 100.0
"""Room behind a head, mm, for an angle driver with its bit and a hand (common practice, no
source)."""
SPACING = 300.0
"""Where something stands behind so much of a meeting, mm, or behind half of it, a head lies
there."""
_IN_PLACE = (*BASE, *SURROUND)
"""What is fixed to the carcass from inside, once that stands together."""
_SLACK = 0.05
"""How much less room than a driver needs counts as enough, mm."""


def driving(unit: Unit) -> Iterator[Finding]:
    """Findings about screws from inside the carcass whose heads no driver reaches.

    One for each part that they go through and each that stands in the way.  Shelves that are
    laid in, doors and drawers come out first.
    """
    laid_in = {joint.second for joint in unit.joints if joint.kind is JointKind.RESTING}
    standing = [part for part in unit.parts if part.role in PANELS and part.ref not in laid_in]
    told: set[tuple[str, str]] = set()
    for joint in unit.joints:
        through, into = unit.part(joint.first), unit.part(joint.second)
        if (
            joint.kind not in (JointKind.SCREWED, JointKind.BUTTONED)
            or through.role not in CASE
            or into.role not in _IN_PLACE
        ):
            continue
        met = _nearest(through, into, standing)
        if met is None or (through.ref, met[1].ref) in told:
            continue
        room, other = met
        told.add((through.ref, other.ref))
        yield Finding(
            Severity.WARNING,
            Rule.NO_ROOM_FOR_DRIVER,
            f"screws through {named(through)} into {named(into)} have {length_in(unit, room)} "
            f"between their heads and {named(other)}, too little for a driver",
            f"Leave {length_in(unit, ROOM)} there, or drive them before {other.ref} goes in.",
            (through.ref, into.ref, other.ref),
            room,
            ROOM,
        )


def _nearest(through: Part, into: Part, standing: list[Part]) -> tuple[float, Part] | None:
    """The part that stands nearest behind the heads, and the room before it (mm), if too little."""
    first, second = through.bounds(), into.bounds()
    patch = first.intersection(second)
    shared = patch.size
    axis = min(range(3), key=lambda i: shared[i])
    into_high = second.low[axis] + second.high[axis] > first.low[axis] + first.high[axis]
    run, across = sorted((i for i in range(3) if i != axis), key=lambda i: -shared[i])
    behind = []
    for part in standing:
        box = part.bounds()
        over = patch.overlap(box)
        room = first.low[axis] - box.high[axis] if into_high else box.low[axis] - first.high[axis]
        if (
            part.ref not in (through.ref, into.ref)
            and -_SLACK < room < ROOM - _SLACK
            and over[run] > min(SPACING, shared[run] / 2)
            and over[across] > shared[across] / 2
        ):
            behind.append((max(room, 0.0), part))
    return min(behind, key=lambda each: each[0], default=None)
