"""Will it hold, will it stand: the figures as `strength` says them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from rodwright.handover.strength_list import (
    NO_ENGINEER,
    StrengthRow,
    counted_text,
    judged_text,
    limit_text,
    marks_of,
    marks_said,
    people_text,
    remedy_text,
    spare_text,
    strength_rows,
    told_figure,
)
from rodwright.lengths import LengthUnit
from rodwright.page import document as page
from rodwright.page.telling.tables import unbroken
from rodwright.pictures.loaded import draw_loaded
from rodwright.pictures.svg import to_svg
from rodwright.strength import strength_of
from rodwright.strength.results import Group
from rodwright.strength.sag_lines import sag_lines
from rodwright.unit import Unit

_JOINER = "\u2060"
"""What keeps marks in one line (Unicode: word joiner)."""


def strength_told(unit: Unit) -> page.Sheet:
    """Every figure by groups, with the drawing of the unit under its loads.

    Raises:
        ValueError: as :func:`rodwright.strength.strength_of`.
    """
    shown = unit.display_unit
    rows = strength_rows(strength_of(unit), shown)
    lines = sag_lines(unit)
    drawing = [draw_loaded(unit, lines)] if lines else []
    return page.Sheet(
        tuple(filter(None, (counted_text(rows), marks_said(rows), NO_ENGINEER))),
        tuple(page.Drawing(each.description, to_svg(each)) for each in drawing),
        tuple(
            _table(group, list(those), shown)
            for group, those in groupby(rows, key=lambda row: row.result.group)
        ),
    )


def _table(group: Group, rows: Sequence[StrengthRow], unit: LengthUnit) -> page.Table:
    lifting = group is Group.LIFTING
    columns = ("of", "what", "figure", *(("people",) if lifting else ()), "holds")
    return page.Table(
        group.capitalize(),
        columns,
        tuple(each not in ("of", "what") for each in columns),
        tuple(_cells(row, unit, lifting=lifting) for row in rows),
        tuple(row.parts for row in rows),
    )


def _cells(row: StrengthRow, unit: LengthUnit, *, lifting: bool) -> tuple[str, ...]:
    """What it is of and which figure, with what would help below; the figure with its limit; how
    many times over it holds, or a word where it doesn't."""
    result = row.result
    figure = (told_figure(result, unit), limit_text(result, unit))
    holds = (spare_text(result), judged_text(result))
    return (
        row.subject,
        "\n".join((_what(row), *_further(row, unit))),
        unbroken("\n".join(filter(None, figure))),
        *((people_text(result),) if lifting else ()),
        unbroken("\n".join(filter(None, holds))),
    )


def _what(row: StrengthRow) -> str:
    """Which figure it is, its marks at the last word."""
    marks = _JOINER.join(marks_of(row))
    return f"{row.result.what}\u00a0{marks}" if marks else row.result.what


def _further(row: StrengthRow, unit: LengthUnit) -> Iterator[str]:
    """What is lacking, or what would help where something doesn't hold."""
    if row.result.lacking:
        yield row.result.lacking
    if not row.result.holds:
        for each in row.result.remedies:
            word = "would do" if each.holds else "not enough"
            yield f"{word}: {remedy_text(each, row.result.measure, unit)}"
