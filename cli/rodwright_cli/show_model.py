"""How a unit's model is shown beside the formulas."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING

from rich.markup import escape

import rodwright
from rodwright.handover.model_list import model_rows, model_summary
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_list import ShownList

if TYPE_CHECKING:
    from rodwright.strength.model.beside import Beside


def model(unit: rodwright.Unit, found: Beside) -> None:
    """Formula and model of each figure, and why they differ where they do."""
    console = PlainConsole()
    console.print(f"[bold]{escape(unit.title)}: formulas, and the whole by finite elements[/bold]")
    rows = model_rows(found.rows, unit.display_unit)
    for what, alike in groupby(rows, key=lambda row: row.what):
        table = ShownList(what[0].upper() + what[1:])
        table.texts("of")
        table.figures("formula", "model", "ratio")
        table.texts("why they differ")
        for row in alike:
            why = "\n".join(row.why)
            ratio = row.ratio if row.agrees else f"[yellow]{row.ratio}[/yellow]"
            table.row(escape(row.subject), row.formula, row.model, ratio, escape(why))
        table.show()
    console.print()
    for line in model_summary(found, unit.display_unit):
        console.print(escape(line))
