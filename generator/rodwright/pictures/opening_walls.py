"""Floor, walls and top of an opening on paper."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from rodwright.pictures.ink import Fill, Mark, Point, Stroke
from rodwright.pictures.paper import HEAVY
from rodwright.unit import OpeningPlane

_WALL = "#e4e0d8"
_BAND = 5.0
"""How thick walls are drawn, mm of the paper."""
_SIDES = ("bottom", "right", "top", "left")
"""The sides in the order that goes round against the clock."""


def edges_on(plane: OpeningPlane, to_paper: Callable[[str, Point], Point]) -> list[list[Point]]:
    """The lines of floor, right wall, top and left wall on paper, each from where the one before
    it ends; ``to_paper`` is told the side."""
    found = []
    for side in _SIDES:
        upright = side in ("left", "right")
        line = [
            (point.across, point.along) if upright else (point.along, point.across)
            for point in plane.line(side)
        ]
        if side in ("top", "left"):
            line.reverse()
        found.append([to_paper(side, point) for point in line])
    return found


def wall_marks(
    edges: Sequence[Sequence[Point]], ceiling: tuple[Point, Point] | None = None
) -> Iterator[Mark]:
    """Floor, walls and top as bands round their lines on paper (in the order of `edges_on`); all
    that lies over a sloping ``ceiling``, of which two points are given from the left, with them."""
    outwards = ((0.0, _BAND), (_BAND, 0.0), (0.0, -_BAND), (-_BAND, 0.0))
    outer: list[Point] = []
    for number, (line, (x, y)) in enumerate(zip(edges, outwards, strict=True)):
        before = outwards[number - 1]
        outer.append((line[0][0] + x + before[0], line[0][1] + y + before[1]))
        outer += [(u + x, w + y) for u, w in line[1:-1]]
    inner = tuple(point for line in edges for point in line[:-1])
    if ceiling is not None:
        inner = under_line(inner, *ceiling)
    yield Fill((tuple(outer), inner), _WALL, 0.999)
    yield Stroke(((*inner, inner[0]),), HEAVY)


def under_line(points: Sequence[Point], left: Point, right: Point) -> tuple[Point, ...]:
    """What of a polygon on paper, where the second axis goes down, lies under a line (I. Sutherland
    and G. Hodgman, *Communications of the ACM* 17, 1974; from memory).

    Where that axis goes up it is what lies under the line from ``right`` to ``left``.
    """

    def below(at: Point) -> float:
        return (right[0] - left[0]) * (at[1] - left[1]) - (right[1] - left[1]) * (at[0] - left[0])

    found: list[Point] = []
    for number, point in enumerate(points):
        before = points[number - 1]
        here, there = below(point), below(before)
        if here * there < 0:
            found.append(between(before, point, there / (there - here)))
        if here >= 0:
            found.append(point)
    return tuple(found)


def between(start: Point, end: Point, share: float) -> Point:
    """The point at a share of the way from one to another."""
    return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])
