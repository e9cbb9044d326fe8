"""What parts do in a unit."""

from __future__ import annotations

from enum import StrEnum


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


FACE_FRAME = (Role.STILE, Role.RAIL)
"""What a face frame is made of."""
STANDS_OUT = (
    Role.SCRIBE, Role.WORKTOP, Role.CORNICE,
    Role.DOOR, Role.DOOR_STILE, Role.DOOR_RAIL, Role.DOOR_PANEL, Role.DRAWER_FRONT,
    Role.DRAWER_SIDE, Role.DRAWER_END, Role.DRAWER_BOTTOM,
)  # fmt: skip
"""What reaches past the carcass on purpose: it may stand out of an opening, and the set-out holds
it against the walls."""
