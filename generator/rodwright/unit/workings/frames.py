"""Figures of a blank's frame, once the blank is turned over or is cut to another size; mm."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.unit.surfaces import Surface

_DIGITS = 9
"""Decimals of a millimetre that figures keep: sums and differences of lengths that should be equal
differ in later ones."""


def plain(length: float) -> float:
    """A length without what rounding has left in its last decimals; no negative nought."""
    return round(length, _DIGITS) + 0.0


def under(box: Box, surface: Surface, depth: float, start: float = 0.0) -> Box:
    """So much of a box as lies from ``start`` to ``depth`` below its side towards ``surface``."""
    axis = surface.axis
    if surface.at_high:
        return box.spanning(axis, box.high[axis] - depth, box.high[axis] - start)
    return box.spanning(axis, box.low[axis] + start, box.low[axis] + depth)


@dataclass(frozen=True, slots=True)
class Turn:
    """A half turn of a part about one of its axes, or none: which axes it turns end for end.

    Two of them or none; any other number would mirror the part.
    """

    length: bool = False
    width: bool = False
    thickness: bool = False

    def __post_init__(self) -> None:
        if sum(self.axes) % 2:
            raise ValueError("a turn that leaves a part's hand alone turns two axes or none")

    @property
    def axes(self) -> tuple[bool, bool, bool]:
        """Whether x, y and z run the other way afterwards."""
        return (self.length, self.width, self.thickness)

    def surface(self, surface: Surface) -> Surface:
        """What a surface is afterwards."""
        return surface.opposite if self.axes[surface.axis] else surface

    def place(self, size: Vector, axis: int, at: float, extent: float = 0.0) -> float:
        """Where what begins at a place along an axis of a blank begins afterwards."""
        return plain(size[axis] - at - extent) if self.axes[axis] else at

    def span(
        self, size: Vector, axis: int, start: float, stop: float | None
    ) -> tuple[float, float | None]:
        """The same of what has a start and a stop, None for the far end."""
        if not self.axes[axis]:
            return start, stop
        return (
            0.0 if stop is None else plain(size[axis] - stop),
            None if start <= 0 else plain(size[axis] - start),
        )


@dataclass(frozen=True, slots=True)
class Refit:
    """The same piece out of another blank.

    ``size`` is that of the blank that it had; ``blank`` is the other one, in the frame of the
    first.  It may be larger (as cut, before it is trimmed) or smaller (cut back, or still to be
    edged).
    """

    size: Vector
    blank: Box

    def out(self, surface: Surface) -> float:
        """How far the other blank reaches past a surface of the first; below zero where it is
        cut back."""
        axis = surface.axis
        return self.blank.high[axis] - self.size[axis] if surface.at_high else -self.blank.low[axis]

    def depth(self, surface: Surface, depth: float) -> float:
        """A length into the piece from one of its surfaces; none where it isn't above zero."""
        return plain(min(depth + self.out(surface), self.blank.size[surface.axis]))

    def place(self, axis: int, at: float) -> float:
        """A place along an axis."""
        return plain(at - self.blank.low[axis])

    def stretch(self, axis: int, at: float, extent: float) -> tuple[float, float] | None:
        """Where something begins along an axis and how far it reaches; None where nothing is left.

        What ran out at an end or edge of the blank still does.
        """
        size, before = self.blank.size[axis], -self.blank.low[axis]
        low = 0.0 if at <= TOUCH else max(0.0, at + before)
        end = at + extent
        out = end >= self.size[axis] - TOUCH
        high = size if out else min(size, end + before)
        return (plain(low), plain(high - low)) if high - low > TOUCH else None

    def span(
        self, axis: int, start: float, stop: float | None
    ) -> tuple[float, float | None] | None:
        """The same of what has a start and a stop, None for the far end."""
        end = self.size[axis] if stop is None else stop
        reach = self.stretch(axis, start, end - start)
        if reach is None:
            return None
        high = plain(sum(reach))
        return reach[0], None if high >= self.blank.size[axis] - TOUCH else high
