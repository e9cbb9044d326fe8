"""Views brought to sheets of paper: as few as hold them at the scale that the largest needs."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.paper.drawings.sheets import READABLE, SheetOfViews, sheets_of
from rodwright.pictures.drafting.figures import PAPERS, SCALES, Paper
from rodwright.pictures.drafting.sheets import Place, Sheet, draw_sheet, numbered, projected
from rodwright.pictures.drafting.title_block import TitleBlock, title_block_of
from rodwright.pictures.drafting.views import View
from rodwright.unit import Unit

_LEAST = 20.0
"""A view whose longer side were shorter than this (mm) on paper would tell nothing."""


@dataclass(frozen=True, slots=True)
class DrawnSheet:
    """A sheet of drawings on paper; ``name`` is that of its file, ``title`` what it shows."""

    name: str
    title: str
    sheet: Sheet


def drawn_sheets(unit: Unit, papers: Sequence[Paper] | None = None) -> tuple[DrawnSheet, ...]:
    """A unit's drawings on sheets of ``papers``, all numbered; without, on what can be printed at
    home or round the corner, or larger where they need it."""
    papers = PAPERS[unit.display_unit] if papers is None else papers
    found: list[DrawnSheet] = []
    block = title_block_of(unit, "Drawing")
    scales = [each for each in SCALES[unit.display_unit] if each <= READABLE[unit.display_unit]]

    def fits(view: View) -> bool:
        return _may_draw([Place(view)], block, papers, scales) is not None

    for wanted in sheets_of(unit, fits):
        drawn = list(_spread(wanted, block, papers))
        for number, (views, sheet) in enumerate(drawn, 1):
            name = wanted.name if len(drawn) == 1 else f"{wanted.name}-{number}"
            title = wanted.title if len(drawn) == 1 else ", ".join(each.name for each in views)
            found.append(DrawnSheet(name, title, sheet))
    count = len(found)
    return tuple(
        replace(each, sheet=numbered(each.sheet, each.title, (number, count)))
        for number, each in enumerate(found, 1)
    )


def _spread(
    wanted: SheetOfViews, block: TitleBlock, papers: Sequence[Paper]
) -> Iterator[tuple[tuple[View, ...], Sheet]]:
    """Views on as few sheets as hold them at a scale that is large enough, or at the scale of the
    one that comes out smallest alone."""
    measure = block.display_unit
    alone = {view: _alone(view, block, papers) for view in wanted.views}
    left = list(wanted.views)
    while left:
        for count in range(len(left), 0, -1):
            views = tuple(left[:count])
            enough = max(wanted.scale[measure], *(alone[view].scale for view in views))
            scales = [each for each in SCALES[measure] if each <= enough]
            sheet = _together(views, wanted, block, (papers, scales))
            if sheet is not None:
                break
        yield views, sheet or alone[left[0]]
        del left[:count]


def _together(
    views: Sequence[View],
    wanted: SheetOfViews,
    block: TitleBlock,
    choice: tuple[Sequence[Paper], Sequence[int]],
) -> Sheet | None:
    """Some views on one sheet, in whichever arrangement leaves them largest; None where they don't
    fit."""
    ways: list[Sequence[Place]] = []
    if wanted.projected and len(views) == 3:
        front, side, above = views
        ways.append(projected(front, side, above, block))
    for columns in sorted({len(views), (len(views) + 1) // 2, 1}, reverse=True):
        in_row = columns == len(views)
        ways.append(
            [Place(view, at % columns, at // columns, in_row) for at, view in enumerate(views)]
        )
    found = [sheet for places in ways if (sheet := _may_draw(places, block, *choice)) is not None]
    return min(found, key=lambda sheet: sheet.scale, default=None)


def _may_draw(
    places: Sequence[Place], block: TitleBlock, papers: Sequence[Paper], scales: Sequence[int]
) -> Sheet | None:
    try:
        return draw_sheet(places, block, papers, scales)
    except ValueError:
        return None


def _alone(view: View, block: TitleBlock, papers: Sequence[Paper]) -> Sheet:
    """A view on a sheet of its own; without its refs, or with its overall sizes alone, where
    no scale brings all that is told of it on one of the papers.

    Raises:
        ValueError: not even so.
    """
    overall = tuple(each for each in view.dimensions if each.chain.startswith("overall"))
    for told in (view, replace(view, notes=()), replace(view, notes=(), dimensions=overall)):
        sheet = _may_draw([Place(told)], block, papers, _within_reason(told, block))
        if sheet is not None:
            return sheet
    return draw_sheet([Place(replace(view, notes=(), dimensions=()))], block, papers)


def _within_reason(view: View, block: TitleBlock) -> list[int]:
    """Scales at which the view isn't lost on its sheet."""
    longest = max(view.high[0] - view.low[0], view.high[1] - view.low[1])
    return [each for each in SCALES[block.display_unit] if each == 1 or longest / each >= _LEAST]
