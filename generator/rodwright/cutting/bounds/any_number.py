"""What a sheet is worth at most if there are any number of each piece: a dynamic programme.

The best value of a rectangle is that of its best piece, or the best of two rectangles that it
is cut into, over all cuts at sums of lengths (P. C. Gilmore and R. E. Gomory, Multistage cutting
stock problems of two and more dimensions, Operations Research 13, 1965; J. C. Herz, Recursive
computational procedure for two-dimensional stock cutting, IBM Journal of Research and Development
16, 1972; from memory).  It is a bound where pieces are limited, and where
lengths had to be rounded.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from rodwright.cutting.bounds.dual_feasible import Whole
from rodwright.cutting.bounds.rasters import Cut, Raster, raster
from rodwright.cutting.sheet_problem import Put, Sheet, Size


@dataclass(frozen=True, slots=True)
class Ground:
    """A sheet with the places where cuts are tried, and the ways in which pieces may lie on it.

    Way j: size ``size[j]``, ``turned[j]``, taking place ``x[j]`` along and ``y[j]`` across.
    """

    sheet: Sheet
    along: Raster
    across: Raster
    size: list[int]
    turned: list[bool]
    x: Whole
    y: Whole

    @property
    def exact(self) -> bool:
        """Whether no length had to be rounded."""
        return self.along.exact and self.across.exact


def ground(sizes: Sequence[Size], sheet: Sheet, *, limited: bool = True) -> Ground:
    """A sheet made ready for any values of pieces; ``limited`` if there are as many as said."""
    ways = [
        (number, turned, length, width)
        for number, size in enumerate(sizes)
        for turned, length, width in size.ways
        if length <= sheet.length and width <= sheet.width
    ]
    several = [sizes[number].count if limited else sheet.length for number, *_ in ways]
    along = raster(_gathered([way[2] for way in ways], several), sheet.length)
    across = raster(_gathered([way[3] for way in ways], several), sheet.width)
    return Ground(
        sheet,
        along,
        across,
        [number for number, *_ in ways],
        [turned for _, turned, _, _ in ways],
        np.array([along.point(length) for _, _, length, _ in ways], dtype=np.int64),
        np.array([across.point(width) for *_, width in ways], dtype=np.int64),
    )


def _gathered(lengths: Sequence[int], counts: Sequence[int]) -> list[tuple[int, int]]:
    gathered: dict[int, int] = {}
    for length, count in zip(lengths, counts, strict=True):
        gathered[length] = gathered.get(length, 0) + count
    return sorted(gathered.items())


def best_values(on: Ground, values: Sequence[int]) -> Whole:
    """The best value of each rectangle from 0, 0 to a place along and one across.

    ``values`` are of the sizes, whole; none is less than 0.
    """
    best = _of_one_piece(on, values)
    turned = np.ascontiguousarray(best.T)
    while True:
        before = best.copy()
        _divide(best, on.along.cuts)
        turned[:] = best.T
        _divide(turned, on.across.cuts)
        best[:] = turned.T
        if (best == before).all():
            return best


def _of_one_piece(on: Ground, values: Sequence[int]) -> Whole:
    best = np.zeros((len(on.along.points), len(on.across.points)), dtype=np.int64)
    worth = np.array([values[number] for number in on.size], dtype=np.int64)
    np.maximum.at(best, (on.x, on.y), worth)
    np.maximum.accumulate(best, axis=0, out=best)
    return np.maximum.accumulate(best, axis=1)


def _divide(best: Whole, cuts: tuple[Cut, ...]) -> None:
    for cut in cuts:
        np.maximum(best[cut.first :], best[cut.rest] + best[cut.at], out=best[cut.first :])


def best_puts(on: Ground, values: Sequence[int], best: Whole) -> tuple[Put, ...]:
    """Pieces that are together worth the best value of the whole sheet, where they lie.

    Where lengths were rounded they may not fit.
    """
    return puts_within(on, values, best, len(on.along.points) - 1, len(on.across.points) - 1)


def puts_within(
    on: Ground, values: Sequence[int], best: Whole, along: int, across: int
) -> tuple[Put, ...]:
    """Pieces that are together worth the best value of a rectangle from 0, 0 to two places."""
    found: list[Put] = []
    open_ = [(along, across, 0, 0)]
    while open_:
        i, j, x, y = open_.pop()
        if not best[i, j]:
            continue
        way = _alone(on, values, best, i, j)
        if way is not None:
            found.append(Put(on.size[way], x, y, on.turned[way]))
            continue
        across_cut = _cut_of(best[:, j], on.along, i)
        if across_cut is not None:
            first, rest = across_cut
            open_ += [(first, j, x, y), (rest, j, x + _length(on.along, first), y)]
            continue
        along_cut = _cut_of(best[i], on.across, j)
        assert along_cut is not None
        first, rest = along_cut
        open_ += [(i, first, x, y), (i, rest, x, y + _length(on.across, first))]
    return tuple(found)


def _length(side: Raster, point: int) -> int:
    return int(side.points[point]) * side.step


def _alone(on: Ground, values: Sequence[int], best: Whole, i: int, j: int) -> int | None:
    """The piece that is as good alone, if one is."""
    for way in np.flatnonzero((on.x <= i) & (on.y <= j)).tolist():
        if values[on.size[way]] == best[i, j]:
            return int(way)
    return None


def _cut_of(best: Whole, side: Raster, to: int) -> tuple[int, int] | None:
    """The cut of a side that leaves two parts as good as the whole, if one does."""
    points = side.points
    first = np.arange(1, to)
    rest = np.searchsorted(points, points[to] - points[1:to], side="right") - 1
    good = np.flatnonzero(best[first] + best[rest] == best[to])
    return (int(first[good[0]]), int(rest[good[0]])) if len(good) else None
