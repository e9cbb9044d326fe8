"""What every step of the set-out works with."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from rodwright.lengths import LengthUnit
from rodwright.problems import KeyPath, Problems
from rodwright.setout.bench import Bench
from rodwright.setout.inside import Carcass
from rodwright.setout.notes import Notes
from rodwright.setout.rod.lines import Rod
from rodwright.setout.stocks import find_stock
from rodwright.trade.sizes import TradeSizes
from rodwright.unit import Stock
from rodwright.wishes.models import UnitSpec

if TYPE_CHECKING:
    # Most units have no sloping ceiling.
    from rodwright.setout.rod.slope_lines import SlopeLines


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
