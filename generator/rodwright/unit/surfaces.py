"""The six surfaces of a blank, and how its grain runs."""

from __future__ import annotations

from enum import StrEnum


class Surface(StrEnum):
    """One of a blank's six surfaces, in the part frame."""

    FACE = "face"  # z = thickness
    REVERSE = "reverse"  # z = 0
    FACE_EDGE = "face edge"  # y = 0
    BACK_EDGE = "back edge"  # y = width
    NEAR_END = "near end"  # x = 0
    FAR_END = "far end"  # x = length

    @property
    def axis(self) -> int:
        """Index of the axis normal to this surface: 0 for x, 1 for y, 2 for z."""
        return (LOW if self in LOW else HIGH).index(self)

    @property
    def at_high(self) -> bool:
        """True where the surface lies at the high end of its axis."""
        return self in HIGH

    @property
    def across(self) -> tuple[int, int]:
        """Indices of the two axes that run along this surface."""
        return ((1, 2), (0, 2), (0, 1))[self.axis]

    @property
    def opposite(self) -> Surface:
        """The surface across the same axis."""
        return Surface.at(self.axis, not self.at_high)

    @staticmethod
    def at(axis: int, high: bool) -> Surface:
        """The surface at the low or the high end of an axis."""
        return (HIGH if high else LOW)[axis]


LOW = (Surface.NEAR_END, Surface.FACE_EDGE, Surface.REVERSE)
"""The surfaces from which x, y and z are measured."""
HIGH = (Surface.FAR_END, Surface.BACK_EDGE, Surface.FACE)
"""The surfaces opposite."""


class Grain(StrEnum):
    """How the visible grain runs on a part."""

    LENGTHWISE = "lengthwise"
    CROSSWISE = "crosswise"
    NONE = "none"
