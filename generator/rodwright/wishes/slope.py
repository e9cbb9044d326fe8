"""The spec language's part about a sloping ceiling.

Lengths are millimetres once read.
"""

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.fields import Length, LengthOrZero, SpecModel, default


class SlopeSpec(SpecModel):
    """A sloping ceiling over the unit, as a tape finds it: its height at the low wall, and either
    how far from there it is up at full height, or its pitch.  Heights under `opening` are given as
    if there were no slope."""

    falls: Literal["left", "right", "front", "rear"]
    """The side at which the ceiling is low."""
    low: Length
    """Height of the ceiling above the floor at that side: at the wall, or at the unit's own side
    where there is no opening; it stands here alone, not under `opening.height`."""
    run: Length | None = None
    """Level distance from there to where the ceiling is `high` up."""
    high: Length | None = None
    """With `run`: height of the ceiling there; the opening's (or the unit's) unless said."""
    pitch: Annotated[float, Field(gt=0, lt=90, strict=False)] | None = None
    """Instead of `run`: degrees between the slope and level."""
    clearance: LengthOrZero = default(7.0, "1/4")
    """Gap left under the slope, square to it."""
