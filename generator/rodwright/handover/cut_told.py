"""A cutting plan as tables of text, as a terminal and a page show them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.amounts import AREAS, RUNS
from rodwright.cutting.flaws import flaws_said
from rodwright.cutting.offcuts import Kept
from rodwright.cutting.shopping import ShoppingRow, balance_of, without_price
from rodwright.cutting.steps import LotSteps, SheetSteps
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Lot
from rodwright.handover.cut_words import (
    NO_HARDWARE,
    lot_title,
    money,
    noun,
    numbers_said,
    offer_title,
    refs_said,
    row_said,
    size_said,
    to_pay_said,
    unused_said,
)
from rodwright.handover.told_tables import ToldTable
from rodwright.lengths import LengthUnit


def lot_table(plan: Cutting, at: int, steps: LotSteps) -> ToldTable:
    """The sheets or boards of a lot, equal ones in a row: what comes out of each, and what is kept
    of it; refs are those of what comes out."""
    lot, unit = plan.lots[at].lot, plan.unit
    return ToldTable(
        lot_title(lot, unit),
        ((noun(lot), "text"), (f"size ({unit})", "size"), ("pieces", "text"), ("kept", "text")),
        tuple(_sheet_row(plan, at, steps, sheet) for sheet in steps.sheets),
        tuple(tuple(refs_said(steps, sheet).split(", ")) for sheet in steps.sheets),
    )


def _sheet_row(
    plan: Cutting, at: int, steps: LotSteps, sheet: SheetSteps
) -> tuple[str, str, str, str]:
    lot, unit = plan.lots[at].lot, plan.unit
    kept = [each for number in sheet.numbers for each in plan.kept_of(at, number - 1)]
    size = size_said(lot, sheet.stock.length, sheet.stock.width, unit)
    return (
        f"{numbers_said(sheet.numbers)} {sheet.stock.name.removesuffix(size)}".strip(),
        size,
        refs_said(steps, sheet),
        ", ".join(_kept(lot, each, unit) for each in kept),
    )


def _kept(lot: Lot, kept: Kept, unit: LengthUnit) -> str:
    flawed = f" ({flaws_said(kept.flaws)})" if kept.flaws else ""
    return f"{kept.name} {size_said(lot, kept.offcut.length, kept.offcut.width, unit)}{flawed}"


def unused_line(plan: Cutting, at: int) -> str:
    """What stays at hand though something is bought for a lot; empty where nothing does."""
    unused = unused_said(plan, at)
    return f"{unused[0].upper()}{unused[1:]}." if unused else ""


def left_line(plan: Cutting, at: int) -> str:
    """The pieces of a lot that found no place; empty where all did."""
    left = [
        each.name if each.count == 1 else f"{each.count} x {each.name}"
        for each in plan.lots[at].plan.left
    ]
    return f"no place for {', '.join(left)}: there is too little stock" if left else ""


def shopping_table(plan: Cutting, rows: Sequence[ShoppingRow]) -> ToldTable:
    """What is bought, with its price as far as it is known."""
    bought = [row for row in rows if not row.offer.at_hand]
    return ToldTable(
        "To buy",
        (
            ("material", "text"),
            (f"size ({plan.unit})", "size"),
            *((each, "figure") for each in ("no.", "each", "sum")),
        ),
        tuple(_bought(plan, row) for row in bought),
        ((),) * len(bought),
    )


def _bought(plan: Cutting, row: ShoppingRow) -> tuple[str, ...]:
    lot = plan.lots[row.lot].lot
    size = size_said(lot, row.supply.length, row.supply.width, plan.unit)
    return (
        offer_title(lot, row.offer, plan.unit),
        f"{size}{' *' if row.offer.assumed else ''}",
        str(row.count),
        *("?" if each is None else money(each) for each in (row.each, row.sum)),
    )


def shopping_lines(plan: Cutting, rows: Sequence[ShoppingRow]) -> Iterator[str]:
    """What all that costs, what has no price, and what is at hand."""
    bought = [row for row in rows if not row.offer.at_hand]
    if bought:
        yield f"To pay: {to_pay_said(rows)}. {NO_HARDWARE}"
    else:
        yield "Nothing has to be bought."
    if lacking := without_price(rows):
        named = "; ".join(row_said(plan, row) for row in lacking)
        yield f"Without a price, and not in the sum: {named}."
    if any(row.offer.assumed for row in bought):
        yield "* a usual size, assumed: say in the stock what is sold (`sold`)."
    for row in rows:
        if row.offer.at_hand:
            where = f" ({row.offer.where})" if row.offer.where else ""
            yield f"At hand: {row.supply.name}{where}: {row_said(plan, row)}."


def balance_table(plan: Cutting) -> ToldTable:
    """What becomes of what is cut, lot by lot."""
    rows = []
    for at, planned in enumerate(plan.lots):
        balance = balance_of(plan, at)
        sheets = any(each.width for each in planned.lot.supplies)
        measure = (AREAS if sheets else RUNS)[plan.unit]
        amounts = (balance.taken, balance.in_pieces, balance.kept, balance.lost)
        told = (*map(measure.said, amounts), f"{100 * balance.waste:.1f}")
        rows.append((lot_title(planned.lot, plan.unit), *told))
    return ToldTable(
        "What becomes of it",
        (
            ("material", "text"),
            *((each, "figure") for each in ("taken", "in pieces", "kept", "thrown away", "%")),
        ),
        tuple(rows),
        ((),) * len(rows),
    )
