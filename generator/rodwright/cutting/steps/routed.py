"""What a router cuts round, in its order."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rodwright.cutting.plans import Layout, Placed
from rodwright.cutting.steps.cuts import Contour
from rodwright.cutting.work import Lot

SMALL = 40_000.0
"""mm2: a piece no larger than this is held by tabs and cut last, since clamps or suction may not
hold it (common practice, no source)."""
NARROW = 60.0
"""mm: and so is one no wider than this (common practice, no source)."""


def contours_of(layout: Layout, lot: Lot, many: int, given: dict[str, int]) -> tuple[Contour, ...]:
    """The contours of a sheet and of as ``many`` like it: what is inside a piece first, then
    pieces from the near end on, small ones last.

    ``given`` is how many labels of each name are given out already, and is counted on.
    """
    contours = [*_contours(layout, lot)]
    contours.sort(key=lambda each: (each.tabs, not each.inner, each.x, each.y))
    numbered = []
    for number, contour in enumerate(contours, 1):
        first = given.get(contour.name, 0)
        given[contour.name] = first + many
        copies = tuple(range(first, first + many))
        numbered.append(replace(contour, number=number, copies=copies))
    return tuple(numbered)


def _contours(layout: Layout, lot: Lot) -> Iterator[Contour]:
    pieces = {piece.name: piece for piece in lot.pieces}
    for placed in layout.placed:
        piece = pieces[placed.piece]
        for inner in piece.inner:
            x, y = placed.x + inner.x, placed.y + inner.y
            size = inner.length, inner.width
            if placed.turned:
                x = placed.x + piece.width - inner.y - inner.width
                y, size = placed.y + inner.x, size[::-1]
            yield _contour(Placed(inner.name, x, y, *size), inner=True)
        if not piece.inner:
            yield _contour(placed)


def _contour(placed: Placed, *, inner: bool = False) -> Contour:
    small = placed.length * placed.width <= SMALL or min(placed.length, placed.width) <= NARROW
    sides = placed.x, placed.y, placed.length, placed.width
    return Contour(0, placed.piece, (), *sides, inner, small)
