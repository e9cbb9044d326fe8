"""The spec language's part about a cornice.

Lengths are millimetres once read.
"""

from typing import Literal

from rodwright.wishes.fields import Length, LengthOrZero, SpecModel


class CorniceSpec(SpecModel):
    """Boards round the head of a unit; what rises above it counts towards the overall height."""

    stock: str
    """Name of the stock."""
    height: Length
    """Width of the boards, seen from the front."""
    thickness: Length | None = None
    """Thickness of the boards; the stock's unless said."""
    place: Literal["lapped", "standing"] = "lapped"
    """Lapped onto the front of carcass or face frame, or standing on the carcass."""
    rise: LengthOrZero = 0.0
    """Lapped: how far its upper edge stands above the carcass."""
    projection: LengthOrZero = 0.0
    """Standing: how far its faces stand past the carcass."""
    returns: Literal["both", "left", "right", "none"] | None = None
    """Ends at which it is mitred and returned to the rear; unless said, both of a freestanding
    unit and none in an opening."""
