"""Cheaper sheets than the best plan has: do they hold all, or is it proven that none do?"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice

from rodwright.cutting.free.packing import holds, pack, sizes_on
from rodwright.cutting.free.pool import Pool
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Pattern, SheetProblem

Choice = tuple[int, ...]
"""How many of each kind of sheet."""

_CHOICES = 8
"""Choices of sheets that are asked about at most."""
_SEEN = 5_000
"""Choices that are looked at to find those, at most."""
_HARD = 300
"""Of a question that is still asked: how many pieces, times how many sheets."""
_WHOLE = 75.0
_MOST = 1.2
"""Effort for a choice of sheets: so much, shared by pieces times sheets, since the solver's steps
take the longer the more of them there are; and at most."""
_PART = 0.06
_PARTS = 8
"""Effort for a few sheets of a plan, and how many such few there are."""


def fewer(pool: Pool, bound: int, patience: Patience) -> int | None:
    """Make the best plan cheaper if it can be; the bound, raised to its cost if nothing can be
    cheaper (None: there is proven to be too little stock)."""
    while pool.cost > bound and not patience.over() and _on_one_less(pool, patience):
        pass
    refused: list[Choice] = []
    for _ in range(_CHOICES):
        if pool.cost <= bound or patience.over():
            return bound
        open_ones = _choices(pool, bound, refused)
        if open_ones is None:
            return bound
        if not open_ones:
            return None if pool.rank is None else pool.rank[0]
        if not _ask(pool, open_ones[0], refused, patience):
            return bound
    return bound


def _ask(pool: Pool, choice: Choice, refused: list[Choice], patience: Patience) -> bool:
    """Whether it is known now if these sheets hold all; a plan is offered, a no is noted."""
    problem = pool.problem
    kinds = [kind for kind, many in enumerate(choice) for _ in range(many)]
    counts = [size.count for size in problem.sizes]
    hard = sum(counts) * len(kinds)
    if hard > _HARD:
        return False
    packed = pack(problem, kinds, counts, min(_MOST, _WHOLE / hard), patience)
    if isinstance(packed, list):
        return pool.offer(packed)
    if packed == "impossible":
        refused.append(choice)
    return packed is not None


def _choices(pool: Pool, bound: int, refused: Sequence[Choice]) -> list[Choice] | None:
    """The choices that cost less than the best plan and may hold all, the largest first; None if
    they are too many.

    Only those to which no sheet can be added: what they can't hold, less of them can't either.
    """
    problem = pool.problem
    sheets = problem.sheets
    most = sum(sheet.price * sheet.count for sheet in sheets)
    limit = most if pool.rank is None else pool.rank[0] - 1
    found = list(islice(_largest(problem, limit, 0), _SEEN))
    if len(found) == _SEEN:
        return None
    counts = [size.count for size in problem.sizes]
    kept = [
        choice
        for choice in found
        if sum(sheet.price * n for sheet, n in zip(sheets, choice, strict=True)) >= bound
        and holds(problem, [kind for kind, n in enumerate(choice) for _ in range(n)], counts)
        and not any(all(n <= m for n, m in zip(choice, no, strict=True)) for no in refused)
    ]
    area = [sum(sheet.area * n for sheet, n in zip(sheets, each, strict=True)) for each in kept]
    return [choice for _, choice in sorted(zip(area, kept, strict=True), reverse=True)]


def _largest(problem: SheetProblem, limit: int, kind: int) -> Iterator[Choice]:
    """The choices, from a kind on, that cost at most ``limit`` and to which none can be added."""
    if kind == len(problem.sheets):
        yield ()
        return
    sheet = problem.sheets[kind]
    most = min(sheet.count, limit // sheet.price) if sheet.price else sheet.count
    least = most if kind == len(problem.sheets) - 1 or not sheet.price else 0
    for many in range(most, least - 1, -1):
        for rest in _largest(problem, limit - many * sheet.price, kind + 1):
            spent = sum(s.price * n for s, n in zip(problem.sheets[kind + 1 :], rest, strict=True))
            if many == most or spent + (many + 1) * sheet.price > limit:
                yield (many, *rest)


def _on_one_less(pool: Pool, patience: Patience) -> bool:
    """Whether what lies on some of the emptiest sheets goes on one less of them."""
    for few, kinds in islice(_few(pool), _PARTS):
        if patience.over():
            return False
        packed = pack(pool.problem, kinds, sizes_on(pool.problem, few), _PART, patience)
        if isinstance(packed, list):
            kept = list(pool.best)
            for pattern in few:
                kept.remove(pattern)
            return pool.offer([*kept, *packed])
    return False


def _few(pool: Pool) -> Iterator[tuple[list[Pattern], list[int]]]:
    """A few sheets that lie next to each other by how full they are, emptiest first, and the kinds
    that are left once the dearest of them is spared."""
    problem = pool.problem
    ordered = sorted(pool.best, key=lambda pattern: (_waste(problem, pattern), pattern))
    ordered.reverse()
    for first in range(len(ordered)):
        for many in (2, 3, 4):
            few = ordered[first : first + many]
            kinds = sorted(pattern.sheet for pattern in few)
            kinds.remove(max(kinds, key=lambda kind: problem.sheets[kind].price))
            counts = sizes_on(problem, few)
            asked = len(few) == many < len(ordered) and sum(counts) * len(kinds) <= _HARD
            if asked and holds(problem, kinds, counts):
                yield few, kinds


def _waste(problem: SheetProblem, pattern: Pattern) -> int:
    filled = sum(problem.sizes[put.size].area for put in pattern.puts)
    return problem.sheets[pattern.sheet].area - filled
