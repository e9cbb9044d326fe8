"""Volume, centre of mass and weight by arithmetic, from blanks and workings alone.

What the box workings leave is a set of boxes (by dividing the blank along every box's
faces); mitres bound it along its length by planes.  Both are integrated exactly.  Each
curved working (an easing, a hole) then takes away the integral, over its cross-section,
of the length of the line through the remaining wood: in closed form where it lies in whole
wood, else by Gauss quadrature between the lines at which something else begins or ends.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations, pairwise

import numpy as np
from numpy.typing import NDArray

from rodwright.parts import (
    Box,
    Easing,
    Hole,
    Mitre,
    Part,
    ShapeKey,
    Unit,
    Vector,
    Working,
)

Array = NDArray[np.float64]
Interval = tuple[float, float]

_NODES, _WEIGHTS = np.polynomial.legendre.leggauss(8)
_CORNER_CENTRE = (10 - 3 * math.pi) / (12 - 3 * math.pi)
"""Centre of what lies outside a quarter circle of radius 1, from either tangent: the square's
first moment less the quarter's, whose centre is 4 / (3 pi) from either radius."""


@dataclass(frozen=True, slots=True)
class Mass:
    """Volume in mm3 and centre of volume in the part frame, mm."""

    volume: float
    centroid: Vector


@lru_cache(maxsize=4096)
def mass_of(shape: ShapeKey) -> Mass:
    """Volume and centroid of a shape.

    Exact for box workings and mitres, and to rounding with curved workings that cross
    them; within about a hundred-thousandth of the volume where curved workings cross each
    other.

    Raises:
        ValueError: the workings leave nothing.
    """
    size, workings = shape
    wood = _Wood(size, workings)
    moments = wood.moments()
    tools: list[_Tool] = []
    for working in workings:
        if isinstance(working, Easing | Hole):
            tool = _Tool(size, working)
            moments -= tool.taken(wood, tools)
            tools.append(tool)
    if moments[0] <= 0:
        raise ValueError("the workings leave nothing of the blank")
    x, y, z = (float(moment / moments[0]) for moment in moments[1:])
    return Mass(float(moments[0]), (x, y, z))


def weight(part: Part) -> float:
    """Weight of a part in kg."""
    return mass_of(part.shape).volume * part.blank.stock.density * 1e-9


def unit_weight(unit: Unit) -> float:
    """Weight of a unit in kg: the sum of its parts'."""
    return math.fsum(weight(part) for part in unit.parts)


def centre_of_mass(unit: Unit) -> Vector:
    """Centre of mass of a unit, unit frame, mm."""
    weights = np.array([weight(part) for part in unit.parts])
    centres = np.array(
        [part.placement.to_unit(mass_of(part.shape).centroid) for part in unit.parts]
    )
    x, y, z = (weights @ centres / weights.sum()).tolist()
    return (x, y, z)


def _distinct(values: Array) -> Array:
    """Sorted values, each once (numpy's own loads its masked arrays, which takes longer)."""
    return np.array(sorted(set(values.tolist())))


class _Wood:
    """What box workings and mitres leave: boxes of a grid, cut off by planes."""

    def __init__(self, size: Vector, workings: Sequence[Working]) -> None:
        boxes = [
            working.removal(size)
            for working in workings
            if not isinstance(working, Mitre | Easing | Hole)
        ]
        self.planes = [working.plane(size) for working in workings if isinstance(working, Mitre)]
        self.grid = [
            _distinct(
                np.clip([0.0, size[i], *(edge[i] for b in boxes for edge in (b.low, b.high))],
                        0.0, size[i])
            )
            for i in range(3)
        ]  # fmt: skip
        middles = [(edges[1:] + edges[:-1]) / 2 for edges in self.grid]
        self.filled = np.ones([len(each) for each in middles], dtype=bool)
        for box in boxes:
            inside = [
                (middle > low) & (middle < high)
                for middle, low, high in zip(middles, box.low, box.high, strict=True)
            ]
            self.filled[np.ix_(*inside)] = False

    def moments(self) -> Array:
        """Volume and first moments about the part frame's planes.

        Between the lines where the ends of a run in wood change over, the integrand is at
        most cubic, over z and then over y, so that two points of each stretch are exact.
        """
        if not self.planes:
            return self._box_moments()
        total = np.zeros(4)
        ends = self._ends(2, self._lines(2, self.grid[0]))
        for y, y_share in _two_points(self._lines(1, np.append(self.grid[0], ends))):
            levels = np.append(self.grid[0], self._ends(1, np.array([y])))
            for z, z_share in _two_points(self._lines(2, levels)):
                for low, high in self.along(0, (0.0, y, z)):
                    volume = (high - low) * y_share * z_share
                    total += (volume, volume * (low + high) / 2, volume * y, volume * z)
        return total

    def _box_moments(self) -> Array:
        """Volume and first moments of the filled boxes of the grid, with no mitre at them."""
        lengths = [np.diff(edges) for edges in self.grid]
        firsts = [np.diff(edges**2) / 2 for edges in self.grid]
        weighted = [lengths] + [[*lengths[:i], firsts[i], *lengths[i + 1 :]] for i in range(3)]
        return np.array([x @ (self.filled @ z) @ y for x, y, z in weighted])

    def _slopes(self, axis: int) -> list[Interval]:
        """The mitres that slope along an axis, as x = at + slope * (place along the axis)."""
        found = []
        for point, normal in self.planes:
            if abs(normal[axis]) > 1e-12:
                slope = -normal[axis] / normal[0]
                found.append((point[0] - slope * point[axis], slope))
        return found

    def _ends(self, axis: int, lines: Array) -> Array:
        """Where along the length the mitres that slope along an axis cut, at these lines."""
        return np.array([at + slope * lines for at, slope in self._slopes(axis)]).ravel()

    def _lines(self, axis: int, levels: Array) -> Array:
        """Grid lines of an axis, with those where a mitre passes a level of x or another mitre."""
        slopes = self._slopes(axis)
        places = [self.grid[axis], *((levels - at) / slope for at, slope in slopes)]
        for (at, slope), (other_at, other) in combinations(slopes, 2):
            if slope != other:
                places.append(np.array([(other_at - at) / (slope - other)]))
        lines = np.concatenate(places)
        return _distinct(lines[(lines >= 0) & (lines <= self.grid[axis][-1])])

    def along(self, axis: int, point: Vector) -> list[Interval]:
        """Where the line through a point parallel to an axis runs in wood."""
        if any(not 0 <= point[i] <= self.grid[i][-1] for i in range(3) if i != axis):
            return []
        index: list[int | slice] = [
            int(np.clip(np.searchsorted(self.grid[i], point[i]) - 1, 0, self.filled.shape[i] - 1))
            for i in range(3)
        ]
        index[axis] = slice(None)
        low, high = -math.inf, math.inf
        for origin, normal in self.planes:
            rest = sum((origin[i] - point[i]) * normal[i] for i in range(3) if i != axis)
            if abs(normal[axis]) < 1e-12:
                if rest < 0:
                    return []
                continue
            at = origin[axis] + rest / normal[axis]
            low, high = (low, min(high, at)) if normal[axis] > 0 else (max(low, at), high)
        edges, column = self.grid[axis], self.filled[tuple(index)]
        return [
            (max(low, start), min(high, stop))
            for start, stop, filled in zip(
                edges[:-1].tolist(), edges[1:].tolist(), column.tolist(), strict=True
            )
            if filled and min(high, stop) > max(low, start)
        ]

    def whole(self, box: Box) -> bool:
        """Whether a box lies in wood that no working touches."""
        index = []
        for i in range(3):
            if box.low[i] < -1e-9 or box.high[i] > self.grid[i][-1] + 1e-9:
                return False
            first = int(np.searchsorted(self.grid[i], box.low[i] + 1e-9)) - 1
            last = int(np.searchsorted(self.grid[i], box.high[i] - 1e-9))
            index.append(slice(max(first, 0), last))
        if not self.filled[tuple(index)].all():
            return False
        corners = [
            (x, y, z)
            for x in (box.low[0], box.high[0])
            for y in (box.low[1], box.high[1])
            for z in (box.low[2], box.high[2])
        ]
        return all(
            sum((corner[i] - point[i]) * normal[i] for i in range(3)) <= 0
            for point, normal in self.planes
            for corner in corners
        )


class _Tool:
    """The prism that a curved working takes away: a disc or an eased corner, along an axis."""

    def __init__(self, size: Vector, working: Easing | Hole) -> None:
        self.disc = isinstance(working, Hole)
        self.mirror = [(1.0, 0.0)] * 3  # coordinate = sign * inward + offset
        low, high = [0.0, 0.0, 0.0], list(size)
        if isinstance(working, Hole):
            self.axis, self.radius = working.surface.axis, working.diameter / 2
            depth = size[self.axis] if working.depth is None else working.depth
            if working.surface.at_high:
                low[self.axis] = size[self.axis] - depth
            else:
                high[self.axis] = depth
            self.across = [i for i in range(3) if i != self.axis]
            self.centre = dict(zip(self.across, working.position, strict=True))
            for i in self.across:
                low[i], high[i] = self.centre[i] - self.radius, self.centre[i] + self.radius
        else:
            self.axis = 3 - working.surface.axis - working.edge.axis
            self.radius = working.radius
            low[self.axis] = working.start
            high[self.axis] = size[self.axis] if working.stop is None else working.stop
            self.across = [working.surface.axis, working.edge.axis]
            for surface in (working.surface, working.edge):
                i = surface.axis
                if surface.at_high:
                    self.mirror[i] = (-1.0, size[i])
                    low[i] = size[i] - self.radius
                else:
                    high[i] = self.radius
        self.box = Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))

    def taken(self, wood: _Wood, earlier: Sequence[_Tool]) -> Array:
        """Moments of what this tool takes from wood that earlier tools have left."""
        near = [tool for tool in earlier if _meet(self.box, tool.box)]
        if not near and wood.whole(self.box):
            return self._moments()
        total = np.zeros(4)
        for point, area in self._points(wood, near):
            for start, stop in self._runs(wood, near, point):
                middle = list(point)
                middle[self.axis] = (start + stop) / 2
                total += area * (stop - start) * np.array([1.0, *middle])
        return total

    def _moments(self) -> Array:
        """Moments of the whole prism: a disc, or the corner outside a quarter circle."""
        middle = list(self.box.centre)
        area = math.pi * self.radius**2
        if not self.disc:
            area = (1 - math.pi / 4) * self.radius**2
            for i in self.across:
                sign, offset = self.mirror[i]
                middle[i] = sign * self.radius * _CORNER_CENTRE + offset
        length = self.box.high[self.axis] - self.box.low[self.axis]
        return area * length * np.array([1.0, *middle])

    def _runs(self, wood: _Wood, near: Sequence[_Tool], point: Vector) -> Iterable[Interval]:
        low, high = self.box.low[self.axis], self.box.high[self.axis]
        runs = [
            (max(a, low), min(b, high))
            for a, b in wood.along(self.axis, point)
            if b > low and a < high
        ]
        for tool in near:
            runs = _without(runs, tool.interval(self.axis, point))
        return [(a, b) for a, b in runs if b > a]

    def _points(self, wood: _Wood, near: Sequence[_Tool]) -> Iterable[tuple[Vector, float]]:
        """Gauss points over the cross-section, each with its share of the area.

        First by the angle at which the round is reached, which leaves no square root, then
        straight across; each between the lines where something else begins or ends.
        """
        first, second = self.across
        first_lines, second_lines, slants = self._breaks(wood, near)
        sign = self.mirror[first][0]
        middle, whole_turn = self._round_centre(first), math.pi if self.disc else math.pi / 2
        cosines = np.clip(sign * (middle - first_lines) / self.radius, -1.0, 1.0)
        for angle, turn in _gauss(np.clip(np.arccos(cosines), 0.0, whole_turn)):
            point = [0.0, 0.0, 0.0]
            point[first] = middle - sign * self.radius * math.cos(angle)
            reach = self._reach(second, (point[0], point[1], point[2]))
            others = [at + slope * point[first] for at, slope in slants]
            for tool in near:
                if tool.axis == self.axis and (
                    tool.box.low[first] < point[first] < tool.box.high[first]
                ):
                    others += tool._reach(second, (point[0], point[1], point[2]))
            stretch = np.clip(np.concatenate([second_lines, others, reach]), *reach)
            for place, width in _gauss(stretch):
                point[second] = place
                area = turn * width * self.radius * math.sin(angle)
                yield (point[0], point[1], point[2]), area

    def _breaks(
        self, wood: _Wood, near: Sequence[_Tool]
    ) -> tuple[Array, Array, list[tuple[float, float]]]:
        """Where something begins or ends in the cross-section.

        Lines of the first and of the second axis across, and mitres that slant over both,
        as second = at + slope * first.
        """
        first, second = self.across
        lines = {i: [self.box.low[i], self.box.high[i], *wood.grid[i].tolist()] for i in range(3)}
        for tool in near:
            for i in range(3):
                lines[i] += (tool.box.low[i], tool.box.high[i])
        slants = []
        for point, normal in wood.planes:
            if abs(normal[first]) > 1e-12 and abs(normal[second]) > 1e-12:
                slope = -normal[first] / normal[second]
                slants.append((point[second] - slope * point[first], slope))
                continue
            across = first if abs(normal[first]) > 1e-12 else second
            slope = -normal[self.axis] / normal[across]
            lines[across] += [
                point[across] + slope * (level - point[self.axis]) for level in lines[self.axis]
            ]
        firsts, seconds = np.array(lines[first]), np.array(lines[second])
        centre = np.array([self._round_centre(first), self._round_centre(second)])
        # The first axis also breaks where those of the second cross the round, or each other.
        half = np.sqrt(np.maximum(self.radius**2 - (seconds - centre[1]) ** 2, 0.0))
        breaks = [firsts, centre[0] - half, centre[0] + half]
        for at, slope in slants:
            off = at + slope * centre[0] - centre[1]
            square = self.radius**2 * (1 + slope**2) - off**2
            root = math.sqrt(max(square, 0.0))
            chord = (np.array([-root, root]) - slope * off) / (1 + slope**2)
            breaks += [(seconds - at) / slope, centre[0] + chord]
        return np.concatenate(breaks), seconds, slants

    def _round_centre(self, axis: int) -> float:
        """Centre of the hole, or of the circle that an easing follows."""
        if self.disc:
            return self.centre[axis]
        sign, offset = self.mirror[axis]
        return sign * self.radius + offset

    def interval(self, axis: int, point: Vector) -> Interval | None:
        """Where the line through a point parallel to an axis runs in this tool."""
        box = self.box
        if any(not box.low[i] < point[i] < box.high[i] for i in range(3) if i != axis):
            return None
        if axis == self.axis:
            inside = self._reach(self.across[0], point)
            if not inside[0] < point[self.across[0]] < inside[1]:
                return None
            return box.low[axis], box.high[axis]
        return self._reach(axis, point)

    def _reach(self, axis: int, point: Vector) -> Interval:
        """Extent along one of the two axes across, at the point's place along the other."""
        other = self.across[1] if axis == self.across[0] else self.across[0]
        if self.disc:
            square = self.radius**2 - (point[other] - self.centre[other]) ** 2
            half = math.sqrt(max(square, 0.0))
            return self.centre[axis] - half, self.centre[axis] + half
        sign, offset = self.mirror[other]
        inward = self.radius - sign * (point[other] - offset)
        extent = self.radius - math.sqrt(max(self.radius**2 - inward**2, 0.0))
        sign, offset = self.mirror[axis]
        return (offset, offset + extent) if sign > 0 else (offset - extent, offset)


def _two_points(lines: Array) -> Iterable[Interval]:
    """Places of the two-point Gauss rule between neighbouring lines, each with its share."""
    for low, high in pairwise(lines.tolist()):
        half = (high - low) / 2
        yield low + half * (1 - 1 / math.sqrt(3)), half
        yield low + half * (1 + 1 / math.sqrt(3)), half


def _gauss(lines: Array) -> Iterable[Interval]:
    """Places of the Gauss rule between neighbouring lines, each with its share."""
    for low, high in pairwise(_distinct(lines).tolist()):
        half = (high - low) / 2
        if half > 1e-12:
            for node, share in zip(_NODES.tolist(), _WEIGHTS.tolist(), strict=True):
                yield low + half * (1 + node), half * share


def _meet(first: Box, second: Box) -> bool:
    return all(first.low[i] < second.high[i] and second.low[i] < first.high[i] for i in range(3))


def _without(runs: Sequence[Interval], gone: Interval | None) -> list[Interval]:
    if gone is None:
        return list(runs)
    left = [(a, min(b, gone[0])) for a, b in runs] + [(max(a, gone[1]), b) for a, b in runs]
    return [(a, b) for a, b in left if b > a]
