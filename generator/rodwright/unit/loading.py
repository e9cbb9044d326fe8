"""What the unit is to carry, for how long, and what it stands on and hangs on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.trade.sources import Source


@dataclass(frozen=True, slots=True)
class Stretch:
    """A load spread from ``start`` to ``stop`` (mm, x in the unit frame), changing evenly from
    ``at_start`` to ``at_stop`` kg per metre."""

    start: float
    stop: float
    at_start: float
    at_stop: float

    @property
    def mass(self) -> float:
        """Its mass in kg."""
        return (self.at_start + self.at_stop) / 2 * (self.stop - self.start) / 1000


@dataclass(frozen=True, slots=True)
class Lump:
    """A load of ``mass`` kg on one spot: ``at`` mm, x in the unit frame.

    ``up`` (mm, z in the unit frame) says at what height it hangs on an upright; None where it
    stands on its part.
    """

    at: float
    mass: float
    up: float | None = None


@dataclass(frozen=True, slots=True)
class Load:
    """What one part (``ref``) carries, evenly over its depth.

    A part that carries different things, as a bottom under several columns may, has a load for
    each.  ``said`` is what it is, in the maker's words (``books``, ``25 kg/m``); ``assumed`` where
    nothing was said.  ``source`` is where its weight comes from: None if the maker gave it.
    """

    ref: str
    said: str
    stretches: tuple[Stretch, ...] = ()
    lumps: tuple[Lump, ...] = ()
    assumed: bool = False
    source: Source | None = None

    @property
    def mass(self) -> float:
        """Its mass in kg."""
        return sum(each.mass for each in self.stretches) + sum(each.mass for each in self.lumps)


@dataclass(frozen=True, slots=True)
class Loading:
    """All that a unit is to carry, and what it is held against.

    A shelf may sag by its span over ``limit`` after ``years`` (0: at once) of load in a room of
    ``service_class`` (EN 1995-1-1, 2.3.1.3: 1 is a heated room, 2 under cover, 3 outside).
    ``wall`` is what the unit is fixed to (None: not said), ``floor`` what it stands on, which falls
    away to the front by ``lean`` degrees.
    """

    loads: tuple[Load, ...] = ()
    limit: float = 200.0
    years: float = 10.0
    service_class: Literal[1, 2, 3] = 1
    wall: Literal["masonry", "studs", "plasterboard"] | None = None
    floor: Literal["hard", "carpet"] = "hard"
    lean: float = 0.0

    def on(self, ref: str) -> tuple[Load, ...]:
        """All that one part carries."""
        return tuple(load for load in self.loads if load.ref == ref)
