"""The lines that shelves, tops and bottoms take under their loads, for drawing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.amounts import GRAVITY
from rodwright.geometry import Box
from rodwright.strength.level_loads import loads_on
from rodwright.strength.level_states import LevelState, states, unknown_of
from rodwright.strength.sagging import sag_of
from rodwright.unit import Load, Unit

PLACES = 48
"""Places along a level between which its line is drawn straight."""


@dataclass(frozen=True, slots=True)
class SagLine:
    """How a level lies after the unit's years of load (at once, where the unit asks for none).

    ``line`` is x and by how much it has gone down there (mm, unit frame), over the whole length of
    its ``box``; ``sag`` and ``limit`` (mm) are of the span that comes nearest to its limit, at the
    x ``at`` (the middle, where the level spans from front to back).  Both are None where they can't
    be worked out; it is then drawn straight.  ``loads`` are what was said or assumed to lie on it,
    ``mass`` is their sum in kg.
    """

    ref: str
    refs: tuple[str, ...]
    box: Box
    line: tuple[tuple[float, float], ...]
    sag: float | None
    limit: float | None
    at: float
    loads: tuple[Load, ...]
    mass: float

    @property
    def holds(self) -> bool:
        """Whether it is within its limit, as far as is known."""
        return self.sag is None or self.limit is None or self.sag <= self.limit


def sag_lines(unit: Unit) -> tuple[SagLine, ...]:
    """The line of every level that the floor doesn't carry, in the order of the parts.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    return tuple(_line(unit, state) for state in states(unit).values() if not state.now.grounded)


def _line(unit: Unit, state: LevelState) -> SagLine:
    level, bearing = state.level, state.later
    sagged = None if unknown_of(unit, state.now) else sag_of(unit, state, unit.loading.years)
    box, loads = level.box, loads_on(unit, level)
    middle = box.centre[0]
    return SagLine(
        level.ref,
        level.refs,
        box,
        tuple(_places(state, known=sagged is not None)),
        sagged.sag if sagged else None,
        sagged.limit if sagged else None,
        middle if sagged is None or sagged.front_to_back else sagged.place,
        loads,
        bearing.contents / GRAVITY,
    )


def _places(state: LevelState, *, known: bool) -> Iterator[tuple[float, float]]:
    """The line along x: one that spans from front to back is held at its front, and straight."""
    box, bent = state.level.box, state.later.bent
    low, length = box.low[0], box.size[0]
    bends = known and bent is not None and not state.later.across
    for number in range(PLACES + 1):
        along = length * number / PLACES
        yield low + along, bent.deflection(along) if bends and bent is not None else 0.0
