"""Parts, joints and the unit: the one source of truth.

Everything here is immutable and plain.  A part says what it is (a blank), what is cut
into it (workings, in order) and where it stands (a placement).  Every list, drawing and
solid is derived from these; nothing measures a solid to find out a size.

Frames
    Part frame: x along the length (with the grain where there is one), y across the
    width, z through the thickness.  The blank fills ``[0, length] x [0, width] x
    [0, thickness]``; the face is +z (``show_surfaces`` say what is seen).  A unit that is set
    out has its parts' frames as :mod:`rodwright.unit.laid` lays them, the most worked side up.
    Unit frame: x to the right seen from the front, y from the front to the back, z up;
    the origin is the carcass's front lower left corner on the floor line.
Units
    Millimetres, kilograms, degrees, kilograms per cubic metre.
"""

from rodwright.unit.fittings import Block, Fitting, Knob, Rod, Shape, Ware
from rodwright.unit.joints import Clearance, Fixing, Joint, JointKind
from rodwright.unit.loading import Load, Loading, Lump, Stretch
from rodwright.unit.motions import Motion, Slide, Swing
from rodwright.unit.opening import (
    Contradiction,
    EdgeLine,
    LinePoint,
    Opening,
    OpeningPlane,
    OpeningReadings,
    OpeningShape,
    Quadrilateral,
)
from rodwright.unit.parts import Part, Placement, ShapeKey
from rodwright.unit.roles import (
    BASE,
    CARRIES_HINGES,
    CASE,
    CUT_OUT,
    DOORS,
    DRAWERS,
    FACE_FRAME,
    FRONTS,
    LEVELS,
    PANELS,
    STANDS_OUT,
    SURROUND,
    TRAITS,
    UPRIGHTS,
    Assembly,
    Role,
    Traits,
)
from rodwright.unit.stock import Blank, Edging, Piece, Stock
from rodwright.unit.surfaces import Grain, Surface
from rodwright.unit.surroundings import Obstacle, Surroundings
from rodwright.unit.whole import Unit
from rodwright.unit.workings import (
    Bevel,
    Bore,
    Channel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Refit,
    Slant,
    Turn,
    Working,
)

__all__ = [
    "Assembly",
    "BASE",
    "Bevel",
    "Blank",
    "Block",
    "CARRIES_HINGES",
    "CASE",
    "CUT_OUT",
    "Bore",
    "Channel",
    "Clearance",
    "Contradiction",
    "DOORS",
    "DRAWERS",
    "Easing",
    "EdgeLine",
    "Edging",
    "FACE_FRAME",
    "FRONTS",
    "FingerPull",
    "Fitting",
    "Fixing",
    "Grain",
    "Groove",
    "Hole",
    "Housing",
    "Joint",
    "JointKind",
    "Knob",
    "LEVELS",
    "LinePoint",
    "Load",
    "Loading",
    "Lump",
    "Mitre",
    "Mortise",
    "Motion",
    "Notch",
    "Obstacle",
    "Opening",
    "OpeningPlane",
    "OpeningReadings",
    "OpeningShape",
    "PANELS",
    "Part",
    "Piece",
    "Placement",
    "PocketHole",
    "Quadrilateral",
    "Rebate",
    "Refit",
    "Rod",
    "Role",
    "STANDS_OUT",
    "SURROUND",
    "Shape",
    "ShapeKey",
    "Slant",
    "Slide",
    "Stock",
    "Stretch",
    "Surface",
    "Surroundings",
    "Swing",
    "TRAITS",
    "Traits",
    "UPRIGHTS",
    "Turn",
    "Unit",
    "Ware",
    "Working",
]
