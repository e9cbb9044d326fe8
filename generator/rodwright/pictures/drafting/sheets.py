"""Views on a sheet: which scale, which paper, and where each stands; mm of paper, y down.

Views stand in columns and rows, lined up by their origins (ISO 5456-2): one that is ``aligned``
shares its column's x and its row's y with the others there.  What belongs to a view, dimensions and
all, meets nothing of the next one's.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from rodwright.pictures.drafting.figures import (
    BETWEEN,
    BORDER,
    FILING,
    LARGE_PAPERS,
    PAPERS,
    SCALES,
    Paper,
)
from rodwright.pictures.drafting.letters import Rect, around
from rodwright.pictures.drafting.on_paper import DraftedView, draft_view
from rodwright.pictures.drafting.title_block import (
    DraftedBlock,
    TitleBlock,
    draft_block,
    title_height,
)
from rodwright.pictures.drafting.views import View

_LEAST = 45.0
"""Where nothing of the views is longer than this on paper, larger paper is taken instead of a
smaller scale."""

_INSIDE = 2.0
"""Between views and the frame or the title block."""


@dataclass(frozen=True, slots=True)
class Place:
    """A view's column and row on the sheet, from the left and from the top; ``aligned`` ones line
    up with the other aligned ones of both."""

    view: View
    column: int = 0
    row: int = 0
    aligned: bool = True


@dataclass(frozen=True, slots=True)
class Sheet:
    """A drawing that has found its paper and its scale."""

    paper: Paper
    scale: int
    views: tuple[DraftedView, ...]
    block: DraftedBlock
    titles: TitleBlock

    @property
    def frame(self) -> Rect:
        """The frame round the drawing."""
        return _frame(self.paper)


def projected(
    front: View | None, side: View | None, above: View | None, block: TitleBlock
) -> tuple[Place, ...]:
    """Front, view from the left and view from above where the block's angle wants them.

    In first-angle projection the view from the left stands on the right of the front and that from
    above below it; in third-angle projection on the left, and above it (ISO 5456-2).
    """
    if block.angle == "first":
        at = ((front, 0, 0), (side, 1, 0), (above, 0, 1))
    else:
        at = ((front, 1, 1), (side, 0, 1), (above, 1, 0))
    return tuple(Place(view, column, row) for view, column, row in at if view is not None)


def draw_sheet(
    places: Sequence[Place],
    block: TitleBlock,
    papers: Sequence[Paper] | None = None,
    scales: Sequence[int] | None = None,
) -> Sheet:
    """The views on the smallest sheet for the largest scale at which they fit on any.

    ``papers`` are sheets to choose from, upright, from the smallest up; they may be turned.
    ``scales`` are those to choose from, the largest first (None: all of :data:`SCALES`).

    Raises:
        ValueError: no scale brings them on any of the sheets.
    """
    usual = PAPERS[block.display_unit] if papers is None else papers
    large = LARGE_PAPERS[block.display_unit] if papers is None else ()
    longest = max(_longest(place.view) for place in places)
    for choice in (usual, large):
        for scale in scales or SCALES[block.display_unit]:
            if papers is None and choice is usual and scale > 1 and longest / scale < _LEAST:
                break
            found = _at_scale(places, block, choice, scale)
            if found is not None:
                return found
    raise ValueError("no scale brings the views on a sheet")


def numbered(sheet: Sheet, supplement: str, number: tuple[int, int]) -> Sheet:
    """The sheet with its supplementary title, and its number of how many, in its title block."""
    titles = replace(sheet.titles, supplement=supplement, sheet=number)
    return replace(sheet, titles=titles, block=_drawn_block(titles, sheet.paper, sheet.scale))


def _drawn_block(titles: TitleBlock, paper: Paper, scale: int) -> DraftedBlock:
    corner = (paper.width - BORDER, paper.height - BORDER)
    return draft_block(titles, corner, f"1:{scale}, {paper.name}")


def _longest(view: View) -> float:
    return max(view.high[0] - view.low[0], view.high[1] - view.low[1])


def _at_scale(
    places: Sequence[Place], block: TitleBlock, papers: Iterable[Paper], scale: int
) -> Sheet | None:
    """The smallest sheet that holds the views at a scale."""
    lying = [each for paper in papers for each in (paper.turned(), paper)]
    if not any(_may_fit(places, paper, scale) for paper in lying):
        return None
    drafted = [draft_view(place.view, scale) for place in places]
    spread = _spread(places, drafted)
    for paper in lying:
        moved = _on_paper(spread, paper, title_height(block))
        if moved is not None:
            return Sheet(paper, scale, moved, _drawn_block(block, paper, scale), block)
    return None


def _may_fit(places: Sequence[Place], paper: Paper, scale: int) -> bool:
    """Whether each view without its dimensions is smaller than the frame."""
    return all(
        (view.high[0] - view.low[0]) / scale < paper.width - BORDER - FILING
        and (view.high[1] - view.low[1]) / scale < paper.height - 2 * BORDER
        for view in (place.view for place in places)
    )


def _spread(places: Sequence[Place], views: Sequence[DraftedView]) -> list[DraftedView]:
    """The views side by side in their columns and rows."""
    across = _origins(
        [
            (each.column, each.aligned, v.extent.left, v.extent.right)
            for each, v in _both(places, views)
        ]
    )
    down = _origins(
        [
            (each.row, each.aligned, v.extent.top, v.extent.bottom)
            for each, v in _both(places, views)
        ]
    )
    return [view.moved(x, y) for view, x, y in zip(views, across, down, strict=True)]


def _both(
    places: Sequence[Place], views: Sequence[DraftedView]
) -> Iterable[tuple[Place, DraftedView]]:
    return zip(places, views, strict=True)


def _origins(cells: Sequence[tuple[int, bool, float, float]]) -> list[float]:
    """Where origins go along an axis: of views by their number, whether they line up, and what
    they cover before and after their origin."""
    at = 0.0
    lined: dict[int, float] = {}
    centred: dict[int, float] = {}
    for number in sorted({cell[0] for cell in cells}):
        rows = [(low, high) for n, lines_up, low, high in cells if n == number and lines_up]
        alone = [(low, high) for n, lines_up, low, high in cells if n == number and not lines_up]
        before, after = (
            (min(low for low, _ in rows), max(high for _, high in rows)) if rows else (0.0, 0.0)
        )
        wide = max([after - before, *(high - low for low, high in alone)])
        centred[number] = at + wide / 2
        lined[number] = centred[number] - (before + after) / 2
        at += wide + BETWEEN
    return [
        lined[number] if lines_up else centred[number] - (low + high) / 2
        for number, lines_up, low, high in cells
    ]


def _frame(paper: Paper) -> Rect:
    return Rect(FILING, BORDER, paper.width - BORDER, paper.height - BORDER)


def _on_paper(
    views: Sequence[DraftedView], paper: Paper, title: float
) -> tuple[DraftedView, ...] | None:
    """The views within the frame and clear of the title block, in the middle of what room there
    is; None where they don't fit."""
    frame = _frame(paper).grown(-_INSIDE)
    block = Rect(paper.width - BORDER - 180.0, paper.height - BORDER - title, paper.width, 1e9)
    whole = around([view.extent for view in views])
    wide, tall = whole.right - whole.left, whole.bottom - whole.top
    spare = frame.right - frame.left - wide
    if spare < 0:
        return None
    above = block.top - _INSIDE - frame.top - tall
    under = frame.bottom - frame.top - tall
    tries = [(spare / 2, above / 2)] if above >= 0 else []
    if under >= 0:
        # Beside the title block, or on both sides of it.
        tries += [(x, y) for y in (under / 2, 0.0, under) for x in (spare / 2, 0.0, spare)]
    for x, y in tries:
        moved = tuple(
            view.moved(frame.left + x - whole.left, frame.top + y - whole.top) for view in views
        )
        if not any(view.extent.grown(_INSIDE).meets(block) for view in moved):
            return moved
    return None
