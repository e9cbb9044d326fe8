"""Fields: parts of a sheet that are clear of flaws, each with the tree of its pieces."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.cutting.sheet_problem import FirstCut, Put, Rules
from rodwright.cutting.sheets.slicing import (
    BEHIND,
    BESIDE,
    JOINED_BY,
    LEAF,
    Knot,
    join,
    measure,
    part_from,
)

Entry = tuple[int, int, int, int, Knot]
"""A knot as it may be joined to: its length, its width, by how much it may grow either way."""


class Field:
    """A rectangle of a sheet at ``x, y``, and the tree of what lies in it.

    ``least`` is the area of the smallest piece there is: less room than that is none.
    """

    __slots__ = ("entries", "least", "length", "root", "rules", "width", "x", "y")

    def __init__(self, x: int, y: int, length: int, width: int, rules: Rules, least: int) -> None:
        self.x, self.y, self.length, self.width = x, y, length, width
        self.least = least
        self.rules = rules
        self.root: Knot | None = None
        self.entries: list[Entry] = []

    def copy(self) -> Field:
        """The same again, with its own tree."""
        same = Field(self.x, self.y, self.length, self.width, self.rules, self.least)
        if self.root is not None:
            same.root = self.root.copy()
        same.list_entries()
        return same

    def list_entries(self) -> None:
        """All knots anew that have room for a piece, with what each may grow by."""
        entries: list[Entry] = []
        least = self.least
        stack = [(self.root, self.length, self.width)] if self.root is not None else []
        while stack:
            knot, length, width = stack.pop()
            if length * width - knot.area < least:
                continue
            its_length, its_width = knot.length, knot.width
            entries.append((its_length, its_width, length - its_length, width - its_width, knot))
            if knot.axis == BEHIND:
                one, two = knot.one, knot.two
                stack.append((one, length - two.length, width))
                stack.append((two, length - one.length, width))
            elif knot.axis == BESIDE:
                one, two = knot.one, knot.two
                stack.append((one, length, width - two.width))
                stack.append((two, length, width - one.width))
        self.entries = entries

    def add(self, at: Knot | None, axis: int, leaf: Knot) -> None:
        """A piece joined to a knot of its tree; the first piece to none."""
        if at is None:
            self.root = leaf
        else:
            both = join(at, leaf, axis)
            if both.up is None:
                self.root = both
            measure(both)
        self.list_entries()

    def remove(self, leaf: Knot) -> None:
        """A piece taken off; ``list_entries`` afterwards, once all are off."""
        other = part_from(leaf)
        if other is None:
            self.root = None
        elif other.up is None:
            self.root = other
        else:
            measure(other.up)

    def may_join(self, at: Knot, axis: int) -> bool:
        """Whether its rules leave room for one more turn of the cuts there."""
        if self.rules.free:
            return True
        root = join(at, Knot(0, 0, -1, False), axis)
        leaf = root.two
        while root.up is not None:
            root = root.up
        kept = keeps(root, self.rules)
        part_from(leaf)
        return kept

    def leaves(self) -> list[Knot]:
        """Its pieces."""
        return [] if self.root is None else list(self.root.leaves())

    def puts(self) -> Iterator[Put]:
        """Its pieces with where they lie on the sheet, the largest nearest to the corner, so that
        what is left lies together."""
        stack = [(self.root, self.x, self.y)] if self.root is not None else []
        while stack:
            knot, x, y = stack.pop()
            if knot.axis == LEAF:
                yield Put(knot.size, x, y, knot.turned)
            elif knot.axis == BEHIND:
                for part in sorted(knot.parts(), key=lambda each: (-each.width, -each.length)):
                    stack.append((part, x, y))
                    x += part.length
            else:
                for part in sorted(knot.parts(), key=lambda each: (-each.length, -each.width)):
                    stack.append((part, x, y))
                    y += part.width


def keeps(root: Knot, rules: Rules) -> bool:
    """Whether a tree can be cut by the rules."""
    if root.axis == LEAF:
        return True
    if rules.stages is None:
        first = rules.first_cut is None or root.axis == JOINED_BY[rules.first_cut]
        return first or root.turns(root.axis) == 0
    if stages(root, rules.first_cut) <= rules.stages:
        return True
    if not rules.head_cuts or root.axis != BEHIND:
        return False
    both = max(stages(root.one, rules.first_cut), stages(root.two, rules.first_cut))
    return both <= rules.stages


def stages(knot: Knot, first: FirstCut | None) -> int:
    """How many stages of cuts a tree takes; a first one that cuts nothing counts."""
    if knot.axis == LEAF:
        return 0
    return 1 + knot.turns(knot.axis if first is None else JOINED_BY[first])
