"""Operations at the saw: from the steps of a cutting plan, or else by pieces."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from math import ceil

from rodwright.cutting.offer import lot_kind
from rodwright.cutting.steps import LotSteps, SheetSteps
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Lot
from rodwright.handover.cut_sequence import steps_of
from rodwright.lengths import LengthUnit
from rodwright.quote.tally import Count
from rodwright.trade.stock_sizes import BOARD_LENGTHS, BOARD_WIDTHS, SHEET_SIZES
from rodwright.unit import Part, Stock, Unit

_METRE, _M2 = 1e3, 1e6


def cut_by_plan(cutting: Cutting) -> Iterator[Count]:
    """Sheets and boards handled, cuts along and across, pieces cut by a router, boards planed and
    panels glued up.

    Mitred ends are left to the workings of parts, where they are counted once each.
    """
    for lot in steps_of(cutting):
        for sheet in lot.sheets:
            yield from _of_sheet(lot, sheet)
        yield "gluing_up", sum(_glue_lines(lot.lot)) / _METRE


def _of_sheet(lot: LotSteps, sheet: SheetSteps) -> Iterator[Count]:
    """What is done to a sheet or board and all that are cut like it."""
    times = len(sheet.numbers)
    yield ("sheet" if lot.lot.kind == "sheet" else "board"), times
    for step in sheet.steps:
        if step.kind != "mitre":
            yield ("rip" if step.along else "crosscut"), times
    yield "routed", times * len(sheet.contours)
    if sheet.jointed is not None:
        yield "planing", times * sheet.stock.length / _METRE


def _glue_lines(lot: Lot) -> Iterator[float]:
    """Length (mm) of the glue lines of each panel that is glued up of strips, which are called by
    its ref and a number."""
    lengths: Mapping[str, float] = {
        label.ref: label.finished[0] for labels in lot.labels.values() for label in labels
    }
    strips = Counter[str]()
    for ref in lengths if lot.glued_up else ():
        panel, _, number = ref.rpartition("-")
        if panel and number.isdigit():
            strips[panel] += 1
    for panel, count in strips.items():
        yield (count - 1) * lengths[f"{panel}-1"]


def cut_by_pieces(unit: Unit) -> Iterator[Count]:
    """The same where there is no plan.

    Every piece is freed by a cut along and a cut across; what is bought in its section by one
    across.  As many sheets and boards are handled as the pieces fill (waste left aside), and boards
    that are bought sawn are planed as far as they fill them.
    """
    by_stock: dict[Stock, list[Part]] = {}
    for part in unit.parts:
        by_stock.setdefault(part.blank.stock, []).append(part)
    for stock, parts in by_stock.items():
        sizes = [part.rough_size for part in parts]
        yield "crosscut", len(parts)
        if stock.section is None:
            yield "rip", len(parts)
        area = sum(length * width for length, width, _ in sizes)
        long, wide = usual_size(stock, unit.display_unit)
        yield ("sheet" if stock.kind == "sheet" else "board"), ceil(area / (long * wide) - 1e-9)
        if stock.sawn_thickness is not None:
            yield "planing", area / wide / _METRE
        if lot_kind(stock) == "board":
            strips = (max(1, ceil(width / wide - 1e-9)) for _, width, _ in sizes)
            lines = zip(strips, sizes, strict=True)
            yield "gluing_up", sum((count - 1) * size[0] for count, size in lines) / _METRE


def usual_size(stock: Stock, unit: LengthUnit) -> tuple[float, float]:
    """Length and width (mm) of the sheet or board that a stock is taken to come in: what the spec
    says, the widest of what is sold or at hand; or what the trade usually sells."""
    if stock.size is not None:
        return stock.size
    said = [(each.width, each.length) for each in stock.sold]
    said += [(each.width, each.length) for each in stock.pieces]
    if said:
        wide, long = max(said)
        return long, wide if stock.section is None else stock.section
    if stock.kind == "sheet":
        return SHEET_SIZES[unit][0]
    wide = BOARD_WIDTHS[unit][-1] if stock.section is None else stock.section
    return BOARD_LENGTHS[unit][0], wide
