"""The slope that a unit is cut to, found from its parts; mm and degrees, unit frame."""

from __future__ import annotations

import math
from dataclasses import dataclass

from rodwright.geometry.boxes import Box
from rodwright.geometry.halfspaces import Plane, beyond, box_planes
from rodwright.geometry.vectors import minus
from rodwright.unit import STANDS_OUT, Part, Unit
from rodwright.unit.corners import part_corners

_UNDER = 0.5
"""Nothing of a unit stands out of its slope by more than this, mm."""
_LEAST_RUN = 50.0
"""A slope runs farther than this (mm): shorter ones are bevelled edges."""


@dataclass(frozen=True, slots=True)
class Slope:
    """A plane that the whole unit lies under, as it is seen in the view that shows its pitch.

    ``sideways`` is seen from the front, else from the left.  ``low`` and ``high`` are its ends
    (along x, or along y, and up): at the low side of the unit, and where the level top begins.
    """

    sideways: bool
    low: tuple[float, float]
    high: tuple[float, float]

    @property
    def pitch(self) -> float:
        """Degrees between it and level."""
        run, rise = (abs(b - a) for a, b in zip(self.low, self.high, strict=True))
        return math.degrees(math.atan2(rise, run))


def slope_of(unit: Unit) -> Slope | None:
    """The slope that a unit is cut to; None where it isn't."""
    fitted = [part for part in unit.parts if part.role not in STANDS_OUT] or list(unit.parts)
    slants = [plane for part in fitted for plane in _slants(part)]
    if not slants:
        return None
    corners = [point for part in fitted for point in part_corners(part)]
    box = Box.of_points(corners)
    outer = [p for p in slants if all(beyond(p, corner) <= _UNDER for corner in corners)]
    found = [slope for plane in outer if (slope := _within(plane, box)) is not None]
    return max(found, key=lambda each: abs(each.high[0] - each.low[0]), default=None)


def _slants(part: Part) -> list[Plane]:
    """Planes of a part that slope up sideways or to the back, as its outside, unit frame."""
    size = part.blank.size
    cuts = [plane for each in part.workings for plane in each.planes(size)]
    placed = part.placement
    origin = placed.to_unit((0.0, 0.0, 0.0))
    turned = [
        (placed.to_unit(at), minus(placed.to_unit(normal), origin))
        for at, normal in (*cuts, *box_planes(Box.of_size(size)))
    ]
    return [plane for plane in turned if 0.01 < plane[1][2] < 0.9999]


def _within(plane: Plane, box: Box) -> Slope | None:
    """The plane as a slope between the sides of the fitted unit's box."""
    at, (x, y, z) = plane
    sideways = abs(x) > abs(y)
    axis, lean = (0, x) if sideways else (1, y)
    if abs(y if sideways else x) > 1e-6:
        return None
    side = box.high[axis] if lean > 0 else box.low[axis]
    low = at[2] - lean / z * (side - at[axis])
    begins = at[axis] - z / lean * (box.high[2] - at[2])
    if abs(side - begins) < _LEAST_RUN or low < box.low[2]:
        return None
    inside = min(max(begins, box.low[axis]), box.high[axis])
    return Slope(sideways, (side, low), (inside, at[2] - lean / z * (inside - at[axis])))
