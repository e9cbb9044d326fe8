"""How much a unit encloses, which decides whether a published test of stability is meant for it."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.geometry import Box
from rodwright.mass import unit_weight
from rodwright.strength.lots import Overhead
from rodwright.strength.results import Group, Input, Result
from rodwright.trade.stability import (
    BEHIND_DOORS,
    BELOW_OBSTRUCTION,
    BUSINESS_GUIDANCE,
    CLOTHING,
    LEAST_HEIGHT,
    LEAST_MASS,
    LEAST_VOLUME,
    SCOPE,
)
from rodwright.unit import (
    CASE,
    Load,
    Part,
    Role,
    Slide,
    Stretch,
    Swing,
    Unit,
)

_DM3 = 1e-6


@dataclass(frozen=True, slots=True)
class Scope:
    """What decides whether a unit is a clothing storage unit within ASTM F2057-23: its height (mm),
    mass (kg) and enclosed volume (dm3), and whether it is free-standing."""

    height: float
    mass: float
    volume: float
    free: bool

    @property
    def within(self) -> bool:
        """Whether the test is meant for it, if clothing is kept in it."""
        return self.free and (
            self.height >= LEAST_HEIGHT.value
            and self.mass >= LEAST_MASS.value
            and self.volume >= LEAST_VOLUME.value
        )

    @property
    def said(self) -> str:
        """The verdict and what it stands on, in words."""
        if not self.free:
            return "built in or hung: outside the scope of ASTM F2057-23"
        if self.volume <= 0:
            return "nothing shuts: a bookcase is outside the scope of ASTM F2057-23"
        if self.within:
            return "within the scope of ASTM F2057-23 if clothing may be kept in it"
        less = [
            what
            for what, has, least in (
                ("height", self.height, LEAST_HEIGHT.value),
                ("mass", self.mass, LEAST_MASS.value),
                ("enclosed volume", self.volume, LEAST_VOLUME.value),
            )
            if has < least
        ]
        return f"outside the scope of ASTM F2057-23 by its {' and '.join(less)}"


def scope_of(unit: Unit) -> Scope:
    """Height, mass and enclosed volume of a unit, and whether it stands free.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    free = unit.opening is None and not unit.hung
    return Scope(unit.size[1], unit_weight(unit), enclosed_volume(unit), free)


def enclosed_volume(unit: Unit) -> float:
    """Volume (dm3) of drawers, and half of what stands still behind doors, as 16 CFR 1261 counts
    it."""
    drawers = math.fsum(_volume(inside) for _, inside in insides(unit))
    return drawers + BEHIND_DOORS.value * math.fsum(behind_doors(unit))


def insides(unit: Unit) -> Iterator[tuple[Part, Box]]:
    """The bottom of each drawer, and the box inside: width and depth between sides and ends, height
    up to 1/8 in below what is over it (the upper edge of its sides, where nothing is)."""
    overhead = Overhead(unit)
    for motion in unit.motions:
        parts = [unit.part(ref) for ref in motion.refs] if isinstance(motion, Slide) else []
        bottom = next((part for part in parts if part.role is Role.DRAWER_BOTTOM), None)
        inside = _inside(parts, bottom, overhead) if bottom else None
        if bottom is not None and inside is not None:
            yield bottom, inside


def _volume(inside: Box) -> float:
    return math.prod(max(each, 0.0) for each in inside.size) * _DM3


def _inside(parts: Sequence[Part], bottom: Part, overhead: Overhead) -> Box | None:
    sides = _boxes(parts, Role.DRAWER_SIDE)
    ends = _boxes(parts, Role.DRAWER_END, Role.DRAWER_FRONT)
    if len(sides) < 2 or len(ends) < 2:
        return None
    middle, floor = bottom.bounds().centre, bottom.bounds().high[2]
    low_x = max(box.high[0] for box in sides if box.centre[0] < middle[0])
    high_x = min(box.low[0] for box in sides if box.centre[0] > middle[0])
    low_y = max(box.high[1] for box in ends if box.centre[1] < middle[1])
    high_y = min(box.low[1] for box in ends if box.centre[1] > middle[1])
    clear = overhead.clear(bottom) - BELOW_OBSTRUCTION.value
    if math.isinf(clear):
        clear = max(box.high[2] for box in sides) - floor
    return Box((low_x, low_y, floor), (high_x, high_y, floor + clear))


def _boxes(parts: Sequence[Part], *roles: Role) -> list[Box]:
    return [part.bounds() for part in parts if part.role in roles]


def behind_doors(unit: Unit) -> Iterator[float]:
    """The volume (dm3) behind each door: its width and height, and the depth of the inside."""
    case = [part.bounds() for part in unit.parts if part.role in CASE]
    if not case:
        return
    rear = max(box.high[1] for box in case)
    backs = [part.bounds().low[1] for part in unit.parts if part.role is Role.BACK]
    for motion in unit.motions:
        if isinstance(motion, Swing):
            box = Box.of_boxes(unit.part(ref).bounds() for ref in motion.refs)
            depth = min([rear, *backs]) - max(box.high[1], 0.0)
            yield box.size[0] * box.size[2] * max(depth, 0.0) * _DM3


def clothing(unit: Unit) -> tuple[Load, ...]:
    """Clothing in every drawer, as ASTM F2057-23 has it tried."""
    loads = []
    for bottom, inside in insides(unit):
        mass = _volume(inside) * CLOTHING.value / 1000
        width = inside.size[0] / 1000
        stretch = Stretch(inside.low[0], inside.high[0], mass / width, mass / width)
        loads.append(Load(bottom.ref, "clothing", (stretch,), assumed=True, source=CLOTHING.source))
    return tuple(loads)


def scope_result(unit: Unit) -> Result:
    """Which published test is meant for a unit, with the volume that it goes by."""
    scope = scope_of(unit)
    return Result(
        Group.STABILITY,
        "the unit",
        (),
        "enclosed volume, which decides what test is meant for it",
        scope.volume,
        None,
        "dm3",
        "V = sum of drawers (w d h, h to 1/8 in below what is over it) + 0.5 w d h behind doors",
        BUSINESS_GUIDANCE,
        (
            Input("h", "height", scope.height, "mm"),
            Input("h0", "least height within the scope", LEAST_HEIGHT.value, "mm", SCOPE),
            Input("m", "mass, empty and without hardware", scope.mass, "kg"),
            Input("m0", "least mass within the scope", LEAST_MASS.value, "kg", SCOPE),
            Input("V0", "least volume within the scope", LEAST_VOLUME.value, "dm3", SCOPE),
        ),
        notes=(scope.said, _EUROPE),
    )


_EUROPE = (
    "in Europe EN 14749:2016+A1:2022 (at home) and EN 16121:2023 (elsewhere), by the tests of EN "
    "16122, are meant for storage furniture, bookcases too; walls and what holds to them are "
    "outside both (SATRA, The testing of storage furniture)"
)
