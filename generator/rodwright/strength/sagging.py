"""How far levels sag, and how much they may; mm."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import pairwise

from rodwright.strength.beams import Sag, Stretch, bend
from rodwright.strength.bearings import Bearing
from rodwright.strength.level_loads import level_loads
from rodwright.strength.level_states import LevelState, front_to_back, softened
from rodwright.unit import Unit

OVERHANG = 2.0
"""An overhang may go down as far as a span twice as long (EN 1995-1-1, table 7.2, gives
cantilevers half of what spans are held to)."""

SAGS = "sag"
"""What the results are of; they say after how long."""
BY_TURNS = ", every other span empty"
"""What a sag is called besides, of a level over several spans that are loaded by turns."""
_THERE = 1.0
"""What reaches out no farther than this, mm, is no overhang."""


@dataclass(frozen=True, slots=True)
class Sagged:
    """The sag (mm, down) that comes nearest to what it may be or passes it most (``limit``), over a
    ``span``, at a ``place`` along it (x in the unit frame, or y where it spans from front to
    back).  An ``overhang`` counts as a span of twice what it reaches out."""

    sag: float
    limit: float
    span: float
    place: float
    front_to_back: bool = False
    overhang: bool = False

    @property
    def share(self) -> float:
        """How much of its limit it takes."""
        return self.sag / self.limit


def sag_of(unit: Unit, state: LevelState, years: float) -> Sagged | None:
    """How far a level sags after the unit's years, or at once (0); None where nothing bends."""
    bearing = state.later if years > 0 else state.now
    strip = front_to_back(bearing, softened(state, years))
    if strip is not None:
        low = bearing.level.box.low[1]
        across = [
            replace(_sagged(unit, each, low), front_to_back=True)
            for each in strip[0].sags(down=True)
            if not each.overhang or each.stop - each.start > _THERE
        ]
        return max(across, key=lambda each: each.share)
    if bearing.bent is None:
        return None
    return max(_spans(unit, bearing), key=lambda each: each.share)


def sag_by_turns(unit: Unit, state: LevelState, years: float) -> Sagged | None:
    """How far a level over several spans sags with every other span loaded, the rest empty: a span
    sags farther with nothing on those beside it.

    What stands on one spot stays.  None where it has one span, lies on dividers that give way, or
    carries some, by which other levels would change with it.
    """
    bearing = state.later if years > 0 else state.now
    if (
        bearing.bent is None
        or bearing.standing
        or not 2 < len(bearing.seats) == len(bearing.bent.beam.supports)
    ):
        return None
    beam, loads = bearing.bent.beam, level_loads(unit, bearing.level)
    ends = [0.0, *(support.at for support in beam.supports[1:-1]), beam.length]
    found = []
    for first in (0, 1):
        loaded = list(pairwise(ends))[first::2]
        stored = [part for each in loads.stored for part in _within(each, loaded)]
        bent = bend(replace(beam, stretches=(*loads.own, *stored)))
        found += _spans(unit, replace(bearing, bent=bent))
    return max(found, key=lambda each: each.share)


def _within(load: Stretch, spans: Iterable[tuple[float, float]]) -> Iterator[Stretch]:
    """What lies of a load in some spans."""
    rise = (load.at_stop - load.at_start) / (load.stop - load.start)
    for low, high in spans:
        start, stop = max(low, load.start), min(high, load.stop)
        if start < stop:
            ends = (load.at_start + rise * (at - load.start) for at in (start, stop))
            yield Stretch(start, stop, *ends)


def _spans(unit: Unit, bearing: Bearing) -> list[Sagged]:
    assert bearing.bent is not None
    low = bearing.level.box.low[0]
    return [
        _sagged(unit, each, low)
        for each in bearing.bent.sags(down=True)
        if not each.overhang or _stands_out(unit, bearing, left=each.start <= 0)
    ]


def _sagged(unit: Unit, sag: Sag, low: float) -> Sagged:
    """A sag against what it may be; its beam begins at ``low``, mm."""
    span = (sag.stop - sag.start) * (OVERHANG if sag.overhang else 1.0)
    limit = span / unit.loading.limit
    return Sagged(sag.sag, limit, span, low + sag.at, overhang=sag.overhang)


def _stands_out(unit: Unit, bearing: Bearing, *, left: bool) -> bool:
    """Whether an end reaches past what carries it there, and is not let into it or lying on it."""
    seat = bearing.seats[0 if left else -1]
    if seat.how == "end" or not seat.on:
        return seat.how == "under"
    box, its = bearing.level.box, unit.part(seat.on).bounds()
    out = its.low[0] - box.low[0] if left else box.high[0] - its.high[0]
    return out > _THERE
