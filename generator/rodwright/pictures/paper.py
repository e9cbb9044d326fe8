"""Small helpers for sheets of paper: scales, tags on lines, and blocks of notes; mm."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import DARK, Drawing, Fill, Lettering, Mark, Point, Stroke

HEAVY, THIN = 0.5, 0.2
"""Widths of lines (ISO 128-2, from memory)."""
SMALL = 3.6
"""Size of type."""
_LEADING = 1.32

Map = Callable[[Point], Point]
"""From the unit's frame to the paper."""


@dataclass(frozen=True, slots=True)
class Window:
    """A rectangle of the paper, y down."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def middle(self) -> float:
        """Half-way between left and right."""
        return (self.left + self.right) / 2

    def scale_for(self, points: Sequence[Point]) -> Map:
        """A map of points (x to the right, z up) that brings all of these into the window, as
        large as they go and in its middle."""
        low_x, high_x = min(x for x, _ in points), max(x for x, _ in points)
        low_z, high_z = min(z for _, z in points), max(z for _, z in points)
        scale = min(
            (self.right - self.left) / (high_x - low_x), (self.bottom - self.top) / (high_z - low_z)
        )
        middle_x, middle_z = (low_x + high_x) / 2, (low_z + high_z) / 2
        centre = (self.middle, (self.top + self.bottom) / 2)
        return lambda point: (
            centre[0] + scale * (point[0] - middle_x),
            centre[1] - scale * (point[1] - middle_z),
        )


@dataclass(frozen=True, slots=True)
class Block:
    """A heading and the notes below it."""

    heading: str
    notes: tuple[str, ...]


def on_paper(drawing: Drawing, width: float, height: float) -> Drawing:
    """A drawing made larger or smaller, lettering and lines and all, and put in the middle of a
    sheet of this size."""
    scale = min(width / drawing.width, height / drawing.height)
    left, top = (width - scale * drawing.width) / 2, (height - scale * drawing.height) / 2

    def place(point: Point) -> Point:
        return left + scale * point[0], top + scale * point[1]

    def along(lines: tuple[tuple[Point, ...], ...]) -> tuple[tuple[Point, ...], ...]:
        return tuple(tuple(map(place, line)) for line in lines)

    def moved(mark: Mark) -> Mark:
        match mark:
            case Fill():
                return replace(mark, rings=along(mark.rings))
            case Stroke():
                on, off = mark.dashes or (0.0, 0.0)
                dashes = (scale * on, scale * off) if mark.dashes else None
                return replace(
                    mark, lines=along(mark.lines), width=scale * mark.width, dashes=dashes
                )
            case Lettering():
                return replace(mark, at=place(mark.at), size=scale * mark.size)

    return replace(drawing, width=width, height=height, marks=tuple(map(moved, drawing.marks)))


def note_marks(block: Block, at: Point, width: float) -> Iterator[Mark]:
    """A block of notes from its upper left corner, wrapped to ``width``."""
    x, y = at
    yield Lettering((x, y), block.heading, SMALL + 0.8, "start")
    y += 1.5
    for note in block.notes:
        for line in wrapped(note, width, SMALL):
            y += SMALL * _LEADING
            yield Lettering((x, y), line, SMALL, "start")
        y += 1.0


def wrapped(text: str, width: float, size: float) -> list[str]:
    """Text broken at spaces into lines no wider than ``width``, where words allow it."""
    lines: list[str] = []
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and text_width(longer, size) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def tag_marks(at: Point, text: str, upwards: bool, colour: str = DARK) -> Iterator[Mark]:
    """Text centred on a line, on a white ground that breaks the line."""
    along, across = text_width(text, SMALL) / 2 + 0.8, SMALL / 2 + 0.1
    x, y = (across, along) if upwards else (along, across)
    ground = ((at[0] - x, at[1] - y), (at[0] + x, at[1] - y), (at[0] + x, at[1] + y))
    yield Fill(((*ground, (at[0] - x, at[1] + y)),), "#ffffff")
    # Capitals are about 0.7 of the size high: this puts their middle on the line.
    down = 0.35 * SMALL
    base = (at[0] + down, at[1]) if upwards else (at[0], at[1] + down)
    yield Lettering(base, text, SMALL, "middle", upwards, colour)
