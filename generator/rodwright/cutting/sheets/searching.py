"""The search for a better plan: what sheets might do, and whether all goes on those."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable

from rodwright.cutting.sheet_problem import Pattern
from rodwright.cutting.sheets.building import dense_plans, first_plans
from rodwright.cutting.sheets.covering import covered
from rodwright.cutting.sheets.filling import Filling
from rodwright.cutting.sheets.levels import cheaper_mixes
from rodwright.cutting.sheets.matching import matched
from rodwright.cutting.sheets.mixes import Mix, better_mixes
from rodwright.cutting.sheets.packing import pack
from rodwright.cutting.sheets.regrown import filling_of
from rodwright.cutting.sheets.squeezing import squeezed
from rodwright.cutting.sheets.state import Found, Ground

_ROUNDS = 12
"""On how many mixes of sheets, at most, the effort that is left is spread."""


_SOME = 6
"""So many sheets are bettered at a time where there are more than twice as many."""
_SOME_MIXES = 3
_SOME_EFFORT = 300_000
_SOME_COST = 1000
_MATCHES = 100
"""So many attempts to fill sheets without waste are looked at together."""


class Search:
    """What was found so far: the ``best`` plan, and every sheet as it was filled.

    ``told`` gets the best plan whenever there is a better one.
    """

    def __init__(self, ground: Ground, told: Callable[[Found], None]) -> None:
        self.ground = ground
        self.best = ground.found(
            (), [n for n, s in enumerate(ground.problem.sizes) for _ in range(s.count)]
        )
        self.seen: dict[tuple[int, ...], Filling] = {}
        self._told = told

    def see(self, filling: Filling) -> None:
        """Remember a sheet as it is filled; it isn't changed any more."""
        self.seen.setdefault((filling.sheet, *sorted(filling.sizes())), filling)

    def take(self, found: Found) -> None:
        """Keep a plan if it is the best so far."""
        for filling in found.fillings:
            self.see(filling)
        if found.merit < self.best.merit:
            self.best = found
            self._told(found)

    def done(self, bound: int) -> bool:
        """Whether no mix of sheets could be better by what is proven."""
        if not self.best.whole or better_mixes(self.ground, self.best, bound):
            return False
        return not cheaper_mixes(self.ground, self.best, bound)

    def build(self, bound: int, effort: int) -> None:
        """First plans within an effort, one at least, until none could be better."""
        end = self.ground.effort.left - effort
        for found in first_plans(self.ground):
            better = found.merit < self.best.merit
            self.take(found)
            if self.ground.effort.left < end or (better and self.done(bound)):
                return

    def squeeze(self, effort: int) -> None:
        """A larger offcut, within an effort of its own."""
        self.ground.effort.left = effort
        if self.best.whole and not self.ground.effort.patience.stopped:
            self.best = squeezed(self.ground, self.best)

    def _fill(self, bound: int, end: int) -> None:
        """Plans sheet by sheet."""
        for found in dense_plans(self.ground):
            self.take(found)
            if self.ground.effort.left < end or self.ground.effort.over() or self.done(bound):
                return

    def combine(self) -> None:
        """The cheapest plan of all sheets seen."""
        found = covered(self.ground, self.seen.values())
        if found is not None:
            self.take(found)

    def match(self, bound: int, effort: int) -> None:
        """Sheets without waste, where only these would be better."""
        problem, ground = self.ground.problem, self.ground
        if not problem.rules.free or any(sheet.spots for sheet in problem.sheets):
            return
        end = ground.effort.left - effort
        every = [n for n, size in enumerate(problem.sizes) for _ in range(size.count)]
        full: dict[tuple[int, ...], Filling] = {}
        while self._none_to_spare(bound) and ground.effort.left > end and not ground.effort.over():
            known = len(full)
            for _ in range(_MATCHES):
                for filling in matched(ground, self._some_left(every, list(full.values()))):
                    full.setdefault((filling.sheet, *sorted(filling.sizes())), filling)
            found = covered(ground, full.values()) if len(full) > known else None
            if found is not None:
                self.take(found)

    def _some_left(self, every: list[int], full: list[Filling]) -> list[int]:
        """All pieces, or what some sheets without waste leave of them."""
        rng = self.ground.rng
        left = Counter(every)
        rng.shuffle(full)
        for filling in full[: rng.choice((0, 0, 1, 2))]:
            sizes = Counter(filling.sizes())
            if sizes <= left:
                left -= sizes
        return sorted(left.elements())

    def _none_to_spare(self, bound: int) -> bool:
        area = self.ground.problem.area
        mixes = better_mixes(self.ground, self.best, bound)
        sheets = self.ground.problem.sheets
        return any(
            sum(sheet.area * many for sheet, many in zip(sheets, mix, strict=True)) == area
            for mix in mixes
        )

    def offer(self, patterns: Iterable[Pattern]) -> None:
        """Patterns from elsewhere, as far as they keep the rules."""
        for pattern in patterns:
            filling = filling_of(self.ground, pattern)
            if filling is not None:
                self.see(filling)

    def improve(self, bound: int, effort: int) -> None:
        """Better plans within an effort: where there are many sheets some of them at a time, then
        all, by one mix of sheets after another."""
        end = self.ground.effort.left - effort
        if len(self.best.fillings) > 2 * _SOME:
            self._fill(bound, end + effort // 2)
        self._improve_some(bound, end + effort // 4)
        tried: set[Mix] = set()
        while not self.ground.effort.over():
            left = self.ground.effort.left - end
            mixes = [mix for mix in self._mixes(bound) if mix not in tried]
            if not mixes or left <= 0:
                return
            tried.add(mixes[0])
            fillings, loose = _on(self.ground, self.best, mixes[0])
            share = max(1, left // min(len(mixes), _ROUNDS))
            self.take(self._packed(fillings, loose, share))

    def _mixes(self, bound: int) -> list[Mix]:
        """Mixes that would be better, those with the most room first."""
        near = better_mixes(self.ground, self.best, bound)
        sheets = self.ground.problem.sheets

        def room(mix: Mix) -> int:
            return sum(sheet.area * many for sheet, many in zip(sheets, mix, strict=True))

        mixes = dict.fromkeys((*near, *cheaper_mixes(self.ground, self.best, bound)))
        return sorted(mixes, key=lambda mix: (-room(mix), mix))

    def _improve_some(self, bound: int, end: int) -> None:
        """Better plans for some sheets at a time, the emptier ones more often."""
        ground = self.ground
        while len(self.best.fillings) > 2 * _SOME and self.best.whole:
            if self.done(bound) or ground.effort.left <= end or ground.effort.over():
                return
            ground.effort.spend(_SOME_COST)
            chances = [0.02 + each.free / each.area for each in self.best.fillings]
            numbers = set(ground.rng.choices(range(len(chances)), chances, k=_SOME))
            some = [self.best.fillings[number] for number in sorted(numbers)]
            rest = [each for n, each in enumerate(self.best.fillings) if n not in numbers]
            before = ground.found(some, ())
            mixes = better_mixes(ground, before, 0, Counter(each.sheet for each in rest))
            if mixes:
                mix = ground.rng.choice(mixes[:_SOME_MIXES])
                after = self._packed(*_on(ground, before, mix), _SOME_EFFORT)
                if after.whole:
                    self.take(ground.found([*rest, *after.fillings], ()))

    def _packed(self, fillings: list[Filling], left: list[int], effort: int) -> Found:
        return self.ground.found(*pack(self.ground, fillings, left, effort, self.see))


def _on(ground: Ground, best: Found, mix: Mix) -> tuple[list[Filling], list[int]]:
    """A plan on another mix of sheets: what was on the emptiest that aren't in it is left over."""
    there = Counter({kind: many for kind, many in enumerate(mix) if many})
    kept: list[Filling] = []
    left = list(best.left)
    for filling in sorted(best.fillings, key=lambda each: each.free / each.area):
        if there[filling.sheet]:
            there[filling.sheet] -= 1
            kept.append(filling)
        else:
            left += filling.sizes()
    kept += [ground.open(kind) for kind in there.elements()]
    return kept, left
