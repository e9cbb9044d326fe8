"""What parts do in a unit."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType


class Role(StrEnum):
    """What a part does in the unit."""

    SIDE = "side"
    TOP = "top"
    BOTTOM = "bottom"
    DIVIDER = "divider"
    SHELF = "shelf"
    BACK = "back"
    STILE = "stile"
    RAIL = "rail"
    LIPPING = "lipping"
    DOOR = "door"
    DOOR_STILE = "door stile"
    DOOR_RAIL = "door rail"
    DOOR_PANEL = "door panel"
    DRAWER_FRONT = "drawer front"
    DRAWER_SIDE = "drawer side"
    DRAWER_END = "drawer end"
    DRAWER_BOTTOM = "drawer bottom"
    RUNNER = "runner"
    PACKER = "packer"
    CARCASS_RAIL = "carcass rail"
    PLINTH = "plinth"
    LEG = "leg"
    WORKTOP = "worktop"
    CORNICE = "cornice"
    SCRIBE = "scribe"


class Assembly(StrEnum):
    """What a part belongs to: what is made, brought and taken off as one."""

    CARCASS = "carcass"
    FACE_FRAME = "face frame"
    DOOR = "door"
    DRAWER = "drawer"
    BASE = "base"
    SURROUND = "surround"
    """What is fitted round the carcass once it stands in its place."""


@dataclass(frozen=True, slots=True)
class Traits:
    """What is so of every part of a role.

    ``mark`` is what its refs begin with.  ``upright`` and ``level`` panels make the carcass and
    divide it; ``outer`` ones are its outside.  ``front`` is what closes it at the front,
    ``carries_hinges`` what doors hang on, and ``cut_out`` what may be cut out round a pipe or a
    skirting: the rest is kept clear of those.
    """

    mark: str
    of: Assembly
    upright: bool = False
    level: bool = False
    outer: bool = False
    front: bool = False
    carries_hinges: bool = False
    cut_out: bool = False


_CARCASS, _FRAME, _DOOR = Assembly.CARCASS, Assembly.FACE_FRAME, Assembly.DOOR
_DRAWER, _BASE, _SURROUND = Assembly.DRAWER, Assembly.BASE, Assembly.SURROUND

TRAITS: Mapping[Role, Traits] = MappingProxyType({
    Role.SIDE: Traits(
        "SD", _CARCASS, upright=True, outer=True, carries_hinges=True, cut_out=True),
    Role.TOP: Traits("TP", _CARCASS, level=True, outer=True, cut_out=True),
    Role.BOTTOM: Traits("BT", _CARCASS, level=True, outer=True, cut_out=True),
    Role.DIVIDER: Traits("DV", _CARCASS, upright=True, carries_hinges=True, cut_out=True),
    Role.SHELF: Traits("SH", _CARCASS, level=True, cut_out=True),
    Role.BACK: Traits("BK", _CARCASS, cut_out=True),
    Role.STILE: Traits("ST", _FRAME, carries_hinges=True),
    Role.RAIL: Traits("RL", _FRAME),
    Role.LIPPING: Traits("LP", _CARCASS, carries_hinges=True),
    Role.DOOR: Traits("DO", _DOOR, front=True),
    Role.DOOR_STILE: Traits("DOS", _DOOR, front=True),
    Role.DOOR_RAIL: Traits("DOR", _DOOR, front=True),
    Role.DOOR_PANEL: Traits("DOP", _DOOR),
    Role.DRAWER_FRONT: Traits("DRF", _DRAWER, front=True),
    Role.DRAWER_SIDE: Traits("DRS", _DRAWER),
    Role.DRAWER_END: Traits("DRE", _DRAWER),
    Role.DRAWER_BOTTOM: Traits("DRB", _DRAWER),
    Role.RUNNER: Traits("RN", _CARCASS),
    Role.PACKER: Traits("PK", _CARCASS),
    Role.CARCASS_RAIL: Traits("CR", _CARCASS, level=True, cut_out=True),
    Role.PLINTH: Traits("PL", _BASE, cut_out=True),
    Role.LEG: Traits("LG", _BASE),
    Role.WORKTOP: Traits("WT", _SURROUND, cut_out=True),
    Role.CORNICE: Traits("CN", _SURROUND),
    Role.SCRIBE: Traits("SC", _SURROUND),
})  # fmt: skip
"""A row a role: this is all that tells one from another as a kind."""


def _those(wanted: Callable[[Traits], bool]) -> tuple[Role, ...]:
    return tuple(role for role, traits in TRAITS.items() if wanted(traits))


UPRIGHTS = _those(lambda its: its.upright)
"""The panels that carry: sides and dividers."""
LEVELS = _those(lambda its: its.level)
"""The panels between uprights."""
PANELS = _those(lambda its: its.upright or its.level)
"""What a carcass is made of and divided by, without its back."""
CASE = _those(lambda its: its.outer)
"""The outside of a carcass."""
FACE_FRAME = _those(lambda its: its.of is Assembly.FACE_FRAME)
"""What a face frame is made of."""
DOORS = _those(lambda its: its.of is Assembly.DOOR)
"""What doors are made of."""
DRAWERS = _those(lambda its: its.of is Assembly.DRAWER)
"""What drawers are made of, with their fronts."""
FRONTS = _those(lambda its: its.front)
"""What closes a unit at the front."""
BASE = _those(lambda its: its.of is Assembly.BASE)
"""What a unit stands on, of what is made."""
SURROUND = _those(lambda its: its.of is Assembly.SURROUND)
"""What is fitted round the carcass once it stands in its place."""
CARRIES_HINGES = _those(lambda its: its.carries_hinges)
"""What doors hang on."""
CUT_OUT = _those(lambda its: its.cut_out)
"""What may be cut out round what stays in the room."""
STANDS_OUT = (*SURROUND, *DOORS, *DRAWERS)
"""What reaches past the carcass on purpose: it may stand out of an opening, and the set-out holds
it against the walls."""
