"""The best plan from patterns that are known: an integer program, solved by HiGHS."""

from __future__ import annotations

from collections.abc import Sequence

import highspy
import numpy as np

from rodwright.cutting.boards.best import Best
from rodwright.cutting.boards.column_generation import Rest
from rodwright.cutting.boards.problem import BoardProblem, Pattern
from rodwright.cutting.highs import new_solver
from rodwright.cutting.progress import Patience


def covered(
    problem: BoardProblem,
    patterns: Sequence[Pattern],
    best: Best,
    patience: Patience,
    *,
    nodes: int,
    seed: int,
) -> list[Pattern] | None:
    """Patterns, as often as they are cut, of a plan that costs less than the best; None where none
    was found within so many nodes."""
    rest = Rest.all_of(problem)
    solver = new_solver(seed)
    solver.setOptionValue("mip_max_nodes", nodes)
    if patience.left < float("inf"):
        solver.setOptionValue("time_limit", patience.left)
    scale = float(max((board.price for board in problem.boards), default=1) or 1)
    solver.setOptionValue("objective_bound", (best.draft.cost - 0.5) / scale)
    for count in rest.counts:
        solver.addRow(count, highspy.kHighsInf, 0, [], [])
    for limit in rest.limits:
        solver.addRow(-highspy.kHighsInf, highspy.kHighsInf if limit is None else limit, 0, [], [])
    for item, penalty in enumerate(best.penalties):
        solver.addCol(penalty / scale, 0, rest.counts[item], 1, [item], [1.0])
    items = len(problem.items)
    for pattern in patterns:
        rows = [item for item, _ in pattern.counts] + [items + pattern.board]
        figures = [float(n) for _, n in pattern.counts] + [1.0]
        most = max(-(-rest.counts[item] // n) for item, n in pattern.counts)
        price = problem.boards[pattern.board].price / scale
        solver.addCol(price, 0, most, len(rows), np.array(rows, np.int32), np.array(figures))
    columns = items + len(patterns)
    kinds = np.full(columns, highspy.HighsVarType.kInteger)
    solver.changeColsIntegrality(columns, np.arange(columns, dtype=np.int32), kinds)
    solver.run()
    info = solver.getInfo()
    if info.primal_solution_status != highspy.SolutionStatus.kSolutionStatusFeasible:
        return None
    taken = [round(x) for x in solver.getSolution().col_value[items:]]
    return [pattern for pattern, n in zip(patterns, taken, strict=True) for _ in range(n)]
