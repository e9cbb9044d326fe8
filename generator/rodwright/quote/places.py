"""Where the parts of a unit are, in a client's words."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Mapping
from types import MappingProxyType
from typing import TypeVar

from rodwright.unit import JointKind, Part, Role, Unit

Kind = TypeVar("Kind", bound=Hashable)

PLACES: Mapping[Role, str] = MappingProxyType(
    {
        Role.SIDE: "carcass",
        Role.TOP: "carcass",
        Role.BOTTOM: "carcass",
        Role.DIVIDER: "carcass",
        Role.CARCASS_RAIL: "carcass",
        Role.SHELF: "shelves",
        Role.BACK: "back",
        Role.LIPPING: "front edges",
        Role.STILE: "face frame",
        Role.RAIL: "face frame",
        Role.DOOR: "doors",
        Role.DOOR_STILE: "doors",
        Role.DOOR_RAIL: "doors",
        Role.DOOR_PANEL: "door panels",
        Role.DRAWER_FRONT: "drawer fronts",
        Role.DRAWER_SIDE: "drawer boxes",
        Role.DRAWER_END: "drawer boxes",
        Role.DRAWER_BOTTOM: "drawer bottoms",
        Role.WORKTOP: "worktop",
        Role.CORNICE: "cornice",
        Role.PLINTH: "base",
        Role.LEG: "legs",
        Role.SCRIBE: "scribed strips",
    }
)
"""What a client calls the places of parts; what isn't here is out of sight."""
_FIXED, _ADJUSTABLE = "fixed shelves", "adjustable shelves"


def places_of(
    unit: Unit, kind_of: Callable[[Part], Kind], told: Callable[[Part], bool] = lambda _: True
) -> dict[Kind, dict[str, None]]:
    """The places of the parts of each kind; where fixed and adjustable shelves aren't of the same
    kinds, they are told apart."""
    adjustable: set[str] = set().union(*adjustable_of(unit))
    found: list[tuple[str, Kind]] = []
    for part in unit.parts:
        if (place := PLACES.get(part.role)) is not None and told(part):
            if part.role is Role.SHELF:
                place = _ADJUSTABLE if part.ref in adjustable else _FIXED
            found.append((place, kind_of(part)))
    fixed, loose = ({kind for place, kind in found if place == of} for of in (_FIXED, _ADJUSTABLE))
    alike = not fixed or not loose or fixed == loose
    places: dict[Kind, dict[str, None]] = {}
    for place, kind in found:
        is_shelf = place in (_FIXED, _ADJUSTABLE)
        word = PLACES[Role.SHELF] if alike and is_shelf else place
        places.setdefault(kind, {})[word] = None
    return places


def shelves_of(unit: Unit) -> list[set[str]]:
    """The refs of each shelf: layers that are glued together are one."""
    found = [{part.ref} for part in unit.parts if part.role is Role.SHELF]
    for joint in unit.joints:
        if joint.kind is JointKind.FACE_GLUED:
            meet = [refs for refs in found if refs & {joint.first, joint.second}]
            if len(meet) == 2:
                found.remove(meet[1])
                meet[0].update(meet[1])
    return found


def adjustable_of(unit: Unit) -> list[set[str]]:
    """Those of them that rest on supports."""
    resting = {joint.second for joint in unit.joints if joint.kind is JointKind.RESTING}
    return [refs for refs in shelves_of(unit) if refs & resting]
