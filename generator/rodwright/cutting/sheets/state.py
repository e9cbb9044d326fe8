"""A plan in the making, and when one is better than another."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from random import Random

from rodwright.cutting.sheet_problem import Rules, SheetProblem, Way
from rodwright.cutting.sheets.filling import Effort, Filling
from rodwright.cutting.sheets.flawless import opened

Merit = tuple[int, int, int, int]
"""Area of the pieces left over, cost, how many sheets, their area: the less the better."""


@dataclass(frozen=True, slots=True)
class Found:
    """Sheets as they are filled (never changed any more), and the sizes of pieces left over."""

    merit: Merit
    fillings: tuple[Filling, ...]
    left: tuple[int, ...]

    @property
    def whole(self) -> bool:
        """Whether all pieces are cut."""
        return not self.left

    @property
    def cost(self) -> int:
        """What its sheets cost, in steps of money."""
        return self.merit[1]

    @property
    def used(self) -> Counter[int]:
        """How many of each sheet are cut."""
        return Counter(filling.sheet for filling in self.fillings)


@dataclass(frozen=True, slots=True)
class Ground:
    """What all searches work on: the problem, how each size may lie, chance, and effort.

    ``least`` is the area of the smallest piece; ``unit`` what a step of money is in the prices:
    what costs less costs nothing.
    """

    problem: SheetProblem
    ways: tuple[tuple[Way, ...], ...]
    rng: Random
    effort: Effort
    least: int
    unit: int = 1

    @property
    def rules(self) -> Rules:
        """How sheets may be cut."""
        return self.problem.rules

    def open(self, sheet: int) -> Filling:
        """A new sheet."""
        return opened(sheet, self.problem.sheets[sheet], self.rules, self.rng, self.least)

    def area(self, sizes: Iterable[int]) -> int:
        """Of some pieces."""
        return sum(self.problem.sizes[size].area for size in sizes)

    def merit(self, sheets: Iterable[int], left: Iterable[int]) -> Merit:
        """How good it is to cut some sheets and leave some pieces."""
        used = [self.problem.sheets[sheet] for sheet in sheets]
        cost = sum(sheet.price for sheet in used)
        return self.area(left), cost, len(used), sum(sheet.area for sheet in used)

    def found(self, fillings: Iterable[Filling], left: Iterable[int]) -> Found:
        """Fillings as what was found; empty ones aren't cut."""
        used = tuple(filling for filling in fillings if not filling.empty)
        missing = tuple(left)
        merit = self.merit((filling.sheet for filling in used), missing)
        return Found(merit, used, missing)
