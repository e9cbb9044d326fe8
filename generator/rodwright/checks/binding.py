"""Do doors of solid wood keep their gaps when they swell?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import length_in, named
from rodwright.movement import TABLE, stock_swelling
from rodwright.nearby import Nearby
from rodwright.parts import Box, Part, Role, Swing, Unit

NEAR = 100.0
"""No slab swells by more than this, mm."""
_ROUNDING = 1e-6


def binding(unit: Unit) -> Iterator[Finding]:
    """Slabs of solid wood that swell by more than the gap at their closing edge.

    A slab may be made at the driest, and its hinges hold one edge, so that all of its
    swelling goes to the other.  Two slabs that close against each other share the gap.
    Frames move by their stiles alone, and are left out.
    """
    if not unit.motions:
        return
    parts = Nearby((part.bounds(), part) for part in unit.parts)
    for swing in unit.motions:
        if not isinstance(swing, Swing):
            continue
        door = unit.part(swing.refs[0])
        if door.role is not Role.DOOR or door.blank.stock.kind != "board":
            continue
        beside = _beside(door, swing, parts)
        if beside is None:
            continue
        gap, neighbour = beside
        grows = stock_swelling(door.blank.stock, door.blank.width, unit.moisture)
        if neighbour.role is Role.DOOR:
            grows += stock_swelling(neighbour.blank.stock, neighbour.blank.width, unit.moisture)
        if grows > gap + _ROUNDING:
            dry, wet = unit.moisture
            yield Finding(
                Severity.WARNING,
                "a door binds",
                f"from {dry:g} to {wet:g} % moisture {named(door)} and {named(neighbour)} close "
                f"their gap of {length_in(unit, gap)} by {length_in(unit, grows)}",
                "Make the door of sheet material or framed, or its gap wider.",
                (door.ref,),
                grows,
                gap,
                source=TABLE,
            )


def _beside(door: Part, swing: Swing, parts: Nearby[Part]) -> tuple[float, Part] | None:
    """The gap at a door's closing edge (mm), and what lies beyond it, if it is near."""
    box = door.bounds()
    (x, y, z), (u, v, w) = box.low, box.high
    rightwards = swing.hinge[0] < box.centre[0]
    gaps = []
    for other in parts.within(Box((x - NEAR, y, z), (u + NEAR, v, w))):
        there = other.bounds()
        gap = there.low[0] - box.high[0] if rightwards else box.low[0] - there.high[0]
        if gap >= -_ROUNDING and other.ref not in swing.refs and _level(box, there):
            gaps.append((gap, other))
    return min(gaps, key=lambda each: each[0], default=None)


def _level(first: Box, second: Box) -> bool:
    """Whether two boxes share a stretch in depth and in height."""
    return all(
        min(first.high[i], second.high[i]) - max(first.low[i], second.low[i]) > _ROUNDING
        for i in (1, 2)
    )
