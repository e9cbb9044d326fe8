"""The opening that a unit stands in, as measured: reveals, rear wall, the wall round it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from rodwright.geometry.vectors import Vector
from rodwright.photo.planes import Polygon
from rodwright.unit import EdgeLine, OpeningPlane, Unit

Outline = tuple[tuple[float, float], ...]
"""Points (x, z) of a line, mm."""
_DEEPER = 5.0
"""How far behind the unit the rear wall is put where the depth wasn't read, mm (a choice)."""


@dataclass(frozen=True, slots=True)
class Recess:
    """An opening's four edges at its ``front`` and at its ``rear`` (y), mm, unit frame.

    Each edge has the same number of points at both; left and right edges go from the floor up, the
    top from the left to the right.
    """

    front: float
    rear: float
    left: tuple[Outline, Outline]
    right: tuple[Outline, Outline]
    top: tuple[Outline, Outline]

    @property
    def highest(self) -> float:
        """How high its top is at the front, at the most."""
        return max(z for _, z in self.top[0])

    @property
    def reach(self) -> tuple[float, float]:
        """The x of its left and right edge at the foot of its front."""
        return self.left[0][0][0], self.right[0][0][0]

    def inside(self) -> Iterator[Polygon]:
        """Reveals, underside of the top and rear wall."""
        for edge, turned in ((self.left, False), (self.right, True), (self.top, False)):
            yield from _between(edge, self.front, self.rear, turned)
        ring = [*self.right[1], *reversed(self.top[1]), *reversed(self.left[1])]
        middle = self._at(
            (sum(x for x, _ in ring) / len(ring), sum(z for _, z in ring) / len(ring))
        )
        for number, corner in enumerate(ring):
            yield (middle, self._at(ring[number - 1]), self._at(corner))

    def _at(self, point: tuple[float, float]) -> Vector:
        return (point[0], self.rear, point[1])

    def wall_round(self, left: float, right: float, ceiling: float) -> Iterator[Polygon]:
        """The wall beside and above it, in the plane of its front, from ``left`` to ``right`` (x)
        and up to the ``ceiling``."""
        y = self.front
        for edge, end in ((self.left[0], left), (self.right[0], right)):
            for (x, z), (u, w) in pairwise(edge):
                corners = ((end, y, z), (x, y, z), (u, y, w), (end, y, w))
                yield corners if end == left else corners[::-1]
        top = self.top[0]
        over = ((left, top[0][1]), *top, (right, top[-1][1]))
        for (x, z), (u, w) in pairwise(over):
            if max(z, w) < ceiling:
                yield ((x, y, z), (u, y, w), (u, y, ceiling), (x, y, ceiling))


def recess_of(unit: Unit, foot: float) -> Recess | None:
    """The opening of a unit down to the floor at ``foot`` (z); None where it has none.

    An edge that was read at one plane only is the same at the other.
    """
    opening = unit.opening
    if opening is None:
        return None
    low, high = unit.envelope.low, unit.envelope.high
    front = low[1] if opening.front is None else opening.front
    rear = max(front + opening.depth if opening.depth else high[1] + _DEEPER, high[1])
    if opening.shape is None:
        spare = (opening.width - unit.size[0]) / 2
        near = far = OpeningPlane.straight(
            (
                (low[0] - spare, 0.0),
                (high[0] + spare, 0.0),
                (high[0] + spare, opening.height),
                (low[0] - spare, opening.height),
            )
        )
    else:
        near = opening.shape.front
        far = opening.shape.rear or near
    left, right, top = (
        _alike(near.line(side), far.line(side), upright=side != "top", foot=foot)
        for side in ("left", "right", "top")
    )
    return Recess(front, rear, left, right, top)


def _alike(near: EdgeLine, far: EdgeLine, *, upright: bool, foot: float) -> tuple[Outline, Outline]:
    """The line of an edge at the front and at the rear, by as many points."""
    shares = sorted({share for line in (near, far) for share in _shares(line)})
    found = []
    for line in (near, far):
        own = _shares(line)
        along = np.interp(shares, own, [point.along for point in line]).tolist()
        across = np.interp(shares, own, [point.across for point in line]).tolist()
        points = list(
            zip(across, along, strict=True) if upright else zip(along, across, strict=True)
        )
        if upright:
            points[0] = (points[0][0], foot)
        found.append(tuple(points))
    return found[0], found[1]


def _shares(line: EdgeLine) -> list[float]:
    first, last = line[0].along, line[-1].along
    return [round((point.along - first) / (last - first), 6) for point in line]


def _between(
    edge: tuple[Outline, Outline], front: float, rear: float, turned: bool
) -> Iterator[Polygon]:
    near, far = edge
    for number in range(len(near) - 1):
        (a, c), (x, z) = near[number : number + 2]
        (i, k), (u, w) = far[number : number + 2]
        corners = ((a, front, c), (i, rear, k), (u, rear, w), (x, front, z))
        yield corners[::-1] if turned else corners
