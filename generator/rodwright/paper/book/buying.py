"""What to buy: sheets and boards by the cutting plan, and hardware."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from rodwright.amounts import AREAS, RUNS
from rodwright.cutting.shopping import ShoppingRow, shopping_rows, without_price
from rodwright.cutting.whole import Cutting
from rodwright.handover.cut_words import (
    money,
    offer_title,
    one_more_lines,
    row_said,
    size_said,
    to_pay_said,
)
from rodwright.handover.edge_list import edge_list
from rodwright.handover.totals import stock_totals
from rodwright.lengths import format_length
from rodwright.paper.lists.boxes import boxes_of
from rodwright.paper.sections import Section
from rodwright.unit import Unit


def buying_section(unit: Unit, cutting: Cutting | None) -> Section:
    """The shopping list: wood by the cutting plan, or by the area where there is none; edging and
    hardware."""
    measure = unit.display_unit
    runs = RUNS[measure]
    data: dict[str, Any] = {
        "unit": measure,
        "planned": cutting is not None,
        "wood": [] if cutting is None else list(_bought(cutting)),
        "net": [] if cutting is not None else list(_net(unit)),
        "notes": [] if cutting is None else list(_notes(cutting)),
        "edges": [
            [
                row.kind,
                f"{row.material}, {format_length(row.thickness, measure)} x "
                f"{format_length(row.width, measure)} {measure}",
                f"{row.run_to_get(runs):.1f} {runs.symbol}",
            ]
            for row in edge_list(unit)
        ],
        "hardware": [[str(each.buy), each.name, each.size] for each in boxes_of(unit).articles],
    }
    return Section("buying", "What to buy", data)


def _bought(cutting: Cutting) -> Iterator[list[str]]:
    for row in shopping_rows(cutting):
        if row.offer.at_hand:
            continue
        lot = cutting.lots[row.lot].lot
        size = size_said(lot, row.supply.length, row.supply.width, cutting.unit)
        yield [
            str(row.count),
            offer_title(lot, row.offer, cutting.unit),
            f"{size}{' *' if row.offer.assumed else ''}",
            *(_price(row.each), _price(row.sum)),
        ]


def _price(amount: float | None) -> str:
    return "?" if amount is None else money(amount)


def _net(unit: Unit) -> Iterator[list[str]]:
    shown = unit.display_unit
    for total in stock_totals(unit):
        sheet = total.stock.kind == "sheet"
        yield [
            f"{total.stock.described}, {format_length(total.stock.thickness, shown)} {shown}",
            AREAS[shown].said(total.area) if sheet else RUNS[shown].said(total.metres),
        ]


def _notes(cutting: Cutting) -> Iterator[str]:
    rows = shopping_rows(cutting)
    bought: list[ShoppingRow] = [row for row in rows if not row.offer.at_hand]
    if bought:
        yield f"To pay: {to_pay_said(rows)}, without tax, edging and hardware."
    else:
        yield "No wood has to be bought."
    if lacking := without_price(rows):
        yield f"Without a price: {'; '.join(row_said(cutting, row) for row in lacking)}."
    if any(row.offer.assumed for row in bought):
        yield "* A usual size, assumed: ask what is sold, and say it in the stock."
    for row in rows:
        if row.offer.at_hand:
            where = f" ({row.offer.where})" if row.offer.where else ""
            yield f"At hand: {row.supply.name}{where}: {row_said(cutting, row)}."
    yield from (f"{line}." for line in one_more_lines(cutting))
