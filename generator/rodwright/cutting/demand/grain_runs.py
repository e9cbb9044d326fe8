"""Fronts through which the grain runs on: cut in their order from one piece.

Seen from the front of the unit, a run's fronts are laid against each other as they stand, with
only a saw cut between them; what fills a rectangle becomes one piece.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Literal

from rodwright.cutting.demand.jobs import Wanted
from rodwright.cutting.pieces import Inner
from rodwright.unit import Grain

_ALIKE = 3
"""Decimals of a millimetre in which fronts stand in line."""
_ACROSS = 0
_UP = 2
_Way = Literal["row", "column"]
_ROW: _Way = "row"
_COLUMN: _Way = "column"


@dataclass(frozen=True, slots=True)
class _Block:
    """Fronts that fill a rectangle.

    ``low`` and ``high`` are its corners in the unit, along the grain and across it; ``size`` is
    length and width of the piece, ``at`` where each front's near corner lies in it, as they are
    read from the front; all in mm.  ``joined`` are the ways in which they stand, of all last.
    """

    low: tuple[float, float]
    high: tuple[float, float]
    size: tuple[float, float]
    at: tuple[tuple[Wanted, float, float], ...]
    joined: tuple[_Way, ...] = ()


def in_runs(wanted: Sequence[Wanted], kerf: float) -> list[Wanted]:
    """The same with the fronts of every run as one piece, as far as they fill rectangles; it takes
    the place of its first front.  ``kerf`` is left between them, mm."""
    runs: dict[tuple[object, ...], list[Wanted]] = {}
    for each in wanted:
        if each.part.grain_run:
            key = (each.job.mark, each.part.grain_run, _along(each), each.thickness)
            runs.setdefault(key, []).append(each)
    order = {each.ref: number for number, each in enumerate(wanted)}
    joined: dict[str, Wanted] = {}
    within: set[str] = set()
    for fronts in runs.values():
        for block in _merged([_block(each) for each in fronts], kerf):
            refs = sorted((each.ref for each, _, _ in block.at), key=order.__getitem__)
            if len(refs) > 1:
                joined[refs[0]] = _run(block)
                within |= {*refs[1:]}
    return [joined.get(each.ref, each) for each in wanted if each.ref not in within]


def _along(wanted: Wanted) -> int:
    """The axis of the unit that the grain of a front runs along: across it or up."""
    placed = wanted.part.placement
    crosswise = wanted.part.blank.grain is Grain.CROSSWISE
    direction = placed.width if crosswise else placed.length
    return _UP if abs(direction[_UP]) > abs(direction[_ACROSS]) else _ACROSS


def _block(wanted: Wanted) -> _Block:
    """A front alone, in the frame of the piece: its face towards the reader, x along the grain to
    the right or up, and y then up or to the left."""
    box = wanted.part.bounds()
    if _along(wanted) == _ACROSS:
        low, high = (box.low[0], box.low[2]), (box.high[0], box.high[2])
    else:
        low, high = (box.low[2], -box.high[0]), (box.high[2], -box.low[0])
    return _Block(low, high, (wanted.length, wanted.width), ((wanted, 0.0, 0.0),))


def _merged(blocks: list[_Block], kerf: float) -> list[_Block]:
    """Blocks put together two by two, the nearest first, end to end before edge to edge."""
    while pairs := list(_neighbours(blocks)):
        _, axis, one, other = min(pairs, key=lambda pair: pair[:2])
        left = [each for each in blocks if each is not one and each is not other]
        blocks = [*left, _together(one, other, axis, kerf)]
    return blocks


def _neighbours(blocks: Sequence[_Block]) -> Iterator[tuple[float, int, _Block, _Block]]:
    """Every two blocks of one breadth that follow each other along an axis, the gap first."""
    for axis in (0, 1):
        lines: dict[tuple[float, float], list[_Block]] = {}
        for each in blocks:
            breadth = (round(each.low[1 - axis], _ALIKE), round(each.high[1 - axis], _ALIKE))
            lines.setdefault(breadth, []).append(each)
        for line in lines.values():
            line.sort(key=lambda block: block.low[axis])
            for one, other in pairwise(line):
                yield round(other.low[axis] - one.high[axis], _ALIKE), axis, one, other


def _together(one: _Block, other: _Block, axis: int, kerf: float) -> _Block:
    across = 1 - axis
    size, shift = [0.0, 0.0], [0.0, 0.0]
    shift[axis] = one.size[axis] + kerf
    size[axis] = shift[axis] + other.size[axis]
    size[across] = max(one.size[across], other.size[across])
    moved = tuple((each, x + shift[0], y + shift[1]) for each, x, y in other.at)
    # Along the grain it goes on to the right or up, across it up or to the left.
    to_the_right = axis == 0 and _along(one.at[0][0]) == _ACROSS
    in_row = (axis == 0) == (_along(one.at[0][0]) == _ACROSS)
    at = (*one.at, *moved) if to_the_right else (*moved, *one.at)
    joined = (*one.joined, *other.joined, _ROW if in_row else _COLUMN)
    low = (min(one.low[0], other.low[0]), min(one.low[1], other.low[1]))
    high = (max(one.high[0], other.high[0]), max(one.high[1], other.high[1]))
    return _Block(low, high, (size[0], size[1]), at, joined)


def _run(block: _Block) -> Wanted:
    """The piece that a block's fronts are cut from."""
    fronts = [each for each, _, _ in block.at]
    order = f"{', '.join(each.ref for each in fronts)}, {_order(block)}"
    noted = tuple(
        replace(each, notes=(f"one piece with its neighbours, for the grain: {order}", *each.notes))
        for each in fronts
    )
    inner = tuple(Inner(each.ref, x, y, each.length, each.width) for each, x, y in block.at)
    return replace(
        fronts[0],
        length=block.size[0],
        width=block.size[1],
        turning=False,
        slants=(0.0, 0.0),
        notes=(f"cut out of it, seen from the face: {order}; the grain runs on through them",),
        run=noted,
        inner=inner,
    )


def _order(block: _Block) -> str:
    """How a block's fronts are read."""
    if len(set(block.joined)) == 1:
        return "from the left" if block.joined[-1] == _ROW else "from the top"
    if block.joined[-1] == _ROW:
        return "column by column from the left, each from the top"
    return "row by row from the top, each from the left"
