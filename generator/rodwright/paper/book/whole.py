"""All sections as one PDF, with a cover, headings, page numbers and an outline."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from rodwright.paper.sections import Section
from rodwright.paper.typesetting import paper_name, typeset
from rodwright.pictures.drafting.figures import PAPERS
from rodwright.pictures.drafting.figures import Paper as Sheet
from rodwright.pictures.glyphs import text_width
from rodwright.trade.label_sheets import Paper
from rodwright.unit import Unit

SIZES: dict[Paper, tuple[float, float]] = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
"""A4 (ISO 216) and Letter (ASME Y14.1, size A, from memory), standing, mm."""
_SMALL = 8.0 * 25.4 / 72
"""The type of the lines at head and foot, mm: 8 points."""
_TITLE, _NUMBER, _FOOT = 110.0, 50.0, 130.0
"""Room in these lines, mm: what a standing page of either paper has."""


def usual_paper(unit: Unit) -> Paper:
    """What a maker prints on: Letter for one who works in inches."""
    return "letter" if unit.display_unit == "in" else "a4"


def lying(paper: Paper) -> tuple[float, float]:
    """The room for a picture on a page that lies, mm: the page less the lines at its head and foot
    and the edge that is bound."""
    short, long = SIZES[paper]
    return long - 20.0, short - 24.0


def drawing_papers(paper: Paper) -> tuple[Sheet, ...]:
    """What drawings of the book are drawn on: one size, so that they are printed with it."""
    return PAPERS["mm" if paper == "a4" else "in"][:1]


def book_pdf(
    unit: Unit,
    cover: tuple[Mapping[str, Any], Mapping[str, bytes]],
    sections: Sequence[Section],
    paper: Paper,
    when: datetime | None,
) -> bytes:
    """The job book of a cover and sections; equal ones give equal bytes.

    ``when`` is the date that the PDF carries.

    Raises:
        ProblemsError: Typst isn't installed.
        ValueError: two sections have another picture by the same name.
    """
    data, files = cover
    gathered = dict(files)
    for section in sections:
        for name, content in section.files.items():
            if gathered.setdefault(name, content) != content:
                raise ValueError(f"two sections have a picture called {name}")
    document = {
        "paper": paper_name(paper),
        "title": unit.title,
        "short": _short(unit.title, _TITLE),
        "author": ", ".join(filter(None, (unit.author, unit.organisation))),
        "date": unit.date,
        "number": _short(_numbered(unit), _NUMBER),
        "foot": _foot(unit),
        "cover": dict(data),
        "sections": [
            {"name": each.name, "title": each.title, "data": each.data} for each in sections
        ],
    }
    (made,) = typeset("book", document, gathered, when=when)
    return made


def _foot(unit: Unit) -> str:
    """What stands at the foot of each page: whose it is, and of which day."""
    return _short(", ".join(filter(None, (unit.date, unit.author, unit.organisation))), _FOOT)


def _numbered(unit: Unit) -> str:
    """What tells this job, and this edition of it, from others."""
    revision = f"revision {unit.revision}" if unit.revision else ""
    return ", ".join(filter(None, (unit.number, revision)))


def _short(text: str, room: float) -> str:
    """A text that takes no more than ``room`` (mm) of the line at the head or the foot."""
    if text_width(text, _SMALL) <= room:
        return text
    kept = next(
        at for at in range(len(text), -1, -1) if text_width(f"{text[:at]}…", _SMALL) <= room
    )
    return f"{text[:kept].rstrip()}…"
