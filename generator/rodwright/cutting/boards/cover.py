"""The best plan from patterns that are known: an integer program, solved by HiGHS."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

import highspy
import numpy as np

from rodwright.cutting.boards.best import Best
from rodwright.cutting.boards.problem import BoardProblem, Pattern
from rodwright.cutting.highs import new_solver
from rodwright.cutting.progress import Patience


class Answer(Enum):
    """Whether there is a plan with some patterns."""

    YES = "yes"
    NO = "no, by the solver's floating-point arithmetic"
    UNKNOWN = "not found within the nodes"


@dataclass(frozen=True, slots=True)
class Cover:
    """Asks for plans that cost less than the best."""

    problem: BoardProblem
    best: Best
    patience: Patience
    seed: int

    def better(
        self, patterns: Sequence[Pattern], wanted: Sequence[int], nodes: int
    ) -> tuple[Answer, list[Pattern]]:
        """Patterns, as often as they are cut, of a plan that cuts so many of each item and costs
        less than the best, if there is one; within so many nodes."""
        solver = new_solver(self.seed)
        solver.setOptionValue("mip_max_nodes", nodes)
        if self.patience.left < float("inf"):
            solver.setOptionValue("time_limit", self.patience.left)
        prices = [board.price for board in self.problem.boards]
        scale = float(max(prices) or 1)
        target = min(self.best.draft.cost - self.best.step, self.best.too_much - 1)
        solver.setOptionValue("mip_abs_gap", 0.9 * self.best.step / scale)
        for count in wanted:
            solver.addRow(count, highspy.kHighsInf, 0, [], [])
        for board in self.problem.boards:
            limit = highspy.kHighsInf if board.limit is None else board.limit
            solver.addRow(-highspy.kHighsInf, limit, 0, [], [])
        solver.addRow(-highspy.kHighsInf, (target + 0.5 * self.best.step) / scale, 0, [], [])
        self._add(solver, patterns, wanted, [price / scale for price in prices])
        columns = len(patterns)
        kinds = np.full(columns, highspy.HighsVarType.kInteger)
        solver.changeColsIntegrality(columns, np.arange(columns, dtype=np.int32), kinds)
        solver.run()
        if solver.getModelStatus() == highspy.HighsModelStatus.kInfeasible:
            return Answer.NO, []
        found = highspy.SolutionStatus.kSolutionStatusFeasible
        if solver.getInfo().primal_solution_status != found:
            return Answer.UNKNOWN, []
        taken = [round(x) for x in solver.getSolution().col_value]
        chosen = [each for each, n in zip(patterns, taken, strict=True) for _ in range(n)]
        return Answer.YES, chosen

    def _add(
        self,
        solver: highspy.Highs,
        patterns: Sequence[Pattern],
        wanted: Sequence[int],
        prices: Sequence[float],
    ) -> None:
        items = len(wanted)
        last = items + len(prices)
        for pattern in patterns:
            price = prices[pattern.board]
            counts = [(item, n) for item, n in pattern.counts if wanted[item]]
            rows = [item for item, _ in counts] + [items + pattern.board, last]
            figures = [float(n) for _, n in counts] + [1.0, price]
            most = max((-(-wanted[item] // n) for item, n in counts), default=0)
            where = np.array(rows, np.int32)
            solver.addCol(price, 0, most, len(rows), where, np.array(figures))
