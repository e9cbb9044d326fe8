"""Edging, as its maker wishes it."""

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.fields import Length, SpecModel, Text


class EdgingSpec(SpecModel):
    """Veneer or tape that is glued on the edges of sheet parts after they are cut."""

    material: Text
    """What it is: `birch veneer`, `abs` ..."""
    thickness: Length
    """Its thickness, 3 mm (1/8 in) at the most; parts are cut smaller by it and have their
    finished size with it on."""
    colour: Text | None = None
    """Colour to order it in, if the material doesn't say it."""
    edges: Annotated[
        tuple[Literal["shelves", "dividers", "sides", "top", "bottom", "doors", "drawers"], ...],
        Field(min_length=1, strict=False),
    ] = ("shelves",)
    """What gets it: the front edges of shelves and panels, all four edges of doors and drawer
    fronts."""
