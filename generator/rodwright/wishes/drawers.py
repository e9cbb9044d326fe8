"""The spec language's part about drawers.

Lengths are millimetres once read.
"""

from typing import Annotated, Literal

from pydantic import Field

from rodwright.wishes.doors import BUMPER, BUMPER_IN, HandleMaterial
from rodwright.wishes.fields import Length, LengthOrShare, LengthOrZero, SpecModel, Text, default
from rodwright.wishes.joints import JointField
from rodwright.wishes.loads import LevelLoads


class SlidesSpec(SpecModel):
    """What drawers run on; the clearances are those that the maker of the slides publishes."""

    kind: Literal["side", "under", "runners"] = "side"
    """Slides at the sides of the box, slides under its bottom, or wooden runners."""
    clearance: Length | None = None
    """Gap at each side of the box: 12.7 mm (1/2 in) for side slides, 1 mm (1/32 in)
    for runners unless said."""
    deduction: Length = default(42.0, "1 21/32")
    """Under slides: how much narrower the box is inside than the opening is."""
    height: Length = default(45.0, "1 3/4")
    """Side slides: how high they are, and so the sides of the box at least."""
    length: Length | None = None
    """Length of the slides and the box; unless said, the longest that goes in, in steps of 50 mm or
    2 in, or for runners all there is."""
    rear: LengthOrZero = default(10.0, "3/8")
    """Least gap behind the box."""
    below: LengthOrZero | None = None
    """From the lower edge of the front, or of the opening, up to the box; 12 mm (1/2 in) for
    side slides, 15 mm (9/16 in) for under slides unless said.  Runners take their own thickness."""
    above: LengthOrZero | None = None
    """From the box up to the upper edge of the front, or of the opening; 12 mm (1/2 in) for
    slides, 2 mm (1/16 in) for runners unless said."""


class DrawerBottomSpec(SpecModel):
    """The bottom of a drawer box, in grooves."""

    stock: str | None = None
    """Name of its stock; the back's unless said, or else the box's."""
    groove: Length | None = None
    """Depth of the grooves; unless said, a third of the box's thickness, rounded to a whole
    millimetre or sixteenth of an inch."""
    height: Length | None = None
    """From the lower edge of the box to the bottom; 10 mm (3/8 in), or 13 mm (1/2 in) over under
    slides, unless
    said."""
    held: Literal["from_rear", "all_round"] = "from_rear"
    """Slid in from the rear under a lower back, or caught in grooves in all four."""


class DrawerHandleSpec(SpecModel):
    """A bought-in knob or handle on each front, screwed on through front and box."""

    name: Text = "knob"
    """What is bought."""
    material: HandleMaterial | None = None
    """What it is shown as in photographs, `painted` as its front is; unless said what its name says
    (a "turned" one is of pale wood), or else steel."""
    count: Annotated[int, Field(ge=1, le=4)] = 1
    """How many on each front, evenly spread."""
    spacing: LengthOrZero = 0.0
    """From hole to hole of a handle; 0 for one hole."""
    hole: Length = default(5.0, "3/16")
    """Diameter of its holes."""
    projection: Length = default(30.0, "1 1/4")
    """How far it stands out; behind a door the fronts are set back as much."""


class DrawersSpec(SpecModel):
    """Drawers one above the other in one space; give `count` or `fronts`."""

    count: Annotated[int, Field(ge=1, le=50)] | None = None
    """How many, with equal fronts."""
    fronts: (
        Annotated[tuple[LengthOrShare, ...], Field(min_length=1, max_length=50, strict=False)]
        | None
    ) = None
    """Heights of the fronts from the top down; lengths or shares."""
    hung: Literal["inset", "overlay"] = "inset"
    """Fronts stand in the opening, or lie over the edges round it."""
    gap: Length = default(2.0, "3/32")
    """Gap round each front and between fronts; an overlay front leaves half of it to its
    neighbour."""
    overlay: LengthOrZero | None = None
    """How far an overlay front covers what is round it; unless said all it can, less half a gap."""
    bumper: LengthOrZero = default(BUMPER, BUMPER_IN)
    """Gap between an overlay front and what it covers: the thickness of its bumpers; 0 for none."""
    packing: LengthOrZero = 0.0
    """How far inset fronts and boxes stand in from the sides of the opening, on packers, to pass a
    door that stands open before them."""
    setback: LengthOrZero = 0.0
    """How far inset fronts stand behind the front of what is round them, or behind their door."""
    front_stock: str | None = None
    """Name of the fronts' stock; the carcass's unless said."""
    front_thickness: Length | None = None
    """Thickness of fronts of solid wood; the stock's unless said."""
    stock: str | None = None
    """Name of the box's stock; the carcass's unless said."""
    corners: JointField = Field(default="rebated", validate_default=True)
    """How the ends of a box meet its sides, which run through."""
    bottom: DrawerBottomSpec = DrawerBottomSpec()
    """The bottom of the box."""
    slides: SlidesSpec = SlidesSpec()
    """What they run on."""
    handle: DrawerHandleSpec | None = None
    """Knob or handle in the middle of each front."""
    load: LevelLoads | None = None
    """What each of them holds: a use or a weight, or keys; or a list from the top drawer down.
    Rows of things (`files`, `25 kg/m`) run along the longer way.  Unless said, what drawers of
    clothes are tested with: 8.5 lb/ft3 (136 kg/m3)."""
