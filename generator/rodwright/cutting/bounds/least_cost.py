"""What the least cost of a plan is at least, rounded up to what sums of prices can be."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

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


def counting(problem: SheetProblem) -> tuple[SheetProblem, int]:
    """The problem with each sheet a little dearer than it is, so that bounds count them too; and
    how many times dearer all are then: of two sums of it the whole parts are the costs."""
    unit = problem.pieces + 1
    dearer = (replace(sheet, price=sheet.price * unit + 1) for sheet in problem.sheets)
    return replace(problem, sheets=tuple(dearer)), unit


def none_fewer(problem: SheetProblem, used: Sequence[int]) -> bool:
    """Whether these sheets are proven to be as few as any that cost no more, where none cost less.

    Fast, and it knows neither stages nor flaws: where it says no there may be none all the same.
    """
    prices = [problem.sheets[each].price for each in used]
    dearest = max((sheet.price for sheet in problem.sheets), default=0)
    if not used or (len(used) - 1) * dearest < sum(prices):
        return True
    dearer, unit = counting(problem)
    bound = free_bound(dearer)
    return bound is not None and sum(prices) * unit + len(used) <= bound
