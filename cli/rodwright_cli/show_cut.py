"""How a cutting plan is shown: each lot's sheets and boards, what to buy, how good it is."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from rich.markup import escape

from rodwright.cutting.shopping import (
    shopping_rows,
)
from rodwright.cutting.steps import LotSteps
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Lot
from rodwright.handover.cut_told import (
    balance_table,
    left_line,
    lot_table,
    shopping_lines,
    shopping_table,
    unused_line,
)
from rodwright.handover.cut_words import (
    cautions,
    cost_said,
    lot_summary,
    lot_title,
    one_more_lines,
)
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_list import show_told

Told = Callable[[Lot, float, float], None]


def cutting(plan: Cutting, steps: Sequence[LotSteps]) -> None:
    """All of a plan but its cuts, which are in the files."""
    console = PlainConsole()
    titles = [f"{job.mark} {job.title}".strip() for job in plan.jobs]
    console.print(f"[bold]{escape('; '.join(titles))}[/bold]")
    for at in range(len(plan.lots)):
        _lot(console, plan, at, steps[at])
    rows = shopping_rows(plan)
    show_told(shopping_table(plan, rows))
    console.print()
    for line in shopping_lines(plan, rows):
        console.print(escape(line))
    show_told(balance_table(plan))
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
    show_told(lot_table(plan, at, steps), titled=False)
    if unused := unused_line(plan, at):
        console.print(escape(unused))
    if left := left_line(plan, at):
        console.print(f"[red]no place[/red]{escape(left.removeprefix('no place'))}")


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
