"""A sheet's pieces as a slicing tree that grows: nothing is cut until all of it is known.

A knot is a piece, or two knots joined: one behind the other along the length, or side by side
across the width.  It takes the sum of their sizes one way and the larger the other way.  A piece
may be joined to any knot as long as the whole still goes on the sheet, so where cuts fall stays
open to the last (insertion into slicing trees for bins: K. Fleszar, Three insertion heuristics and
a justification improvement heuristic for two-dimensional bin packing with guillotine cuts,
Computers & Operations Research 40(1):463-474, 2013; from memory, not opened).
"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.cutting.sheet_problem import FirstCut

LEAF = -1
BEHIND = 0
"""Two knots follow each other along the length: the cut between them goes across."""
BESIDE = 1
"""Two knots lie side by side across the width: the cut between them goes along."""

JOINED_BY: dict[FirstCut, int] = {"across": BEHIND, "along": BESIDE}
"""How what is parted by a cut lies to each other."""


class Knot:
    """A piece (``axis`` LEAF, with its ``size`` and whether it is ``turned``), or two knots.

    ``area`` is that of its pieces.
    """

    __slots__ = ("area", "axis", "length", "one", "size", "turned", "two", "up", "width")

    def __init__(self, length: int, width: int, size: int, turned: bool) -> None:
        self.axis = LEAF
        self.area = length * width
        self.length = length
        self.width = width
        self.size = size
        self.turned = turned
        self.up: Knot | None = None
        self.one = self
        self.two = self

    def copy(self) -> Knot:
        """The same again, in other knots."""
        same = Knot(self.length, self.width, self.size, self.turned)
        if self.axis != LEAF:
            same.axis, same.area = self.axis, self.area
            same.one, same.two = self.one.copy(), self.two.copy()
            same.one.up = same.two.up = same
        return same

    def leaves(self) -> Iterator[Knot]:
        """Its pieces."""
        stack = [self]
        while stack:
            knot = stack.pop()
            if knot.axis == LEAF:
                yield knot
            else:
                stack += (knot.two, knot.one)

    def turns(self, axis: int) -> int:
        """How often cuts turn from one direction to the other below cuts of an axis."""
        if self.axis == LEAF:
            return 0
        below = max(self.one.turns(self.axis), self.two.turns(self.axis))
        return below + (self.axis != axis)

    def parts(self) -> list[Knot]:
        """What its cuts of one direction part."""
        if self.axis == LEAF:
            return [self]
        return [
            part
            for side in (self.one, self.two)
            for part in (side.parts() if side.axis == self.axis else [side])
        ]


def join(at: Knot, leaf: Knot, axis: int) -> Knot:
    """A piece joined to a knot; the new knot in whose place they are."""
    both = Knot(0, 0, -1, False)
    both.axis, both.one, both.two, both.up = axis, at, leaf, at.up
    replace(at, both)
    at.up = leaf.up = both
    return both


def part_from(leaf: Knot) -> Knot | None:
    """A piece taken off its tree: the knot in the place of the one that held it."""
    both = leaf.up
    if both is None:
        return None
    other = both.two if both.one is leaf else both.one
    other.up = both.up
    replace(both, other)
    return other


def replace(old: Knot, new: Knot) -> None:
    """Another knot below the one that a knot hangs on."""
    above = old.up
    if above is not None:
        if above.one is old:
            above.one = new
        else:
            above.two = new


def measure(knot: Knot | None) -> None:
    """Sizes anew, from a knot up to the root."""
    while knot is not None:
        one, two = knot.one, knot.two
        knot.area = one.area + two.area
        if knot.axis == BEHIND:
            knot.length = one.length + two.length
            knot.width = one.width if one.width > two.width else two.width
        elif knot.axis == BESIDE:
            knot.width = one.width + two.width
            knot.length = one.length if one.length > two.length else two.length
        knot = knot.up
