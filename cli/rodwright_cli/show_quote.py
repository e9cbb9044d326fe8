"""A quote on the terminal: what is asked, what it takes, and what changes it most."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal

from rich.markup import escape

from rodwright.jobs.quote import Quoted
from rodwright.quote.costing import Costing
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_list import ShownList

_LEVERS = 5
"""So many of what changes the price are told; all of them are in the workbook."""
_MISSING = 12
"""So many missing prices are told one by one."""


def quoted(made: Quoted) -> None:
    """Prices, hours and days, levers, what is missing, and where the files are."""
    console = PlainConsole()
    console.print(f"[bold]{escape(made.unit.title)}[/bold]")
    _prices(made)
    _missing(made, console)
    levers = made.levers[made.costings[0].option]
    if levers:
        rounding = ", before it is rounded up" if made.rates.round_up_to is not None else ""
        console.print(f"What changes the total most{rounding}:")
    for each in levers[:_LEVERS]:
        console.print(f"  {each.change:+,}  {escape(each.what)}, {escape(each.said)}")
    if made.rates.unit != made.unit.display_unit:
        runs = "feet and pounds" if made.rates.unit == "in" else "metres and kg"
        console.print(
            f"[yellow]two units[/yellow] the rates are read by {runs} (`unit: {made.rates.unit}`), "
            f"and the spec is in {made.unit.display_unit}: look whether they are meant so."
        )
    for why in made.no_plan:
        console.print(f"[yellow]no cutting plan[/yellow] {escape(why)}; stock is counted by area.")
    if made.no_photograph:
        console.print(f"[yellow]drawn, not photographed[/yellow] {escape(made.no_photograph)}")
    console.print(
        f"{escape(str(made.folder / 'quote.pdf'))} is for the client. Keep costing.xlsx and "
        "quote.json beside it to yourself: your costs and your margin are in them."
    )


def _prices(made: Quoted) -> None:
    """A column for each way of making it."""
    shown = ShownList()
    shown.texts("")
    shown.figures(*(escape(each.option) or made.costings[0].currency for each in made.costings))
    rows: tuple[tuple[str, Callable[[Costing], str]], ...] = (
        ("materials", lambda each: _money(_materials(each))),
        ("labour", lambda each: _money(each.labour_cost)),
        ("overhead", lambda each: _money(each.overhead)),
        ("margin", lambda each: _money(each.margin)),
        ("price before tax", lambda each: _money(each.net)),
        ("tax", lambda each: _money(each.tax)),
        ("[bold]total[/bold]", lambda each: f"[bold]{_money(each.total)}[/bold]"),
        ("hours", lambda each: str(each.all_hours)),
        ("days on site", lambda each: str(each.days_on_site)),
        ("you have for an hour", lambda each: _money(each.earned_an_hour)),
    )
    for name, figure in rows:
        shown.row(name, *(figure(each) for each in made.costings))
    shown.show()
    stages = ", ".join(f"{stage} {hours}" for stage, hours in made.costings[0].hours if hours)
    PlainConsole().print(f"\nAmounts in {made.costings[0].currency}. Hours: {stages}.")


def _materials(costing: Costing) -> Decimal:
    """What all materials come to, as far as they have prices."""
    return costing.cost - costing.labour_cost


def _money(amount: Decimal | None) -> str:
    return "not yet" if amount is None else f"{amount:,}"


def _missing(made: Quoted, console: PlainConsole) -> None:
    missing = made.missing
    if not missing:
        return
    console.print("[red]not priced yet[/red] There is no total while these are missing:")
    for each in missing[:_MISSING]:
        console.print(f"  {escape(each)}")
    if len(missing) > _MISSING:
        console.print(f"  and {len(missing) - _MISSING} more, in quote.json")
