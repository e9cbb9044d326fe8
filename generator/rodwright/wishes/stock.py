"""The spec language's part about stock: what can be cut, and what can be bought."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.fields import (
    Colour,
    InShort,
    Length,
    LengthOrZero,
    SpecModel,
    Text,
)
from rodwright.wishes.prices import PriceField
from rodwright.wishes.strength import Density, StrengthSpec

Count = Annotated[int, Field(ge=1, le=10_000)]
"""How many of something there are."""
ShowFaces = Literal[1, 2]
"""How many faces are fit to be seen."""
SheetSize = Annotated[tuple[Length, ...], Field(min_length=2, max_length=2, strict=False)]
"""Length and width of a sheet."""


class TrimSpec(SpecModel):
    """What is cut off the four edges of a sheet before anything else, the saw's cut with it."""

    near: LengthOrZero = 0.0
    """Off the near end: the end that flaws are measured from along the first size."""
    far: LengthOrZero = 0.0
    """Off the far end."""
    face: LengthOrZero = 0.0
    """Off the face edge: the edge that flaws are measured from across."""
    back: LengthOrZero = 0.0
    """Off the back edge."""


TrimField = Annotated[TrimSpec, InShort(LengthOrZero, "near", "far", "face", "back")]
"""One length for all four edges, or keys."""


class BadEndsSpec(SpecModel):
    """What is left off the ends of a board: splits, paint, staples."""

    near: LengthOrZero = 0.0
    """Off the near end: the one that flaws are measured from."""
    far: LengthOrZero = 0.0
    """Off the far end."""


BadEndsField = Annotated[BadEndsSpec, InShort(LengthOrZero, "near", "far")]
"""One length for both ends, or keys."""


class FlawSpec(SpecModel):
    """A place that no part may be cut from: a knot, old screw holes, a corner that is knocked."""

    x: LengthOrZero
    """From the near end to where it begins, along the first size."""
    length: Length
    """How long it is, along the first size."""
    y: LengthOrZero = 0.0
    """From the face edge to where it begins."""
    width: Length | None = None
    """How wide it is; from `y` to the other edge unless said."""
    why: Text | None = None
    """What it is, as the plan has to say it."""


Flaws = Annotated[tuple[FlawSpec, ...], Field(max_length=50, strict=False)]


class SheetPiece(SpecModel):
    """Sheets or offcuts of one size at hand."""

    length: Length
    """The first size: along the grain, unless `grain` says that it runs across."""
    width: Length
    """The second size."""
    count: Count = 1
    """How many there are."""
    trim: TrimField | None = None
    """What is cut off its edges first: all alike, or keys; the stock's `trim` unless said."""
    show_faces: ShowFaces | None = None
    """How many of its faces are fit to be seen; the stock's unless said."""
    flaws: Flaws = ()
    """What can't be used of each."""


class SheetSold(SpecModel):
    """A size in which sheets are sold."""

    size: SheetSize
    """Length and width; the grain runs as on the full sheet."""
    price: PriceField | None = None
    """What one costs, or by area (`38/m2`)."""


SheetSoldField = Annotated[SheetSold, InShort(SheetSize, "size")]


class Boards(SpecModel):
    """Boards of one size at hand."""

    length: Length
    """Length of each board."""
    width: Length | None = None
    """Width of each board; has to be said, but where `section` says it."""
    count: Count = 1
    """How many there are."""
    bad_ends: BadEndsField | None = None
    """What is left off its ends: both alike, or keys; the stock's `bad_ends` unless said."""
    flaws: Flaws = ()
    """What can't be used of each: a stretch, or a rectangle with `y` and `width`."""


Several = Annotated[tuple[Length, ...], Field(min_length=1, max_length=30, strict=False)]


class BoardSold(SpecModel):
    """Sizes in which boards are sold: every length in every width."""

    length: Length | Several
    """Length, or a list of them."""
    width: Length | Several | None = None
    """Width as it is sold, or a list; has to be said, but where `section` says it."""
    price: PriceField | None = None
    """What one costs, or by length, area or volume (`6.20/m`, `38/m2`, `1850/m3`,
    `7.50/board ft`), sawn where it is bought sawn; the stock's `price` by the metre unless said."""


class StockCommon(SpecModel):
    """What sheets and boards have in common."""

    material: Text
    """What it is: `birch plywood`, `mdf`, `oak` ...; one of unknown density needs `density`."""
    thickness: Length
    """Real thickness; measure it, sheets are seldom what they are called."""
    density: Density | None = None
    """Density, for the weights: in kg/m3, or with its unit, `42 lb/ft3`; known for common
    materials."""
    colour: Colour | None = None
    """Colour in pictures and exports, `#rrggbb`."""
    price: Annotated[float, Field(ge=0, strict=False)] | None = None
    """Price of one sheet, or of one metre of board, in your currency; kept in `unit.json`."""
    strength: StrengthSpec | None = None
    """How stiff and strong it is, where you know better than what is known of its material."""


class SheetSpec(StockCommon):
    """A sheet material."""

    kind: Literal["sheet"]
    """`sheet` for sheet goods."""
    size: SheetSize | None = None
    """Length and width of a full sheet; the grain runs along the first."""
    grain: Literal["lengthwise", "crosswise", "none"] | None = None
    """How the visible grain runs on the sheet; none for MDF and chipboard unless said."""
    sold: Annotated[tuple[SheetSoldField, ...], Field(max_length=30, strict=False)] = ()
    """Other sizes that it is sold in, such as half-sheets: each a size (`[1220, 1220]`), or keys.
    """
    pieces: Annotated[tuple[SheetPiece, ...], Field(max_length=300, strict=False)] = ()
    """Sheets and offcuts that are there already, cut before any is bought; they don't count beside
    a rack file that has some of it."""
    trim: TrimField = TrimSpec()
    """What is cut off the edges of every sheet before anything else: all alike, or keys."""
    show_faces: ShowFaces = 2
    """How many of its faces are fit to be seen; a part of which both are seen comes from no sheet
    that has one."""


class BoardSpec(StockCommon):
    """A solid wood board, ripped and crosscut to size; the grain runs along it."""

    kind: Literal["board"]
    """`board` for solid wood."""
    pieces: Annotated[tuple[Boards, ...], Field(max_length=300, strict=False)] = ()
    """The boards in the rack, if they are already there; parts longer or wider than every one of
    them are reported."""
    sawn: Literal["flat", "quarter"] | None = None
    """How the rings lie in a board: along its width (`flat`, which moves most) or square to it
    (`quarter`); flat unless said here or in the material's name."""
    sold: Annotated[tuple[BoardSold, ...], Field(max_length=30, strict=False)] = ()
    """Sizes that it is sold in; unless said, lengths and widths of the trade are assumed and the
    plan says so."""
    section: Length | None = None
    """Its width, where it is bought planed all round, or moulded, in the very section of its parts
    and only cut to length."""
    sawn_thickness: Length | None = None
    """How thick it is bought, where it is bought sawn and planed to `thickness`: 27 mm sawn planes
    to 22."""
    planing: LengthOrZero | None = None
    """What straightening and planing takes off a board's width in all; with `sawn_thickness` 6 mm
    (1/4 in) unless said, else nothing."""
    bad_ends: BadEndsField = BadEndsSpec()
    """What is left off the ends of every board: both alike, or keys."""


StockSpec = Annotated[SheetSpec | BoardSpec, Field(discriminator="kind")]
"""Sheets or boards."""
