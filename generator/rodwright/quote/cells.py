"""Cells of a costing's workbook: text, figures, formulas, and figures that a maker may change."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from math import ceil
from typing import Any

from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet

from rodwright.handover.tables import LINE_HEIGHT, text_cell

_HEADING = PatternFill("solid", fgColor="E8E8E8")
_BOXED = Border(*(Side("medium") for _ in range(4)))
_RULED = Border(top=Side("thin"))
_BESIDE = 6
"""Characters of a column that bold text, its indent and broken words leave empty."""
_PERCENT = "0.####\\ %"


def money_format(decimals: int) -> str:
    """Number format (ECMA-376, 18.8.31) of amounts with so many decimals."""
    return f"#,##0.{'0' * decimals}" if decimals else "#,##0"


def heading(sheet: Worksheet, row: int, texts: Sequence[str], *, figures: int = 99) -> None:
    """A row of headings, as high as they need; those from the column ``figures`` on stand to the
    right.  Columns have their widths before."""
    lines = 1
    for column, text in enumerate(texts, start=1):
        cell = sheet.cell(row, column)
        text_cell(cell, text)
        wide = sheet.column_dimensions[get_column_letter(column)].width - _BESIDE
        lines = max(lines, ceil(len(text) / wide))
        cell.font, cell.fill = Font(bold=True), _HEADING
        side = "right" if column >= figures else "left"
        cell.alignment = Alignment(horizontal=side, indent=1, wrap_text=True, vertical="bottom")
    sheet.row_dimensions[row].height = LINE_HEIGHT * lines


def text(sheet: Worksheet, row: int, column: int, said: str, *, bold: bool = False) -> None:
    """Text, whatever it begins with."""
    cell = sheet.cell(row, column)
    text_cell(cell, said)
    if bold:
        cell.font = Font(bold=True)


def figure(
    sheet: Worksheet,
    row: int,
    column: int,
    value: Decimal | int | str,
    form: str = "General",
    *,
    bold: bool = False,
) -> None:
    """A figure, or a formula (text that begins with `=`, of our own making)."""
    cell = sheet.cell(row, column, value)
    cell.number_format = form
    cell.alignment = Alignment(horizontal="right", indent=1, vertical="top")
    if bold:
        cell.font, cell.border = Font(bold=True), _RULED


def changeable(
    sheet: Worksheet, row: int, column: int, value: Decimal | int | None, form: str = "General"
) -> str:
    """A figure in a box, to be changed by the maker (None: still empty); its address from
    other sheets."""
    cell: Any = sheet.cell(row, column, value)
    cell.number_format = form
    cell.border = _BOXED
    cell.alignment = Alignment(horizontal="right", indent=1)
    return f"{sheet.title}!${get_column_letter(column)}${row}"


def share(sheet: Worksheet, row: int, column: int, value: Decimal) -> str:
    """A share in per cent, in a box; its address from other sheets."""
    return changeable(sheet, row, column, value, _PERCENT)


def widths(sheet: Worksheet, characters: Sequence[int]) -> None:
    """How wide the columns are, from the first on."""
    for column, wide in enumerate(characters, start=1):
        sheet.column_dimensions[get_column_letter(column)].width = wide
