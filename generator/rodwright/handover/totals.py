"""What a unit takes of each stock."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.mass import weight
from rodwright.unit import Part, Stock, Unit


@dataclass(frozen=True, slots=True)
class StockTotal:
    """All parts of one stock: how many, what they take as first cut, and their weight.

    ``area`` in m2, ``metres`` of length, ``volume`` in m3, ``weight`` in kg (finished).
    Saw cuts and offcuts are not in it.
    """

    stock: Stock
    parts: int
    area: float
    metres: float
    volume: float
    weight: float


def stock_totals(unit: Unit) -> tuple[StockTotal, ...]:
    """Totals by stock, in the order in which stocks first occur."""
    gathered: dict[Stock, list[Part]] = {}
    for part in unit.parts:
        gathered.setdefault(part.blank.stock, []).append(part)
    return tuple(_total(stock, parts) for stock, parts in gathered.items())


def _total(stock: Stock, parts: list[Part]) -> StockTotal:
    sizes = [part.rough_size for part in parts]
    return StockTotal(
        stock,
        len(parts),
        sum(length * width for length, width, _ in sizes) / 1e6,
        sum(length for length, _, _ in sizes) / 1e3,
        sum(length * width * thickness for length, width, thickness in sizes) / 1e9,
        sum(map(weight, parts)),
    )
