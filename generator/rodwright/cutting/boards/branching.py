"""A search through all plans with listed patterns, by branch and bound in whole numbers.

The linear programs are solved in floating point, but what they say pieces are worth is rounded,
scaled until no pattern is worth more than it costs, and summed in whole numbers; a branch is given
up by these sums alone.  So "no" is proven.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

import highspy
import numpy as np
from numpy.typing import NDArray

from rodwright.cutting.boards.cover import Answer
from rodwright.cutting.boards.knapsack import Wholes
from rodwright.cutting.boards.problem import BoardProblem, Pattern
from rodwright.cutting.boards.proof import FINE
from rodwright.cutting.highs import new_solver
from rodwright.cutting.progress import Patience

_SLIGHT = 1e-6


@dataclass(frozen=True, slots=True)
class _Branch:
    """Patterns by their places that are still allowed, and rows beside those of the items: each
    holds for a sum of patterns, with factors, that has to be at least so much."""

    allowed: Wholes
    rows: tuple[tuple[Wholes, int], ...] = ()


@dataclass(slots=True)
class Tree:
    """Looks whether some patterns make a plan at no more than a cost."""

    problem: BoardProblem
    patterns: Sequence[Pattern]
    wanted: Sequence[int]
    target: int
    patience: Patience
    seed: int
    _counts: Wholes = field(init=False)
    _boards: Wholes = field(init=False)

    def __post_init__(self) -> None:
        self._counts = np.zeros((len(self.wanted), len(self.patterns)), np.int64)
        for place, pattern in enumerate(self.patterns):
            for item, n in pattern.counts:
                self._counts[item, place] = n
        self._boards = np.array([pattern.board for pattern in self.patterns], np.int64)

    def answer(self, nodes: int) -> tuple[Answer, list[Pattern]]:
        """The plan, or that there is none, or that it isn't known within so many nodes."""
        branches = [_Branch(np.arange(len(self.patterns)))]
        while branches:
            nodes -= 1
            if nodes < 0 or self.patience.over():
                return Answer.UNKNOWN, []
            branch = branches.pop()
            taken = self._relaxed(branch)
            if taken is None:
                continue
            branch, amounts = taken
            further = self._divided(branch, amounts)
            if not further:
                whole = np.rint(amounts).astype(int)
                chosen = zip(branch.allowed, whole, strict=True)
                return Answer.YES, [self.patterns[place] for place, n in chosen for _ in range(n)]
            branches.extend(further)
        return Answer.NO, []

    def _relaxed(self, branch: _Branch) -> tuple[_Branch, NDArray[np.float64]] | None:
        """How much is taken of each pattern, once those are gone that cost too much; None if it is
        proven that nothing in this branch is good enough."""
        while len(branch.allowed):
            rows, least = self._rows(branch)
            amounts, duals = self._solved(rows, least, branch)
            slack, lost = self._loss(rows, least, branch, duals)
            if slack < 0:
                return None
            kept = lost <= slack
            if kept.all():
                return branch, amounts
            branch = replace(branch, allowed=branch.allowed[kept])
        return None

    def _rows(self, branch: _Branch) -> tuple[Wholes, list[int]]:
        further = [factors[branch.allowed] for factors, _ in branch.rows]
        rows = np.vstack([self._counts[:, branch.allowed], *further])
        return rows, [*self.wanted, *(least for _, least in branch.rows)]

    def _solved(
        self, rows: Wholes, least: Sequence[int], branch: _Branch
    ) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """The linear program: what is taken of each pattern, and what the rows are worth.  What
        can't be had is left at a price that is above the target."""
        solver = new_solver(self.seed)
        number = len(least)
        for each in least:
            solver.addRow(each, highspy.kHighsInf, 0, [], [])
        for board in self.problem.boards:
            limit = highspy.kHighsInf if board.limit is None else board.limit
            solver.addRow(-highspy.kHighsInf, limit, 0, [], [])
        prices = [board.price for board in self.problem.boards]
        scale = max(prices) or 1
        for row in range(number):
            solver.addCol(2 * self.target / scale + 1, 0, highspy.kHighsInf, 1, [row], [1.0])
        for place, board in enumerate(self._boards[branch.allowed]):
            held = np.flatnonzero(rows[:, place])
            where = np.append(held, number + board).astype(np.int32)
            figures = np.append(rows[held, place], 1).astype(float)
            price = prices[board] / scale
            solver.addCol(price, 0, highspy.kHighsInf, len(where), where, figures)
        solver.run()
        solution = solver.getSolution()
        amounts = np.array(solution.col_value[number:])
        return amounts, np.array(solution.row_dual[:number])

    def _loss(
        self,
        rows: Wholes,
        least: Sequence[int],
        branch: _Branch,
        duals: NDArray[np.float64],
    ) -> tuple[int, NDArray[np.int64]]:
        """What a plan may lose in all to meet the target, and what each pattern loses, in whole
        numbers: less than 0 if no plan meets it."""
        prices = [board.price for board in self.problem.boards]
        fine = max(1, FINE // (max(prices) or 1))
        dearest = max(prices) or 1
        values = np.maximum(np.floor(duals * dearest * fine), 0).astype(np.int64)
        boards = self._boards[branch.allowed]
        worth = values @ rows
        top = [int(worth[boards == number].max(initial=0)) for number in range(len(prices))]
        values = self._scaled(values, top, [price * fine for price in prices])
        worth = values @ rows
        lost = np.zeros(len(boards), np.int64)
        bound = sum(int(value) * each for value, each in zip(values, least, strict=True))
        for number, board in enumerate(self.problem.boards):
            here = boards == number
            beyond = max(0, int(worth[here].max(initial=0)) - board.price * fine)
            bound -= beyond * (board.limit or 0)
            lost[here] = board.price * fine + beyond - worth[here]
        return self.target * fine - bound, lost

    def _scaled(self, values: Wholes, top: Sequence[int], prices: Sequence[int]) -> Wholes:
        """Values less by so much that no pattern of a board without a limit is worth more than its
        price."""
        for board, most, price in zip(self.problem.boards, top, prices, strict=True):
            if board.limit is None and most > price:
                values = np.array([int(value) * price // most for value in values], np.int64)
                top = [each * price // most + 1 for each in top]
        return values

    def _divided(self, branch: _Branch, amounts: NDArray[np.float64]) -> list[_Branch]:
        """Two branches that part the plans; none if all amounts are whole."""
        rows = self._counts[:, branch.allowed]
        broken = np.abs(amounts - np.rint(amounts)) > _SLIGHT
        if not broken.any():
            return []
        pair = self._pair(rows > 0, amounts)
        if pair is None:
            place = int(np.argmax(np.where(broken, amounts - np.floor(amounts), -1)))
            factors = np.zeros(len(self.patterns), np.int64)
            factors[branch.allowed[place]] = 1
            whole = int(np.floor(amounts[place]))
            return [
                replace(branch, rows=(*branch.rows, (-factors, -whole))),
                replace(branch, rows=(*branch.rows, (factors, whole + 1))),
            ]
        both = (self._counts[pair[0]] > 0) & (self._counts[pair[1]] > 0)
        return [
            _Branch(branch.allowed[~both[branch.allowed]], branch.rows),
            replace(branch, rows=(*branch.rows, (both.astype(np.int64), 1))),
        ]

    @staticmethod
    def _pair(held: NDArray[np.bool_], amounts: NDArray[np.float64]) -> tuple[int, int] | None:
        """Two items that lie together on part of a board: nearest to half of one."""
        used = amounts > _SLIGHT
        figures = held[:, used].astype(float)
        together = np.triu((figures * amounts[used]) @ figures.T, 1)
        part = np.where(together < 1 - _SLIGHT, together, 0)
        if part.max(initial=0) <= _SLIGHT:
            return None
        nearest = np.argmin(np.where(part > _SLIGHT, np.abs(part - 0.5), 1))
        one, other = np.unravel_index(nearest, part.shape)
        return int(one), int(other)
