"""A search for a path: a body of convex pieces, shifted and turned in a plane between walls.

Exact cell decomposition, not sampling.  The angles are cut into narrow intervals.  For each,
every piece is replaced by a convex hull that holds it at all angles of the interval (the
positions of its corners at both ends, and where the tangents there meet), and Minkowski sums
with the walls give the places of the body's reference point at which it stands free at every
angle of the interval.  A connected region of such places is a cell; two cells of neighbouring
intervals join where they overlap.  Whatever moves within a cell, and from cell to cell
through an overlap, never touches a wall, so a path found is free throughout, not only at its
stages.  A path that leaves less than :func:`tolerance` all round may be missed.

Millimetres and radians, angles anticlockwise.  T. Lozano-Perez, Spatial planning: a
configuration space approach, IEEE Trans. Computers 32 (1983), is the classic source of the
sums (from memory).
"""

from __future__ import annotations

import heapq
from collections import deque
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import pairwise
from math import cos, degrees, hypot, pi, radians, sin

import numpy as np
import shapely
from numpy.typing import NDArray
from shapely import LineString, MultiPolygon, Point, Polygon, box

Ring = tuple[tuple[float, float], ...]
Points = NDArray[np.float64]

INTERVALS = (2.0, 1.0, 0.5, 0.25)
"""Widths of the intervals tried, in degrees; a finer one only where the coarser finds nothing."""
_GRAZE = 0.01
"""Overlaps of up to this (mm) are touching, so that a body may stand on a floor."""
_SLIVER = 1e-7
_OFF_THE_WALLS = (20.0, 5.0, 1.0, 0.1)


@dataclass(frozen=True, slots=True)
class Pose:
    """Where the body's reference point is, and how far it is turned (rad)."""

    x: float
    y: float
    turn_rad: float


@dataclass(frozen=True, slots=True)
class Wall:
    """A convex obstacle, by the name the maker knows it by."""

    name: str
    ring: Ring


@dataclass(frozen=True, slots=True)
class Scene:
    """What is moved, between what, and from where to where.

    ``pieces`` are convex and given round the reference point, the body unturned.  ``turns``
    are the least and the greatest angle.  ``goal`` is one pose, or a region for the reference
    point at any angle.  ``begins`` gives the region in which a body may begin that reaches so
    far to the right of its reference point, and so far above it.
    """

    pieces: tuple[Ring, ...]
    walls: tuple[Wall, ...]
    room: tuple[float, float, float, float]
    begins: Callable[[float, float], Polygon]
    goal: Pose | Polygon
    turns: tuple[float, float] = (-pi / 2, pi / 2)

    @property
    def reach(self) -> float:
        """The farthest corner from the reference point."""
        return max(hypot(x, y) for piece in self.pieces for x, y in piece)


def tolerance(scene: Scene, finest: float = INTERVALS[-1]) -> float:
    """What the farthest corner moves (mm) while the body turns through ``finest`` degrees.

    A path on which even a body larger by this all round would be free is never missed.
    """
    return scene.reach * radians(finest)


def find_path(scene: Scene, intervals: tuple[float, ...] = INTERVALS) -> tuple[Pose, ...] | None:
    """A free path from a beginning to the goal, or None; between stages both shift and turn
    are even.  The path with the fewest intervals to turn through is taken."""
    for width in intervals:
        path = _Cells(scene, radians(width)).path()
        if path is not None:
            return path
    return None


def placed(scene: Scene, pose: Pose) -> MultiPolygon:
    """The body at a pose."""
    return MultiPolygon(
        [
            Polygon(_turned(np.array(piece), pose.turn_rad) + np.array((pose.x, pose.y)))
            for piece in scene.pieces
        ]
    )


def _turned(points: Points, turn: float) -> Points:
    c, s = cos(turn), sin(turn)
    turned: Points = points @ np.array([[c, s], [-s, c]])
    return turned


@dataclass(frozen=True, slots=True)
class _Cell:
    low: float
    high: float
    free: Polygon


class _Cells:
    """The cells of one cutting of the angles, by interval."""

    def __init__(self, scene: Scene, width: float) -> None:
        self.scene = scene
        self._walls = [np.array(wall.ring) for wall in scene.walls]
        self._pieces = [_shrunk(np.array(piece)) for piece in scene.pieces]
        self.spans = _spans(scene, width)
        self._layers: dict[int, list[_Cell]] = {}

    def layer(self, number: int) -> list[_Cell]:
        """The cells of one interval."""
        if number not in self._layers:
            low, high = self.spans[number]
            self._layers[number] = [_Cell(low, high, free) for free in self._free(low, high)]
        return self._layers[number]

    def _free(self, low: float, high: float) -> list[Polygon]:
        blocked = []
        for piece in self._pieces:
            swept = _swept(piece, low, high)
            for wall in self._walls:
                sums = (wall[:, None, :] - swept[None, :, :]).reshape(-1, 2)
                blocked.append(shapely.convex_hull(shapely.multipoints(sums)))
        free = shapely.difference(box(*self.scene.room), shapely.union_all(blocked))
        return [part for part in _polygons(free) if part.area > _SLIVER]

    def begin(self, cell: _Cell) -> Polygon | None:
        """Where in a cell the body may begin."""
        corners = np.concatenate([_swept(piece, cell.low, cell.high) for piece in self._pieces])
        right, above = corners.max(axis=0).tolist()
        found = shapely.intersection(cell.free, self.scene.begins(right, above))
        return found if found.area > _SLIVER else None

    def goals(self) -> Iterator[tuple[int, int, Point]]:
        """The cells that hold the goal, and where in them it is."""
        goal = self.scene.goal
        for number, (low, high) in enumerate(self.spans):
            if isinstance(goal, Pose):
                if low == high == goal.turn_rad:
                    at = Point(goal.x, goal.y)
                    for index, cell in enumerate(self.layer(number)):
                        if cell.free.distance(at) < _GRAZE / 10:
                            yield number, index, at
            else:
                for index, cell in enumerate(self.layer(number)):
                    inside = shapely.intersection(cell.free, goal)
                    if inside.area > _SLIVER:
                        yield number, index, shapely.point_on_surface(inside)

    def path(self) -> tuple[Pose, ...] | None:
        """Breadth first from the goal to the first cell in which the body may begin."""
        came: dict[tuple[int, int], tuple[int, int] | None] = {}
        at: dict[tuple[int, int], Point] = {}
        queue: deque[tuple[int, int]] = deque()
        for number, index, point in self.goals():
            came[number, index], at[number, index] = None, point
            queue.append((number, index))
        while queue:
            key = queue.popleft()
            cell = self.layer(key[0])[key[1]]
            begin = self.begin(cell)
            if begin is not None:
                chain = [key]
                while (before := came[chain[-1]]) is not None:
                    chain.append(before)
                return self._poses(chain[::-1], at[chain[-1]], begin)
            for number in (key[0] - 1, key[0] + 1):
                if not 0 <= number < len(self.spans):
                    continue
                for index, other in enumerate(self.layer(number)):
                    if (number, index) not in came and _overlap(cell, other) is not None:
                        came[number, index] = key
                        queue.append((number, index))
        return None

    def _poses(self, chain: list[tuple[int, int]], goal: Point, begin: Polygon) -> tuple[Pose, ...]:
        cells = [self.layer(number)[index] for number, index in chain]
        turn = (
            self.scene.goal.turn_rad
            if isinstance(self.scene.goal, Pose)
            else (cells[0].low + cells[0].high) / 2
        )
        poses = [Pose(goal.x, goal.y, turn)]
        for cell, other in pairwise(cells):
            shared = _overlap(cell, other)
            assert shared is not None
            edge = cell.high if other.low >= cell.high else cell.low
            _go(poses, cell, shared, edge)
        _go(poses, cells[-1], begin, poses[-1].turn_rad)
        return tuple(reversed(poses))


def _go(poses: list[Pose], cell: _Cell, target: Polygon, turn: float) -> None:
    """Move on within a cell to the nearest place in ``target``, well off the walls if it can."""
    here = Point(poses[-1].x, poses[-1].y)
    room = next((inner for off in _OFF_THE_WALLS if (inner := target.buffer(-off)).area), target)
    there = shapely.get_point(shapely.shortest_line(here, room), 1)
    points = _within(cell.free, here, there)
    before = poses[-1].turn_rad
    poses += [Pose(x, y, before) for x, y in points[1:-1]]
    poses.append(Pose(there.x, there.y, turn))


def _within(free: Polygon, here: Point, there: Point) -> list[tuple[float, float]]:
    """The shortest way between two places of a region: straight, or by its corners."""
    roomy = free.buffer(1e-4)
    shapely.prepare(roomy)
    ends = [(here.x, here.y), (there.x, there.y)]
    if roomy.covers(LineString(ends)):
        return ends
    corners = [*ends, *free.exterior.coords[:-1]]
    for hole in free.interiors:
        corners += hole.coords[:-1]
    reached = {0: 0.0}
    came: dict[int, int] = {}
    heap = [(0.0, 0)]
    while heap:
        length, number = heapq.heappop(heap)
        if number == 1:
            break
        if length > reached[number]:
            continue
        for other, corner in enumerate(corners):
            total = length + hypot(corner[0] - corners[number][0], corner[1] - corners[number][1])
            if total < reached.get(other, float("inf")) and roomy.covers(
                LineString([corners[number], corner])
            ):
                reached[other], came[other] = total, number
                heapq.heappush(heap, (total, other))
    chain = [1]
    while chain[-1] != 0:
        chain.append(came[chain[-1]])
    return [corners[number] for number in reversed(chain)]


def _overlap(cell: _Cell, other: _Cell) -> Polygon | None:
    shared = shapely.intersection(cell.free, other.free)
    parts = [part for part in _polygons(shared) if part.area > _SLIVER]
    return max(parts, key=lambda part: part.area) if parts else None


def _polygons(shape: shapely.Geometry) -> list[Polygon]:
    return [part for part in shapely.get_parts(shape) if isinstance(part, Polygon)]


def _shrunk(piece: Points) -> Points:
    return np.array(Polygon(piece).buffer(-_GRAZE, join_style="mitre").exterior.coords[:-1])


def _swept(piece: Points, low: float, high: float) -> Points:
    """Corners whose hull holds the piece at every angle from low to high."""
    if low == high:
        return _turned(piece, low)
    half = (high - low) / 2
    tangents = _turned(piece, low + half) / cos(half)
    return np.concatenate([_turned(piece, low), tangents, _turned(piece, high)])


def _spans(scene: Scene, width: float) -> list[tuple[float, float]]:
    """Intervals of the angles, with square angles (and the goal's) as intervals of their own."""
    low, high = scene.turns
    fixed = {low, high} | {turn for turn in (-pi / 2, 0.0, pi / 2) if low <= turn <= high}
    if isinstance(scene.goal, Pose):
        fixed.add(scene.goal.turn_rad)
    spans: list[tuple[float, float]] = []
    ordered = sorted(fixed)
    for a, b in pairwise(ordered):
        spans.append((a, a))
        cuts = np.linspace(a, b, max(1, round(degrees(b - a) / degrees(width))) + 1)
        spans += list(pairwise(cuts.tolist()))
    spans.append((ordered[-1], ordered[-1]))
    return spans
