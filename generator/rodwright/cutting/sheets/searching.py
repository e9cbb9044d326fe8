"""The search for a better plan: what sheets might do, and whether all goes on those."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable

from rodwright.cutting.sheet_problem import Pattern
from rodwright.cutting.sheets.building import first_plans
from rodwright.cutting.sheets.covering import covered
from rodwright.cutting.sheets.filling import Filling
from rodwright.cutting.sheets.matching import matched
from rodwright.cutting.sheets.mixes import Mix, better_mixes
from rodwright.cutting.sheets.packing import pack
from rodwright.cutting.sheets.regrown import filling_of
from rodwright.cutting.sheets.state import Found, Ground

_ROUNDS = 12
"""On how many mixes of sheets, at most, the effort that is left is spread."""


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
        return self.best.whole and not better_mixes(self.ground, self.best, bound)

    def build(self, bound: int) -> None:
        """First plans, until none could be better."""
        for found in first_plans(self.ground):
            better = found.merit < self.best.merit
            self.take(found)
            if better and self.done(bound):
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
                for filling in matched(ground, every):
                    full.setdefault((filling.sheet, *sorted(filling.sizes())), filling)
            found = covered(ground, full.values()) if len(full) > known else None
            if found is not None:
                self.take(found)

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
        """Better plans within an effort, by one mix of sheets after another."""
        end = self.ground.effort.left - effort
        tried: set[Mix] = set()
        while not self.ground.effort.over():
            left = self.ground.effort.left - end
            mixes = [mix for mix in better_mixes(self.ground, self.best, bound) if mix not in tried]
            if not mixes or left <= 0:
                return
            tried.add(mixes[0])
            self._try(mixes[0], max(1, left // min(len(mixes), _ROUNDS)))

    def _try(self, mix: Mix, effort: int) -> None:
        fillings, left = self._on(mix)
        fillings, left = pack(self.ground, fillings, left, effort, self.see)
        self.take(self.ground.found(fillings, left))

    def _on(self, mix: Mix) -> tuple[list[Filling], list[int]]:
        """The best plan on another mix of sheets: what was on the emptiest that aren't in it is
        left over."""
        there = Counter({kind: many for kind, many in enumerate(mix) if many})
        kept: list[Filling] = []
        left = list(self.best.left)
        for filling in sorted(self.best.fillings, key=lambda each: each.free / each.area):
            if there[filling.sheet]:
                there[filling.sheet] -= 1
                kept.append(filling)
            else:
                left += filling.sizes()
        kept += [self.ground.open(kind) for kind in there.elements()]
        return kept, left
