"""A unit's figures of strength in a narrow table: figure, limit, spare and marks of each, by what
they are of; and what is lifted, a line each."""

from __future__ import annotations

from collections.abc import Sequence

from rich.cells import cell_len
from rich.markup import escape
from rich.table import Table

from rodwright.handover.strength_list import (
    StrengthRow,
    figure_text,
    limit_text,
    marks_of,
    marks_said,
    people_text,
    spare_text,
    told_figure,
    works_of,
)
from rodwright.lengths import LengthUnit
from rodwright_cli.console import PlainConsole

_INDENT, _GAP = 2, 2
_LEAST = 20
"""Characters that a label is given at least, before lines run past the terminal's edge."""
_WIDEST = 100
"""A table is no wider than this, so that the eye finds the figure of a label."""
_Cells = tuple[str, ...]


def figures(console: PlainConsole, rows: Sequence[StrengthRow], unit: LengthUnit) -> None:
    """Rows of one group: a line each, below what they are of where that has several."""
    cells = [_cells(row, unit) for row in rows]
    sheet = _Sheet(console, cells)
    by_subject: dict[str, list[tuple[StrengthRow, _Cells]]] = {}
    for row, told in zip(rows, cells, strict=True):
        by_subject.setdefault(row.subject, []).append((row, told))
    for subject, several in by_subject.items():
        label = f"{subject}, {several[0][0].result.what}"
        if len(several) == 1 and cell_len(label) <= sheet.room:
            sheet.line(label, several[0][1])
            continue
        console.print(escape(subject))
        for row, told in several:
            sheet.line(row.result.what, told, indent=_INDENT)


def lifts(console: PlainConsole, rows: Sequence[StrengthRow], unit: LengthUnit) -> None:
    """What one person may not lift, a line each: its weight, what one may lift, how many it takes;
    and how much of the rest there is."""
    more = [row for row in rows if people_text(row.result) != "1"]
    cells = [
        (
            figure_text(row.result.figure, row.result.measure, unit),
            figure_text(row.result.limit, row.result.measure, unit),
            people_text(row.result),
            marks_of(row),
        )
        for row in more
    ]
    headings = ("weighs", "one lifts", "people", "")
    if more:
        sheet = _Sheet(console, [headings, *cells])
        sheet.line("", headings)
        for row, told in zip(more, cells, strict=True):
            sheet.line(row.subject, told)
    light = [row for row in rows if row not in more]
    if light:
        most = max(light, key=lambda row: row.result.figure or 0.0).result
        said = figure_text(most.figure, most.measure, unit)
        console.print(f"What else is lifted weighs {said} at most: one person lifts it.")


def footnotes(console: PlainConsole, rows: Sequence[StrengthRow]) -> None:
    """What the marks mean, and how many works it all rests on."""
    told = marks_said(rows)
    if told:
        console.print(f"\n{told}: --of says what.")
    works = works_of(rows)
    remembered = sum(told != work for work, told in works.items())
    if works:
        console.print(
            f"{'' if told else chr(10)}Sources: {len(works)}, {remembered} of them from memory, in "
            "whole or in part; --formulas names them, with the formula and inputs of each figure, "
            "and --of NAME those of one."
        )


def _cells(row: StrengthRow, unit: LengthUnit) -> _Cells:
    result = row.result
    figure = told_figure(result, unit)
    return figure, limit_text(result, unit), spare_text(result), marks_of(row)


class _Sheet:
    """Lines of a label and cells at its right, under each other whatever stands between them."""

    def __init__(self, console: PlainConsole, lines: Sequence[_Cells]) -> None:
        self._console = console
        self._widths = [max(map(cell_len, column)) for column in zip(*lines, strict=True)]
        taken = sum(width + _GAP for width in self._widths)
        self.room = max(_LEAST, min(console.width, _WIDEST) - taken)
        console.width = max(console.width, self.room + taken)

    def line(self, label: str, cells: _Cells, *, indent: int = 0) -> None:
        """A label, wrapped within its room, and its cells."""
        grid = Table.grid(padding=0)
        if indent:
            grid.add_column(width=indent)
        grid.add_column(width=self.room - indent)
        for width in self._widths[:-1]:
            grid.add_column(width=width + _GAP, justify="right", no_wrap=True)
        grid.add_column(width=self._widths[-1] + _GAP, no_wrap=True)
        *numbers, marks = map(escape, cells)
        first = [""] if indent else []
        grid.add_row(*first, escape(label), *numbers, f"{' ' * _GAP}{marks}")
        self._console.print(grid)
