"""The spec language's part about what a unit is cut out round.

Lengths are millimetres once read.
"""

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.fields import Length, LengthOrZero, SpecModel, default

Place = Annotated[tuple[LengthOrZero, ...], Field(min_length=2, max_length=2, strict=False)]


class SkirtingCutout(SpecModel):
    """A skirting (US: baseboard) that stays on the wall behind the unit."""

    kind: Literal["skirting"]
    """`skirting` for a board along the foot of the wall behind."""
    height: Length
    """How high it is."""
    depth: Length
    """How far it stands off the wall."""
    clearance: LengthOrZero = default(3.0, "1/8")
    """Gap left round it."""


class PipeCutout(SpecModel):
    """A pipe that runs through the unit."""

    kind: Literal["pipe"]
    """`pipe` for a round thing that runs right through."""
    runs: Literal["upright", "back", "across"] = "upright"
    """From floor to top, out through the back, or from side to side."""
    at: Place
    """Its middle: from the unit's left and its rear if it runs upright, from the left and above the
    floor if through the back, from the rear and above the floor if across."""
    diameter: Length
    """Its diameter, lagging included."""
    clearance: LengthOrZero = default(5.0, "3/16")
    """Gap left round it."""
    least_rim: Length = default(15.0, "5/8")
    """A hole nearer than this to an edge is opened to it as a notch, so that the pipe can stay."""


class SocketCutout(SpecModel):
    """A socket, switch or access panel that must stay in reach through the back."""

    kind: Literal["socket"]
    """`socket` for a rectangle cut out of the back."""
    at: Place
    """Its lower left corner: from the unit's left, and above the floor."""
    width: Length
    """Width of its plate."""
    height: Length
    """Height of its plate."""
    clearance: LengthOrZero = default(5.0, "3/16")
    """Gap left round it."""


CutoutSpec = Annotated[SkirtingCutout | PipeCutout | SocketCutout, Field(discriminator="kind")]
