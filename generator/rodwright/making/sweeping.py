"""Whether parts block each other's straight way out: exact for convex bodies.

A body that leaves along a direction sweeps its Minkowski sum with a ray.  Two convex bodies are
apart along some direction square to a face of either, or to an edge of each (the separating axis
theorem: Gottschalk, Lin and Manocha, OBBTree, SIGGRAPH 1996, section 5); of a swept body the ray is
an edge too.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

import numpy as np

from rodwright.geometry import Vector, vector
from rodwright.making.bodies import Array, Body, unlike

TOUCHING = 0.01
"""mm.  Bodies that reach into each other by no more than this touch, or slide along each other."""

_MEETING = 0.05
"""mm.  Faces as near as this meet."""


class Sweeps:
    """Which parts of a unit stand in which others' straight way out.

    ``looked`` counts the pairs that their boxes couldn't tell apart.
    """

    def __init__(self, bodies: Mapping[str, Body]) -> None:
        self._refs = tuple(bodies)
        self._number = {ref: number for number, ref in enumerate(self._refs)}
        self._bodies = tuple(bodies.values())
        self._lows = np.array([body.bounds[0] for body in self._bodies]).reshape(-1, 3)
        self._highs = np.array([body.bounds[1] for body in self._bodies]).reshape(-1, 3)
        self._known: dict[tuple[int, int, Vector], bool] = {}
        self._spans: dict[tuple[str, Vector], tuple[float, float]] = {}
        self.looked = 0

    def span(self, ref: str, way: Vector) -> tuple[float, float]:
        """How far a part reaches along a direction: its least and its most, mm."""
        known = self._spans.get((ref, way))
        if known is None:
            along = self._bodies[self._number[ref]].corners @ np.array(way)
            known = self._spans[ref, way] = (float(along.min()), float(along.max()))
        return known

    def square_to_meeting(self, first: str, second: str, at: Vector) -> tuple[Vector] | None:
        """The direction square to the faces on which two parts meet next to a point; None where
        they meet nowhere."""
        bodies = [self._bodies[self._number[ref]] for ref in (first, second)]
        return meeting(bodies[0], bodies[1], at)

    def in_the_way(self, moving: str, standing: Iterable[str], away: Vector) -> list[str]:
        """Which parts ``standing`` a part runs into as it leaves along ``away``, a unit vector."""
        one = self._number[moving]
        others = [self._number[ref] for ref in standing]
        return [
            self._refs[other]
            for other in self._near(one, others, away)
            if self._blocks(one, other, away)
        ]

    def travel(self, moving: Iterable[str], standing: Iterable[str], away: Vector) -> float:
        """How far (mm) parts go along ``away`` until they are clear beyond all that stands."""
        back = min(self.span(ref, away)[0] for ref in moving)
        return max((self.span(ref, away)[1] - back for ref in standing), default=0.0)

    def _near(self, one: int, others: list[int], away: Vector) -> list[int]:
        """Those whose boxes lie in the way of a box."""
        low, high = self._lows[one].copy(), self._highs[one].copy()
        for axis in range(3):
            if away[axis] > 1e-9:
                high[axis] = np.inf
            elif away[axis] < -1e-9:
                low[axis] = -np.inf
        shared = np.minimum(self._highs[others], high) - np.maximum(self._lows[others], low)
        return [others[at] for at in np.flatnonzero((shared > TOUCHING).all(axis=1))]

    def _blocks(self, one: int, other: int, away: Vector) -> bool:
        # What leaves one way past something is as free as that is the other way.
        if one > other:
            one, other = other, one
            away = (-away[0], -away[1], -away[2])
        known = self._known.get((one, other, away))
        if known is None:
            first, second = self._bodies[one], self._bodies[other]
            straight = max(map(abs, away)) > 1 - 1e-9
            known = (straight and first.is_box and second.is_box) or self._meet(one, other, away)
            self._known[one, other, away] = known
        return known

    def _meet(self, one: int, other: int, away: Vector) -> bool:
        self.looked += 1
        return runs_into(self._bodies[one], self._bodies[other], away)


def runs_into(moving: Body, standing: Body, away: Vector) -> bool:
    """Whether a body that leaves along ``away`` reaches more than 0.01 mm into another."""
    ray = np.array(away)
    axes = _axes(moving, standing, ray)
    axes = axes[axes @ ray <= 1e-9]
    reach = (moving.corners @ axes.T).max(axis=1)
    start = (standing.corners @ axes.T).min(axis=1)
    # A pair of pieces is apart if there is a direction along which it is.
    depth = np.full((len(reach), len(start)), np.inf)
    for number in range(len(axes)):
        np.minimum(depth, reach[:, number, None] - start[None, :, number], out=depth)
    return bool(depth.max() > TOUCHING)


def meeting(one: Body, other: Body, at: Vector) -> tuple[Vector] | None:
    """The direction square to the faces on which two bodies touch, of several the one next to a
    point; None where they don't touch on faces."""
    normals = unlike(np.concatenate([one.normals, other.normals]))
    axes = np.concatenate([normals, -normals])
    reach = (one.corners @ axes.T).max(axis=1)[:, None, :]
    start = (other.corners @ axes.T).min(axis=1)[None, :, :]
    depth = reach - start
    nearest, found = np.inf, None
    for number, axis in enumerate(axes):
        beside = np.ones(len(axes), dtype=bool)
        beside[[number, (number + len(normals)) % len(axes)]] = False
        touch = (np.abs(depth[:, :, number]) < _MEETING) & (depth[:, :, beside] > _MEETING).all(
            axis=2
        )
        for piece in np.flatnonzero(touch.any(axis=1)):
            away = abs(float(np.dot(axis, at) - reach[piece, 0, number]))
            if away < nearest - _MEETING:
                nearest, found = away, vector(axis.tolist())
    return None if found is None else (found,)


def _axes(moving: Body, standing: Body, ray: Array) -> Array:
    """Every direction that may tell them apart, both ways round."""
    if moving.square and standing.square and np.abs(ray).max() > 1 - 1e-9:
        return np.concatenate([np.eye(3), -np.eye(3)])
    edges = unlike(np.concatenate([moving.edges, standing.edges]))
    crossed = [np.cross(each, standing.edges) for each in moving.edges]
    axes = unlike(
        np.concatenate([moving.normals, standing.normals, np.cross(edges, ray), *crossed])
    )
    return np.concatenate([axes, -axes])
