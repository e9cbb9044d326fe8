"""The spec language's part about strips that close the gap between a unit and the walls.

Lengths are millimetres once read.
"""

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.fields import Length, LengthOrZero, SpecModel, default


class ScribesSpec(SpecModel):
    """Strips beside and over a unit, planed to the walls when it stands."""

    stock: str
    """Name of the stock."""
    edges: Annotated[
        tuple[Literal["left", "right", "top"], ...], Field(min_length=1, strict=False)
    ] = ("left", "right")
    """Where there are strips."""
    width: Length | None = None
    """Width of the gap they close, where no opening says it."""
    thickness: Length | None = None
    """Thickness, front to back; the stock's unless said."""
    allowance: LengthOrZero = default(6.0, "1/4")
    """How much wider than the gap they are made, to be scribed to the wall."""
    setback: LengthOrZero = 0.0
    """How far their faces stand behind the front of the carcass or face frame."""
