"""The title block of a technical drawing (ISO 7200; its fields from memory); mm of paper.

It is 180 mm wide and as tall as its title needs: a long one is set smaller, in more lines, and
never below 8 points.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field

from rodwright.lengths import LengthUnit
from rodwright.pictures.drafting.figures import ANGLES, CAPITALS, SMALLEST, Angle
from rodwright.pictures.drafting.letters import ASCENT, Rect, Written, extent
from rodwright.pictures.drafting.views import Line, Point
from rodwright.pictures.glyphs import text_width
from rodwright.unit import Unit

WIDTH = 180.0
"""Of the title block (ISO 7200, from memory)."""
_LEFT, _MIDDLE = 48.0, 84.0
"""Columns: who made it; what it is. The rest, which drawing it is, has what is left."""
_ROW = 9.5
_PAD = 1.6
_VALUE = 2.5 / CAPITALS
_TITLES = (5.0 / CAPITALS, 3.5 / CAPITALS, _VALUE, SMALLEST)
"""Sizes that a title is set in, the first that does."""
_LINE = 1.22
"""From line to line of a title, as a share of its size."""
_ELLIPSIS = "…"

_CAPTIONS = {"mm": "Lengths in mm", "in": "Lengths in inches"}


@dataclass(frozen=True, slots=True)
class TitleBlock:
    """What a title block says; a field that nobody filled stays empty.

    ``kind`` is the type of document (elevations, section, part), ``supplement`` the supplementary
    title, ``sheet`` its number and of how many.  ``display_unit`` is the measure of all lengths,
    and decides on first or third angle.
    """

    title: str
    supplement: str = ""
    kind: str = ""
    number: str = ""
    revision: str = ""
    date: str = ""
    owner: str = ""
    author: str = ""
    approved_by: str = ""
    sheet: tuple[int, int] = (1, 1)
    display_unit: LengthUnit = "mm"

    @property
    def angle(self) -> Angle:
        """The angle of projection."""
        return ANGLES[self.display_unit]


def title_block_of(
    unit: Unit, kind: str, supplement: str = "", sheet: tuple[int, int] = (1, 1)
) -> TitleBlock:
    """The title block of a drawing of a unit: what its spec says of design and makers."""
    return TitleBlock(
        unit.title,
        supplement,
        kind,
        unit.number,
        unit.revision,
        unit.date,
        unit.organisation,
        unit.author,
        unit.approved_by,
        sheet,
        unit.display_unit,
    )


@dataclass(frozen=True, slots=True)
class DraftedBlock:
    """A title block on paper: its rectangle, wide and narrow lines, texts, and the symbol of the
    projection: outlines and axes."""

    rect: Rect
    wide: tuple[Line, ...] = ()
    narrow: tuple[Line, ...] = ()
    texts: tuple[Written, ...] = ()
    symbol: tuple[tuple[Point, ...], ...] = ()
    axes: tuple[Line, ...] = ()


@dataclass(slots=True)
class _Pen:
    """What has been drawn so far."""

    narrow: list[Line] = field(default_factory=list)
    texts: list[Written] = field(default_factory=list)

    def cell(self, rect: Rect, caption: str, value: str) -> None:
        """A field: its caption and what it says, in one line."""
        self.left(caption, (rect.left + _PAD, rect.top + 3.3), SMALLEST)
        size, value = _fitted(value, rect.right - rect.left - 2 * _PAD)
        if value:
            self.left(value, (rect.left + _PAD, rect.bottom - 2.0), size)

    def left(self, text: str, base: Point, size: float) -> None:
        """A text from a point on its baseline."""
        long, tall = extent(text, size)
        x, y = base
        top = y - ASCENT * size
        self.texts.append(Written(text, Rect(x, top, x + long, top + tall), size))


def title_height(block: TitleBlock) -> float:
    """How tall the title block is, mm."""
    return 4 * _ROW + max(0.0, _title(block)[2] - 2 * _ROW)


def draft_block(block: TitleBlock, corner: Point, scale: str) -> DraftedBlock:
    """The title block whose lower right corner is given."""
    right, foot = corner
    left, top = right - WIDTH, foot - title_height(block)
    pen = _Pen()
    one, two = left + _LEFT, left + _LEFT + _MIDDLE
    half, rows = (two + right) / 2, [foot - _ROW * step for step in (1, 2, 3)]
    pen.cell(Rect(left, top, one, rows[1]), "Legal owner", block.owner)
    pen.cell(Rect(left, rows[1], one, rows[0]), "Drawn by", block.author)
    pen.cell(Rect(left, rows[0], one, foot), "Approved by", block.approved_by)
    size, lines, tall = _title(block)
    pen.left("Title", (one + _PAD, top + 3.3), SMALLEST)
    base = top + 4.0 + (max(tall, 2 * _ROW) - tall) / 2 + ASCENT * size
    for number, line in enumerate(lines):
        pen.left(line, (one + _PAD, base + number * _LINE * size), size)
    pen.cell(Rect(one, rows[1], two, rows[0]), "Supplementary title", block.supplement)
    pen.cell(Rect(one, rows[0], two, foot), "Type of document", block.kind)
    pen.cell(Rect(two, top, right, rows[2]), "Number", block.number)
    pen.cell(Rect(two, rows[2], half, rows[1]), "Revision", block.revision)
    pen.cell(Rect(half, rows[2], right, rows[1]), "Date of issue", block.date)
    pen.cell(Rect(two, rows[1], half, rows[0]), "Scale", scale)
    number, of = block.sheet
    pen.cell(Rect(half, rows[1], right, rows[0]), "Sheet", f"{number} of {of}")
    pen.left(_CAPTIONS[block.display_unit], (two + _PAD, rows[0] + 3.9), SMALLEST)
    pen.left(f"{block.angle.capitalize()} angle", (two + _PAD, foot - 2.0), SMALLEST)
    symbol, axes = projection_symbol((right - 9.0, foot - _ROW / 2), block.angle, 0.6)
    narrow = [
        *(((x, top), (x, foot)) for x in (one, two)),
        *(((left, row), (right, row)) for row in rows[:2]),
        ((two, rows[2]), (right, rows[2])),
        ((half, rows[2]), (half, rows[0])),
    ]
    edge = ((left, top), (right, top)), ((left, top), (left, foot))
    below = ((right, top), (right, foot)), ((left, foot), (right, foot))
    return DraftedBlock(
        Rect(left, top, right, foot), (*edge, *below), tuple(narrow), tuple(pen.texts), symbol, axes
    )


def fits_supplement(text: str) -> bool:
    """Whether a supplementary title fits on its line."""
    return _fitted(text, _MIDDLE - 2 * _PAD)[1] == text


def _title(block: TitleBlock) -> tuple[float, list[str], float]:
    """The title's size of type, its lines, and how tall they are with their caption."""
    for size in _TITLES:
        lines = wrapped(block.title, _MIDDLE - 2 * _PAD, size)
        tall = 4.0 + len(lines) * _LINE * size + 1.0
        if tall <= 2 * _ROW:
            break
    return size, lines, tall


def wrapped(text: str, room: float, size: float) -> list[str]:
    """A text in lines no longer than ``room``; words longer than that are broken."""
    lines: list[str] = []
    line = ""
    for word in text.split():
        if line and text_width(f"{line} {word}", size) <= room:
            line = f"{line} {word}"
            continue
        if line:
            lines.append(line)
        while text_width(word, size) > room:
            end = len(word) - 1
            while end > 1 and text_width(word[:end], size) > room:
                end -= 1
            lines.append(word[:end])
            word = word[end:]
        line = word
    return [*lines, line] if line else lines


def _fitted(text: str, room: float) -> tuple[float, str]:
    """A size of type in which a text fits on a line, or the smallest and what of the text fits."""
    for size in (_VALUE, (_VALUE + SMALLEST) / 2, SMALLEST):
        if text_width(text, size) <= room:
            return size, text
    while text and text_width(text.rstrip() + _ELLIPSIS, SMALLEST) > room:
        text = text[:-1]
    return SMALLEST, text.rstrip() + _ELLIPSIS


def projection_symbol(
    centre: Point, angle: Angle, share: float = 1.0
) -> tuple[tuple[tuple[Point, ...], ...], tuple[Line, ...]]:
    """The symbol of the projection: a frustum from its side and from its small end, and its axes
    (ISO 5456-2, from memory).

    Its small end points left: seen from there it stands to the right in first-angle projection
    and to the left in third-angle projection.
    """
    # Middle of the end view, and the left and right of the side view.
    ends = {"first": (7.0, -11.0, -1.0), "third": (-7.0, 1.0, 11.0)}
    ring, small, large = ends[angle]
    side = ((small, -2.5), (large, -5.0), (large, 5.0), (small, 2.5), (small, -2.5))
    turns = [math.tau * step / 48 for step in range(49)]
    rings = [tuple((ring + r * math.cos(t), r * math.sin(t)) for t in turns) for r in (2.5, 5.0)]
    axes = (
        ((small - 2, 0.0), (large + 2, 0.0)),
        ((ring - 6.5, 0.0), (ring + 6.5, 0.0)),
        ((ring, -6.5), (ring, 6.5)),
    )

    def placed(points: Sequence[Point]) -> tuple[Point, ...]:
        return tuple((centre[0] + share * x, centre[1] + share * y) for x, y in points)

    return (
        tuple(placed(points) for points in (side, *rings)),
        tuple((line[0], line[1]) for line in map(placed, axes)),
    )
