"""The search for the best plan: quick ones first, each step only while there is a gap."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from random import Random

from rodwright.cutting.boards.best import Best
from rodwright.cutting.boards.column_generation import Columns, Rest
from rodwright.cutting.boards.cover import Cover
from rodwright.cutting.boards.diving import Dive
from rodwright.cutting.boards.filling import filled
from rodwright.cutting.boards.finishing import Finish
from rodwright.cutting.boards.offers import Oracle
from rodwright.cutting.boards.problem import BoardProblem, Pattern
from rodwright.cutting.progress import Patience

_BIASES = (0.0, 0.3, 1.0)
_NODES = 150
_TRIES = 60
"""How often boards to be ripped are filled at random."""


def searched(
    problem: BoardProblem,
    oracle: Oracle,
    patience: Patience,
    seed: int,
    known: Sequence[Pattern] = (),
    *,
    thorough: bool = True,
) -> Best:
    """The best plan that is found, and its bound; KeyboardInterrupt ends the search.

    It begins with a plan that is ``known``; unless it is to be thorough, it doesn't go to its end.
    """
    best = Best(problem, patience)
    try:
        best.offer(known)
        _search(problem, oracle, best, patience, seed, thorough=thorough)
    except KeyboardInterrupt:
        patience.stop()
    return best


def _search(
    problem: BoardProblem,
    oracle: Oracle,
    best: Best,
    patience: Patience,
    seed: int,
    *,
    thorough: bool,
) -> None:
    rest = Rest.all_of(problem)
    columns = Columns(problem, oracle, best, patience, seed)
    columns.master.add(best.draft.patterns)
    for bias in _BIASES:
        patterns = filled(problem, oracle, rest, bias)
        best.offer(patterns)
        columns.master.add(patterns)
    _, bound = columns.converge(rest, best.draft.cost)
    best.raise_bound(Fraction(bound))
    if best.is_open():
        Dive(problem, columns, best, steps_back=0).run()
    if best.is_open() and any(item.width for item in problem.items):
        Dive(problem, columns, best, steps_back=0, proper=False).run()
    random = Random(seed)
    for _ in range(_TRIES if any(item.width for item in problem.items) else 0):
        if best.is_open():
            best.offer(filled(problem, oracle, rest, random.uniform(0, 1), random))
    cover = Cover(problem, best, patience, seed)
    if best.is_open() and thorough:
        Finish(problem, columns, oracle, best, cover).run()
    if best.is_open():
        wanted = [item.count for item in problem.items]
        best.offer(cover.better(columns.master.patterns, wanted, _NODES)[1])
    if best.is_open() and thorough:
        Dive(problem, columns, best).run()
