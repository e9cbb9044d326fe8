"""Rows of boards: what a rule meets that is laid straight across a view, in millimetres.

A view's rectangles are gathered into bands in which the same boards follow each other: the
columns of a carcass at one height, the shelves of one column.  Frame: that of the view.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.vectors import Vector
from rodwright.unit import Part

Interval = tuple[float, float]
Rectangle = tuple[Interval, Interval]
"""What a box covers of a view: from where to where across it, and up it."""

_THINNEST = 5.0
"""Bands narrower than this (mm) are corners and not columns."""
_SQUARE = 1e-6


@dataclass(frozen=True, slots=True)
class Row:
    """Boards in their order along a line (each from where to where), and the widest band across
    the line within which it is so."""

    boards: tuple[Interval, ...]
    band: Interval

    @property
    def middle(self) -> float:
        """The middle of the band."""
        return (self.band[0] + self.band[1]) / 2


def rows(
    rectangles: Sequence[Rectangle], along: int, between: Sequence[Interval] = ()
) -> list[Row]:
    """The different rows of boards along an axis of the view (0 across, 1 up), the fullest first.

    Rows that show no board which another doesn't show too are left out.  What the intervals
    ``between`` cover of the other axis is left out too: the uprights that columns lie between.
    """
    across = [*(each[1 - along] for each in rectangles), *between]
    breaks = sorted({end for each in across for end in each})
    found: dict[tuple[Interval, ...], list[Interval]] = {}
    for low, high in pairwise(breaks):
        middle = (low + high) / 2
        if high - low < _THINNEST or any(a < middle < b for a, b in between):
            continue
        there = {
            (round(each[along][0], 6), round(each[along][1], 6))
            for each in rectangles
            if each[1 - along][0] < middle < each[1 - along][1]
        }
        if there:
            bands = found.setdefault(tuple(sorted(there)), [])
            touches = bands and low - bands[-1][1] <= TOUCH
            bands[-1:] = [(bands[-1][0], high)] if touches else [*bands[-1:], (low, high)]
    told = [Row(boards, max(bands, key=_length)) for boards, bands in found.items()]
    told.sort(key=lambda row: (-len(row.boards), row.band))
    kept: list[Row] = []
    for row in told:
        if not any(set(row.boards) <= set(other.boards) for other in kept):
            kept.append(row)
    return kept


def stretches(boards: Iterable[Interval], ends: Interval) -> list[tuple[float, float, bool]]:
    """From one end to the other, each stretch between two faces of boards: from, to, and whether
    a board fills it.  What lies past the ends is left out."""
    low, high = ends
    boards = list(boards)
    points = [low]
    for at in sorted({end for each in boards for end in each}):
        if points[-1] + TOUCH < at < high - TOUCH:
            points.append(at)
    points.append(high)
    return [
        (a, b, any(start - TOUCH <= a and b <= stop + TOUCH for start, stop in boards))
        for a, b in pairwise(points)
    ]


def is_square(part: Part) -> bool:
    """Whether a part lies along the unit's axes."""
    return all(max(map(abs, axis)) > 1 - _SQUARE for axis in part.placement.axes)


def rectangle(box: Box, across: Vector, up: Vector) -> Rectangle:
    """What a box covers of the view whose axes these are (unit vectors along the unit's)."""
    return _extent(box, across), _extent(box, up)


def _extent(box: Box, axis: Vector) -> Interval:
    ends = [sum(a * b for a, b in zip(corner, axis, strict=True)) for corner in (box.low, box.high)]
    return min(ends), max(ends)


def _length(band: Interval) -> float:
    return band[1] - band[0]
