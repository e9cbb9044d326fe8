"""The rack file: what stands in the maker's own rack, what can be bought, and what cuts it.

The docstring under each field is its description in the JSON Schema and in docs/rack.md.  Lengths
are millimetres once read.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field, model_validator

from rodwright.wishes.fields import (
    Length,
    LengthOrZero,
    SpecModel,
    Text,
    default,
    in_inches,
)
from rodwright.wishes.loads import Weight
from rodwright.wishes.money import Currency
from rodwright.wishes.prices import PriceField
from rodwright.wishes.stock import (
    BadEndsField,
    BadEndsSpec,
    Flaws,
    SheetSize,
    ShowFaces,
    TrimField,
    TrimSpec,
)
from rodwright.wishes.strength import Density

Name = Annotated[Text, Field(max_length=40)]
"""A name that fits on a label."""
CountOrNone = Annotated[int, Field(ge=0, le=10_000)]
"""How many of something there are, none among them."""


class SawSpec(SpecModel):
    """A saw, and what it can do."""

    kind: Literal["table saw", "track saw", "panel saw"]
    """What it is."""
    kerf: Length = default(3.2, "1/8")
    """Width of its cut: measure one, blades differ."""
    rip: Length | None = None
    """The widest that it rips against its fence; any width unless said."""
    crosscut: Length | None = None
    """The longest that it crosscuts; any length unless said."""
    lift: Weight = 25.0
    """The heaviest piece that those at hand lift on it: `25 kg` unless said, or `55 lb`; what is
    heavier is broken down first with a saw that is brought to it."""


class RouterSpec(SpecModel):
    """A router that cuts pieces out of sheets."""

    tool: Length
    """Diameter of its tool."""
    spacing: Length | None = None
    """Least distance between pieces; the tool's diameter unless said."""
    lift: Weight = 25.0
    """The heaviest sheet that those at hand lift on it: `25 kg` unless said, or `55 lb`."""


class KeepSpec(SpecModel):
    """The smallest offcut that is worth keeping."""

    length: LengthOrZero = default(400.0, "16")
    """Of a sheet: its longer side."""
    width: LengthOrZero = default(150.0, "6")
    """Of a sheet: its shorter side."""
    board_length: LengthOrZero = default(400.0, "16")
    """Of a board or a bought length: its length."""
    board_width: LengthOrZero = default(40.0, "1 1/2")
    """Of a board: its width."""


class EntryCommon(SpecModel):
    """What all that stands in the rack has in common."""

    material: Text
    """What it is: `birch plywood`, `mdf`, `oak` ...; one of unknown density needs `density`."""
    density: Density | None = None
    """Density, for a material that isn't known: in kg/m3, or with its unit, `42 lb/ft3`."""
    count: CountOrNone | None = None
    """How many there are; with a `price` it may be left out, if there are none and they are bought.
    """
    price: PriceField | None = None
    """What another one costs, or by length, area or volume (`6.20/m`, `38/m2`, `1850/m3`,
    `7.50/board ft`); without one, there are no more than are there."""
    flaws: Flaws = ()
    """What can't be used of each that is there; what is bought is taken to have none."""
    where: Text | None = None
    """Where it stands: `loft`, `behind the door`."""
    note: Text | None = None
    """What else you want to remember of it."""


class RackSheet(EntryCommon):
    """Sheets, or offcuts of sheets, of one size."""

    kind: Literal["sheet"]
    """`sheet` for sheet goods, `board` for solid wood that is ripped to width, `length` for what is
    bought in its section and only cut to length."""
    thickness: Length
    """Real thickness; measure it."""
    size: SheetSize
    """Length and width; the grain runs along the first, unless `grain` says otherwise."""
    grain: Literal["lengthwise", "crosswise", "none"] | None = None
    """How the visible grain runs on it; none for MDF and chipboard unless said."""
    trim: TrimField = TrimSpec()
    """What is cut off its edges before anything else: all alike, or keys."""
    show_faces: ShowFaces = 2
    """How many of its faces are fit to be seen."""


class RackBoard(EntryCommon):
    """Boards of one size; the grain runs along them."""

    kind: Literal["board"]
    """`board` for solid wood."""
    thickness: Length | None = None
    """Thickness, planed; of a sawn board what it planes to, which is worked out unless said."""
    sawn_thickness: Length | None = None
    """How thick it is now, where it is sawn and has still to be planed."""
    length: Length
    """Length, along the grain."""
    width: Length
    """Width as it lies there."""
    planing: LengthOrZero | None = None
    """What straightening and planing takes off its width in all; with `sawn_thickness` 6 mm
    (1/4 in) unless said, else nothing."""
    bad_ends: BadEndsField = BadEndsSpec()
    """What is left off its ends: both alike, or keys; of what is bought 25 mm (1 in) at most."""


class RackLength(EntryCommon):
    """Lengths of one section, planed all round or moulded, that are only cut to length."""

    kind: Literal["length"]
    """`length` for what is bought in its section."""
    thickness: Length
    """Thickness of the section."""
    section: Length
    """Width of the section."""
    length: Length
    """Length."""
    bad_ends: BadEndsField = BadEndsSpec()
    """What is left off its ends: both alike, or keys; of what is bought 25 mm (1 in) at most."""


RackEntry = Annotated[RackSheet | RackBoard | RackLength, Field(discriminator="kind")]


class RackSpec(SpecModel):
    """A maker's rack: what is there, what can be bought, and what it is cut with."""

    unit: Literal["mm", "in"] = "mm"
    """Unit of every length written as a bare number."""
    currency: Currency | None = None
    """Currency of the prices here, three capital letters by ISO 4217 (`EUR`): a quote isn't made at
    rates in another, since nothing is converted.  That of the rates unless said."""
    saws: Annotated[tuple[SawSpec, ...], Field(max_length=20, strict=False)] = ()
    """The saws; the first is used where no other is asked for.  A table saw unless said."""
    router: RouterSpec | None = None
    """The router that cuts sheets, if there is one."""
    keep: KeepSpec = KeepSpec()
    """The smallest offcut that is worth keeping."""
    first_cut: Literal["along", "across"] | None = None
    """How a sheet is cut first: `along` its length or `across` it; as it comes best unless said."""
    stock: Annotated[dict[Name, RackEntry], Field(max_length=2_000)] = Field(default={})
    """What stands there, each under the name that is written on it."""
    taken: Annotated[tuple[Text, ...], Field(strict=False)] = ()
    """Plans that were taken out of the rack already; `rodwright rack take` writes them down, so
    that none is taken twice."""

    @model_validator(mode="after")
    def _in_its_unit(self) -> RackSpec:
        return in_inches(self) if self.unit == "in" else self
