"""What a unit stands on: the lines on the floor about which it would tip."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Literal

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.strength.lots import Lot
from rodwright.trade.feet import FOOT_INSET
from rodwright.unit import CASE, Notch, Part, Role, Unit
from rodwright.unit.facts import STANDS, is_on_feet

Point = tuple[float, float]
Way = Literal["forward", "backward", "to the left", "to the right"]


@dataclass(frozen=True, slots=True)
class Line:
    """A line on the floor from ``start`` to ``stop`` (x and y, mm, unit frame), with all that the
    unit stands on to its left."""

    start: Point
    stop: Point

    @property
    def outward(self) -> Point:
        """Unit vector square to it, away from the unit."""
        x, y = self.stop[0] - self.start[0], self.stop[1] - self.start[1]
        length = math.hypot(x, y)
        return (y / length, -x / length)

    @property
    def way(self) -> Way:
        """Where a unit falls that tips over it."""
        x, y = self.outward
        if abs(y) >= abs(x):
            return "forward" if y < 0 else "backward"
        return "to the left" if x < 0 else "to the right"

    def inside(self, point: Vector) -> float:
        """How far, mm, a point stands inside of it; less than nought outside."""
        x, y = self.outward
        return (self.start[0] - point[0]) * x + (self.start[1] - point[1]) * y

    def arm(self, point: Vector, lean: float = 0.0) -> float:
        """How far, mm, a weight at a point acts inside of it, on a floor that falls away to the
        front by ``lean`` degrees."""
        turn = math.radians(lean) * -self.outward[1]
        return self.inside(point) * math.cos(turn) - point[2] * math.sin(turn)

    def angle(self, lot: Lot) -> float:
        """By how many degrees a lot on a level floor is turned about it until it falls:
        atan(x / z) of its centre; less than nought where it stands outside."""
        return math.degrees(math.atan2(self.inside(lot.centre), lot.centre[2]))


@dataclass(frozen=True, slots=True)
class Footing:
    """The lines round all that a unit stands on, and what that is, in the maker's words."""

    lines: tuple[Line, ...]
    what: str

    def towards(self, *ways: Way) -> tuple[Line, ...]:
        """The lines over which it falls one of these ways."""
        return tuple(line for line in self.lines if line.way in ways)

    @property
    def depth(self) -> float:
        """From its foremost to its rearmost line, mm."""
        ys = [line.start[1] for line in self.lines]
        return max(ys) - min(ys)


def footing(unit: Unit) -> Footing:
    """What a unit stands on: its feet, or the parts that reach the floor, without the notches at
    their toes and heels."""
    if is_on_feet(unit):
        case = Box.of_boxes(part.bounds() for part in unit.parts if part.role in (*CASE, Role.BACK))
        # A foot near each corner of the carcass, which begins at the origin.
        box = Box((0.0, 0.0, 0.0), case.high).grown((-FOOT_INSET, -FOOT_INSET, 0.0))
        return Footing(_lines([box]), "the middles of its feet")
    moved = {ref for motion in unit.motions for ref in motion.refs}
    still = [part for part in unit.parts if part.ref not in moved]
    floor = min(part.bounds().low[2] for part in still)
    on_it = [part for part in still if part.bounds().low[2] < floor + STANDS]
    boxes = [box for part in on_it for box in _contacts(part, floor)]
    roles = dict.fromkeys(part.role for part in on_it)
    return Footing(_lines(boxes), " and ".join(_CALLED.get(role, role.value) for role in roles))


_CALLED = {
    Role.SIDE: "sides",
    Role.DIVIDER: "dividers",
    Role.LEG: "legs",
    Role.STILE: "stiles",
    Role.RAIL: "rails",
    Role.SHELF: "shelves",
}


def _contacts(part: Part, floor: float) -> Iterator[Box]:
    """Where a part stands on the floor: its bounds less what notches take off at either end."""
    box = part.bounds()
    (left, front, _), (right, rear, _) = box.low, box.high
    for working in part.workings:
        if not isinstance(working, Notch):
            continue
        out = part.placement.box_to_unit(working.bounds(part.blank.size))
        if out.low[2] > floor + STANDS or out.is_empty:
            continue
        through = out.low[0] < left + TOUCH and out.high[0] > right - TOUCH
        if through and out.low[1] < front + STANDS:
            front = max(front, out.high[1])
        elif through and out.high[1] > rear - STANDS:
            rear = min(rear, out.low[1])
    if rear > front:
        yield Box((left, front, floor), (right, rear, floor))


def _lines(boxes: Iterable[Box]) -> tuple[Line, ...]:
    corners = {(x, y) for box in boxes for x, y, _ in box.corners()}
    hull = _hull(sorted(corners))
    return tuple(Line(one, other) for one, other in zip(hull, [*hull[1:], hull[0]], strict=True))


def _hull(points: list[Point]) -> list[Point]:
    """The convex hull of sorted points, anticlockwise, without points on its sides (Andrew's
    monotone chain)."""

    def chain(along: Iterable[Point]) -> list[Point]:
        kept: list[Point] = []
        for x, y in along:
            while len(kept) > 1:
                (a, b), (c, d) = kept[-2:]
                if (c - a) * (y - b) - (d - b) * (x - a) > TOUCH * TOUCH:
                    break
                kept.pop()
            kept.append((x, y))
        return kept[:-1]

    return chain(points) + chain(reversed(points))
