"""The spec language's part about doors.

Lengths are millimetres once read.  Defaults are common practice, no source, unless said.
"""

from typing import Annotated, Literal

from pydantic import Field, ValidationInfo, field_validator
from pydantic_core import PydanticCustomError

from rodwright.wishes.fields import Length, LengthOrZero, SpecModel, Text, default
from rodwright.wishes.joints import JointField, JointSpec

BUMPER, BUMPER_IN = 2.0, "1/16"
"""Thickness of the bumpers that overlay fronts close against, mm and inches (common practice, no
source)."""
HandleMaterial = Literal["steel", "brass", "black", "white", "wood", "oak", "walnut", "painted"]
"""What knobs and handles are of."""
_CUPS = ("edge", "cup", "cup_depth", "plate")
_BUTTS = ("length", "leaf", "leaf_thickness", "knuckle")


def _refuse(info: ValidationInfo, about: str, remedy: str) -> None:
    """Say that a key goes unread, so that nobody relies on it."""
    raise PydanticCustomError(
        "door",
        "`{key}` says nothing about {about}",
        {"key": info.field_name, "about": about, "remedy": remedy},
    )


class DoorFrameSpec(SpecModel):
    """The frame of a frame-and-panel door."""

    stile_width: Length = default(60.0, "2 1/4")
    """Width of the stiles, which run through from top to bottom."""
    rail_width: Length = default(60.0, "2 1/4")
    """Width of the rails between the stiles."""
    bottom_rail_width: Length | None = None
    """Width of the bottom rail, if it differs."""
    joint: JointField = JointSpec(joint="tongued")
    """How rails meet stiles: `tongued` (a stub tongue in the panel's groove), `dowelled`, or
    `loose-tenoned`."""
    groove: Length = default(12.0, "1/2")
    """Depth of the groove for the panel; a stub tongue is as long."""


class DoorPanelSpec(SpecModel):
    """The panel of a frame-and-panel door."""

    stock: str | None = None
    """Name of its stock; the door's unless said.  A panel of solid wood floats in its groove."""
    thickness: Length | None = None
    """Thickness, and width of the groove; unless said, a sheet's own, or of a board at most a third
    of the frame's."""
    clearance: LengthOrZero | None = None
    """Gap to the bottom of the groove at each side; 1 mm (1/32 in) for sheets, what swelling asks
    for otherwise."""


class HingeSpec(SpecModel):
    """The hinges of a door."""

    kind: Literal["cup", "butt"] = "cup"
    """Concealed hinges with a cup bored into the door, or butt hinges (inset doors only)."""
    count: Annotated[int, Field(ge=2, le=8)] | None = None
    """How many a door; by its height and weight unless said."""
    ends: Length | None = None
    """From the door's ends to the middle of the outer hinges; 100 mm (4 in), or a sixth of a lower
    door, unless said; with cups, the place nearest to that where their plates take two holes of
    a row for loose shelves."""
    opens: Annotated[float, Field(gt=0, le=180, strict=False)] | None = None
    """How far they let the door open, in degrees; 110 with cups, 180 with butts unless said."""
    edge: Length = default(5.0, "3/16")
    """Cups: from the door's edge to the rim of the boring."""
    cup: Length = 35.0
    """Cups: diameter of the boring."""
    cup_depth: Length = default(12.5, "1/2")
    """Cups: depth of the boring."""
    plate: Length = default(37.0, "1 7/16")
    """Cups: from the front of the carcass, or the rear of an inset door, to the plate's holes."""
    length: Length = default(65.0, "2 1/2")
    """Butts: length of a leaf."""
    leaf: Length = default(15.0, "5/8")
    """Butts: how far a leaf reaches onto the edge of the door."""
    leaf_thickness: Length = default(2.0, "5/64")
    """Butts: thickness of a leaf; it is let in by what the gap doesn't take."""
    knuckle: Length = default(9.0, "5/16")
    """Butts: diameter of the knuckle, which stands in front of the door."""

    @field_validator(*_CUPS, *_BUTTS)
    @classmethod
    def _belongs(cls, value: float, info: ValidationInfo) -> float:
        kind = info.data.get("kind")
        if kind is not None and (info.field_name in _CUPS) is not (kind == "cup"):
            _refuse(info, f"{kind} hinges", "Leave it out, or change `kind`.")
        return value


class HandleSpec(SpecModel):
    """A knob or handle on each door, away from the hinges."""

    name: Text = "knob"
    """What is bought."""
    material: HandleMaterial | None = None
    """What it is shown as in photographs, `painted` as its door is; unless said what its name says
    (a "turned" one is of pale wood), or else steel."""
    height: Length | None = None
    """From the door's lower edge to its middle; half the door's height unless said."""
    edge: Length | None = None
    """From the door's edge to its holes; the middle of a stile, or 40 mm (1 5/8 in), unless
    said."""
    spacing: LengthOrZero = 0.0
    """From hole to hole of an upright handle; 0 for one hole."""
    hole: Length = default(5.0, "3/16")
    """Diameter of its holes."""


class DoorsSpec(SpecModel):
    """A door, or a pair of doors, before a space."""

    kind: Literal["slab", "framed"] = "slab"
    """A flat board (slab), or a frame with a panel in it (framed)."""
    hung: Literal["inset", "overlay"] = "inset"
    """Between what surrounds it, fronts flush (inset), or in front of it (overlay)."""
    count: Literal[1, 2] = 1
    """One door, or a pair that meets in the middle."""
    hinges: Literal["left", "right"] = "left"
    """The side that a single door turns about."""
    stock: str | None = None
    """Name of its stock, or its frame's; the carcass's unless said."""
    thickness: Length | None = None
    """Thickness; the stock's unless said."""
    gap: Length = default(2.0, "3/32")
    """Gap round an inset door, between overlay doors next to each other, and in a pair."""
    overlay: LengthOrZero | None = None
    """How far an overlay door covers what is round it; unless said all it can, less half a gap, as
    far as its hinges allow."""
    bumper: LengthOrZero = default(BUMPER, BUMPER_IN)
    """Gap between an overlay door and what it covers: the thickness of its bumpers; 0 for none."""
    width: Length | None = None
    """Width of each door, if it isn't to follow from the opening."""
    frame: DoorFrameSpec = DoorFrameSpec()
    """Framed: the frame."""
    panel: DoorPanelSpec = DoorPanelSpec()
    """Framed: the panel."""
    hinge: HingeSpec = HingeSpec()
    """What its hinges are like."""
    handle: HandleSpec | None = None
    """Knob or handle."""

    @field_validator("hinges")
    @classmethod
    def _of_one(cls, value: str, info: ValidationInfo) -> str:
        if info.data.get("count") == 2:
            _refuse(info, "a pair, which is hung at both sides", "Leave it out.")
        return value

    @field_validator("overlay", "bumper")
    @classmethod
    def _of_overlay(cls, value: float | None, info: ValidationInfo) -> float | None:
        if value is not None and info.data.get("hung") == "inset":
            _refuse(info, "inset doors", "Leave it out, or write `hung: overlay`.")
        return value

    @field_validator("frame", "panel")
    @classmethod
    def _of_framed(cls, value: SpecModel, info: ValidationInfo) -> SpecModel:
        if info.data.get("kind") == "slab":
            _refuse(info, "slabs", "Leave it out, or write `kind: framed`.")
        return value
