"""Small scenes to be photographed."""

from __future__ import annotations

import numpy as np

from rodwright.geometry.vectors import Vector
from rodwright.photo.scene import Body, Camera, Surface


def block(
    surface: Surface, low: Vector = (-100, -100, -100), high: Vector = (100, 100, 100)
) -> Body:
    """A block, its faces seen from outside; from inside, where ``low`` and ``high`` change places
    in one axis."""
    points, normals, triangles = [], [], []
    for axis in range(3):
        for end, sign in ((low, -1.0), (high, 1.0)):
            one, other = (axis + 1) % 3, (axis + 2) % 3
            corners = np.empty((4, 3))
            corners[:, axis] = end[axis]
            corners[:, one] = [low[one], high[one], high[one], low[one]]
            corners[:, other] = [low[other], low[other], high[other], high[other]]
            if sign < 0:
                corners = corners[::-1]
            normal = np.zeros(3)
            normal[axis] = sign
            before = 4 * len(points)
            points.append(corners)
            normals.append(np.tile(normal, (4, 1)))
            triangles += [[before, before + 1, before + 2], [before, before + 2, before + 3]]
    return Body(
        "block", np.concatenate(points), np.concatenate(normals), np.array(triangles), surface
    )


def ball(surface: Surface, radius: float = 100.0, rings: int = 48) -> Body:
    """A ball round the origin, smooth."""
    polar = np.linspace(0.0, np.pi, rings + 1)
    round_ = np.linspace(0.0, 2 * np.pi, 2 * rings + 1)
    theta, phi = np.meshgrid(polar, round_, indexing="ij")
    normals = np.stack(
        [np.sin(theta) * np.cos(phi), np.sin(theta) * np.sin(phi), np.cos(theta)], axis=-1
    ).reshape(-1, 3)
    across = len(round_)
    start = (np.arange(rings)[:, None] * across + np.arange(2 * rings)[None, :]).ravel()
    below = start + across
    triangles = np.concatenate(
        [
            np.stack([start, below, below + 1], axis=1),
            np.stack([start, below + 1, start + 1], axis=1),
        ]
    )
    return Body("ball", radius * normals, normals, triangles, surface)


def before(away: float = 1000.0, width: int = 16, height: int = 16, focal: float = 4.0) -> Camera:
    """A camera that looks at the origin from the front."""
    return Camera((0.0, -away, 0.0), 0.0, width, height, focal)
