"""Panels of solid wood that are glued up of strips: how many, and how wide."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, floor, inf

from rodwright.cutting.supplies import Supply
from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit, at_least
from rodwright.trade.gluing_up import (
    JOINT_WORTH,
    JOINTING,
    LESS_WOOD,
    NARROWEST_STRIP,
    OVER_LENGTH,
    OVER_WIDTH,
)

_MOST_STRIPS = 24


@dataclass(frozen=True, slots=True)
class GlueUp:
    """A panel of strips: their widths as ripped, the length they are cut to, and the size the
    panel is once it is glued up, all in mm."""

    strips: tuple[float, ...]
    length: float
    width: float


_Way = tuple[float, tuple[float, ...]]
"""The wood that is taken, with what joints count, and the strips it gives, mm."""


@dataclass(frozen=True, slots=True)
class _Board:
    """Equal boards: what is left of their width once they are trimmed, and how many of the panel's
    length there are.  ``takes`` is what each of those takes: a panel's length of a board so wide
    (mm) would be as much wood, with its share of what is trimmed off and left of the length."""

    width: float
    lengths: float
    takes: float


def glue_up(
    length: float, width: float, supplies: Sequence[Supply], kerf: float, unit: LengthUnit = "mm"
) -> GlueUp | None:
    """The strips of a panel at least ``length`` x ``width`` mm; None where the boards don't give
    them.

    Every strip is ripped wider by what jointing takes off the edges that are glued, and the panel
    is a little larger than the part.  Strips are equal, and as many as take least wood, each joint
    counted as an inch of the boards' width; strips of several widths only where they
    save more than a tenth, or equal ones can't be had.  What else the rest of the boards may be
    good for isn't asked.  ``unit`` is what the maker measures in.
    """
    long, wide = length + OVER_LENGTH[unit], width + OVER_WIDTH[unit]
    boards = [board for board in _boards(long, supplies) if board.width > 2 * JOINTING[unit]]
    if not boards:
        return None
    equal, mixed = _equal(wide, boards, kerf, unit), _mixed(wide, boards, unit)
    taken, strips = equal
    if mixed[0] < taken * (1 - LESS_WOOD):
        taken, strips = mixed
    return GlueUp(strips, long, wide) if taken < inf else None


def usable(supply: Supply) -> tuple[float, float]:
    """Length and width of a supply once it is trimmed, mm."""
    trim = supply.trim
    return (
        supply.length - trim.near - trim.far,
        supply.width - trim.face - trim.back,
    )


def _boards(length: float, supplies: Sequence[Supply]) -> list[_Board]:
    found = []
    for supply in supplies:
        long, wide = usable(supply)
        each = floor((long + TOUCH) / length)
        if each:
            there = inf if supply.count is None else supply.count * each
            takes = supply.length * supply.width / (each * length)
            found.append(_Board(wide, there, takes))
    return sorted(found, key=lambda board: (-board.width, board.takes))


def _abreast(board: _Board, strip: float, kerf: float) -> int:
    """How many strips come out of a board's width."""
    return floor((board.width + kerf + TOUCH) / (strip + kerf))


def _equal(wide: float, boards: Sequence[_Board], kerf: float, unit: LengthUnit) -> _Way:
    """The wood that equal strips take, and the strips; of as good ones the fewest."""
    best: _Way = (inf, ())
    for count in range(2, _MOST_STRIPS + 1):
        # Jointing takes of both edges of each strip, but for the panel's own.
        jointed = 2 * JOINTING[unit] * (count - 1)
        strip = at_least((wide + jointed) / count, unit)
        if strip < NARROWEST_STRIP and best[1]:
            break
        taken = _taken(strip, count, boards, kerf)
        if taken < best[0] - TOUCH:
            best = (taken, (strip,) * count)
    return best


def _taken(strip: float, count: int, boards: Sequence[_Board], kerf: float) -> float:
    """The wood that so many equal strips take, from the boards that give them with least waste,
    and what their joints count."""
    rates = sorted(
        (board.takes / abreast, board.lengths * abreast)
        for board in boards
        if (abreast := _abreast(board, strip, kerf))
    )
    taken, wanted = 0.0, count
    for each, there in rates:
        here = min(wanted, there)
        taken += each * here
        wanted -= int(here)
        if not wanted:
            return taken + JOINT_WORTH * count
    return inf


def _mixed(wide: float, boards: Sequence[_Board], unit: LengthUnit) -> _Way:
    """The same for strips as wide as their boards: the least of them that make the panel, found
    millimetre by millimetre; one of them is then ripped to what is left."""
    jointed = 2 * JOINTING[unit]
    wanted = wide - jointed
    reach = ceil(wanted - TOUCH)
    # The least that is taken to be at least so wide, in whole millimetres, and the strips.
    best: list[_Way] = [(0.0, ()), *[(inf, ())] * reach]
    for board in boards:
        if board.width < NARROWEST_STRIP:
            break
        gain = floor(board.width - jointed + TOUCH)
        for _ in range(int(min(ceil(reach / gain), board.lengths))):
            best = [
                min(each, _with(best[max(0, at - gain)], board), key=_order) if at else each
                for at, each in enumerate(best)
            ]
    taken, strips = best[reach]
    if not strips:
        return inf, ()
    over = sum(strips) - jointed * len(strips) - wanted
    *others, last = sorted(strips, reverse=True)
    ripped = max(at_least(last - over, unit), NARROWEST_STRIP)
    return taken, (*others, min(last, ripped))


def _order(way: _Way) -> tuple[float, int]:
    return round(way[0], 6), len(way[1])


def _with(way: _Way, board: _Board) -> _Way:
    """A way with one more board."""
    return way[0] + board.takes + JOINT_WORTH, (*way[1], board.width)
