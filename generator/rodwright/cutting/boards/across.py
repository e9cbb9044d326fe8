"""Which strips a board is best ripped to, by what rows of pieces on them are worth."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

import numpy as np

from rodwright.cutting.boards.knapsack import Wholes
from rodwright.cutting.boards.problem import Blank, BoardProblem
from rodwright.cutting.boards.rows import Rows
from rodwright.cutting.boards.spots import beside, stretches


@dataclass(frozen=True, slots=True)
class _Step:
    """The best of a blank up to some place across it: what it is worth, and the last strip: how
    wide (0: none), and where the place before is."""

    worth: int
    width: int
    before: int


class Across:
    """Rows for strips of each width that pieces have, and Bellman's recursion over them across a
    board (two-stage patterns: P. C. Gilmore, R. E. Gomory, Multistage cutting stock problems of
    two and more dimensions, Operations Research 13, 1965)."""

    def __init__(self, problem: BoardProblem, values: Sequence[int], counts: Sequence[int]) -> None:
        self._rip, self.kerf = problem.rip, problem.kerf
        held = [n for n, count in enumerate(counts) if count and values[n]]
        self._widths = sorted({problem.items[n].width for n in held}, reverse=True)
        blanks = [b for board in problem.boards for way in (*board.ways, board.roomy) for b in way]
        longest = max(blank.length for blank in blanks)
        self.rows = {
            width: Rows(
                problem,
                [n for n in held if problem.items[n].width <= width],
                values,
                counts,
                longest,
            )
            for width in self._widths
        }
        self._known: dict[Blank, tuple[int, dict[int, _Step]]] = {}

    def worth(self, blank: Blank) -> int:
        """What a blank is worth at most if it is ripped over its whole length."""
        return self._steps(blank)[0]

    def strips(self, blank: Blank) -> Iterator[tuple[int, int]]:
        """Where the best strips begin across a blank, and their widths, with the kerf."""
        _, steps = self._steps(blank)
        y = max(steps)
        while y:
            if steps[y].width:
                yield steps[y].before, steps[y].width
            y = steps[y].before

    def stretches(self, blank: Blank, y: int, width: int) -> list[tuple[int, int]]:
        """The sound stretches of a strip: where each begins along the blank, and its length with
        the kerf."""
        return stretches(blank, y, width - self._rip, self.kerf)

    def best_place(self, blank: Blank) -> int:
        """How long the first part is, with the kerf, if a blank without flaws is cut across once
        where that is best."""
        longest = blank.length - self.kerf - 1
        places = [rows.steps() for rows in self.rows.values()]
        cuts = np.unique(np.concatenate([np.array([0], np.int64), *places]))
        cuts = cuts[(cuts > self.kerf) & (cuts <= longest)]
        if not len(cuts):
            return 0
        together = self._of_lengths(cuts, blank.width)
        together = together + self._of_lengths(blank.length - cuts, blank.width)
        return int(cuts[np.argmax(together)])

    def _of_lengths(self, lengths: Wholes, width: int) -> Wholes:
        """What blanks of these lengths and a width are worth."""
        rows = [(each, self.rows[each].values(lengths)) for each in self._widths]
        best: dict[int, Wholes] = {0: np.zeros(len(lengths), np.int64)}
        for y in self._sums(width):
            worths = [best[y - each] + worth for each, worth in rows if y - each in best]
            best[y] = np.maximum.reduce(worths)
        return np.asarray(np.maximum.reduce(list(best.values())))

    def _sums(self, width: int) -> list[int]:
        """What strips can add up to within a width."""
        return _sums(tuple(self._widths), width)

    def _steps(self, blank: Blank) -> tuple[int, dict[int, _Step]]:
        """The best of a blank up to each place across it, from its face edge; first, of all."""
        if blank not in self._known:
            self._known[blank] = self._recursion(blank)
        return self._known[blank]

    def _recursion(self, blank: Blank) -> tuple[int, dict[int, _Step]]:
        steps = {y: _Step(0, 0, 0) for y in beside(blank)}
        last, at = _Step(0, 0, 0), 0
        todo = sorted(steps)
        while todo:
            y = todo.pop(0)
            if steps[y].worth < last.worth:
                steps[y] = _Step(last.worth, 0, at)
            last, at = steps[y], y
            for width in self._widths:
                end = y + width
                if end > blank.width:
                    continue
                worth = steps[y].worth + self._strip(blank, y, width)
                if end not in steps:
                    steps[end] = _Step(-1, 0, 0)
                    todo = sorted({*todo, end})
                if worth > steps[end].worth:
                    steps[end] = _Step(worth, width, y)
        return last.worth, steps

    def _strip(self, blank: Blank, y: int, width: int) -> int:
        sound = self.stretches(blank, y, width)
        lengths = np.array([length for _, length in sound], np.int64)
        return int(self.rows[width].values(lengths).sum()) if sound else 0


@cache
def _sums(widths: tuple[int, ...], most: int) -> list[int]:
    sums = {0}
    for width in widths:
        further = sums
        while further:
            further = {each + width for each in further if each + width <= most} - sums
            sums |= further
    return sorted(sums - {0})
