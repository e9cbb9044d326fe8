"""What a sheet is worth at most, and what can still be added round a part of it.

Pieces are limited; that is relaxed by a price on each (Lagrangian relaxation): a piece counts what
it is worth less its price, any number of them may be cut, and the price of all there are is added.
Good prices are found by going against what there is too much of in the best relaxed pattern
(subgradients, with B. T. Polyak's step, USSR Computational Mathematics and Mathematical Physics 9,
1969; from memory).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from rodwright.cutting.bounds.any_number import Ground, best_values
from rodwright.cutting.bounds.dual_feasible import Whole
from rodwright.cutting.bounds.rasters import Raster
from rodwright.cutting.sheet_problem import Put

_SLOWER = 8
"""Rounds without gain before the stride is halved."""


@dataclass(frozen=True, slots=True)
class Relaxed:
    """A relaxation of a sheet: no pattern is worth more than ``most``.

    ``reduced`` are the values of the sizes less the prices; with ``extra``, the price of all there
    are, the value of a pattern is at most the reduced value of any rectangle of it, and
    ``outside`` of where that ends along and across, and ``extra``.
    """

    most: int
    reduced: Whole
    extra: int
    outside: Whole


def outside(on: Ground, best: Whole) -> Whole:
    """What can be added at most to a rectangle that ends at a place along and one across, until the
    sheet is full: by rectangles beside it and then beside both (K. V. Viswanathan and A. Bagchi,
    Best-first search methods for constrained two-dimensional cutting stock problems, Operations
    Research 41, 1993; from memory)."""
    added = np.zeros_like(best)
    turned, best_turned = np.ascontiguousarray(added.T), np.ascontiguousarray(best.T)
    while True:
        before = added.copy()
        _grow(added, best, on.along)
        turned[:] = added.T
        _grow(turned, best_turned, on.across)
        added[:] = turned.T
        if (added == before).all():
            return added


def _grow(added: Whole, best: Whole, side: Raster) -> None:
    points = side.points
    for at in range(len(points) - 2, -1, -1):
        beside = np.searchsorted(points, points[at + 1 :] - points[at], side="right") - 1
        np.maximum(added[at], (added[at + 1 :] + best[beside]).max(axis=0), out=added[at])


def relax(on: Ground, values: Sequence[int], counts: Sequence[int], prices: Whole) -> Relaxed:
    """The relaxation by some prices, with what lies outside."""
    reduced = np.array(values, dtype=np.int64) - prices
    best = best_values(on, reduced.tolist())
    extra = int((prices * np.array(counts)).sum())
    return Relaxed(int(best[-1, -1]) + extra, reduced, extra, outside(on, best))


Solve = Callable[[Sequence[int]], tuple[int, tuple[Put, ...]]]
"""The best with any number of each piece, by some values: what that is worth, and its pieces."""


def better_prices(
    solve: Solve, values: Sequence[int], counts: Sequence[int], least: int, rounds: int
) -> Iterator[tuple[Whole, int]]:
    """Prices of the sizes, and what no pattern exceeds by them; at first none, then better ones.

    ``least`` is what a sheet is known to be worth; they end when that is met.  No price is more
    than its piece is worth.
    """
    there = np.array(counts, dtype=np.int64)
    value = np.array(values, dtype=np.int64)
    prices = np.zeros(len(value))
    lowest: int | None = None
    stride, since = 1.0, 0
    for _ in range(rounds):
        whole = np.floor(np.clip(prices, 0, value)).astype(np.int64)
        best, puts = solve((value - whole).tolist())
        most = best + int((whole * there).sum())
        yield whole, most
        since += 1
        if lowest is None or most < lowest:
            lowest, since = most, 0
        if since == _SLOWER:
            stride, since = stride / 2, 0
        used = np.bincount([put.size for put in puts], minlength=len(value))
        slope = np.where((used < there) & (whole <= 0), 0, used - there)
        if most <= least or not slope.any():
            return
        prices = whole + stride * max(1, most - least) / (slope**2).sum() * slope
