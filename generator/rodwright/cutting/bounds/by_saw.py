"""The least cost of a plan for a saw: guillotine cuts only, in as many stages as are allowed."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.cutting.bounds.any_number import there
from rodwright.cutting.bounds.columns import columns
from rodwright.cutting.bounds.least_cost import raised
from rodwright.cutting.bounds.many_of_each import pricing_of
from rodwright.cutting.bounds.scales import Proof, scale_bound
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, SheetProblem


@dataclass(frozen=True, slots=True)
class SawBound:
    """No plan by guillotine cuts costs less than ``cost``, in steps of the problem's money; None:
    there is none, since the sheets hold too little.

    ``patterns`` are sheets cut well, by guillotine cuts, none with more of a size than
    are wanted.  ``proof`` says by what pieces are worth.
    """

    cost: int | None
    patterns: tuple[Pattern, ...]
    proof: Proof


def saw_bound(problem: SheetProblem, patience: Patience, *, rounds: int = 300) -> SawBound:
    """By scales and then by patterns, ``rounds`` of them at most; not for a router.

    It knows stages and head cuts, but no flaws.  Where ``patience`` is over it is what was proven
    so far.
    """
    known = scale_bound(problem)
    pricing = pricing_of(problem)
    found = columns(problem, pricing, known, patience, rounds=rounds)
    proof = found.proof
    counts = [size.count for size in problem.sizes]
    return SawBound(
        raised(proof.bound, problem),
        tuple(
            Pattern(each.sheet, there(each.puts, counts))
            for each in found.patterns
            if pricing.cuttable(each)
        ),
        proof,
    )
