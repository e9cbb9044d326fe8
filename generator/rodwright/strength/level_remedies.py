"""What would keep a level within its limits, each worked out with the level changed so."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace

from rodwright.amounts import RUN_WEIGHTS, WEIGHTS
from rodwright.geometry import TOUCH
from rodwright.lengths import from_inches
from rodwright.strength.level_loads import GRAVITY, loads_on
from rodwright.strength.level_states import LevelState, unknown_of
from rodwright.strength.level_trials import LIPPING_WIDTH, Trial, Trials
from rodwright.strength.pin_results import HOLES, PRESSED, TEARS, pin_results
from rodwright.strength.results import Remedy
from rodwright.strength.sagging import BY_TURNS, sag_by_turns, sag_of
from rodwright.strength.stresses import bending_of, shear_of
from rodwright.strength.told_support import said
from rodwright.trade.materials import MATERIALS
from rodwright.trade.mechanics import Family, mechanics_of
from rodwright.trade.sizes import BOARD_THICKNESSES, SHEET_THICKNESSES
from rodwright.unit import JointKind, Part, Role, Stock, Unit

COMMON: dict[str, tuple[str, ...]] = {
    "sheet": ("birch plywood",),
    "board": ("european oak", "european beech", "european ash"),
}
"""What is sold nearly everywhere and stiffer than most (common practice, no source)."""
_THICKER = 3
"""How many of the next thicknesses are tried."""
_LIPPINGS = {"mm": (30.0, 40.0, 50.0), "in": tuple(map(from_inches, ("1 1/4", "1 1/2", "2")))}
_SHALLOWEST = 150.0
"""Shelves less deep than this, mm, are of little use (common practice, no source)."""
_STEP = {"mm": 10.0, "in": from_inches("1/2")}


def remedies_of(
    unit: Unit, like: Mapping[str, LevelState], state: LevelState, what: str
) -> tuple[Remedy, ...]:
    """Everything that is tried for a level that fails in ``what`` (a sag, bending or shear
    stress); ``like`` are all levels as they are.

    What holds comes first: the cheapest of what has a price, then what has none, in order of how
    little it changes; then what doesn't hold.
    """
    tried = list(_tried(unit, like, state, what))
    order = {id(remedy): number for number, remedy in enumerate(tried)}

    def rank(remedy: Remedy) -> tuple[bool, bool, float, int]:
        unpriced = remedy.cost is None
        return (not remedy.holds, unpriced, remedy.cost or 0.0, order[id(remedy)])

    return tuple(sorted(tried, key=rank))


def _tried(
    unit: Unit, like: Mapping[str, LevelState], state: LevelState, what: str
) -> Iterator[Remedy]:
    trials = Trials(unit, like, state, strength=not what.startswith("sag"))
    own = state.level.main.blank.stock
    for stock in _thicker(unit, own):
        yield from _remedy(
            what, _named(unit, own, stock), trials.of_stock(stock), _dearer(state, stock)
        )
    for stock in _others(unit, own):
        yield from _remedy(
            what, _named(unit, own, stock), trials.of_stock(stock), _dearer(state, stock)
        )
    strip, glued = _strip_stock(unit, own), not _is_glass(own)
    for deep in _LIPPINGS[unit.display_unit]:
        if glued and deep > state.level.box.size[2]:
            told = f"a lipping {said(unit, deep)} deep of {strip.material}, glued along its front"
            yield from _remedy(what, told, trials.lipped(strip, deep), _of_strip(state, strip))
    if glued and len(state.level.panels) == 1:
        told = f"two layers of {own.material}, glued"
        yield from _remedy(what, told, trials.layered(2), _price(state, own, 1))
    if (
        glued
        and _has_back(unit, state)
        and not any(line.edge == "back" for line in state.now.lines)
    ):
        told = "screwed along its back edge to a back that is screwed to the uprights"
        yield from _remedy(what, told, trials.held_at_back())
    if state.now.seats and not state.now.across:
        yield from _remedy(what, "a divider or stile half-way that stands firm", trials.propped())
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


def _figure(trial: Trial, what: str) -> tuple[float, float] | None:
    """The figure of a trial and its limit; None where it isn't known."""
    unit, state = trial
    if what in {HOLES, TEARS, PRESSED}:
        results = [each for each in pin_results(unit, state) if each.what == what]
        return next(
            (
                (each.figure, each.limit)
                for each in results
                if each.figure is not None and each.limit is not None
            ),
            None,
        )
    if unknown_of(unit, state.now):
        return None
    if what.startswith("sag"):
        sagged = sag_of(unit, state, unit.loading.years)
        if what.endswith(BY_TURNS):
            sagged = sag_by_turns(unit, state, unit.loading.years) or sagged
        return (sagged.sag, sagged.limit) if sagged else None
    stressed = (bending_of if what.startswith("bending") else shear_of)(unit, state)
    if stressed is None or stressed.strength is None:
        return None
    return stressed.stress, stressed.strength.value


def _remedy(what: str, told: str, trial: Trial, cost: float | None = None) -> Iterator[Remedy]:
    found = _figure(trial, what)
    if found is not None:
        figure, limit = found
        yield Remedy(told, figure, figure <= limit, cost)


def _named(unit: Unit, own: Stock, stock: Stock) -> str:
    thick = f"{said(unit, stock.thickness)} thick"
    if stock.material == own.material:
        return thick
    return f"{stock.material} {thick}"


def _thicker(unit: Unit, own: Stock) -> Iterator[Stock]:
    """The next thicknesses in which a material is sold, but those that the spec has itself."""
    sold = (SHEET_THICKNESSES if own.kind == "sheet" else BOARD_THICKNESSES)[unit.display_unit]
    there = [stock.thickness for stock in _stocks(unit) if stock.material == own.material]
    next_ones = [each for each in sold if each > own.thickness + 0.5][:_THICKER]
    for thickness in next_ones:
        if all(abs(thickness - each) > 0.5 for each in there):
            yield from _made(unit, own, own.material, thickness)


def _others(unit: Unit, own: Stock) -> Iterator[Stock]:
    """Other stocks of the spec that could make it, and common materials as thick as its own."""
    there = [
        stock
        for stock in _stocks(unit)
        if stock != own and stock.thickness > own.thickness - 3 and stock.kind == own.kind
    ]
    yield from there
    for material in COMMON[own.kind]:
        if material != own.material and all(stock.material != material for stock in there):
            yield from _made(unit, own, material, own.thickness)


def _stocks(unit: Unit) -> list[Stock]:
    return list(dict.fromkeys(part.blank.stock for part in unit.parts))


def _made(unit: Unit, own: Stock, material: str, thickness: float) -> Iterator[Stock]:
    """A stock that isn't in the spec, if it is known how stiff it is."""
    known = MATERIALS.get(material)
    density = own.density if material == own.material or known is None else known.density
    weighed = own.density if material == own.material else None
    mechanics = mechanics_of(material, thickness, unit.loading.service_class, weighed)
    if mechanics is not None:
        yield replace(
            own,
            name=f"{material} {thickness:g}",
            material=material,
            thickness=thickness,
            density=density,
            mechanics=mechanics,
            price=None,
        )


def _is_glass(stock: Stock) -> bool:
    """Whether a stock is glass, to which nothing is glued and into which nothing is screwed."""
    return stock.mechanics is not None and stock.mechanics.family is Family.GLASS


def _strip_stock(unit: Unit, own: Stock) -> Stock:
    """What a lipping comes out of: the spec's own solid wood, or else what the level is of."""
    boards = [
        stock
        for stock in _stocks(unit)
        if stock.kind == "board" and stock.mechanics and stock.thickness >= LIPPING_WIDTH - 3
    ]
    return min(boards, key=lambda stock: stock.thickness, default=own)


def _price(state: LevelState, stock: Stock, layers: int) -> float | None:
    """What a stock for the level costs, by the share of a sheet or the run of a board."""
    if stock.price is None:
        return None
    part: Part = state.level.main
    if stock.kind == "board":
        return layers * stock.price * part.blank.length / 1000
    if stock.size is None:
        return None
    area = part.blank.length * part.blank.width / (stock.size[0] * stock.size[1])
    return layers * stock.price * area


def _dearer(state: LevelState, stock: Stock) -> float | None:
    """What a stock costs more than the one it takes the place of."""
    layers = len(state.level.panels)
    new = _price(state, stock, layers)
    old = _price(state, state.level.main.blank.stock, layers)
    return None if new is None or old is None else new - old


def _of_strip(state: LevelState, strip: Stock) -> float | None:
    """What a lipping out of a board costs, by its run."""
    if strip.kind != "board" or strip.price is None:
        return None
    return strip.price * state.level.main.blank.length / 1000


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
    empty, full = _figure(of(0), what), _figure(of(high), what)
    if empty is None or full is None or full[0] <= empty[0]:
        return
    # Sag and stress grow evenly with the load, unless the level lifts off something.
    most = min(int((full[1] - empty[0]) / (full[0] - empty[0]) * high + 1e-9), high)
    while most > 0 and not _holds(of(most), what):
        most -= 1 + most // 20
    if most > 0:
        told = f"no more than {measure.said(most * measure.one, 0)} on it"
        yield from _remedy(what, told, of(most))


def _holds(trial: Trial, what: str) -> bool:
    found = _figure(trial, what)
    return found is not None and found[0] <= found[1]


def _most(high: int, holds: Callable[[int], bool]) -> int:
    """The most, up to ``high``, that holds; 0 if none does."""
    low = 0
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if holds(middle) else (low, middle - 1)
    return low
