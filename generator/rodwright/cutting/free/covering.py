"""The cheapest of known patterns that together have every piece."""

from __future__ import annotations

from collections.abc import Sequence

import highspy
import numpy as np

from rodwright.cutting.sheet_problem import Pattern, SheetProblem
from rodwright.cutting.solver import quiet_highs

_NODES = 60
"""Of the search tree, so that equal questions have equal answers."""


def cheapest(
    problem: SheetProblem, patterns: Sequence[Pattern], nodes: int = _NODES
) -> list[Pattern] | None:
    """Patterns with all the pieces, as cheap and then as few as can be, as far as ``nodes`` of the
    search tree say; None if none were found.

    What is there too often is left out of the last patterns that have it.
    """
    found = how_many(problem, patterns, nodes)
    if found is None:
        return None
    chosen = [pattern for pattern, many in zip(patterns, found, strict=True) for _ in range(many)]
    return without_doubles(problem, chosen)


def how_many(
    problem: SheetProblem, patterns: Sequence[Pattern], nodes: int = _NODES
) -> list[int] | None:
    """How often each pattern is cut so that all pieces are, some perhaps too often; None if no such
    plan was found."""
    return _solve(_model(problem, patterns), nodes)


def without_doubles(problem: SheetProblem, chosen: Sequence[Pattern]) -> list[Pattern]:
    """The patterns with no more pieces than there are to be, and none that is empty then."""
    left = [size.count for size in problem.sizes]
    kept = []
    for pattern in chosen:
        puts = []
        for put in pattern.puts:
            if left[put.size]:
                left[put.size] -= 1
                puts.append(put)
        if puts:
            kept.append(Pattern(pattern.sheet, tuple(puts)))
    return kept


def _model(problem: SheetProblem, patterns: Sequence[Pattern]) -> highspy.HighsLp:
    sizes, sheets = problem.sizes, problem.sheets
    model = highspy.HighsLp()
    model.num_col_ = len(patterns)
    model.num_row_ = len(sizes) + len(sheets)
    each = problem.pieces + 1  # as many sheets as that never weigh more than a step of the price
    model.col_cost_ = np.array([sheets[p.sheet].price * each + 1 for p in patterns], float)
    model.col_lower_ = np.zeros(len(patterns))
    model.col_upper_ = np.array([sheets[pattern.sheet].count for pattern in patterns], float)
    model.row_lower_ = np.array([*(size.count for size in sizes), *(0 for _ in sheets)], float)
    model.row_upper_ = np.array(
        [*(highspy.kHighsInf for _ in sizes), *(sheet.count for sheet in sheets)], float
    )
    starts, rows, values = [0], [], []
    for pattern in patterns:
        for size, many in sorted(problem.counts(pattern).items()):
            rows.append(size)
            values.append(many)
        rows.append(len(sizes) + pattern.sheet)
        values.append(1)
        starts.append(len(rows))
    model.a_matrix_.format_ = highspy.MatrixFormat.kColwise
    model.a_matrix_.start_ = np.array(starts, np.int32)
    model.a_matrix_.index_ = np.array(rows, np.int32)
    model.a_matrix_.value_ = np.array(values, float)
    model.integrality_ = [highspy.HighsVarType.kInteger] * len(patterns)
    return model


def _solve(model: highspy.HighsLp, nodes: int) -> list[int] | None:
    highs = quiet_highs()
    highs.setOptionValue("mip_max_nodes", nodes)
    highs.setOptionValue("mip_rel_gap", 0.0)
    highs.passModel(model)
    highs.run()
    if highs.getInfo().primal_solution_status != highspy.SolutionStatus.kSolutionStatusFeasible:
        return None
    return [round(value) for value in highs.getSolution().col_value]
