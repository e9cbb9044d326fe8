"""Workings with flat walls: rebates, grooves, housings, notches and mortises."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.unit.surfaces import Surface


@dataclass(frozen=True, slots=True)
class Rebate:
    """A step along the arris between ``surface`` and ``edge``.

    ``width`` is measured over ``surface`` from ``edge``, ``depth`` into the blank from
    ``surface``; ``start`` and ``stop`` along the arris, from the low end of its axis
    (``stop`` of None: to the far end).
    """

    kind: Literal["rebate"] = field(default="rebate", init=False, repr=False, compare=False)
    surface: Surface
    edge: Surface
    width: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    def removal(self, size: Vector) -> Box:
        """The box cut from a blank of this size, part frame."""
        run = 3 - self.surface.axis - self.edge.axis
        low, high = [0.0, 0.0, 0.0], list(size)
        for surface, amount in ((self.surface, self.depth), (self.edge, self.width)):
            if surface.at_high:
                low[surface.axis] = size[surface.axis] - amount
            else:
                high[surface.axis] = amount
        low[run] = self.start
        high[run] = size[run] if self.stop is None else self.stop
        return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


def _channel(
    size: Vector,
    surface: Surface,
    run: int,
    position: float,
    width: float,
    depth: float,
    start: float,
    stop: float | None,
) -> Box:
    across = 3 - surface.axis - run
    low, high = [0.0, 0.0, 0.0], list(size)
    low[across], high[across] = position, position + width
    if surface.at_high:
        low[surface.axis] = size[surface.axis] - depth
    else:
        high[surface.axis] = depth
    low[run] = start
    high[run] = size[run] if stop is None else stop
    return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


@dataclass(frozen=True, slots=True)
class Groove:
    """A channel along the length (x) in a face or an edge.

    ``position`` is its near side, along the other axis of ``surface`` (y on a face, z on
    an edge); ``start`` and ``stop`` are along x (``stop`` of None: right through).
    """

    kind: Literal["groove"] = field(default="groove", init=False, repr=False, compare=False)
    surface: Surface
    position: float
    width: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    def removal(self, size: Vector) -> Box:
        """The box cut from a blank of this size, part frame."""
        return _channel(
            size, self.surface, 0, self.position, self.width, self.depth, self.start, self.stop
        )


@dataclass(frozen=True, slots=True)
class Housing:
    """A channel across the width (y) in the face or the reverse (US: dado).

    ``position`` is its near side along x; ``start`` and ``stop`` are along y.  Through
    when it runs from edge to edge, stopped otherwise.
    """

    kind: Literal["housing"] = field(default="housing", init=False, repr=False, compare=False)
    surface: Surface
    position: float
    width: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    def removal(self, size: Vector) -> Box:
        """The box cut from a blank of this size, part frame."""
        return _channel(
            size, self.surface, 1, self.position, self.width, self.depth, self.start, self.stop
        )


@dataclass(frozen=True, slots=True)
class Notch:
    """A rectangle cut right through the thickness: its low corner (x, y) and its extent."""

    kind: Literal["notch"] = field(default="notch", init=False, repr=False, compare=False)
    x: float
    y: float
    length: float
    width: float
    use: str = field(default="", compare=False)

    def removal(self, size: Vector) -> Box:
        """The box cut from a blank of this size, part frame."""
        return Box((self.x, self.y, 0.0), (self.x + self.length, self.y + self.width, size[2]))


@dataclass(frozen=True, slots=True)
class Mortise:
    """A pocket square to ``surface``.

    ``position`` is its low corner and ``extent`` its size along the two axes of that
    surface, in the order x, y, z; ``depth`` goes into the blank.  With ``round_ends`` the
    two ends of its longer extent are half circles, as a cutter leaves them.
    """

    kind: Literal["mortise"] = field(default="mortise", init=False, repr=False, compare=False)
    surface: Surface
    position: tuple[float, float]
    extent: tuple[float, float]
    depth: float
    round_ends: bool = False
    use: str = field(default="", compare=False)

    @property
    def long_axis(self) -> int:
        """The part axis along its longer extent."""
        first, second = (each for each in range(3) if each != self.surface.axis)
        return first if self.extent[0] >= self.extent[1] else second

    def removal(self, size: Vector) -> Box:
        """The box round the pocket, part frame: all of it is cut unless the ends are round."""
        axis = self.surface.axis
        first, second = (each for each in range(3) if each != axis)
        low, high = [0.0, 0.0, 0.0], list(size)
        for i, at, extent in zip((first, second), self.position, self.extent, strict=True):
            low[i], high[i] = at, at + extent
        if self.surface.at_high:
            low[axis] = size[axis] - self.depth
        else:
            high[axis] = self.depth
        return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))
