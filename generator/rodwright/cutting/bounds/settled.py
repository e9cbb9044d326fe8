"""The last word on a plan for a saw: a better bound, a cheaper plan, or proof that none is."""

from __future__ import annotations

from rodwright.cutting.bounds.by_saw import SawBound
from rodwright.cutting.bounds.cheaper import cheaper
from rodwright.cutting.bounds.columns import columns
from rodwright.cutting.bounds.joined import Effort
from rodwright.cutting.bounds.least_cost import raised
from rodwright.cutting.bounds.no_more_than import NoMoreThan
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import SheetProblem

_ROUNDS = 60
"""How often better patterns are looked for."""


def settled(
    problem: SheetProblem,
    known: SawBound,
    cost: int,
    patience: Patience,
    *,
    pairs: int = 10_000_000,
) -> SawBound:
    """A bound that is at least the known one, for a plan of all pieces that costs ``cost``.

    By patterns with no more of each piece than there are, and then by all patterns that a plan that
    costs less could be made of.  Where that finds such a plan, its sheets are the last of the
    patterns.  It takes some seconds for each ten million ``pairs`` of rectangles looked at, and is
    of use up to some sixty pieces.  With stages limited, or a first cut wished, it is the known
    bound.
    """
    if not problem.rules.free or known.cost is None or known.cost >= cost:
        return known
    pricing = NoMoreThan(problem, known.proof.fine, Effort(pairs), patience)
    found = columns(problem, pricing, known.proof, patience, rounds=_ROUNDS)
    least = raised(found.proof.bound, problem)
    cuttable = all(not sheet.spots for sheet in problem.sheets)
    patterns = (*known.patterns, *(found.patterns if cuttable else ()))
    if least is None or least >= cost or patience.over():
        return SawBound(least, patterns, found.proof)
    last = cheaper(problem, found.proof, cost - 1, Effort(pairs), patience)
    if last.none:
        return SawBound(cost, patterns, found.proof)
    return SawBound(least, (*patterns, *(last.patterns if cuttable else ())), found.proof)
