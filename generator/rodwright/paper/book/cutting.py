"""The cutting plan: every sheet and board as a picture, and its cuts in their order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from rodwright.cutting.flaws import flaws_said
from rodwright.cutting.steps import LotSteps, SheetSteps
from rodwright.cutting.steps.words import (
    StepWords,
    contour_words,
    preparation,
    step_words,
    written,
)
from rodwright.cutting.whole import Cutting
from rodwright.handover.cut_sequence import cut_with, steps_of
from rodwright.handover.cut_words import (
    cautions,
    counted,
    lot_summary,
    lot_title,
    noun,
    numbers_said,
    refs_said,
    size_said,
)
from rodwright.lengths import LengthUnit
from rodwright.paper.sections import Section
from rodwright.pictures.cutting import cutting_pages
from rodwright.pictures.svg import to_svg

_TITLE = "Cutting plan"


def cutting_section(cutting: Cutting, page: tuple[float, float]) -> Section:
    """Pages of a plan; ``page`` is the room for a picture, mm, wider than high.

    Raises:
        ValueError: the cuts of a sheet can't be told.
    """
    steps, files = steps_of(cutting), dict[str, bytes]()
    lots = []
    for number, each in enumerate(steps, 1):
        names = []
        for at, picture in enumerate(cutting_pages(each, cutting.unit, page), 1):
            names.append(f"cutting/{number}-{at}.svg")
            files[names[-1]] = to_svg(picture, words=True).encode()
        lots.append(_lot(cutting, number - 1, each) | {"pictures": names})
    data = {
        "unit": cutting.unit,
        "with": " ".join(cut_with(cutting)),
        "cautions": list(cautions(cutting, steps)),
        "lots": lots,
        "why": [],
        "page": list(page),
    }
    return Section("cutting", _TITLE, data, files)


def no_plan_section(why: Sequence[str]) -> Section:
    """The page that says why there is no plan."""
    data = {"unit": "", "with": "", "cautions": [], "lots": [], "why": list(why), "page": [0, 0]}
    return Section("cutting", _TITLE, data)


def _lot(cutting: Cutting, at: int, steps: LotSteps) -> dict[str, Any]:
    planned, unit = cutting.lots[at], cutting.unit
    return {
        "title": lot_title(planned.lot, unit),
        "summary": lot_summary(planned, unit),
        "noun": noun(planned.lot),
        "left": [f"{each.count} x {each.name}" for each in planned.plan.left],
        "table": [_sheet_row(cutting, at, steps, sheet) for sheet in steps.sheets],
        "sheets": [_sheet(steps, sheet, unit) for sheet in steps.sheets],
    }


def _sheet_row(cutting: Cutting, at: int, steps: LotSteps, sheet: SheetSteps) -> list[str]:
    unit, lot = cutting.unit, cutting.lots[at].lot
    kept = [each for number in sheet.numbers for each in cutting.kept_of(at, number - 1)]
    return [
        numbers_said(sheet.numbers),
        size_said(lot, sheet.stock.length, sheet.stock.width, unit),
        refs_said(steps, sheet),
        ", ".join(
            f"{each.name} {size_said(lot, each.offcut.length, each.offcut.width, unit)}"
            + (f" ({flaws_said(each.flaws)})" if each.flaws else "")
            for each in kept
        ),
    ]


def _sheet(steps: LotSteps, sheet: SheetSteps, unit: LengthUnit) -> dict[str, Any]:
    """A sheet's cuts in words."""
    lot, many = steps.lot, len(sheet.numbers)
    size = size_said(lot, sheet.stock.length, sheet.stock.width, unit)
    named = sheet.stock.name if size in sheet.stock.name else f"{sheet.stock.name}, {size}"
    like = f" ({counted(lot, many)} like this)" if many > 1 else ""
    before = preparation(steps, sheet, unit)
    whole = sheet.whole and f"No cut: it is {', '.join(written(steps, sheet.whole))} as it stands."
    return {
        "title": f"{noun(lot).capitalize()} {numbers_said(sheet.numbers)}: {named}{like}",
        "before": [each for each in (before, whole) if each],
        "steps": [_step(words) for words in _words(steps, sheet, unit)],
    }


def _words(steps: LotSteps, sheet: SheetSteps, unit: LengthUnit) -> Iterator[StepWords]:
    yield from (step_words(steps, sheet, step, unit) for step in sheet.steps)
    yield from (contour_words(steps, contour, unit) for contour in sheet.contours)


def _step(words: StepWords) -> dict[str, Any]:
    return {
        "number": words.number,
        "hand": words.hand,
        "size": words.size,
        "cut": words.cut,
        "setting": words.setting,
        "against": words.against,
        "leaves": "; ".join(words.leaves),
        "mind": "; ".join(words.mind),
    }
