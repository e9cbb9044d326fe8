"""What would keep a level within its limits, each worked out with the level changed so."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from math import isclose

from rodwright.amounts import GRAVITY, RUN_WEIGHTS, WEIGHTS
from rodwright.geometry import TOUCH
from rodwright.lengths import from_inches
from rodwright.strength.level_judging import judged
from rodwright.strength.level_loads import loads_on
from rodwright.strength.level_states import LevelState
from rodwright.strength.level_stocks import (
    dearer,
    is_glass,
    of_strip,
    others,
    price,
    strip_stock,
    thicker,
)
from rodwright.strength.level_trials import Trial, Trials
from rodwright.strength.results import Remedy, Result
from rodwright.strength.told_support import said
from rodwright.unit import JointKind, Role, Stock, Unit

_LIPPINGS = {"mm": (30.0, 40.0, 50.0), "in": tuple(map(from_inches, ("1 1/4", "1 1/2", "2")))}
_SHALLOWEST = 150.0
"""Shelves less deep than this, mm, are of little use (common practice, no source)."""
_WORTH_TELLING = 0.1
"""Of what was asked for, less than this share on it is no remedy."""
_STEP = {"mm": 10.0, "in": from_inches("1/2")}


def remedies_of(
    unit: Unit, like: Mapping[str, LevelState], state: LevelState, result: Result
) -> tuple[Remedy, ...]:
    """Everything that is tried for a level that fails in a result (a sag, bending or shear
    stress); ``like`` are all levels as they are.

    What would do does for its sag and for its stresses.  What holds comes first: the cheapest of
    what has a price, then what has none, in order of how little it changes; then what doesn't hold.
    """
    tried = [_other_limit(each, result) for each in _tried(unit, like, state, result.what)]
    order = {id(remedy): number for number, remedy in enumerate(tried)}

    def rank(remedy: Remedy) -> tuple[bool, bool, float, int]:
        unpriced = remedy.cost is None
        return (not remedy.holds, unpriced, remedy.cost or 0.0, order[id(remedy)])

    return tuple(sorted(tried, key=rank))


def _tried(
    unit: Unit, like: Mapping[str, LevelState], state: LevelState, what: str
) -> Iterator[Remedy]:
    trials = Trials(unit, like, state)
    own = state.level.main.blank.stock
    for stock in thicker(unit, own):
        yield from _remedy(
            what, _named(unit, own, stock), trials.of_stock(stock), cost=dearer(state, stock)
        )
    for stock in others(unit, own):
        yield from _remedy(
            what, _named(unit, own, stock), trials.of_stock(stock), cost=dearer(state, stock)
        )
    strip, glues = strip_stock(unit, own), not is_glass(own)
    for deep in _LIPPINGS[unit.display_unit]:
        if glues and deep > state.level.box.size[2]:
            told = f"a lipping {said(unit, deep)} high of {strip.material}, glued along its front"
            yield from _remedy(what, told, trials.lipped(strip, deep), cost=of_strip(state, strip))
    if glues and len(state.level.panels) == 1:
        told = f"two layers of {own.material}, glued"
        yield from _remedy(what, told, trials.layered(2), cost=price(state, own, 1))
    held = any(line.edge == "back" for line in state.now.lines)
    if glues and _has_back(unit, state) and not held:
        told = (
            "screwed along its back edge to a back that is screwed to the uprights "
            "(`back.fixing: applied`)"
        )
        yield from _remedy(what, told, trials.held_at_back())
    yield from _carried_between(state, trials, what)
    yield from _shallower(unit, state, trials, what)
    yield from _spanning(unit, state, trials, what)
    yield from most_on(unit, state, trials, what)


def _has_back(unit: Unit, state: LevelState) -> bool:
    """Whether a back stands behind a level that isn't let out to be moved."""
    box = state.level.box
    loose = any(
        seat.joint is not None and seat.joint.kind is JointKind.RESTING for seat in state.now.seats
    )
    return not loose and any(
        part.role is Role.BACK and abs(part.bounds().low[1] - box.high[1]) < TOUCH
        for part in unit.parts
    )


def _carried_between(state: LevelState, trials: Trials, what: str) -> Iterator[Remedy]:
    """Something that stands firm half-way along it: of a shelf a divider makes two."""
    if state.now.across or not state.now.seats:
        return
    if trials.one_span and state.level.main.role is Role.SHELF:
        told = "a divider half-way that stands firm, and two shelves"
        yield from _remedy(what, told, *trials.halved())
    else:
        told = "something half-way under its widest span that stands firm, over which it runs on"
        yield from _remedy(what, told, trials.propped())


def _remedy(what: str, told: str, *trials: Trial, cost: float | None = None) -> Iterator[Remedy]:
    found = judged(trials, what)
    if found is not None:
        beyond = found.beyond if found.figure <= found.limit else ()
        yield Remedy(told, found.figure, found.holds, cost, limit=found.limit, beyond=beyond)


def _other_limit(remedy: Remedy, result: Result) -> Remedy:
    """A remedy with its limit if that is another than now."""
    same = result.limit is not None and isclose(remedy.limit or 0.0, result.limit, rel_tol=1e-3)
    return replace(remedy, limit=None) if same else remedy


def _named(unit: Unit, own: Stock, stock: Stock) -> str:
    thick = f"{said(unit, stock.thickness)} thick"
    if stock.material == own.material:
        return thick
    return f"{stock.material} {thick}"


def _shallower(unit: Unit, state: LevelState, trials: Trials, what: str) -> Iterator[Remedy]:
    """The greatest depth that holds, where that helps: a level held along its back sags less at its
    front edge the nearer that is, unless it carries as much on less."""
    held = any(line.edge == "back" for line in state.now.lines)
    if not held or state.now.across or not trials.narrows:
        return
    depth, step = state.level.box.size[1], _STEP[unit.display_unit]
    most = _most(int(depth / step), lambda steps: _holds(trials.shallower(steps * step), what))
    if most * step >= _SHALLOWEST:
        yield from _remedy(what, f"{said(unit, most * step)} deep", trials.shallower(most * step))


def _spanning(unit: Unit, state: LevelState, trials: Trials, what: str) -> Iterator[Remedy]:
    """The longest span, in round figures, that holds."""
    if not trials.one_span or state.now.across:
        return
    start, stop = state.now.spans[0]
    step = _STEP[unit.display_unit]
    most = _most(
        int((stop - start) / step), lambda steps: _holds(trials.spanning(steps * step), what)
    )
    if most > 0:
        told = f"no more than {said(unit, most * step)} from end to end"
        yield from _remedy(what, told, trials.spanning(most * step))


def most_on(unit: Unit, state: LevelState, trials: Trials, what: str) -> Iterator[Remedy]:
    """The most that it bears: in whole kg/m or lb/ft, or in whole kg or lb where some of it stands
    on single spots, as what is there does."""
    contents = state.now.contents / GRAVITY
    if not contents:
        return
    spots = any(load.lumps for load in loads_on(unit, state.level))
    measure = (WEIGHTS if spots else RUN_WEIGHTS)[unit.display_unit]
    now = contents if spots else contents / state.level.box.size[0] * 1000

    def of(whole: int) -> Trial:
        return trials.loaded(whole * measure.one / now)

    high = int(measure.of(now))
    empty, full = judged((of(0),), what), judged((of(high),), what)
    if empty is None or full is None or full.figure <= empty.figure:
        return
    # Sag and stress grow evenly with the load, unless the level lifts off something.
    spare = (full.limit - empty.figure) / (full.figure - empty.figure)
    most = min(int(spare * high + 1e-9), high)
    while most > 0 and not _holds(of(most), what):
        most -= 1 + most // 20
    if most > 0 and most * measure.one >= _WORTH_TELLING * now:
        told = f"no more than {measure.said(most * measure.one, 0)} on it"
        yield from _remedy(what, told, of(most))


def _holds(trial: Trial, what: str) -> bool:
    found = judged((trial,), what)
    return found is not None and found.holds


def _most(high: int, holds: Callable[[int], bool]) -> int:
    """The most, up to ``high``, that holds; 0 if none does."""
    low = 0
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if holds(middle) else (low, middle - 1)
    return low
