"""Plans made by diving: patterns that a solution takes most of are fixed, the rest is solved again.

With patterns made anew for what is left, and a few steps back where a dive ends badly (R. Sadykov,
F. Vanderbeck, A. Pessoa, I. Tahiri, E. Uchoa, Primal heuristics for branch and price: the assets
of diving methods, INFORMS Journal on Computing 31, 2019).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.cutting.boards.best import Best, without_surplus
from rodwright.cutting.boards.column_generation import Columns, Rest
from rodwright.cutting.boards.master import Mixed
from rodwright.cutting.boards.problem import BoardProblem, Pattern

_WHOLE = 1 - 1e-6


@dataclass(slots=True)
class Dive:
    """One dive and its steps back."""

    problem: BoardProblem
    columns: Columns
    best: Best
    rounds: int = 30
    steps_back: int = 2
    depth: int = 4
    proper: bool = True

    def run(self) -> None:
        """Dive from the top until a plan meets the bound or no steps back are left."""
        self._down([], Rest.all_of(self.problem), 0, frozenset(), 0)

    def _down(
        self,
        chosen: list[Pattern],
        rest: Rest,
        cost: int,
        tabu: frozenset[Pattern],
        depth: int,
    ) -> None:
        if not any(rest.counts):
            self.best.offer(chosen)
            return
        enough = self.best.draft.cost - cost
        mixed, bound = self.columns.converge(rest, enough, self.rounds, proper=self.proper)
        if not self.best.is_open() or cost + bound >= self.best.draft.cost:
            return
        avoided = tabu
        for _ in range(self.steps_back - len(tabu) + 1 if depth < self.depth else 1):
            picked = list(self._picked(mixed, rest, avoided))
            if not picked:
                self.best.offer(chosen)
                return
            further, price = _less(rest, picked), self._price(picked)
            self._down([*chosen, *picked], further, cost + price, avoided, depth + 1)
            if not self.best.is_open():
                return
            avoided |= {picked[0]}

    def _price(self, picked: list[Pattern]) -> int:
        return sum(self.problem.boards[each.board].price for each in picked)

    def _picked(self, mixed: Mixed, rest: Rest, tabu: frozenset[Pattern]) -> Iterator[Pattern]:
        """Patterns to fix: all that are taken whole, or else the one that most is taken of."""
        counts, limits = list(rest.counts), list(rest.limits)
        patterns = self.columns.master.patterns
        order = sorted(range(len(mixed.taken)), key=lambda place: -mixed.taken[place])
        first = True
        for place in order:
            taken, pattern = mixed.taken[place], patterns[place]
            if taken < _WHOLE and (not first or taken < 1e-6):
                return
            if pattern in tabu:
                continue
            for _ in range(max(1, int(taken + 1e-6))):
                limit = limits[pattern.board]
                if limit == 0 or not self._of_use(pattern, counts):
                    break
                limits[pattern.board] = None if limit is None else limit - 1
                first = False
                yield without_surplus(pattern, counts)

    def _of_use(self, pattern: Pattern, counts: list[int]) -> bool:
        """Whether all of its pieces are wanted, or half of them if it needn't be proper."""
        held = sum(n for _, n in pattern.counts)
        wanted = sum(min(n, counts[item]) for item, n in pattern.counts)
        return wanted == held or (not self.proper and 2 * wanted >= held)


def _less(rest: Rest, picked: list[Pattern]) -> Rest:
    counts, limits = list(rest.counts), list(rest.limits)
    for pattern in picked:
        limit = limits[pattern.board]
        limits[pattern.board] = None if limit is None else limit - 1
        for item, n in pattern.counts:
            counts[item] -= n
    return Rest(tuple(counts), tuple(limits))
