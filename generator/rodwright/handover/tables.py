"""Tables as CSV and as sheets of a workbook, the same bytes for the same table."""

from __future__ import annotations

import csv
import io
import math
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from openpyxl import Workbook
from openpyxl.styles import Alignment, Font, PatternFill
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet
from openpyxl.writer.excel import ExcelWriter

from rodwright.lengths import LengthUnit, format_length, to_inches


@dataclass(frozen=True, slots=True)
class Inches:
    """A length in mm that is shown in inches."""

    mm: float

    def __str__(self) -> str:
        return format_length(self.mm, "in")

    @property
    def decimal(self) -> float:
        """Inches, true to a ten-thousandth."""
        return round(self.mm / 25.4, 4)


Cell = str | int | float | Inches

_FORMULA = re.compile(r"""[\s"']*[=+@＝＋－＠-]|[\t\r\n]""")
"""The beginning of what a spreadsheet may take for a formula, once it has dropped spaces and
quotes: OWASP's page "CSV Injection" (from memory)."""
_NOT_XML = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""Characters that no XML document can hold: XML 1.0, production 2 (Char)."""
_LONE_FRACTION = re.compile("[0-9]+/[0-9]+")
"""What a spreadsheet takes for a date."""
_AS_FRACTION = "# ??/??"
"""Number format (ECMA-376, 18.8.31) that shows every 64th as its reduced fraction."""
_FIXED_DATE = datetime(2000, 1, 1)
_LEAST_WIDTH, _MOST_WIDTH = 8, 80  # characters
_INDENT = 4
"""Characters that a cell is wider than what is in it: indented at one side, so that a column of
figures and the text beside it don't run together, and some air."""
LINE_HEIGHT = 15
"""Height of a line of text in a sheet, points."""
_LONGEST_HEADER = 120
"""Characters.  Spreadsheet programs take 255 at most, each ampersand doubled; from memory."""


@dataclass(frozen=True, slots=True)
class Column:
    """A column of a table."""

    heading: str
    decimals: int | None = None
    """Decimals of a column of numbers; None for text."""
    widest: int = 18
    """Characters to a line before text is wrapped; a longer word still has its room."""
    inches: bool = False
    """Whether it holds lengths in inches."""

    @property
    def figures(self) -> bool:
        """Whether it holds numbers."""
        return self.decimals is not None or self.inches


def length_column(name: str, unit: LengthUnit) -> Column:
    """A column of lengths: numbers of millimetres, or inches."""
    return Column(f"{name} {unit}", 1 if unit == "mm" else None, inches=unit == "in")


def length_cell(mm: float, unit: LengthUnit) -> Cell:
    """A length in mm as a cell of such a column."""
    if unit == "in":
        return Inches(mm)
    text = format_length(mm, unit)
    return float(text) if "." in text else int(text)


def new_workbook(title: str) -> Workbook:
    """An empty workbook with a title and fixed dates."""
    book = Workbook()
    book.properties.creator = "Rodwright"
    book.properties.title = xml_text(title)
    book.properties.created = book.properties.modified = _FIXED_DATE
    return book


def workbook_bytes(book: Workbook) -> bytes:
    """A workbook as a file; its title heads every page."""
    for each in book.worksheets:
        each.oddHeader.left.text = book.properties.title[:_LONGEST_HEADER].replace("&", "&&")
        each.oddFooter.right.text = "&P of &N"
    buffer = io.BytesIO()
    # ExcelWriter is what Workbook.save uses, but it would set the time of day.
    ExcelWriter(book, _DatelessZip(buffer, "w", ZIP_DEFLATED)).save()
    return buffer.getvalue()


def csv_bytes(columns: Sequence[Column], rows: Iterable[Sequence[Cell]]) -> bytes:
    """A heading row and a record for each row.

    UTF-8 with a byte order mark, by which spreadsheets know it, and CRLF, quoted as RFC
    4180 has it.  Inches have two columns: a decimal number, and the fraction that is marked
    out (``23 5/8 in``).  Text that a spreadsheet would take for a formula or a date gets an
    apostrophe in front, the usual guard.
    """
    text = io.StringIO(newline="")
    writer = csv.writer(text)
    writer.writerow([heading for column in columns for heading in _headings(column)])
    writer.writerows([written for cell in row for written in _written(cell)] for row in rows)
    return text.getvalue().encode("utf-8-sig")


def _headings(column: Column) -> tuple[str, ...]:
    heading = column.heading
    return (heading, f"{heading} as fraction") if column.inches else (heading,)


def _written(cell: Cell) -> tuple[str | float, ...]:
    if isinstance(cell, Inches):
        return (f"{cell.decimal:g}", f"{cell} in")
    return (_guarded(cell) if isinstance(cell, str) else cell,)


def _guarded(text: str) -> str:
    line = text.replace("\n", "; ")
    risky = _FORMULA.match(text) or _LONE_FRACTION.fullmatch(line)
    return f"'{line}" if risky else line


def fill_sheet(
    sheet: Worksheet,
    title: str,
    columns: Sequence[Column],
    rows: Sequence[Sequence[Cell]],
    unit: LengthUnit,
) -> None:
    """Fill a sheet with a heading row and a row of cells for each row, ready to be printed.

    It prints on A4, or on Letter for a maker in inches, as wide as the paper and with the heading
    row on every page.  Inches are numbers, to the nearest 64th, shown as fractions.  Text is
    stored as text whatever it begins with, so that none is taken for a formula; characters that
    XML can't hold are shown as U+FFFD.
    """
    sheet.title = title
    lines = [1] * (1 + len(rows))
    for number, column in enumerate(columns, start=1):
        heading = sheet.cell(1, number, column.heading)
        heading.font = Font(bold=True)
        heading.fill = PatternFill("solid", fgColor="E8E8E8")
        heading.alignment = Alignment(
            horizontal="right" if column.figures else "left",
            indent=1,
            wrap_text=True,
            vertical="bottom",
        )
        for at, row in enumerate(rows, start=2):
            _put(sheet.cell(at, number), row[number - 1], column)
        texts = [str(row[number - 1]) for row in rows]
        width = _width(column, texts)
        sheet.column_dimensions[get_column_letter(number)].width = width
        for at, text in enumerate((column.heading, *texts)):
            wrapped = (math.ceil((len(line) or 1) / (width - _INDENT)) for line in text.split("\n"))
            lines[at] = max(lines[at], sum(wrapped))
    for at, count in enumerate(lines, start=1):
        sheet.row_dimensions[at].height = LINE_HEIGHT * count
    sheet.freeze_panes = "A2"
    print_on(sheet, unit)


def print_on(sheet: Worksheet, unit: LengthUnit) -> None:
    """Have a sheet printed on A4, or on Letter for a maker in inches, as wide as the paper and with
    its first row on every page."""
    sheet.print_title_rows = "1:1"
    sheet.page_setup.orientation = "landscape"
    sheet.page_setup.paperSize = sheet.PAPERSIZE_A4 if unit == "mm" else sheet.PAPERSIZE_LETTER
    sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight = 1, 0
    sheet.sheet_properties.pageSetUpPr.fitToPage = True


def _width(column: Column, texts: Sequence[str]) -> int:
    """Characters across a column: room for its words, and for its lines up to its widest."""
    words = [word for text in (column.heading, *texts) for word in text.split()]
    lines = [line for text in texts for line in text.split("\n")]
    longest_word, longest_line = max(map(len, words)), max(map(len, lines), default=0)
    width = max(min(longest_line, column.widest), longest_word) + _INDENT
    return min(max(width, _LEAST_WIDTH), _MOST_WIDTH)


def _put(cell: Any, value: Cell, column: Column) -> None:
    if value == "":
        return
    if isinstance(value, str):
        text_cell(cell, value)
        return
    cell.alignment = Alignment(horizontal="right", indent=1, vertical="top")
    if isinstance(value, Inches):
        cell.value = float(to_inches(value.mm))
        cell.number_format = _AS_FRACTION
        return
    cell.value = value
    decimals = column.decimals or 0
    whole = decimals == 0 or (column.decimals == 1 and value == int(value))
    cell.number_format = "0" if whole else f"0.{'0' * decimals}"


def text_cell(cell: Any, text: str) -> None:
    """Put text into a cell as text, whatever it begins with."""
    cell.value = xml_text(text)
    cell.data_type = "s"
    # So that it stays text when somebody edits the cell.
    cell.quotePrefix = _FORMULA.match(text) is not None
    cell.alignment = Alignment(horizontal="left", indent=1, wrap_text=True, vertical="top")


def xml_text(text: str) -> str:
    """Text with what XML can't hold as U+FFFD."""
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
