"""The cheapest of known patterns that together have every piece."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import highspy
import numpy as np

from rodwright.cutting.highs import new_solver
from rodwright.cutting.sheet_problem import Pattern, SheetProblem

_NODES = 60
"""Of the search tree, so that equal questions have equal answers."""
_COLUMNS = 400
"""Patterns that the search has to choose from: those that the relaxed problem likes best."""


@dataclass(frozen=True, slots=True)
class Relaxed:
    """The cheapest cover by patterns that may be used in part: what a piece of each size is
    ``worth`` by it, and the patterns, those that it likes best first."""

    worth: list[float]
    liked: list[Pattern]


def relaxed_cover(problem: SheetProblem, patterns: Sequence[Pattern]) -> Relaxed | None:
    """The relaxed cover; None if the patterns don't have all the pieces."""
    highs = _solved(_model(problem, patterns, whole=False))
    if highs is None:
        return None
    solution = highs.getSolution()
    order = sorted(range(len(patterns)), key=lambda number: (solution.col_dual[number], number))
    worth = [max(0.0, dual) for dual in solution.row_dual[: len(problem.sizes)]]
    return Relaxed(worth, [patterns[number] for number in order])


def cheapest(
    problem: SheetProblem, relaxed: Relaxed, kept: Sequence[Pattern] = ()
) -> list[Pattern] | None:
    """Patterns with all the pieces, as cheap and then as few as can be, as far as that is found
    among those that the relaxed cover likes and those ``kept``; None if none were found.

    What is there too often is left out of the last patterns that have it.
    """
    few = [*relaxed.liked[:_COLUMNS], *kept]
    used = how_many(problem, few)
    if used is None:
        return None
    chosen = [pattern for pattern, many in zip(few, used, strict=True) for _ in range(many)]
    return without_doubles(problem, chosen)


def how_many(problem: SheetProblem, patterns: Sequence[Pattern]) -> list[int] | None:
    """How often each pattern is cut so that all pieces are, some perhaps too often; None if no such
    plan was found."""
    highs = _solved(_model(problem, patterns, whole=True))
    return None if highs is None else [round(value) for value in highs.getSolution().col_value]


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


def _model(problem: SheetProblem, patterns: Sequence[Pattern], *, whole: bool) -> highspy.HighsLp:
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
    if whole:
        model.integrality_ = [highspy.HighsVarType.kInteger] * len(patterns)
    return model


def _solved(model: highspy.HighsLp) -> highspy.Highs | None:
    """The solver, once it has a solution; None if it found none."""
    highs = new_solver(0)
    highs.setOptionValue("mip_max_nodes", _NODES)
    highs.setOptionValue("mip_rel_gap", 0.0)
    highs.passModel(model)
    highs.run()
    feasible = highspy.SolutionStatus.kSolutionStatusFeasible
    return highs if highs.getInfo().primal_solution_status == feasible else None
