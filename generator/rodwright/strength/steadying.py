"""What keeps a unit from tipping over, each worked out: a fixing to the wall, a deeper base, one
drawer at a time, weight in its bottom."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.amounts import WEIGHTS, format_weight
from rodwright.geometry import Box
from rodwright.lengths import LengthUnit, format_length
from rodwright.strength.balance import Asked, Stand
from rodwright.strength.footing import Footing, Line
from rodwright.strength.lots import Lot
from rodwright.strength.results import Remedy
from rodwright.trade.stability import FIXED_BELOW_TOP, INCH, INTERLOCK, RESTRAINT
from rodwright.unit import CASE, Unit

_DEEPEST, _HEAVIEST = 600.0, 300.0
"""Bounds of the search for a deeper base (mm) and for weight in the bottom (kg)."""
_STEPS: dict[LengthUnit, float] = {"mm": 5.0, "in": INCH / 4}

Change = Callable[[Stand], Stand]


@dataclass(frozen=True, slots=True)
class Means:
    """What a unit gives to steady it by: where it can be fixed to the wall (height, mm), and where
    weight would lie in its bottom (a lot of none, unit frame)."""

    unit: LengthUnit
    fixed_at: float
    bottom: Lot

    def remedies(self, asked: Asked, alone: Asked | None) -> Iterator[Remedy]:
        """All that would help with one figure, with the figure that each gives; ``alone`` is what
        is asked where an interlock lets only one drawer open at a time."""
        least, tried = RESTRAINT.value, self.weight(RESTRAINT.value)
        force = self.weight(max(self.force([asked]), least))
        held = _changed(
            asked, lambda stand: replace(stand, held=RESTRAINT.value, height=self.fixed_at)
        )
        yield _remedy(
            f"fixed to the wall at {self._length(self.fixed_at)}: it has to hold {force}; with a "
            f"restraint that holds {tried}",
            held,
        )
        if alone is not None:
            yield _remedy(self.interlock, alone)
        for said, change in self.changes([asked]):
            yield _remedy(said, _changed(asked, change))

    @property
    def interlock(self) -> str:
        """One drawer at a time, and what the others then have to bear."""
        return (
            f"an interlock that lets one drawer open at a time and holds the others shut against "
            f"{self.weight(INTERLOCK.value)}"
        )

    def changes(self, asked: Sequence[Asked]) -> Iterator[tuple[str, Change]]:
        """A deeper base, and weight in the bottom: the least of each with which it stands all that
        is asked; none where no sensible amount is enough."""
        deeper = _least(asked, lambda by: _deeper(by), _STEPS[self.unit], _DEEPEST)
        if deeper is not None:
            yield f"a base {self._length(deeper)} deeper to the front", _deeper(deeper)
        more = _least(asked, self._ballast, WEIGHTS[self.unit].one, _HEAVIEST)
        if more is not None:
            yield f"{self.weight(more)} of weight fixed in the bottom", self._ballast(more)

    def force(self, asked: Sequence[Asked]) -> float:
        """What a fixing to the wall has to hold, kg: T = (P H + sum F f - W x) / z."""
        return max(each.lacking() for each in asked) / self.fixed_at

    def _ballast(self, mass: float) -> Change:
        lot = Lot(mass, self.bottom.centre)
        return lambda stand: replace(stand, ballast=lot)

    def weight(self, kg: float) -> str:
        """A weight in the maker's unit."""
        return format_weight(kg, self.unit)

    def _length(self, length: float) -> str:
        return f"{format_length(length, self.unit)} {self.unit}"


def means_of(unit: Unit, feet: Footing) -> Means:
    """What a unit gives to steady it by."""
    case = [part.bounds() for part in unit.parts if part.role in CASE]
    box = Box.of_boxes(case) if case else unit.envelope
    xs = [line.start[0] for line in feet.lines]
    ys = [line.start[1] for line in feet.lines]
    middle = ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2, box.low[2])
    at = max(box.high[2] - FIXED_BELOW_TOP.value, box.high[2] / 2)
    return Means(unit.display_unit, at, Lot(0.0, middle))


def _remedy(what: str, asked: Asked) -> Remedy:
    worst = asked.worst()
    figure, _ = asked.told(worst)
    return Remedy(what, worst.figure if figure is None else figure, asked.stands)


def _changed(asked: Asked, change: Change) -> Asked:
    return replace(asked, stand=change(asked.stand))


def _least(
    asked: Sequence[Asked], changed: Callable[[float], Change], step: float, most: float
) -> float | None:
    """The least whole number of steps with which it stands all that is asked, by halving."""
    low, high = 0, math.floor(most / step)

    def stands(count: int) -> bool:
        return all(_changed(each, changed(count * step)).stands for each in asked)

    if not stands(high):
        return None
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if stands(middle) else (middle, high)
    return high * step


def _deeper(by: float) -> Change:
    """The same on a base whose front stands farther forward."""

    def moved(line: Line) -> Line:
        if line.way != "forward":
            return line
        (a, b), (c, d) = line.start, line.stop
        return Line((a, b - by), (c, d - by))

    def change(stand: Stand) -> Stand:
        return replace(stand, feet=replace(stand.feet, lines=tuple(map(moved, stand.feet.lines))))

    return change
