"""The best patterns of bought lengths: a row of pieces on each sound stretch."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from rodwright.cutting.boards.offers import Offer
from rodwright.cutting.boards.problem import Blank, BoardProblem, Pattern, Run
from rodwright.cutting.boards.rows import Rows


class LengthOracle:
    """Answers what is best cut from one of each of the boards."""

    def __init__(self, problem: BoardProblem) -> None:
        self._problem = problem
        ways = [way for board in problem.boards for way in (*board.ways, board.roomy)]
        self._longest = max((blank.length for way in ways for blank in way), default=0)
        self._items = range(len(problem.items))

    def offers(
        self, values: Sequence[int], counts: Sequence[int], prices: Sequence[int], most: int
    ) -> list[Offer]:
        """What each board is worth at most, and up to ``most`` patterns that are worth more than
        its price."""
        rows = Rows(self._problem, self._items, values, counts, self._longest)
        return [
            self._offer(number, rows, counts, price, most) for number, price in enumerate(prices)
        ]

    def _offer(
        self, number: int, rows: Rows, counts: Sequence[int], price: int, most: int
    ) -> Offer:
        board = self._problem.boards[number]
        worth = _worth(rows, board.roomy)
        if worth <= price:
            return Offer(number, worth, ())
        patterns = []
        for way in board.ways:
            filled = [rows.fill(blank.length) for blank in way]
            patterns.append(_pattern(number, way, filled, counts))
            others = zip(*(rows.others(blank.length, 0, most) for blank in way), strict=False)
            patterns += [_pattern(number, way, other, counts) for other in others]
        return Offer(number, worth, tuple(dict.fromkeys(patterns)))


def _worth(rows: Rows, way: Sequence[Blank]) -> int:
    return int(rows.values(np.array([blank.length for blank in way], np.int64)).sum())


def _pattern(
    board: int, way: Sequence[Blank], rows: Sequence[tuple[int, ...]], counts: Sequence[int]
) -> Pattern:
    """The pattern of a row on each blank; of no item more than there are."""
    left = list(counts)
    runs = []
    for blank, row in zip(way, rows, strict=True):
        held = []
        for item in row:
            if left[item]:
                left[item] -= 1
                held.append(item)
        runs.append(Run(blank.x, blank.y, blank.length, blank.width, tuple(held)))
    return Pattern.of(board, tuple(runs))
