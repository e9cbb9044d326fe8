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
        return _SURFACES[self][0]

    @property
    def at_high(self) -> bool:
        """True where the surface lies at the high end of its axis."""
        return _SURFACES[self][1]


_SURFACES: dict[Surface, tuple[int, bool]] = {
    Surface.FACE: (2, True),
    Surface.REVERSE: (2, False),
    Surface.FACE_EDGE: (1, False),
    Surface.BACK_EDGE: (1, True),
    Surface.NEAR_END: (0, False),
    Surface.FAR_END: (0, True),
}


class Grain(StrEnum):
    """How the visible grain runs on a part."""

    LENGTHWISE = "lengthwise"
    CROSSWISE = "crosswise"
    NONE = "none"
