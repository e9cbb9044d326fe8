"""What a sheet is worth at most if there are any number of each piece: a dynamic programme.

The best value of a rectangle is that of its best piece, or the best of two rectangles that it
is cut into, over all cuts at sums of lengths (P. C. Gilmore and R. E. Gomory, Multistage cutting
stock problems of two and more dimensions, Operations Research 13, 1965; J. C. Herz, Recursive
computational procedure for two-dimensional stock cutting, IBM Journal of Research and Development
16, 1972; from memory).  It is a bound where pieces are limited, and where
lengths had to be rounded.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np

from rodwright.cutting.bounds.dual_feasible import Whole
from rodwright.cutting.bounds.rasters import MOST, Raster, raster
from rodwright.cutting.sheet_problem import Put, Sheet, Size


@dataclass(frozen=True, slots=True)
class Ground:
    """A sheet with the places where cuts are tried, and the ways in which pieces may lie on it.

    Way j: of size ``size[j]``, ``turned[j]``, as long and wide as ``length[j]`` and ``width[j]``;
    it ends at place ``x[j]`` along and ``y[j]`` across.
    """

    sheet: Sheet
    along: Raster
    across: Raster
    size: list[int]
    turned: list[bool]
    length: Whole
    width: Whole
    x: Whole
    y: Whole

    @property
    def exact(self) -> bool:
        """Whether no length had to be rounded."""
        return self.along.exact and self.across.exact


def ground(
    sizes: Sequence[Size],
    sheet: Sheet,
    *,
    most: int = MOST,
    whole: bool = False,
    up: bool = False,
) -> Ground:
    """A sheet made ready for any values of pieces; ``most``, ``whole`` and ``up`` as for a raster.

    If lengths are rounded up, a piece may have no place on it any more.
    """
    ways = [
        (number, *way)
        for number, size in enumerate(sizes)
        for way in size.ways
        if way[1] <= sheet.length and way[2] <= sheet.width
    ]
    several = [sizes[number].count for number, *_ in ways]
    lengths = _gathered([way[2] for way in ways], several)
    widths = _gathered([way[3] for way in ways], several)
    along = raster(lengths, sheet.length, most=most, whole=whole, up=up)
    across = raster(widths, sheet.width, most=most, whole=whole, up=up)
    return Ground(
        sheet,
        along,
        across,
        [number for number, *_ in ways],
        [turned for _, turned, _, _ in ways],
        np.array([length for _, _, length, _ in ways], dtype=np.int64),
        np.array([width for *_, width in ways], dtype=np.int64),
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
    best = of_one_piece(on, values)
    turned = np.ascontiguousarray(best.T)
    while True:
        before = best.copy()
        divide(best, on.along)
        turned[:] = best.T
        divide(turned, on.across)
        best[:] = turned.T
        if (best == before).all():
            return best


def of_one_piece(on: Ground, values: Sequence[int]) -> Whole:
    """The value of the best piece that each rectangle from 0, 0 holds alone."""
    worth = np.array([values[number] for number in on.size], dtype=np.int64)
    smallest = int((on.length * on.width).min(initial=on.sheet.area))
    small = int(worth.max(initial=0)) * (on.sheet.area // smallest) < 2**31
    shape = (len(on.along.points), len(on.across.points))
    best = np.zeros(shape, dtype=np.int32 if small else np.int64)
    fit = (on.x < shape[0]) & (on.y < shape[1])
    np.maximum.at(best, (on.x[fit], on.y[fit]), worth[fit])
    np.maximum.accumulate(best, axis=0, out=best)
    return np.maximum.accumulate(best, axis=1)


def divide(best: Whole, side: Raster) -> None:
    """Let each rectangle be cut in two across a side, its first axis, where that is better."""
    for cut in side.cuts:
        np.maximum(best[cut.first :], best[cut.rest] + best[cut.at], out=best[cut.first :])


def best_puts(
    on: Ground, values: Sequence[int], best: Whole, part: Part | None = None
) -> tuple[Put, ...]:
    """Pieces that are together worth the best value of the sheet, or a part, where they lie.

    Where lengths were rounded down they may not fit.
    """
    found: list[Put] = []
    left = [whole_of(on) if part is None else part]
    while left:
        divided = parts_of(on, values, best, left.pop())
        if isinstance(divided, Put):
            found.append(divided)
        else:
            left += divided
    return tuple(found)


class Part(NamedTuple):
    """A rectangle of a sheet: to place ``i`` along and ``j`` across, from ``x`` and ``y``."""

    i: int
    j: int
    x: int
    y: int


def whole_of(on: Ground) -> Part:
    """The whole sheet."""
    return Part(len(on.along.points) - 1, len(on.across.points) - 1, 0, 0)


def parts_of(on: Ground, values: Sequence[int], best: Whole, part: Part) -> Put | tuple[Part, ...]:
    """The best of a rectangle: one piece, or two parts that it is cut into; no parts if it is
    worth nothing."""
    if not best[part.i, part.j]:
        return ()
    return alone(on, values, best, part) or cut_of(on, best, part, 0) or _must(on, best, part)


def _must(on: Ground, best: Whole, part: Part) -> tuple[Part, ...]:
    cut = cut_of(on, best, part, 1)
    assert cut is not None
    return cut


def alone(on: Ground, values: Sequence[int], best: Whole, part: Part) -> Put | None:
    """The piece that is alone worth the best of a rectangle, if one is."""
    for way in np.flatnonzero((on.x <= part.i) & (on.y <= part.j)).tolist():
        if values[on.size[way]] == best[part.i, part.j]:
            return Put(on.size[way], part.x, part.y, on.turned[way])
    return None


def cut_of(on: Ground, best: Whole, part: Part, axis: int) -> tuple[Part, Part] | None:
    """The cut that leaves two parts as good as the whole: across the length (0) or the width."""
    i, j, x, y = part
    if axis == 0:
        ends = _ends(best[:, j], on.along, i)
        if ends is not None:
            return Part(ends[0], j, x, y), Part(ends[1], j, x + on.along.length(ends[0]), y)
    else:
        ends = _ends(best[i], on.across, j)
        if ends is not None:
            return Part(i, ends[0], x, y), Part(i, ends[1], x, y + on.across.length(ends[0]))
    return None


def _ends(best: Whole, side: Raster, to: int) -> tuple[int, int] | None:
    points = side.points
    first = np.arange(1, to)
    rest = np.searchsorted(points, points[to] - points[1:to], side="right") - 1
    good = np.flatnonzero(best[first] + best[rest] == best[to])
    return (int(first[good[0]]), int(rest[good[0]])) if len(good) else None


def there(puts: Iterable[Put], counts: Sequence[int]) -> tuple[Put, ...]:
    """Pieces without those that are more than there are of their size."""
    left = list(counts)
    kept = []
    for put in puts:
        if left[put.size]:
            left[put.size] -= 1
            kept.append(put)
    return tuple(kept)
