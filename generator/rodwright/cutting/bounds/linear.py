"""Linear programmes that grow as they are solved, by HiGHS."""

from __future__ import annotations

from collections.abc import Sequence

import highspy
import numpy as np
from numpy.typing import NDArray

from rodwright.cutting.highs import new_solver

Reals = NDArray[np.float64]


class Programme:
    """The least of a linear function over what rows allow; rows and columns come as they are found.

    One thread and a fixed seed: the same calls have the same answers.
    """

    def __init__(self) -> None:
        self._highs = new_solver(0)
        self._highs.setOptionValue("solver", "simplex")

    def row(self, low: float, high: float, where: Sequence[int], what: Sequence[float]) -> None:
        """One more row: low <= sum of what[i] times column where[i] <= high."""
        self._highs.addRow(low, high, len(where), np.array(where, np.int32), np.array(what, float))

    def column(self, cost: float, high: float, where: Sequence[int], what: Sequence[float]) -> None:
        """One more column, from 0 to ``high``, with what[i] in row where[i]."""
        self._highs.addCol(
            cost, 0.0, high, len(where), np.array(where, np.int32), np.array(what, float)
        )

    def solve(self) -> bool:
        """Solve it; whether that came out."""
        self._highs.run()
        return bool(self._highs.getModelStatus() == highspy.HighsModelStatus.kOptimal)

    @property
    def least(self) -> float:
        """The least value."""
        return float(self._highs.getInfo().objective_function_value)

    @property
    def columns(self) -> Reals:
        """How much of each column."""
        return np.array(self._highs.getSolution().col_value)

    @property
    def prices(self) -> Reals:
        """By how much the least value grows with each row's limit (dual values)."""
        return np.array(self._highs.getSolution().row_dual)
