"""Edges that are held up along their length: of levels by the back, of dividers by the back and
by the face frame."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from rodwright.strength.level_parts import other_of
from rodwright.unit import UPRIGHTS, Joint, JointKind, Part, Role, Unit
from rodwright.unit.facts import STANDS

Joints = Mapping[str, tuple[Joint, ...]]
Edge = Literal["front", "back"]
_HOLDS = (
    JointKind.BISCUIT,
    JointKind.TONGUE,
    JointKind.DOWEL,
    JointKind.LOOSE_TENON,
    JointKind.SCREWED,
    JointKind.POCKET_SCREW,
    JointKind.EDGE_GLUED,
)


def fixes(joint: Joint) -> bool:
    """Whether screws or pins hold a joint, so that a back is held up by it.

    A back that only stands in a groove or a rebate slides up and down in it.
    """
    return bool(joint.fixings) and not joint.kind.free


def is_fixed_back(unit: Unit, back: str, joints: Joints) -> bool:
    """Whether a panel of a back is screwed or pinned to two uprights at least."""
    others = (other_of(unit, joint, back) for joint in joints[back] if fixes(joint))
    return len({other.ref for other in others if other.role in UPRIGHTS}) >= 2


def edges_holding(unit: Unit, divider: str, joints: Joints) -> frozenset[Edge]:
    """The edges at which a divider is held up: at its back by panels that are fixed to it and to
    another upright, at its front by a stile that stands on the floor, or on a rail that does."""
    found: set[Edge] = set()
    for joint in joints[divider]:
        other = other_of(unit, joint, divider)
        if other.role is Role.BACK and fixes(joint) and is_fixed_back(unit, other.ref, joints):
            found.add("back")
        elif other.role is Role.STILE and joint.kind in _HOLDS and _stands(unit, other, joints):
            found.add("front")
    return frozenset(found)


def _stands(unit: Unit, stile: Part, joints: Joints) -> bool:
    """Whether a stile stands on the floor, or on a rail of the face frame that does."""
    if unit.hung:
        return False
    below = [
        other
        for joint in joints[stile.ref]
        if (other := other_of(unit, joint, stile.ref)).role is Role.RAIL
    ]
    return any(part.bounds().low[2] <= STANDS for part in (stile, *below))
