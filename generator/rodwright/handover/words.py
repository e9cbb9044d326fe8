"""What the texts of workings share: names of surfaces as the pieces lie, and lengths."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.geometry import TOUCH, Vector
from rodwright.lengths import LengthUnit, format_length, parse_length, ware_size
from rodwright.unit import Surface
from rodwright.unit.orientation import Orientation
from rodwright.unit.surfaces import HIGH, LOW


@dataclass(frozen=True, slots=True)
class Words:
    """Words for workings of pieces of this size, in their own frame, lengths in ``unit``."""

    orientation: Orientation
    size: Vector
    unit: LengthUnit

    def say(self, length: float) -> str:
        """A length (mm) as it is told."""
        return format_length(length, self.unit)

    def ware(self, size: float) -> str:
        """A size (mm) of what is sold: in mm first where no inch drill has it."""
        return ware_size(size, self.unit)

    def told(self, length: float) -> float:
        """A length in mm as a reader takes it from what is told."""
        return parse_length(self.say(length), self.unit)

    def name(self, surface: Surface) -> str:
        """What a surface is called."""
        return self.orientation.name(surface)

    def low(self, axis: int) -> str:
        """What the surface is called that figures along an axis run from."""
        return self.name(LOW[axis])

    def on(self, surface: Surface) -> str:
        """On a face, or in an edge or an end."""
        return f"{'on' if surface.axis == 2 else 'in'} the {self.name(surface)}"

    def deep(self, surface: Surface, depth: float) -> str:
        """How deep something goes in from a surface, or that it comes out opposite."""
        through = depth >= self.size[surface.axis] - TOUCH
        return "right through" if through else f"{self.say(depth)} deep"

    def places(self, at: Sequence[float]) -> str:
        """Several places, one after the other."""
        return ", ".join(map(self.say, at))

    def stopped(self, start: float, stop: float | None, axis: int) -> str:
        """Nothing for a working that runs right through, else where it starts and stops."""
        length, say = self.size[axis], self.say
        low, high = self.low(axis), self.name(HIGH[axis])
        end = length if stop is None else stop
        if start <= TOUCH and end >= length - TOUCH:
            return ""
        if start <= TOUCH:
            return f", stopped {say(length - end)} short of the {high}"
        if end >= length - TOUCH:
            return f", stopped {say(start)} short of the {low}"
        return f", stopped at both ends, from {say(start)} to {say(end)} from the {low}"


def degrees(angle: float) -> str:
    """An angle to the tenth of a degree."""
    return f"{round(angle, 1):g}°"
