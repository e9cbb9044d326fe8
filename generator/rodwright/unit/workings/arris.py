"""What is common to workings that run along the arris between two surfaces."""

from __future__ import annotations

from dataclasses import Field, replace
from typing import Any, ClassVar, Self

from rodwright.geometry import Vector
from rodwright.unit.surfaces import Surface
from rodwright.unit.workings.frames import Turn
from rodwright.unit.workings.removal import Removal


class AlongArris(Removal):
    """A working along the arris between ``surface`` and ``edge``, from ``start`` to ``stop`` (mm
    from the low end of the arris; None: to its far end).

    The fields are those of each kind, a dataclass, which has them in an order of its own.
    """

    __slots__ = ()

    __dataclass_fields__: ClassVar[dict[str, Field[Any]]]
    surface: Surface
    edge: Surface
    start: float
    stop: float | None

    @property
    def run(self) -> int:
        """The part axis along its arris."""
        return 3 - self.surface.axis - self.edge.axis

    def turned(self, turn: Turn, size: Vector) -> Self:
        """The same in the frame of the turned part."""
        start, stop = turn.span(size, self.run, self.start, self.stop)
        surface, edge = turn.surface(self.surface), turn.surface(self.edge)
        return replace(self, surface=surface, edge=edge, start=start, stop=stop)
