"""Surfaces that nobody ever sees once a unit stands in its place, and that get no finish.

What another part covers or is glued to; and of sheets, which don't cup, what is turned to a wall,
a ceiling or the floor.  Solid wood is finished on such faces too, and fronts of it all round.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from rodwright.geometry import TOUCH, Box
from rodwright.making.bodies import Array
from rodwright.unit import Part, Role, Surface, Unit
from rodwright.unit.roles import BASE, CASE, FACE_FRAME, FRONTS, STANDS_OUT
from rodwright.unit.surfaces import HIGH, LOW

_BESIDE = 0.5
"""How far before a surface (mm) another part stands that covers it; play is more than that."""
_COVERED = 0.5
"""Share of a surface from which on it counts as covered."""
_NEAR = 60.0
"""A gap to a wall or ceiling (mm) that nobody looks into."""
_LOW = 300.0
"""An underside lower than this (mm) is out of sight; common practice, no source, as are the
others."""
_SET_BACK = 30.0
"""How far a base stands back from the sides at most (mm) to be at the wall as they are."""

_PAST = (*FACE_FRAME, *STANDS_OUT)
"""What may reach past the sides."""


def unseen_surfaces(unit: Unit) -> frozenset[tuple[str, Surface]]:
    """The surfaces, each with the ref of its part, that are seen neither closed nor open.

    A freestanding unit's rear counts as standing at a wall, its sides and its top don't.
    """
    boxes = {part.ref: part.bounds() for part in unit.parts}
    square = [boxes[part.ref] for part in unit.parts if _is_square(part)]
    lows = np.array([box.low for box in square]).reshape(-1, 3)
    highs = np.array([box.high for box in square]).reshape(-1, 3)
    found = set()
    for part in unit.parts:
        if not _is_square(part):
            continue
        sheet = part.blank.stock.kind == "sheet"
        walls = set(_at_walls(unit, part)) if sheet else set()
        if not sheet and part.role in FRONTS:
            continue
        for surface in (*LOW, *HIGH):
            if surface in walls or _covered(part, surface, lows, highs) > _COVERED:
                found.add((part.ref, surface))
    return frozenset(found)


def _is_square(part: Part) -> bool:
    """Whether it lies square to the unit's axes."""
    return all(max(map(abs, axis)) > 1 - 1e-9 for axis in part.placement.axes)


def _direction(part: Part, surface: Surface) -> tuple[int, bool]:
    """The axis of the unit frame that a surface looks along, and whether up it."""
    along = part.placement.axes[surface.axis]
    axis = max(range(3), key=lambda each: abs(along[each]))
    return axis, (along[axis] > 0) == surface.at_high


def _covered(part: Part, surface: Surface, lows: Array, highs: Array) -> float:
    """Share of a surface that other parts stand at."""
    axis, up = _direction(part, surface)
    box = part.bounds()
    level = box.high[axis] + _BESIDE if up else box.low[axis] - _BESIDE
    there = (lows[:, axis] < level) & (highs[:, axis] > level)
    others = [each for each in range(3) if each != axis]
    area, whole = np.ones(int(there.sum())), 1.0
    for each in others:
        low, high = box.low[each], box.high[each]
        shared = np.minimum(highs[there, each], high) - np.maximum(lows[there, each], low)
        area *= shared.clip(0.0)
        whole *= high - low
    return float(area.sum() / whole)


def _at_walls(unit: Unit, part: Part) -> Iterator[Surface]:
    """The surfaces of a part that are turned to a wall, a ceiling or the floor."""
    if part.role in _PAST:
        return
    case = Box.of_boxes(each.bounds() for each in unit.parts if each.role not in _PAST)
    low, high = part.bounds().low, part.bounds().high
    for surface in (*LOW, *HIGH):
        axis, up = _direction(part, surface)
        if axis == 1:
            hidden = up and (part.role is Role.BACK or high[1] > unit.envelope.high[1] - TOUCH)
        elif axis == 2:
            hidden = _overhead(unit, part) if up else _underneath(unit, part)
        else:
            off = high[0] - case.high[0] if up else low[0] - case.low[0]
            hidden = _between_walls(unit) and abs(off) < _SET_BACK and part.role in (*CASE, *BASE)
        if hidden or (part.role in BASE and surface.axis == 2 and _inside_base(part, surface)):
            yield surface


def _overhead(unit: Unit, part: Part) -> bool:
    """Whether a part's upper side is what lies close below the ceiling of an opening."""
    top = unit.envelope.high[2]
    near = unit.opening is not None and unit.opening.height - top < _NEAR
    return near and part.role in CASE and part.bounds().high[2] > top - TOUCH


def _underneath(unit: Unit, part: Part) -> bool:
    """Whether a part's underside is close over the floor."""
    low = part.bounds().low[2]
    return not unit.hung and (low < TOUCH or (part.role is Role.BOTTOM and low < _LOW))


def _between_walls(unit: Unit) -> bool:
    """Whether the sides stand in an opening, and not out of it."""
    opening = unit.opening
    if opening is None:
        return False
    return opening.depth is None or unit.envelope.high[1] - opening.depth < _NEAR


def _inside_base(part: Part, surface: Surface) -> bool:
    """Whether it is a face of a base that is turned inwards."""
    return part.role is Role.PLINTH and surface not in part.blank.show_surfaces
