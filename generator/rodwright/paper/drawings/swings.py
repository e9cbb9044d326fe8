"""How doors and drawers open, as lines of a view (mm).

From the front a door has a triangle whose apex is at its hinges, dashed: it opens towards the
viewer (a common convention of drawings of buildings, from memory; countries differ, so that the
sheet says it).  In plan it stands open as far as its hinges let it, with the way of its edge.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from rodwright.geometry import Box
from rodwright.pictures.drafting.views import Point
from rodwright.unit import FRONTS, Motion, Slide, Swing, Unit

Path = tuple[Point, ...]

LEGEND = "Dashed triangle: a door that opens towards you, hinged at the triangle's point."
_STEP = 5.0
"""An arc is drawn straight over so many degrees."""


def leaf(unit: Unit, motion: Motion) -> Box | None:
    """The box round what closes the front of a door or a drawer; None where nothing does."""
    parts = [unit.part(ref) for ref in motion.refs]
    boxes = [part.bounds() for part in parts if part.role in FRONTS]
    return Box.of_boxes(boxes) if boxes else None


def triangles(unit: Unit) -> tuple[Path, ...]:
    """The doors' triangles from the front (x and z)."""
    found = []
    for motion in unit.motions:
        box = leaf(unit, motion)
        if isinstance(motion, Swing) and box is not None:
            left = motion.hinge[0] < box.centre[0]
            hinge, free = (box.low[0], box.high[0]) if left else (box.high[0], box.low[0])
            apex = (hinge, (box.low[2] + box.high[2]) / 2)
            found.append(((free, box.high[2]), apex, (free, box.low[2])))
    return tuple(found)


def opened_in_plan(unit: Unit) -> tuple[Path, ...]:
    """Doors open and drawers drawn out, from above (x and y); of those straight over each other
    one."""
    found: dict[Path, None] = {}
    for motion in unit.motions:
        box = leaf(unit, motion)
        if box is None:
            continue
        paths = _swung(box, motion) if isinstance(motion, Swing) else _drawn(box, motion)
        for path in paths:
            found[tuple((round(x, 3), round(y, 3)) for x, y in path)] = None
    return tuple(found)


def _swung(box: Box, swing: Swing) -> Iterator[Path]:
    """A leaf in its end position, and the arc that its far front corner goes."""
    (x, y), angle = swing.hinge, swing.angle

    def turn(point: Point, by: float) -> Point:
        c, s = math.cos(math.radians(by)), math.sin(math.radians(by))
        a, b = point[0] - x, point[1] - y
        return (x + c * a - s * b, y + s * a + c * b)

    (x0, y0, _), (x1, y1, _) = box.low, box.high
    corners = [(x0, y0), (x1, y0), (x1, y1), (x0, y1), (x0, y0)]
    yield tuple(turn(corner, angle) for corner in corners)
    far = max(corners[:2], key=lambda corner: math.dist(corner, (x, y)))
    steps = max(2, round(abs(angle) / _STEP))
    yield tuple(turn(far, angle * step / steps) for step in range(steps + 1))


def _drawn(box: Box, slide: Slide) -> Iterator[Path]:
    """A drawer's front where it stands drawn out, and the way of its ends."""
    by = slide.travel[1]
    (x0, y0, _), (x1, y1, _) = box.low, box.high
    yield ((x0, y0 + by), (x1, y0 + by), (x1, y1 + by), (x0, y1 + by), (x0, y0 + by))
    yield ((x0, y0), (x0, y1 + by))
    yield ((x1, y0), (x1, y1 + by))
