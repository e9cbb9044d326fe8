"""The spec language's part about a worktop.

Lengths are millimetres once read.
"""

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.fields import LengthOrZero, SpecModel, default
from rodwright.wishes.loads import LevelLoadField


class WorktopOverhang(SpecModel):
    """How far a worktop reaches past what is under it."""

    front: LengthOrZero = default(20.0, "3/4")
    """Past the front of the carcass or face frame; doors lying on it take up some of that."""
    sides: LengthOrZero = 0.0
    """Past each side."""
    rear: LengthOrZero = 0.0
    """Past the rear."""


class WorktopSpec(SpecModel):
    """A top that lies on the carcass; it counts towards the overall height."""

    stock: str
    """Name of the stock; a `board` is a panel glued up from boards."""
    layers: Annotated[int, Field(ge=1, le=4)] = 1
    """Thicknesses of stock glued into one top."""
    overhang: WorktopOverhang = WorktopOverhang()
    """How far it reaches past the carcass."""
    fixing: Literal["screwed", "slotted", "buttons"] | None = None
    """Screwed from below through the carcass's top; the same through slots, so that solid wood can
    move; or held by buttons in slots of the sides, where there is no top.  Unless said, what the
    stock and the carcass call for."""
    load: LevelLoadField | None = None
    """What stands on it: a use or a weight, or keys; unless said, 40 lb/ft2 (195 kg/m2)."""
