"""Views brought to sheets of paper: as few as hold them at the scale that the largest needs."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.paper.drawings.sheets import SheetOfViews, sheets_of
from rodwright.pictures.drafting.figures import BORDER, PAPERS, Paper
from rodwright.pictures.drafting.sheets import Place, Sheet, draw_sheet, projected
from rodwright.pictures.drafting.title_block import TitleBlock, draft_block
from rodwright.pictures.drafting.views import View
from rodwright.unit import Unit


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
    for wanted in sheets_of(unit):
        drawn = list(_spread(unit, wanted, papers))
        for number, (views, sheet) in enumerate(drawn, 1):
            name = wanted.name if len(drawn) == 1 else f"{wanted.name}-{number}"
            title = wanted.title if len(drawn) == 1 else ", ".join(each.name for each in views)
            found.append(DrawnSheet(name, title, sheet))
    return tuple(
        replace(each, sheet=_numbered(each, number, len(found)))
        for number, each in enumerate(found, 1)
    )


def _spread(
    unit: Unit, wanted: SheetOfViews, papers: Sequence[Paper]
) -> Iterator[tuple[tuple[View, ...], Sheet]]:
    """Views on as few sheets as hold them without making any smaller than the one that alone on
    its sheet is smallest."""
    block = _block(unit)
    coarsest = max(_drawn([Place(view)], block, papers).scale for view in wanted.views)
    left = list(wanted.views)
    while left:
        count = len(left)
        while True:
            views = tuple(left[:count])
            sheet = _together(views, wanted, block, papers)
            if sheet is not None and (count == 1 or sheet.scale <= coarsest):
                break
            count -= 1
        yield views, sheet
        del left[:count]


def _together(
    views: tuple[View, ...], wanted: SheetOfViews, block: TitleBlock, papers: Sequence[Paper]
) -> Sheet | None:
    """Some views on one sheet, in whichever arrangement leaves them largest; None where they don't
    fit."""
    ways: list[Sequence[Place]] = []
    if wanted.projected and len(views) == 3:
        ways.append(projected(*views, block))
    for columns in sorted({len(views), (len(views) + 1) // 2, 1}, reverse=True):
        one_row = columns == len(views)
        ways.append([Place(v, at % columns, at // columns, one_row) for at, v in enumerate(views)])
    found = [sheet for places in ways if (sheet := _may_draw(places, block, papers)) is not None]
    return min(found, key=lambda sheet: sheet.scale, default=None)


def _may_draw(places: Sequence[Place], block: TitleBlock, papers: Sequence[Paper]) -> Sheet | None:
    try:
        return draw_sheet(places, block, papers)
    except ValueError:
        return None


def _drawn(places: Sequence[Place], block: TitleBlock, papers: Sequence[Paper]) -> Sheet:
    """One view on its sheet, without its refs and then with overall sizes alone where no scale
    brings all that is told of it on one of the papers.

    Raises:
        ValueError: not even so.
    """
    return draw_sheet(places, block, papers)


def _numbered(drawn: DrawnSheet, number: int, count: int) -> Sheet:
    """The sheet with its title block filled in."""
    sheet = drawn.sheet
    titles = replace(sheet.titles, supplement=drawn.title, sheet=(number, count))
    corner = (sheet.paper.width - BORDER, sheet.paper.height - BORDER)
    block = draft_block(titles, corner, f"1:{sheet.scale}, {sheet.paper.name}")
    return replace(sheet, titles=titles, block=block)


def _block(unit: Unit) -> TitleBlock:
    return TitleBlock(
        unit.title,
        kind="Drawing",
        date=unit.date,
        owner=unit.organisation,
        author=unit.author,
        display_unit=unit.display_unit,
    )
