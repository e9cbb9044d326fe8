"""How the ends of a member are cut back across its width, so that mitres can be nested."""

from __future__ import annotations

from math import atan2, degrees

from rodwright.geometry import TOUCH
from rodwright.geometry.halfspaces import Plane
from rodwright.unit import Part, Surface

_ENDS = (Surface.NEAR_END, Surface.FAR_END)
_EXACT = 6
"""Decimals of a millimetre: what tangents leave beyond them is noise."""


def slants_of(part: Part) -> tuple[float, float]:
    """How far the near and the far end of a part's blank are cut back across its width, mm.

    They are told as of a piece whose long points lie on its face edge, which a half turn brings
    there.  0 for an end that is square, and for both where the long points don't lie on one edge.
    Bevels through the thickness count as square: the blank is as long as its long points.
    """
    found = [_slant(part, end) for end in _ENDS]
    longs = {at_back for slant, at_back in found if slant > TOUCH}
    near, far = (slant for slant, _ in found)
    if len(longs) != 1 or near + far > part.blank.length:
        return (0.0, 0.0)
    return (far, near) if longs == {True} else (near, far)


def angle_of(slant: float, width: float) -> float:
    """The saw's angle, in degrees away from a square cut, that cuts an end back so far."""
    return degrees(atan2(slant, width))


def _slant(part: Part, end: Surface) -> tuple[float, bool]:
    """How far an end is cut back, and whether its long point is on the back edge."""
    size = part.blank.size
    for working in part.workings:
        if working.takes_off(end, size):
            for plane in working.planes(size):
                low, high = (_at(plane, y) for y in (0.0, size[1]))
                back = high < low if end is Surface.NEAR_END else high > low
                return round(abs(high - low), _EXACT), back
    return 0.0, False


def _at(plane: Plane, y: float) -> float:
    """Where a plane that stands square to the faces meets a line along the length, at ``y``."""
    point, normal = plane
    if abs(normal[2]) > TOUCH:
        return 0.0
    return point[0] - normal[1] * (y - point[1]) / normal[0]
