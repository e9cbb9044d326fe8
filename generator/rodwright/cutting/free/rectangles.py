"""The free rectangles of a sheet: all the largest that nothing lies on, overlapping each other.

Source: J. Jylanki, A thousand ways to pack the bin (2010), "maximal rectangles" (from memory).
All in steps of the problem, pieces with their kerf.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from rodwright.cutting.sheet_problem import Pattern, Put, Sheet, SheetProblem


class Box(NamedTuple):
    """A rectangle from ``x0`` to ``x1`` and ``y0`` to ``y1``."""

    x0: int
    y0: int
    x1: int
    y1: int

    @property
    def area(self) -> int:
        """Steps squared."""
        return (self.x1 - self.x0) * (self.y1 - self.y0)


def box_of(put: Put, problem: SheetProblem) -> Box:
    """What a piece takes up."""
    length, width = problem.sizes[put.size].lying(put.turned)
    return Box(put.x, put.y, put.x + length, put.y + width)


def free_in(sheet: Sheet) -> list[Box]:
    """The free rectangles of a sheet that is still whole."""
    free = [Box(0, 0, sheet.length, sheet.width)]
    for spot in sheet.spots:
        free = without(free, spot)
    return free


def free_beside(pattern: Pattern, problem: SheetProblem) -> list[Box]:
    """The free rectangles of a sheet beside all that lies on it."""
    free = free_in(problem.sheets[pattern.sheet])
    for put in pattern.puts:
        free = without(free, box_of(put, problem))
    return free


def without(
    free: Iterable[tuple[int, int, int, int]],
    taken: tuple[int, int, int, int],
    least: tuple[int, int] = (1, 1),
) -> list[Box]:
    """The free rectangles once something lies on them, those alone that are of use: not smaller
    than ``least`` along x or y.

    A flaw narrower than the kerf ends before it begins; what is free beside it overlaps then.
    """
    x0, y0, x1, y1 = taken
    whole: list[Box] = []
    cut: list[Box] = []
    for each in free:
        left, low, right, high = each
        if left >= x1 or right <= x0 or low >= y1 or high <= y0:
            whole.append(each)  # type: ignore[arg-type]
            continue
        tall, long = high - low >= least[1], right - left >= least[0]
        if tall and x0 - left >= least[0]:
            cut.append(Box(left, low, x0, high))
        if tall and right - x1 >= least[0]:
            cut.append(Box(x1, low, right, high))
        if long and y0 - low >= least[1]:
            cut.append(Box(left, low, right, y0))
        if long and high - y1 >= least[1]:
            cut.append(Box(left, y1, right, high))
    return whole + _largest(cut, whole)


def _largest(cut: list[Box], whole: list[Box]) -> list[Box]:
    """Those of ``cut`` that lie in no other and in none that stayed whole."""
    kept: list[Box] = []
    cut.sort(key=_outermost)  # a box comes behind all that it lies in
    for box in cut:
        x0, y0, x1, y1 = box
        for others in (kept, whole):
            for left, low, right, high in others:
                if left <= x0 and low <= y0 and right >= x1 and high >= y1:
                    break
            else:
                continue
            break
        else:
            kept.append(box)
    return kept


def _outermost(box: Box) -> tuple[int, int, int, int]:
    return box[0], box[1], -box[2], -box[3]


def offcuts_beside(pattern: Pattern, problem: SheetProblem, most: int = 3) -> list[Box]:
    """Rectangles that can be cut out of what is left, the largest first, then the largest beside
    it, and so on, as many as ``most``; each with a kerf, so none overlap."""
    free = [box for box in free_beside(pattern, problem) if useful(box, problem)]
    offcuts: list[Box] = []
    while free and len(offcuts) < most:
        best = max(free, key=lambda box: (offcut_area(box, problem.kerf), box))
        offcuts.append(best)
        free = [box for box in without(free, best) if useful(box, problem)]
    return offcuts


def useful(box: Box, problem: SheetProblem) -> bool:
    """Whether an offcut is as large as it has to be, either way round."""
    kerf = problem.kerf
    length, width = box.x1 - box.x0 - kerf, box.y1 - box.y0 - kerf
    least = (max(1, problem.least_offcut[0]), max(1, problem.least_offcut[1]))
    return (length >= least[0] and width >= least[1]) or (width >= least[0] and length >= least[1])


def offcut_area(box: Box, kerf: int) -> int:
    """The area of an offcut itself, without the cut beside it."""
    return (box.x1 - box.x0 - kerf) * (box.y1 - box.y0 - kerf)


def largest_offcut(pattern: Pattern, problem: SheetProblem) -> int:
    """The area of the largest offcut that a sheet leaves, in steps squared; 0 if none is useful."""
    free = free_beside(pattern, problem)
    kept = (offcut_area(box, problem.kerf) for box in free if useful(box, problem))
    return max(kept, default=0)
