"""Workings along an end or an arris: mitres, bevels and easings."""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from typing import ClassVar, Literal, Self

from rodwright.geometry import TOUCH, Box, Vector, vector
from rodwright.geometry.halfspaces import Plane
from rodwright.unit.surfaces import Surface
from rodwright.unit.workings.arris import AlongArris
from rodwright.unit.workings.frames import Refit, Turn, plain, under
from rodwright.unit.workings.removal import Figures, Removal


@dataclass(frozen=True, slots=True)
class Mitre(Removal):
    """A sloping cut that takes the whole end off.

    ``angle`` is the saw setting, in degrees away from a square cut (45 for a square
    corner), 0 < angle < 90; the long point stays where ``long`` meets ``end``.  With
    ``long`` an edge it is a frame mitre, with ``long`` a face it is a bevelled end.
    """

    word: ClassVar[str] = "mitre"

    kind: Literal["mitre"] = field(default="mitre", init=False, repr=False, compare=False)
    end: Surface
    angle: float
    long: Surface

    @property
    def called(self) -> str:
        """A bevel where it leans from face to face."""
        return self.word if self.long.axis == 1 else Bevel.word

    def planes(self, size: Vector) -> tuple[Plane, ...]:
        """The one plane of the cut."""
        point, normal = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        for surface in (self.end, self.long):
            point[surface.axis] = size[surface.axis] if surface.at_high else 0.0
        slope = math.radians(self.angle)
        normal[self.end.axis] = math.cos(slope) * (1 if self.end.at_high else -1)
        normal[self.long.axis] = math.sin(slope) * (-1 if self.long.at_high else 1)
        return ((vector(point), vector(normal)),)

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        run = size[self.long.axis] * math.tan(math.radians(self.angle))
        return under(Box.of_size(size), self.end, min(run, size[self.end.axis]))

    def turned(self, turn: Turn, size: Vector) -> Self:
        """The same in the frame of the turned part."""
        return replace(self, end=turn.surface(self.end), long=turn.surface(self.long))

    def moved(self, to: Refit) -> Mitre | Bevel:
        """The same in another blank.

        It goes with its end; where its long points are moved it is told as a bevel.
        """
        out = to.out(self.long)
        if abs(out) <= TOUCH:
            return self
        reach = to.blank.size[self.long.axis] - out
        depth = reach * math.tan(math.radians(self.angle))
        return Bevel(self.end, self.long.opposite, plain(reach), plain(depth))

    def figures(self, size: Vector) -> Figures:
        """The angle of the cut."""
        return Figures(angle=self.angle)

    def takes_off(self, surface: Surface, size: Vector) -> bool:
        """Its end."""
        return self.end is surface


@dataclass(frozen=True, slots=True)
class Bevel(Removal):
    """A flat cut across the arris between two surfaces on different axes.

    Named as a rebate is: ``width`` is measured over ``surface`` from ``edge``, ``depth``
    down ``edge`` from ``surface``.  Either may be more than the blank has, where the cut
    takes off a whole end or edge.
    """

    word: ClassVar[str] = "bevel"

    kind: Literal["bevel"] = field(default="bevel", init=False, repr=False, compare=False)
    surface: Surface
    edge: Surface
    width: float
    depth: float

    @property
    def angle(self) -> float:
        """Degrees between the cut and ``edge``: what a saw is set to away from square."""
        return math.degrees(math.atan2(self.width, self.depth))

    def planes(self, size: Vector) -> tuple[Plane, ...]:
        """The one plane of the cut."""
        point, normal = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        reach = math.hypot(self.width, self.depth)
        for surface, share in ((self.surface, self.width), (self.edge, self.depth)):
            point[surface.axis] = size[surface.axis] if surface.at_high else 0.0
            normal[surface.axis] = share / reach * (1 if surface.at_high else -1)
        inward = self.depth if not self.surface.at_high else -self.depth
        point[self.surface.axis] += inward
        return ((vector(point), vector(normal)),)

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        across = under(Box.of_size(size), self.edge, min(self.width, size[self.edge.axis]))
        return under(across, self.surface, min(self.depth, size[self.surface.axis]))

    def turned(self, turn: Turn, size: Vector) -> Self:
        """The same in the frame of the turned part."""
        return replace(self, surface=turn.surface(self.surface), edge=turn.surface(self.edge))

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank: where it is, but with an end or edge that it takes off
        whole."""
        share = 1.0
        for surface, leg in ((self.surface, self.depth), (self.edge, self.width)):
            if not self.takes_off(surface, to.size):
                share += to.out(surface) / leg
        if share <= 0:
            return None
        return replace(self, width=plain(self.width * share), depth=plain(self.depth * share))

    def worked_from(self, size: Vector) -> Surface | None:
        """The face whose arris it takes; None where it is sawn right across."""
        both = (self.surface, self.edge)
        if any(self.takes_off(each, size) for each in both):
            return None
        return next((each for each in both if each.axis == 2), None)

    def figures(self, size: Vector) -> Figures:
        """The angle of the cut."""
        return Figures(angle=self.angle)

    def takes_off(self, surface: Surface, size: Vector) -> bool:
        """Either of its two surfaces that it takes whole, of both the end."""
        if surface not in (self.surface, self.edge):
            return False
        other, down = (
            (self.edge, self.width) if surface is self.surface else (self.surface, self.depth)
        )
        # Of two surfaces that it takes off whole the cut belongs to the end.
        whole = down >= size[other.axis] - TOUCH
        return whole and not (other.axis == 0 and self.takes_off(other, size))


@dataclass(frozen=True, slots=True)
class Easing(AlongArris):
    """The arris between two surfaces rounded to a quarter circle.

    ``start`` and ``stop`` are along the arris from the low end of its axis (``stop`` of
    None: to the far end).
    """

    word: ClassVar[str] = "easing"

    kind: Literal["easing"] = field(default="easing", init=False, repr=False, compare=False)
    surface: Surface
    edge: Surface
    radius: float
    start: float = 0.0
    stop: float | None = None

    @property
    def called(self) -> str:
        """What it leaves."""
        return "eased arris"

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        along = Box.of_size(size).spanning(self.run, self.start, self.stop)
        return under(under(along, self.edge, self.radius), self.surface, self.radius)

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank: it goes with its arris."""
        span = to.span(self.run, self.start, self.stop)
        return span and replace(self, start=span[0], stop=span[1])

    def figures(self, size: Vector) -> Figures:
        """The radius."""
        return Figures(radius=self.radius)

    def worked_from(self, size: Vector) -> Surface | None:
        """The face whose arris it rounds."""
        return next((each for each in (self.surface, self.edge) if each.axis == 2), None)
