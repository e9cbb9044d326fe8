"""Where a unit is cut for its sections: through the most telling column, at the most telling
height, and again wherever others show something else.

Lengths in mm, unit frame.
"""

from __future__ import annotations

import string
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from rodwright.geometry import Box
from rodwright.paper.drawings.cutting_planes import CuttingPlane
from rodwright.pictures.drafting.seen import between_columns, levels
from rodwright.unit import LEVELS, UPRIGHTS, Part, Role, Unit

_CLEAR = 3.0
"""A plane keeps this far (mm) off the faces of what it cuts, and off what it passes."""
_NARROWEST = 40.0
"""Columns and spaces narrower than this are passed over."""
_SHARES = (0.35, 0.4, 0.3, 0.65, 0.6, 0.7, 0.5, 0.25, 0.75, 0.2, 0.8)
"""Where in a column or a space a plane may lie, the likeliest first: off the middle, where refs
stand and double doors meet."""
_MOST = {0: 4, 2: 3}
"""No more upright and level sections than these: what is left is alike."""
_ALONG = 5
"""A part that is cut in its own plane (a stile from end to end) tells so much less."""
_MEMBERS = (Role.STILE, Role.RAIL, Role.DOOR_STILE, Role.DOOR_RAIL)


@dataclass(frozen=True, slots=True)
class _Candidate:
    """A place to cut at, the parts that it cuts, and how much it tells."""

    at: float
    cut: tuple[Part, ...]
    worth: float

    def signature(self, axis: int) -> frozenset[tuple[object, ...]]:
        """What it shows, wherever along its axis."""
        return frozenset(
            (part.role, *_rounded(part.bounds(), (1, 2) if axis == 0 else (0, 1)))
            for part in self.cut
        )


def cutting_planes(unit: Unit) -> tuple[CuttingPlane, ...]:
    """The planes of a unit's sections, lettered: the best upright one, the best level one, and
    then those that show something else."""
    boxes = {part.ref: part.bounds() for part in unit.parts}
    upright = _chosen(unit, boxes, 0, _columns(unit))
    level = _chosen(unit, boxes, 2, _spaces(unit))
    order: list[tuple[Literal[0, 2], float]] = [
        *((0, at) for at in upright[:1]),
        *((2, at) for at in level[:1]),
        *((0, at) for at in upright[1:]),
        *((2, at) for at in level[1:]),
    ]
    letters = (each for each in string.ascii_uppercase if each not in "IO")
    return tuple(
        CuttingPlane(letter, axis, at) for letter, (axis, at) in zip(letters, order, strict=False)
    )


def _columns(unit: Unit) -> list[tuple[float, float]]:
    """The stretches across the front between uprights."""
    uprights = between_columns(unit)
    return list(_free(uprights, unit.envelope.low[0], unit.envelope.high[0]))


def _spaces(unit: Unit) -> list[tuple[float, float]]:
    """The stretches up the front between levels of any column, and above and below them."""
    low, high = unit.envelope.low[2], unit.envelope.high[2]
    ends = sorted({low, high, *(end for _, up in levels(unit) for end in up)})
    return [(a, b) for a, b in pairwise(ends) if b - a >= _NARROWEST]


def _free(
    taken: Iterable[tuple[float, float]], low: float, high: float
) -> Iterator[tuple[float, float]]:
    intervals = list(taken)
    ends = sorted({low, high, *(end for each in intervals for end in each)})
    for a, b in pairwise(ends):
        middle = (a + b) / 2
        through = [each for each in intervals if each[0] < middle < each[1]]
        # A board that lies across all of it makes no end of a column.
        if b - a >= _NARROWEST and not any(end - start < 2 * (b - a) for start, end in through):
            yield a, b


def _chosen(
    unit: Unit, boxes: dict[str, Box], axis: int, bands: Sequence[tuple[float, float]]
) -> list[float]:
    """The places to cut at along an axis, the most telling first."""
    best = [
        max(
            (
                _try(unit, boxes, axis, low + share * (high - low), rank)
                for rank, share in enumerate(_SHARES)
            ),
            key=lambda each: each.worth,
        )
        for low, high in bands
    ]
    best.sort(key=lambda each: (-round(each.worth, 6), each.at))
    kept: list[_Candidate] = []
    for candidate in best:
        shows = candidate.signature(axis)
        if candidate.cut and not any(shows <= other.signature(axis) for other in kept):
            kept.append(candidate)
    return [each.at for each in kept[: _MOST[axis]]]


def _try(unit: Unit, boxes: dict[str, Box], axis: int, at: float, rank: int) -> _Candidate:
    cut, worth = [], -0.01 * rank
    for part in unit.parts:
        low, high = boxes[part.ref].low[axis], boxes[part.ref].high[axis]
        if low + _CLEAR <= at <= high - _CLEAR:
            cut.append(part)
            worth += -_ALONG if _lies_along(part, axis) else 1
        elif low - _CLEAR < at < high + _CLEAR:
            worth -= _ALONG
    carcass = [part for part in cut if part.role in (*UPRIGHTS, *LEVELS)]
    return _Candidate(at, tuple(cut), worth + len(carcass))


def _lies_along(part: Part, axis: int) -> bool:
    """Whether a cut would go through a panel in its own plane, or along a frame's member."""
    placed = part.placement
    across = placed.length if part.role in _MEMBERS else placed.thickness
    member = part.role in _MEMBERS
    return (abs(across[axis]) > 0.5) is not member


def _rounded(box: Box, axes: Sequence[int]) -> tuple[float, ...]:
    return tuple(round(end, 1) for axis in axes for end in (box.low[axis], box.high[axis]))
