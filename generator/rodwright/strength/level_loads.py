"""What levels carry: what was said lies on them, their own weight, and what is fixed to them; N."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from rodwright.amounts import GRAVITY
from rodwright.mass import weight
from rodwright.strength.beams import Point, Stretch
from rodwright.strength.level_parts import Level
from rodwright.unit import Load, Unit


@dataclass(frozen=True, slots=True)
class LevelLoads:
    """Loads on one level's beam (x from its left end): its ``own`` weight, what is ``stored`` along
    it, and on spots; and their sums: of its own weight, and of what lies on it.  ``deep`` is how
    deep the level is, mm."""

    own: tuple[Stretch, ...]
    stored: tuple[Stretch, ...]
    points: tuple[Point, ...]
    weight: float
    contents: float
    deep: float

    @property
    def stretches(self) -> tuple[Stretch, ...]:
        """All that is spread along it."""
        return (*self.own, *self.stored)

    @property
    def most_per_mm(self) -> float:
        """The heaviest load per mm of its length, lumps spread as wide as the level is deep."""
        ends = sorted({end for each in self.stretches for end in (each.start, each.stop)})
        spread = (
            max(_at(self.stretches, start, stop, start), _at(self.stretches, start, stop, stop))
            for start, stop in pairwise(ends)
        )
        return max(spread, default=0.0) + sum(point.force for point in self.points) / self.deep

    @property
    def total(self) -> float:
        """All of it."""
        return self.weight + self.contents


def _at(stretches: tuple[Stretch, ...], start: float, stop: float, at: float) -> float:
    """The load per mm at a place of a piece within which nothing begins or ends."""
    return sum(
        each.at_start
        + (each.at_stop - each.at_start) * (at - each.start) / (each.stop - each.start)
        for each in stretches
        if each.start <= start and stop <= each.stop
    )


def loads_on(unit: Unit, level: Level) -> tuple[Load, ...]:
    """What was said (or assumed) to lie on a level."""
    refs = {part.ref for part in level.parts}
    return tuple(load for load in unit.loading.loads if load.ref in refs)


def weight_of(unit: Unit, ref: str) -> float:
    """What an upright brings of its own: its weight, and loads that hang on it."""
    hung = sum(load.mass for load in unit.loading.loads if load.ref == ref)
    return (weight(unit.part(ref)) + hung) * GRAVITY


def level_loads(unit: Unit, level: Level) -> LevelLoads:
    """All that a level carries, but what stands on it."""
    low, length = level.box.low[0], round(level.box.size[0], 6)

    def along(at: float) -> float:
        return min(max(round(at - low, 6), 0.0), length)

    even, stored, points, own = [], [], [], 0.0
    for part in level.parts:
        box = part.bounds()
        start, stop = along(box.low[0]), along(box.high[0])
        if stop > start:
            force = weight(part) * GRAVITY
            own += force
            per_mm = force / (stop - start)
            even.append(Stretch(start, stop, per_mm, per_mm))
    contents = 0.0
    for load in loads_on(unit, level):
        for each in load.stretches:
            start, stop = along(each.start), along(each.stop)
            if stop > start:
                ends = each.at_start * GRAVITY / 1000, each.at_stop * GRAVITY / 1000
                stored.append(Stretch(start, stop, *ends))
                contents += sum(ends) / 2 * (stop - start)
        for lump in load.lumps:
            points.append(Point(along(lump.at), lump.mass * GRAVITY))
            contents += lump.mass * GRAVITY
    return LevelLoads(tuple(even), tuple(stored), tuple(points), own, contents, level.box.size[1])
