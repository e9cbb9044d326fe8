"""An order of assembly carried out on the parts' meshes.

Nothing here comes from what finds orders.  What a mesh sweeps as it goes straight is the mesh and
the prisms over those of its triangles that look ahead; manifold intersects them with what stands.
Which way a joint closes is read off the faces on which its parts meet.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property

import manifold3d
import numpy as np
import trimesh
from numpy.typing import NDArray

from rodwright.making.steps import Order, Step
from rodwright.solids.meshes import placed_mesh
from rodwright.unit import Joint, JointKind, Slide, Swing, Unit

Array = NDArray[np.float64]

DEEP = 0.011
"""mm.  Parts that sweep deeper into each other collide; below 0.01 they touch."""
_HAIR = (0.0021, 0.0017, 0.0013)
_ALONG = 1 - 1e-5
_LET_IN = (JointKind.DOWEL, JointKind.LOOSE_TENON, JointKind.BISCUIT)


@dataclass(frozen=True)
class Solid:
    """A part's mesh where it stands; unit frame, mm."""

    mesh: trimesh.Trimesh

    @classmethod
    def of(cls, mesh: trimesh.Trimesh) -> Solid:
        # On a grid of a hundred-thousandth of a mm, faces that touch coincide.
        return cls(trimesh.Trimesh(np.round(mesh.vertices, 5), mesh.faces, process=False))

    @cached_property
    def bounds(self) -> Array:
        return np.array(self.mesh.bounds)

    @cached_property
    def is_box(self) -> bool:
        around = float(np.ptp(self.bounds, axis=0).prod())
        return bool(np.isclose(self.mesh.volume, around, rtol=1e-9))

    @cached_property
    def manifold(self) -> manifold3d.Manifold:
        body = manifold3d.Manifold(
            manifold3d.Mesh64(
                np.ascontiguousarray(self.mesh.vertices, dtype=np.float64),
                np.ascontiguousarray(self.mesh.faces, dtype=np.uint64),
            )
        )
        assert body.status() == manifold3d.Error.NoError
        return body

    @cached_property
    def planes(self) -> Array:
        """Normal and distance from the origin of each flat face."""
        normals, at = self.mesh.face_normals, self.mesh.triangles_center
        rows = np.column_stack([normals, (normals * at).sum(axis=1)])
        return np.unique(np.round(rows, 6), axis=0)


def collides(moving: Solid, standing: Solid, move: Array) -> bool:
    """Whether a solid that goes straight by ``move`` (mm) runs into another on its way."""
    low = np.minimum(moving.bounds[0], moving.bounds[0] + move)
    high = np.maximum(moving.bounds[1], moving.bounds[1] + move)
    if (np.minimum(high, standing.bounds[1]) - np.maximum(low, standing.bounds[0])).min() < DEEP:
        return False
    if np.count_nonzero(np.abs(move) > 1e-9) <= 1 and moving.is_box and standing.is_box:
        return True
    if _deep(moving.manifold ^ standing.manifold):
        return True
    corners = moving.mesh.triangles[moving.mesh.face_normals @ move > 1e-6]
    prisms = np.concatenate([corners, corners + move], axis=1)
    shared = np.minimum(prisms.max(axis=1), standing.bounds[1]) - np.maximum(
        prisms.min(axis=1), standing.bounds[0]
    )
    return any(
        _deep(manifold3d.Manifold.hull_points(prism) ^ standing.manifold)
        for prism in prisms[shared.min(axis=1) > DEEP]
    )


def _deep(shared: manifold3d.Manifold) -> bool:
    """Whether any of what two bodies share is thicker than touching along each of its faces.

    Where faces touch it may have fins without thickness: what it shares with itself moved a hair
    aside has none.
    """
    if shared.volume() < DEEP**3:
        return False
    pieces = (shared ^ shared.translate(_HAIR)).decompose()
    return any(_thickness(piece) > DEEP - max(_HAIR) for piece in pieces)


def _thickness(piece: manifold3d.Manifold) -> float:
    """The least extent of a body along the normals of its faces."""
    mesh = piece.to_mesh64()
    points = np.asarray(mesh.vert_properties, dtype=np.float64)[:, :3]
    corners = points[np.asarray(mesh.tri_verts, dtype=np.int64)]
    normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    lengths = np.linalg.norm(normals, axis=1)
    normals = np.vstack([normals[lengths > 1e-9] / lengths[lengths > 1e-9, None], np.eye(3)])
    return float(np.ptp(points @ normals.T, axis=0).min())


def replay(unit: Unit, order: Order) -> None:
    """Carry out an order: nothing collides, every part and joint has its step, one whole is left.

    Raises:
        AssertionError: it can't be carried out so.
    """
    made_in_order(unit, order)
    solids = {part.ref: Solid.of(placed_mesh(part)) for part in unit.parts}
    known: dict[tuple[str, str, tuple[float, ...]], bool] = {}

    def hits(one: str, other: str, move: Array, *, opened: bool = False) -> bool:
        key = (one, f"{other} {opened}", tuple(np.round(move, 6)))
        if key not in known:
            standing = _opened(unit, other, solids[other]) if opened else solids[other]
            known[key] = collides(solids[one], standing, move)
        return known[key]

    for step in order.steps:
        if not step.free:
            continue
        for one, other, move in _moves(step):
            opened = other in step.opened
            assert not hits(one, other, move, opened=opened), f"{one} runs into {other}: {step}"
        if not step.drawn and step.standing:
            _is_clear(step, solids)
        for joint in step.joints:
            _closes_well(unit, joint, step, solids)


def made_in_order(unit: Unit, order: Order) -> None:
    """Every part comes by itself once, every joint is closed once, and what is brought was made.

    Raises:
        AssertionError: it isn't so.
    """
    whole: set[frozenset[str]] = {frozenset({part.ref}) for part in unit.parts}
    for step in order.steps:
        refs, standing = frozenset(step.refs), frozenset(step.standing)
        groups = {frozenset({ref}) for ref in refs} if step.drawn else {refs}
        before = {standing} if standing else set()
        if step.drawn:
            groups = {group for group in whole if group <= refs}
        assert groups | before <= whole, f"not made before: {step}"
        whole -= groups | before
        whole.add(refs | standing)
        ends = [{joint.first, joint.second} for joint in step.joints]
        assert all(each <= refs | standing for each in ends), f"joined too soon: {step}"
        closed_before = [each for each in ends for group in groups | before if each <= group]
        assert not closed_before, f"joined already: {step}"
    assert whole == {frozenset(part.ref for part in unit.parts)}, "something is left over"
    closed = Counter(joint for step in order.steps for joint in step.joints)
    assert closed == Counter(unit.joints), "a joint isn't closed once"


def _moves(step: Step) -> Iterator[tuple[str, str, Array]]:
    """What moves away past what as a step is taken back, and how far."""
    if step.drawn:
        for at, one in enumerate(step.refs):
            for on, other in enumerate(step.refs):
                move = np.array(step.drawn[on]) - np.array(step.drawn[at])
                if at < on and np.abs(move).max() > 1e-5:
                    yield one, other, move
        return
    # What may be clear at once is moved by a little all the same: it has to come from somewhere.
    move = -np.array(step.towards) * max(step.travel, 1.0)
    for one in step.refs:
        for other in step.standing:
            yield one, other, move


def _is_clear(step: Step, solids: dict[str, Solid]) -> None:
    """At the far end of its way, all that comes lies beyond all that stands."""
    away = -np.array(step.towards)
    assert np.isclose(np.linalg.norm(away), 1.0)

    def reach(refs: Iterable[str]) -> Array:
        return np.concatenate([solids[ref].mesh.vertices @ away for ref in refs])

    assert reach(step.refs).min() + step.travel >= reach(step.standing).max() - 0.05, (
        f"not clear yet: {step}"
    )


def _opened(unit: Unit, ref: str, solid: Solid) -> Solid:
    (swing,) = (each for each in unit.motions if isinstance(each, Swing) and ref in each.refs)
    turn = trimesh.transformations.rotation_matrix(
        np.radians(swing.angle), [0, 0, 1], [*swing.hinge, 0]
    )
    mesh = solid.mesh.copy()
    mesh.apply_transform(turn)
    return Solid(mesh)


def _closes_well(unit: Unit, joint: Joint, step: Step, solids: dict[str, Solid]) -> None:
    """A joint closes along what is let into both its parts, along its slides, down on its pins."""
    where = dict(zip(step.refs, step.drawn, strict=True)) if step.drawn else {}
    apart = {
        ref: np.array(where.get(ref, step.towards if ref in step.refs else (0.0, 0.0, 0.0)))
        for ref in (joint.first, joint.second)
    }
    second = apart[joint.second] - apart[joint.first]
    towards = second / np.linalg.norm(second)
    if joint.kind is JointKind.SLIDING:
        (travel,) = (
            each.travel
            for each in unit.motions
            if isinstance(each, Slide) and joint.second in each.refs
        )
        assert towards @ -np.array(travel) > _ALONG * np.linalg.norm(travel), step
    elif joint.kind is JointKind.RESTING:
        assert towards[2] < _ALONG, step
    elif _is_let_in(joint):
        normal = _meeting(joint, solids)
        along = 1.0 if normal is None else abs(towards @ normal)
        assert along > _ALONG, f"comes across what is let in: {joint}"


def _is_let_in(joint: Joint) -> bool:
    """Whether what is let into both parts lets them come together along itself only."""
    bought = {fixing.name for fixing in joint.fixings}
    return (
        joint.kind in _LET_IN
        or "cam bolt" in bought
        or (joint.kind is JointKind.MITRE and bool(bought & {"dowel", "biscuit", "loose tenon"}))
    )


def _meeting(joint: Joint, solids: dict[str, Solid]) -> Array | None:
    """The normal of the plane on which two parts meet, next to where their joint is said to be;
    None of parts that meet along a line at most."""
    one, other = (solids[ref].planes for ref in (joint.first, joint.second))
    facing = np.abs(one[:, None, :] + other[None, :, :]).max(axis=2) < 0.02
    which = one[np.flatnonzero(facing.any(axis=1))]
    if not len(which):
        return None
    away = np.abs(which[:, :3] @ np.array(joint.at) - which[:, 3])
    normal: Array = which[np.argmin(away), :3]
    return normal
