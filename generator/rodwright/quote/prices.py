"""Prices of a rates file by the words of specs and lists."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import ROUND_HALF_UP, Decimal

from rodwright.cutting.offer import plain_material
from rodwright.lengths import format_length
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


def stock_keys(stock: Stock, rates: Rates) -> tuple[str, ...]:
    """What a rates file calls a stock: `birch plywood 18 mm`; boards also by their material alone,
    since those of any thickness are sold by volume."""
    thick = f"{stock.described} {format_length(stock.thickness, rates.unit)} {rates.unit}"
    return (thick,) if stock.kind == "sheet" else (thick, stock.described)


def sized_keys(key: str, size: tuple[float, float], rates: Rates) -> tuple[str, str]:
    """What a rates file calls a stock's piece of a length and width (mm), said either way round:
    `birch plywood 18 mm, 2440 x 1220`."""
    long, wide = (format_length(each, rates.unit) for each in size)
    return f"{key}, {long} x {wide}", f"{key}, {wide} x {long}"


def money(amount: float) -> Decimal:
    """A price of a spec or a rack as a decimal: to four decimals, halves up.

    Those prices are floats, and this is the one door where they become decimals.
    """
    return Decimal(repr(float(amount))).quantize(_TEN_THOUSANDTH, ROUND_HALF_UP)
