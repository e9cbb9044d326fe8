"""The maker's costing as a workbook that reckons: change a rate, and every sum follows.

``Summary`` has the options side by side, ``Rates`` what may be changed, and each option has its own
``Materials`` and ``Labour``.  Amounts are formulas, rounded as in :mod:`rodwright.quote.costing`:
ROUND goes away from nothing at a half, as OpenFormula has it (OASIS, version 1.2, from memory).  No
amount is stored, so a program reckons them as it opens the file.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from openpyxl.worksheet.worksheet import Worksheet

from rodwright.handover.tables import new_workbook, print_on, workbook_bytes
from rodwright.lengths import LengthUnit
from rodwright.quote import cells
from rodwright.quote.costing import CONSUMABLES, TAKE_CONSUMABLES, Costing
from rodwright.quote.hours import MINUTES_IN, is_on_site
from rodwright.quote.levers import Lever
from rodwright.quote.rates import Rates
from rodwright.quote.workbook_rates import Addresses, price_key, rates_sheet
from rodwright.quote.workbook_summary import Lines, summary_sheet
from rodwright.trade.currencies import decimals_of


def costing_workbook(
    title: str,
    costings: Sequence[Costing],
    levers: Mapping[str, Sequence[Lever]],
    rates: Rates,
    unit: LengthUnit,
) -> bytes:
    """A workbook of a job's options (at least one).

    ``levers`` are by option; ``unit`` says which paper it is printed on.
    """
    book = new_workbook(title)
    summary = book.active
    at = rates_sheet(book.create_sheet(), costings, rates)
    decimals = decimals_of(rates.currency)
    found = []
    for number, costing in enumerate(costings, start=1):
        last = f" {number}" if len(costings) > 1 else ""
        materials = _materials(book.create_sheet(f"Materials{last}"), costing, at, decimals)
        labour = _labour(book.create_sheet(f"Labour{last}"), costing, at, decimals)
        found.append(Lines(costing, materials, labour))
    summary_sheet(summary, title, found, at, rates)
    _levers(book.create_sheet("What moves it"), costings, levers, rates)
    for sheet in book.worksheets:
        print_on(sheet, unit)
    summary.page_setup.fitToHeight = 1
    book.calculation.fullCalcOnLoad = True
    return workbook_bytes(book)


def _materials(sheet: Worksheet, costing: Costing, at: Addresses, decimals: int) -> int:
    """Fill a sheet with an option's materials; its last row."""
    titles = ("Kind", "What", "How counted", "Count", "For each", "Waste", "Price", "Amount")
    cells.widths(sheet, (12, 48, 26, 12, 10, 10, 12, 14))
    cells.heading(sheet, 1, _in(titles, costing), figures=4)
    counted = [each.material for each in costing.materials if each.material.kind != "consumables"]
    for row, each in enumerate(counted, start=2):
        price = at.prices[price_key(each)]
        cells.text(sheet, row, 1, each.kind)
        cells.text(sheet, row, 2, each.name)
        cells.text(sheet, row, 3, each.basis)
        cells.figure(sheet, row, 4, each.count, "0.###")
        cells.text(sheet, row, 5, each.per)
        cells.figure(sheet, row, 6, f"={at.waste}" if each.wasted else 0, "0.####\\ %")
        cells.figure(sheet, row, 7, f'=IF(ISNUMBER({price}),{price},"")', "0.00##")
        _amount(sheet, row, decimals)
    _consumables(sheet, len(counted) + 2, costing, at, decimals)
    sheet.freeze_panes = "A2"
    return len(counted) + 2


def _consumables(
    sheet: Worksheet, row: int, costing: Costing, at: Addresses, decimals: int
) -> None:
    """The last row of materials, by its share of those above; there even while that is nothing, so
    that it can be changed."""
    of = "+".join(f'SUMIF(A$1:A{row - 1},"{kind}",H$1:H{row - 1})' for kind in TAKE_CONSUMABLES)
    cells.text(sheet, row, 1, "consumables")
    cells.text(sheet, row, 2, CONSUMABLES)
    cells.text(sheet, row, 3, "share of materials")
    cells.figure(sheet, row, 4, f"=ROUND({of},{decimals})", cells.money_format(decimals))
    cells.text(sheet, row, 5, costing.currency)
    cells.figure(sheet, row, 6, 0, "0.####\\ %")
    cells.figure(sheet, row, 7, f"={at.consumables}", "0.####\\ %")
    _amount(sheet, row, decimals)


def _amount(sheet: Worksheet, row: int, decimals: int) -> None:
    """What a row of materials comes to."""
    amount = f'=IF(ISNUMBER(G{row}),ROUND(D{row}*(1+F{row})*G{row},{decimals}),"")'
    cells.figure(sheet, row, 8, amount, cells.money_format(decimals))


def _labour(sheet: Worksheet, costing: Costing, at: Addresses, decimals: int) -> int:
    """Fill a sheet with an option's labour; its last row."""
    titles = ("Stage", "What", "On site", "Count", "For each", "Minutes", "All min", "Amount")
    cells.widths(sheet, (14, 48, 10, 12, 16, 12, 12, 14))
    cells.heading(sheet, 1, _in(titles, costing), figures=4)
    for row, line in enumerate(costing.labour, start=2):
        each = line.operation
        minutes, hour = at.minutes.get(each.key), at.hour[each.stage]
        cells.text(sheet, row, 1, each.stage)
        cells.text(sheet, row, 2, each.name)
        cells.text(sheet, row, 3, "yes" if is_on_site(each) else "no")
        cells.figure(sheet, row, 4, each.count, "0.###")
        cells.text(sheet, row, 5, each.per)
        own = MINUTES_IN.get(each.per)
        said = f'=IF(ISNUMBER({minutes}),{minutes},"")' if own is None else own
        cells.figure(sheet, row, 6, said, "0.00")
        cells.figure(sheet, row, 7, f'=IF(ISNUMBER(F{row}),D{row}*F{row},"")', "0.0")
        amount = f'=IF(ISNUMBER(G{row}),ROUND(D{row}*F{row}/60*{hour},{decimals}),"")'
        cells.figure(sheet, row, 8, amount, cells.money_format(decimals))
    sheet.freeze_panes = "A2"
    return max(2, len(costing.labour) + 1)


def _in(titles: tuple[str, ...], costing: Costing) -> tuple[str, ...]:
    """Headings that say which option it is, and in which currency."""
    first, what, *others, amount = titles
    of = f": {costing.option}" if costing.option else ""
    return (first, f"{what}{of}", *others, f"{amount}, {costing.currency}")


def _levers(
    sheet: Worksheet,
    costings: Sequence[Costing],
    levers: Mapping[str, Sequence[Lever]],
    rates: Rates,
) -> None:
    rounding = ", before it is rounded up" if rates.round_up_to is not None else ""
    more = f"Total changes by, {rates.currency}{rounding}"
    cells.widths(sheet, (28, 48, 28, 20))
    cells.heading(sheet, 1, ("Option", "What", "Changed", more), figures=4)
    row = 1
    for costing in costings:
        for each in levers.get(costing.option, ()):
            row += 1
            cells.text(sheet, row, 1, costing.option)
            cells.text(sheet, row, 2, each.what)
            cells.text(sheet, row, 3, each.said)
            form = cells.money_format(decimals_of(rates.currency))
            cells.figure(sheet, row, 4, each.change, form)
    cells.text(sheet, row + 2, 1, "By the rates as they were read; this sheet doesn't follow them.")
    sheet.freeze_panes = "A2"
