"""What a client sees the sizes of at the front: openings, shelves, doors and drawers; mm.

Where a face frame stands before the carcass, an opening is as wide and high as the frame leaves
it.  Gaps round doors and drawers are for the bench, and left without a figure.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Literal

from rodwright.geometry import TOUCH
from rodwright.pictures.drafting import seen
from rodwright.pictures.drafting.bands import (
    Interval,
    Rectangle,
    is_square,
    rectangle,
    rows,
    stretches,
)
from rodwright.pictures.drafting.chains import Chain, chain
from rodwright.pictures.drafting.slopes import slope_of
from rodwright.pictures.drafting.views import Dimension, Side
from rodwright.unit import BASE, FACE_FRAME, UPRIGHTS, Role, Unit

_MANY, _MOST = 12, 14
"""Figures of one chain that stand close; and that a client reads: with more it is for the bench."""
_GAP = 6.0
"""Spaces under this are gaps, mm."""
_BOARD = 30.0
"""Where figures stand close, those of boards thinner than this (mm) are left out."""
_SIDES: tuple[Side, Side] = ("left", "right")
_WHOLE = (Role.WORKTOP, Role.CORNICE, *BASE)
"""What is told by itself, whatever it stands on or carries."""
_COVERED = 0.7
"""A board with so much of it behind doors and drawers isn't seen: what is left are gaps."""


def seen_chains(unit: Unit) -> tuple[Chain, ...]:
    """A chain of widths below the front, and one of heights at its left and at its right, each of
    the column nearest to it, where those differ; under a slope heights end at the highest board."""
    box = seen.fitted(unit, "front")
    fronts = [rectangle(each, *seen.AXES["front"]) for each in seen.leaves(unit)]
    uprights, levels = _boards(unit, fronts)
    whole = [*fronts, *seen.rectangles(unit, _WHOLE, "front")]
    found = []
    columns: list[Interval] = []
    for row in rows(uprights or fronts, 0)[:1]:
        kept: Sequence[Interval] = () if uprights else row.boards
        found.append(_chain(unit, _shown(row.boards, kept), box[0], (box, "below")))
        columns += _columns(row.boards) if uprights else row.boards
    told: list[Interval] = []
    for side, column in zip(_SIDES, (columns[0], columns[-1]) if columns else (), strict=False):
        kept = _at(column, whole)
        shown = _shown(_at(column, [*levels, *whole]), kept)
        if shown and shown != told:
            top = max(high for _, high in shown) if slope_of(unit) else box[1][1]
            found.append(_chain(unit, shown, (box[1][0], top), (box, side)))
        told = shown
    return tuple(each for each in found if each.dimensions)


def _columns(boards: Sequence[Interval]) -> list[Interval]:
    """The clear spaces between uprights, from left to right."""
    ends = (boards[0][0], max(high for _, high in boards))
    clear = [(a, b) for a, b, filled in stretches(boards, ends) if not filled and b - a >= _GAP]
    return clear or [ends]


def _at(column: Interval, rectangles: Iterable[Rectangle]) -> list[Interval]:
    """From where to where each goes up that lies in the middle of a column, from below."""
    middle = sum(column) / 2
    return sorted({up for (a, b), up in rectangles if a < middle < b})


def _boards(unit: Unit, fronts: Sequence[Rectangle]) -> tuple[list[Rectangle], list[Rectangle]]:
    """What of carcass and face frame stands, and what lies, as far as doors and drawers don't
    cover it."""
    frame = [part for part in seen.parts_of(unit, FACE_FRAME) if is_square(part)]
    standing = seen.rectangles(unit, UPRIGHTS, "front")
    lying = seen.levels(unit)
    for part in frame:
        kind = standing if seen.runs_up(part) else lying
        kind.append(rectangle(part.bounds(), *seen.AXES["front"]))
    standing, lying = (
        [each for each in kind if not _is_covered(each, fronts)] for kind in (standing, lying)
    )
    return standing, lying


def _is_covered(board: Rectangle, fronts: Iterable[Rectangle]) -> bool:
    """Whether a board lies behind doors and drawers."""
    hidden = sum(_shared(board[0], a) * _shared(board[1], b) for a, b in fronts)
    return hidden >= _COVERED * _shared(board[0], board[0]) * _shared(board[1], board[1])


def _shared(one: Interval, two: Interval) -> float:
    """How much two stretches share."""
    return max(0.0, min(one[1], two[1]) - max(one[0], two[0]))


def _is_among(one: Interval, boards: Iterable[Interval]) -> bool:
    return any(abs(one[0] - a) <= TOUCH and abs(one[1] - b) <= TOUCH for a, b in boards)


def _shown(boards: Sequence[Interval], kept: Sequence[Interval]) -> list[Interval]:
    """Boards as they are seen from the front: what is ``kept`` each by itself, and what of others
    isn't behind it, those that meet as one."""
    solid = _joined(each for each in boards if not _is_among(each, kept))
    return [*kept, *(each for board in solid for each in _beside(board, kept))]


def _chain(
    unit: Unit, boards: Iterable[Interval], ends: Interval, place: tuple[Rectangle, Side]
) -> Chain:
    """A chain from end to end beside the box of the view, gaps without a figure."""
    box, side = place
    own = 0 if side == "below" else 1
    where = box[1 - own][1 if side == "right" else 0]
    along: Literal["x", "y"] = "x" if side == "below" else "y"
    whole = chain("seen", boards, ends, (along, side, where), unit.display_unit)
    told = [each for each in whole.dimensions if _length(each, own) >= _GAP]
    if len(told) > _MANY:
        told = [each for each in told if _length(each, own) >= _BOARD]
    return replace(whole, dimensions=tuple(told) if 1 < len(told) <= _MOST else ())


def _joined(boards: Iterable[Interval]) -> list[Interval]:
    """Boards that overlap or touch, as one: a rail and the shelf behind it."""
    found: list[Interval] = []
    for low, high in sorted(boards):
        if found and low <= found[-1][1] + TOUCH:
            found[-1] = (found[-1][0], max(high, found[-1][1]))
        else:
            found.append((low, high))
    return found


def _beside(board: Interval, fronts: Iterable[Interval]) -> list[Interval]:
    """What of a board shows beside doors and drawers."""
    left = [board]
    for low, high in fronts:
        left = [
            part
            for a, b in left
            for part in ((a, min(b, low)), (max(a, high), b))
            if part[1] - part[0] > TOUCH
        ]
    return left


def _length(dimension: Dimension, axis: int) -> float:
    return dimension.end[axis] - dimension.start[axis]
