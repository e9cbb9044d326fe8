"""Parts, joints and the unit: the one source of truth.

Everything here is immutable and plain.  A part says what it is (a blank), what is cut
into it (workings, in order) and where it stands (a placement).  Every list, drawing and
solid is derived from these; nothing measures a solid to find out a size.

Frames
    Part frame: x along the length (with the grain where there is one), y across the
    width, z through the thickness.  The blank fills ``[0, length] x [0, width] x
    [0, thickness]``; the face is +z (``show_surfaces`` say what is seen).  A unit that is set
    out has its parts' frames as :mod:`rodwright.laid` lays them, the most worked side up.
    Unit frame: x to the right seen from the front, y from the front to the back, z up;
    the origin is the carcass's front lower left corner on the floor line.
Units
    Millimetres, kilograms, degrees, kilograms per cubic metre.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from enum import StrEnum
from functools import lru_cache
from typing import Literal

from rodwright.halfspaces import bounds_of, box_planes, vertices
from rodwright.ways import WayIn

Vector = tuple[float, float, float]
Matrix = tuple[tuple[float, float, float, float], ...]


class Surface(StrEnum):
    """One of a blank's six surfaces, in the part frame."""

    FACE = "face"  # z = thickness
    REVERSE = "reverse"  # z = 0
    FACE_EDGE = "face edge"  # y = 0
    BACK_EDGE = "back edge"  # y = width
    NEAR_END = "near end"  # x = 0
    FAR_END = "far end"  # x = length

    @property
    def axis(self) -> int:
        """Index of the axis normal to this surface: 0 for x, 1 for y, 2 for z."""
        return _SURFACES[self][0]

    @property
    def at_high(self) -> bool:
        """True where the surface lies at the high end of its axis."""
        return _SURFACES[self][1]


_SURFACES: dict[Surface, tuple[int, bool]] = {
    Surface.FACE: (2, True),
    Surface.REVERSE: (2, False),
    Surface.FACE_EDGE: (1, False),
    Surface.BACK_EDGE: (1, True),
    Surface.NEAR_END: (0, False),
    Surface.FAR_END: (0, True),
}


class Grain(StrEnum):
    """How the visible grain runs on a part."""

    LENGTHWISE = "lengthwise"
    CROSSWISE = "crosswise"
    NONE = "none"


class Role(StrEnum):
    """What a part does in the unit."""

    SIDE = "side"
    TOP = "top"
    BOTTOM = "bottom"
    DIVIDER = "divider"
    SHELF = "shelf"
    BACK = "back"
    STILE = "stile"
    RAIL = "rail"
    LIPPING = "lipping"
    DOOR = "door"
    DOOR_STILE = "door stile"
    DOOR_RAIL = "door rail"
    DOOR_PANEL = "door panel"
    DRAWER_FRONT = "drawer front"
    DRAWER_SIDE = "drawer side"
    DRAWER_END = "drawer end"
    DRAWER_BOTTOM = "drawer bottom"
    RUNNER = "runner"
    PACKER = "packer"
    CARCASS_RAIL = "carcass rail"
    PLINTH = "plinth"
    LEG = "leg"
    WORKTOP = "worktop"
    CORNICE = "cornice"
    SCRIBE = "scribe"


STANDS_OUT = (
    Role.SCRIBE, Role.WORKTOP, Role.CORNICE,
    Role.DOOR, Role.DOOR_STILE, Role.DOOR_RAIL, Role.DOOR_PANEL, Role.DRAWER_FRONT,
    Role.DRAWER_SIDE, Role.DRAWER_END, Role.DRAWER_BOTTOM,
)  # fmt: skip
"""What reaches past the carcass on purpose: it may stand out of an opening, and the set-out holds
it against the walls."""


@dataclass(frozen=True, slots=True)
class Box:
    """An axis-aligned box between two opposite corners, in whatever frame its user names."""

    low: Vector
    high: Vector

    @property
    def size(self) -> Vector:
        """Extents along x, y and z."""
        return (
            self.high[0] - self.low[0],
            self.high[1] - self.low[1],
            self.high[2] - self.low[2],
        )

    @property
    def centre(self) -> Vector:
        """The box's middle point."""
        return (
            (self.low[0] + self.high[0]) / 2,
            (self.low[1] + self.high[1]) / 2,
            (self.low[2] + self.high[2]) / 2,
        )


@dataclass(frozen=True, slots=True)
class Piece:
    """Some equal boards in the rack: length and width in mm, and how many."""

    length: float
    width: float
    count: int


@dataclass(frozen=True, slots=True)
class Stock:
    """A sheet or board material that parts are cut from.

    ``thickness`` is the real thickness in mm, ``density`` in kg/m3 (``density_source``
    says where it comes from), ``colour`` is ``#rrggbb``.  ``size`` is one sheet's length
    and width; ``pieces`` are the boards at hand; ``price`` is for one sheet, or for one
    metre of board, in the spec's currency.  ``sawn`` says how the rings of boards lie: along
    their width (flat) or square to it (quarter).
    """

    name: str
    kind: Literal["sheet", "board"]
    material: str
    thickness: float
    grain: Grain
    density: float
    density_source: str
    colour: str
    size: tuple[float, float] | None = None
    pieces: tuple[Piece, ...] = ()
    price: float | None = None
    sawn: Literal["flat", "quarter"] = "flat"

    @property
    def described(self) -> str:
        """The material as it is asked for: quarter-sawn where it has to be."""
        said = self.sawn == "flat" or "quarter" in self.material.lower()
        return self.material if said else f"{self.material}, quarter-sawn"


@dataclass(frozen=True, slots=True)
class Blank:
    """The box a part is worked from, at its finished length, width and thickness in mm.

    ``trim_length`` and ``trim_width`` are what is left on when the blank is first cut, to
    be trimmed away later; they are no part of the solid.  ``trim_at`` are the ends and edges
    at which it is, where that isn't a matter of course.
    """

    length: float
    width: float
    thickness: float
    stock: Stock
    grain: Grain
    show_surfaces: tuple[Surface, ...] = (Surface.FACE,)
    trim_length: float = 0.0
    trim_width: float = 0.0
    trim_at: tuple[Surface, ...] = ()

    @property
    def size(self) -> Vector:
        """Finished length, width and thickness."""
        return (self.length, self.width, self.thickness)

    @property
    def rough_size(self) -> Vector:
        """Length, width and thickness to cut before trimming."""
        return (self.length + self.trim_length, self.width + self.trim_width, self.thickness)


# --- workings -----------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Rebate:
    """A step along the arris between ``surface`` and ``edge``.

    ``width`` is measured over ``surface`` from ``edge``, ``depth`` into the blank from
    ``surface``; ``start`` and ``stop`` along the arris, from the low end of its axis
    (``stop`` of None: to the far end).
    """

    surface: Surface
    edge: Surface
    width: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    def removal(self, size: Vector) -> Box:
        """The box cut from a blank of this size, part frame."""
        run = 3 - self.surface.axis - self.edge.axis
        low, high = [0.0, 0.0, 0.0], list(size)
        for surface, amount in ((self.surface, self.depth), (self.edge, self.width)):
            if surface.at_high:
                low[surface.axis] = size[surface.axis] - amount
            else:
                high[surface.axis] = amount
        low[run] = self.start
        high[run] = size[run] if self.stop is None else self.stop
        return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


def _channel(
    size: Vector,
    surface: Surface,
    run: int,
    position: float,
    width: float,
    depth: float,
    start: float,
    stop: float | None,
) -> Box:
    across = 3 - surface.axis - run
    low, high = [0.0, 0.0, 0.0], list(size)
    low[across], high[across] = position, position + width
    if surface.at_high:
        low[surface.axis] = size[surface.axis] - depth
    else:
        high[surface.axis] = depth
    low[run] = start
    high[run] = size[run] if stop is None else stop
    return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


@dataclass(frozen=True, slots=True)
class Groove:
    """A channel along the length (x) in a face or an edge.

    ``position`` is its near side, along the other axis of ``surface`` (y on a face, z on
    an edge); ``start`` and ``stop`` are along x (``stop`` of None: right through).
    """

    surface: Surface
    position: float
    width: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    def removal(self, size: Vector) -> Box:
        """The box cut from a blank of this size, part frame."""
        return _channel(
            size, self.surface, 0, self.position, self.width, self.depth, self.start, self.stop
        )


@dataclass(frozen=True, slots=True)
class Housing:
    """A channel across the width (y) in the face or the reverse (US: dado).

    ``position`` is its near side along x; ``start`` and ``stop`` are along y.  Through
    when it runs from edge to edge, stopped otherwise.
    """

    surface: Surface
    position: float
    width: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    def removal(self, size: Vector) -> Box:
        """The box cut from a blank of this size, part frame."""
        return _channel(
            size, self.surface, 1, self.position, self.width, self.depth, self.start, self.stop
        )


@dataclass(frozen=True, slots=True)
class Notch:
    """A rectangle cut right through the thickness: its low corner (x, y) and its extent."""

    x: float
    y: float
    length: float
    width: float
    use: str = field(default="", compare=False)

    def removal(self, size: Vector) -> Box:
        """The box cut from a blank of this size, part frame."""
        return Box((self.x, self.y, 0.0), (self.x + self.length, self.y + self.width, size[2]))


@dataclass(frozen=True, slots=True)
class Mitre:
    """A sloping cut that takes the whole end off.

    ``angle`` is the saw setting, in degrees away from a square cut (45 for a square
    corner), 0 < angle < 90; the long point stays where ``long`` meets ``end``.  With
    ``long`` an edge it is a frame mitre, with ``long`` a face it is a bevelled end.
    """

    end: Surface
    angle: float
    long: Surface

    def plane(self, size: Vector) -> tuple[Vector, Vector]:
        """A point on the cut and its unit normal, pointing at what is cut away; part frame."""
        point, normal = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        for surface in (self.end, self.long):
            point[surface.axis] = size[surface.axis] if surface.at_high else 0.0
        slope = math.radians(self.angle)
        normal[self.end.axis] = math.cos(slope) * (1 if self.end.at_high else -1)
        normal[self.long.axis] = math.sin(slope) * (-1 if self.long.at_high else 1)
        return (point[0], point[1], point[2]), (normal[0], normal[1], normal[2])


@dataclass(frozen=True, slots=True)
class Easing:
    """The arris between two surfaces rounded to a quarter circle.

    ``start`` and ``stop`` are along the arris from the low end of its axis (``stop`` of
    None: to the far end).
    """

    surface: Surface
    edge: Surface
    radius: float
    start: float = 0.0
    stop: float | None = None


@dataclass(frozen=True, slots=True)
class Hole:
    """A round hole square to ``surface``.

    ``position`` is its centre along the two axes of that surface, in the order x, y, z;
    ``depth`` of None goes right through.
    """

    surface: Surface
    position: tuple[float, float]
    diameter: float
    depth: float | None = None
    use: str = field(default="", compare=False)


@dataclass(frozen=True, slots=True)
class Bevel:
    """A flat cut across the arris between two surfaces on different axes.

    Named as a rebate is: ``width`` is measured over ``surface`` from ``edge``, ``depth``
    down ``edge`` from ``surface``.  Either may be more than the blank has, where the cut
    takes off a whole end or edge.
    """

    surface: Surface
    edge: Surface
    width: float
    depth: float

    @property
    def angle(self) -> float:
        """Degrees between the cut and ``edge``: what a saw is set to away from square."""
        return math.degrees(math.atan2(self.width, self.depth))

    def plane(self, size: Vector) -> tuple[Vector, Vector]:
        """A point on the cut and its unit normal, pointing at what is cut away; part frame."""
        point, normal = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        reach = math.hypot(self.width, self.depth)
        for surface, share in ((self.surface, self.width), (self.edge, self.depth)):
            point[surface.axis] = size[surface.axis] if surface.at_high else 0.0
            normal[surface.axis] = share / reach * (1 if surface.at_high else -1)
        inward = self.depth if not self.surface.at_high else -self.depth
        point[self.surface.axis] += inward
        return (point[0], point[1], point[2]), (normal[0], normal[1], normal[2])


@dataclass(frozen=True, slots=True)
class Mortise:
    """A pocket square to ``surface``.

    ``position`` is its low corner and ``extent`` its size along the two axes of that
    surface, in the order x, y, z; ``depth`` goes into the blank.  With ``round_ends`` the
    two ends of its longer extent are half circles, as a cutter leaves them.
    """

    surface: Surface
    position: tuple[float, float]
    extent: tuple[float, float]
    depth: float
    round_ends: bool = False
    use: str = field(default="", compare=False)

    @property
    def long_axis(self) -> int:
        """The part axis along its longer extent."""
        first, second = (each for each in range(3) if each != self.surface.axis)
        return first if self.extent[0] >= self.extent[1] else second

    def removal(self, size: Vector) -> Box:
        """The box round the pocket, part frame: all of it is cut unless the ends are round."""
        axis = self.surface.axis
        first, second = (each for each in range(3) if each != axis)
        low, high = [0.0, 0.0, 0.0], list(size)
        for i, at, extent in zip((first, second), self.position, self.extent, strict=True):
            low[i], high[i] = at, at + extent
        if self.surface.at_high:
            low[axis] = size[axis] - self.depth
        else:
            high[axis] = self.depth
        return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


@dataclass(frozen=True, slots=True)
class PocketHole:
    """A hole for a slanting screw, drilled from a face out through an end or an edge.

    Its axis lies at ``position`` along the arris of the two, ``angle`` degrees from
    ``surface``, and leaves the ``end`` at ``exit`` mm below ``surface``.  The pocket of
    ``diameter`` stops ``stop`` mm short of the end, measured along the axis, with a floor
    square to it; from there the screw goes on through a hole of ``screw`` mm diameter.
    """

    surface: Surface
    end: Surface
    position: float
    exit: float
    stop: float
    diameter: float
    screw: float
    angle: float = 15.0
    use: str = field(default="", compare=False)


Working = Rebate | Groove | Housing | Notch | Mitre | Easing | Hole | Bevel | Mortise | PocketHole
"""Anything that can be cut into a blank.  Workings only take material away, and what is
taken is the union of their removals, so their order never changes the shape.

``use`` is what one is cut for, in the maker's words (``adjustable shelves``), empty where nothing
says so.  It doesn't tell workings apart: pieces that are cut alike are alike."""


@dataclass(frozen=True, slots=True)
class Edging:
    """Veneer or tape glued on an edge or end after cutting, ``thickness`` in mm.

    It is no solid of its own: a part's finished size includes it.  ``colour`` is what to
    order it in, empty where the material says it all.
    """

    surface: Surface
    material: str
    thickness: float
    colour: str = ""

    @property
    def called(self) -> str:
        """Material and colour."""
        return f"{self.material}, {self.colour}" if self.colour else self.material


# --- placing and joining -------------------------------------------------------------


def cross(a: Vector, b: Vector) -> Vector:
    """Vector product."""
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


@dataclass(frozen=True, slots=True)
class Placement:
    """Where a part stands: its frame's origin and the unit vectors of its length and width.

    All in the unit frame.  The thickness direction is the vector product of the two, so a
    placement never mirrors a part.
    """

    origin: Vector
    length: Vector
    width: Vector

    @property
    def thickness(self) -> Vector:
        """Unit vector of the part's thickness (towards the face), unit frame."""
        return cross(self.length, self.width)

    def matrix(self) -> Matrix:
        """The 4 x 4 homogeneous transform from part frame to unit frame, by rows."""
        u, v, w, o = self.length, self.width, self.thickness, self.origin
        return (*((u[i], v[i], w[i], o[i]) for i in range(3)), (0.0, 0.0, 0.0, 1.0))

    def to_part(self, point: Vector) -> Vector:
        """A point of the unit frame in the part frame."""
        x, y, z = (
            sum((point[i] - self.origin[i]) * axis[i] for i in range(3))
            for axis in (self.length, self.width, self.thickness)
        )
        return (x, y, z)

    def to_unit(self, point: Vector) -> Vector:
        """A point of the part frame in the unit frame."""
        u, v, w, o = self.length, self.width, self.thickness, self.origin
        x, y, z = (o[i] + point[0] * u[i] + point[1] * v[i] + point[2] * w[i] for i in range(3))
        return (x, y, z)


ShapeKey = tuple[Vector, tuple[Working, ...]]


@dataclass(frozen=True, slots=True)
class Part:
    """One piece of the unit.

    ``ref`` is unique in the unit and short enough to pencil on the piece.  ``group`` is
    the sub-assembly it belongs to.  ``lipped`` names the edges that carry a lipping, in
    the maker's words; ``edged`` is what is glued on others.  ``withdraw`` is the direction
    (unit frame) in which the piece comes off the unit when it is taken apart, the reverse of
    how it goes on; a zero vector for pieces that everything else is taken off.
    """

    ref: str
    name: str
    role: Role
    group: str
    blank: Blank
    placement: Placement
    workings: tuple[Working, ...] = ()
    lipped: tuple[str, ...] = ()
    withdraw: Vector = (0.0, 0.0, 0.0)
    edged: tuple[Edging, ...] = ()

    @property
    def rough_size(self) -> Vector:
        """Length, width and thickness to cut: what is trimmed later more, edging less."""
        size = list(self.blank.rough_size)
        for each in self.edged:
            size[each.surface.axis] -= each.thickness
        return (size[0], size[1], size[2])

    @property
    def shape(self) -> ShapeKey:
        """What decides the solid: parts with equal shapes are the same piece of wood."""
        return (self.blank.size, self.workings)

    def bounds(self) -> Box:
        """The box round the placed blank, unit frame; round what bevels leave if it lies askew."""
        placed, blank = self.placement, self.blank
        u, v = placed.length, placed.width
        if max(map(abs, u)) < 1 - 1e-9 or max(map(abs, v)) < 1 - 1e-9:
            cuts = [each.plane(blank.size) for each in self.workings if isinstance(each, Bevel)]
            planes = [*box_planes((0.0, 0.0, 0.0), blank.size), *cuts]
            return Box(*bounds_of(placed.to_unit(corner) for corner in vertices(planes)))
        return _placed_box(blank.size, placed)


@lru_cache(maxsize=8192)
def _placed_box(size: Vector, placed: Placement) -> Box:
    """The box of a blank that stands square to the unit; asked for again and again."""
    u, v, w = placed.length, placed.width, placed.thickness
    reaches = [(size[0] * u[i], size[1] * v[i], size[2] * w[i]) for i in range(3)]
    low = [at + sum(min(0.0, reach) for reach in reaches[i]) for i, at in enumerate(placed.origin)]
    high = [at + sum(max(0.0, reach) for reach in reaches[i]) for i, at in enumerate(placed.origin)]
    return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


class JointKind(StrEnum):
    """How two parts meet."""

    BUTT = "butt"
    HOUSING = "housing"
    REBATE = "rebate"
    GROOVE = "groove"
    MITRE = "mitre"
    FACE_GLUED = "glued face to face"
    EDGE_GLUED = "glued to the edge"
    RESTING = "resting on pins"
    SCREWED = "butted and screwed"
    PINNED = "butted and pinned"
    TONGUE = "tongue and groove"
    DOWEL = "dowel"
    BISCUIT = "biscuit"
    LOOSE_TENON = "loose tenon"
    POCKET_SCREW = "pocket screw"
    KNOCK_DOWN = "knock-down fitting"
    HINGED = "hinged"
    SLIDING = "on slides"
    FLOATING = "floating in a groove"
    BUTTONED = "held so that it can move"
    CLIPPED = "clipped on"
    STANDING = "standing on it"

    @property
    def meets(self) -> bool:
        """Whether parts joined so must touch."""
        return self not in (
            JointKind.RESTING, JointKind.HINGED, JointKind.SLIDING, JointKind.FLOATING,
            JointKind.CLIPPED,
        )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Fixing:
    """Bought-in pieces that hold a joint: what, how many, and of what size.

    ``pilot`` says in words what is drilled for each (``pilot 2.5 mm, clearance 4.5 mm``), ``on``
    which pieces it goes on, where that isn't just the second part of its joint.
    """

    name: str
    count: int
    size: str = ""
    pilot: str = ""
    on: str = ""


@dataclass(frozen=True, slots=True)
class Joint:
    """Two parts that meet.

    ``first`` carries the joint (it is housed, rebated, grooved, or simply stays put),
    ``second`` comes to it; both are refs.  ``at`` is the middle of the meeting, unit
    frame.
    """

    kind: JointKind
    first: str
    second: str
    at: Vector
    fixings: tuple[Fixing, ...] = ()


@dataclass(frozen=True, slots=True)
class Swing:
    """Parts (refs) that turn together about an upright axis when a door is opened.

    ``hinge`` is the axis's x and y in the unit frame, ``angle`` how far it opens in
    degrees, anticlockwise seen from above where positive.
    """

    refs: tuple[str, ...]
    hinge: tuple[float, float]
    angle: float


@dataclass(frozen=True, slots=True)
class Slide:
    """Parts (refs) that move together along ``travel`` (unit frame, mm) when opened."""

    refs: tuple[str, ...]
    travel: Vector


Motion = Swing | Slide
"""How parts move in use."""


@dataclass(frozen=True, slots=True)
class Rod:
    """A round bar of ``diameter`` mm from ``start`` to ``end``."""

    start: Vector
    end: Vector
    diameter: float


@dataclass(frozen=True, slots=True)
class Fitting:
    """How a bought-in piece looks: ``shapes`` in the frame of the part (``ref``) it is fixed to.

    It is there for pictures alone: no part, weighed, checked and exported nowhere.  ``inner``
    pieces are seen only where doors and drawers stand open.
    """

    ref: str
    shapes: tuple[Box | Rod, ...]
    inner: bool = False

    def moved(self, before: Placement | None, after: Placement) -> Fitting:
        """The same where it stands, its part's frame (None: the unit frame) being another one.

        Boxes need frames that are square to each other.
        """

        def turned(point: Vector) -> Vector:
            return after.to_part(before.to_unit(point) if before else point)

        shapes: list[Box | Rod] = []
        for shape in self.shapes:
            if isinstance(shape, Rod):
                shapes.append(Rod(turned(shape.start), turned(shape.end), shape.diameter))
            else:
                one, other = turned(shape.low), turned(shape.high)
                low, high = (
                    tuple(choose(a, b) for a, b in zip(one, other, strict=True))
                    for choose in (min, max)
                )
                shapes.append(Box((low[0], low[1], low[2]), (high[0], high[1], high[2])))
        return Fitting(self.ref, tuple(shapes), self.inner)


@dataclass(frozen=True, slots=True)
class Clearance:
    """Two parts (refs) that must stay at least ``least`` mm apart."""

    first: str
    second: str
    least: float


Quadrilateral = tuple[
    tuple[float, float], tuple[float, float], tuple[float, float], tuple[float, float]
]
"""Corners (x, z) in mm: bottom left, bottom right, top right, top left."""


@dataclass(frozen=True, slots=True)
class LinePoint:
    """A point on the line of a wall, a floor or a top: how far ``along`` it (z of a wall, x of a
    floor or top) and where it lies ``across`` (x of a wall, z of a floor or top); mm.

    ``error`` is the bound on the gap between it and the unit, nineteen times in twenty.
    """

    along: float
    across: float
    error: float = 0.0


EdgeLine = tuple[LinePoint, ...]
"""A wall, floor or top from below or from the left: straight from point to point."""


@dataclass(frozen=True, slots=True)
class OpeningPlane:
    """One plane of an opening: its corners, and the lines of its four edges through what was
    read between them.  The lines begin and end at the corners."""

    corners: Quadrilateral
    left: EdgeLine
    right: EdgeLine
    bottom: EdgeLine
    top: EdgeLine

    @classmethod
    def straight(cls, corners: Quadrilateral) -> OpeningPlane:
        """A plane with straight edges, known without error."""
        a, b, c, d = corners
        return cls(
            corners,
            (LinePoint(a[1], a[0]), LinePoint(d[1], d[0])),
            (LinePoint(b[1], b[0]), LinePoint(c[1], c[0])),
            (LinePoint(*a), LinePoint(*b)),
            (LinePoint(*d), LinePoint(*c)),
        )

    def line(self, side: str) -> EdgeLine:
        """The line at a unit's `left`, `right`, `bottom` or `top`."""
        return {"left": self.left, "right": self.right, "bottom": self.bottom, "top": self.top}[
            side
        ]


@dataclass(frozen=True, slots=True)
class OpeningShape:
    """The likeliest shape of an opening, round the unit that stands in it; unit frame, mm.

    ``front`` and ``rear`` are its planes (``rear`` of None: not measured apart).
    ``least_width`` and ``least_height`` are what surely goes in, the readings being as
    uncertain as they are.  ``overlap`` is how far a face frame is to reach past the gaps.
    """

    front: OpeningPlane
    rear: OpeningPlane | None
    least_width: float
    least_height: float
    overlap: float = 0.0

    @property
    def planes(self) -> dict[str, OpeningPlane]:
        """The planes that were measured, by name."""
        return {"front": self.front} | ({"rear": self.rear} if self.rear else {})


@dataclass(frozen=True, slots=True)
class Contradiction:
    """A reading of one plane that is ``off`` mm more than the others say (less than 0: less):
    more than a careful reading errs, though not so much that it can't be right."""

    plane: str
    reading: str
    off: float


@dataclass(frozen=True, slots=True)
class OpeningReadings:
    """What was read of an opening, for the checks: the tightest of each on the tape (mm; depth
    None where none was read), how many widths and heights of the front, the edges of the front
    whose plumb or level was read, and what contradicts the rest."""

    width: float
    height: float
    depth: float | None
    widths: int
    heights: int
    levelled: tuple[str, ...] = ()
    contradictions: tuple[Contradiction, ...] = ()


@dataclass(frozen=True, slots=True)
class Opening:
    """The opening a unit is made for: width and height it can use, and depth, in mm.

    ``depth`` is None where it was not measured, ``shape`` and ``readings`` where nothing but
    sizes is known.  ``front`` is the y of the plane in which the walls beside it end, unit frame.
    """

    width: float
    height: float
    depth: float | None
    shape: OpeningShape | None = None
    front: float | None = None
    readings: OpeningReadings | None = None


@dataclass(frozen=True, slots=True)
class Unit:
    """A whole piece of furniture, set out.

    ``envelope`` is the overall box (a face frame stands in front of the carcass, at
    negative y, and may overhang it).  ``display_unit`` is what lengths are shown in.
    ``least_gap`` is the smallest gap, in mm, that two parts which neither touch nor are
    joined may leave (0: any).  ``way_in`` is what the unit has to pass, where that is known.
    ``motions`` are how doors and drawers move; ``fixings`` are bought in and belong to no
    joint, such as feet and handles; ``fittings`` say how some of what is bought in looks.
    ``hung`` says that it hangs on the wall and stands on nothing.
    ``levelling`` is how far, in mm, its base can be packed or turned up off a floor that falls
    away from its high spot (None: not said). ``moisture`` is the least and most moisture content,
    in %, of its solid wood in use; ``services`` are what it is cut out round, such as a socket or
    a pipe. ``author`` and ``organisation`` are who designed it, ``date`` the day (ISO 8601), each
    empty where it isn't known.
    """

    title: str
    envelope: Box
    parts: tuple[Part, ...]
    joints: tuple[Joint, ...] = ()
    clearances: tuple[Clearance, ...] = ()
    opening: Opening | None = None
    least_gap: float = 0.0
    display_unit: Literal["mm", "in"] = "mm"
    way_in: WayIn | None = None
    motions: tuple[Motion, ...] = ()
    fixings: tuple[Fixing, ...] = ()
    fittings: tuple[Fitting, ...] = ()
    levelling: float | None = None
    services: tuple[str, ...] = ()
    hung: bool = False
    moisture: tuple[float, float] = (6.0, 12.0)
    author: str = ""
    organisation: str = ""
    date: str = ""
    _by_ref: dict[str, Part] = field(init=False, repr=False, compare=False, hash=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "_by_ref", {part.ref: part for part in self.parts})
        if len(self._by_ref) != len(self.parts):
            raise ValueError("two parts of a unit have the same ref")

    @property
    def size(self) -> Vector:
        """Overall width, height and depth."""
        width, depth, height = self.envelope.size
        return (width, height, depth)

    def part(self, ref: str) -> Part:
        """The part with this ref.

        Raises:
            KeyError: no part has it.
        """
        return self._by_ref[ref]

    @property
    def shapes(self) -> dict[ShapeKey, tuple[Part, ...]]:
        """Parts gathered by shape, in the order in which shapes first occur."""
        gathered: dict[ShapeKey, list[Part]] = {}
        for part in self.parts:
            gathered.setdefault(part.shape, []).append(part)
        return {key: tuple(parts) for key, parts in gathered.items()}
