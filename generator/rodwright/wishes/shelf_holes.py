"""Rows of holes for adjustable shelves, as their maker wishes them."""

from typing import Annotated

from pydantic import Field

from rodwright.wishes.fields import Length, LengthOrZero, SpecModel, default


class ShelfHolesSpec(SpecModel):
    """The rows of holes that adjustable shelves rest on; shelves go to the hole nearest to where
    they are wished, half a pitch away at the most unless the row ends there."""

    pitch: Length = default(32.0, "1 1/4")
    """From centre to centre of the holes in a row."""
    setback: Length | None = None
    """From the front edge of the uprights and the rear edge of the shelf to the rows; 37 mm (1 7/16
    in) unless said, on narrow shelves a quarter of their depth, and behind a door on
    concealed hinges the line of their plates at the front."""
    diameter: Length = default(5.0, "1/4")
    """Diameter of the pins, and of their holes; holes for sleeves are 2 mm (1/32 in) wider."""
    depth: Length | None = None
    """Depth of the holes; unless said, 10 mm (3/8 in) or what the uprights allow."""
    start: LengthOrZero | None = Field(default=None, alias="from")
    """Height of the first hole's centre above the floor of the space; unless said, the row is laid
    so that it suits the shelves, and begins two pitches above the floor."""
    stop: Length | None = Field(default=None, alias="to")
    """No hole lies higher than this above the floor of the space; unless said, than two pitches
    below its ceiling."""
    near: Annotated[int, Field(ge=0, le=100)] | None = None
    """Only this many holes above and below each shelf's own, instead of whole rows."""
    sleeves: bool = False
    """Each hole gets a sleeve, in which the pins stand."""
