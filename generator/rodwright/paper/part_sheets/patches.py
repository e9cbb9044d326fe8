"""A place on a face that is only marked; mm."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry import Box, Vector
from rodwright.unit import Surface


@dataclass(frozen=True, slots=True)
class Patch:
    """A rectangle of a face, part frame: nothing is taken there."""

    surface: Surface
    box: Box

    def bounds(self, size: Vector) -> Box:
        """The rectangle, so much of it as lies on a piece of this size."""
        return self.box.intersection(Box.of_size(size))

    @classmethod
    def of(cls, surface: Surface, box: Box) -> Patch:
        """One whose places are rounded, so that equal pieces have equal ones."""
        low, high = (tuple(round(each, 6) + 0.0 for each in end) for end in (box.low, box.high))
        return cls(surface, Box((low[0], low[1], low[2]), (high[0], high[1], high[2])))
