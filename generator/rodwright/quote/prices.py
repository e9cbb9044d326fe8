"""Prices of a rates file by the words of specs and lists."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import ROUND_HALF_UP, Decimal

from rodwright.cutting.offer import plain_material
from rodwright.lengths import LengthUnit, format_length
from rodwright.quote.rates import Price, Rates
from rodwright.unit import Stock

_TEN_THOUSANDTH = Decimal("0.0001")


def price_for(rates: Rates, keys: Iterable[str]) -> tuple[str, Price] | None:
    """The first of some keys that the rates have a price for, as they write it, and that price.

    Capitals, commas, hyphens and how many blanks there are make no difference; neither does by
    which of its names a material is called.
    """
    said = {plain(key): (key, price) for key, price in rates.prices.items()}
    return next((said[word] for key in keys if (word := plain(key)) in said), None)


def plain(key: str) -> str:
    """A price's key as it is compared: its material by its one name, and the sizes that follow."""
    words = key.lower().replace(",", " ").split()
    cut = next((at for at, word in enumerate(words) if word[0].isdigit()), len(words))
    named = plain_material(" ".join(words[:cut]))
    return " ".join([named, *words[cut:]]).replace("-", " ").strip()


def stock_keys(stock: Stock, unit: LengthUnit) -> tuple[str, ...]:
    """What a rates file may call a stock: `birch plywood 18 mm`, its thickness in ``unit`` or in
    the other one; boards also by their material alone, since those of any thickness are sold by
    volume.  The first is what it is called where it has no price."""
    thick = tuple(_thick(stock, each) for each in _units(unit))
    return thick if stock.kind == "sheet" else (*thick, stock.described)


def sized_keys(stock: Stock, size: tuple[float, float], unit: LengthUnit) -> Iterator[str]:
    """What it may call one of a length and width (mm), said either way round and in either unit:
    `birch plywood 18 mm, 2440 x 1220`."""
    for each in _units(unit):
        long, wide = (format_length(length, each) for length in size)
        yield f"{_thick(stock, each)}, {long} x {wide}"
        yield f"{_thick(stock, each)}, {wide} x {long}"


def _units(first: LengthUnit) -> tuple[LengthUnit, LengthUnit]:
    return ("mm", "in") if first == "mm" else ("in", "mm")


def _thick(stock: Stock, unit: LengthUnit) -> str:
    return f"{stock.described} {format_length(stock.thickness, unit)} {unit}"


def money(amount: float) -> Decimal:
    """A price of a spec or a rack as a decimal: to four decimals, halves up.

    Those prices are floats, and this is the one door where they become decimals.
    """
    return Decimal(repr(float(amount))).quantize(_TEN_THOUSANDTH, ROUND_HALF_UP)
