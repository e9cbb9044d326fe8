"""Where glued parts lie flush: made one before they are sanded, they show no eased joint.

All lengths in mm.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from rodwright.geometry.boxes import Box
from rodwright.geometry.halfspaces import box_planes
from rodwright.photo.bodies.easing import arrises_of
from rodwright.photo.bodies.outlines import Array
from rodwright.photo.bodies.stretches import Stretch
from rodwright.unit import JointKind, Part, Unit

_GLUED = frozenset(
    {
        JointKind.BUTT,
        JointKind.HOUSING,
        JointKind.MITRE,
        JointKind.FACE_GLUED,
        JointKind.EDGE_GLUED,
        JointKind.TONGUE,
        JointKind.DOWEL,
        JointKind.BISCUIT,
        JointKind.LOOSE_TENON,
        JointKind.POCKET_SCREW,
    }
)
"""Joints that are glued and then cleaned off; what is only screwed or taken apart shows its joint
(common practice, no source)."""
_HAIR = 0.05
"""How far beside an arris is felt for the other part."""


def flush_in(unit: Unit) -> dict[str, tuple[Stretch, ...]]:
    """By ref, the stretches (part frame) of a part's arrises along which another part, glued to it,
    goes on at the same level.

    What is let into a part counts as part of that: by its blank and what cuts that off.
    """
    parts = {part.ref: part for part in unit.parts}
    found: dict[str, list[Stretch]] = {}
    for joint in unit.joints:
        if joint.kind not in _GLUED:
            continue
        for ref, other in ((joint.first, joint.second), (joint.second, joint.first)):
            if ref in parts and other in parts:
                found.setdefault(ref, []).extend(_flush(parts[ref], parts[other]))
    return {ref: tuple(sorted(set(each))) for ref, each in found.items() if each}


def _flush(part: Part, other: Part) -> Iterator[Stretch]:
    """Where ``other`` goes on past arrises of ``part``, at the level of one of their faces."""
    ends, normals = arrises_of(part.shape)
    if not len(ends):
        return
    at, out = _planes(other, part)
    for one, level in ((0, 1), (1, 0)):
        past = ends + _HAIR * (normals[:, one] - normals[:, level])[:, None]
        first, last = _within(past, at, out)
        middle = ((first + last) / 2)[:, None]
        above = past[:, 0] + middle * (past[:, 1] - past[:, 0]) + 2 * _HAIR * normals[:, level]
        proud = (((above[:, None] - at) * out).sum(axis=2) < 0.0).all(axis=1)
        for number in np.flatnonzero((last > first) & ~proud):
            start, stop = ends[number]
            made = [start + share * (stop - start) for share in (first[number], last[number])]
            near, far = (tuple(np.round(each, 4).tolist()) for each in made)
            yield near, far


def _within(lines: Array, at: Array, out: Array) -> tuple[Array, Array]:
    """From which share to which of lines (n, 2, 3) they are behind all planes."""
    start = ((lines[:, None, 0] - at) * out).sum(axis=2)
    rise = ((lines[:, None, 1] - at) * out).sum(axis=2) - start
    with np.errstate(divide="ignore", invalid="ignore"):
        meets = -start / rise
    level = np.abs(rise) < 1e-9
    first = np.where(level, np.where(start < 0.0, 0.0, 2.0), np.where(rise < 0.0, meets, 0.0))
    last = np.where(level | (rise < 0.0), 1.0, meets)
    return np.maximum(first.max(axis=1), 0.0), np.minimum(last.min(axis=1), 1.0)


def _planes(other: Part, part: Part) -> tuple[Array, Array]:
    """Points and outward normals of what bounds a part, in the frame of another."""
    size = other.blank.size
    planes = [*box_planes(Box.of_size(size))]
    planes += [plane for each in other.workings for plane in each.planes(size)]
    there, here = (np.array(each.placement.matrix()) for each in (other, part))
    turn = here[:3, :3].T @ there[:3, :3]
    points = np.array([point for point, _ in planes]) @ turn.T
    points += (there[:3, 3] - here[:3, 3]) @ here[:3, :3]
    return points, np.array([normal for _, normal in planes]) @ turn.T
