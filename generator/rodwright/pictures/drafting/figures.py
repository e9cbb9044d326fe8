"""Sheets of paper, scales, pens and type of technical drawings; mm of paper.

Sheets are those of ISO 216 and ISO 5457, or of ASME Y14.1; scales those of ISO 5455, or of inch
rules; lines and their widths those of ISO 128-2; dimensions as ISO 129-1 has them; letters as tall
as ISO 3098 wants.  Numbers from the standards are given from memory.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.lengths import LengthUnit

Angle = Literal["first", "third"]

SCALES: dict[LengthUnit, tuple[int, ...]] = {
    "mm": (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000),
    "in": (1, 2, 4, 8, 12, 16, 24, 32, 48, 96, 192, 480, 960, 1920, 4800),
}
"""What one mm of paper stands for; of inch rules, down to 1/8 in to the foot (common practice, no
source) and what is even beyond."""
ANGLES: dict[LengthUnit, Angle] = {"mm": "first", "in": "third"}
"""Angle of projection (ISO 5456-2, ASME Y14.3): what readers of each unit are used to."""


@dataclass(frozen=True, slots=True)
class Paper:
    """A sheet of paper lying as it is read, mm."""

    name: str
    width: float
    height: float

    def turned(self) -> Paper:
        """The same sheet lying the other way."""
        return Paper(self.name, self.height, self.width)


PAPERS: dict[LengthUnit, tuple[Paper, ...]] = {
    "mm": (Paper("A4", 210.0, 297.0), Paper("A3", 297.0, 420.0)),
    "in": (Paper("Letter", 215.9, 279.4), Paper("Tabloid", 279.4, 431.8)),
}
"""Sheets that a printer at home or round the corner has, upright, from the smallest up."""
LARGE_PAPERS: dict[LengthUnit, tuple[Paper, ...]] = {
    "mm": (
        Paper("A2", 420.0, 594.0),
        Paper("A1", 594.0, 841.0),
        Paper("A0", 841.0, 1189.0),
        Paper("2A0", 1189.0, 1682.0),
    ),
    "in": (
        Paper("C", 431.8, 558.8),
        Paper("D", 558.8, 863.6),
        Paper("E", 863.6, 1117.6),
        Paper("J, cut at 66 in", 863.6, 1676.4),
    ),
}
"""Sheets for drawings with so many dimensions that the others don't hold them."""

BORDER, FILING = 10.0, 20.0
"""From the sheet's edges to the frame; the left edge is the filing edge (ISO 5457)."""

WIDE, NARROW = 0.5, 0.25
"""Pens: visible edges, frame and cutting planes' ends; all else (ISO 128-2)."""
FINE = 0.18
"""The pen of hatching and of what isn't part of the unit."""
FINEST = 0.13
"""The finest pen, for lines closer beside each other than lines should be."""
DASHES = (12 * NARROW, 3 * NARROW)
"""Hidden edges: line type 02.1."""
CHAIN = (6.0, 0.8, 0.6, 0.8)
"""Long dashes and dots: cutting planes (line type 04.1)."""
DOUBLE = (5.0, 0.7, 0.5, 0.7, 0.5, 0.7)
"""Long dashes and two dots: what moves, where it moves to (line type 05.1)."""

TEXT = 3.5
"""Height of capitals and figures of captions (ISO 3098)."""
FIGURE = 2.5
"""Height of capitals and figures of dimensions."""
CAPITALS = 0.72
"""Height of capitals as a share of the size of type."""
LETTER = TEXT / CAPITALS
SIZE = FIGURE / CAPITALS
"""Size of type of dimensions and notes."""
SMALLEST = 2.83
"""Size of type below which nothing is set: 8 points."""

FIRST = 8.0
"""From a view to its first dimension line (common practice, no source)."""
SPACING = 6.5
"""From one dimension line to the next (common practice, no source)."""
GAP, OVER = 1.0, 1.6
"""Extension lines: free of the view, and past the dimension line."""
ARROW, BARB = 2.5, 0.42
"""Arrowheads: length and half their width."""
TAIL = 5.0
"""Of a dimension line past its arrow where arrows stand outside, the arrow included."""
CLEAR = 0.8
"""Between a text and lines or texts beside it."""
BETWEEN = 6.0
"""Between all that belongs to one view and all that belongs to the next."""
