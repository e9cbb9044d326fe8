"""Boxes whose sides lie along the axes."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import product

from rodwright.geometry.tolerance import TOUCH
from rodwright.geometry.vectors import Vector, minus, plus


@dataclass(frozen=True, slots=True)
class Box:
    """An axis-aligned box between two opposite corners, in whatever frame its user names.

    Axes are 0 for x, 1 for y and 2 for z.  A box whose low corner lies beyond its high one is
    what two others share that lie apart: it is empty.
    """

    low: Vector
    high: Vector

    @classmethod
    def of_size(cls, size: Vector) -> Box:
        """The box of a size that begins where all three axes do."""
        return cls((0.0, 0.0, 0.0), size)

    @classmethod
    def from_corners(cls, one: Vector, other: Vector) -> Box:
        """The box between two opposite corners, whichever they are."""
        (a, b, c), (x, y, z) = one, other
        return cls((min(a, x), min(b, y), min(c, z)), (max(a, x), max(b, y), max(c, z)))

    @classmethod
    def of_points(cls, points: Iterable[Vector]) -> Box:
        """The smallest box round some points.

        Raises:
            ValueError: there are none.
        """
        xs, ys, zs = zip(*points, strict=True)
        return cls((min(xs), min(ys), min(zs)), (max(xs), max(ys), max(zs)))

    @classmethod
    def of_boxes(cls, boxes: Iterable[Box]) -> Box:
        """The smallest box round some others.

        Raises:
            ValueError: there are none.
        """
        return cls.of_points(corner for box in boxes for corner in (box.low, box.high))

    @property
    def size(self) -> Vector:
        """Extents along x, y and z."""
        return minus(self.high, self.low)

    @property
    def centre(self) -> Vector:
        """The box's middle point."""
        return (
            (self.low[0] + self.high[0]) / 2,
            (self.low[1] + self.high[1]) / 2,
            (self.low[2] + self.high[2]) / 2,
        )

    @property
    def is_empty(self) -> bool:
        """Whether it holds nothing to speak of: along some axis it is no thicker than a touch."""
        return min(self.size) <= TOUCH

    def corners(self) -> tuple[Vector, ...]:
        """The eight corners: by x, then y, then z."""
        (a, b, c), (x, y, z) = self.low, self.high
        return tuple(product((a, x), (b, y), (c, z)))

    def moved(self, by: Vector) -> Box:
        """The same box somewhere else."""
        return Box(plus(self.low, by), plus(self.high, by))

    def grown(self, by: float | Vector) -> Box:
        """The box with ``by`` more at either side of each axis; less where it is below zero."""
        out = by if isinstance(by, tuple) else (by, by, by)
        return Box(minus(self.low, out), plus(self.high, out))

    def spanning(self, axis: int, low: float | None = None, high: float | None = None) -> Box:
        """The box with other ends along one axis; ``None`` leaves an end where it is."""
        lows, highs = list(self.low), list(self.high)
        lows[axis] = lows[axis] if low is None else low
        highs[axis] = highs[axis] if high is None else high
        return Box((lows[0], lows[1], lows[2]), (highs[0], highs[1], highs[2]))

    def union(self, other: Box) -> Box:
        """The smallest box round both."""
        return Box.of_boxes((self, other))

    def intersection(self, other: Box) -> Box:
        """What two boxes share; flat where they touch, and empty where they lie apart."""
        (a, b, c), (x, y, z) = self.low, other.low
        (d, e, f), (u, v, w) = self.high, other.high
        return Box((max(a, x), max(b, y), max(c, z)), (min(d, u), min(e, v), min(f, w)))

    def overlap(self, other: Box) -> Vector:
        """How far two boxes overlap along each axis; below zero by how far they lie apart."""
        return self.intersection(other).size

    def penetration(self, other: Box) -> float:
        """How deep two boxes reach into each other, which is along the axis where it is least;
        below zero where they lie apart along some axis, by the most that they do."""
        return min(self.overlap(other))

    def intersects(self, other: Box) -> bool:
        """Whether two boxes share more than a touch."""
        return self.penetration(other) > TOUCH

    def contact(self, other: Box) -> Box | None:
        """Where two boxes touch or overlap; None where they don't.

        It needs an extent along at least two axes: at an edge or a corner alone they don't meet.
        """
        shared = self.intersection(other)
        extents = shared.size
        if min(extents) < -TOUCH or sum(extent > TOUCH for extent in extents) < 2:
            return None
        return shared

    def contains(self, other: Box) -> bool:
        """Whether another box lies inside this one or at its sides."""
        return self.contains_point(other.low) and self.contains_point(other.high)

    def contains_point(self, point: Vector) -> bool:
        """Whether a point lies inside the box or at its sides."""
        return all(
            low - TOUCH < at < high + TOUCH
            for low, at, high in zip(self.low, point, self.high, strict=True)
        )
