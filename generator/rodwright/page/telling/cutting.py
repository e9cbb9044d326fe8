"""A cutting plan as `cut` says it, with its pictures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rodwright.cutting.shopping import shopping_rows
from rodwright.cutting.steps import LotSteps
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import LotPlan
from rodwright.handover.cut_sequence import steps_of
from rodwright.handover.cut_told import (
    balance_table,
    left_line,
    lot_table,
    shopping_lines,
    shopping_table,
    unused_line,
)
from rodwright.handover.cut_words import cautions, lot_summary, lot_title, one_more_lines
from rodwright.lengths import LengthUnit
from rodwright.page import document as page
from rodwright.page.telling.tables import told
from rodwright.pictures.cutting import cutting_pages
from rodwright.pictures.svg import to_svg


def cutting_told(cutting: Cutting) -> page.Sheet:
    """What each stock takes and how good that is, its sheets and boards, and what to buy.

    Raises:
        ValueError: the cuts of a sheet can't be told.
    """
    steps, unit = steps_of(cutting), cutting.unit
    rows = shopping_rows(cutting)
    drawings: list[page.Drawing] = []
    lots: list[page.Table] = []
    for at, (planned, each) in enumerate(zip(cutting.lots, steps, strict=True)):
        drawings += _drawings(planned, each, unit)
        table = told(lot_table(cutting, at, each))
        notes = (f"{lot_summary(planned, unit)}.", unused_line(cutting, at))
        lots.append(replace(table, note=" ".join(filter(None, notes))))
    to_pay, *further = shopping_lines(cutting, rows)
    buying = told(shopping_table(cutting, rows))
    return page.Sheet(
        (
            *_left(cutting),
            to_pay,
        ),
        tuple(drawings),
        (*((buying,) if buying.rows else ()), *lots, told(balance_table(cutting))),
        (
            *further,
            *(f"One more size: {line}." for line in one_more_lines(cutting)),
            *cautions(cutting, steps),
        ),
    )


def _drawings(planned: LotPlan, steps: LotSteps, unit: LengthUnit) -> Iterator[page.Drawing]:
    caption = f"{lot_title(planned.lot, unit)}: {lot_summary(planned, unit)}"
    pictures = cutting_pages(steps, unit)
    for number, picture in enumerate(pictures, start=1):
        which = f" ({number} of {len(pictures)})" if len(pictures) > 1 else ""
        yield page.Drawing(f"{caption}{which}", to_svg(picture))


def _left(cutting: Cutting) -> Iterator[str]:
    """What found no place, which has to be known first."""
    for at in range(len(cutting.lots)):
        if left := left_line(cutting, at):
            yield f"There is {left}."
