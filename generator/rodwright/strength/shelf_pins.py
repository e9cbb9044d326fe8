"""What shelf pins press on: the holes in the uprights, and the shelf; N and mm.

A pin is stiff beside wood.  Loaded ``e`` before the mouth of its hole, which is ``h`` deep, it
turns in it and crushes the wall at the mouth below it and at the bottom above it, alike: it bears
as much as ``l = sqrt((2 e + h)^2 + h^2) - (2 e + h)`` of its length would, pressed evenly (a rigid
dowel in Johansen's theory, as in NDS 2018, table 12.3.1A).  Below it two planes have to shear
before it tears out: ``2 a h`` of wood, ``a`` being what is left to the next hole or the end.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot

from rodwright.strength.bearings import Bearing, Seat
from rodwright.unit import Hole, JointKind, Part, Unit

PIN_REACH = 8.0
"""How far a pin reaches under a shelf, mm (common practice, no source)."""

PIN_USE = "adjustable shelves"
"""What holes for shelf pins are for, as they are drilled."""


@dataclass(frozen=True, slots=True)
class Pins:
    """The pins of one end of a shelf: where, how many bear, ``force`` on the fullest (N), their
    ``diameter``, the ``depth`` of their holes, how far before the upright's face the force acts
    (``arm``), and what is left below a hole to the next, or to the upright's end (``below``)."""

    seat: Seat
    upright: Part
    count: int
    force: float
    diameter: float
    depth: float
    arm: float
    below: float

    @property
    def bears_by(self) -> float:
        """How much of the pin's length would bear as much, pressed evenly, mm."""
        out = 2 * self.arm + self.depth
        return hypot(out, self.depth) - out

    @property
    def in_hole(self) -> float:
        """The pressure in the hole, N/mm2 of the pin's diameter and of what it bears by."""
        return self.force / (self.diameter * self.bears_by)

    @property
    def tearing(self) -> float:
        """The shear stress in the wood below the hole, N/mm2."""
        return self.force / (2 * self.below * self.depth)

    def on_shelf(self, reach: float) -> float:
        """The pressure on the shelf's underside, N/mm2, over so much of the pin's length."""
        return self.force / (self.diameter * reach)


def pins_of(unit: Unit, bearing: Bearing) -> Iterator[Pins]:
    """The pins of each end of a level that rests on some; an evenly loaded shelf bears on those at
    its front and its back alike."""
    for seat in bearing.seats:
        if seat.joint is None or seat.joint.kind is not JointKind.RESTING:
            continue
        upright = unit.part(seat.on)
        hole, below = _hole(upright, bearing, seat)
        count = next((each.count for each in seat.joint.fixings if "pin" in each.name), 2)
        if hole is not None and hole.depth is not None:
            gap = _gap(bearing, upright)
            yield Pins(
                seat,
                upright,
                count,
                seat.reaction / count,
                hole.diameter,
                hole.depth,
                gap + (PIN_REACH - gap) / 2,
                below,
            )


def _gap(bearing: Bearing, upright: Part) -> float:
    """The play between a shelf's end and the upright, mm."""
    box, its = bearing.level.box, upright.bounds()
    return max(its.low[0] - box.high[0], box.low[0] - its.high[0], 0.0)


def _hole(upright: Part, bearing: Bearing, seat: Seat) -> tuple[Hole | None, float]:
    """The hole that a shelf's pins stand in, the one nearest below its underside, and how much
    wood is left below it."""
    low = bearing.level.box.low[2]
    side = seat.at < upright.bounds().centre[0]
    holes = [
        (upright.placement.to_unit((*each.position, 0.0))[2], each)
        for each in upright.workings
        if isinstance(each, Hole) and each.surface.axis == 2
        if each.use == PIN_USE and _looks_left(upright, each) is side
    ]
    under = [(at, hole) for at, hole in holes if at < low + hole.diameter]
    if not under:
        return None, 0.0
    at, hole = max(under, key=lambda each: each[0])
    others = [z for z, _ in holes if z < at - hole.diameter / 2]
    foot = upright.bounds().low[2]
    return hole, at - hole.diameter / 2 - max([z + hole.diameter / 2 for z in others] or [foot])


def _looks_left(upright: Part, hole: Hole) -> bool:
    """Whether a hole is bored from the upright's left face."""
    out = upright.placement.thickness[0] > 0
    return out is not hole.surface.at_high
