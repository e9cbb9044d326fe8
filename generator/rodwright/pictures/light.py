"""Soft light: how brightly each point of a scene is lit.

The light is a bright dome with a broad lamp up to the left, over a pale floor that throws
some of it back.  The dome is cut into directions; a point gets the light of those that no
facet stands in the way of, by a depth map seen from each direction.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from rodwright.parts import Vector
from rodwright.pictures.camera import Array, looking_from
from rodwright.pictures.facets import Facets, Indices
from rodwright.pictures.raster import Raster

Shades = NDArray[np.float32]

DOME = 80
"""Directions the whole round is cut into."""
LAMP: Vector = (-0.40, -0.55, 0.95)
"""Towards the middle of the lamp, unit frame."""
LAMP_SPREAD = np.radians(15.0)
LAMP_SAMPLES = 24
LAMP_STRENGTH = 1.0
"""Irradiance of the whole lamp beside that of the open dome, which is about 1 on the floor."""
FLOOR_RETURN = 0.45
"""Brightness of the floor's light from below, beside the dome's from above."""
SHARES = 4
"""Each point gets one ray in so many; its neighbours get the others (see ``irradiance``)."""
MAP_PIXELS = 448
MAP_SIZE = (MAP_PIXELS, MAP_PIXELS)
OFFSET = 0.005
"""How far points are lifted off their facets before looking for light, as a share of the
scene's radius: enough to cover a depth map's pixels."""


@dataclass(frozen=True, slots=True)
class Ray:
    """Light from one direction: the unit vector towards it, and its strength."""

    towards: Vector
    strength: float


def rays() -> tuple[Ray, ...]:
    """All the light there is; the open floor's irradiance is ``floor_irradiance``."""
    golden = np.pi * (3.0 - np.sqrt(5.0))
    number = np.arange(DOME)
    z = 1.0 - (2.0 * number + 1.0) / DOME
    across = np.sqrt(1.0 - z * z)
    found = []
    for height, radius, angle in zip(z, across, golden * number, strict=True):
        x, y = radius * np.cos(angle), radius * np.sin(angle)
        brightness = 1.0 - 0.25 * y if height > 0 else FLOOR_RETURN
        # Equal shares of the round, so that an open dome of brightness 1 gives 1 on the floor.
        found.append(Ray((float(x), float(y), float(height)), float(brightness * 4.0 / DOME)))
    middle = looking_from(LAMP)
    for i in range(LAMP_SAMPLES):
        reach = LAMP_SPREAD * np.sqrt((i + 0.5) / LAMP_SAMPLES)
        x, y = reach * np.cos(golden * i), reach * np.sin(golden * i)
        aim = np.array(middle.towards) + x * np.array(middle.right) + y * np.array(middle.up)
        aim /= np.linalg.norm(aim)
        towards = (float(aim[0]), float(aim[1]), float(aim[2]))
        found.append(Ray(towards, LAMP_STRENGTH / LAMP_SAMPLES))
    return tuple(found)


def floor_irradiance() -> float:
    """What reaches the open floor."""
    return _on_floor(rays())


def irradiance(
    facets: Facets, raster: Raster, points: Shades, normals: Shades, share: Indices
) -> Shades:
    """How much light reaches points (n, 3) with unit normals (n, 3); unit frame, mm.

    ``share`` (n,), 0 to ``SHARES`` - 1, says which of the rays each point is tried with; the
    mean over neighbours with different shares is what they really get.
    """
    low, high = facets.points.min(axis=0), facets.points.max(axis=0)
    radius, middle = float(np.linalg.norm(high - low)) / 2, (low + high) / 2
    window = (-radius, -radius, radius, radius)
    lifted = (points - middle + OFFSET * radius * normals).astype(np.float32)
    per_mm = MAP_PIXELS / (2 * radius)
    total = np.zeros(len(points), dtype=np.float32)
    everything = rays()
    for number in range(SHARES):
        mine = np.flatnonzero(share == number)
        at, facing, light = lifted[mine], normals[mine], np.zeros(len(mine), dtype=np.float32)
        chosen = everything[number::SHARES]
        for ray in chosen:
            camera = looking_from(ray.towards)
            depths = raster.depths(camera.screen(facets.points - middle), window, MAP_SIZE)
            axes = camera.axes().astype(np.float32)
            slope = facing @ axes[2]
            turned = np.flatnonzero(slope > 0.0)
            across, up, deep = axes @ at[turned].T
            column = np.clip((across + radius) * per_mm, 0, MAP_PIXELS - 1).astype(np.int32)
            row = np.clip((radius - up) * per_mm, 0, MAP_PIXELS - 1).astype(np.int32)
            lit = deep >= depths[row, column]
            light[turned] += slope[turned] * lit * np.float32(ray.strength)
        # Every share is brought to the same light on the open floor.
        total[mine] = light * np.float32(floor_irradiance() / _on_floor(chosen))
    return total


def light_among_boxes(
    points: Array, normals: Array, owners: Indices, low: Array, high: Array, bodies: Indices
) -> Array:
    """How much light reaches points (n, 3) with unit normals (n, 3) among boxes; mm.

    The boxes run from ``low`` to ``high``, (m, 3) each, and belong to ``bodies`` (m,);
    ``owners`` (n,) is the body that each point lies on, whose boxes take no light from it.
    """
    total = np.zeros(len(points))
    others = owners[:, None] != bodies
    for ray in rays():
        towards = np.array(ray.towards)
        slope = normals @ towards
        turned = np.flatnonzero(slope > 0.0)
        # The ray is inside a box between entering its last slab and leaving its first one.
        enters, leaves = np.full((2, len(turned), len(low)), [[[0.1]], [[np.inf]]])
        for axis in range(3):
            step = towards[axis] or 1e-12
            start = points[turned, axis, None]
            near, far = (low, high) if step > 0 else (high, low)
            enters = np.maximum(enters, (near[:, axis] - start) / step)
            leaves = np.minimum(leaves, (far[:, axis] - start) / step)
        hit = (leaves > enters) & others[turned]
        total[turned] += ray.strength * slope[turned] * ~hit.any(axis=1)
    return total


def _on_floor(some: Sequence[Ray]) -> float:
    return sum(ray.strength * max(0.0, ray.towards[2]) for ray in some)
