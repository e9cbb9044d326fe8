"""How a cutting plan is shown: each lot's sheets and boards, what to buy, how good it is."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from rich.markup import escape

from rodwright.amounts import AREAS, RUNS
from rodwright.cutting.flaws import flaws_said
from rodwright.cutting.offcuts import Kept
from rodwright.cutting.shopping import (
    ShoppingRow,
    balance_of,
    shopping_rows,
    without_price,
)
from rodwright.cutting.steps import LotSteps
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Lot
from rodwright.handover.cut_words import (
    NO_HARDWARE,
    cautions,
    cost_said,
    lot_summary,
    lot_title,
    money,
    noun,
    numbers_said,
    offer_title,
    one_more_lines,
    refs_said,
    row_said,
    size_said,
    to_pay_said,
    unused_said,
)
from rodwright.lengths import LengthUnit
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_list import ShownList

Told = Callable[[Lot, float, float], None]


def cutting(plan: Cutting, steps: Sequence[LotSteps]) -> None:
    """All of a plan but its cuts, which are in the files."""
    console = PlainConsole()
    titles = [f"{job.mark} {job.title}".strip() for job in plan.jobs]
    console.print(f"[bold]{escape('; '.join(titles))}[/bold]")
    for at in range(len(plan.lots)):
        _lot(console, plan, at, steps[at])
    rows = shopping_rows(plan)
    _shopping(console, plan, rows)
    _balances(plan)
    if changes := one_more_lines(plan):
        console.print("\n[bold]One more size[/bold]")
        for line in changes:
            console.print(f"  {escape(line)}.")
    console.print()
    for line in cautions(plan, steps):
        console.print(escape(line))


def _lot(console: PlainConsole, plan: Cutting, at: int, steps: LotSteps) -> None:
    planned, unit = plan.lots[at], plan.unit
    title = f"[bold]{escape(lot_title(planned.lot, unit))}[/bold]"
    console.print(f"\n{title}: {escape(lot_summary(planned, unit))}")
    table = ShownList()
    table.texts(noun(planned.lot))
    table.sizes(f"size ({unit})")
    table.texts("pieces", "kept")
    for sheet in steps.sheets:
        kept = [each for number in sheet.numbers for each in plan.kept_of(at, number - 1)]
        size = size_said(planned.lot, sheet.stock.length, sheet.stock.width, unit)
        table.row(
            escape(f"{numbers_said(sheet.numbers)} {sheet.stock.name.removesuffix(size)}".strip()),
            size,
            escape(refs_said(steps, sheet)),
            escape(", ".join(_kept(planned.lot, each, unit) for each in kept)),
        )
    table.show()
    if unused := unused_said(plan, at):
        console.print(escape(f"{unused[0].upper()}{unused[1:]}."))
    if planned.plan.left:
        left = ", ".join(_times(each.name, each.count) for each in planned.plan.left)
        console.print(f"[red]no place for[/red] {escape(left)}: there is too little stock")


def _kept(lot: Lot, kept: Kept, unit: LengthUnit) -> str:
    flawed = f" ({flaws_said(kept.flaws)})" if kept.flaws else ""
    return f"{kept.name} {size_said(lot, kept.offcut.length, kept.offcut.width, unit)}{flawed}"


def _times(name: str, count: int) -> str:
    return name if count == 1 else f"{count} x {name}"


def _shopping(console: PlainConsole, plan: Cutting, rows: Sequence[ShoppingRow]) -> None:
    table = ShownList("To buy")
    table.texts("material")
    table.sizes(f"size ({plan.unit})")
    table.figures("no.", "each", "sum")
    bought = [row for row in rows if not row.offer.at_hand]
    for row in bought:
        lot = plan.lots[row.lot].lot
        size = size_said(lot, row.supply.length, row.supply.width, plan.unit)
        table.row(
            escape(offer_title(lot, row.offer, plan.unit)),
            f"{size}{' *' if row.offer.assumed else ''}",
            str(row.count),
            "?" if row.each is None else money(row.each),
            "?" if row.sum is None else money(row.sum),
        )
    table.show()
    console.print()
    if bought:
        console.print(f"To pay: {to_pay_said(rows)}. {escape(NO_HARDWARE)}")
    else:
        console.print("Nothing has to be bought.")
    if lacking := without_price(rows):
        named = "; ".join(row_said(plan, row) for row in lacking)
        console.print(f"[yellow]Without a price[/yellow], and not in the sum: {escape(named)}.")
    if any(row.offer.assumed for row in bought):
        console.print("* a usual size, assumed: say in the stock what is sold (`sold`).")
    for row in rows:
        if row.offer.at_hand:
            where = f" ({row.offer.where})" if row.offer.where else ""
            console.print(f"At hand: {escape(f'{row.supply.name}{where}: {row_said(plan, row)}')}.")


def _balances(plan: Cutting) -> None:
    table = ShownList("What becomes of it")
    table.texts("material")
    table.figures("taken", "in pieces", "kept", "thrown away", "%")
    for at, planned in enumerate(plan.lots):
        balance = balance_of(plan, at)
        sheets = any(each.width for each in planned.lot.supplies)
        measure = (AREAS if sheets else RUNS)[plan.unit]
        amounts = (balance.taken, balance.in_pieces, balance.kept, balance.lost)
        table.row(
            escape(lot_title(planned.lot, plan.unit)),
            *map(measure.said, amounts),
            f"{100 * balance.waste:.1f}",
        )
    table.show()


def written(folder: Path, files: Sequence[str]) -> None:
    """What was written and where it is."""
    PlainConsole().print(
        f"\n{len(files)} files in {escape(str(folder))}: cut.json is the whole plan, cut/ has "
        "pictures, cuts and lists."
    )


def not_written() -> None:
    """How to get the cuts in their order."""
    PlainConsole().print("\nThe cuts in their order, pictures and labels: add -o with a folder.")


@contextmanager
def searching() -> Iterator[Told]:
    """Show on the error stream which lot is planned, its cost so far and the bound."""
    console = PlainConsole(stderr=True)
    shown: set[str] = set()
    with console.status("starting") as status:

        def told(lot: Lot, cost: float, bound: float) -> None:
            what = lot_title(lot, "mm")
            if cost < float("inf"):
                best, least = (cost_said(lot, each, "mm") for each in (cost, bound))
                status.update(escape(f"{what}: {best} so far, none below {least}"))
            else:
                status.update(escape(f"{what}: searching"))
            if not console.is_terminal and what not in shown:
                shown.add(what)
                console.print(escape(f"planning {what}"))

        yield told
