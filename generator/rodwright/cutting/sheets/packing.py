"""Packing pieces into given sheets: some are taken off and placed anew, over and over.

Ruin and recreate (G. Schrimpf et al., Record breaking optimization results using the ruin and
recreate principle, Journal of Computational Physics 159, 2000; from memory), with a temperature
that falls as in annealing.  What finds no place is left over, and counts by its area; among equals
the more uneven the sheets are filled the better, so that one becomes empty.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from math import exp

from rodwright.cutting.sheets.filling import Filling, Taste, place_all
from rodwright.cutting.sheets.state import Ground

_HEAT = 0.02
"""Temperature at the start, in areas of a sheet."""
_UNEVEN = 0.1
"""What it is worth that sheets are filled unevenly, beside the area of what is left over."""
_SNUG = (0.0, 0.1, 0.3, 1.0)
_MISSED = 0.02
_STEP = 100
"""What a step costs, beside the places that are looked at."""
_TOUCHED = (1, 2, 2, 3)


def pack(
    ground: Ground,
    fillings: Sequence[Filling],
    left: Sequence[int],
    effort: int,
    seen: Callable[[Filling], None],
) -> tuple[list[Filling], list[int]]:
    """The best that ``effort`` finds for what is ``left``; ``seen`` gets each sheet that changed.

    It ends as soon as nothing is left.
    """
    run = _Run(ground, fillings, left, effort)
    while run.left and not run.spent():
        changed = run.step()
        for filling in changed:
            seen(filling)
    return run.best()


class _Run:
    def __init__(
        self, ground: Ground, fillings: Sequence[Filling], left: Sequence[int], effort: int
    ) -> None:
        self._ground = ground
        self._now = [filling.copy() for filling in fillings]
        self._sheet = max((filling.area for filling in fillings), default=1)
        self.left = list(left)
        self._end = ground.effort.left - effort
        self._effort = max(effort, 1)
        self._missing = ground.area(left)
        self._kept = self._snapshot()

    def spent(self) -> bool:
        effort = self._ground.effort
        return not self._now or effort.left <= self._end or effort.over()

    def best(self) -> tuple[list[Filling], list[int]]:
        if self._missing <= self._kept[0]:
            return self._now, self.left
        return self._kept[1], self._kept[2]

    def _snapshot(self) -> tuple[int, list[Filling], list[int]]:
        return self._missing, list(self._now), list(self.left)

    def step(self) -> list[Filling]:
        """Some pieces taken off and placed anew; the sheets that changed, if that is kept."""
        rng = self._ground.rng
        many = min(len(self._now), rng.choice(_TOUCHED))
        touched = rng.sample(range(len(self._now)), many)
        new = [self._now[number].copy() for number in touched]
        loose = self.left + [size for filling in new for size in self._ruin(filling)]
        self._ground.effort.spend(_STEP + sum(filling.entries for filling in new))
        self._sort(loose)
        taste = Taste(rng.choice(_SNUG), _MISSED)
        ways, effort = self._ground.ways, self._ground.effort
        left = place_all(new, loose, ways, taste, effort, rng)
        missing = self._ground.area(left)
        worse = (missing - self._missing) / self._sheet
        worse -= _UNEVEN * (self._uneven(new) - self._uneven(self._now[n] for n in touched))
        if worse > 0 and rng.random() >= exp(-worse / self._heat()):
            return []
        for number, filling in zip(touched, new, strict=True):
            self._now[number] = filling
        self.left, self._missing = left, missing
        if missing < self._kept[0]:
            self._kept = self._snapshot()
        return new

    def _heat(self) -> float:
        return _HEAT * max(0.05, (self._ground.effort.left - self._end) / self._effort)

    def _uneven(self, fillings: Sequence[Filling] | Iterator[Filling]) -> float:
        return sum((filling.free / self._sheet) ** 2 for filling in fillings)

    def _ruin(self, filling: Filling) -> list[int]:
        rng = self._ground.rng
        leaves = [(field, leaf) for field in filling.fields for leaf in field.leaves()]
        if rng.random() < 0.15:
            chosen = leaves
        else:
            share = rng.uniform(0.1, 0.6)
            chosen = [each for each in leaves if rng.random() < share]
        filling.take_off(chosen)
        if len(chosen) == len(leaves) and self._ground.problem.sheets[filling.sheet].spots:
            filling.fields = self._ground.open(filling.sheet).fields  # divided otherwise
        return [leaf.size for _, leaf in chosen]

    def _sort(self, loose: list[int]) -> None:
        rng, sizes = self._ground.rng, self._ground.problem.sizes
        how = rng.random()
        if how < 0.5:
            loose.sort(key=lambda size: -sizes[size].area * rng.uniform(0.7, 1.3))
        elif how < 0.8:
            longest = [max(size.length, size.width) for size in sizes]
            loose.sort(key=lambda size: -longest[size] * rng.uniform(0.8, 1.2))
        else:
            rng.shuffle(loose)
