"""The spec language: what a maker may wish for, with its defaults.

The docstring under each field is its description in the JSON Schema and in models/README.md:
every key with its default.  Lengths are millimetres once read.  What can only be judged against
the rest of the unit (do the columns add up, is the stock thick enough) is judged by the set-out.
"""

from typing import Annotated, Literal

from pydantic import Field, model_validator

from rodwright.wishes.base import BaseSpec
from rodwright.wishes.cornice import CorniceSpec
from rodwright.wishes.cutouts import CutoutSpec
from rodwright.wishes.doors import DoorsSpec
from rodwright.wishes.drawers import DrawersSpec
from rodwright.wishes.edging import EdgingSpec
from rodwright.wishes.fields import (
    InShort,
    Length,
    LengthOrShare,
    LengthOrZero,
    SpecModel,
    Text,
    default,
    in_inches,
)
from rodwright.wishes.finish import FinishField
from rodwright.wishes.joints import JointField
from rodwright.wishes.loads import (
    FloorField,
    FloorSpec,
    LevelLoadField,
    LevelLoads,
    LoadField,
    LoadsField,
    LoadsSpec,
)
from rodwright.wishes.made_by import Date, MadeBySpec, Name, Number, Revision
from rodwright.wishes.moisture import MoistureSpec
from rodwright.wishes.money import Currency
from rodwright.wishes.opening import FitSpec, OpeningSpec
from rodwright.wishes.options import FirstOptionField, OptionsField
from rodwright.wishes.quote import QuoteSpec
from rodwright.wishes.scribes import ScribesSpec
from rodwright.wishes.shelf_holes import ShelfHolesSpec
from rodwright.wishes.slope import SlopeSpec
from rodwright.wishes.stock import StockSpec
from rodwright.wishes.way import WaySpec
from rodwright.wishes.worktop import WorktopSpec

HowMany = Annotated[int, Field(ge=1)]
"""How many there are, where nothing else is wished of them."""


class SizeSpec(SpecModel):
    """Overall sizes, face frame and back included; each one given here is used as it is."""

    width: Length | None = None
    """Overall width of the carcass."""
    height: Length | None = None
    """Overall height, base and what lies on top included; left out, shelf openings given as lengths
    add up to it."""
    depth: Length | None = None
    """Overall depth, from the front of the face frame to the rear of the back."""


class CarcassSpec(SpecModel):
    """The box: two sides, top and bottom."""

    stock: str
    """Name of the stock for sides, top, bottom, dividers and shelves."""
    corners: JointField = Field(default="housed", validate_default=True)
    """How top and bottom meet the sides, and dividers and fixed shelves what carries them (housed,
    US: dadoed); where corners are rebated or mitred, dividers and shelves are housed.  Nothing
    holds what is `butted` but what you add yourself."""
    housing_depth: Length | None = None
    """Depth of the housings (US: dadoes); unless said, a third of the thickness, rounded to a whole
    millimetre or sixteenth of an inch."""
    top: Literal["between", "over", "none"] = "between"
    """The top stands between the sides, lies over their ends, or is left out."""
    bottom: Literal["between", "over", "none"] = "between"
    """The bottom stands between the sides, lies under their ends (`over`), or is left out."""
    bottom_height: LengthOrZero = 0.0
    """Height of the underside of a bottom between the sides, off the floor."""
    top_load: LevelLoadField | None = None
    """What lies on top of it: a use or a weight, or keys, as `load` takes them.  Unless said, books
    where the top is lower than 1.8 m (70 in) and there is room above it, else nothing; what lies on
    a worktop is said there."""


class ShelvesSpec(SpecModel):
    """Shelves in one space; give one of `count`, `at` and `openings`."""

    count: Annotated[int, Field(ge=1, le=200)] | None = None
    """How many, equally spaced."""
    at: Annotated[tuple[Length, ...], Field(min_length=1, max_length=200, strict=False)] | None = (
        None
    )
    """Heights of their undersides above the floor of the space."""
    openings: (
        Annotated[tuple[LengthOrShare, ...], Field(min_length=2, max_length=201, strict=False)]
        | None
    ) = None
    """Clear openings in the carcass from the top down, one more than there are shelves; lengths or
    shares.  What a face frame hides of them isn't taken off."""
    spacing: Literal["openings", "centres"] = "openings"
    """With `count`: make the clear openings equal, or the centre-to-centre distances."""
    layers: Annotated[int, Field(ge=1, le=4)] = 1
    """Thicknesses of stock glued into one shelf."""
    fixed: bool = True
    """Fixed shelves are jointed to the uprights; adjustable ones (false) rest on four pins each."""
    holes: ShelfHolesSpec = ShelfHolesSpec()
    """With adjustable shelves: the rows of holes for their pins."""
    stock: str | None = None
    """Name of the shelf stock, if it isn't the carcass's."""
    ends: JointField | None = None
    """How the ends of fixed shelves meet the uprights; like `carcass.corners` unless said."""
    stopped: LengthOrZero = 0.0
    """Housings stop this far behind the shelf's front, and the shelf is notched to cover that."""
    setback: LengthOrZero = 0.0
    """How far their fronts stand behind the carcass's front, or behind the air of 2 mm
    (1/16 in) that is left behind an inset door."""
    clearance: LengthOrZero = default(1.0, "1/32")
    """Play of an adjustable shelf: the gap at each end, to the back, and to a face frame in front
    of it."""
    load: LevelLoads | None = None
    """What each of them carries, if it isn't what the space does: a use or a weight, or keys; or a
    list from the top shelf down."""


class DividersSpec(SpecModel):
    """The dividers between columns."""

    height: Length | None = None
    """Height of dividers that stand on the floor of their space and end below its ceiling; unless
    said, they go all the way."""
    setback: LengthOrZero = 0.0
    """How far their fronts stand behind the front of what is round them, or behind the air of 2 mm
    (1/16 in) that is left behind an inset door."""
    stock: str | None = None
    """Name of their stock, if it isn't the carcass's."""
    ends: JointField | None = None
    """How their ends meet what is below and above; like `carcass.corners` unless said."""


class BetweenSpec(SpecModel):
    """What lies between rows."""

    kind: Literal["shelf", "rail", "nothing"] = "shelf"
    """A fixed shelf, a rail at the front only, or nothing."""
    width: Length | None = None
    """Width of rails, front to rear; 70 mm (2 3/4 in) unless said."""
    setback: LengthOrZero = 0.0
    """How far their fronts stand behind the front of what is round them, or behind the air of 2 mm
    (1/16 in) that is left behind an inset door."""
    ends: JointField | None = None
    """How their ends meet the uprights; like `carcass.corners` unless said."""


class SpaceSpec(SpecModel):
    """A space of the interior: divided by `columns` or `rows`, or fitted with `shelves`."""

    columns: (
        Annotated[tuple["ColumnSpec", ...], Field(min_length=2, max_length=100, strict=False)]
        | None
    ) = None
    """Spaces side by side from the left, with a divider between each two."""
    dividers: DividersSpec = DividersSpec()
    """With `columns`: what the dividers are like."""
    rows: (
        Annotated[tuple["RowSpec", ...], Field(min_length=2, max_length=100, strict=False)] | None
    ) = None
    """Spaces one above the other from the top down, with a fixed shelf between each two, or what
    `between` says."""
    between: BetweenSpec = BetweenSpec()
    """With `rows`: what lies between them."""
    shelves: Annotated[ShelvesSpec, InShort(HowMany, "count")] | None = None
    """Shelves in this space: how many, or keys."""
    doors: Annotated[DoorsSpec, InShort(Literal[1, 2], "count")] | None = None
    """A door or a pair of doors before this space, whatever else is in it: one or two, or keys."""
    drawers: Annotated[DrawersSpec, InShort(HowMany, "count")] | None = None
    """Drawers in this space: how many, or keys."""
    continuous_grain: bool = False
    """The grain runs on from front to front: the drawer fronts and flat doors in this space that
    stand above each other or side by side are cut in their order from one piece."""
    load: LoadField | None = None
    """What each shelf in this space and its floor carry (`books`, `25 kg/m`, `30 kg` each ...), or
    keys; the spaces within carry the same, where they don't say otherwise.  Drawers take what is
    said of the very space they are in."""


class ColumnSpec(SpaceSpec):
    """One of several spaces side by side."""

    width: LengthOrShare
    """Clear width, or a share of what is left (`1 share`)."""


class RowSpec(SpaceSpec):
    """One of several spaces one above the other."""

    height: LengthOrShare
    """Clear height, or a share of what is left (`1 share`)."""


class BackSpec(SpecModel):
    """The back panel; leave it out for an open back."""

    stock: str
    """Name of the stock."""
    fixing: Literal["applied", "rebated", "grooved"] = "applied"
    """Laid on the rear (applied), let into a rebate (US: rabbet), or held in a groove.  Screws hold
    it all round, or panel pins (US: brads) where there is too little wood for them; a groove
    holds by itself, so glue a sheet into it where the back has to carry.  Where a rebate or
    groove stops short of an end, a router leaves that round: square it with a chisel, or round
    the back's corner."""
    depth: Length | None = None
    """How far the rebate or groove reaches into the carcass; unless said, half its thickness in a
    rebate (more if its pins, or the screws of what is `hung`, ask for it), a third in a groove,
    rounded to a whole millimetre or sixteenth of an inch."""
    inset: Length = default(10.0, "3/8")
    """Grooved: from the carcass's rear to the groove."""
    clearance: LengthOrZero = default(1.0, "1/32")
    """Gap left all round in a rebate or groove."""
    split: bool = False
    """In panels that meet behind the dividers that go all the way, where one would be too wide."""


class Overhang(SpecModel):
    """How far the face frame reaches past the carcass, to cover the fitting gaps."""

    sides: LengthOrZero = 0.0
    """Past each side."""
    top: LengthOrZero = 0.0
    """Past the top."""


class FaceFrameSpec(SpecModel):
    """The frame on the front of the carcass."""

    stock: str
    """Name of the stock."""
    width: Length
    """Width of stiles and rails, seen from the front."""
    rail_width: Length | None = None
    """Width of the rails, if it differs (butted corners only).  The bottom rail is wider where it
    would leave a hole below a raised bottom (`carcass.bottom_height`)."""
    thickness: Length | None = None
    """Thickness; the stock's unless said."""
    corners: Literal["mitred", "butted"] = "mitred"
    """How stiles and rails meet; butted rails stand between the stiles."""
    joint: Literal["dowels", "biscuits", "loose_tenons", "pocket_screws", "glue"] | None = None
    """What holds stiles and rails together where they meet, besides glue; unless said, dowels, or
    in members too narrow for two of them a loose tenon."""
    fixing: Literal["biscuits", "dowels", "screws", "glue"] = "biscuits"
    """What holds the frame to the edges of the carcass, besides glue: biscuits or dowels let into
    both, or screws through its face under plugs."""
    rails: Literal["both", "top", "bottom"] = "both"
    """Which rails there are."""
    mid_stiles: Length | None = None
    """Width of a stile in front of each divider that reaches from rail to rail; left out, there
    are none."""
    mid_rails: Length | None = None
    """Width of a rail in front of each shelf or rail between rows that reaches from stile to stile,
    flush with its upper face; left out, there are none."""
    eased: LengthOrZero = 0.0
    """Radius to which the inner front edges are rounded."""
    setback: LengthOrZero = 0.0
    """How far the frame's face stands behind the front of the opening."""
    overhang: Overhang = Overhang()
    """How far the frame reaches past the carcass."""
    trim: LengthOrZero = default(4.0, "1/8")
    """Extra length each member is cut with, to be trimmed when it is fitted."""


class LippingSpec(SpecModel):
    """Solid strips on front edges."""

    stock: str
    """Name of the stock."""
    thickness: Length
    """Thickness of the strip, front to back."""
    edges: Annotated[
        tuple[Literal["shelves", "dividers", "sides", "top", "bottom"], ...],
        Field(min_length=1, strict=False),
    ] = ("shelves",)
    """Which front edges are lipped."""


class UnitSpec(SpecModel):
    """A piece of furniture, as its maker wishes it."""

    title: Annotated[Text, Field(max_length=500)]
    """What the piece is called."""
    made_by: MadeBySpec = MadeBySpec()
    """Who made the design."""
    number: Number | None = None
    """Number of the design, for the title blocks of drawings (`"2026-14"`)."""
    revision: Revision | None = None
    """Revision of the design, for the title blocks of drawings (`B`)."""
    approved_by: Name | None = None
    """Who approved the design, for the title blocks of drawings."""
    currency: Currency | None = None
    """Currency of the prices here, three capital letters by ISO 4217 (`EUR`): a quote isn't made at
    rates in another, since nothing is converted.  That of the rates unless said."""
    quote: QuoteSpec = QuoteSpec()
    """What `rodwright quote` says beside the price."""
    date: Date | None = None
    """Day of the design (`2026-05-31`), as the time stamp in STEP files; without it they bear the
    environment's SOURCE_DATE_EPOCH, or else 1970-01-01, so that they change only as the spec
    does."""
    unit: Literal["mm", "in"] = "mm"
    """Unit of every length written as a bare number, and of lists and drawings.  With `in`, what
    isn't said takes round inches, hardware comes in inch sizes, weights are in pounds, and views
    are in third angle."""
    opening: OpeningSpec | None = None
    """The opening the unit goes into; leave it out for a freestanding piece."""
    fit: FitSpec = FitSpec()
    """Gaps between unit and opening."""
    size: SizeSpec = SizeSpec()
    """Sizes; needed without an opening, and taken instead of the fitted ones with it."""
    stock: Annotated[dict[Text, StockSpec], Field(min_length=1)]
    """The materials, each under a name of your choice."""
    moisture: MoistureSpec = MoistureSpec()
    """How moist solid wood will be where the piece stands."""
    carcass: CarcassSpec
    """The box."""
    base: BaseSpec | None = None
    """What the carcass stands on, if it isn't the floor."""
    hung: bool = False
    """It hangs on the wall and stands on nothing, as a wall cabinet does."""
    wall: Literal["masonry", "studs", "plasterboard"] | None = None
    """What the wall behind it is, that it is fixed to: masonry, studs that the fixings go into, or
    plasterboard (US: drywall) alone."""
    floor: FloorField = FloorSpec()
    """The floor that it stands on: `hard` or `carpet`, or keys."""
    loads: LoadsField = LoadsSpec()
    """What it carries: a use (`books`) or a weight (`25 kg/m`), or keys, among them how far it may
    sag and after how many years."""
    interior: SpaceSpec = SpaceSpec()
    """What is inside."""
    back: BackSpec | None = None
    """The back panel."""
    face_frame: FaceFrameSpec | None = None
    """The face frame."""
    lipping: LippingSpec | None = None
    """Strips on front edges."""
    edging: EdgingSpec | None = None
    """Veneer or tape on the edges of sheet parts."""
    worktop: WorktopSpec | None = None
    """A top that lies on the carcass."""
    cornice: CorniceSpec | None = None
    """Boards round the head of the unit."""
    scribes: ScribesSpec | None = None
    """Strips that close the gap between the unit and the walls."""
    slope: SlopeSpec | None = None
    """A sloping ceiling that the unit is cut to; heights under `opening` are given as if there were
    none."""
    cutouts: Annotated[tuple[CutoutSpec, ...], Field(max_length=50, strict=False)] = ()
    """What stays where it is, and the unit is cut out round."""
    finish: FinishField | None = None
    """What its surfaces are finished with: one finish for everything, or keys: places, and the
    names of stocks."""
    options: OptionsField = ()
    """The same unit otherwise, in other woods or colours say: shown and quoted beside it."""
    first_option: FirstOptionField | None = None
    """With `options`: what the unit is called as the spec has it, where it stands beside them: its
    name, or keys; the title unless said."""
    way_in: WaySpec | None = None
    """The way in, if it is known: doorways, corners, ceiling, and what narrows the opening."""
    clearance: LengthOrZero = 0.0
    """Least gap between parts that neither touch nor are joined; closer ones are reported."""

    @model_validator(mode="after")
    def _in_its_unit(self) -> "UnitSpec":
        return in_inches(self) if self.unit == "in" else self
