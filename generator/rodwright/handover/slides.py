"""What each side of a drawer's box runs on that is bought; mm."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.unit import JointKind, Unit

_KINDS = {
    "pair of side-mounted drawer slides": "side",
    "pair of under-mounted drawer slides": "under",
}
"""Kinds of slides by what the hardware list calls them."""


@dataclass(frozen=True, slots=True)
class Slides:
    """How a drawer's side runs: on slides at its ``side`` (``height`` mm high, where that is known)
    or ``under`` it, which the parts ``carriers`` carry."""

    kind: str
    height: float | None
    carriers: tuple[str, ...]


def slides_of(unit: Unit) -> dict[str, Slides]:
    """The slides of each drawer's side that has any, by its ref."""
    found: dict[str, Slides] = {}
    for joint in unit.joints:
        for each in joint.fixings if joint.kind is JointKind.SLIDING else ():
            for side in each.on.split(" and ") if each.name in _KINDS else ():
                carriers = tuple(apart.first for apart in unit.clearances if apart.second == side)
                found[side] = Slides(_KINDS[each.name], each.width, carriers)
    return found
