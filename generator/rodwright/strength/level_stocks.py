"""What a level could be made of instead, and what that costs; mm."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rodwright.strength.level_states import LevelState
from rodwright.strength.level_trials import LIPPING_WIDTH
from rodwright.trade.materials import MATERIALS
from rodwright.trade.mechanics import Family, mechanics_of
from rodwright.trade.sizes import BOARD_THICKNESSES, PRESSED_THICKNESSES, SHEET_THICKNESSES
from rodwright.unit import Part, Stock, Unit

COMMON: dict[str, tuple[str, ...]] = {
    "sheet": ("birch plywood",),
    "board": ("european oak", "european beech", "european ash"),
}
"""What is sold nearly everywhere and stiffer than most (common practice, no source)."""
_THICKER = 3
"""How many of the next thicknesses are tried."""
_PRESSED = (Family.MDF, Family.CHIPBOARD)
_ALIKE = 0.5
"""Thicknesses that differ by less, mm, are one."""


def thicker(unit: Unit, own: Stock) -> Iterator[Stock]:
    """The next thicknesses in which a material is sold, but those that the spec has itself."""
    sold = _sold(unit, own, own.material)
    there = [stock.thickness for stock in _stocks(unit) if stock.material == own.material]
    next_ones = [each for each in sold if each > own.thickness + _ALIKE][:_THICKER]
    for thickness in next_ones:
        if all(abs(thickness - each) > _ALIKE for each in there):
            yield from _made(unit, own, own.material, thickness)


def others(unit: Unit, own: Stock) -> Iterator[Stock]:
    """Other stocks of the spec that could make it, and common materials as thick as its own."""
    there = [
        stock
        for stock in _stocks(unit)
        if stock != own and stock.thickness > own.thickness - 3 and stock.kind == own.kind
    ]
    yield from there
    for material in COMMON[own.kind]:
        if material != own.material and all(stock.material != material for stock in there):
            sold = _sold(unit, own, material)
            for thickness in _nearest(sold, own.thickness):
                yield from _made(unit, own, material, thickness)


def _sold(unit: Unit, own: Stock, material: str) -> tuple[float, ...]:
    """The thicknesses in which a material is sold."""
    if own.kind == "board":
        return BOARD_THICKNESSES[unit.display_unit]
    known = mechanics_of(material, own.thickness, unit.loading.service_class)
    pressed = known is not None and known.family in _PRESSED
    return (PRESSED_THICKNESSES if pressed else SHEET_THICKNESSES)[unit.display_unit]


def _nearest(sold: tuple[float, ...], wanted: float) -> tuple[float, ...]:
    """The thickness that is sold, or those next below and next above it."""
    if any(abs(each - wanted) < _ALIKE for each in sold):
        return (wanted,)
    below = [each for each in sold if each < wanted]
    above = [each for each in sold if each > wanted]
    return (*below[-1:], *above[:1])


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


def is_glass(stock: Stock) -> bool:
    """Whether a stock is glass, to which nothing is glued and into which nothing is screwed."""
    return stock.mechanics is not None and stock.mechanics.family is Family.GLASS


def strip_stock(unit: Unit, own: Stock) -> Stock:
    """What a lipping comes out of: the spec's own solid wood, or else what the level is of."""
    boards = [
        stock
        for stock in _stocks(unit)
        if stock.kind == "board" and stock.mechanics and stock.thickness >= LIPPING_WIDTH - 3
    ]
    return min(boards, key=lambda stock: stock.thickness, default=own)


def price(state: LevelState, stock: Stock, layers: int) -> float | None:
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


def dearer(state: LevelState, stock: Stock) -> float | None:
    """What a stock costs more than the one it takes the place of."""
    layers = len(state.level.panels)
    new = price(state, stock, layers)
    old = price(state, state.level.main.blank.stock, layers)
    return None if new is None or old is None else new - old


def of_strip(state: LevelState, strip: Stock) -> float | None:
    """What a lipping out of a board costs, by its run."""
    if strip.kind != "board" or strip.price is None:
        return None
    return strip.price * state.level.main.blank.length / 1000
