"""The best plan so far, and how much less the best of all may cost."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from rodwright.cutting.boards.problem import Blank, BoardProblem, Item, Pattern
from rodwright.cutting.boards.proof import Costs
from rodwright.cutting.progress import Patience


@dataclass(frozen=True, slots=True)
class Draft:
    """Patterns, each for one board, and how many of each item they leave."""

    patterns: tuple[Pattern, ...]
    left: tuple[int, ...]
    cost: int


class Best:
    """Keeps the best draft and the highest bound; tells whoever waits when one changes.

    Costs have in them a penalty for each piece that is left: more than all boards together.
    """

    def __init__(self, problem: BoardProblem, patience: Patience) -> None:
        self._problem, self._patience = problem, patience
        self.too_much, self.penalties = _penalties(problem)
        self._costs = Costs(problem)
        self.step = self._costs.step
        self.bound = 0
        counts = tuple(item.count for item in problem.items)
        self.draft = Draft((), counts, self._penalty(counts))
        self._tell()

    def is_open(self) -> bool:
        """Whether there may be a better plan, and time to look for it."""
        return self.draft.cost > self.bound and not self._patience.over()

    def raise_bound(self, bound: Fraction) -> None:
        """Note that no plan costs less than this."""
        raised = self.rounded(bound)
        if raised > self.bound:
            self.bound = raised
            self._tell()

    def rounded(self, bound: Fraction) -> int:
        """The least cost that isn't below a bound; where pieces may have to be left, a
        bound that is above the price of all boards stays as it is."""
        return self._costs.at_least(bound)

    def offer(self, patterns: Iterable[Pattern]) -> bool:
        """Look at a plan; what is cut too often is taken out again.  Says if it is the best."""
        draft = self._drafted(patterns)
        if draft.cost >= self.draft.cost:
            return False
        self.draft = draft
        self._tell()
        return True

    def _drafted(self, patterns: Iterable[Pattern]) -> Draft:
        left = [item.count for item in self._problem.items]
        kept = []
        for pattern in patterns:
            trimmed = without_surplus(pattern, left)
            if trimmed.counts:
                kept.append(trimmed)
        cost = sum(self._problem.boards[each.board].price for each in kept) + self._penalty(left)
        return Draft(tuple(kept), tuple(left), cost)

    def _penalty(self, left: Iterable[int]) -> int:
        return sum(n * each for n, each in zip(left, self.penalties, strict=True))

    def _tell(self) -> None:
        money = self._problem.money
        self._patience.told(money.length(self.draft.cost), money.length(self.bound))


def without_surplus(pattern: Pattern, left: list[int]) -> Pattern:
    """The pattern without pieces of which none are ``left`` to cut; takes those it keeps off."""
    if all(n <= left[item] for item, n in pattern.counts):
        for item, n in pattern.counts:
            left[item] -= n
        return pattern
    runs = []
    for run in pattern.runs:
        held = []
        for item in run.items:
            if left[item]:
                left[item] -= 1
                held.append(item)
        runs.append(replace(run, items=tuple(held)))
    return Pattern.of(pattern.board, tuple(runs))


def _penalties(problem: BoardProblem) -> tuple[int, list[int]]:
    """More than all boards cost, and what leaving a piece costs: more than the board that it can
    always be cut from; if there is none, more than all boards, by what the piece is worth."""
    most = sum(
        board.price * (problem.total() if board.limit is None else board.limit)
        for board in problem.boards
    )
    penalties = []
    for item in problem.items:
        prices = [
            board.price
            for board in problem.boards
            if board.limit is None and any(_holds(way, item) for way in board.ways)
        ]
        penalties.append(2 * min(prices) + 1 if prices else (most + 1) * item.worth)
    return most + 1, penalties


def _holds(way: Sequence[Blank], item: Item) -> bool:
    return any(
        blank.length >= item.length and blank.width >= item.width and not blank.spots
        for blank in way
    )
