"""The spec language's part about what a unit stands on.

Lengths are millimetres once read.
"""

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.fields import Length, LengthOrZero, Spacing, SpecModel, default


class PlinthSpec(SpecModel):
    """A separate frame under the carcass, packed level before the carcass goes on it."""

    kind: Literal["plinth"]
    """`plinth` for a frame of boards on edge."""
    height: Length
    """From the floor's high spot to the underside of the carcass."""
    stock: str | None = None
    """Name of its stock; the carcass's unless said."""
    toe_space: LengthOrZero = default(50.0, "2")
    """How far its front stands behind the front of the carcass or face frame."""
    sides: LengthOrZero = 0.0
    """How far its ends stand in from the carcass's sides."""
    rear: LengthOrZero = 0.0
    """How far its rear stands in front of the carcass's rear, to clear a skirting."""
    levelling: LengthOrZero = 0.0
    """It stands on the floor's high spot; this is how far it may be packed up off the low side."""
    spacing: Spacing = default(600.0, "24")
    """Largest distance between cross members, or between feet."""


class ToeBoardSpec(SpecModel):
    """Sides that run to the floor, notched at the toe, with a board between them."""

    kind: Literal["toe_board"]
    """`toe_board` for a board behind a notch in the sides."""
    height: Length
    """From the floor's high spot to the underside of the carcass."""
    stock: str | None = None
    """Name of its stock; the carcass's unless said."""
    toe_space: Length = default(50.0, "2")
    """How far its front stands behind the front of the carcass or face frame."""


class LegsSpec(SpecModel):
    """Square legs under the carcass."""

    kind: Literal["legs"]
    """`legs` for square legs of solid wood."""
    height: Length
    """From the floor's high spot to the underside of the carcass."""
    stock: str | None = None
    """Name of their stock, a board; the carcass's unless said."""
    section: Length | None = None
    """Width and thickness of a leg; the stock's thickness unless said."""
    inset: LengthOrZero = 0.0
    """How far they stand in from the carcass's front, rear and sides."""
    span: Spacing = default(900.0, "36")
    """Largest clear distance between legs, side by side."""
    held_by: Literal["blocks", "rails"] = "blocks"
    """What holds them: a block behind each, or rails dowelled between them, screwed to the
    bottom."""
    rail_width: Length = default(60.0, "2 1/2")
    """Width of the rails, seen from the front."""
    rail_stock: str | None = None
    """Name of the rails' stock; the carcass's unless said."""


class HeightRange(SpecModel):
    """The heights that a bought-in foot can be set to."""

    least: Length
    """The least."""
    most: Length
    """The most."""


class ClipOnBoard(SpecModel):
    """A board clipped to adjustable feet, 3 mm lower than the gap it goes into."""

    stock: str | None = None
    """Name of its stock; the carcass's unless said."""
    toe_space: LengthOrZero = default(50.0, "2")
    """How far it stands behind the front of the carcass or face frame."""


class LevellersSpec(SpecModel):
    """Bought-in adjustable feet under the carcass."""

    kind: Literal["levellers"]
    """`levellers` for adjustable feet."""
    height: Length
    """From the floor's high spot to the underside of the carcass."""
    range: HeightRange | None = None
    """Heights they can be set to; 15 mm (9/16 in) either way unless said."""
    spacing: Spacing = default(600.0, "24")
    """Largest distance between cross members, or between feet."""
    board: ClipOnBoard | None = None
    """A plinth board clipped to the front feet; 3 mm are left over it to get it in."""


BaseSpec = Annotated[
    PlinthSpec | ToeBoardSpec | LegsSpec | LevellersSpec, Field(discriminator="kind")
]
