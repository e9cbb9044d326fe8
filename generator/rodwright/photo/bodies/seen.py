"""Which faces of a unit's parts a camera sees: only those need fine textures.

All lengths in mm, unit frame where nothing else is said.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry.vectors import Vector
from rodwright.photo.bodies.easing import Patch
from rodwright.photo.bodies.outlines import Array

_APART, _FEWEST, _MOST = 60.0, 8, 80
"""Points are so far apart on a face on average, but that few or many of them."""
_FULL = 0.97
"""What fills so much of its blank hides what is behind it."""
_WITHIN = 0.5
"""What only grazes a part (mm) isn't hidden by it."""


@dataclass(frozen=True, slots=True, eq=False)
class Standing:
    """A part where it stands: its patches and the size of its blank in its own frame, the 4 x 4
    ``matrix`` from there, and whether light passes through it."""

    patches: tuple[Patch, ...]
    size: Vector
    matrix: Array
    clear: bool

    @property
    def hides(self) -> bool:
        """Whether all of its blank is in the way."""
        if self.clear:
            return False
        volume = sum(
            float(np.einsum("ij,ij->", a, np.cross(b, c)))
            for each in self.patches
            for a, b, c in [np.swapaxes(each.points[each.triangles], 0, 1)]
        )
        return volume / 6 > _FULL * float(np.prod(self.size))


def seen(eye: Vector, parts: Sequence[Standing]) -> list[tuple[bool, ...]]:
    """For each part which of its patches an eye at ``eye`` sees anything of, as far as it is parts
    that are in the way and the points that are tried tell; small ones count as not seen."""
    points, owners, numbers = _facing(np.array(eye), parts)
    left = np.arange(len(points))
    for number, part in enumerate(parts):
        if part.hides:
            others = left[owners[left] != number]
            hidden = others[_crosses(part, points[others], np.array(eye))]
            left = np.setdiff1d(left, hidden, assume_unique=True)
    found = set(zip(owners[left].tolist(), numbers[left].tolist(), strict=True))
    return [
        tuple((number, patch) in found for patch in range(len(part.patches)))
        for number, part in enumerate(parts)
    ]


def _facing(
    eye: Array, parts: Sequence[Standing]
) -> tuple[Array, NDArray[np.int64], NDArray[np.int64]]:
    """Points of all patches whose surface is turned to the eye, a hair before it, with the numbers
    of their parts and patches."""
    chance = np.random.default_rng(0)
    found, owners, numbers = [], [], []
    for owner, part in enumerate(parts):
        turn, origin = part.matrix[:3, :3], part.matrix[:3, 3]
        for number, patch in enumerate(part.patches):
            if patch.is_small:
                continue
            points, out = _scattered(patch, chance)
            points, out = points @ turn.T + origin, out @ turn.T
            ahead = points[((eye - points) * out).sum(axis=1) > 0.0]
            found.append(ahead)
            owners.append(np.full(len(ahead), owner))
            numbers.append(np.full(len(ahead), number))
    return np.concatenate(found), np.concatenate(owners), np.concatenate(numbers)


def _scattered(patch: Patch, chance: np.random.Generator) -> tuple[Array, Array]:
    """Points at random on a patch, and the normals there; part frame."""
    corners = patch.points[patch.triangles]
    out = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    areas = np.linalg.norm(out, axis=1)
    count = int(np.clip(areas.sum() / 2 / _APART**2, _FEWEST, _MOST))
    of = chance.choice(len(areas), count, p=areas / areas.sum())
    shares = chance.dirichlet((1.0, 1.0, 1.0), count)
    # Eased edges don't count: a face that shows no more is as good as hidden.
    ahead = out[of] / areas[of, None] if patch.flat is None else np.tile(patch.flat, (count, 1))
    return (corners[of] * shares[:, :, None]).sum(axis=1), ahead


def _crosses(part: Standing, points: Array, eye: Array) -> NDArray[np.bool_]:
    """Which of the lines from points to the eye go through a part's blank."""
    turn, origin = part.matrix[:3, :3], part.matrix[:3, 3]
    start = (points - origin) @ turn
    way = (eye - origin) @ turn - start
    size = np.array(part.size)
    within = np.minimum(_WITHIN, size / 4)
    with np.errstate(divide="ignore", invalid="ignore"):
        one, other = (within - start) / way, (size - within - start) / way
    enters = np.nanmax(np.minimum(one, other), axis=1)
    leaves = np.nanmin(np.maximum(one, other), axis=1)
    made: NDArray[np.bool_] = np.maximum(enters, 0.0) < np.minimum(leaves, 1.0)
    return made
