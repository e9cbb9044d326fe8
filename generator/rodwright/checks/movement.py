"""Is solid wood held across its grain by something that doesn't move with it?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import length_in, named
from rodwright.movement import TABLE, stock_swelling
from rodwright.parts import Joint, JointKind, Part, Unit

ACCEPTED = 2.0
"""Movement, mm, that a rigid joint lives with: about that of a rail 100 mm wide across the grain of
a stile, which frames have always been made with (common practice, no source)."""

_FREE = {
    JointKind.RESTING,
    JointKind.HINGED,
    JointKind.SLIDING,
    JointKind.FLOATING,
    JointKind.BUTTONED,
}


def cross_grain(unit: Unit) -> Iterator[Finding]:
    """Joints that hold solid wood across its grain against sheet goods or along another's grain.

    Where two parts meet, each swells along its width and hardly along its length; what one
    moves more than the other, over the length they meet on and between the least and most
    moisture of the unit, has to go somewhere.  Boards that meet with their widths the same
    way move together.  Joints that leave play (loose shelves, buttons, panels that float) are
    free; every other is taken as rigid.
    """
    for joint in unit.joints:
        if joint.kind not in _FREE:
            yield from _held(unit, joint)


def _held(unit: Unit, joint: Joint) -> Iterator[Finding]:
    parts = unit.part(joint.first), unit.part(joint.second)
    worst, mover, holder = 0.0, *parts
    for axis in range(3):
        meet = _meet(*parts, axis)
        first, second = (_moves(part, axis, meet, unit.moisture) for part in parts)
        if abs(first - second) > worst:
            worst = abs(first - second)
            mover, holder = parts if first > second else parts[::-1]
    if worst <= ACCEPTED:
        return
    low, high = unit.moisture
    yield Finding(
        Severity.WARNING,
        "wood held across the grain",
        f"{named(mover)} moves {length_in(unit, round(worst, 1))} across its grain between "
        f"{low:g} and {high:g} % moisture, and {named(holder)} holds it: it will split or bow, or "
        f"its joint will give",
        "Leave it room: buttons, screws in slots, or a groove without glue; or make both of solid "
        "wood with the grain the same way round.",
        (mover.ref, holder.ref),
        worst,
        ACCEPTED,
        source=f"movement: {TABLE}; limit: common practice, no source",
        place=joint.at,
    )


def _meet(first: Part, second: Part, axis: int) -> float:
    """Length over which two parts lie side by side along an axis of the unit frame, mm."""
    one, other = first.bounds(), second.bounds()
    return max(0.0, min(one.high[axis], other.high[axis]) - max(one.low[axis], other.low[axis]))


def _moves(part: Part, axis: int, length: float, moisture: tuple[float, float]) -> float:
    """What a part moves over a length along an axis of the unit frame, mm."""
    along_width = part.placement.width[axis] ** 2
    return along_width * stock_swelling(part.blank.stock, length, moisture)
