"""What every step of the set-out works with."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from rodwright.lengths import LengthUnit
from rodwright.problems import KeyPath, Problems
from rodwright.setout.stocks import find_stock

if TYPE_CHECKING:
    # The steps that make these take a setting themselves.
    from rodwright.setout.bench import Bench
    from rodwright.setout.carcass.box import Carcass, Upright
    from rodwright.setout.carcass.shelf_rows import ShelfRows
    from rodwright.setout.carcass.spaces import Front, Member, Space
    from rodwright.setout.rod.main_lines import Rod
    from rodwright.setout.slope.lines import SlopeLines
    from rodwright.trade.sizes import TradeSizes
    from rodwright.unit import Stock
    from rodwright.wishes.doors import DoorsSpec
    from rodwright.wishes.drawers import DrawersSpec
    from rodwright.wishes.joints import JointSpec
    from rodwright.wishes.models import UnitSpec


@dataclass(frozen=True, slots=True)
class End:
    """An end to be jointed to what carries it (refs), and the place of its joint in the spec."""

    joint: JointSpec
    carrier: str
    ref: str
    where: KeyPath
    layers: tuple[str, ...] = ()
    stopped: float | None = None


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
    """Mid stiles and mid rails of the face frame."""
    rows: list[ShelfRows] = field(default_factory=list)
    """Rows of holes for adjustable shelves."""
    loose: list[tuple[str, float]] = field(default_factory=list)
    """Refs of what adjustable shelves are made of, and the play (mm) each has."""
    drawers: list[DrawerSpace] = field(default_factory=list)
    doors: list[DoorSpace] = field(default_factory=list)
    slabs: dict[str, DoorsSpec] = field(default_factory=dict)
    """The wishes of doors that are one piece, by their refs."""


@dataclass(frozen=True, slots=True)
class Setting:
    """The spec, the rod drawn from it, and the bench on which the unit comes to be.

    Bench, problems and notes are filled as the set-out goes on; settings at different places of
    the spec share them.  ``where`` is the place that is worked on, ``slope`` the lines of a
    sloping ceiling.  Lengths in mm.
    """

    spec: UnitSpec
    rod: Rod
    bench: Bench
    problems: Problems
    notes: Notes = field(default_factory=Notes)
    slope: SlopeLines | None = None
    where: KeyPath = ()

    def at(self, *keys: str | int) -> Setting:
        """The same further down the spec."""
        return replace(self, where=(*self.where, *keys))

    def moved_to(self, where: KeyPath) -> Setting:
        """The same at another place of the spec."""
        return replace(self, where=where)

    @property
    def carcass(self) -> Carcass:
        """The box as it was laid.

        Raises:
            RuntimeError: it wasn't yet.
        """
        if self.notes.carcass is None:
            raise RuntimeError("the carcass isn't laid yet")
        return self.notes.carcass

    @property
    def sizes(self) -> TradeSizes:
        """What its maker buys in, and measures by."""
        return self.bench.sizes

    @property
    def unit(self) -> LengthUnit:
        """What its maker measures in."""
        return self.problems.unit

    @property
    def moisture(self) -> tuple[float, float]:
        """The least and the most moisture content (%) that solid wood lives with."""
        return self.spec.moisture.range

    def say(self, length: float) -> str:
        """A length as the maker says it."""
        return self.problems.length(length)

    def at_least(self, length: float) -> str:
        """A length that is enough, as the maker says it."""
        return self.problems.at_least(length)

    def at_most(self, length: float) -> str:
        """A length that isn't too much, as the maker says it."""
        return self.problems.at_most(length)

    def refuse(self, message: str, remedy: str) -> None:
        """Note what can't be made as it is wished here."""
        self.problems.add(self.where, message, remedy)

    def stock(self, name: str | None) -> Stock | None:
        """The stock of this name, the carcass's where none is given; None where there is none,
        which is noted here."""
        if name is None:
            return self.rod.stock
        return find_stock(self.rod.stocks, name, self.where, self.problems)
