"""The lists as CSV and XLSX.

Every writer gives bytes, the same for the same unit.  Lengths are in the unit's display
unit: numbers of millimetres to a tenth, or of inches, which a workbook shows as fractions to the
nearest 64th and CSV gives as decimals with the fraction beside them.  Metres of edging and kg, or
feet and pounds.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from openpyxl.styles import Alignment, Border, Font, Side

from rodwright.amounts import AREAS, RUNS, VOLUMES, WEIGHTS
from rodwright.handover.edge_list import ALLOWANCE, EdgeRow, edge_list
from rodwright.handover.lists import HardwareRow, PartsRow, hardware_list, parts_list
from rodwright.handover.tables import (
    LINE_HEIGHT,
    Cell,
    Column,
    csv_bytes,
    fill_sheet,
    length_cell,
    length_column,
    new_workbook,
    workbook_bytes,
)
from rodwright.handover.totals import StockTotal, stock_totals
from rodwright.lengths import LengthUnit
from rodwright.mass import unit_weight
from rodwright.unit import Unit
from rodwright.unit.orientation import OWN_WORDS
from rodwright.unit.shop_part import PartsKind


def parts_csv(unit: Unit, kind: PartsKind = "cut") -> bytes:
    """The parts list as CSV, with a record for each row of the list."""
    rows = parts_list(unit, kind)
    finish = _has_finish(rows)
    columns = (*_cutting_columns(unit.display_unit, finish), *_FURTHER_COLUMNS)
    return csv_bytes(
        columns,
        (
            [
                *_cutting_cells(row, unit.display_unit, finish),
                row.measured,
                "\n".join(row.workings),
                "\n".join((*row.set_up, *row.lie)),
            ]
            for row in rows
        ),
    )


def hardware_csv(unit: Unit) -> bytes:
    """The hardware list as CSV."""
    return csv_bytes(_HARDWARE_COLUMNS, map(_hardware_cells, hardware_list(unit)))


def edges_csv(unit: Unit) -> bytes:
    """The edge list as CSV."""
    shown = unit.display_unit
    return csv_bytes(_edge_columns(shown), (_edge_cells(row, shown) for row in edge_list(unit)))


def lists_xlsx(unit: Unit, kind: PartsKind = "cut") -> bytes:
    """The lists as a workbook: parts with totals, workings, stock, and hardware and edges if any.

    The parts sheet is for cutting; the workings sheet has a row for each working and says
    how the pieces lie, and ends with a note on the words for a piece's surfaces.
    """
    shown = unit.display_unit
    book = new_workbook(unit.title)
    rows = parts_list(unit, kind)
    finish = _has_finish(rows)
    columns = _cutting_columns(shown, finish)
    total: dict[str, Cell] = {
        "name": "total",
        "quantity": len(unit.parts),
        f"{WEIGHTS[shown].symbol} all": _weight(unit_weight(unit), shown),
    }
    sheet: Any = book.active
    fill_sheet(
        sheet,
        "Parts",
        columns,
        [
            *(_cutting_cells(row, shown, finish) for row in rows),
            [total.get(column.heading, "") for column in columns],
        ],
        shown,
    )
    for cell in sheet[sheet.max_row]:
        cell.font = Font(bold=True)
        cell.border = Border(top=Side("thin"))
    workings: Any = book.create_sheet()
    fill_sheet(workings, "Workings", _WORKINGS_COLUMNS, list(_workings_cells(rows)), shown)
    note = workings.cell(workings.max_row + 2, 1, OWN_WORDS)
    workings.merge_cells(None, note.row, 1, note.row, len(_WORKINGS_COLUMNS))
    note.font = Font(italic=True)
    note.alignment = Alignment(wrap_text=True, vertical="top")
    workings.row_dimensions[note.row].height = 4 * LINE_HEIGHT
    stock = [_stock_cells(total, shown) for total in stock_totals(unit)]
    fill_sheet(book.create_sheet(), "Stock", _stock_columns(shown), stock, shown)
    hardware, edges = hardware_list(unit), edge_list(unit)
    if hardware:
        cells = list(map(_hardware_cells, hardware))
        fill_sheet(book.create_sheet(), "Hardware", _HARDWARE_COLUMNS, cells, shown)
    if edges:
        cells = [_edge_cells(row, shown) for row in edges]
        fill_sheet(book.create_sheet(), "Edges", _edge_columns(shown), cells, shown)
    return workbook_bytes(book)


_WORKINGS_COLUMNS = (
    Column("refs"),
    Column("name"),
    Column("measured"),
    Column("working", widest=80),
    Column("how it lies", widest=60),
)
_FURTHER_COLUMNS = (Column("measured"), Column("workings"), Column("how it lies"))
_HARDWARE_COLUMNS = (
    Column("hardware", widest=30),
    Column("size"),
    Column("quantity", 0),
    Column("holes", widest=40),
    Column("for", widest=50),
)


def _has_finish(rows: Iterable[PartsRow]) -> bool:
    """Whether anything is said of what parts are finished with: else there is no column for it."""
    return any(row.finish for row in rows)


def _cutting_columns(unit: LengthUnit, finish: bool) -> tuple[Column, ...]:
    return (
        Column("refs"),
        Column("name"),
        Column("quantity", 0),
        length_column("length", unit),
        length_column("width", unit),
        length_column("thickness", unit),
        length_column("rough length", unit),
        length_column("rough width", unit),
        Column("stock"),
        Column("material"),
        Column("grain"),
        Column("shows"),
        Column("edges lipped"),
        Column("edging on"),
        *([Column("finish", widest=24)] if finish else []),
        Column(f"{WEIGHTS[unit].symbol} each", 3),
        Column(f"{WEIGHTS[unit].symbol} all", 3),
    )


def _cutting_cells(row: PartsRow, unit: LengthUnit, finish: bool) -> list[Cell]:
    return [
        ", ".join(row.refs),
        row.name,
        row.quantity,
        length_cell(row.length, unit),
        length_cell(row.width, unit),
        length_cell(row.thickness, unit),
        length_cell(row.rough_length, unit),
        length_cell(row.rough_width, unit),
        row.stock,
        row.material,
        str(row.grain),
        ", ".join(row.shows),
        ", ".join(row.lipped),
        ", ".join(row.edged),
        *([row.finish] if finish else []),
        _weight(row.weight_each, unit),
        _weight(row.weight, unit),
    ]


def _weight(kg: float, unit: LengthUnit) -> float:
    return round(WEIGHTS[unit].of(kg), 3)


def _workings_cells(rows: Iterable[PartsRow]) -> Iterable[list[Cell]]:
    """A row for each working; how the pieces lie stands beside the first."""
    for row in rows:
        for at, working in enumerate(row.workings or ("none",)):
            lie = "" if at else "\n".join((*row.set_up, *row.lie))
            yield [", ".join(row.refs), row.name, row.measured, working, lie]


def _hardware_cells(row: HardwareRow) -> list[Cell]:
    return [row.name, row.size, row.quantity, "\n".join(row.holes), "\n".join(row.uses)]


def _edge_columns(unit: LengthUnit) -> tuple[Column, ...]:
    return (
        Column("kind"),
        Column("material", widest=30),
        Column("stock"),
        length_column("thickness", unit),
        length_column("width", unit),
        Column("strips", 0),
        Column(f"net {RUNS[unit].symbol}", 2),
        Column(f"to get {RUNS[unit].symbol} (with {ALLOWANCE:.0%})", 1),
        Column("on", widest=50),
    )


def _edge_cells(row: EdgeRow, unit: LengthUnit) -> list[Cell]:
    return [
        row.kind,
        row.material,
        row.stock,
        length_cell(row.thickness, unit),
        length_cell(row.width, unit),
        row.strips,
        round(RUNS[unit].of(row.net), 2),
        row.run_to_get(RUNS[unit]),
        ", ".join(row.refs),
    ]


def _stock_columns(unit: LengthUnit) -> tuple[Column, ...]:
    return (
        Column("stock"),
        Column("material", widest=30),
        length_column("thickness", unit),
        Column("parts", 0),
        Column(f"area {AREAS[unit].symbol}", 2),
        Column(f"run {RUNS[unit].symbol}", 2),
        Column(f"volume {VOLUMES[unit].symbol}", 4 if unit == "mm" else 2),
        Column(f"{WEIGHTS[unit].symbol} all", 3),
    )


def _stock_cells(total: StockTotal, unit: LengthUnit) -> list[Cell]:
    """Sheets are told by their area, boards by their run and volume."""
    sheet = total.stock.kind == "sheet"
    return [
        total.stock.name,
        total.stock.described,
        length_cell(total.stock.thickness, unit),
        total.parts,
        round(AREAS[unit].of(total.area), 2) if sheet else "",
        "" if sheet else round(RUNS[unit].of(total.metres), 2),
        "" if sheet else round(VOLUMES[unit].of(total.volume), 4 if unit == "mm" else 2),
        _weight(total.weight, unit),
    ]
