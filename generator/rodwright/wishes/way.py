"""The way in, as a maker writes it down."""

from typing import Annotated

from pydantic import Field

from rodwright.wishes.fields import Length, LengthOrZero, SpecModel, default


class DoorwaySpec(SpecModel):
    """A doorway on the way."""

    width: Length
    """Clear width, between the stops or to the open door's edge."""
    height: Length
    """Clear height."""


class CornerSpec(SpecModel):
    """A right-angled corner between two corridors."""

    before: Length
    """Clear width of the corridor before the corner."""
    after: Length
    """Clear width of the corridor after it."""
    ceiling: Length | None = None
    """Height of the ceiling there; left out, `way_in.ceiling` holds."""


class SkirtingSpec(SpecModel):
    """A skirting board (US: baseboard)."""

    height: Length
    """How high it is."""
    thickness: Length
    """How far it stands off the wall."""


class MouthSpec(SpecModel):
    """The front of the opening, where nibs, a frame or a downstand make it tighter."""

    width: Length | None = None
    """Clear width, if it is narrower there than inside; evenly at both sides."""
    height: Length | None = None
    """Clear height, if it is lower there than inside."""
    thickness: Length
    """How thick, from front to back, what makes it tighter is."""


class WaySpec(SpecModel):
    """The way in: what the finished unit has to pass on its way to its place."""

    ceiling: Length | None = None
    """Height of the room where the unit is stood up."""
    doors: Annotated[tuple[DoorwaySpec, ...], Field(max_length=50, strict=False)] = ()
    """Doorways, in the order in which they are passed."""
    corners: Annotated[tuple[CornerSpec, ...], Field(max_length=50, strict=False)] = ()
    """Right-angled corners of corridors, in the order in which they are passed."""
    skirting: SkirtingSpec | None = None
    """Skirting (US: baseboard) left on the opening's walls, which were measured above it."""
    mouth: MouthSpec | None = None
    """The front of the opening, where it is narrower or lower than inside."""
    front: Length | None = None
    """Clear floor before the opening, to the wall opposite; plenty unless said."""
    hands: LengthOrZero = default(20.0, "3/4")
    """Room for hands and straps at each side and below while the unit is carried."""
