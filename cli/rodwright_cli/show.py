"""What the terminal shows: sizes, findings, parts, and what was made."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager

from rich.box import SIMPLE_HEAD
from rich.console import Console
from rich.markup import escape
from rich.table import Table

import rodwright
from rodwright.checks.findings import Finding, Severity
from rodwright.lengths import format_length
from rodwright.parts import Unit

_COLOURS = {Severity.ERROR: "red", Severity.WARNING: "yellow", Severity.NOTE: "cyan"}


def _console() -> Console:
    return Console(highlight=False)


def _size(lengths: Sequence[float], unit: Unit) -> str:
    return " x ".join(format_length(length, unit.display_unit) for length in lengths)


def sizes(unit: Unit) -> None:
    """Overall size, weight, opening and gaps."""
    console = _console()
    width, height, depth = unit.size
    console.print(f"[bold]{escape(unit.title)}[/bold]")
    console.print(
        f"  overall   {_size(unit.size, unit)} {unit.display_unit}  (width x height x depth)"
    )
    if unit.opening is not None:
        opening = unit.opening
        gaps = [opening.width - width, opening.height - height]
        measured = [opening.width, opening.height]
        if opening.depth is not None:
            gaps.append(opening.depth - depth)
            measured.append(opening.depth)
        console.print(f"  opening   {_size(measured, unit)} {unit.display_unit}  at its tightest")
        console.print(f"  to spare  {_size(gaps, unit)} {unit.display_unit}")
    console.print(f"  parts     {len(unit.parts)} of {len(unit.shapes)} shapes")
    console.print(f"  weight    {rodwright.unit_weight(unit):.1f} kg")


def findings(found: Sequence[Finding]) -> None:
    """Every finding, the gravest first."""
    console = _console()
    order = list(Severity)
    grid = Table.grid(padding=(0, 2, 0, 0))
    for finding in sorted(found, key=lambda each: order.index(each.severity)):
        colour = _COLOURS[finding.severity]
        grid.add_row(
            f"[{colour}]{finding.severity.value}[/{colour}]",
            f"{escape(finding.message)}\n[dim]{escape(finding.remedy)}[/dim]",
        )
    if found:
        console.print(grid)
    console.print(_counted(found))


def errors(found: Sequence[Finding]) -> None:
    """Only what must be mended before anything is cut."""
    grave = [finding for finding in found if finding.severity is Severity.ERROR]
    if grave:
        findings(grave)


def _counted(found: Sequence[Finding]) -> str:
    counts = [
        f"{number} {severity.value}{'' if number == 1 else 's'}"
        for severity in Severity
        if (number := sum(finding.severity is severity for finding in found))
    ]
    return f"Findings: {', '.join(counts) if counts else 'none'}."


def exit_code(found: Sequence[Finding]) -> int:
    """1 when there is an error among the findings, else 0."""
    return int(any(finding.severity is Severity.ERROR for finding in found))


def parts(unit: Unit) -> None:
    """The parts list as a table."""
    table = Table(box=SIMPLE_HEAD, pad_edge=False)
    table.add_column("part")
    table.add_column("name")
    table.add_column("no.", justify="right")
    table.add_column(f"size ({unit.display_unit})", no_wrap=True)
    table.add_column("stock")
    table.add_column("lipped")
    table.add_column("kg each", justify="right")
    for row in rodwright.parts_list(unit):
        table.add_row(
            escape(", ".join(row.refs)),
            escape(row.name),
            str(row.quantity),
            _size((row.length, row.width, row.thickness), unit),
            escape(row.stock),
            escape(", ".join(row.lipped)),
            f"{row.weight_each:.2f}",
        )
    _console().print(f"[bold]{escape(unit.title)}[/bold]")
    _console().print(table)
    _console().print(
        f"{len(unit.parts)} parts, {rodwright.unit_weight(unit):.1f} kg; finished sizes, "
        "length x width x thickness."
    )


def way_in(answer: rodwright.WayInAnswer) -> None:
    """Every step of the way in, and what would help where it doesn't go."""
    console = _console()
    unit = answer.unit.display_unit
    console.print(f"[bold]{escape(answer.unit.title)}[/bold]")
    grid = Table.grid(padding=(0, 2, 0, 0))
    for step in answer.steps:
        amount = f"{format_length(abs(step.spare), unit)} {unit}"
        if step.passes:
            left = f"; {amount} to spare" if step.spare > 0 else ""
            grid.add_row("[green]goes[/green]", f"{escape(step.place)}: {escape(step.held)}{left}")
        else:
            grid.add_row(
                "[red]short[/red]",
                f"{escape(step.place)}: {amount} short ({escape(step.tight)}), at best "
                f"{escape(step.held)}",
            )
    for remedy in answer.remedies:
        if remedy.works:
            grid.add_row("[cyan]would do[/cyan]", escape(remedy.what))
        else:
            first = remedy.still[0]
            amount = f"{format_length(abs(first.spare), unit)} {unit}"
            grid.add_row(
                "[dim]no help[/dim]",
                f"[dim]{escape(remedy.what)}: still {amount} short at {escape(first.place)}[/dim]",
            )
    console.print(grid)
    console.print("The finished unit goes in." if answer.goes else "It doesn't go in as it is.")


def made(unit: Unit, build: rodwright.Build) -> None:
    """A short table of what was built and where it is."""
    table = Table(show_header=False, box=None, padding=(0, 2, 0, 0))
    for what, files in build.by_kind().items():
        table.add_row(what, escape(", ".join(files)))
    console = _console()
    console.print(f"{len(unit.parts)} parts in {len(build.files)} files in {build.folder}:")
    console.print(table)


@contextmanager
def progress() -> Iterator[Callable[[str], None]]:
    """Show the step under way on the error stream, once it takes longer than a blink."""
    console = Console(stderr=True, highlight=False)
    with console.status("starting") as status:

        def step(what: str) -> None:
            status.update(escape(what))
            if not console.is_terminal:
                console.print(escape(what))

        yield step
