"""Places where levels lie, and what stands on them; mm, unit frame."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.trade.sources import Figure
from rodwright.unit import Joint, JointKind

PULLS = (
    JointKind.SCREWED,
    JointKind.DOWEL,
    JointKind.BISCUIT,
    JointKind.LOOSE_TENON,
    JointKind.POCKET_SCREW,
    JointKind.KNOCK_DOWN,
    JointKind.PINNED,
)
"""Joints that hold what hangs by them.  A housing, a rebate or a tongue may be glued, but nothing
says so: they count as letting go."""


@dataclass(frozen=True, slots=True)
class Seat:
    """One place where a level lies.

    ``at`` is its x, mm: of an end the face of what carries it, between them its middle.  ``on`` is
    the ref of what carries it there, empty for adjustable feet.  ``joint`` is how, None where it
    just lies on it.  ``how`` says whether the level's end lies there (``end``), or it runs on over
    what stands below it (``under``).  ``lifts`` where the level can lift off.
    ``stiffness`` is that of an end's joint against turning, N mm per rad.  ``reaction`` is the
    force on it in N (downwards), ``turning`` the moment in N mm with which the level turns it
    (positive clockwise seen from the front).
    """

    at: float
    on: str
    joint: Joint | None
    how: Literal["end", "under"]
    lifts: bool = False
    stiffness: Figure | None = None
    reaction: float = 0.0
    turning: float = 0.0


@dataclass(frozen=True, slots=True)
class Line:
    """An edge that is held along its length: ``at`` is the y of the line, mm, ``on`` what holds it,
    ``joints`` by which, ``reaction`` what it bears in all, N (downwards)."""

    edge: Literal["front", "back"]
    at: float
    on: tuple[str, ...]
    joints: tuple[Joint, ...] = ()
    reaction: float = 0.0


@dataclass(frozen=True, slots=True)
class Standing:
    """An upright that stands on a level (``ref``): ``at`` is its middle, x; ``force`` what it
    brings, N."""

    at: float
    ref: str
    joint: Joint
    force: float = 0.0


@dataclass(frozen=True, slots=True)
class Lying:
    """How a level lies: its seats from left to right, the edges that are held, what stands on it,
    and whether the floor carries it all over."""

    seats: tuple[Seat, ...]
    lines: tuple[Line, ...]
    standing: tuple[Standing, ...]
    grounded: bool
