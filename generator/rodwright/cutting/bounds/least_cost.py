"""What the least cost of a plan is at least, rounded up to what sums of prices can be."""

from __future__ import annotations

from rodwright.cutting.bounds.reachable import next_sum
from rodwright.cutting.bounds.scales import most_paid, scale_bound
from rodwright.cutting.sheet_problem import SheetProblem


def free_bound(problem: SheetProblem) -> int | None:
    """No plan costs less, whether cut by a saw or freely by a router; None if there is none,
    since the sheets hold too little.

    In steps of the problem's money.  Fast; it knows neither stages nor flaws.
    """
    return raised(scale_bound(problem).bound, problem)


def raised(bound: int, problem: SheetProblem) -> int | None:
    """A proven bound, raised to the next sum of prices; None where all sheets cost less."""
    if bound > most_paid(problem):
        return None
    sheets = problem.sheets
    return next_sum(bound, [sheet.price for sheet in sheets], [sheet.count for sheet in sheets])
