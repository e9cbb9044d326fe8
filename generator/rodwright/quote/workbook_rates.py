"""The sheet of a costing's workbook that holds what a maker may change."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import get_args

from openpyxl.worksheet.worksheet import Worksheet

from rodwright.quote import cells
from rodwright.quote.costing import Costing
from rodwright.quote.counted import Material, Operation, Stage
from rodwright.quote.hours import MINUTES_IN, minutes_of
from rodwright.quote.rates import Rates
from rodwright.trade.currencies import decimals_of

PriceKey = tuple[str, str, str, str]


def price_key(material: Material) -> PriceKey:
    """What tells one price from another."""
    return material.kind, material.name, material.per, str(material.price)


@dataclass(frozen=True, slots=True)
class Addresses:
    """Where the figures of the sheet of rates are, as formulas of other sheets call them.

    ``minutes`` are by operation, ``prices`` by :func:`price_key`; what is counted in hours or
    minutes isn't among them.
    """

    hour: dict[Stage, str]
    waste: str
    consumables: str
    overhead: str
    margin: str
    tax: str
    round_up_to: str
    hours_a_day: str
    fitters: str
    deposits: tuple[str, ...]
    minutes: dict[str, str]
    prices: dict[PriceKey, str]


class _Rows:
    """Rows written one below the other."""

    def __init__(self, sheet: Worksheet) -> None:
        self.sheet, self.row = sheet, 0

    def next(self, label: str, what: str = "") -> int:
        self.row += 1
        cells.text(self.sheet, self.row, 1, label)
        cells.text(self.sheet, self.row, 3, what)
        return self.row

    def headed(self, label: str, value: str, what: str) -> None:
        self.row += 2 if self.row else 1
        cells.heading(self.sheet, self.row, (label, value, what), figures=2)
        cells.text(self.sheet, self.row, 3, what, bold=True)


def rates_sheet(sheet: Worksheet, costings: Sequence[Costing], rates: Rates) -> Addresses:
    """Fill the sheet, and say where everything is."""
    sheet.title = "Rates"
    cells.widths(sheet, (52, 14, 64))
    rows = _Rows(sheet)
    rows.headed("Rates", "", "Change what stands in a box; all sheets follow.")
    return Addresses(
        hour=_hours(rows, rates),
        **_shares(rows, rates),
        **_on_site(rows, rates),
        deposits=_deposits(rows, rates),
        minutes=_minutes(rows, costings, rates),
        prices=_prices(rows, costings, rates),
    )


def _hours(rows: _Rows, rates: Rates) -> dict[Stage, str]:
    rows.headed("An hour of work", rates.currency, "At each stage")
    form = cells.money_format(decimals_of(rates.currency))
    return {
        stage: cells.changeable(rows.sheet, rows.next(stage), 2, rates.hour[stage], form)
        for stage in get_args(Stage)
    }


def _shares(rows: _Rows, rates: Rates) -> dict[str, str]:
    rows.headed("Shares", "", "Of what")
    said = (
        ("waste", rates.waste, "of the net area or run, where there is no cutting plan"),
        ("consumables", rates.consumables, "of stock, edging, hardware and finish"),
        ("overhead", rates.overhead, "of materials and labour"),
        ("margin", rates.margin, "of the price before tax, not of the cost"),
        ("tax", rates.tax, f"of the price before tax: {rates.tax_name}".removesuffix(": ")),
    )
    found = {key: cells.share(rows.sheet, rows.next(key, of), 2, value) for key, value, of in said}
    row = rows.next("round up to", "a multiple of this, before tax; empty: to the smallest coin")
    return found | {"round_up_to": cells.changeable(rows.sheet, row, 2, rates.round_up_to)}


def _on_site(rows: _Rows, rates: Rates) -> dict[str, str]:
    rows.headed("On site", "", "")
    day = cells.changeable(rows.sheet, rows.next("hours a day"), 2, rates.hours_a_day)
    fitters = cells.changeable(rows.sheet, rows.next("fitters"), 2, rates.fitters)
    return {"hours_a_day": day, "fitters": fitters}


def _deposits(rows: _Rows, rates: Rates) -> tuple[str, ...]:
    rows.headed("Payments", "", "Of the total; the last one is the rest, whatever stands here")
    return tuple(
        cells.share(rows.sheet, rows.next(each.when), 2, each.share) for each in rates.deposits
    )


def _minutes(rows: _Rows, costings: Sequence[Costing], rates: Rates) -> dict[str, str]:
    rows.headed("Minutes", "min", "For each")
    found: dict[str, str] = {}
    for each in _operations(costings):
        if each.key not in found and each.per not in MINUTES_IN:
            minutes = minutes_of(each, rates.minutes)
            row = rows.next(each.name, each.per)
            found[each.key] = cells.changeable(rows.sheet, row, 2, minutes)
    return found


def _operations(costings: Sequence[Costing]) -> Iterable[Operation]:
    stages = get_args(Stage)
    every = (line.operation for each in costings for line in each.labour)
    return sorted(every, key=lambda each: stages.index(each.stage))


def _prices(rows: _Rows, costings: Sequence[Costing], rates: Rates) -> dict[PriceKey, str]:
    rows.headed("Prices", rates.currency, "For each")
    found: dict[PriceKey, str] = {}
    for each in (line.material for costing in costings for line in costing.materials):
        key = price_key(each)
        if key not in found and each.kind != "consumables":
            found[key] = cells.changeable(rows.sheet, rows.next(each.name, each.per), 2, each.price)
    return found
