"""What a technical drawing shows, before it is brought to paper.

A view is in the unit's own millimetres, seen straight: x to the right and y up as it is looked at.
What is dimensioned is said in lengths of parts and never measured from lines.  Where each
dimension finds room is the layout's business.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Point = tuple[float, float]
Line = tuple[Point, Point]
Side = Literal["left", "right", "above", "below", "inside"]


@dataclass(frozen=True, slots=True)
class Dimension:
    """The distance from one point of a view to another (ISO 129-1).

    ``along`` says whether it is measured level (``x``), upright (``y``) or straight from point to
    point (``line``).  Dimensions of one ``chain`` stand on one line and meet end to end;
    ``side`` is where that line lies, and ``rank`` says how near the view: 0 is the nearest.
    ``text`` is what it says, in the unit's measure.  Those of a ``running`` chain all have the
    same start, its origin (ISO 129-1): they stand on one line, each with its arrow at its end.
    """

    start: Point
    end: Point
    text: str
    along: Literal["x", "y", "line"]
    side: Side
    chain: str
    rank: int = 0
    running: bool = False


@dataclass(frozen=True, slots=True)
class Note:
    """A text that belongs to a point of a view: a ref, a name, a pitch; ``leader`` is whether a
    line leads from it to the point where the text stands beside it."""

    at: Point
    text: str
    leader: bool = False


@dataclass(frozen=True, slots=True)
class Cut:
    """An area that a section cuts through: its rings (outer ones and holes, even-odd) and what is
    cut, which decides how it is hatched.

    ``broken`` are sides of its rings that are no edges: it runs on there past what is shown.
    """

    ref: str
    rings: tuple[tuple[Point, ...], ...]
    kind: Literal["along the grain", "end grain", "sheet", "other"]
    broken: tuple[Line, ...] = ()


@dataclass(frozen=True, slots=True)
class View:
    """One view: its box from ``low`` to ``high``, its lines, and what is told of it.

    ``outline`` are lines of what stays in the room: walls, floor and ceiling of the opening.
    ``planes`` are where sections are taken, each with its letter, as lines across the view.
    ``moved`` is what moves in its other end position, and which way doors turn: lines through any
    number of points (ISO 128-2, line 05.1).
    """

    name: str
    low: Point
    high: Point
    visible: tuple[Line, ...] = ()
    hidden: tuple[Line, ...] = ()
    outline: tuple[Line, ...] = ()
    cuts: tuple[Cut, ...] = ()
    planes: tuple[tuple[str, Line], ...] = ()
    moved: tuple[tuple[Point, ...], ...] = ()
    dimensions: tuple[Dimension, ...] = ()
    notes: tuple[Note, ...] = ()
