"""Whether a level that is tried otherwise holds: the figure that is asked for, and the others."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.strength.level_states import LevelState, unknown_of
from rodwright.strength.level_trials import Trial
from rodwright.strength.pin_results import HOLES, PRESSED, TEARS, pin_results
from rodwright.strength.results import Beyond
from rodwright.strength.sagging import BY_TURNS, SAGS, sag_by_turns, sag_of
from rodwright.strength.stresses import BENDS, SHEARS, bending_of, shear_of
from rodwright.unit import Unit


@dataclass(frozen=True, slots=True)
class Judged:
    """The figure of something that is tried, the most it may be, and what else is beyond its
    limit."""

    figure: float
    limit: float
    beyond: tuple[Beyond, ...]

    @property
    def holds(self) -> bool:
        """Whether nothing is beyond its limit."""
        return self.figure <= self.limit and not self.beyond


def judged(trials: tuple[Trial, ...], what: str) -> Judged | None:
    """The worse of what is tried together; None where it isn't known."""
    found = []
    for unit, state in trials:
        figures = dict(_figures(unit, state, what))
        own = figures.pop(what, None)
        if own is None:
            return None
        beyond = tuple(each for each in figures.values() if each.figure > each.limit)
        found.append(Judged(own.figure, own.limit, beyond))
    return max(found, key=lambda each: (len(each.beyond), each.figure / each.limit))


def _figures(unit: Unit, state: LevelState, what: str) -> Iterator[tuple[str, Beyond]]:
    """Its sag and its stresses, by what they are called; of its pins, which
    have remedies of their own, only what is asked for."""
    if what in (HOLES, TEARS, PRESSED):
        for each in pin_results(unit, state):
            if each.what == what and each.figure is not None and each.limit is not None:
                yield what, Beyond(what, each.figure, each.limit, each.measure)
        return
    if unknown_of(unit, state.now):
        return
    years = unit.loading.years
    whole, turns = sag_of(unit, state, years), sag_by_turns(unit, state, years)
    sagged = [each for each in (whole, turns) if each is not None]
    if what.startswith(SAGS):
        sagged = sagged[-1:] if what.endswith(BY_TURNS) else sagged[:1]
    if sagged:
        most = max(sagged, key=lambda each: each.share)
        called = what if what.startswith(SAGS) else SAGS
        yield called, Beyond(SAGS, most.sag, most.limit, "mm")
    for called, stressed in ((BENDS, bending_of(unit, state)), (SHEARS, shear_of(unit, state))):
        if stressed is not None and stressed.strength is not None:
            yield called, Beyond(called, stressed.stress, stressed.strength.value, "N/mm2")
