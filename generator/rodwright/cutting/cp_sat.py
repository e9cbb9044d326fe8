"""OR-Tools' CP-SAT (https://developers.google.com/optimization), a constraint solver, as it is used
here."""

from __future__ import annotations

from ortools.sat.python import cp_model

from rodwright.cutting.progress import Patience


def new_solver(effort: float, patience: Patience) -> cp_model.CpSolver:
    """A solver with one worker that has one answer to the same question.

    ``effort`` is counted in its own steps (its deterministic time), which take about a second each;
    it ends before, with what it has, when ``patience`` does.
    """
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = 0
    solver.parameters.max_deterministic_time = effort
    solver.parameters.catch_sigint_signal = False
    if patience.left < float("inf"):
        solver.parameters.max_time_in_seconds = patience.left
    return solver
