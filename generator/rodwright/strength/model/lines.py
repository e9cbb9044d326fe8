"""Where boards and bars are divided: at lines across the whole unit, so that nodes meet.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import ceil

from rodwright.geometry import Vector
from rodwright.strength.model.pieces import Board, Stick

NEAR = 16.0
"""Lines nearer each other than this are one: a board's thickness makes no element of its own."""
AT_END = 8.0
"""A line this near the end of a piece is left out of it."""


@dataclass(frozen=True, slots=True)
class Fineness:
    """The greatest size of an element along x, y and z.

    Plates and bars bend between their nodes as beams do, exactly under even loads, so few are
    needed; ``tests/strength/model/test_fineness.py`` holds what half the size changes.
    """

    across: float = 160.0
    deep: float = 250.0
    up: float = 260.0

    @property
    def sizes(self) -> tuple[float, float, float]:
        """By axis."""
        return (self.across, self.deep, self.up)


def lines_of(
    boards: Iterable[Board],
    sticks: Iterable[Stick],
    places: Iterable[Vector],
    fineness: Fineness,
) -> tuple[tuple[float, ...], ...]:
    """Where pieces are divided, along each axis: so that there are nodes at ``places`` too."""
    boards, sticks, places = tuple(boards), tuple(sticks), tuple(places)
    found = []
    for axis, size in enumerate(fineness.sizes):
        wanted = [board.middle for board in boards if board.normal == axis and not board.rise]
        wanted += (place[axis] for place in places)
        for board in boards:
            if board.normal != axis:
                wanted += (board.box.low[axis], board.box.high[axis])
        wanted += (stick.box.centre[axis] for stick in sticks if stick.axis != axis)
        found.append(_divided(_apart(wanted), size))
    return tuple(found)


def _apart(wanted: Iterable[float]) -> list[float]:
    """The first of those that lie near each other."""
    kept: list[float] = []
    for place in wanted:
        if all(abs(place - other) >= NEAR for other in kept):
            kept.append(place)
    return sorted(kept)


def _divided(places: Sequence[float], size: float) -> tuple[float, ...]:
    """Places with others evenly between them, an odd number, so that there is one half-way."""
    whole = list(places)
    for one, other in pairwise(places):
        count = 2 * ceil((other - one) / (2 * size)) if other - one > 3 * NEAR else 1
        whole += (one + (other - one) * number / count for number in range(1, count))
    return tuple(sorted(whole))


def within(lines: Sequence[float], low: float, high: float) -> tuple[float, ...]:
    """The lines that divide a piece from ``low`` to ``high``, with its ends."""
    inside = sorted(place for place in lines if low + AT_END < place < high - AT_END)
    return (low, *inside, high)
