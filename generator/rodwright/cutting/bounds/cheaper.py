"""Whether a plan can cost less than one that is known, by all patterns that it could be made of.

By what pieces are worth in a proof, a sheet of a plan that costs at most so much may be worth less
than it costs by no more than the plan may cost above the proof; all patterns worth that much are
listed, and a constraint solver finds a plan of them or proves that there is none, in whole numbers.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from ortools.sat.python import cp_model

from rodwright.cutting.bounds.any_number import best_puts, best_values, ground, there
from rodwright.cutting.bounds.joined import Effort, Joined
from rodwright.cutting.bounds.relaxed import better_prices, relax
from rodwright.cutting.bounds.scales import Proof
from rodwright.cutting.cp_sat import new_solver
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, Put, SheetProblem

_ROUNDS = 40
"""Prices of pieces that are tried."""

_LIMIT = 20.0
"""When the solver gives up, in its own units of effort, which take about a second each."""

_MOST = 20_000
"""Patterns that it is given at most."""


@dataclass(frozen=True, slots=True)
class Cheaper:
    """A plan by ``patterns`` that costs less, or that ``none`` does, or neither is known."""

    patterns: tuple[Pattern, ...] = ()
    none: bool = False


def cheaper(
    problem: SheetProblem, proof: Proof, most: int, effort: Effort, patience: Patience
) -> Cheaper:
    """A plan by any guillotine cuts that costs at most ``most``, in steps of the problem's money.

    Sheets may have flaws, which it doesn't know; then only that there is ``none`` is sure.
    """
    spare = most * proof.fine - proof.total
    if spare < 0:
        return Cheaper(none=True)
    patterns: list[Pattern] = []
    for kind, sheet in enumerate(problem.sheets):
        least = sheet.price * proof.fine - spare
        found = _worth(problem, kind, proof, least, effort, patience)
        if found is None or len(patterns) + len(found) > _MOST:
            return Cheaper()
        patterns += found
    return _plan(problem, patterns, most, patience)


def _worth(
    problem: SheetProblem,
    kind: int,
    proof: Proof,
    least: int,
    effort: Effort,
    patience: Patience,
) -> list[Pattern] | None:
    """All patterns of a sheet that are worth so much; None if that takes too long."""
    on = ground(problem.sizes, problem.sheets[kind])
    counts = [size.count for size in problem.sizes]

    def solve(values: Sequence[int]) -> tuple[int, tuple[Put, ...]]:
        best = best_values(on, values)
        return int(best[-1, -1]), best_puts(on, values, best)

    tried = better_prices(solve, proof.worth, counts, least, _ROUNDS)
    prices, _ = min(tried, key=lambda each: each[1])
    relaxed = [relax(on, proof.worth, counts, each) for each in (prices, np.zeros_like(prices))]
    joined = Joined(on, proof.worth, counts, relaxed, rising=False)
    if not joined.search(least, effort, patience):
        return None
    return [Pattern(kind, puts) for puts in joined.patterns(least)]


def _plan(problem: SheetProblem, patterns: list[Pattern], most: int, patience: Patience) -> Cheaper:
    model = cp_model.CpModel()
    held = [problem.counts(pattern) for pattern in patterns]
    used = [
        model.new_int_var(0, min(problem.sizes[n].count for n in counts), "") for counts in held
    ]
    for number, size in enumerate(problem.sizes):
        some = [n[number] * x for n, x in zip(held, used, strict=True) if number in n]
        if not some:
            return Cheaper(none=True)
        model.add(sum(some) >= size.count)
    for kind, sheet in enumerate(problem.sheets):
        own = [x for x, pattern in zip(used, patterns, strict=True) if pattern.sheet == kind]
        model.add(sum(own) <= sheet.count)
    prices = [problem.sheets[pattern.sheet].price for pattern in patterns]
    model.add(sum(price * x for price, x in zip(prices, used, strict=True)) <= most)
    solver = new_solver(_LIMIT, patience)
    status = solver.solve(model)
    if status == cp_model.INFEASIBLE:
        return Cheaper(none=True)
    if status not in {cp_model.OPTIMAL, cp_model.FEASIBLE}:
        return Cheaper()
    taken = [
        pattern for pattern, x in zip(patterns, used, strict=True) for _ in range(solver.value(x))
    ]
    return Cheaper(_exactly(problem, taken))


def _exactly(problem: SheetProblem, patterns: list[Pattern]) -> tuple[Pattern, ...]:
    """Patterns that together have as many of each size as are wanted, not more."""
    left = [size.count for size in problem.sizes]
    kept = []
    for pattern in patterns:
        puts = there(pattern.puts, left)
        for put in puts:
            left[put.size] -= 1
        if puts:
            kept.append(Pattern(pattern.sheet, puts))
    return tuple(kept)
