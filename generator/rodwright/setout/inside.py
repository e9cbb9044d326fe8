"""The inside of a unit as its pieces see each other: uprights, levels, the spaces between them, and
the openings that those have in the front.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Edge = Literal["left", "right", "low", "high"]


@dataclass(frozen=True, slots=True)
class Upright:
    """A side or divider as its neighbours see it: its ref and its two faces' x, in mm."""

    ref: str
    left: float
    right: float


@dataclass(frozen=True, slots=True)
class Level:
    """A top, bottom or row shelf as its neighbours see it: its ref and its two faces' z.

    ``over`` says that it covers the ends of the sides, ``panel`` that it is no mere rail.
    """

    ref: str
    low: float
    high: float
    over: bool = False
    panel: bool = True


@dataclass(frozen=True, slots=True)
class Carcass:
    """The box: sides, and top and bottom where there are any."""

    left: Upright
    right: Upright
    bottom: Level | None
    top: Level | None


@dataclass(frozen=True, slots=True)
class Front:
    """The opening of a space, seen from the front: x and z in mm, unit frame.

    It lies between the panels of the carcass, or between members of the face frame where
    there are any.  ``plane`` is the y of the front of what surrounds it.  ``cover_left``
    and its like are how far an overlay front may reach over what bounds it there: all of
    an outer side or stile, half of what is shared with a neighbour, 0 where there is
    nothing.  ``bare`` are the edges of a framed unit at which no frame member stands,
    though there is something behind.
    """

    left: float
    right: float
    low: float
    high: float
    plane: float
    cover_left: float
    cover_right: float
    cover_low: float
    cover_high: float
    bare: frozenset[Edge] = frozenset()

    @property
    def width(self) -> float:
        """Clear width."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Clear height."""
        return self.high - self.low


@dataclass(frozen=True, slots=True)
class Space:
    """A clear space: its bounds in mm (x and z, unit frame) and what stands around it.

    ``setback`` is the y that its contents stay behind; ``closed`` says that an inset door
    stands before them, ``covered`` that an overlay door lies over their front; ``plates`` is
    the y of the holes for the plates of such a door's concealed hinges.
    """

    left: Upright
    right: Upright
    low: float
    high: float
    floor: Level | None
    ceiling: Level | None
    front: Front
    setback: float = 0.0
    closed: bool = False
    covered: bool = False
    plates: float | None = None

    @property
    def width(self) -> float:
        """Clear width."""
        return self.right.left - self.left.right

    @property
    def height(self) -> float:
        """Clear height."""
        return self.high - self.low


@dataclass(frozen=True, slots=True)
class Member:
    """A stile or rail of the face frame: its outline (x and z, unit frame, mm), and at which edge
    of the frame it is; at none where it is a mid member."""

    kind: Literal["stile", "rail"]
    left: float
    right: float
    low: float
    high: float
    at: Edge | None = None

    @property
    def upright(self) -> bool:
        """Whether it stands up."""
        return self.kind == "stile"
