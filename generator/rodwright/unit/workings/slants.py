"""Workings along an end or an arris: mitres, bevels and easings."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import Literal

from rodwright.geometry.vectors import Vector
from rodwright.unit.surfaces import Surface


@dataclass(frozen=True, slots=True)
class Mitre:
    """A sloping cut that takes the whole end off.

    ``angle`` is the saw setting, in degrees away from a square cut (45 for a square
    corner), 0 < angle < 90; the long point stays where ``long`` meets ``end``.  With
    ``long`` an edge it is a frame mitre, with ``long`` a face it is a bevelled end.
    """

    kind: Literal["mitre"] = field(default="mitre", init=False, repr=False, compare=False)
    end: Surface
    angle: float
    long: Surface

    def plane(self, size: Vector) -> tuple[Vector, Vector]:
        """A point on the cut and its unit normal, pointing at what is cut away; part frame."""
        point, normal = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        for surface in (self.end, self.long):
            point[surface.axis] = size[surface.axis] if surface.at_high else 0.0
        slope = math.radians(self.angle)
        normal[self.end.axis] = math.cos(slope) * (1 if self.end.at_high else -1)
        normal[self.long.axis] = math.sin(slope) * (-1 if self.long.at_high else 1)
        return (point[0], point[1], point[2]), (normal[0], normal[1], normal[2])


@dataclass(frozen=True, slots=True)
class Easing:
    """The arris between two surfaces rounded to a quarter circle.

    ``start`` and ``stop`` are along the arris from the low end of its axis (``stop`` of
    None: to the far end).
    """

    kind: Literal["easing"] = field(default="easing", init=False, repr=False, compare=False)
    surface: Surface
    edge: Surface
    radius: float
    start: float = 0.0
    stop: float | None = None


@dataclass(frozen=True, slots=True)
class Bevel:
    """A flat cut across the arris between two surfaces on different axes.

    Named as a rebate is: ``width`` is measured over ``surface`` from ``edge``, ``depth``
    down ``edge`` from ``surface``.  Either may be more than the blank has, where the cut
    takes off a whole end or edge.
    """

    kind: Literal["bevel"] = field(default="bevel", init=False, repr=False, compare=False)
    surface: Surface
    edge: Surface
    width: float
    depth: float

    @property
    def angle(self) -> float:
        """Degrees between the cut and ``edge``: what a saw is set to away from square."""
        return math.degrees(math.atan2(self.width, self.depth))

    def plane(self, size: Vector) -> tuple[Vector, Vector]:
        """A point on the cut and its unit normal, pointing at what is cut away; part frame."""
        point, normal = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        reach = math.hypot(self.width, self.depth)
        for surface, share in ((self.surface, self.width), (self.edge, self.depth)):
            point[surface.axis] = size[surface.axis] if surface.at_high else 0.0
            normal[surface.axis] = share / reach * (1 if surface.at_high else -1)
        inward = self.depth if not self.surface.at_high else -self.depth
        point[self.surface.axis] += inward
        return (point[0], point[1], point[2]), (normal[0], normal[1], normal[2])
