"""Front, side and plan on one sheet, with hidden lines and the main dimensions.

A unit in millimetres is drawn in first-angle projection (ISO 5456-2): the view from the left
stands to the right of the front view, the view from above below it.  One in inches is drawn in
third-angle projection: the view from the left stands to the left, the view from above on top.
Sheets, scales, lines and dimensions are those of :mod:`rodwright.pictures.drafting.figures`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

import numpy as np

from rodwright.lengths import format_length
from rodwright.pictures.bodies import Body, bodies_of, foremost, placed_facets
from rodwright.pictures.camera import FROM_LEFT, FRONT, PLAN, Array, Camera
from rodwright.pictures.drafting.chains import chains, dimensions_of, pitch_note
from rodwright.pictures.drafting.figures import NARROW
from rodwright.pictures.drafting.inked import LEAST_HIDDEN, draw
from rodwright.pictures.drafting.on_paper import DraftedView
from rodwright.pictures.drafting.seen import ViewName, whole
from rodwright.pictures.drafting.sheets import Sheet, draw_sheet, numbered, projected
from rodwright.pictures.drafting.title_block import TitleBlock, fits_supplement, title_block_of
from rodwright.pictures.drafting.views import Dimension, View
from rodwright.pictures.facets import Facets
from rodwright.pictures.hidden import LEAST_LENGTH, lines
from rodwright.pictures.ink import Drawing, Mark, Stroke
from rodwright.pictures.linework import Line, tidy
from rodwright.pictures.sagged import after, drawn, exaggeration
from rodwright.pictures.visible import mouth_lines
from rodwright.strength.sag_lines import SagLine
from rodwright.unit import Unit

LONG_DASHES = (6.0, 1.0)
"""Of lines that levels sag to, mm."""
DEEPEST = 4.0
"""No sag is drawn deeper, mm on paper."""
MOST = 36
"""A view that would have more dimensions than this has its main ones alone."""

_VIEWS: tuple[tuple[ViewName, str, Camera], ...] = (
    ("front", "Front", FRONT),
    ("side", "From the left", FROM_LEFT),
    ("plan", "From above", PLAN),
)


def lay_out(unit: Unit, block: TitleBlock) -> Sheet:
    """The three views with their dimensions, on the sheet that holds them.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    bodies = bodies_of(unit, {})
    facets = placed_facets(bodies)
    front, side, above = (
        _view(unit, bodies, facets, name, title, camera) for name, title, camera in _VIEWS
    )
    return draw_sheet(projected(front, side, above, block), block)


def draw_views(unit: Unit, sagging: Sequence[SagLine] = ()) -> Drawing:
    """The sheet of a unit, in mm of paper, with the lines of levels that sag in its front view.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    sheet = lay_out(unit, title_block_of(unit, "Views"))
    more: list[Mark] = []
    if sagging:
        times = exaggeration(sagging, DEEPEST * sheet.scale)
        more += _sag_marks(sagging, sheet.views[0], times)
        sheet = numbered(sheet, _sag_told(unit, times), sheet.titles.sheet)
    figures = " x ".join(format_length(length, unit.display_unit) for length in unit.size)
    drawing = draw(
        sheet,
        f"{unit.title} in three views at 1:{sheet.scale}, {sheet.titles.angle}-angle projection. "
        f"Overall {figures} {unit.display_unit} (width x height x depth). "
        "Dashed lines are hidden.",
        more,
    )
    return replace(drawing, title=f"{unit.title}, front, side and plan")


def shown_dimensions(unit: Unit, view: ViewName) -> tuple[Dimension, ...]:
    """What is dimensioned in a view: all that stands outside it, or the main dimensions where
    those are too many; the height beside the front view alone."""
    outside = [
        chain
        for chain in chains(unit, view)
        if chain.dimensions[0].side != "inside"
        and (view != "side" or chain.name != "overall" or chain.dimensions[0].along == "x")
    ]
    if sum(len(chain.dimensions) for chain in outside) > MOST:
        outside = [chain for chain in outside if chain.main]
    return dimensions_of(outside)


def _view(
    unit: Unit, bodies: Sequence[Body], facets: Facets, name: ViewName, title: str, camera: Camera
) -> View:
    visible, hidden = lines([body.placed_solid() for body in foremost(bodies, camera)], camera)
    visible = np.concatenate([visible, mouth_lines(facets, camera)])
    solid, dashed = tidy(_as_lines(visible), _as_lines(hidden), LEAST_LENGTH)
    (left, right), (foot, head) = whole(unit, name)
    return View(
        title,
        (left, foot),
        (right, head),
        visible=tuple(solid),
        hidden=tuple(dashed),
        dimensions=shown_dimensions(unit, name),
        notes=pitch_note(unit, name),
    )


def _as_lines(ends: Array) -> list[Line]:
    return [((ax, ay), (bx, by)) for (ax, ay), (bx, by) in ends.tolist()]


def _sag_marks(sagging: Sequence[SagLine], view: DraftedView, times: float) -> Iterator[Mark]:
    """The upper faces of levels as they sag, in long dashes."""
    for line in sagging:
        deepest = max(abs(down) for _, down in line.line) * times / view.scale
        if deepest >= LEAST_HIDDEN / 2:
            points = [(x, line.box.high[2] - down * times) for x, down in line.line]
            yield Stroke((tuple(map(view.page, points)),), NARROW, dashes=LONG_DASHES)


def _sag_told(unit: Unit, times: float) -> str:
    """What the long dashes are, as fully as there is room for in the title block."""
    wordings = (
        f"Long dashes: sag {after(unit.loading.years)}, drawn {drawn(times)}",
        f"Long dashes: sag, drawn {drawn(times)}",
    )
    return next((each for each in wordings if fits_supplement(each)), f"Sag: {drawn(times)}")
