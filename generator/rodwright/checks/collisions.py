"""Collisions, gaps that are too small, and joints that don't meet, found on meshes.

Broad phase: an R-tree over bounding boxes gives the pairs that come near each other, so
the work grows with the number of neighbours.  Narrow phase: the overlapping body of two
meshes is computed exactly, and so are gaps, by the manifold library that trimesh's own
booleans rest on.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property, partial

import manifold3d
import numpy as np
import trimesh
from numpy.typing import NDArray
from rtree import index

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import named
from rodwright.lengths import format_length
from rodwright.meshes import placed_mesh
from rodwright.parts import JointKind, Part, Unit, Vector

TOUCH = 0.01
"""Overlaps up to this depth (mm) are touching: a hundredth is far below any workshop's reach."""
MEETING = 0.05
"""Parts of a joint this close (mm) meet: tessellated curves may stand off by 0.02 on each side."""
_SHOWN = 0.01
_FARTHEST = 50.0
_HAIR = (0.0021, 0.0017, 0.0013)
_SOURCE = "geometry of the set-out"

Array = NDArray[np.float64]
Pair = tuple[str, str]


@dataclass(frozen=True, slots=True)
class Overlap:
    """How deep two parts reach into each other (mm), and the middle of where they do."""

    depth: float
    place: Vector
    volume: float


class _Body:
    """A part's mesh with what is asked of it again and again."""

    def __init__(self, mesh: trimesh.Trimesh) -> None:
        # On a grid of a hundred-thousandth of a mm, faces that touch coincide.
        self.mesh = trimesh.Trimesh(np.round(mesh.vertices, 5), mesh.faces, process=False)
        self.bounds: Array = np.array(self.mesh.bounds)
        self.volume = float(self.mesh.volume)
        self.is_box = bool(
            abs(self.volume - np.ptp(self.bounds, axis=0).prod()) < 1e-6 * abs(self.volume)
        )

    @cached_property
    def manifold(self) -> manifold3d.Manifold:
        """The same body for exact overlaps and gaps."""
        return manifold3d.Manifold(
            manifold3d.Mesh64(
                np.ascontiguousarray(self.mesh.vertices, dtype=np.float64),
                np.ascontiguousarray(self.mesh.faces, dtype=np.uint64),
            )
        )


def collisions(unit: Unit) -> tuple[Finding, ...]:
    """Findings about pairs of parts, in the order of the unit's parts.

    An overlap deeper than 0.01 mm is an error, joint or not; so is a clearance that isn't
    kept, and a joint whose parts lie more than 0.05 mm apart.  A gap below the unit's
    ``least_gap`` between parts that neither touch nor are joined is a warning.

    Raises:
        ValueError: a part makes no solid.
        KeyError: a joint or clearance names a part that isn't there.
    """
    return check_meshes(unit, {part.ref: placed_mesh(part) for part in unit.parts})


def check_meshes(unit: Unit, meshes: Mapping[str, trimesh.Trimesh]) -> tuple[Finding, ...]:
    """The same on given meshes (by ref, unit frame, mm)."""
    bodies = {ref: _Body(mesh) for ref, mesh in meshes.items()}
    order = {part.ref: number for number, part in enumerate(unit.parts)}
    asked = _clearances(unit, order)
    joined = {
        _pair(joint.first, joint.second, order)
        for joint in unit.joints
        if joint.kind is not JointKind.RESTING
    }
    reach = max([MEETING, unit.least_gap, *asked.values()])
    near = _near(unit, bodies, reach)
    gap_of = partial(_gap, bodies, reach=_FARTHEST + reach)
    found: list[Finding] = []
    for pair in near:
        overlap = _overlap(bodies[pair[0]], bodies[pair[1]])
        least = asked.get(pair, 0.0 if pair in joined else unit.least_gap)
        if overlap is not None:
            found.append(_overlapping(unit, pair, overlap))
        elif pair in joined or least > 0:
            gap, place = gap_of(pair)
            if pair in joined and gap > MEETING:
                found.append(_apart(unit, pair, gap, place))
            elif pair in asked and gap < least - TOUCH:
                found.append(_too_close(unit, pair, gap, least, place, Severity.ERROR))
            elif pair not in joined and pair not in asked and TOUCH < gap < least - TOUCH:
                found.append(_too_close(unit, pair, gap, least, place, Severity.WARNING))
    far = sorted(joined - set(near), key=lambda each: (order[each[0]], order[each[1]]))
    return (*found, *(_apart(unit, pair, *gap_of(pair)) for pair in far))


def overlap_of(first: trimesh.Trimesh, second: trimesh.Trimesh) -> Overlap | None:
    """The deepest overlap of two closed meshes; None where they only touch or are apart.

    The depth of an overlapping body is its least width: the smallest extent of its convex
    hull along any of the hull's face normals.
    """
    return _overlap(_Body(first), _Body(second))


def _overlap(first: _Body, second: _Body) -> Overlap | None:
    shared = np.minimum(first.bounds[1], second.bounds[1]) - np.maximum(
        first.bounds[0], second.bounds[0]
    )
    if shared.min() <= TOUCH:
        return None
    body = first.manifold ^ second.manifold
    # Where faces touch, the body may carry fins without thickness.  What it shares with itself
    # moved a hair aside has none, and is thinner by the move along each normal.
    deepest = None
    for piece in (body ^ body.translate(_HAIR)).decompose():
        depth = _least_width(_vertices(piece))
        if depth > TOUCH and (deepest is None or depth > deepest.depth):
            bounds = np.array(piece.bounding_box()).reshape(2, 3)
            deepest = Overlap(depth, _vector(bounds.mean(axis=0)), body.volume())
    return deepest


def _vertices(piece: manifold3d.Manifold) -> Array:
    vertices: Array = np.asarray(piece.to_mesh64().vert_properties, dtype=np.float64)[:, :3]
    return vertices


def _least_width(vertices: Array) -> float:
    if np.ptp(vertices, axis=0).min() + max(_HAIR) <= TOUCH:
        return 0.0
    hull = trimesh.PointCloud(vertices).convex_hull
    along = np.ptp(hull.face_normals @ hull.vertices.T, axis=1)
    return float((along + np.abs(hull.face_normals @ np.array(_HAIR))).min())


def _clearances(unit: Unit, order: Mapping[str, int]) -> dict[Pair, float]:
    asked: dict[Pair, float] = {}
    for clearance in unit.clearances:
        pair = _pair(clearance.first, clearance.second, order)
        asked[pair] = max(clearance.least, asked.get(pair, 0.0))
    return asked


def _pair(first: str, second: str, order: Mapping[str, int]) -> Pair:
    return (first, second) if order[first] < order[second] else (second, first)


def _near(unit: Unit, bodies: Mapping[str, _Body], reach: float) -> list[Pair]:
    """Pairs whose bounding boxes come within ``reach`` of each other, in order of parts."""
    boxes = np.array([bodies[part.ref].bounds for part in unit.parts])
    low, high = boxes[:, 0] - reach / 2 - TOUCH, boxes[:, 1] + reach / 2 + TOUCH
    properties = index.Property(dimension=3)
    tree = index.Index(
        ((number, (*low[number], *high[number]), None) for number in range(len(boxes))),
        properties=properties,
    )
    refs = [part.ref for part in unit.parts]
    return [
        (refs[number], refs[other])
        for number in range(len(boxes))
        for other in sorted(tree.intersection((*low[number], *high[number])))
        if other > number
    ]


def _gap(bodies: Mapping[str, _Body], pair: Pair, reach: float) -> tuple[float, Vector]:
    """Smallest distance between two parts that don't overlap, and where it is.

    Beyond ``reach`` the distance between their bounding boxes stands in for it.
    """
    first, second = (bodies[ref] for ref in pair)
    apart = np.maximum(first.bounds[0] - second.bounds[1], second.bounds[0] - first.bounds[1])
    gap = float(np.linalg.norm(np.maximum(apart, 0.0)))
    if gap < reach and not (first.is_box and second.is_box):
        gap = first.manifold.min_gap(second.manifold, reach)
    return gap, _vector(_between(first.bounds, second.bounds))


def _between(first: Array, second: Array) -> Array:
    """Middle of the space between (or shared by) two boxes."""
    low = np.maximum(first[0], second[0])
    high = np.minimum(first[1], second[1])
    middle: Array = (low + high) / 2
    return middle


def _vector(values: Array) -> Vector:
    x, y, z = (round(float(value), 6) for value in values)
    return (x, y, z)


def _parts(unit: Unit, pair: Pair) -> tuple[Part, Part]:
    return unit.part(pair[0]), unit.part(pair[1])


def _overlapping(unit: Unit, pair: Pair, overlap: Overlap) -> Finding:
    first, second = _parts(unit, pair)
    depth = _said(overlap.depth, unit)
    return Finding(
        Severity.ERROR,
        "collision",
        f"{named(first)} and {named(second)} run into each other by {depth} "
        f"{_at(unit, overlap.place)}",
        "Move one of them, make it smaller, or joint them so that one is cut out for the other.",
        pair,
        overlap.depth,
        TOUCH,
        source=_SOURCE,
        place=overlap.place,
    )


def _apart(unit: Unit, pair: Pair, gap: float, place: Vector) -> Finding:
    first, second = _parts(unit, pair)
    return Finding(
        Severity.ERROR,
        "joint",
        f"{named(first)} and {named(second)} should be joined, but lie {_said(gap, unit)} apart "
        f"{_at(unit, place)}",
        "Bring them together, or take the joint away.",
        pair,
        gap,
        MEETING,
        source=_SOURCE,
        place=place,
    )


def _too_close(
    unit: Unit, pair: Pair, gap: float, least: float, place: Vector, severity: Severity
) -> Finding:
    first, second = _parts(unit, pair)
    return Finding(
        severity,
        "clearance",
        f"between {named(first)} and {named(second)} there is {_said(gap, unit)}, less than the "
        f"{_said(least, unit)} asked for, {_at(unit, place)}",
        "Make one of them smaller or move it.",
        pair,
        gap,
        least,
        source="asked for in the spec",
        place=place,
    )


def _said(length: float, unit: Unit) -> str:
    """A length that may be far smaller than a rule shows: to a hundredth of a millimetre."""
    if unit.display_unit == "mm" or length < 25.4 / 64:
        return f"{max(length, _SHOWN) if length else 0:.2f} mm"
    return f"{format_length(length, 'in')} in"


def _at(unit: Unit, place: Vector) -> str:
    x, y, z = (format_length(value, unit.display_unit) for value in place)
    return f"(at x {x}, y {y}, z {z} {unit.display_unit})"
