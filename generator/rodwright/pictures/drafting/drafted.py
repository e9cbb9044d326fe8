"""Dimensions and notes that have found their places on paper; mm of paper, y down."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from rodwright.pictures.drafting.figures import ARROW, BARB
from rodwright.pictures.drafting.letters import Rect, Written, around
from rodwright.pictures.drafting.views import Dimension, Line, Point

Ring = tuple[Point, ...]

_DOT = 0.5
"""Radius of the dot where two short dimensions meet (ISO 129-1, from memory)."""


@dataclass(frozen=True, slots=True)
class DraftedDimension:
    """A dimension on paper: ``line`` is the dimension line from end to end, ``lines`` all that is
    drawn of it (that line, tails, extension lines, a leader), ``arrows`` its filled ends."""

    dimension: Dimension
    line: Line
    lines: tuple[Line, ...]
    arrows: tuple[Ring, ...]
    text: Written

    def moved(self, x: float, y: float) -> DraftedDimension:
        """The dimension moved to the right and down."""
        return replace(
            self,
            line=moved_line(self.line, x, y),
            lines=tuple(moved_line(line, x, y) for line in self.lines),
            arrows=tuple(tuple((a + x, b + y) for a, b in ring) for ring in self.arrows),
            text=self.text.moved(x, y),
        )

    def rects(self) -> list[Rect]:
        """What it covers."""
        return [self.text.rect, *rects_of(self.lines)]


@dataclass(frozen=True, slots=True)
class DraftedNote:
    """A note on paper: its text, its leader (or none), and the dot or arrow at the leader's end."""

    text: Written
    leader: tuple[Line, ...] = ()
    ends: tuple[Ring, ...] = ()

    def moved(self, x: float, y: float) -> DraftedNote:
        """The note moved to the right and down."""
        return DraftedNote(
            self.text.moved(x, y),
            tuple(moved_line(line, x, y) for line in self.leader),
            tuple(tuple((a + x, b + y) for a, b in ring) for ring in self.ends),
        )

    def rects(self) -> list[Rect]:
        """What it covers."""
        return [self.text.rect, *rects_of(self.leader)]


def moved_line(line: Line, x: float, y: float) -> Line:
    """A line moved to the right and down."""
    (ax, ay), (bx, by) = line
    return (ax + x, ay + y), (bx + x, by + y)


def rects_of(lines: Sequence[Line]) -> list[Rect]:
    """The rectangle round each line."""
    return [
        Rect(min(ax, bx), min(ay, by), max(ax, bx), max(ay, by)) for (ax, ay), (bx, by) in lines
    ]


def covered(drafted: Sequence[DraftedDimension | DraftedNote]) -> Rect | None:
    """The rectangle round all that these cover; None of none."""
    rects = [rect for each in drafted for rect in each.rects()]
    return around(rects) if rects else None


def arrow(tip: Point, back: Point) -> Ring:
    """A filled arrowhead whose tail points towards ``back``."""
    x, y = back[0] - tip[0], back[1] - tip[1]
    length = math.hypot(x, y)
    x, y = x / length, y / length
    base = (tip[0] + ARROW * x, tip[1] + ARROW * y)
    return (
        tip,
        (base[0] - BARB * y, base[1] + BARB * x),
        (base[0] + BARB * y, base[1] - BARB * x),
    )


def dot(at: Point) -> Ring:
    """A filled dot."""
    turns = [math.tau * step / 12 for step in range(12)]
    return tuple((at[0] + _DOT * math.cos(t), at[1] + _DOT * math.sin(t)) for t in turns)


def outlines(rings: Sequence[Ring]) -> list[Line]:
    """The edges of filled marks."""
    return [edge for ring in rings for edge in zip(ring, (*ring[1:], ring[0]), strict=True)]
