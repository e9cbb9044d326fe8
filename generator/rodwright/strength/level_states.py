"""Levels at once, after years, and with ends that turn freely; mm and N."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from rodwright.strength.beams import Beam, Bent, Segment, Stretch, Support, bend
from rodwright.strength.bearings import Bearing, bear, lies, moduli_of
from rodwright.strength.lacking import lacking
from rodwright.strength.level_loads import level_loads
from rodwright.strength.level_parts import Level
from rodwright.strength.level_sections import Moduli, Section, sections_along, with_grain
from rodwright.strength.load_factors import PSI2
from rodwright.strength.seats import Lying
from rodwright.unit import Part, Unit


@dataclass(frozen=True, slots=True)
class LevelState:
    """One level: as it is loaded (``now``), after the years that are asked for (``later``), and
    with ends that turn freely, by which its strength is judged (``pinned``).  ``lasting`` is the
    share of its load by which it creeps: own weight all, what lies on it by psi2."""

    now: Bearing
    later: Bearing
    pinned: Bearing
    lasting: float

    @property
    def level(self) -> Level:
        """The level itself."""
        return self.now.level


@lru_cache(maxsize=4)
def states(unit: Unit) -> Mapping[str, LevelState]:
    """A unit's levels in all three states, by ref.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    levels = lies(unit)
    now = bear(unit, levels, lambda _: 0.0)
    lasting = {part.ref: _lasting(each) for each in now for part in each.level.parts}
    later = _later(unit, levels, lasting) if unit.loading.years > 0 else now
    pinned = _pinned(unit, levels)
    return {
        one.level.ref: LevelState(one, two, three, lasting[one.level.ref])
        for one, two, three in zip(now, later, pinned, strict=True)
    }


def trial_state(
    unit: Unit,
    levels: Sequence[tuple[Level, Lying]],
    like: Mapping[str, LevelState],
    ref: str,
) -> LevelState:
    """One level that is tried otherwise: after the years, for which ``now`` stands too, and pinned.

    What stands on levels counts as it does on those of ``like``.
    """
    lasting = {}
    for level, _ in levels:
        loads = level_loads(unit, level)
        standing = sum(each.force for each in like[level.ref].now.standing)
        share = _share(loads.weight, loads.contents + standing)
        lasting.update({part.ref: share for part in level.parts})
    years = unit.loading.years > 0
    later, pinned = (
        next(each for each in solved if each.level.ref == ref)
        for solved in (_later(unit, levels, lasting if years else {}), _pinned(unit, levels))
    )
    return LevelState(later, later, pinned, lasting[ref])


def _later(
    unit: Unit, levels: Sequence[tuple[Level, Lying]], lasting: Mapping[str, float]
) -> tuple[Bearing, ...]:
    return bear(unit, levels, lambda part: lasting.get(part.ref, 0.0) * creep_of(part))


def _pinned(unit: Unit, levels: Sequence[tuple[Level, Lying]]) -> tuple[Bearing, ...]:
    return bear(unit, [(level, _freed(lie)) for level, lie in levels], lambda _: 0.0)


def creep_of(part: Part) -> float:
    """kdef of a part; 0 where it isn't known, which is told (:func:`unknown_of`)."""
    mechanics = part.blank.stock.mechanics
    return mechanics.creep.value if mechanics and mechanics.creep else 0.0


def unknown_of(unit: Unit, bearing: Bearing) -> str:
    """What isn't known of a level's panels for a sag to be worked out; empty if nothing."""
    axis = 1 if bearing.across else 0
    for part in bearing.level.panels:
        stiffness = "along" if with_grain(part, axis) else "across"
        wanted = (stiffness, "creep") if unit.loading.years > 0 else (stiffness,)
        missing = lacking(part.blank.stock, *wanted)
        if missing:
            return missing
    return ""


def front_to_back(bearing: Bearing, softened: Mapping[str, float]) -> tuple[Bent, Section] | None:
    """A level that is held along its front and its back, as a strip as long as it is, bent from one
    to the other, and its section; ``softened`` is by how much each part has gone softer.

    It is loaded all along as where most lies on it.  None where it isn't held so.
    """
    if not bearing.across:
        return None
    box = bearing.level.box
    front, back = (
        min(max(line.at, box.low[1]), box.high[1]) - box.low[1]
        for line in sorted(bearing.lines, key=lambda line: line.at)
    )
    panels = replace(bearing.level, plies=tuple(replace(p, strips=()) for p in bearing.level.plies))
    panels = replace(panels, beside=())

    def moduli(part: Part) -> Moduli:
        return moduli_of(part, 1, softened.get(part.ref, 0.0))

    pieces = sections_along(panels, moduli, axis=1)
    deep = box.size[1]
    stops = [piece.stop - box.low[1] for piece in pieces[:-1]] + [deep]
    segments = tuple(
        Segment(stop, piece.bending, piece.shear) for stop, piece in zip(stops, pieces, strict=True)
    )
    load = bearing.most_per_mm * box.size[0] / deep
    strip = Beam(deep, segments, (Support(front), Support(back)), (Stretch(0.0, deep, load, load),))
    weakest = min(pieces, key=lambda piece: piece.bending)
    return bend(strip), weakest


def softened(state: LevelState, years: float) -> dict[str, float]:
    """By how much each part of a level has gone softer after the years."""
    share = state.lasting if years > 0 else 0.0
    return {part.ref: share * creep_of(part) for part in state.level.parts}


def _lasting(bearing: Bearing) -> float:
    stored = bearing.contents + sum(each.force for each in bearing.standing)
    return _share(bearing.weight, stored)


def _share(weight: float, stored: float) -> float:
    total = weight + stored
    return (weight + PSI2 * stored) / total if total > 0 else 1.0


def _freed(lie: Lying) -> Lying:
    return replace(lie, seats=tuple(replace(seat, stiffness=None) for seat in lie.seats))
