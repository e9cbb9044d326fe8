"""The drawings as pages of the job book, and as files for single uses."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from functools import partial
from typing import Any

from rodwright.handover.drawing_dxf import drawing_dxf
from rodwright.lengths import format_length
from rodwright.opening.closings import closing_text, closings_round
from rodwright.paper.drawings.layout import DrawnSheet
from rodwright.paper.drawings.swings import LEGEND
from rodwright.paper.sections import Section
from rodwright.paper.typesetting import typeset
from rodwright.pictures.drafting.inked import draw
from rodwright.pictures.svg import to_svg
from rodwright.unit import Swing, Unit

_FOLDER = "drawings"
_STEPS = {"mm": "0.1 mm", "in": "1/64 in"}
_ANGLES = {
    "first": "First-angle projection: what is seen from the left stands on the right of the front, "
    "what is seen from above below it.",
    "third": "Third-angle projection: what is seen from the left stands on the left of the front, "
    "what is seen from above over it.",
}


def drawings_section(unit: Unit, drawn: Sequence[DrawnSheet]) -> Section:
    """The pages of drawings: which there are, how they are read, and each on its sheet."""
    sheets = _sheets(drawn)
    data = {
        "sheets": sheets,
        "conventions": list(_conventions(unit, drawn)),
        "opening": list(_opening(unit)),
        "services": list(_services(unit)),
    }
    return Section("drawings", "Drawings", data, _pictures(drawn))


def drawing_files(
    unit: Unit, drawn: Sequence[DrawnSheet], when: datetime | None = None
) -> dict[str, bytes]:
    """``book/drawings.pdf`` with every sheet, and each as SVG and as DXF below ``book/drawings/``.

    ``when`` is the date that the PDF carries.

    Raises:
        ProblemsError: Typst isn't installed.
    """
    data = {"title": unit.title, "sheets": _sheets(drawn)}
    (pdf,) = typeset("drawing_sheets", data, _pictures(drawn), when=when)
    found = {"book/drawings.pdf": pdf}
    for each in drawn:
        drawing = draw(each.sheet, _told(each))
        found[f"book/{_FOLDER}/{each.name}.svg"] = to_svg(drawing).encode()
        found[f"book/{_FOLDER}/{each.name}.dxf"] = drawing_dxf(each.sheet)
    return found


def _pictures(drawn: Sequence[DrawnSheet]) -> dict[str, bytes]:
    """Each sheet by its file's name, with words that can be found."""
    return {
        _file(each): to_svg(draw(each.sheet, _told(each)), words=True).encode() for each in drawn
    }


def _sheets(drawn: Sequence[DrawnSheet]) -> list[dict[str, Any]]:
    return [
        {
            "number": each.sheet.titles.sheet[0],
            "shows": each.title,
            "scale": f"1:{each.sheet.scale}",
            "file": _file(each),
            "told": _told(each),
            "width": each.sheet.paper.width,
            "height": each.sheet.paper.height,
        }
        for each in drawn
    ]


def _file(each: DrawnSheet) -> str:
    return f"{_FOLDER}/{each.name}.svg"


def _told(each: DrawnSheet) -> str:
    """What is to be seen, for those who have it read to them."""
    names = ", ".join(view.view.name for view in each.sheet.views)
    return f"{names}, at 1:{each.sheet.scale}."


def _conventions(unit: Unit, drawn: Sequence[DrawnSheet]) -> Iterator[str]:
    """What lines, hatches and figures mean; only what occurs."""
    views = [view.view for each in drawn for view in each.sheet.views]
    yield _ANGLES[drawn[0].sheet.titles.angle]
    if any(view.hidden for view in views):
        yield "Dashed: panels that something stands before, as they are before joints are cut."
    if any(isinstance(motion, Swing) for motion in unit.motions):
        yield LEGEND
    if any(view.moved for view in views):
        yield "Dashes with two dots: doors and drawers open as far as they go, and their way."
    kinds = {cut.kind for view in views for cut in view.cuts}
    if kinds & {"sheet", "end grain", "along the grain"}:
        yield (
            "Hatched: what a section cuts. Lines in pairs are sheet goods, single ones solid wood "
            "across its grain, dashes solid wood along it."
        )
    if any(dimension.running for view in views for dimension in view.dimensions):
        yield (
            "Figures at the ends of lines that all begin at one dot: heights of upper faces from "
            "the floor line."
        )
    yield (
        "The figures of a chain add up to what it measures in all: thicknesses are shown as they "
        f"are, a clear space may be shown {_STEPS[unit.display_unit]} off. Don't measure the paper."
    )


def _opening(unit: Unit) -> Iterator[str]:
    """How the gaps at the front are closed."""
    shape = unit.opening.shape if unit.opening is not None else None
    if shape is None:
        return
    say = partial(format_length, unit=unit.display_unit)
    yield (
        "Outer dimensions are the opening's from corner to corner, inner ones the carcass's. Gaps "
        "are the likeliest; measure again before anything is cut to them."
    )
    for each in closings_round(unit):
        yield f"{each.side.capitalize()}: {closing_text(each, say)}."


def _services(unit: Unit) -> Iterator[str]:
    if unit.services:
        yield f"Cut out round: {', '.join(unit.services)}."
        yield (
            "Find wires and pipes in the wall before anything is drilled or screwed into it. Work "
            "on wiring, gas and water is for those who are licensed to do it where you are."
        )
