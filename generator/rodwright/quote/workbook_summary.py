"""The first sheet of a costing's workbook: the options side by side, from lines to payments."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import get_args

from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet

from rodwright.quote import cells
from rodwright.quote.costing import Costing
from rodwright.quote.counted import MaterialKind, Stage
from rodwright.quote.rates import Rates
from rodwright.quote.workbook_rates import Addresses
from rodwright.trade.currencies import decimals_of


@dataclass(frozen=True, slots=True)
class Lines:
    """An option, and the last rows of its materials and its labour."""

    costing: Costing
    last_material: int
    last_labour: int


@dataclass(frozen=True, slots=True)
class _Column:
    """An option's column: the ranges of its lines, and its own letter."""

    lines: Lines
    letter: str
    number: str

    def materials(self, column: str) -> str:
        return f"'Materials{self.number}'!${column}$2:${column}${self.lines.last_material}"

    def labour(self, column: str) -> str:
        return f"'Labour{self.number}'!${column}$2:${column}${self.lines.last_labour}"


_Formula = Callable[[_Column], str]
"""What stands in an option's column, without the equals sign."""


class _Table:
    """Rows of formulas, one cell for each option."""

    def __init__(self, sheet: Worksheet, columns: Sequence[_Column], form: str) -> None:
        self._sheet, self._columns, self._form = sheet, columns, form
        self._row = 2

    def headed(self, title: str, what: str) -> None:
        self._row += 1
        names = [each.lines.costing.option or what for each in self._columns]
        cells.heading(self._sheet, self._row, (title, *names), figures=2)
        self._row += 1

    def add(self, label: str, formula: _Formula, form: str = "", *, bold: bool = False) -> int:
        """A row; its number."""
        row = self._row
        cells.text(self._sheet, row, 1, label, bold=bold)
        for number, each in enumerate(self._columns, start=2):
            said = f"={formula(each)}"
            cells.figure(self._sheet, row, number, said, form or self._form, bold=bold)
        self._row += 1
        return row


def summary_sheet(
    sheet: Worksheet, title: str, options: Sequence[Lines], at: Addresses, rates: Rates
) -> None:
    """Fill the sheet."""
    sheet.title = "Summary"
    cells.text(sheet, 1, 1, title, bold=True)
    cells.widths(sheet, (44, *[22] * len(options)))
    columns = [
        _Column(each, get_column_letter(number + 1), f" {number}" if len(options) > 1 else "")
        for number, each in enumerate(options, start=1)
    ]
    decimals = decimals_of(rates.currency)
    table = _Table(sheet, columns, cells.money_format(decimals))
    missing = _costs(table, rates, decimals)
    labour = _price(table, at, rates, decimals, missing)
    _time(table, at, decimals, missing, labour)


@dataclass(frozen=True, slots=True)
class _Cost:
    """Rows of what the prices are made of."""

    missing: int
    labour: int
    cost: int


def _costs(table: _Table, rates: Rates, decimals: int) -> _Cost:
    table.headed("Cost", rates.currency)
    for kind in get_args(MaterialKind):
        table.add(kind, _materials_of(kind, decimals))
    materials = table.add("materials", lambda c: _all(c.materials("H"), decimals), bold=True)
    for stage in get_args(Stage):
        table.add(stage, _labour_of(stage, decimals))
    labour = table.add("labour", lambda c: _all(c.labour("H"), decimals), bold=True)
    cost = table.add(
        "cost",
        lambda c: f"ROUND({c.letter}{materials}+{c.letter}{labour},{decimals})",
        bold=True,
    )
    missing = table.add("prices and minutes that are missing", _missing, "0")
    return _Cost(missing, labour, cost)


def _all(amounts: str, decimals: int) -> str:
    return f"ROUND(SUM({amounts}),{decimals})"


def _materials_of(kind: MaterialKind, decimals: int) -> _Formula:
    return lambda c: f'ROUND(SUMIF({c.materials("A")},"{kind}",{c.materials("H")}),{decimals})'


def _labour_of(stage: Stage, decimals: int) -> _Formula:
    return lambda c: f'ROUND(SUMIF({c.labour("A")},"{stage}",{c.labour("H")}),{decimals})'


def _hours_of(stage: Stage) -> _Formula:
    return lambda c: f'ROUND(SUMIF({c.labour("A")},"{stage}",{c.labour("G")})/60,2)'


def _missing(column: _Column) -> str:
    costing = column.lines.costing
    count = column.lines.last_material - 1 + len(costing.labour)
    return f"{count}-COUNT({column.materials('H')})-COUNT({column.labour('H')})"


def _price(table: _Table, at: Addresses, rates: Rates, decimals: int, rows: _Cost) -> int:
    """From cost to payments; the row of the margin."""

    def unless_missing(formula: Callable[[str], str]) -> _Formula:
        return lambda c: f'IF({c.letter}{rows.missing}>0,"",ROUND({formula(c.letter)},{decimals}))'

    table.headed("Price", rates.currency)
    cost, step = rows.cost, at.round_up_to
    overhead = table.add("overhead", unless_missing(lambda c: f"{c}{cost}*{at.overhead}"))
    exact = table.add(
        "price before tax, before it is rounded up",
        unless_missing(lambda c: f"({c}{cost}+{c}{overhead})/(1-{at.margin})"),
    )
    net = table.add(
        "price before tax",
        unless_missing(
            lambda c: f"IF(N({step})>0,{step}*ROUNDUP(ROUND({c}{exact}/{step},9),0),{c}{exact})"
        ),
        bold=True,
    )
    margin = table.add(
        "margin in it", unless_missing(lambda c: f"{c}{net}-{c}{cost}-{c}{overhead}")
    )
    tax = table.add(rates.tax_name or "tax", unless_missing(lambda c: f"{c}{net}*{at.tax}"))
    total = table.add("total", unless_missing(lambda c: f"{c}{net}+{c}{tax}"), bold=True)
    table.headed("Payments", rates.currency)
    first = total + 3
    for number, (each, share) in enumerate(zip(rates.deposits, at.deposits, strict=True)):
        before = f"-SUM({{c}}{first}:{{c}}{first + number - 1})" if number else ""
        left = f"{{c}}{total}{before}"
        is_last = number == len(rates.deposits) - 1
        said = left if is_last else f"MIN(ROUND({{c}}{total}*{share},{decimals}),{left})"
        table.add(each.when, unless_missing(_in_column(said)))
    return margin


def _in_column(formula: str) -> Callable[[str], str]:
    return lambda column: formula.format(c=column)


def _time(table: _Table, at: Addresses, decimals: int, costs: _Cost, margin: int) -> None:
    table.headed("Time", "h")
    rows = [table.add(f"hours of {stage}", _hours_of(stage), "0.00") for stage in get_args(Stage)]
    table.add(
        "all hours",
        lambda c: f"ROUND(SUM({c.letter}{rows[0]}:{c.letter}{rows[-1]}),2)",
        "0.00",
        bold=True,
    )
    table.add(
        "days on site",
        lambda c: (
            f'ROUND(SUMIF({c.labour("C")},"yes",{c.labour("G")})'
            f"/(60*{at.hours_a_day}*{at.fitters}),2)"
        ),
        "0.00",
    )
    table.add(
        "labour and margin for each hour",
        lambda c: (
            f'IF(OR({c.letter}{costs.missing}>0,SUM({c.labour("G")})=0),"",'
            f"ROUND(({c.letter}{costs.labour}+{c.letter}{margin})*60/SUM({c.labour('G')}),{decimals}))"
        ),
    )
