"""Labels for pieces and offcuts, to be cut out and taped on: pages of A4 or Letter, in mm."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.lengths import LengthUnit
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Drawing, Lettering, Mark, Point, Stroke
from rodwright.pictures.paper import THIN, wrapped

PAGES: dict[LengthUnit, tuple[float, float]] = {"mm": (210.0, 297.0), "in": (215.9, 279.4)}
"""A4 (ISO 216) and Letter (ASME Y14.1, size A), upright; from memory."""
_MARGIN = 8.0
"""What printers leave white (common practice, no source)."""
_COLUMNS, _HEIGHT = 3, 34.0
_INSIDE = 2.5
_NAME, _TEXT, _LEADING = 8.0, 2.8, 3.6
_MORE = "more: see the cut list"


@dataclass(frozen=True, slots=True)
class LabelText:
    """What one label says: ``name`` large, and ``lines`` below it."""

    name: str
    lines: tuple[str, ...]


def label_pages(labels: Sequence[LabelText], unit: LengthUnit, title: str) -> tuple[Drawing, ...]:
    """Pages of labels in rows of three, in their order."""
    width, height = PAGES[unit]
    each = _COLUMNS * int((height - 2 * _MARGIN) / _HEIGHT)
    pages = [labels[at : at + each] for at in range(0, len(labels), each)]
    return tuple(
        Drawing(
            width,
            height,
            f"{title}: labels {number} of {len(pages)}",
            f"Labels to cut out: {', '.join(label.name for label in page)}.",
            tuple(_page(page, width)),
            "mm",
        )
        for number, page in enumerate(pages, start=1)
    )


def _page(labels: Sequence[LabelText], width: float) -> Iterator[Mark]:
    wide = (width - 2 * _MARGIN) / _COLUMNS
    for number, label in enumerate(labels):
        row, column = divmod(number, _COLUMNS)
        at = (_MARGIN + column * wide, _MARGIN + row * _HEIGHT)
        yield from _label(label, at, wide)


def _label(label: LabelText, at: Point, wide: float) -> Iterator[Mark]:
    left, top = at
    right, foot = left + wide, top + _HEIGHT
    corners = ((left, top), (right, top), (right, foot), (left, foot), (left, top))
    yield Stroke((corners,), THIN, dashes=(1.0, 1.0))
    room = wide - 2 * _INSIDE
    size = min(_NAME, _NAME * room / max(text_width(label.name, _NAME), 1.0))
    base = top + _INSIDE + 0.8 * _NAME
    yield Lettering((left + _INSIDE, base), label.name, size, "start")
    lines = [line for text in label.lines for line in wrapped(text, room, _TEXT)]
    most = int((foot - _INSIDE - base) / _LEADING)
    if len(lines) > most:
        lines = [*lines[: most - 1], _MORE]
    for number, line in enumerate(lines, start=1):
        narrow = min(_TEXT, _TEXT * room / max(text_width(line, _TEXT), 1.0))
        yield Lettering((left + _INSIDE, base + number * _LEADING), line, narrow, "start")
