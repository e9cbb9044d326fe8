"""A drawing as a list of marks, in the order they are laid down.

Both the SVG and the PNG of a drawing are made from this.  Page coordinates: x to the right,
y down, from the upper left corner; what a unit of length is, is the drawing's own business.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Point = tuple[float, float]

DARK = "#33302c"
"""The colour of lines and lettering."""


@dataclass(frozen=True, slots=True)
class Fill:
    """An area between rings (outer ones and holes, by the even-odd rule)."""

    rings: tuple[tuple[Point, ...], ...]
    colour: str
    opacity: float = 1.0


@dataclass(frozen=True, slots=True)
class Stroke:
    """Lines of one kind, each through two or more points; ``dashes`` are on, off lengths."""

    lines: tuple[tuple[Point, ...], ...]
    width: float
    colour: str = DARK
    dashes: tuple[float, float] | None = None


@dataclass(frozen=True, slots=True)
class Lettering:
    """Text whose baseline passes ``at``; ``size`` is the height of a line of type.

    ``upwards`` text reads from the foot of the page to its head.
    """

    at: Point
    text: str
    size: float
    anchor: Literal["start", "middle", "end"] = "middle"
    upwards: bool = False
    colour: str = DARK


Mark = Fill | Stroke | Lettering


@dataclass(frozen=True, slots=True)
class Drawing:
    """Marks on a page of ``width`` by ``height``; ``physical`` is the unit's name in SVG."""

    width: float
    height: float
    title: str
    description: str
    marks: tuple[Mark, ...]
    physical: Literal["px", "mm"] = "px"


def rounded(low: Point, high: Point, radius: float) -> tuple[Point, ...]:
    """A rectangle's outline with its corners cut round, closed."""
    (left, top), (right, bottom) = low, high
    # Points on a quarter circle at 0, 30, 60 and 90 degrees.
    steps = ((1.0, 0.0), (0.866, 0.5), (0.5, 0.866), (0.0, 1.0))
    points: list[Point] = []
    for x, y, turn_x, turn_y in (
        (right - radius, bottom - radius, 1, 1),
        (left + radius, bottom - radius, -1, 1),
        (left + radius, top + radius, -1, -1),
        (right - radius, top + radius, 1, -1),
    ):
        arc = steps if turn_x * turn_y > 0 else steps[::-1]
        points += [(x + turn_x * radius * a, y + turn_y * radius * b) for a, b in arc]
    return (*points, points[0])
