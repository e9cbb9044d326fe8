"""Nodes, plates, bars and joints of a unit: plain data, for whatever solves them.

Lengths in mm, unit frame; stiffness in N, mm and radians.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import pairwise, product

from rodwright.geometry import Vector
from rodwright.strength.model.cut_out import Left, share_left, weak_places
from rodwright.strength.model.lines import within
from rodwright.strength.model.pieces import Board, Stick
from rodwright.strength.model.sheet import Sheet
from rodwright.strength.model.stiffness import Bar

Place = tuple[int, ...]


@dataclass(slots=True)
class Grid:
    """The nodes of one piece: ``ticks`` are its lines along its ``axes``, ``numbers`` the node at
    each crossing."""

    piece: Board | Stick
    axes: tuple[int, ...]
    ticks: tuple[tuple[float, ...], ...]
    numbers: dict[Place, int] = field(default_factory=dict)

    def nearest(self, at: Vector) -> int:
        """The node nearest to a place."""
        return self.numbers[
            tuple(
                _nearest(ticks, at[axis]) for axis, ticks in zip(self.axes, self.ticks, strict=True)
            )
        ]

    def along(self, axis: int) -> tuple[float, ...]:
        """Its lines along one axis of the unit: one only, where it is square to it."""
        if axis in self.axes:
            return self.ticks[self.axes.index(axis)]
        return (self.middle[axis],)

    @property
    def middle(self) -> Vector:
        """The middle of the piece's box, in its middle plane."""
        at = list(self.piece.box.centre)
        if isinstance(self.piece, Board):
            at[self.piece.normal] = self.piece.middle
        return (at[0], at[1], at[2])

    def places(self) -> Iterator[tuple[Place, Vector]]:
        """Each crossing and where it is."""
        for place in product(*(range(len(ticks)) for ticks in self.ticks)):
            at = list(self.middle)
            for axis, ticks, number in zip(self.axes, self.ticks, place, strict=True):
                at[axis] = ticks[number]
            if isinstance(self.piece, Board):
                at[2] += self.piece.rise * (at[0] - self.piece.box.centre[0])
            yield place, (at[0], at[1], at[2])

    def share(self, place: Place) -> float:
        """The share of the piece that a node stands for: half the way to its neighbours."""
        share = 1.0
        for ticks, number in zip(self.ticks, place, strict=True):
            low, high = ticks[max(number - 1, 0)], ticks[min(number + 1, len(ticks) - 1)]
            share *= (high - low) / 2 / (ticks[-1] - ticks[0])
        return share


@dataclass(frozen=True, slots=True)
class Tie:
    """Two nodes held to each other where their pieces meet, ``at``: ``moves`` N/mm along x, y, z,
    ``turns`` N mm per radian about them; ``joint`` is its joint's place in the unit's list,
    ``pushes`` says that they can come off each other: 1 where the second lies on the first, -1
    where the first does on the second."""

    nodes: tuple[int, int]
    at: Vector
    moves: Vector
    turns: Vector
    joint: int
    pushes: int = 0


@dataclass(frozen=True, slots=True)
class PlateElement:
    """One element of a plate: its four nodes, anticlockwise in its own axes."""

    nodes: tuple[int, int, int, int]
    sheet: Sheet


@dataclass(frozen=True, slots=True)
class BarElement:
    """One element of a bar between two nodes along ``axis``."""

    nodes: tuple[int, int]
    axis: int
    bar: Bar


@dataclass(slots=True)
class Mesh:
    """All of a unit's nodes and what is between them; ``grids`` are its pieces by ref."""

    nodes: list[Vector] = field(default_factory=list)
    plates: list[PlateElement] = field(default_factory=list)
    bars: list[BarElement] = field(default_factory=list)
    ties: list[Tie] = field(default_factory=list)
    grids: dict[str, Grid] = field(default_factory=dict)

    def lay(
        self, piece: Board | Stick, lines: tuple[tuple[float, ...], ...], left: Sequence[Left] = ()
    ) -> Grid:
        """Divides a piece at the lines that cross it; ``left`` is what workings leave of a level
        along x."""
        axes = piece.axes if isinstance(piece, Board) else (piece.axis,)
        low, high = piece.box.low, piece.box.high
        weak = [*lines[0], *weak_places(left)]
        ticks = (within(weak if a == 0 and left else lines[a], low[a], high[a]) for a in axes)
        grid = Grid(piece, axes, tuple(ticks))
        for place, at in grid.places():
            grid.numbers[place] = len(self.nodes)
            self.nodes.append(at)
        for ref in piece.refs:
            self.grids[ref] = grid
        if isinstance(piece, Board):
            self._plates(grid, piece.sheet, left)
        else:
            at_ends = pairwise(grid.numbers.values())
            self.bars += (BarElement(nodes, piece.axis, piece.bar) for nodes in at_ends)
        return grid

    def _plates(self, grid: Grid, whole: Sheet, left: Sequence[Left]) -> None:
        first, second = (range(len(ticks) - 1) for ticks in grid.ticks)
        sheets = [whole.weaker(share_left(left, *ends)) for ends in pairwise(grid.ticks[0])]
        for i, j in product(first, second):
            sheet = sheets[i]
            corners = ((i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1))
            one, two, three, four = (grid.numbers[corner] for corner in corners)
            self.plates.append(PlateElement((one, two, three, four), sheet))


def _nearest(ticks: tuple[float, ...], at: float) -> int:
    right = min(bisect_left(ticks, at), len(ticks) - 1)
    left = max(right - 1, 0)
    return left if at - ticks[left] <= ticks[right] - at else right
