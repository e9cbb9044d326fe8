"""Collisions, gaps that are too small, and joints that don't meet.

An R-tree over bounding boxes gives the pairs that come near each other, so the work grows
with the number of neighbours; each pair is then looked at exactly (`bodies`).
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
import trimesh
from rtree import index

from rodwright.checks.closed_meshes import PENETRATION, ClosedMesh, Overlap, gap, overlap
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import named
from rodwright.checks.rules import Rule
from rodwright.geometry import Vector
from rodwright.lengths import format_length
from rodwright.solids.meshes import placed_mesh
from rodwright.unit import Part, Unit

MEETING = 0.05
"""Parts of a joint this close (mm) meet: tessellated curves may stand off by 0.02 on each side."""
_SOURCE = "geometry of the set-out"

Pair = tuple[str, str]


def collisions(unit: Unit) -> tuple[Finding, ...]:
    """Findings about pairs of parts, in the order of the unit's parts.

    An overlap deeper than 0.01 mm is an error, joint or not; so is a clearance that isn't
    kept, and a joint whose parts lie more than 0.05 mm apart.  A gap below the unit's
    ``least_gap`` between parts that neither touch nor are joined is a warning.

    Raises:
        ValueError: a part makes no solid; a joint or clearance names a part that isn't there, or
            a part twice.
    """
    return check_meshes(unit, {part.ref: placed_mesh(part) for part in unit.parts})


def check_meshes(unit: Unit, meshes: Mapping[str, trimesh.Trimesh]) -> tuple[Finding, ...]:
    """The same on given meshes (by ref, unit frame, mm).

    Raises:
        ValueError: a joint or clearance names a part that isn't there, or a part twice; or a
            mesh isn't closed.
        KeyError: a part has no mesh.
    """
    order = {part.ref: number for number, part in enumerate(unit.parts)}
    bodies = {ref: ClosedMesh(meshes[ref]) for ref in order}
    joined: set[Pair] = set()
    meeting: set[Pair] = set()
    for joint in unit.joints:
        pair = _pair(joint.first, joint.second, order)
        joined.add(pair)
        if joint.kind.meets:
            meeting.add(pair)
    asked: dict[Pair, float] = {}
    for clearance in unit.clearances:
        pair = _pair(clearance.first, clearance.second, order)
        asked[pair] = max(clearance.least, asked.get(pair, 0.0))
    pairs = {*_near(unit, bodies, max(MEETING, unit.least_gap)), *meeting, *asked}
    found: list[Finding] = []
    for pair in sorted(pairs, key=lambda pair: (order[pair[0]], order[pair[1]])):
        first, second = (bodies[ref] for ref in pair)
        shared = overlap(first, second)
        if shared is not None:
            found.append(_overlapping(unit, pair, shared))
        elif pair in meeting or pair in asked or (unit.least_gap > 0 and pair not in joined):
            found += _spaced(unit, pair, gap(first, second), pair in meeting, asked.get(pair))
    return tuple(found)


def _spaced(
    unit: Unit, pair: Pair, spaced: tuple[float, Vector], meets: bool, asked: float | None
) -> list[Finding]:
    """What is wrong with the gap between two parts that don't overlap."""
    between, place = spaced
    if meets:
        return [_apart(unit, pair, between, place)] if between > MEETING else []
    least = unit.least_gap if asked is None else asked
    if between >= least - PENETRATION or (asked is None and between <= PENETRATION):
        return []
    severity = Severity.WARNING if asked is None else Severity.ERROR
    return [_too_close(unit, pair, between, least, place, severity)]


def _pair(first: str, second: str, order: Mapping[str, int]) -> Pair:
    for ref in (first, second):
        if ref not in order:
            raise ValueError(f"a joint or clearance names `{ref}`, which is no part of the unit")
    if first == second:
        raise ValueError(f"a joint or clearance names `{first}` twice")
    return (first, second) if order[first] < order[second] else (second, first)


def _near(unit: Unit, bodies: Mapping[str, ClosedMesh], reach: float) -> list[Pair]:
    """Pairs whose bounding boxes come within ``reach`` of each other, in order of parts."""
    boxes = np.array([bodies[part.ref].bounds for part in unit.parts])
    low, high = boxes[:, 0] - reach / 2 - PENETRATION, boxes[:, 1] + reach / 2 + PENETRATION
    properties = index.Property(dimension=3)
    tree = index.Index(
        ((number, (*low[number], *high[number]), None) for number in range(len(boxes))),
        properties=properties,
    )
    refs = [part.ref for part in unit.parts]
    return [
        (refs[number], refs[other])
        for number in range(len(boxes))
        for other in tree.intersection((*low[number], *high[number]))
        if other > number
    ]


def _parts(unit: Unit, pair: Pair) -> tuple[Part, Part]:
    return unit.part(pair[0]), unit.part(pair[1])


def _overlapping(unit: Unit, pair: Pair, shared: Overlap) -> Finding:
    first, second = _parts(unit, pair)
    depth = _said(shared.depth, unit)
    return Finding(
        Severity.ERROR,
        Rule.COLLISION,
        f"{named(first)} and {named(second)} run into each other by {depth} "
        f"{_at(unit, shared.place)}",
        "Move one of them, make it smaller, or joint them so that one is cut out for the other.",
        pair,
        shared.depth,
        PENETRATION,
        source=_SOURCE,
        place=shared.place,
    )


def _apart(unit: Unit, pair: Pair, between: float, place: Vector) -> Finding:
    first, second = _parts(unit, pair)
    return Finding(
        Severity.ERROR,
        Rule.JOINT_APART,
        f"{named(first)} and {named(second)} should be joined, but lie {_said(between, unit)} "
        f"apart {_at(unit, place)}",
        "Bring them together, or take the joint away.",
        pair,
        between,
        MEETING,
        source=_SOURCE,
        place=place,
    )


def _too_close(
    unit: Unit, pair: Pair, between: float, least: float, place: Vector, severity: Severity
) -> Finding:
    first, second = _parts(unit, pair)
    return Finding(
        severity,
        Rule.CLEARANCE_SHORT,
        f"between {named(first)} and {named(second)} there is {_said(between, unit)}, less than "
        f"the {_said(least, unit)} asked for, {_at(unit, place)}",
        "Make one of them smaller or move it.",
        pair,
        between,
        least,
        source="asked for in the spec",
        place=place,
    )


def _said(length: float, unit: Unit) -> str:
    """A length that may be far smaller than a rule shows: to a hundredth of a millimetre."""
    if unit.display_unit == "mm" or length < 25.4 / 64:
        return f"{round(length, 2):g} mm"
    return f"{format_length(length, 'in')} in"


def _at(unit: Unit, place: Vector) -> str:
    x, y, z = (format_length(value, unit.display_unit) for value in place)
    return f"(at x {x}, y {y}, z {z} {unit.display_unit})"
