"""The parts and fixings lists as CSV, XLSX and JSON.

Every writer gives bytes, the same for the same unit.  Lengths are in the unit's display
unit: numbers of millimetres to a tenth, or inches as text, with fractions to a 64th where these
are true.  Weights are in kg to a gram.
"""

from __future__ import annotations

import csv
import io
import math
import re
from collections.abc import Iterable, Sequence
from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from openpyxl import Workbook
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet
from openpyxl.writer.excel import ExcelWriter

from rodwright.handover.json_text import json_text
from rodwright.handover.lie import OWN_WORDS
from rodwright.handover.lists import FixingsRow, PartsRow, fixings_list, parts_list
from rodwright.lengths import LengthUnit, format_length
from rodwright.mass import unit_weight
from rodwright.parts import Unit

Cell = str | int | float

_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")
_NOT_XML = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""Characters that no XML document can hold: XML 1.0, production 2 (Char)."""
_LONE_FRACTION = re.compile("[0-9]+/[0-9]+")
_FIXED_DATE = datetime(2000, 1, 1)
_LEAST_WIDTH, _MOST_WIDTH = 8, 80  # characters
_LINE_HEIGHT = 15  # points
_LONGEST_HEADER = 120
"""Characters.  Spreadsheet programs take 255 at most, each ampersand doubled; from memory."""


@dataclass(frozen=True, slots=True)
class _Column:
    heading: str
    decimals: int | None = None
    """Decimals of a column of numbers; None for text."""
    widest: int = 18
    """Characters to a line before text is wrapped; a longer word still has its room."""


def parts_csv(unit: Unit) -> bytes:
    """The parts list as CSV: a heading row and one record for each row of the list.

    UTF-8 with a byte order mark, by which spreadsheets know it, and CRLF, quoted as RFC
    4180 has it.  Text that a spreadsheet would take for a formula gets an apostrophe in
    front, the usual guard; a lone fraction, which it would take for a date, is written with
    a whole number (``0 7/8``).
    """
    columns = (*_cutting_columns(unit.display_unit), *_FURTHER_COLUMNS)
    return _csv(
        columns,
        (
            [
                *_cutting_cells(row, unit.display_unit),
                round(row.weight_each, 3),
                "\n".join(row.workings),
                "\n".join(row.lie),
            ]
            for row in parts_list(unit)
        ),
    )


def fixings_csv(unit: Unit) -> bytes:
    """The fixings list as CSV, in the manner of :func:`parts_csv`."""
    return _csv(_FIXINGS_COLUMNS, map(_fixings_cells, fixings_list(unit)))


def lists_xlsx(unit: Unit) -> bytes:
    """The lists as a workbook: sheets of parts with totals, workings and, if any, fixings.

    The parts sheet is for cutting; the workings sheet has a row for each working and says
    how the pieces lie, and ends with a note on the words for a piece's surfaces.
    Text is stored as text whatever it begins with, so that none is taken for a formula;
    characters that XML can't hold are shown as U+FFFD.
    """
    book = Workbook()
    book.properties.creator = "Rodwright"
    title = _xml_text(unit.title)
    book.properties.title = title
    book.properties.created = book.properties.modified = _FIXED_DATE
    rows = parts_list(unit)
    columns = _cutting_columns(unit.display_unit)
    total: dict[str, Cell] = {
        "name": "total",
        "quantity": len(unit.parts),
        "weight kg": round(unit_weight(unit), 3),
    }
    sheet: Any = book.active
    _fill(
        sheet,
        "Parts",
        columns,
        [
            *(_cutting_cells(row, unit.display_unit) for row in rows),
            [total.get(column.heading, "") for column in columns],
        ],
    )
    for cell in sheet[sheet.max_row]:
        cell.font = Font(bold=True)
        cell.border = Border(top=Side("thin"))
    workings: Any = book.create_sheet()
    _fill(workings, "Workings", _WORKINGS_COLUMNS, list(_workings_cells(rows)))
    note = workings.cell(workings.max_row + 2, 1, OWN_WORDS)
    workings.merge_cells(None, note.row, 1, note.row, len(_WORKINGS_COLUMNS))
    note.font = Font(italic=True)
    note.alignment = Alignment(wrap_text=True, vertical="top")
    workings.row_dimensions[note.row].height = 4 * _LINE_HEIGHT
    fixings = fixings_list(unit)
    if fixings:
        _fill(book.create_sheet(), "Fixings", _FIXINGS_COLUMNS, list(map(_fixings_cells, fixings)))
    for each in book.worksheets:
        each.oddHeader.left.text = title[:_LONGEST_HEADER].replace("&", "&&")
        each.oddFooter.right.text = "&P of &N"
    buffer = io.BytesIO()
    # ExcelWriter is what Workbook.save uses, but it would set the time of day.
    ExcelWriter(book, _DatelessZip(buffer, "w", ZIP_DEFLATED)).save()
    return buffer.getvalue()


def parts_json(unit: Unit) -> bytes:
    """The lists as JSON: title, rows, fixings and totals; lengths in mm, weights in kg."""
    document = {
        "title": unit.title,
        "lengths": "mm",
        "weights": "kg",
        "workings_in": unit.display_unit,
        "words": OWN_WORDS,
        "parts": [_parts_record(row) for row in parts_list(unit)],
        "fixings": [{"name": row.name, "quantity": row.quantity} for row in fixings_list(unit)],
        "totals": {"parts": len(unit.parts), "weight": round(unit_weight(unit), 3)},
    }
    return json_text(document)


_FIXINGS_COLUMNS = (_Column("fixing"), _Column("quantity", 0))


_WORKINGS_COLUMNS = (
    _Column("refs"),
    _Column("name"),
    _Column("working", widest=80),
    _Column("how it lies", widest=40),
)
_FURTHER_COLUMNS = (_Column("weight each kg", 3), _Column("workings"), _Column("how it lies"))


def _cutting_columns(unit: LengthUnit) -> tuple[_Column, ...]:
    lengths = 1 if unit == "mm" else None
    return (
        _Column("refs"),
        _Column("name"),
        _Column("quantity", 0),
        _Column(f"length {unit}", lengths),
        _Column(f"width {unit}", lengths),
        _Column(f"thickness {unit}", lengths),
        _Column(f"rough length {unit}", lengths),
        _Column(f"rough width {unit}", lengths),
        _Column("stock"),
        _Column("material"),
        _Column("grain"),
        _Column("shows"),
        _Column("edges lipped"),
        _Column("weight kg", 3),
    )


def _cutting_cells(row: PartsRow, unit: LengthUnit) -> list[Cell]:
    def length(mm: float) -> Cell:
        text = format_length(mm, unit)
        if unit == "in":
            return text
        return float(text) if "." in text else int(text)

    return [
        ", ".join(row.refs),
        row.name,
        row.quantity,
        length(row.length),
        length(row.width),
        length(row.thickness),
        length(row.rough_length),
        length(row.rough_width),
        row.stock,
        row.material,
        str(row.grain),
        ", ".join(row.shows),
        ", ".join(row.lipped),
        round(row.weight, 3),
    ]


def _workings_cells(rows: Iterable[PartsRow]) -> Iterable[list[Cell]]:
    """A row for each working; how the pieces lie stands beside the first."""
    for row in rows:
        for at, working in enumerate(row.workings or ("none",)):
            lie = "" if at else "\n".join(row.lie)
            yield [", ".join(row.refs), row.name, working, lie]


def _fixings_cells(row: FixingsRow) -> list[Cell]:
    return [row.name, row.quantity]


def _parts_record(row: PartsRow) -> dict[str, Any]:
    return {
        **asdict(row),
        "quantity": row.quantity,
        "weight_each": round(row.weight_each, 3),
        "weight": round(row.weight, 3),
    }


def _csv(columns: Sequence[_Column], rows: Iterable[Sequence[Cell]]) -> bytes:
    text = io.StringIO(newline="")
    writer = csv.writer(text)
    writer.writerow([column.heading for column in columns])
    writer.writerows([_guarded(cell) for cell in row] for row in rows)
    return text.getvalue().encode("utf-8-sig")


def _guarded(cell: Cell) -> Cell:
    if not isinstance(cell, str):
        return cell
    if _LONE_FRACTION.fullmatch(cell):
        return f"0 {cell}"
    line = cell.replace("\n", "; ")
    return f"'{line}" if line.startswith(_FORMULA_STARTS) else line


def _fill(
    sheet: Worksheet, title: str, columns: Sequence[_Column], rows: Sequence[Sequence[Cell]]
) -> None:
    sheet.title = title
    lines = [1] * (1 + len(rows))
    for number, column in enumerate(columns, start=1):
        heading = sheet.cell(1, number, column.heading)
        heading.font = Font(bold=True)
        heading.fill = PatternFill("solid", fgColor="E8E8E8")
        heading.alignment = Alignment(wrap_text=True, vertical="bottom")
        for at, row in enumerate(rows, start=2):
            _put(sheet.cell(at, number), row[number - 1], column)
        texts = [str(row[number - 1]) for row in rows]
        width = _width(column, texts)
        sheet.column_dimensions[get_column_letter(number)].width = width
        for at, text in enumerate((column.heading, *texts)):
            wrapped = (math.ceil((len(line) or 1) / (width - 1)) for line in text.split("\n"))
            lines[at] = max(lines[at], sum(wrapped))
    for at, count in enumerate(lines, start=1):
        sheet.row_dimensions[at].height = _LINE_HEIGHT * count
    sheet.freeze_panes = "A2"
    sheet.print_title_rows = "1:1"
    sheet.page_setup.orientation = "landscape"
    sheet.page_setup.paperSize = sheet.PAPERSIZE_A4
    sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight = 1, 0
    sheet.sheet_properties.pageSetUpPr.fitToPage = True


def _width(column: _Column, texts: Sequence[str]) -> int:
    """Characters across a column: room for its words, and for its lines up to its widest."""
    words = [word for text in (column.heading, *texts) for word in text.split()]
    lines = [line for text in texts for line in text.split("\n")]
    longest_word, longest_line = max(map(len, words)), max(map(len, lines), default=0)
    width = max(min(longest_line, column.widest), longest_word) + 2
    return min(max(width, _LEAST_WIDTH), _MOST_WIDTH)


def _put(cell: Any, value: Cell, column: _Column) -> None:
    if value == "":
        return
    if isinstance(value, str):
        cell.value = _xml_text(value)
        cell.data_type = "s"
        cell.alignment = Alignment(wrap_text=True, vertical="top")
    else:
        cell.value = value
        decimals = column.decimals or 0
        whole = decimals == 0 or (column.decimals == 1 and value == int(value))
        cell.number_format = "0" if whole else f"0.{'0' * decimals}"
        cell.alignment = Alignment(vertical="top")


def _xml_text(text: str) -> str:
    return _NOT_XML.sub("\ufffd", text)


class _DatelessZip(ZipFile):
    """A zip archive whose members all bear the same date."""

    def writestr(self, name: Any, data: Any, *rest: Any) -> None:
        """Add a member from text or bytes."""
        member = ZipInfo(name, _FIXED_DATE.timetuple()[:6])
        member.compress_type = self.compression
        super().writestr(member, data, *rest)

    def write(self, filename: Any, arcname: Any = None, *rest: Any) -> None:
        """Add a member from a file."""
        with open(filename, "rb") as file:  # noqa: PTH123
            self.writestr(arcname, file.read(), *rest)
