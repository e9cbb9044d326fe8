"""Patterns with any number of each piece: fast to price, a little less than the best bound."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.cutting.bounds.any_number import best_puts, best_values, ground
from rodwright.cutting.bounds.columns import Priced
from rodwright.cutting.bounds.rasters import MOST
from rodwright.cutting.bounds.staged import orders, staged, staged_puts
from rodwright.cutting.sheet_problem import Pattern, SheetProblem

_STAGED = 2 * MOST
"""Places along a side where stages are limited: then fewer cuts are tried at each."""


def pricing_of(problem: SheetProblem) -> ManyOfEach:
    """How patterns are priced by the rules of a problem."""
    return ManyOfEach(problem) if problem.rules.stages is None else InStages(problem)


class ManyOfEach:
    """Prices by the dynamic programme of :mod:`rodwright.cutting.bounds.any_number`.

    Where lengths had to be rounded, or a sheet has flaws, a pattern can't always be cut:
    :meth:`cuttable` says so.
    """

    def __init__(self, problem: SheetProblem, *, most: int = MOST) -> None:
        self.grounds = [ground(problem.sizes, sheet, most=most) for sheet in problem.sheets]

    def best(self, kind: int, worth: Sequence[int]) -> Priced:
        """By prices of the sizes, none less than 0."""
        on = self.grounds[kind]
        values = best_values(on, worth)
        return Priced(int(values[-1, -1]), (Pattern(kind, best_puts(on, worth, values)),))

    def cuttable(self, pattern: Pattern) -> bool:
        """Whether a pattern of this pricing can be cut as it is, but for too many of a size."""
        on = self.grounds[pattern.sheet]
        return on.exact and not on.sheet.spots


class InStages(ManyOfEach):
    """Prices by :mod:`rodwright.cutting.bounds.staged`, for rules that limit the stages."""

    def __init__(self, problem: SheetProblem) -> None:
        super().__init__(problem, most=_STAGED)
        self._rules = problem.rules
        self._orders = orders(problem.rules)

    def best(self, kind: int, worth: Sequence[int]) -> Priced:
        """By prices of the sizes, none less than 0."""
        on = self.grounds[kind]
        found = [staged(on, worth, axes) for axes in self._orders]
        patterns = (Pattern(kind, staged_puts(on, worth, each)) for each in found)
        return Priced(max(each.most for each in found), tuple(patterns))

    def cuttable(self, pattern: Pattern) -> bool:
        """Whether a pattern can be cut as it is, but for too many of a size."""
        return super().cuttable(pattern) and not self._rules.head_cuts
