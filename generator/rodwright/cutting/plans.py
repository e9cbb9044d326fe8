"""A plan: what is cut from which sheets and boards, and how good that is known to be.

The frame of a sheet or board: x along its length from its near end, y across its width from its
face edge, in mm, before anything is trimmed off it.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.cutting.pieces import Piece


class CannotCutError(ValueError):
    """No plan can be: ``pieces`` are the names of those that go on no stock, and why.

    ``reason`` is one of ``"too large"``, ``"grain"`` (it would go if it might be turned),
    ``"flaws"`` (what is free of them is too small) and ``"not enough"`` (there is proven to be too
    little stock).
    """

    def __init__(self, reason: str, pieces: tuple[str, ...]) -> None:
        super().__init__(f"{reason}: {', '.join(pieces)}")
        self.reason = reason
        self.pieces = pieces


@dataclass(frozen=True, slots=True)
class Placed:
    """A piece on its sheet or board: ``piece`` is its name, ``x`` and ``y`` its near corner,
    ``length`` along x and ``width`` along y as it lies.

    ``turned`` by a quarter turn on a sheet.  A board's piece with slanted ends lies with its long
    edge at y = 0, or ``flipped``: turned half round in the plane, so that its long edge is at the
    back and its near end at the far side.
    """

    piece: str
    x: float
    y: float
    length: float
    width: float
    turned: bool = False
    flipped: bool = False


@dataclass(frozen=True, slots=True)
class Offcut:
    """A rectangle that is left whole."""

    x: float
    y: float
    length: float
    width: float

    @property
    def area(self) -> float:
        """In mm2; its length where it has no width."""
        return self.length * (self.width or 1.0)


@dataclass(frozen=True, slots=True)
class Layout:
    """How one sheet or board is cut: ``stock`` is the name of its supply.

    ``offcuts`` are what is left in rectangles, largest first, of any size.
    """

    stock: str
    placed: tuple[Placed, ...]
    offcuts: tuple[Offcut, ...] = ()


@dataclass(frozen=True, slots=True)
class Plan:
    """What is cut from what.

    ``cost`` is the price of all that is used; no plan costs less than ``bound``, which is
    proven.  ``proven`` says that nothing costs less, by the rules it was asked to keep;
    ``fewest`` that besides, of all that cost as little, none takes fewer sheets or boards.
    ``left`` are pieces that found no place because there is too little stock (none otherwise).
    ``stopped`` says that time or the maker stopped the search before its end.
    """

    layouts: tuple[Layout, ...]
    cost: float
    bound: float
    proven: bool
    kerf: float
    left: tuple[Piece, ...] = ()
    stopped: bool = False
    fewest: bool = False

    @property
    def gap(self) -> float:
        """By how much of its cost the plan may be above the best, 0 to 1."""
        return 0.0 if self.proven or not self.cost else max(0.0, 1 - self.bound / self.cost)

    @property
    def used(self) -> dict[str, int]:
        """How many of each supply are cut, by its name, in the order they are first used."""
        counted: dict[str, int] = {}
        for layout in self.layouts:
            counted[layout.stock] = counted.get(layout.stock, 0) + 1
        return counted
