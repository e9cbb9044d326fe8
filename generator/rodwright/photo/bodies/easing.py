"""Parts as they look when their sharp edges have been eased: the small rounds that catch light.

All lengths in mm, part frame.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

import numpy as np

from rodwright.photo.bodies.outlines import Array, Indices, across, filled, inset, rings_of
from rodwright.photo.bodies.stretches import Stretch, stretches
from rodwright.pictures.triangles import Mesh, merged
from rodwright.solids.meshes import facets_of
from rodwright.unit import ShapeKey

Side = tuple[int, int]
"""A side of a triangle: where it starts and ends."""

_SHARP = np.cos(np.radians(25.0))
"""Edges that turn less than this are smooth, or are facets of a round."""
_FLAT = 1e-4
"""How far (mm) the points of a flat face may lie off its plane."""
_SAME = 6
"""Digits, of mm, in which points that are one agree."""
_SMALL = 15.0
"""Most extent (mm) of what has one colour."""
_ENDS = 1.5
"""At the ends of an edge its round goes over into the corner's, along so many widths of it."""
_LEAST = 0.5
"""Cosine of the most that a flat face's normal turns at its outline where more than two faces meet:
a box's corner turns it to 0.58."""


@dataclass(frozen=True, slots=True, eq=False)
class Patch:
    """A stretch of a part's surface: ``points`` and ``normals`` (n, 3), ``triangles`` (m, 3) that
    count points from 0, anticlockwise seen from outside; ``flat`` is the normal of a flat face
    without its eased edges (None: it is round)."""

    points: Array
    normals: Array
    triangles: Indices
    flat: Array | None

    @property
    def is_small(self) -> bool:
        """Whether it is too small for wood to vary on it: the walls and floors of small holes."""
        return bool(np.ptp(self.points, axis=0).max() < _SMALL)


@lru_cache(maxsize=4096)
def eased(shape: ShapeKey, width: float, flush: tuple[Stretch, ...] = ()) -> tuple[Patch, ...]:
    """The surface of a shape's solid, a patch a face, sharp edges between flat faces rounded.

    ``width`` is how far a round goes into each face; less where there is no room for it.  Edges
    stay sharp along the stretches where they are ``flush`` with another part.  Patches meet in the
    very same points, so that the surface has no gaps.

    Raises:
        ValueError: the shape's workings leave no single solid.
    """
    easing = _Easing(shape)
    easing.ease(width, flush)
    return tuple(easing.patches())


@lru_cache(maxsize=4096)
def arrises_of(shape: ShapeKey) -> tuple[Array, Array]:
    """The sharp edges between flat faces that stand out: their ends (n, 2, 3) and the normals of
    their faces (n, 2, 3).

    Raises:
        ValueError: the shape's workings leave no single solid.
    """
    return _Easing(shape).arrises()


def whole(patches: Sequence[Patch]) -> Mesh:
    """Patches as one."""
    return merged(Mesh(each.points, each.normals, each.triangles) for each in patches)


@dataclass(slots=True, eq=False)
class _Face:
    triangles: Indices
    normals: Array
    flat: Array | None
    sides: list[Side]
    sides_of: dict[Side, int]
    width: float = 0.0
    inner: list[Array] | None = None


@dataclass(frozen=True, slots=True)
class _Edge:
    """Where two faces meet: the faces, and the cosine of its turn."""

    faces: tuple[int, int]
    turn: float


class _Easing:
    """One solid on its way to patches."""

    def __init__(self, shape: ShapeKey) -> None:
        found = facets_of(shape)
        every = np.concatenate([points for points, _ in found])
        _, first, number = np.unique(
            np.round(every, _SAME), axis=0, return_index=True, return_inverse=True
        )
        self.width = 0.0
        self.points: list[Array] = list(every[first])
        self.faces: list[_Face] = []
        before = 0
        for points, facets in found:
            ids = number.reshape(-1)[before : before + len(points)]
            before += len(points)
            self.faces.append(_face(every[first], ids[facets]))
        self.of = {side: at for at, face in enumerate(self.faces) for side in face.sides}
        self.edges = dict(self._edges())

    def arrises(self) -> tuple[Array, Array]:
        sides = [
            (side, edge.faces)
            for side, edge in self.edges.items()
            if side[0] < side[1] and self._both_flat(edge)
        ]
        ends = [[self.points[point] for point in side] for side, _ in sides]
        normals = [[self._normal(at, (0, 0)) for at in faces] for _, faces in sides]
        return np.array(ends).reshape(-1, 2, 3), np.array(normals).reshape(-1, 2, 3)

    def ease(self, width: float, flush: Sequence[Stretch]) -> None:
        self.width = width
        self._divide(np.array(flush).reshape(-1, 2, 3))
        self.sharp_at = self._gathered()
        self._draw_inwards()

    def _edges(self) -> Iterator[tuple[Side, _Edge]]:
        """Sharp edges that stand out, either way round."""
        sides = [side for side in self.of if side[::-1] in self.of]
        if not sides:
            return
        ends = np.array([[self.points[point] for point in side] for side in sides])
        one = np.array([self._normal(self.of[side], side) for side in sides])
        two = np.array([self._normal(self.of[side[::-1]], side[::-1]) for side in sides])
        turns = (one * two).sum(axis=1)
        out = (np.cross(one, two) * (ends[:, 1] - ends[:, 0])).sum(axis=1)
        for number in np.flatnonzero((turns < _SHARP) & (out > 0.0)):
            a, b = sides[number]
            yield (a, b), _Edge((self.of[a, b], self.of[b, a]), float(turns[number]))

    def _normal(self, at: int, side: Side) -> Array:
        face = self.faces[at]
        return face.normals[face.sides_of[side]] if face.flat is None else face.flat

    def _both_flat(self, edge: _Edge) -> bool:
        return all(self.faces[at].flat is not None for at in edge.faces)

    def _divide(self, flush: Array) -> None:
        """Give the edges that are eased points near their ends, so that what the corners do to
        them doesn't reach along all of them; and where they become flush, and sharp."""
        for (a, b), edge in [each for each in self.edges.items() if each[0][0] < each[0][1]]:
            if not self._both_flat(edge):
                continue
            start, along = self.points[a], self.points[b] - self.points[a]
            length, reach = float(np.linalg.norm(along)), _ENDS * self.width
            marks, sharp = [0.0], []
            for near, far, is_flush in stretches(start, along / length, length, flush, 2 * reach):
                inner = [near + reach, far - reach] if far - near >= 3 * reach else []
                marks += [*inner, far]
                sharp += [is_flush] * (len(inner) + 1)
            chain = [a, *range(len(self.points), len(self.points) + len(marks) - 2), b]
            self.points += [start + along * mark / length for mark in marks[1:-1]]
            for way, at, flags in (
                (chain, edge.faces[0], sharp),
                (chain[::-1], edge.faces[1], sharp[::-1]),
            ):
                self._replace(way, at, _Edge((at, sum(edge.faces) - at), edge.turn), flags)

    def _replace(self, way: list[int], at: int, edge: _Edge, sharp: Sequence[bool]) -> None:
        sides = list(pairwise(way))
        own, whole = self.faces[at].sides, (way[0], way[-1])
        place = own.index(whole)
        own[place : place + 1] = sides
        del self.of[whole], self.edges[whole]
        self.of |= dict.fromkeys(sides, at)
        self.edges |= {
            side: edge for side, is_sharp in zip(sides, sharp, strict=True) if not is_sharp
        }

    def _gathered(self) -> dict[int, list[Side]]:
        """The sides that lie between two faces, by the points at their ends."""
        found: dict[int, list[Side]] = {}
        for side in self.of:
            for point in side:
                found.setdefault(point, []).append(side)
        return found

    def _draw_inwards(self) -> None:
        for face in self.faces:
            if face.flat is None or not any(side in self.edges for side in face.sides):
                continue
            rings = self._rings(face)
            for width in (self.width, self.width / 2, self.width / 4):
                face.inner = inset(rings, width)
                if face.inner is not None:
                    face.width = width
                    break

    def _rings(self, face: _Face) -> list[Array]:
        assert face.flat is not None
        frame = np.column_stack(across(face.flat))
        rings = rings_of(face.sides)
        assert rings is not None
        return [np.array([self.points[each] for each in ring]) @ frame for ring in rings]

    def patches(self) -> Iterator[Patch]:
        moved = [self._moved(point) for point in range(len(self.points))]
        for at, face in enumerate(self.faces):
            if face.flat is None:
                yield self._round(at)
            elif face.inner is None:
                yield self._plain(face, face.flat, moved)
            else:
                yield self._eased(at, face.flat, face.inner, moved)

    def _moved(self, point: int) -> Array:
        """Where a point of an edge comes to lie: on a ball that touches all the faces there."""
        here = self.points[point]
        sides = self.sharp_at.get(point, [])
        edges = [self.edges.get(side) for side in sides]
        if not sides or not all(edge is not None and self._both_flat(edge) for edge in edges):
            return here
        faces = {at for edge in edges if edge is not None for at in edge.faces}
        least = min(edge.turn for edge in edges if edge is not None)
        # Past a right angle a round of the same radius would reach farther into the faces.
        radius = min(self.faces[at].width for at in faces) * min(
            1.0, np.sqrt((1 + least) / (1 - least))
        )
        if radius <= 0.0:
            return here
        normals = np.array([self.faces[at].flat for at in sorted(faces)])
        centre, *_ = np.linalg.lstsq(normals, np.full(len(normals), -radius), rcond=None)
        made: Array = here + centre * (1.0 - radius / np.linalg.norm(centre))
        return made

    def _round(self, at: int) -> Patch:
        """A face that is round: normals smooth within it, and those of flat ones it runs into."""
        face = self.faces[at]
        used, triangles = np.unique(face.triangles, return_inverse=True)
        triangles = triangles.reshape(-1, 3)
        normals = np.zeros((len(used), 3))
        np.add.at(normals, triangles.ravel(), np.repeat(face.normals, 3, axis=0))
        numbers = {int(point): number for number, point in enumerate(used)}
        for a, b in face.sides:
            other = self.of.get((b, a))
            if other is None or (a, b) in self.edges:
                continue
            flat = self.faces[other].flat
            if flat is not None and flat @ self._normal(at, (a, b)) > _SHARP:
                normals[numbers[a]] = normals[numbers[b]] = flat
        return Patch(
            np.array([self.points[point] for point in used]), _unit(normals), triangles, None
        )

    def _plain(self, face: _Face, flat: Array, moved: list[Array]) -> Patch:
        rings = rings_of(face.sides)
        assert rings is not None
        points = np.array([moved[point] for ring in rings for point in ring])
        return Patch(points, np.tile(flat, (len(points), 1)), filled(self._rings(face)), flat)

    def _eased(self, at: int, flat: Array, inner: list[Array], moved: list[Array]) -> Patch:
        """A strip along the outline, whose normals turn, and all that lies within it."""
        face = self.faces[at]
        frame = np.column_stack(across(flat))
        rings = rings_of(face.sides)
        assert rings is not None
        outer = [point for ring in rings for point in ring]
        level = flat * float(flat @ self.points[outer[0]])
        points = np.concatenate(
            [
                np.array([moved[point] for point in outer]),
                np.concatenate(inner) @ frame.T + level,
            ]
        )
        count, strips, before = len(outer), [], 0
        for ring in rings:
            one = np.arange(len(ring)) + before
            two = np.roll(one, -1)
            strips += [
                np.column_stack([one, two, two + count]),
                np.column_stack([one, two + count, one + count]),
            ]
            before += len(ring)
        turned = np.array(
            [
                self._turned(at, flat, point, (ring[number - 1], ring[(number + 1) % len(ring)]))
                for ring in rings
                for number, point in enumerate(ring)
            ]
        )
        normals = np.concatenate([turned, np.tile(flat, (count, 1))])
        return Patch(points, normals, np.concatenate([*strips, filled(inner) + count]), flat)

    def _turned(self, at: int, flat: Array, point: int, beside: tuple[int, int]) -> Array:
        """The normal of a flat face at a point of its outline, between its own and those of the
        faces that meet it there at sharp edges."""
        others: dict[int, Array] = {}
        for side in ((beside[0], point), (point, beside[1])):
            edge = self.edges.get(side)
            if edge is not None:
                other = sum(edge.faces) - at
                others[other] = others.get(other, 0.0) + self._normal(other, side[::-1])
        if not others:
            return flat
        beyond = sum((_length_one(each) for each in others.values()), np.zeros(3))
        made = _length_one(flat + beyond)
        # Several faces beyond together mustn't turn it away from its own.
        return made if made @ flat > _LEAST else _length_one(flat + _length_one(beyond))


def _face(points: Array, triangles: Indices) -> _Face:
    corners = points[triangles]
    areas = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    whole = areas.sum(axis=0)
    sides_of = {
        (a, b): number
        for number, (one, two, three) in enumerate(triangles.tolist())
        for a, b in ((one, two), (two, three), (three, one))
    }
    sides = [(a, b) for a, b in sorted(sides_of) if (b, a) not in sides_of]
    flat = None
    if np.linalg.norm(whole) > 0.999 * np.linalg.norm(areas, axis=1).sum():
        normal = whole / np.linalg.norm(whole)
        off = (points[triangles].reshape(-1, 3) - points[triangles[0, 0]]) @ normal
        if np.abs(off).max() < _FLAT and rings_of(sides) is not None:
            flat = normal
    return _Face(triangles, _unit(areas), flat, sides, sides_of)


def _length_one(vector: Array) -> Array:
    made: Array = vector / max(float(np.linalg.norm(vector)), 1e-30)
    return made


def _unit(vectors: Array) -> Array:
    made: Array = vectors / np.maximum(np.linalg.norm(vectors, axis=1, keepdims=True), 1e-30)
    return made
