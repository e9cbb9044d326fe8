"""Workings that go in from a surface: holes, mortises, pocket holes, finger pulls."""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from typing import ClassVar, Literal, Self

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.unit.surfaces import Surface
from rodwright.unit.workings.arris import AlongArris
from rodwright.unit.workings.frames import Refit, Turn, plain, under
from rodwright.unit.workings.removal import Figures, Removal


@dataclass(frozen=True, slots=True)
class Hole(Removal):
    """A round hole square to ``surface``.

    ``position`` is its centre along the two axes of that surface, in the order x, y, z;
    ``depth`` of None goes right through.
    """

    word: ClassVar[str] = "hole"

    kind: Literal["hole"] = field(default="hole", init=False, repr=False, compare=False)
    surface: Surface
    position: tuple[float, float]
    diameter: float
    depth: float | None = None
    use: str = field(default="", compare=False)

    @property
    def entered(self) -> Surface:
        """The surface that it goes in at."""
        return self.surface

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        box, radius, through = Box.of_size(size), self.diameter / 2, size[self.surface.axis]
        for axis, at in zip(self.surface.across, self.position, strict=True):
            box = box.spanning(axis, at - radius, at + radius)
        return under(box, self.surface, through if self.depth is None else min(self.depth, through))

    def turned(self, turn: Turn, size: Vector) -> Self:
        """The same in the frame of the turned part."""
        (first, second), (along, across) = self.surface.across, self.position
        place = (turn.place(size, first, along), turn.place(size, second, across))
        return replace(self, surface=turn.surface(self.surface), position=place)

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank."""
        (first, second), (along, across) = self.surface.across, self.position
        depth = self.depth if self.depth is None else to.depth(self.surface, self.depth)
        if depth is not None and depth <= TOUCH:
            return None
        place = (to.place(first, along), to.place(second, across))
        return replace(self, position=place, depth=depth)

    def figures(self, size: Vector) -> Figures:
        """Diameter and depth."""
        return Figures(drill=self.diameter, depth=math.inf if self.depth is None else self.depth)

    def worked_from(self, size: Vector) -> Surface | None:
        """The face that it is drilled in, unless it goes right through."""
        blind = self.depth is not None and self.depth < size[self.surface.axis]
        return self.surface if self.surface.axis == 2 and blind else None


@dataclass(frozen=True, slots=True)
class Mortise(Removal):
    """A pocket square to ``surface``.

    ``position`` is its low corner and ``extent`` its size along the two axes of that
    surface, in the order x, y, z; ``depth`` goes into the blank.  With ``round_ends`` the
    two ends of its longer extent are half circles, as a cutter leaves them.
    """

    word: ClassVar[str] = "mortise"

    kind: Literal["mortise"] = field(default="mortise", init=False, repr=False, compare=False)
    surface: Surface
    position: tuple[float, float]
    extent: tuple[float, float]
    depth: float
    round_ends: bool = False
    use: str = field(default="", compare=False)

    @property
    def entered(self) -> Surface:
        """The surface that it goes in at."""
        return self.surface

    @property
    def called(self) -> str:
        """A recess for a hinge's leaf, a slot in which a screw or a button can move, else a
        mortise."""
        if self.use == "hinge leaf":
            return "leaf recess"
        return "slot" if self.use in ("screw", "button") else self.word

    @property
    def fills_bounds(self) -> bool:
        """It does unless its ends are round."""
        return not self.round_ends

    @property
    def long_axis(self) -> int:
        """The part axis along its longer extent."""
        first, second = self.surface.across
        return first if self.extent[0] >= self.extent[1] else second

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        box = Box.of_size(size)
        for axis, at, extent in zip(self.surface.across, self.position, self.extent, strict=True):
            box = box.spanning(axis, at, at + extent)
        return under(box, self.surface, min(self.depth, size[self.surface.axis]))

    def turned(self, turn: Turn, size: Vector) -> Self:
        """The same in the frame of the turned part."""
        (first, second), (along, across) = self.surface.across, self.position
        place = (
            turn.place(size, first, along, self.extent[0]),
            turn.place(size, second, across, self.extent[1]),
        )
        return replace(self, surface=turn.surface(self.surface), position=place)

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank."""
        depth = to.depth(self.surface, self.depth)
        along, across = (
            to.stretch(axis, at, extent)
            for axis, at, extent in zip(
                self.surface.across, self.position, self.extent, strict=True
            )
        )
        if along is None or across is None or depth <= TOUCH:
            return None
        place, extent = (along[0], across[0]), (along[1], across[1])
        return replace(self, position=place, extent=extent, depth=depth)

    def figures(self, size: Vector) -> Figures:
        """Both sides, the longer first where its ends are round, and depth."""
        sides = sorted(self.extent, reverse=True) if self.round_ends else self.extent
        through = self.depth >= size[self.surface.axis] - TOUCH
        return Figures(across=tuple(sides), depth=math.inf if through else self.depth)

    def worked_from(self, size: Vector) -> Surface | None:
        """The face that it is cut in, unless it goes right through."""
        blind = self.surface.axis == 2 and self.depth < size[2]
        return self.surface if blind else None


@dataclass(frozen=True, slots=True)
class PocketHole(Removal):
    """A hole for a slanting screw, drilled from a face out through an end or an edge.

    Its axis lies at ``position`` along the arris of the two, ``angle`` degrees from
    ``surface``, and leaves the ``end`` at ``exit`` mm below ``surface``.  The pocket of
    ``diameter`` stops ``stop`` mm short of the end, measured along the axis, with a floor
    square to it; from there the screw goes on through a hole of ``screw`` mm diameter.
    """

    word: ClassVar[str] = "pocket hole"

    kind: Literal["pockethole"] = field(default="pockethole", init=False, repr=False, compare=False)
    surface: Surface
    end: Surface
    position: float
    exit: float
    stop: float
    diameter: float
    screw: float
    angle: float = 15.0
    use: str = field(default="", compare=False)

    @property
    def entered(self) -> Surface:
        """The end or edge that it comes out of, which says where it is."""
        return self.end

    @property
    def run(self) -> int:
        """The part axis along the arris that it is placed on."""
        return 3 - self.surface.axis - self.end.axis

    @property
    def mouth(self) -> float:
        """How far from the end its mouth reaches over the face, mm: to where the lowest line
        along the pocket comes out, which lies a radius off its axis."""
        slope = math.radians(self.angle)
        return (self.exit + self.diameter / 2 / math.cos(slope)) / math.tan(slope)

    @property
    def floor(self) -> float:
        """How deep below the face the pocket's floor reaches, mm."""
        slope = math.radians(self.angle)
        return self.exit - self.stop * math.sin(slope) + self.diameter / 2 * math.cos(slope)

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        return self._between(size, 0.0, self.mouth)

    def bounds_beside(self, size: Vector, other: Box) -> Box:
        """The box, part frame, round what it takes as near to its end as another box and as far
        from it; empty where that is none of it."""
        axis = self.end.axis
        near, far = other.low[axis], other.high[axis]
        if self.end.at_high:
            near, far = size[axis] - far, size[axis] - near
        return self._between(size, max(0.0, near), min(far, self.mouth))

    def _between(self, size: Vector, near: float, far: float) -> Box:
        """The box round what lies between two distances from the end."""
        slope, radius, screw = math.radians(self.angle), self.diameter / 2, self.screw / 2
        middle, lean = self.stop * math.cos(slope), radius * math.sin(slope)
        pocket = far > middle - lean
        wide = radius if pocket else screw

        def line(aside: float, at: float) -> float:
            """Depth of a line along the hole, so far below its axis, at a distance from the end."""
            return self.exit + aside / math.cos(slope) - at * math.tan(slope)

        lowest = line(screw, near)
        if pocket:
            # The floor is square to the axis, and lowest farthest from the end.
            lowest = max(lowest, line(radius, max(near, middle + lean)))
        highest = max(0.0, line(-wide, far))
        box = Box.of_size(size).spanning(self.run, self.position - wide, self.position + wide)
        box = under(box, self.surface, min(lowest, size[self.surface.axis]), highest)
        return under(box, self.end, min(far, size[self.end.axis]), near)

    def turned(self, turn: Turn, size: Vector) -> Self:
        """The same in the frame of the turned part."""
        position = turn.place(size, self.run, self.position)
        surface, end = turn.surface(self.surface), turn.surface(self.end)
        return replace(self, surface=surface, end=end, position=position)

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank: its axis stays where it is."""
        out, slope = to.out(self.end), math.radians(self.angle)
        return replace(
            self,
            position=to.place(self.run, self.position),
            exit=plain(self.exit + out * math.tan(slope)),
            stop=plain(self.stop + out / math.cos(slope)),
        )

    def figures(self, size: Vector) -> Figures:
        """The pocket's diameter, and how it slants."""
        return Figures(drill=self.diameter, angle=self.angle)

    def worked_from(self, size: Vector) -> Surface | None:
        """The face that it is drilled in."""
        return self.surface


@dataclass(frozen=True, slots=True)
class FingerPull(AlongArris):
    """A cove beside the arris between ``surface``, a face, and ``edge``, for fingers to pull at.

    A core-box bit (round-nosed, of ``radius``) stands square to ``surface``, its axis
    ``position`` mm in from ``edge``, and runs along the arris ``depth`` deep, above 0 and at most
    its radius.  So its section is an arc of a circle, :attr:`reach` wide to either side of its
    middle at the surface; nearer than that to ``edge`` it is open there.  ``start`` and ``stop``
    are where it begins and ends at the surface, along the arris from the low end of its axis
    (``stop`` of None: to the far end).  At either the bit is let in and lifted out, which leaves
    part of a ball; where it begins or ends with the blank it runs out with its whole section.
    A run with two round ends is at least twice :attr:`reach` long.
    """

    word: ClassVar[str] = "finger pull"

    kind: Literal["fingerpull"] = field(default="fingerpull", init=False, repr=False, compare=False)
    surface: Surface
    edge: Surface
    position: float
    radius: float
    depth: float
    start: float = 0.0
    stop: float | None = None
    use: str = field(default="", compare=False)

    @property
    def entered(self) -> Surface:
        """The surface that it goes in at."""
        return self.surface

    @property
    def reach(self) -> float:
        """Half its width at the surface, mm: half the chord of the arc, from the theorem of
        Pythagoras."""
        return math.sqrt(self.depth * (2 * self.radius - self.depth))

    def lets_in(self, size: Vector) -> tuple[float | None, float | None]:
        """Where the bit's axis is let in and lifted out along the arris; None where it runs out."""
        out = self.stop is None or self.stop >= size[self.run] - TOUCH
        return (
            None if self.start <= TOUCH else self.start + self.reach,
            None if out or self.stop is None else self.stop - self.reach,
        )

    def bounds(self, size: Vector) -> Box:
        """The box round all that it takes, part frame."""
        along = Box.of_size(size).spanning(self.run, self.start, self.stop)
        beside = max(0.0, self.position - self.reach)
        place = under(along, self.edge, self.position + self.reach, beside)
        return under(place, self.surface, self.depth)

    def moved(self, to: Refit) -> Self | None:
        """The same in another blank: its axis stays where it is."""
        span = to.span(self.run, self.start, self.stop)
        position = plain(self.position + to.out(self.edge))
        if span is None or position + self.reach <= TOUCH:
            return None
        start, stop = span
        let_in, lifted_out = self.lets_in(to.size)
        # A round end that comes to lie just at the end of the blank is round there too.
        if let_in is not None:
            start = max(start, 2 * TOUCH)
        if lifted_out is not None and stop is None:
            stop = plain(to.blank.size[self.run] - 2 * TOUCH)
        return replace(self, position=position, start=start, stop=stop)

    def figures(self, size: Vector) -> Figures:
        """Its width at the surface, its depth and the cutter's radius."""
        return Figures(across=(2 * self.reach,), depth=self.depth, radius=self.radius)

    def worked_from(self, size: Vector) -> Surface | None:
        """The face that it is routed in."""
        return self.surface
