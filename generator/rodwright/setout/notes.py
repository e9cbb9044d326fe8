"""What a pass of the set-out leaves for later ones, besides the parts on the bench."""

from __future__ import annotations

from dataclasses import dataclass, field

from rodwright.problems import KeyPath
from rodwright.setout.inside import Carcass, Front, Member, Space, Upright
from rodwright.wishes.doors import DoorsSpec
from rodwright.wishes.drawers import DrawersSpec
from rodwright.wishes.joints import JointSpec
from rodwright.wishes.loads import LoadSpec
from rodwright.wishes.models import SpaceSpec
from rodwright.wishes.shelf_holes import ShelfHolesSpec


@dataclass(frozen=True, slots=True)
class ShelfRows:
    """The rows of one space: two on each of the faces that bound it.

    ``heights`` are the z of the holes' centres from the bottom up, ``bearing`` the ones that
    shelves rest on.  ``front`` and ``rear`` are the y of the two rows; ``where`` is the way
    to ``wish``.
    """

    where: KeyPath
    wish: ShelfHolesSpec
    space: Space
    heights: tuple[float, ...]
    bearing: tuple[float, ...]
    front: float
    rear: float

    @property
    def uprights(self) -> tuple[Upright, Upright]:
        """The uprights to the left and right of the space."""
        return self.space.left, self.space.right

    @property
    def undersides(self) -> tuple[float, ...]:
        """The z of the undersides of the shelves: half a pin above the holes' centres."""
        return tuple(height + self.wish.diameter / 2 for height in self.bearing)


@dataclass(frozen=True, slots=True)
class End:
    """An end to be jointed to what carries it (refs), and the place of its joint in the spec."""

    joint: JointSpec
    carrier: str
    ref: str
    where: KeyPath
    layers: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class FrontEdge:
    """A level front edge inside: the parts behind it (refs, layer by layer), the uprights they
    stand between, and the opening they show in."""

    refs: tuple[str, ...]
    between: tuple[Upright, Upright]
    front: Front


@dataclass(frozen=True, slots=True)
class DoorSpace:
    """A space that doors are wished before, and their place in the spec."""

    space: Space
    wish: DoorsSpec
    where: KeyPath


@dataclass(frozen=True, slots=True)
class DrawerSpace:
    """A space that drawers are wished in, and their place in the spec."""

    space: Space
    wish: DrawersSpec
    where: KeyPath


@dataclass(frozen=True, slots=True)
class Said:
    """What is said to be carried, and the place of the spec that says so; None where nothing is."""

    load: LoadSpec
    where: KeyPath | None = None


@dataclass(frozen=True, slots=True)
class Contents:
    """A space that isn't divided further, what is wished in it and where; ``load`` is what it
    carries, or the spaces round it, with the place that says so (None: nothing is said)."""

    space: Space
    wish: SpaceSpec
    where: KeyPath
    load: Said | None


@dataclass(slots=True)
class Notes:
    """What a step leaves for later ones besides the parts on the bench; it is only added to."""

    carcass: Carcass | None = None
    ends: list[End] = field(default_factory=list)
    """Ends inside that are to be jointed."""
    dividers: list[tuple[Upright, Space]] = field(default_factory=list)
    """Each with the space that it divides."""
    edges: list[FrontEdge] = field(default_factory=list)
    """The front edges of shelves and of rails between rows."""
    members: list[Member] = field(default_factory=list)
    """Mid stiles and mid rails that the face frame shall have."""
    frame: dict[str, Member] = field(default_factory=dict)
    """Every stile and rail of the face frame that was laid, by their refs."""
    rows: list[ShelfRows] = field(default_factory=list)
    """Rows of holes for adjustable shelves."""
    loose: list[tuple[str, float]] = field(default_factory=list)
    """Refs of what adjustable shelves are made of, and the play (mm) each has."""
    drawers: list[DrawerSpace] = field(default_factory=list)
    doors: list[DoorSpace] = field(default_factory=list)
    contents: list[Contents] = field(default_factory=list)
    """Every space that isn't divided further."""
    slabs: dict[str, DoorsSpec] = field(default_factory=dict)
    """The wishes of doors that are one piece, by their refs."""
    continuous: list[KeyPath] = field(default_factory=list)
    """Places of the spaces through whose fronts the grain runs on."""
    levelling: float | None = None
    """How far (mm) the base can be packed or turned up off a floor that falls away from its high
    spot; None where it isn't said."""
