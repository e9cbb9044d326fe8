"""The files of rods: a strip of each, and all of them in tiles."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from rodwright.handover.stamp import time_stamp
from rodwright.paper.rods.rods import rods_of
from rodwright.paper.rods.sheets import USUAL_PAPER, strip, tiles
from rodwright.paper.typesetting import typeset
from rodwright.pictures.ink import Drawing, Lettering, Stroke
from rodwright.pictures.svg import to_svg
from rodwright.trade.label_sheets import Paper
from rodwright.unit import Unit

_PAGES = "rod_pages"


def rod_files(unit: Unit, paper: Paper | None = None) -> dict[str, bytes]:
    """Each rod as a strip (SVG, PDF), and all in tiles for a printer (PDF), by names below the
    output folder.  A strip too long or too wide for one page has an SVG a page.  Unless said,
    ``paper`` is A4, or Letter for a maker in inches.

    Raises:
        ProblemsError: Typst isn't installed, or SOURCE_DATE_EPOCH is no time.
    """
    measure, when = unit.display_unit, datetime.fromisoformat(time_stamp(unit))
    files: dict[str, bytes] = {}
    sheets: list[Drawing] = []
    for rod in rods_of(unit):
        pages = strip(rod, unit.title, measure)
        for number, page in enumerate(pages, 1):
            name = f"rod-{rod.name}{f'-{number}' if len(pages) > 1 else ''}"
            files[f"book/rods/{name}.svg"] = to_svg(page).encode()
        title = f"{unit.title}: {rod.name} rod"
        files[f"book/rods/rod-{rod.name}.pdf"] = _pdf(pages, title, when)
        sheets += tiles(rod, unit.title, measure, paper or USUAL_PAPER[measure])
    files["book/rods.pdf"] = _pdf(sheets, f"{unit.title}: rods", when)
    return files


def _pdf(pages: Sequence[Drawing], title: str, when: datetime) -> bytes:
    data = {"title": title, "pages": [drawing_data(each) for each in pages]}
    (pdf,) = typeset(_PAGES, data, {}, when=when)
    return pdf


def drawing_data(drawing: Drawing) -> dict[str, Any]:
    """A drawing's lines and texts as plain data; it has no fills."""
    return {
        "width": drawing.width,
        "height": drawing.height,
        "strokes": [
            {"lines": mark.lines, "width": mark.width, "dashes": mark.dashes}
            for mark in drawing.marks
            if isinstance(mark, Stroke)
        ],
        "texts": [
            {
                "at": mark.at,
                "text": mark.text,
                "size": mark.size,
                "anchor": mark.anchor,
                "upwards": mark.upwards,
            }
            for mark in drawing.marks
            if isinstance(mark, Lettering)
        ],
    }
