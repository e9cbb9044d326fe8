"""The most from one sheet in one or two stages: strips, and what lies in them.

A strip is as wide as its widest piece; narrower ones are trimmed.  All strips that a pattern of
some value may hold are listed, and a constraint solver takes the best mixture of them, in whole
numbers (cf. A. Lodi and M. Monaci, Integer linear programming models for 2-staged two-dimensional
knapsack problems, Mathematical Programming 94, 2003; from memory).  Values are tried from what it
can be at most downwards: what isn't found at one proves that it is less.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np
from ortools.sat.python import cp_model

from rodwright.cutting.bounds.any_number import ground, there
from rodwright.cutting.bounds.dual_feasible import Whole
from rodwright.cutting.bounds.joined import Effort
from rodwright.cutting.bounds.one_sheet import Best
from rodwright.cutting.bounds.relaxed import better_prices
from rodwright.cutting.bounds.staged import staged, staged_puts
from rodwright.cutting.cp_sat import new_solver
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Put, Sheet, Size

_ROUNDS = 60
"""Prices of pieces that are tried."""

_STEP = 400
"""The first step down is such a part of the bound."""

_PLACES = 1000
"""Places along a side at most."""

_STRIP = 40
"""A strip that is looked at takes as much effort as so many pairs of rectangles."""

_LIMIT = 30.0
"""When the solver gives up, in its own units of effort, which take about a second each."""


@dataclass(frozen=True, slots=True)
class _Strip:
    """Ways of pieces, by number, and how wide the widest is."""

    ways: tuple[int, ...]
    width: int


@dataclass(frozen=True, slots=True)
class _Relaxed:
    """Pieces at a price: what each is still worth, what a strip is worth of a length and width,
    and strips are together of a width; ``extra`` is the price of all there are."""

    reduced: list[int]
    strip: Whole
    strips: Whole
    extra: int


def best_in_strips(
    sizes: Sequence[Size],
    values: Sequence[int],
    sheet: Sheet,
    axes: tuple[int, ...],
    effort: Effort,
    patience: Patience,
) -> Best:
    """The pieces that are worth most together, in one or two stages that divide these axes.

    The last stage first: (0, 1) are strips along the length that are cut across.  Flaws aren't
    known to it.  A KeyboardInterrupt ends it with what is known.
    """
    search = _Search(sizes, values, sheet, axes)
    try:
        search.relax(patience)
        search.downwards(effort, patience)
    except KeyboardInterrupt:
        patience.stop()
    return search.best


class _Search:
    """What is known of the best pattern, as it is found."""

    def __init__(
        self, sizes: Sequence[Size], values: Sequence[int], sheet: Sheet, axes: tuple[int, ...]
    ) -> None:
        self._values = values
        self._counts = [size.count for size in sizes]
        self._axes = axes
        self._on = ground(sizes, sheet, most=_PLACES)
        self._relaxed: list[_Relaxed] = []
        total = sum(value * size.count for value, size in zip(values, sizes, strict=True))
        self.best = Best(0, (), total)
        along, across = (self._on.length, self._on.width)[:: 1 - 2 * axes[0]]
        self._lengths, self._widths = along.tolist(), across.tolist()
        self._room = (sheet.length, sheet.width)[:: 1 - 2 * axes[0]]
        self._sides = (self._on.along, self._on.across)[:: 1 - 2 * axes[0]]
        self._order = sorted(range(len(along)), key=lambda j: (-self._widths[j], -self._lengths[j]))

    def relax(self, patience: Patience) -> None:
        """Prices for pieces."""
        lowest: tuple[Whole, int] | None = None
        for prices, most in better_prices(self._solve, self._values, self._counts, 0, _ROUNDS):
            if lowest is None or most < lowest[1]:
                lowest = prices, most
            if patience.over():
                break
        assert lowest is not None
        self._at_most(lowest[1])
        self._relaxed = [self._relaxation(each) for each in (lowest[0], np.zeros_like(lowest[0]))]
        for each in self._relaxed:
            self._at_most(int(each.strips[-1]) + each.extra)

    def _solve(self, values: Sequence[int]) -> tuple[int, tuple[Put, ...]]:
        found = staged(self._on, values, self._axes)
        puts = staged_puts(self._on, values, found)
        if self._on.exact:
            self._take(there(puts, self._counts))
        return found.most, puts

    def _relaxation(self, prices: Whole) -> _Relaxed:
        reduced = np.array(self._values, dtype=np.int64) - prices
        found = staged(self._on, reduced.tolist(), self._axes)
        strip = found.best[1] if self._axes[0] == 0 else found.best[1].T
        whole = found.best[-1] if self._axes[0] == 0 else found.best[-1].T
        strips = whole[-1] if len(self._axes) == 2 else np.zeros_like(whole[-1])
        extra = int((prices * np.array(self._counts)).sum())
        return _Relaxed(reduced.tolist(), strip, strips, extra)

    def downwards(self, effort: Effort, patience: Patience) -> None:
        """List strips for values from the bound down, and mix them."""
        step = 1 + self.best.bound // _STEP
        while not self.best.proven and not patience.over():
            target = max(self.best.value + 1, self.best.bound - step + 1)
            strips = list(self._strips(target, effort))
            if effort.pairs < 0:
                return
            chosen, proven = self._mix(strips, patience)
            self._found(chosen)
            if not proven:
                return
            self._at_most(max(target - 1, self.best.value))
            step *= 2

    def _strips(self, target: int, effort: Effort) -> Iterator[_Strip]:
        """All that a pattern worth the target may hold, each as a multiset of ways."""
        none = tuple(0 for _ in self._relaxed)
        left: list[tuple[int, tuple[int, ...], int, tuple[int, ...]]] = [(0, (), 0, none)]
        while left and effort.pairs >= 0:
            first, ways, length, worth = left.pop()
            effort.pairs -= _STRIP
            if ways and self._enough(ways, worth, self._room[0], target):
                yield _Strip(ways, self._width(ways))
            used = Counter(self._on.size[way] for way in ways)
            for place in range(first, len(self._order)):
                way = self._order[place]
                size = self._on.size[way]
                end = length + self._lengths[way]
                if end > self._room[0] or used[size] >= self._counts[size]:
                    continue
                longer = (*ways, way)
                more = tuple(
                    a + each.reduced[size] for a, each in zip(worth, self._relaxed, strict=True)
                )
                if self._enough(longer, more, end, target):
                    left.append((place, longer, end, more))

    def _width(self, ways: tuple[int, ...]) -> int:
        """Of a strip; of a single stage it is all of the sheet."""
        return self._room[1] if len(self._axes) == 1 else self._widths[ways[0]]

    def _enough(self, ways: tuple[int, ...], worth: tuple[int, ...], end: int, target: int) -> bool:
        """Whether a strip that is filled up to an end may lead to a target."""
        width = self._width(ways)
        along = self._sides[0].within(self._room[0] - end)
        across = self._sides[1].within(width)
        beside = self._sides[1].within(self._room[1] - width)
        return all(
            a + int(each.strip[along, across]) + int(each.strips[beside]) + each.extra >= target
            for a, each in zip(worth, self._relaxed, strict=True)
        )

    def _mix(self, strips: list[_Strip], patience: Patience) -> tuple[list[_Strip], bool]:
        """The best mixture of some strips, and whether it is proven to be."""
        model = cp_model.CpModel()
        taken = []
        held = [Counter(self._on.size[way] for way in strip.ways) for strip in strips]
        for strip, used in zip(strips, held, strict=True):
            most = min(self._counts[size] // many for size, many in used.items())
            taken.append(model.new_int_var(0, min(most, self._room[1] // strip.width), ""))
        for size, count in enumerate(self._counts):
            some = [used[size] * x for used, x in zip(held, taken, strict=True) if used[size]]
            if some:
                model.add(sum(some) <= count)
        model.add(sum(s.width * x for s, x in zip(strips, taken, strict=True)) <= self._room[1])
        worth = [sum(self._values[size] * n for size, n in used.items()) for used in held]
        model.maximize(sum(v * x for v, x in zip(worth, taken, strict=True)))
        solver = new_solver(_LIMIT, patience)
        status = solver.solve(model)
        if status not in {cp_model.OPTIMAL, cp_model.FEASIBLE}:
            return [], False
        chosen = [
            strip for strip, x in zip(strips, taken, strict=True) for _ in range(solver.value(x))
        ]
        return chosen, status == cp_model.OPTIMAL

    def _found(self, strips: list[_Strip]) -> None:
        puts = []
        beside = 0
        for strip in strips:
            end = 0
            for way in strip.ways:
                at = (end, beside) if self._axes[0] == 0 else (beside, end)
                puts.append(Put(self._on.size[way], *at, self._on.turned[way]))
                end += self._lengths[way]
            beside += strip.width
        self._take(tuple(puts))

    def _take(self, puts: tuple[Put, ...]) -> None:
        value = sum(self._values[put.size] for put in puts)
        if value > self.best.value:
            self.best = replace(self.best, value=value, puts=puts)

    def _at_most(self, bound: int) -> None:
        self.best = replace(self.best, bound=min(self.best.bound, bound))
