"""The best patterns of boards that are ripped to strips over their whole length."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np

from rodwright.cutting.boards.offers import Offer
from rodwright.cutting.boards.problem import Blank, BoardProblem, Pattern, Run
from rodwright.cutting.boards.rows import Rows
from rodwright.cutting.boards.spots import beside, stretches


@dataclass(frozen=True, slots=True)
class _Step:
    """The best of a blank up to some place across it: what it is worth, and the last strip: how
    wide (0: none), and where the place before is."""

    worth: int
    width: int
    before: int


class StripOracle:
    """Answers what is best cut from one of each of the boards.

    A strip is as wide as its widest piece; narrower ones are ripped once more.  Two strips
    may come out with more of an item than is wanted: then what is worked out is too much, never too
    little, and the pattern is filled anew.
    """

    def __init__(self, problem: BoardProblem) -> None:
        self._problem = problem
        self._widths = sorted({item.width for item in problem.items}, reverse=True)

    def offers(
        self,
        values: Sequence[int],
        counts: Sequence[int],
        prices: Sequence[int],
        most: int,  # noqa: ARG002  # one is found at a time
    ) -> list[Offer]:
        """What each board is worth at most, and patterns that are worth more than its price."""
        work = _Work(self._problem, self._widths, values, counts)
        return [work.offer(number, price) for number, price in enumerate(prices)]


class _Work:
    """One question: values and numbers of pieces."""

    def __init__(
        self,
        problem: BoardProblem,
        widths: Sequence[int],
        values: Sequence[int],
        counts: Sequence[int],
    ) -> None:
        self._problem, self._widths, self._values, self._counts = problem, widths, values, counts
        ways = [way for board in problem.boards for way in (*board.ways, board.roomy)]
        longest = max(blank.length for way in ways for blank in way)
        self._rows = {
            width: Rows(problem, self._narrower(width), values, counts, longest) for width in widths
        }

    def _narrower(self, width: int) -> list[int]:
        return [n for n, item in enumerate(self._problem.items) if item.width <= width]

    def offer(self, number: int, price: int) -> Offer:
        """What a board is worth, and how it is cut if that is more than its price."""
        board = self._problem.boards[number]
        worth = sum(self._across(blank)[0].worth for blank in board.roomy)
        if worth <= price:
            return Offer(number, worth, ())
        patterns = [self._pattern(number, way) for way in board.ways]
        return Offer(number, worth, tuple(dict.fromkeys(patterns)))

    def _across(self, blank: Blank) -> tuple[_Step, dict[int, _Step]]:
        """Bellman's recursion over places across a blank, from its face edge; the last step."""
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
        return last, steps

    def _strip(self, blank: Blank, y: int, width: int) -> int:
        sound = self._stretches(blank, y, width)
        lengths = np.array([length for _, length in sound], np.int64)
        return int(self._rows[width].values(lengths).sum()) if sound else 0

    def _stretches(self, blank: Blank, y: int, width: int) -> list[tuple[int, int]]:
        return stretches(blank, y, width - self._problem.rip, self._problem.kerf)

    def _pattern(self, number: int, way: Sequence[Blank]) -> Pattern:
        left = list(self._counts)
        runs = [run for blank in way for run in self._ripped(blank, left)]
        return Pattern.of(number, tuple(runs))

    def _ripped(self, blank: Blank, left: list[int]) -> list[Run]:
        """The strips of a blank, the widest filled first, each with what is then left; and what is
        left beside them."""
        held: dict[tuple[int, int], list[Run]] = {}
        for begin, width in sorted(self._cuts(blank), key=lambda cut: -cut[1]):
            runs = [
                Run(blank.x + x, blank.y + begin, length, width, self._filled(width, length, left))
                for x, length in self._stretches(blank, begin, width)
            ]
            if any(run.items for run in runs):
                held[begin, width] = runs
        moved = _packed(held, blank) if not blank.spots else held
        return [run for runs in moved.values() for run in runs] + list(_beside(moved, blank))

    def _cuts(self, blank: Blank) -> Iterator[tuple[int, int]]:
        """Where the strips of a blank begin, and their widths."""
        _, steps = self._across(blank)
        y = max(steps)
        while y:
            if steps[y].width:
                yield steps[y].before, steps[y].width
            y = steps[y].before

    def _filled(self, width: int, length: int, left: list[int]) -> tuple[int, ...]:
        items = self._narrower(width)
        row = Rows(self._problem, items, self._values, left, length).fill(length)
        for item in row:
            left[item] -= 1
        return row


_Strips = dict[tuple[int, int], list[Run]]


def _packed(strips: _Strips, blank: Blank) -> _Strips:
    """Strips moved up to each other, from the face edge on."""
    packed: _Strips = {}
    y = 0
    for (_, width), runs in strips.items():
        packed[y, width] = [replace(run, y=blank.y + y) for run in runs]
        y += width
    return packed


def _beside(strips: _Strips, blank: Blank) -> Iterator[Run]:
    """What is left of a blank beside its strips."""
    y = 0
    for begin, width in [*sorted(strips), (blank.width, 0)]:
        if begin > y:
            yield Run(blank.x, blank.y + y, blank.length, begin - y, ())
        y = begin + width
