"""Sheets without waste: rectangles of equal sides joined, until one is as large as a sheet.

Where nothing may be wasted, every cut parts two rectangles of one length or of one width, and
among lengths that are told apart to fractions of a millimetre few are equal by chance.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from rodwright.cutting.sheets.filling import Filling
from rodwright.cutting.sheets.slicing import BEHIND, BESIDE, Knot, join, measure
from rodwright.cutting.sheets.state import Ground

_LIKELY = (1, 2)
"""How much rather a rectangle is made whose sides others have too: a power of their number."""
_COST = 3
"""Effort of an attempt, for each pair of pieces."""


class _Rect(NamedTuple):
    """Pieces without waste: one (``size``), or ``parts``, each turned or not, along an ``axis``."""

    length: int
    width: int
    turns: bool
    size: int
    axis: int = -1
    parts: tuple[tuple[_Rect, bool], ...] = ()

    def ways(self) -> tuple[tuple[bool, int, int], ...]:
        straight = (False, self.length, self.width)
        return (straight, (True, self.width, self.length)) if self.turns else (straight,)

    def sizes(self) -> Iterator[int]:
        if not self.parts:
            yield self.size
        for part, _ in self.parts:
            yield from part.sizes()

    def grown(self, turned: bool) -> Knot:
        """Its tree as it lies."""
        if not self.parts:
            length, width = (self.width, self.length) if turned else (self.length, self.width)
            return Knot(length, width, self.size, turned)
        one, two = (part.grown(own != turned) for part, own in self.parts)
        axis = self.axis if not turned else BEHIND + BESIDE - self.axis
        both = join(one, two, axis)
        measure(both)
        return both


Match = tuple[int, int, _Rect]
"""Which two rectangles, and what they make."""


def matched(ground: Ground, left: list[int]) -> list[Filling]:
    """Sheets without waste, cut from pieces of some sizes; by chance, so another time others."""
    ground.effort.spend(_COST * len(left) ** 2)
    attempt = _Attempt(ground)
    for size in left:
        its = ground.problem.sizes[size]
        attempt.add(_Rect(its.length, its.width, its.turns, size))
    attempt.join_all()
    return attempt.full


class _Attempt:
    def __init__(self, ground: Ground) -> None:
        self._ground = ground
        self._sheets = ground.problem.sheets
        self._power = ground.rng.choice(_LIKELY)
        self._lengths = {sheet.length for sheet in self._sheets}
        self._widths = {sheet.width for sheet in self._sheets}
        self._rects: dict[int, _Rect] = {}
        self._matches: list[Match] = []
        self._number = 0
        self.full: list[Filling] = []

    def add(self, rect: _Rect) -> None:
        """One more rectangle, with what it makes with others; a whole sheet is done."""
        for kind, sheet in enumerate(self._sheets):
            for turned, length, width in rect.ways():
                if (length, width) == (sheet.length, sheet.width):
                    self._fill(kind, rect, turned)
                    return
        for number, other in self._rects.items():
            self._matches += [(self._number, number, made) for made in self._made(rect, other)]
        self._rects[self._number] = rect
        self._number += 1

    def _fill(self, kind: int, rect: _Rect, turned: bool) -> None:
        filling = self._ground.open(kind)
        (field,) = filling.fields
        field.root = rect.grown(turned)
        field.list_entries()
        filling.free -= field.root.area
        self.full.append(filling)

    def _made(self, one: _Rect, two: _Rect) -> Iterator[_Rect]:
        turns = one.turns and two.turns
        for turned, length, width in one.ways():
            for also, its_length, its_width in two.ways():
                parts = ((one, turned), (two, also))
                if length == its_length:
                    made = _Rect(length, width + its_width, turns, -1, BESIDE, parts)
                    if self._fits(made):
                        yield made
                if width == its_width:
                    made = _Rect(length + its_length, width, turns, -1, BEHIND, parts)
                    if self._fits(made):
                        yield made

    def _fits(self, rect: _Rect) -> bool:
        return any(
            length <= sheet.length and width <= sheet.width
            for sheet in self._sheets
            for _, length, width in rect.ways()
        )

    def join_all(self) -> None:
        """Join two at a time, until no sides are equal any more."""
        rects = self._rects
        while True:
            self._matches = [
                each for each in self._matches if each[0] in rects and each[1] in rects
            ]
            if not self._matches:
                return
            one, two, made = self._chosen()
            del rects[one], rects[two]
            self.add(made)

    def _chosen(self) -> Match:
        sides = {side for rect in self._rects.values() for side in (rect.length, rect.width)}
        weights = [self._likely(made, sides) ** self._power for _, _, made in self._matches]
        return self._ground.rng.choices(self._matches, weights)[0]

    def _likely(self, rect: _Rect, sides: set[int]) -> int:
        length, width = rect.length, rect.width
        others = (length in sides) + (width in sides)
        whole = (length in self._lengths) + (width in self._widths)
        if rect.turns:
            whole += (length in self._widths) + (width in self._lengths)
        return 1 + others + 2 * whole
