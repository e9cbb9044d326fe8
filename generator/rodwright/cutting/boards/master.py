"""The linear program that mixes patterns so that all pieces are cut at least cost.

Solved by HiGHS (https://highs.dev), which goes on from where it was when patterns are added.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import highspy
import numpy as np
from numpy.typing import NDArray

from rodwright.cutting.boards.problem import BoardProblem, Pattern
from rodwright.cutting.highs import new_solver

Reals = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Mixed:
    """A solution: what it costs, how much of each pattern it takes, what pieces are worth in it,
    and what one more of each board would save; in the unit of the prices."""

    cost: float
    taken: Reals
    left: Reals
    worth: Reals
    saved: Reals


class Master:
    """Rows are items (each at least as often as wanted), then boards (none more than there are).

    The first columns are for pieces that are left, at a price that is only paid if nothing
    else will do; the others are patterns in the order in which they were added.
    """

    def __init__(self, problem: BoardProblem, penalties: Sequence[int], seed: int) -> None:
        self._problem = problem
        self._scale = float(max((board.price for board in problem.boards), default=1) or 1)
        self._items = len(problem.items)
        self._solver = new_solver(seed)
        self._solver.setOptionValue("presolve", "off")
        self._solver.setOptionValue("solver", "simplex")
        self.patterns: list[Pattern] = []
        self._known: set[tuple[int, tuple[tuple[int, int], ...]]] = set()
        for wanted in problem.items:
            self._solver.addRow(wanted.count, highspy.kHighsInf, 0, [], [])
        for board in problem.boards:
            self._solver.addRow(-highspy.kHighsInf, _limit(board.limit), 0, [], [])
        for item, penalty in enumerate(penalties):
            self._solver.addCol(penalty / self._scale, 0, highspy.kHighsInf, 1, [item], [1.0])

    def add(self, patterns: Iterable[Pattern]) -> int:
        """Add patterns; says how many of them are new."""
        new = 0
        for pattern in patterns:
            key = (pattern.board, pattern.counts)
            if pattern.counts and key not in self._known:
                self._known.add(key)
                self.patterns.append(pattern)
                new += 1
                price = self._problem.boards[pattern.board].price / self._scale
                rows = [item for item, _ in pattern.counts] + [self._items + pattern.board]
                figures = [float(n) for _, n in pattern.counts] + [1.0]
                self._solver.addCol(
                    price,
                    0,
                    highspy.kHighsInf,
                    len(rows),
                    np.array(rows, np.int32),
                    np.array(figures),
                )
        return new

    def want(self, counts: Sequence[int], limits: Sequence[int | None], *, proper: bool) -> None:
        """Ask for other numbers of pieces, from other numbers of boards: what is left to cut.
        Patterns with more of an item than is wanted are left out if only proper ones are taken."""
        for item, count in enumerate(counts):
            self._solver.changeRowBounds(item, count, highspy.kHighsInf)
        for board, limit in enumerate(limits):
            self._solver.changeRowBounds(self._items + board, -highspy.kHighsInf, _limit(limit))
        number = len(self.patterns)
        fits = np.array(
            [
                not proper or all(n <= counts[item] for item, n in each.counts)
                for each in self.patterns
            ],
            bool,
        )
        upper = np.where(fits, highspy.kHighsInf, 0.0)
        places = np.arange(self._items, self._items + number, dtype=np.int32)
        self._solver.changeColsBounds(number, places, np.zeros(number), upper)

    def solve(self) -> Mixed:
        """Solve it as it stands."""
        self._solver.run()
        solution = self._solver.getSolution()
        values = np.array(solution.col_value)
        duals = np.array(solution.row_dual)
        return Mixed(
            self._solver.getInfo().objective_function_value * self._scale,
            values[self._items :],
            values[: self._items],
            duals[: self._items] * self._scale,
            -duals[self._items :] * self._scale,
        )


def _limit(limit: int | None) -> float:
    return float(highspy.kHighsInf) if limit is None else float(limit)
