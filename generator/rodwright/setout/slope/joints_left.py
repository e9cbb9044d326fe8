"""What a slope leaves of joints and of marks on the parts that it cut.  Lengths in mm."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from math import ceil, dist

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.halfspaces import patch, vertices
from rodwright.setout.recut import Workpiece, rejoined
from rodwright.setout.slope.clipping import planes_of
from rodwright.unit import Fixing, Joint, JointKind


def joints_left(
    joints: Iterable[Joint], before: Mapping[str, Workpiece], after: Mapping[str, Workpiece]
) -> tuple[Joint, ...]:
    """The joints of what is left, each at the middle of what is left of it.

    Those of parts that are gone go, and those whose meeting is cut off.  Of a shorter meeting
    there are fewer fixings.
    """
    return rejoined(joints, lambda joint: _left_of(joint, before, after))


def unlipped(after: Mapping[str, Workpiece], joints: Iterable[Joint]) -> dict[str, Workpiece]:
    """The parts whose lipping went, without the mark of it on their edges."""
    lipped = {joint.first for joint in joints if joint.kind is JointKind.EDGE_GLUED}
    return {
        ref: replace(piece, part=replace(piece.part, lipped=()))
        for ref, piece in after.items()
        if piece.part.lipped and ref not in lipped
    }


def _left_of(
    joint: Joint, before: Mapping[str, Workpiece], after: Mapping[str, Workpiece]
) -> Joint | None:
    """A joint at the middle of what is left of it; None where it goes."""
    refs = joint.first, joint.second
    if not {*refs} <= after.keys():
        return None
    if all(after[ref] is before[ref] for ref in refs):
        return joint
    old, new = (
        vertices([plane for ref in refs for plane in planes_of(pieces[ref])])
        for pieces in (before, after)
    )
    middle = patch(new)
    if patch(old) is None:
        # They only touched along an edge, or don't meet at all: as pins and hinges have it.
        return joint if new or not joint.kind.meets else None
    if middle is None:
        return None
    earlier, left = Box.of_points(old), Box.of_points(new)
    if max(dist(earlier.low, left.low), dist(earlier.high, left.high)) < TOUCH:
        return joint
    share = max(left.size) / max(earlier.size)
    fixings = tuple(_fewer(fixing, share) for fixing in joint.fixings)
    return replace(joint, at=middle, fixings=fixings)


def _fewer(fixing: Fixing, share: float) -> Fixing:
    return replace(fixing, count=max(1, ceil(fixing.count * share - TOUCH)))
