"""What the terminal shows: sizes, findings, parts, and what was made."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager

from rich.markup import escape
from rich.padding import Padding
from rich.table import Table

import rodwright
from rodwright.amounts import format_weight
from rodwright.checks.findings import Finding, Severity
from rodwright.lengths import format_length
from rodwright.unit import Unit
from rodwright.unit.facts import is_scribed, left_over, size_as_fitted
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_list import show_told

_COLOURS = {
    Severity.ERROR: "red",
    Severity.WARNING: "yellow",
    Severity.NOTE: "cyan",
    Severity.CAUTION: "magenta",
}


def _console() -> PlainConsole:
    return PlainConsole()


def _size(lengths: Sequence[float], unit: Unit) -> str:
    return " x ".join(format_length(length, unit.display_unit) for length in lengths)


def sizes(unit: Unit) -> None:
    """Overall size, weight, opening and gaps."""
    console = _console()
    console.print(f"[bold]{escape(unit.title)}[/bold]")
    overall = _size(size_as_fitted(unit), unit)
    console.print(f"  overall   {overall} {unit.display_unit}  (width x height x depth)")
    if (made := _size(unit.size, unit)) != overall:
        console.print(f"  made      {made} {unit.display_unit}  before it is scribed to the walls")
    if unit.opening is not None:
        opening = unit.opening
        read = _size(opening.as_read, unit)
        console.print(f"  opening   {read} {unit.display_unit}  as read at its tightest")
        spare = f"{_size(left_over(unit, opening), unit)} {unit.display_unit}"
        how = (
            "for the carcass; the frame is scribed to the walls"
            if is_scribed(unit)
            else "level and plumb, as the readings have it"
        )
        console.print(f"  to spare  {spare}  {how}")
    console.print(f"  parts     {len(unit.parts)} of {len(unit.shapes)} shapes")
    console.print(f"  weight    {format_weight(rodwright.unit_weight(unit), unit.display_unit)}")


def findings(found: Sequence[Finding], *, in_full: bool = False) -> None:
    """Every finding, the gravest first; cautions under a heading of their own, each in a line
    unless they are wanted in full."""
    console = _console()
    order = list(Severity)
    cautions = [finding for finding in found if finding.severity is Severity.CAUTION]
    others = [finding for finding in found if finding.severity is not Severity.CAUTION]
    if others:
        console.print(_told(sorted(others, key=lambda each: order.index(each.severity))))
    if cautions:
        more = "" if in_full else " (in full with --notes)"
        console.print(f"[bold]Take care[/bold]; local codes come first{more}:")
        console.print(_told(cautions) if in_full else _in_short(cautions))
    more = f" What one means: rodwright rule {others[0].rule}" if others else ""
    console.print(_counted(found) + more)


def _in_short(cautions: Sequence[Finding]) -> Padding:
    briefs = dict.fromkeys(finding.brief for finding in cautions)
    return Padding("\n".join(map(escape, briefs)), (0, 0, 0, 2))


def _told(found: Sequence[Finding]) -> Table:
    grid = Table.grid(padding=(0, 2, 0, 0))
    for finding in found:
        colour = _COLOURS[finding.severity]
        grid.add_row(
            f"[{colour}]{finding.severity.value}[/{colour}]",
            f"{escape(finding.message)}\n[dim]{escape(f'{finding.remedy} [{finding.rule}]')}[/dim]",
        )
    return grid


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
    """The lists as tables: parts, stock, finish, hardware and edges."""
    from rodwright.handover import told_tables as told

    _console().print(f"[bold]{escape(unit.title)}[/bold]")
    show_told(told.parts_table(unit), titled=False)
    for of in (told.stock_table, told.finish_table, told.hardware_table, told.edges_table):
        show_told(of(unit))


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
    console.print(
        f"{len(unit.parts)} parts in {len(build.files)} files in {escape(str(build.folder))}:"
    )
    console.print(table)


def booked(made: rodwright.Book) -> None:
    """What the job book is, what it lacks, and where it is."""
    console = _console()
    for why in made.no_plan:
        console.print(f"[yellow]no cutting plan[/yellow] {escape(why)}")
    if made.lacking:
        console.print(f"[yellow]letters lacking[/yellow] {escape(made.lacking)}")
    beside = len(made.files) - 1
    console.print(
        f"{escape(str(made.folder / 'book.pdf'))} is the job book; "
        f"{beside} {'file' if beside == 1 else 'files'} beside it in book/."
    )


def packed(made: rodwright.CncPack) -> None:
    """What the pack for the CNC shop holds, what it lacks, and where it is."""
    console = _console()
    for why in made.no_plan:
        console.print(f"[yellow]no nested sheets[/yellow] {escape(why)}")
    sheets = f"{made.sheets} nested {'sheet' if made.sheets == 1 else 'sheets'}"
    console.print(
        f"{escape(str(made.folder / 'cnc.zip'))} is the pack for the CNC shop: "
        f"{len(made.files)} files, {sheets}; read-me-first.pdf in it tells the shop all."
    )


@contextmanager
def progress() -> Iterator[Callable[[str], None]]:
    """Show the step under way on the error stream, once it takes longer than a blink.

    Work that lasts makes garbage too, which is collected from here on.
    """
    gc.enable()
    console = PlainConsole(stderr=True)
    with console.status("starting") as status:

        def step(what: str) -> None:
            status.update(escape(what))
            if not console.is_terminal:
                console.print(escape(what))

        yield step
