"""What would help a unit that hangs on the wall, each worked out; millimetres, newtons."""

from __future__ import annotations

from collections.abc import Iterator
from math import floor

from rodwright.amounts import WEIGHTS
from rodwright.mass import unit_weight
from rodwright.strength.hanging_fixings import Hung
from rodwright.strength.results import Remedy
from rodwright.trade.sizes import BOARD_THICKNESSES, SHEET_THICKNESSES
from rodwright.unit import Unit

_WASHER = 20.0
"""Diameter of the washer under a head that is tried, mm."""
_HIGHER = (1.5, 2.0)
"""How much higher rails are tried."""


def lighter(unit: Unit, hung: Hung, limit: float) -> Iterator[Remedy]:
    """Less in it, in whole kg or lb, or two of it; kg."""
    weight, own = hung.kilograms, unit_weight(unit)
    measure = WEIGHTS[hung.measures]
    most = floor((limit - own) / measure.one + 1e-9)
    if most > 0:
        told = f"no more than {measure.said(most * measure.one, 0)} in it"
        yield Remedy(told, own + most * measure.one, holds=True)
    yield Remedy("made as two units that hang side by side", weight / 2, weight / 2 <= limit)


def stiffer_rail(
    hung: Hung, stress: float, limit: float, rail: tuple[float, float, str]
) -> Iterator[Remedy]:
    """A thicker ``rail`` (height, thickness, wood), the least that does, and higher ones; N/mm2."""
    high, thick, wood = rail
    thicker = [each for each in BOARD_THICKNESSES[hung.measures] if each > thick]
    for each in thicker:
        figure = stress * (thick / each) ** 2
        if figure <= limit or each == thicker[-1]:
            told = f"a rail of {wood}, {hung.long(high, each)}"
            yield Remedy(told, figure, figure <= limit)
            break
    for times in _HIGHER:
        told = f"a rail of {wood}, {hung.long(high * times, thick)}"
        yield Remedy(told, stress / times, stress / times <= limit)


def thicker_back(hung: Hung, stress: float, limit: float, thick: float) -> Iterator[Remedy]:
    """A thicker back, the least that does, and twice as many fixings; N/mm2."""
    for each in SHEET_THICKNESSES[hung.measures]:
        figure = stress * (thick / each) ** 2
        if each > thick and figure <= limit:
            yield Remedy(f"a back {hung.long(each)} thick", figure, holds=True)
            break
    yield Remedy("twice as many fixings at its top", stress / 2, stress / 2 <= limit)


def wider_heads(hung: Hung, force: float, limit: float, head: float) -> Iterator[Remedy]:
    """Twice as many fixings, and washers; N on each head, as if it were as wide as now."""
    yield Remedy("twice as many fixings at its top", force / 2, force / 2 <= limit)
    eased = force * (head / _WASHER) ** 2
    told = f"washers {hung.long(_WASHER)} wide under the heads"
    yield Remedy(told, eased, eased <= limit)
