"""Which of many boxes lie near a place, without looking at all of them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import product
from math import floor
from typing import Generic, TypeVar

from rodwright.geometry import Box

_CELL = 400.0
"""Width and height of a cell, mm: about a door's or a drawer's."""

Thing = TypeVar("Thing")


class Nearby(Generic[Thing]):
    """Things by where they stand, seen from the front.

    Each is entered in every cell of a grid in x and z that its box touches, so that a
    search takes as long as there are things near, however many there are in all.
    """

    def __init__(self, things: Iterable[tuple[Box, Thing]]) -> None:
        self._cells: dict[tuple[int, int], list[tuple[int, Thing]]] = {}
        for entry in enumerate(things):
            number, (box, thing) = entry
            for cell in _touched(box):
                self._cells.setdefault(cell, []).append((number, thing))

    def within(self, box: Box) -> list[Thing]:
        """Everything whose box may reach into this one in x and z, in the order entered."""
        found = {
            number: thing for cell in _touched(box) for number, thing in self._cells.get(cell, ())
        }
        return [found[number] for number in sorted(found)]


def _touched(box: Box) -> Iterator[tuple[int, int]]:
    (x, _, z), (u, _, v) = box.low, box.high
    across, up = (range(floor(a / _CELL), floor(b / _CELL) + 1) for a, b in ((x, u), (z, v)))
    return product(across, up)
