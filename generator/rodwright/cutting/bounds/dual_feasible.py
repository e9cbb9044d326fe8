"""Dual feasible functions: other lengths for pieces, that never add up to more than fits.

A function f of whole lengths up to a capacity C is dual feasible to a capacity c if lengths
whose sum is at most C have images whose sum is at most c.  A product of two, one along the
sheet and one across it, is then a measure of rectangles by which no sheet holds more than the
product of the capacities, however its pieces lie: a conservative scale (S. P. Fekete and J.
Schepers, A general framework for bounds for higher-dimensional orthogonal packing problems,
Mathematical Methods of Operations Research 60, 2004; from memory, as are the others named here).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import accumulate

import numpy as np
from numpy.typing import NDArray

Whole = NDArray[np.int64]

_MOST = 100
"""Thresholds that are tried of one family of functions at most, so that many pieces are fast."""

_ROUNDED = 16
"""The finest rounding tried: pieces smaller than a part in so many are as good as their area."""


@dataclass(frozen=True, slots=True)
class Images:
    """What some functions make of some lengths.

    ``of[k, j]`` is the k-th function's image of the j-th length, ``capacity[k]`` what images of
    lengths that fit together add up to at most; all whole.
    """

    of: Whole
    capacity: Whole


def images(lengths: list[int], counts: list[int], capacity: int) -> Images:
    """Images of some lengths, none longer than the capacity, by all the functions known here.

    ``counts`` are how many of each length there are at most; some functions lean on that.
    """
    sizes = np.array(lengths, dtype=np.int64)
    rows = {
        (most, tuple(row.tolist())): None
        for row, most in (
            (sizes, capacity),
            *_trimmed(sizes, capacity),
            *_rounded(sizes, capacity),
            *_stepped(sizes, capacity),
            *_counted(lengths, counts, capacity),
        )
    }
    return Images(
        np.array([row for _, row in rows], dtype=np.int64).reshape(len(rows), len(lengths)),
        np.array([most for most, _ in rows], dtype=np.int64),
    )


def _trimmed(sizes: Whole, capacity: int) -> Iterator[tuple[Whole, int]]:
    """Short lengths count nothing, and what leaves room for only such counts as all: U(epsilon) of
    Fekete and Schepers.  Each is rounded as well, as they do."""
    for least in _thresholds(sizes, capacity):
        row = np.where(sizes < least, 0, np.where(sizes > capacity - least, capacity, sizes))
        yield row, capacity
        for parts in (2, 3, 4, 5):
            yield _round(row, capacity, parts), capacity * parts


def _rounded(sizes: Whole, capacity: int) -> Iterator[tuple[Whole, int]]:
    for parts in range(1, _ROUNDED + 1):
        yield _round(sizes, capacity, parts), capacity * parts


def _round(sizes: Whole, capacity: int, parts: int) -> Whole:
    """u(k) of Fekete and Schepers: lengths in k-ths of the capacity, those between multiples of a
    (k + 1)-th part of it rounded down as if there were k of these."""
    scaled = (parts + 1) * sizes
    return np.where(scaled % capacity == 0, parts * sizes, scaled // capacity * capacity)


def _stepped(sizes: Whole, capacity: int) -> Iterator[tuple[Whole, int]]:
    """Lengths in whole steps, those above the middle by what they leave free: f2 of M. A.
    Boschetti and A. Mingozzi (as J. Carlier, F. Clautiaux and A. Moukrim write it, New reduction
    procedures and lower bounds for the two-dimensional bin packing problem with fixed orientation,
    Computers & Operations Research 34, 2007)."""
    steps = _thresholds(sizes, capacity) + [
        step for parts in range(2, _ROUNDED) for step in (capacity // parts, capacity // parts + 1)
    ]
    for step in sorted({each for each in steps if 0 < each <= capacity // 2}):
        most = capacity // step
        above = 2 * (most - (capacity - sizes) // step)
        row = np.where(2 * sizes > capacity, above, 2 * (sizes // step))
        yield np.where(2 * sizes == capacity, most, row), 2 * most


def _counted(lengths: list[int], counts: list[int], capacity: int) -> Iterator[tuple[Whole, int]]:
    """How many of the shorter lengths that there are a longer one leaves no room for: f1 of
    Carlier, Clautiaux and Moukrim."""
    sizes = np.array(lengths, dtype=np.int64)
    small = sorted((size, count) for size, count in zip(lengths, counts, strict=True))
    for least in _thresholds(sizes, capacity):
        among = [
            size
            for size, count in small
            if least <= size and 2 * size <= capacity
            for _ in range(min(count, capacity // size))
        ]
        sums = np.array(list(accumulate(among)), dtype=np.int64)
        most = int(np.searchsorted(sums, capacity, side="right"))
        if not most:
            continue
        lost = most - np.searchsorted(sums, capacity - sizes, side="right")
        row = np.where(2 * sizes > capacity, lost, np.where(sizes >= least, 1, 0))
        yield row.astype(np.int64), most


def _thresholds(sizes: Whole, capacity: int) -> list[int]:
    """Where a family of functions changes: at the lengths, and just above what they leave."""
    values = sizes.tolist()
    wanted: Iterable[int] = (
        *(each for each in values),
        *(each + 1 for each in values),
        *(capacity - each for each in values),
        *(capacity - each + 1 for each in values),
    )
    ordered = sorted({each for each in wanted if each > 0 and 2 * each <= capacity})
    if len(ordered) <= _MOST:
        return ordered
    return [ordered[i * (len(ordered) - 1) // (_MOST - 1)] for i in range(_MOST)]
