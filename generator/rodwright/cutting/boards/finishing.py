"""Whether a plan can be better at all: all patterns that a better plan could have are listed.

What all pieces are worth by the linear program is a bound.  A plan that costs no more than some
target can lose no more than the difference on all its patterns together, so none of them loses
more on its own: usually few are left, and an integer program with them answers the question
(enumeration by reduced costs: R. Baldacci, N. Christofides, A. Mingozzi, An exact algorithm
for the vehicle routing problem based on the set partitioning formulation, Mathematical Programming
115, 2008).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from rodwright.cutting.boards.best import Best
from rodwright.cutting.boards.branching import Tree
from rodwright.cutting.boards.column_generation import Columns, Rest, Worths
from rodwright.cutting.boards.cover import Answer, Cover
from rodwright.cutting.boards.enumeration import Fills, Wanted
from rodwright.cutting.boards.filling import completed
from rodwright.cutting.boards.offers import Oracle
from rodwright.cutting.boards.problem import BoardProblem, Pattern, Run

_STEPS = 60_000
_PATTERNS = 20_000
_NODES = 3_000
_BRANCHES = 300


@dataclass(slots=True)
class Finish:
    """Looks for a better plan among all patterns that it could have."""

    problem: BoardProblem
    columns: Columns
    oracle: Oracle
    best: Best
    cover: Cover

    def run(self) -> None:
        """Look as long as better ones are found."""
        if not plain(self.problem):
            return
        rest = Rest.all_of(self.problem)
        while self.best.is_open():
            mixed, bound = self.columns.converge(rest, None)
            self.best.raise_bound(Fraction(bound))
            if not self.best.is_open():
                return
            target = min(self.best.draft.cost - self.best.step, self.best.too_much - 1)
            worths = self.columns.worths(rest, mixed)
            if not any(self._asked(worths, target, every) for every in (False, True)):
                return

    def _asked(self, worths: Worths, target: int, every: bool) -> bool:
        """Whether a better plan was found; at first without the items that are worth nothing, which
        are then cut from what is left."""
        if every and all(worths.values):
            return False
        held = [n for n, value in enumerate(worths.values) if value or every]
        patterns = self._within(worths, target, held)
        if patterns is None:
            return False
        wanted = [item.count for item in self.problem.items]
        asked = [count if n in set(held) else 0 for n, count in enumerate(wanted)]
        answer, chosen = self.cover.better(patterns, asked, _NODES)
        if answer is Answer.NO:
            tree = Tree(self.problem, patterns, asked, target, self.columns.patience, 0)
            answer, chosen = tree.answer(_BRANCHES)
            if answer is Answer.NO:
                self.best.raise_bound(Fraction(min(self.best.draft.cost, self.best.too_much)))
        if answer is Answer.YES:
            return self.best.offer(completed(self.problem, self.oracle, chosen))
        return False

    def _within(self, worths: Worths, target: int, held: Sequence[int]) -> list[Pattern] | None:
        """All patterns of these items that a plan at this cost can have; None if there are too
        many."""
        items = self.problem.items
        wanted = Wanted.of(
            [items[n].length for n in held],
            [worths.values[n] for n in held],
            [items[n].count for n in held],
        )
        longest = max(board.ways[0][0].length for board in self.problem.boards)
        fills = Fills(wanted, longest, _STEPS)
        slack = target - worths.bound
        patterns: list[Pattern] = []
        for number, board in enumerate(self.problem.boards):
            blank = board.ways[0][0]
            least = ceil((worths.prices[number] - slack) / worths.factor)
            found = fills.worth(blank.length, max(1, least))
            if found is None or len(patterns) + len(found) > _PATTERNS:
                return None
            for fill in found:
                row = tuple(held[item] for item, many in fill for _ in range(many))
                run = Run(blank.x, blank.y, blank.length, blank.width, row)
                patterns.append(Pattern.of(number, (run,)))
        return patterns


def plain(problem: BoardProblem) -> bool:
    """Whether each board is one stretch with nothing but square pieces in a row."""
    return not any(item.slanted or item.width for item in problem.items) and all(
        len(board.ways) == 1 and len(board.ways[0]) == 1 for board in problem.boards
    )
