"""A question about boards in whole numbers.

The kerf is taken in: each piece is a kerf longer and wider than it is, and so is what it is cut
from.  Pieces then fit where their sizes add up to no more than there is, and n pieces in a row
need n - 1 cuts.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.cutting.grid import Grid


@dataclass(frozen=True, slots=True)
class Item:
    """Equal pieces: ``length`` and ``width`` with the kerf, ``slants`` of the near and the far end.

    ``of`` are the places of the pieces in the question and how many there are of each, ``worth``
    what one of them counts where not all can be cut.
    """

    length: int
    width: int
    slants: tuple[int, int]
    count: int
    worth: int
    of: tuple[tuple[int, int], ...]

    @property
    def slanted(self) -> bool:
        """Whether an end isn't square."""
        return any(self.slants)


@dataclass(frozen=True, slots=True)
class Spot:
    """A flaw in a blank, without the kerf; from (x, y) to (far, back)."""

    x: int
    y: int
    far: int
    back: int


@dataclass(frozen=True, slots=True)
class Blank:
    """A stretch of a board that is free of flaws across its whole width: where it begins on the
    board, its size with the kerf, and the flaws in it that leave wood beside them."""

    x: int
    y: int
    length: int
    width: int
    spots: tuple[Spot, ...] = ()


@dataclass(frozen=True, slots=True)
class Board:
    """Equal boards: ``supply`` is their place in the stock, ``limit`` how many there are; ``size``
    is with the kerf, once trimmed, as if there were no flaws.

    ``ways`` are the ways to part one into blanks: there are several where a flaw is narrower than
    the cut, which then takes good wood on one side of it or the other.  ``roomy`` are blanks as
    they would be if it didn't: no way holds more.
    """

    supply: int
    price: int
    limit: int | None
    size: tuple[int, int]
    ways: tuple[tuple[Blank, ...], ...]
    roomy: tuple[Blank, ...]


@dataclass(frozen=True, slots=True)
class Run:
    """Pieces in a row on one strip, from its near end: ``items`` by their places in the problem.

    The strip begins at (x, y) of the board; its size is with the kerf.  One without pieces is an
    offcut.
    """

    x: int
    y: int
    length: int
    width: int
    items: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Pattern:
    """How one board is cut; ``counts`` are (item, how many)."""

    board: int
    runs: tuple[Run, ...]
    counts: tuple[tuple[int, int], ...]

    @staticmethod
    def of(board: int, runs: tuple[Run, ...]) -> Pattern:
        """The pattern of some runs."""
        counted: dict[int, int] = {}
        for run in runs:
            for item in run.items:
                counted[item] = counted.get(item, 0) + 1
        return Pattern(board, runs, tuple(sorted(counted.items())))


@dataclass(frozen=True, slots=True)
class BoardProblem:
    """What is to be cut from which boards.

    ``grid`` is that of lengths, ``across`` that of widths, ``money`` that of prices.  ``kerf`` is
    in steps of ``grid``, ``rip`` in those of ``across``; ``joints`` is what a cut along a slant
    saves against one square across, by the piece's width and the slant.
    """

    items: tuple[Item, ...]
    boards: tuple[Board, ...]
    grid: Grid
    across: Grid
    money: Grid
    kerf: int
    rip: int
    joints: tuple[tuple[tuple[int, int], int], ...] = ()

    def saving(self, width: int, one: int, other: int) -> int:
        """By how much two pieces of a width lie nearer each other, head to tail, than two square
        ends would: these two slants face each other."""
        least = min(one, other)
        return dict(self.joints)[width, least] if least else 0

    def total(self) -> int:
        """How many pieces there are."""
        return sum(item.count for item in self.items)
