"""A question about sheets in whole numbers: equal sizes gathered, kerf and trims taken in.

Every piece is longer and wider by one kerf than it is, and so is what can be used of a sheet: the
cut behind the last piece of a row may fall beside the sheet.  What then fits without kerf fits with
it, for saws exactly, and for a router that keeps pieces one kerf apart as well (common practice in
the field: two pieces of l1 and l2 need l1 + k + l2 of L, that is (l1 + k) + (l2 + k) <= L + k).
The frame of a sheet here begins where its near trim and its face trim end.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple

from rodwright.cutting.grid import Grid

FirstCut = Literal["along", "across"]
"""Along the length (a rip, which divides the width), or across it."""


Way = tuple[bool, int, int]
"""How a piece may lie: turned or not, its length along x, its width along y."""


class Spot(NamedTuple):
    """What no piece may lie on, in steps: one from ``x0`` to ``x1`` (with its kerf) lies on it if
    ``x0 < self.x1`` and ``x1 > self.x0``, and so in y.

    A flaw that is narrower than the kerf has its ``x0`` behind its ``x1``, and that still holds.
    """

    x0: int
    y0: int
    x1: int
    y1: int

    def under(self, x: int, y: int, length: int, width: int) -> bool:
        """Whether a piece (with its kerf) lies on it."""
        return x < self.x1 and x + length > self.x0 and y < self.y1 and y + width > self.y0


class Put(NamedTuple):
    """A piece on a sheet: its ``size`` in the problem, its near corner in steps, turned or not."""

    size: int
    x: int
    y: int
    turned: bool


class Pattern(NamedTuple):
    """A sheet as it is cut: which ``sheet`` of the problem, and what lies on it."""

    sheet: int
    puts: tuple[Put, ...]


@dataclass(frozen=True, slots=True)
class Size:
    """All pieces of one size that may lie alike, in steps, a kerf added.

    ``turns`` says whether they may lie either way, and lie otherwise then.  ``of`` are the
    pieces: the place of each in the question, and how many.
    """

    length: int
    width: int
    count: int
    turns: bool
    of: tuple[tuple[int, int], ...]

    @property
    def area(self) -> int:
        """Steps squared, with the kerf."""
        return self.length * self.width

    def lying(self, turned: bool) -> tuple[int, int]:
        """Its length along x and width along y as it lies."""
        return (self.width, self.length) if turned else (self.length, self.width)

    @property
    def ways(self) -> tuple[Way, ...]:
        """How it may lie."""
        straight = (False, self.length, self.width)
        return (straight, (True, self.width, self.length)) if self.turns else (straight,)


@dataclass(frozen=True, slots=True)
class Sheet:
    """Equal sheets: what can be used of one in steps, a kerf added.

    ``count`` is how many there are, never more than there are pieces; ``price`` whole, in
    steps of the problem's ``money``; ``supply`` its place in the question; ``near`` and ``face``
    its trims in steps.
    """

    length: int
    width: int
    count: int
    price: int
    spots: tuple[Spot, ...]
    supply: int
    near: int
    face: int

    @property
    def area(self) -> int:
        """Steps squared, with the kerf."""
        return self.length * self.width

    def takes(self, size: Size) -> bool:
        """Whether a piece goes on it when it is alone."""
        return any(self.place(length, width) is not None for _, length, width in size.ways)

    def place(self, length: int, width: int) -> tuple[int, int] | None:
        """Where something as large lies clear of spots, nearest to the corner; None if nowhere.

        Pushed to the near end and the face edge it touches them or spots, so only those are tried.
        """
        xs = sorted({0, *(spot.x1 for spot in self.spots)})
        ys = sorted({0, *(spot.y1 for spot in self.spots)})
        for x in xs:
            for y in ys:
                within = 0 <= x <= self.length - length and 0 <= y <= self.width - width
                if within and not any(spot.under(x, y, length, width) for spot in self.spots):
                    return x, y
        return None


@dataclass(frozen=True, slots=True)
class Rules:
    """How sheets may be cut, as ``plan_sheets`` is asked."""

    guillotine: bool = True
    stages: int | None = None
    first_cut: FirstCut | None = None
    head_cuts: bool = False

    @property
    def free(self) -> bool:
        """Whether any guillotine cuts will do."""
        return self.guillotine and self.stages is None and self.first_cut is None


@dataclass(frozen=True, slots=True)
class SheetProblem:
    """The whole question.  Sizes and sheets that nothing of the other goes with are not in it.

    ``grid`` turns steps into mm, ``money`` whole prices into those that were asked; ``kerf`` and
    ``least_offcut`` (length, width) in steps.
    """

    sizes: tuple[Size, ...]
    sheets: tuple[Sheet, ...]
    rules: Rules
    grid: Grid
    money: Grid
    kerf: int
    least_offcut: tuple[int, int] = (0, 0)

    @property
    def area(self) -> int:
        """Of all pieces, with their kerf."""
        return sum(size.area * size.count for size in self.sizes)

    @property
    def pieces(self) -> int:
        """How many pieces are wanted."""
        return sum(size.count for size in self.sizes)

    def counts(self, pattern: Pattern) -> dict[int, int]:
        """How many of each size lie on a sheet."""
        counted: dict[int, int] = {}
        for put in pattern.puts:
            counted[put.size] = counted.get(put.size, 0) + 1
        return counted
