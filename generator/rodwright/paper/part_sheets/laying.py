"""Where a view of a part is laid down on paper, and the small shapes that it is drawn with."""

from __future__ import annotations

import math
from dataclasses import dataclass

from rodwright.paper.part_sheets.entries import Group
from rodwright.paper.part_sheets.labels import Label
from rodwright.paper.part_sheets.seen import Facing
from rodwright.paper.part_sheets.sheets import Laid
from rodwright.pictures.ink import DARK, Fill

Spot = tuple[float, float]
WIDE, NARROW, FINE, THICK = 0.5, 0.25, 0.13, 0.9
"""Pens, mm: edges; what is cut into them and dimension lines; what leads to figures; edging."""
RISE = 0.36
"""From the baseline to the middle of figures, as a share of the size."""
_ARROW, _BARB = 1.8, 0.35


@dataclass(frozen=True, slots=True)
class Laying:
    """Where a view is laid down: its upper left corner, and the ``room`` that labels have beside
    each other; what is ``taller`` is drawn so many times higher than its scale."""

    laid: Laid
    facing: Facing
    groups: tuple[Group, ...]
    scale: float
    taller: float
    left: float
    top: float
    room: float

    @property
    def size(self) -> Spot:
        """Of the surface, mm."""
        first, second = self.facing.across
        return self.laid.datum.size[first], self.laid.datum.size[second]

    @property
    def right(self) -> float:
        """Of the view on paper."""
        return self.left + self.size[0] / self.scale

    @property
    def bottom(self) -> float:
        """Of the view on paper."""
        return self.top + self.size[1] / self.scale * self.taller

    def x(self, at: float) -> float:
        """Of the page, of a place along the first axis from its datum."""
        return self.left + (self.size[0] - at if self.facing.turned[0] else at) / self.scale

    def y(self, at: float) -> float:
        """Of the page, of a place along the second axis from its datum."""
        up = self.size[1] - at if self.facing.turned[1] else at
        return self.bottom - up / self.scale * self.taller

    def page(self, spot: Spot) -> Spot:
        """A place of the view on the page."""
        return self.x(spot[0]), self.y(spot[1])


@dataclass(frozen=True, slots=True)
class Placed:
    """A label, where on the page its place is along its side of the view, and where it stands."""

    label: Label
    place: float
    at: float


def circle(x: float, y: float, radius: float) -> tuple[Spot, ...]:
    """A round line."""
    turns = (2 * math.pi * step / 16 for step in range(17))
    return tuple((x + radius * math.cos(turn), y + radius * math.sin(turn)) for turn in turns)


def arrow(tip: Spot, way: Spot, room: float = _ARROW) -> Fill:
    """An arrowhead, shorter where there is no room for a whole one."""
    (x, y), (dx, dy) = tip, way
    long = min(_ARROW, room)
    wide = _BARB * long / _ARROW
    back = (x - dx * long, y - dy * long)
    side = (-dy * wide, dx * wide)
    ring = (tip, (back[0] + side[0], back[1] + side[1]), (back[0] - side[0], back[1] - side[1]))
    return Fill((ring,), DARK)
