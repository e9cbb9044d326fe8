"""The spec language's part about the site: the opening as measured, and how the unit fits it.

Lengths are millimetres once read.
"""

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.fields import Length, LengthOrZero, Spacing, SpecModel, default


class WidthAt(SpecModel):
    """A width at a height of your own choosing."""

    at: LengthOrZero
    """Height above the floor."""
    width: Length
    """Width there, wall to wall."""


class WidthReadings(SpecModel):
    """Widths of the opening, wall to wall, at several heights; at least one."""

    bottom: Length | None = None
    """At the floor."""
    middle: Length | None = None
    """Half-way up."""
    top: Length | None = None
    """Just under the top."""
    others: Annotated[tuple[WidthAt, ...], Field(max_length=50, strict=False)] = ()
    """At other heights."""


class HeightAt(SpecModel):
    """A height at a place of your own choosing."""

    at: LengthOrZero
    """Distance from the left wall."""
    height: Length
    """Height there, floor to top."""


class HeightReadings(SpecModel):
    """Heights of the opening, floor to top, at several places; at least one."""

    left: Length | None = None
    """At the left wall."""
    middle: Length | None = None
    """Half-way across."""
    right: Length | None = None
    """At the right wall."""
    others: Annotated[tuple[HeightAt, ...], Field(max_length=50, strict=False)] = ()
    """At other places."""


class DepthReadings(SpecModel):
    """Depths of the opening, front to back wall; at least one."""

    left: Length | None = None
    """At the left wall."""
    middle: Length | None = None
    """Half-way across."""
    right: Length | None = None
    """At the right wall."""


class Diagonals(SpecModel):
    """The diagonals of one plane of the opening; at least one."""

    rising: Length | None = None
    """From the bottom left corner to the top right."""
    falling: Length | None = None
    """From the top left corner to the bottom right."""


class PlumbReading(SpecModel):
    """How far a wall is out of plumb."""

    out: LengthOrZero
    """Out of plumb by so much ..."""
    over: Length
    """... over this height."""
    leans: Literal["in", "out"]
    """Going up, the wall leans into the opening or out of it."""


class PlumbReadings(SpecModel):
    """Plumb readings of the walls; at least one."""

    left: PlumbReading | None = None
    """Of the left wall."""
    right: PlumbReading | None = None
    """Of the right wall."""


class LevelReading(SpecModel):
    """How far a floor or a top is out of level."""

    out: LengthOrZero
    """Out of level by so much ..."""
    over: Length
    """... over this length."""
    rises: Literal["left", "right"]
    """The side to which it rises."""


class LevelReadings(SpecModel):
    """Level readings of floor and top; at least one."""

    floor: LevelReading | None = None
    """Of the floor."""
    top: LevelReading | None = None
    """Of the top."""


class RearPlane(SpecModel):
    """The opening's rear plane; what isn't read there is taken as at the front."""

    width: WidthReadings | Length | None = None
    """Widths at the rear."""
    height: HeightReadings | Length | None = None
    """Heights at the rear."""
    diagonals: Diagonals | None = None
    """Diagonals at the rear."""
    plumb: PlumbReadings | None = None
    """How far the walls are out of plumb at the rear."""
    level: LevelReadings | None = None
    """How far floor and top are out of level at the rear."""


class OpeningSpec(SpecModel):
    """The opening as measured."""

    width: WidthReadings | Length
    """Widths between the walls: one length, or readings at several heights."""
    height: HeightReadings | Length
    """Heights: one length, or readings at several places."""
    depth: DepthReadings | Length | None = None
    """Depths: one length, or readings at several places."""
    diagonals: Diagonals | None = None
    """Diagonals of the front; both together show how far the opening is out of square."""
    plumb: PlumbReadings | None = None
    """How far the walls are out of plumb; taken as plumb, more or less, where it isn't said."""
    level: LevelReadings | None = None
    """How far floor and top are out of level; taken as level, more or less, where it isn't said."""
    back: RearPlane | None = None
    """Readings at the opening's rear, if it differs from the front."""


class FitSpec(SpecModel):
    """The gaps left between the unit and the opening, to be packed."""

    sides: LengthOrZero = default(3.5, "1/8")
    """Gap at each side."""
    top: LengthOrZero = default(7.0, "1/4")
    """Gap over the top."""
    back: LengthOrZero = 0.0
    """Gap behind the unit."""
    packers: Annotated[
        tuple[Annotated[Length, Field(ge=0.1)], ...],
        Field(min_length=1, max_length=50, strict=False),
    ] = default(
        (1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0),
        ("1/32", "1/16", "1/8", "3/16", "1/4", "5/16", "3/8"),
    )
    """Thicknesses of the packers at hand (US: shims)."""
    fixing_spacing: Spacing = default(600.0, "24")
    """Largest distance between fixing points, where packers go."""
    overlap: LengthOrZero = 0.0
    """How far the face frame's edges must reach past the gaps, to be scribed to the walls."""
