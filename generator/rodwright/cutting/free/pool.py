"""Every filled sheet that a search has seen, and plans made of them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from random import Random

from rodwright.cutting.free.filling import Way, fill
from rodwright.cutting.free.rectangles import largest_offcut
from rodwright.cutting.sheet_problem import Pattern, SheetProblem

_KEPT = 1500
"""Patterns kept at most; the emptiest go first."""

Rank = tuple[int, int, int, int]
"""How good a plan is, the least the best: cost, sheets, their area, and the largest offcut less."""


@dataclass(slots=True)
class Pool:
    """The patterns seen, one for each set of pieces on a kind of sheet, and the best plan.

    ``left`` are the pieces that the best plan has no room for, by size; ``effort`` counts what
    was tried, in steps, so that it doesn't hang on the clock.
    """

    problem: SheetProblem
    patterns: dict[tuple[int, tuple[int, ...]], Pattern] = field(default_factory=dict)
    best: list[Pattern] = field(default_factory=list)
    rank: Rank | None = None
    left: list[int] = field(default_factory=list)
    effort: int = 0

    def __post_init__(self) -> None:
        self.left = [size.count for size in self.problem.sizes]

    def add(self, pattern: Pattern) -> bool:
        """Keep a pattern for covers; whether it is a new one."""
        self.effort += effort_of(pattern)
        known = len(self.patterns)
        self.patterns.setdefault(key_of(pattern), pattern)
        return len(self.patterns) > known

    def offer(self, plan: Sequence[Pattern]) -> bool:
        """Take a plan if it is better than the best; a plan with pieces left if fewer are."""
        left = left_by(self.problem, plan)
        for pattern in plan:
            self.patterns.setdefault(key_of(pattern), pattern)
        if any(left):
            lost, before = (_area(self.problem, each) for each in (left, self.left))
            if self.rank is None and lost < before:
                self.best, self.left = list(plan), left
                return True
            return False
        rank = rank_of(self.problem, plan)
        if self.rank is None or rank < self.rank:
            self.best, self.left, self.rank = list(plan), left, rank
            return True
        return False

    @property
    def cost(self) -> float:
        """Of the best plan; infinite while none has all the pieces."""
        return float("inf") if self.rank is None else self.rank[0]

    def columns(self) -> list[Pattern]:
        """The patterns to cover from, the fullest of their kind of sheet first."""
        if len(self.patterns) > _KEPT:
            full = {key: _fullness(self.problem, each) for key, each in self.patterns.items()}
            kept = sorted(self.patterns, key=lambda key: (-full[key], key))[:_KEPT]
            self.patterns = {key: self.patterns[key] for key in kept}
        for pattern in self.best:
            self.patterns.setdefault(key_of(pattern), pattern)
        return list(self.patterns.values())


def effort_of(pattern: Pattern) -> int:
    """What it took to fill a sheet: the more lies on it, the more rectangles were looked at."""
    many = len(pattern.puts)
    return many * (8 + many)


def key_of(pattern: Pattern) -> tuple[int, tuple[int, ...]]:
    """What is on which kind of sheet, wherever it lies."""
    return pattern.sheet, tuple(sorted(put.size for put in pattern.puts))


def left_by(problem: SheetProblem, plan: Iterable[Pattern]) -> list[int]:
    """How many of each size a plan lacks."""
    left = [size.count for size in problem.sizes]
    for pattern in plan:
        for put in pattern.puts:
            left[put.size] -= 1
    return left


def rank_of(problem: SheetProblem, plan: Sequence[Pattern]) -> Rank:
    """How good a plan is that has all the pieces."""
    sheets = [problem.sheets[pattern.sheet] for pattern in plan]
    offcut = max((largest_offcut(pattern, problem) for pattern in plan), default=0)
    return (
        sum(sheet.price for sheet in sheets),
        len(sheets),
        sum(sheet.area for sheet in sheets),
        -offcut,
    )


def _area(problem: SheetProblem, counts: Sequence[int]) -> int:
    return sum(size.area * many for size, many in zip(problem.sizes, counts, strict=True))


def _filled(problem: SheetProblem, pattern: Pattern) -> int:
    return sum(problem.sizes[put.size].area for put in pattern.puts)


def _fullness(problem: SheetProblem, pattern: Pattern) -> float:
    return _filled(problem, pattern) / problem.sheets[pattern.sheet].area


def greedy(pool: Pool, way: Way, random: Random | None = None) -> list[Pattern]:
    """A plan by filling one sheet after another; with pieces left where the stock runs out.

    Of several kinds of sheet it takes the one that holds most for its price, or, with ``random``,
    now and then another.
    """
    problem = pool.problem
    left = [size.count for size in problem.sizes]
    there = [sheet.count for sheet in problem.sheets]
    plan: list[Pattern] = []
    while any(left):
        offers = [fill(problem, kind, left, way) for kind, many in enumerate(there) if many]
        offers = [pattern for pattern in offers if pattern.puts]
        if not offers:
            break
        if random and len(offers) > 1 and random.random() < 0.3:
            chosen = random.choice(offers)
        else:
            chosen = max(offers, key=lambda pattern: _worth(problem, pattern))
        for pattern in offers:
            pool.add(pattern)
        plan.append(chosen)
        there[chosen.sheet] -= 1
        for put in chosen.puts:
            left[put.size] -= 1
    return plan


def _worth(problem: SheetProblem, pattern: Pattern) -> tuple[float, float]:
    """What a filled sheet holds for its price, then for its area."""
    sheet, filled = problem.sheets[pattern.sheet], _filled(problem, pattern)
    return (filled / sheet.price if sheet.price else float("inf"), filled / sheet.area)
