"""Workings with flat walls that run along something: rebates, grooves, housings; and notches."""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from typing import ClassVar, Literal, Self

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.unit.surfaces import Surface
from rodwright.unit.workings.arris import AlongArris
from rodwright.unit.workings.frames import Refit, Turn, under
from rodwright.unit.workings.removal import Figures, Removal


@dataclass(frozen=True, slots=True)
class Rebate(AlongArris):
    """A step along the arris between ``surface`` and ``edge``.

    ``width`` is measured over ``surface`` from ``edge``, ``depth`` into the blank from
    ``surface``; ``start`` and ``stop`` along the arris, from the low end of its axis
    (``stop`` of None: to the far end).
    """

    word: ClassVar[str] = "rebate"

    kind: Literal["rebate"] = field(default="rebate", init=False, repr=False, compare=False)
    surface: Surface
    edge: Surface
    width: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    @property
    def fills_bounds(self) -> bool:
        """It does."""
        return True

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        along = Box.of_size(size).spanning(self.run, self.start, self.stop)
        return under(under(along, self.edge, self.width), self.surface, self.depth)

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank."""
        span = to.span(self.run, self.start, self.stop)
        width, depth = to.depth(self.edge, self.width), to.depth(self.surface, self.depth)
        if span is None or width <= TOUCH or depth <= TOUCH:
            return None
        return replace(self, width=width, depth=depth, start=span[0], stop=span[1])

    def figures(self, size: Vector) -> Figures:
        """Width and depth."""
        return Figures(across=(self.width,), depth=self.depth)

    def worked_from(self, size: Vector) -> Surface | None:
        """The face that it is open to."""
        return next((each for each in (self.surface, self.edge) if each.axis == 2), None)


@dataclass(frozen=True, slots=True)
class _Channel(Removal):
    """A channel in a surface along the part axis ``run``."""

    run: ClassVar[int]

    kind: str = field(default="", init=False, repr=False, compare=False)
    surface: Surface
    position: float
    width: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    @property
    def across(self) -> int:
        """The part axis across it, along its surface."""
        return 3 - self.surface.axis - self.run

    @property
    def fills_bounds(self) -> bool:
        """It does."""
        return True

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        along = Box.of_size(size).spanning(self.run, self.start, self.stop)
        place = along.spanning(self.across, self.position, self.position + self.width)
        return under(place, self.surface, self.depth)

    def turned(self, turn: Turn, size: Vector) -> Self:
        """The same in the frame of the turned part."""
        start, stop = turn.span(size, self.run, self.start, self.stop)
        position = turn.place(size, self.across, self.position, self.width)
        surface = turn.surface(self.surface)
        return replace(self, surface=surface, position=position, start=start, stop=stop)

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank."""
        span = to.span(self.run, self.start, self.stop)
        place = to.stretch(self.across, self.position, self.width)
        depth = to.depth(self.surface, self.depth)
        if place is None or span is None or depth <= TOUCH:
            return None
        position, width = place
        start, stop = span
        return replace(self, position=position, width=width, depth=depth, start=start, stop=stop)

    def figures(self, size: Vector) -> Figures:
        """Width and depth."""
        return Figures(across=(self.width,), depth=self.depth)

    def worked_from(self, size: Vector) -> Surface | None:
        """The face that it is ploughed in, unless it goes right through."""
        blind = self.surface.axis == 2 and self.depth < size[2]
        return self.surface if blind else None


@dataclass(frozen=True, slots=True)
class Groove(_Channel):
    """A channel along the length (x) in a face or an edge.

    ``position`` is its near side, along the other axis of ``surface`` (y on a face, z on
    an edge); ``start`` and ``stop`` are along x (``stop`` of None: right through).
    """

    word: ClassVar[str] = "groove"
    run: ClassVar[int] = 0

    kind: Literal["groove"] = field(default="groove", init=False, repr=False, compare=False)


@dataclass(frozen=True, slots=True)
class Housing(_Channel):
    """A channel across the width (y) in the face or the reverse (US: dado).

    ``position`` is its near side along x; ``start`` and ``stop`` are along y.  Through
    when it runs from edge to edge, stopped otherwise.
    """

    word: ClassVar[str] = "housing"
    run: ClassVar[int] = 1

    kind: Literal["housing"] = field(default="housing", init=False, repr=False, compare=False)


@dataclass(frozen=True, slots=True)
class Notch(Removal):
    """A rectangle cut right through the thickness: its low corner (x, y) and its extent."""

    word: ClassVar[str] = "notch"

    kind: Literal["notch"] = field(default="notch", init=False, repr=False, compare=False)
    x: float
    y: float
    length: float
    width: float
    use: str = field(default="", compare=False)

    @property
    def fills_bounds(self) -> bool:
        """It does."""
        return True

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        return Box((self.x, self.y, 0.0), (self.x + self.length, self.y + self.width, size[2]))

    def turned(self, turn: Turn, size: Vector) -> Self:
        """The same in the frame of the turned part."""
        x = turn.place(size, 0, self.x, self.length)
        return replace(self, x=x, y=turn.place(size, 1, self.y, self.width))

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank."""
        along, across = to.stretch(0, self.x, self.length), to.stretch(1, self.y, self.width)
        if along is None or across is None:
            return None
        return replace(self, x=along[0], y=across[0], length=along[1], width=across[1])

    def figures(self, size: Vector) -> Figures:
        """Length and width."""
        return Figures(across=(self.length, self.width), depth=math.inf)
