"""Patterns with any number of each piece: fast to price, a little less than the best bound."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.cutting.bounds.any_number import best_puts, best_values, ground
from rodwright.cutting.bounds.columns import Priced
from rodwright.cutting.sheet_problem import Pattern, SheetProblem


class ManyOfEach:
    """Prices by the dynamic programme of :mod:`rodwright.cutting.bounds.any_number`.

    Where lengths had to be rounded, or a sheet has flaws, a pattern can't always be cut:
    :meth:`cuttable` says so.
    """

    def __init__(self, problem: SheetProblem) -> None:
        self._grounds = [ground(problem.sizes, sheet) for sheet in problem.sheets]

    def best(self, kind: int, worth: Sequence[int]) -> Priced:
        """By prices of the sizes, none less than 0."""
        on = self._grounds[kind]
        values = best_values(on, worth)
        return Priced(int(values[-1, -1]), (Pattern(kind, best_puts(on, worth, values)),))

    def cuttable(self, pattern: Pattern) -> bool:
        """Whether a pattern of this pricing can be cut as it is, but for too many of a size."""
        on = self._grounds[pattern.sheet]
        return on.exact and not on.sheet.spots
