"""What the terminal shows: sizes, findings, parts, and what was made."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager

from rich.markup import escape
from rich.padding import Padding
from rich.table import Table

import rodwright
from rodwright.amounts import AREAS, RUNS, VOLUMES, WEIGHTS, format_weight
from rodwright.checks.findings import Finding, Severity
from rodwright.lengths import format_length
from rodwright.unit import Unit
from rodwright.unit.facts import is_scribed, left_over
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_list import ShownList

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
    console.print(
        f"  overall   {_size(unit.size, unit)} {unit.display_unit}  (width x height x depth)"
    )
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
    """The parts list as a table."""
    weights = WEIGHTS[unit.display_unit]
    table = ShownList()
    table.texts("part", "name")
    table.figures("no.")
    table.sizes(f"size ({unit.display_unit})")
    table.texts("stock")
    rows = rodwright.parts_list(unit)
    edges = [_row_edges(row) for row in rows]
    if any(edges):
        table.texts("edges")
    table.figures(f"{weights.symbol} each", f"{weights.symbol} all")
    for row, edge in zip(rows, edges, strict=True):
        table.row(
            escape(", ".join(row.refs)),
            escape(row.name),
            str(row.quantity),
            _piece(row, unit),
            escape(row.stock),
            *([escape(edge)] if any(edges) else []),
            f"{weights.of(row.weight_each):.2f}",
            f"{weights.of(row.weight):.2f}",
        )
    _console().print(f"[bold]{escape(unit.title)}[/bold]")
    table.show()
    _console().print(
        f"\n{len(unit.parts)} parts, {weights.said(rodwright.unit_weight(unit))}; finished sizes, "
        "length x width x thickness."
    )
    _totals(unit)
    _finishes(rows)
    _hardware(unit)
    _edges(unit)


def _piece(row: rodwright.PartsRow, unit: Unit) -> str:
    """The finished size, and below it what to cut where edging is glued on after."""
    finished = _size((row.length, row.width, row.thickness), unit)
    if not row.edged:
        return finished
    return f"{finished}\n[dim]cut {_size((row.rough_length, row.rough_width), unit)}[/dim]"


def _row_edges(row: rodwright.PartsRow) -> str:
    names = "all four edges" if len(row.edged) == 4 else ", ".join(row.edged)
    edged = [f"edging on {names}"] if row.edged else []
    return "; ".join([*(f"{edge} lipped" for edge in row.lipped), *edged])


def _totals(unit: Unit) -> None:
    """What the unit takes of each stock."""
    shown = unit.display_unit
    areas, runs, volumes, weights = AREAS[shown], RUNS[shown], VOLUMES[shown], WEIGHTS[shown]
    table = ShownList("Stock")
    table.texts("stock", "material")
    table.figures("parts", "takes", f"{weights.symbol} all")
    for total in rodwright.stock_totals(unit):
        thick = format_length(total.stock.thickness, shown)
        sheet = total.stock.kind == "sheet"
        takes = (
            areas.said(total.area)
            if sheet
            else f"{runs.said(total.metres)}, {volumes.said(total.volume)}"
        )
        table.row(
            escape(total.stock.name),
            escape(f"{total.stock.described}, {thick} {shown}"),
            str(total.parts),
            takes,
            f"{weights.of(total.weight):.1f}",
        )
    table.show()
    _console().print("\nStock as first cut, without saw cuts and offcuts; weights finished.")


def _finishes(rows: Sequence[rodwright.PartsRow]) -> None:
    """What parts are finished with, where anything is said of it."""
    refs: dict[str, list[str]] = {}
    for row in rows:
        refs.setdefault(row.finish or "none", []).extend(row.refs)
    if list(refs) == ["none"]:
        return
    table = ShownList("Finish")
    table.texts("finish", "parts")
    for finish, on in refs.items():
        table.row(escape(finish), escape(", ".join(on)))
    table.show()


def _hardware(unit: Unit) -> None:
    """What is bought to hold it together."""
    table = ShownList("Hardware")
    table.texts("hardware", "size")
    table.figures("no.")
    table.texts("holes", "for")
    for row in rodwright.hardware_list(unit):
        table.row(
            escape(row.name),
            escape(row.size),
            str(row.quantity),
            escape("; ".join(row.holes)),
            escape("; ".join(row.uses)),
        )
    table.show()


def _edges(unit: Unit) -> None:
    """Lippings and edging, in metres or feet."""
    runs = RUNS[unit.display_unit]
    table = ShownList("Edges")
    table.texts("kind", "material")
    table.sizes(f"section ({unit.display_unit})")
    table.figures("strips", f"net {runs.symbol}", f"to get {runs.symbol}")
    rows = rodwright.edge_list(unit)
    for row in rows:
        table.row(
            row.kind,
            escape(row.material),
            _size((row.width, row.thickness), unit),
            str(row.strips),
            f"{runs.of(row.net):.2f}",
            f"{row.run_to_get(runs):.1f}",
        )
    table.show()
    if rows:
        name = "Metres" if unit.display_unit == "mm" else "Feet"
        _console().print(f"\n{name} to get are a tenth more, for trimming.")


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
