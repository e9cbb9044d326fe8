"""Which stopped channels and rebates must be square at their ends: a router leaves them round, and
what goes in is square (common practice, no source); mm."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.geometry import TOUCH, Box
from rodwright.paper.part_sheets.entries import Group
from rodwright.unit import Groove, Housing, Part, Rebate, Unit


def square_ends(unit: Unit, pieces: Sequence[Part], made: Sequence[Group]) -> tuple[int, ...]:
    """The numbers of those of equal pieces in whose ends something lies, in their order."""
    boxes = [(part.ref, part.bounds()) for part in unit.parts]
    return tuple(
        group.entry.number
        for group in made
        if any(_square(piece, boxes, each) for each in group.workings for piece in pieces)
    )


def _square(piece: Part, boxes: Sequence[tuple[str, Box]], working: object) -> bool:
    if not isinstance(working, Groove | Housing | Rebate):
        return False
    size, run = piece.blank.size, working.run
    box, half = working.bounds(size), working.width / 2
    others = [each.bounds(size) for each in piece.workings if each != working]
    low, high = box.low[run], box.high[run]
    ends = []
    if low > TOUCH:
        ends.append(
            (box.spanning(run, low, low + half), box.spanning(run, max(low - half, 0), low))
        )
    if high < size[run] - TOUCH:
        beyond = box.spanning(run, high, min(high + half, size[run]))
        ends.append((box.spanning(run, high - half, high), beyond))
    # An end that lies in another working is open, and into one beyond it the cutter runs out.
    stopped = [
        end
        for end, beyond in ends
        if not any(
            each.grown(TOUCH).contains(end) or each.grown(TOUCH).contains(beyond) for each in others
        )
    ]
    to_unit = piece.placement.box_to_unit
    return any(
        ref != piece.ref and bounds.penetration(to_unit(end)) > TOUCH
        for end in stopped
        for ref, bounds in boxes
    )
