"""What would keep shelf pins and their holes within their limits, each worked out."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace

from rodwright.geometry import TOUCH
from rodwright.lengths import from_inches
from rodwright.strength.level_remedies import most_on
from rodwright.strength.level_states import LevelState
from rodwright.strength.level_trials import Trials
from rodwright.strength.pin_results import PRESSED, pin_results
from rodwright.strength.results import Remedy
from rodwright.strength.shelf_pins import Pins, pins_of
from rodwright.strength.told_support import said
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import Unit

_SOLD = {"mm": (6.0, 7.0, 8.0), "in": (from_inches("1/4"), from_inches("5/16"))}
"""Pins that are sold, by their thickness (common practice, no source)."""
_LEFT = 4.0
"""Wood to be left behind a hole, mm (common practice, no source)."""


def pin_remedies(
    unit: Unit, like: Mapping[str, LevelState], state: LevelState, what: str
) -> tuple[Remedy, ...]:
    """What is tried for a level whose pins or their holes fail in ``what``; ``like`` are all levels
    as they are.  What holds comes first.

    Figures are as if the limit were what it is now: thicker pins have another, by which they may
    be no better.
    """
    now, limit = _of(unit, state, what, lambda pins: pins)
    found = []
    for told, change in _changes(unit, state, what):
        figure, its_limit = _of(unit, state, what, change)
        if figure / its_limit < now / limit:
            found.append(Remedy(told, figure * limit / its_limit, figure <= its_limit))
    found += most_on(unit, state, Trials(unit, like, state), what)
    return tuple(sorted(found, key=lambda each: not each.holds))


def _of(
    unit: Unit, state: LevelState, what: str, change: Callable[[Pins], Pins]
) -> tuple[float, float]:
    """The figure and its limit with pins changed so."""
    results = pin_results(unit, state, change)
    found = next(each for each in results if each.what == what)
    assert found.figure is not None and found.limit is not None
    return found.figure, found.limit


def _changes(
    unit: Unit, state: LevelState, what: str
) -> Iterator[tuple[str, Callable[[Pins], Pins]]]:
    """More pins, thicker ones, and deeper holes."""
    pins = max(pins_of(unit, state.now), key=lambda each: each.force)
    twice = 2 * pins.count
    yield f"{twice} pins at each end instead of {pins.count}", _doubled
    for thick in _SOLD[unit.display_unit]:
        if pins.diameter + TOUCH < thick < pins.diameter + pins.below:
            yield f"pins {said(unit, thick)} thick", _wider(thick)
    deep = trade_sizes(unit.display_unit).round_down(pins.upright.blank.thickness - _LEFT)
    if deep > pins.depth + TOUCH and what != PRESSED:
        yield f"pins in holes {said(unit, deep)} deep", _deeper(deep)


def _doubled(pins: Pins) -> Pins:
    return replace(pins, count=2 * pins.count, force=pins.force / 2)


def _wider(thick: float) -> Callable[[Pins], Pins]:
    """Thicker pins, whose holes leave less wood between them."""
    return lambda pins: replace(pins, diameter=thick, below=pins.below - (thick - pins.diameter))


def _deeper(deep: float) -> Callable[[Pins], Pins]:
    return lambda pins: replace(pins, depth=deep)
