"""A rack on the terminal: what is there, and what taking a plan changed."""

from __future__ import annotations

from rich.markup import escape

from rodwright.amounts import AREAS, RUNS
from rodwright.cutting.flaws import flaws_said
from rodwright.cutting.rack import Rack
from rodwright.cutting.saws import Saw
from rodwright.handover.rack_list import rack_list, totals
from rodwright.jobs.rack import Taken
from rodwright.lengths import LengthUnit, format_length
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_list import ShownList


def rack(found: Rack) -> None:
    """What is in a rack, entry by entry, and in all."""
    console, unit = PlainConsole(), found.unit
    rows = rack_list(found)
    if not rows:
        console.print("There is nothing in the rack.")
    else:
        shown = ShownList(f"Rack: {escape(found.file)}")
        shown.texts("name", "material")
        shown.sizes(f"size ({unit})")
        shown.figures("count", "amount", "price", "value")
        shown.texts("where", "remarks")
        for row in rows:
            entry = row.entry
            shown.row(
                escape(entry.name),
                escape(entry.material),
                row.size(unit),
                str(entry.piece.count),
                row.amount(unit),
                "" if entry.price is None else f"{entry.price:.2f}",
                "" if not row.value else f"{row.value:.2f}",
                escape(entry.where),
                escape(row.remarks(unit)),
            )
        shown.show()
        _in_all(found, console)
    console.print(f"Cut with: {'; '.join(_saw(saw, unit) for saw in found.saws)}.")


def _in_all(found: Rack, console: PlainConsole) -> None:
    area, run, value, unpriced = totals(rack_list(found))
    unit = found.unit
    parts = [AREAS[unit].said(area)] if area else []
    parts += [f"{RUNS[unit].said(run)} of section"] if run else []
    if parts:
        console.print(f"At hand: {' and '.join(parts)}, worth {value:.2f}.")
    if unpriced:
        names = ", ".join(map(escape, unpriced))
        console.print(f"Not in that sum, as nobody said what they cost: {names}.")


def _saw(saw: Saw, unit: LengthUnit) -> str:
    def length(mm: float) -> str:
        return f"{format_length(mm, unit)} {unit}"

    if saw.kind == "router":
        return f"router, tool {length(saw.kerf)}"
    said = [f"{saw.kind}, kerf {length(saw.kerf)}"]
    if saw.rip is not None:
        said.append(f"rips up to {length(saw.rip)}")
    if saw.crosscut is not None:
        said.append(f"crosscuts up to {length(saw.crosscut)}")
    return ", ".join(said)


def taken(done: Taken) -> None:
    """What went out of a rack and what came in."""
    console = PlainConsole()
    console.print(f"[bold]{escape(str(done.rack))}[/bold]")
    for name, count in done.used.items():
        left = done.left[name]
        rest = f"{left} left" if left else "none left"
        console.print(f"  {count} of {escape(name)} cut, {rest}")
    if done.came:
        came = (
            f"{each.name} ({flaws_said(each.flaws)})" if each.flaws else each.name
            for each in done.came
        )
        console.print(f"  came in: {escape(', '.join(came))}")
    if not done.used and not done.came:
        console.print("  nothing of it was cut, and no offcut is worth keeping")
