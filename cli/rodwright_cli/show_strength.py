"""How a unit's strength is shown: what doesn't hold first, then all of it by groups."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from rich.markup import escape
from rich.padding import Padding
from rich.table import Table

import rodwright
from rodwright.handover.strength_list import (
    NO_ENGINEER,
    StrengthRow,
    counted_text,
    figure_text,
    judged_text,
    limit_text,
    remedy_text,
    spare_text,
    strength_rows,
    told_figure,
)
from rodwright.lengths import LengthUnit
from rodwright.strength.results import Group
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_figures import figures, footnotes, lifts

COST_OF = (
    "What a remedy costs is told for each part, net: its area, or the run of a board, at the "
    "spec's price, without offcuts."
)


def strength(
    unit: rodwright.Unit, results: Sequence[rodwright.Result], *, in_full: bool = False
) -> None:
    """Every figure of a unit's strength; ``in_full`` with formula, inputs and sources of each."""
    console = PlainConsole()
    console.print(f"[bold]{escape(unit.title)}[/bold]")
    shown = unit.display_unit
    rows = strength_rows(results, shown, in_full=in_full)
    _failing(console, [row for row in rows if in_full or not _lifted(row)], shown)
    for group, of_group in groupby(rows, key=lambda row: row.result.group):
        console.print(f"\n[bold]{group.capitalize()}[/bold]")
        if in_full:
            for row in of_group:
                whole(console, row, shown)
        elif group is Group.LIFTING:
            lifts(console, list(of_group), shown)
        else:
            figures(console, list(of_group), shown)
    if not in_full:
        footnotes(console, rows)
    elif any(each.cost is not None for row in rows for each in row.result.remedies):
        console.print(f"\n{COST_OF}")
    console.print(f"\n{counted_text(rows)} {NO_ENGINEER}")


def _failing(console: PlainConsole, rows: Sequence[StrengthRow], unit: LengthUnit) -> None:
    """What is beyond its limit, with what would help and how far, and what can't be worked out."""
    grid = Table.grid(padding=(0, 2, 0, 0))
    for row in rows:
        result = row.result
        if result.figure is None:
            lacking = escape(f"{row.subject}, {result.what}: {result.lacking}")
            grid.add_row("[yellow]not known[/yellow]", lacking)
        if result.holds:
            continue
        lines = [
            f"{row.subject}, {result.what}: {told_figure(result, unit)}, {limit_text(result, unit)}"
        ]
        for remedy in result.remedies:
            word = "would do" if remedy.holds else "not enough"
            lines.append(f"  {word}: {remedy_text(remedy, result.measure, unit)}")
        grid.add_row(_word(result), escape("\n".join(lines)))
    if grid.row_count:
        console.print(grid)


def _lifted(row: StrengthRow) -> bool:
    return row.result.group is Group.LIFTING


def _word(result: rodwright.Result) -> str:
    """How it is told that a result is beyond its limit."""
    word = judged_text(result)
    return f"[yellow]{word}[/yellow]" if word == "heavy" else f"[red]{word}[/red]"


def whole(console: PlainConsole, row: StrengthRow, unit: LengthUnit) -> None:
    """One result with all that it was worked out from."""
    result = row.result
    said = told_figure(result, unit)
    limits = [each for each in (limit_text(result, unit), spare_text(result)) if each]
    word = "" if result.holds else f"{_word(result)} "
    console.print(
        f"  {word}{escape(f'{row.subject}, {result.what}: ' + ', '.join([said, *limits]))}"
    )
    lines = [result.lacking] if result.lacking else []
    lines += [f"{result.formula}   [{result.source}]"]
    if result.limit_source is not None:
        lines.append(f"limit   [{result.limit_source}]")
    lines += result.notes
    console.print(Padding(escape("\n".join(lines)), (0, 0, 0, 4)))
    grid = Table.grid(padding=(0, 2, 0, 0))
    for each in result.inputs:
        source = f"[{each.source}]" if each.source is not None else ""
        figure = figure_text(each.value, each.measure, unit)
        grid.add_row(*map(escape, (each.symbol, each.what, figure, source)))
    if result.inputs:
        console.print(Padding(grid, (0, 0, 0, 6)))
