"""Which points a working cuts away, straight from what it means: for checks by sampling."""

from __future__ import annotations

import math
from typing import assert_never

import numpy as np
from numpy.typing import NDArray

from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Surface,
    Working,
)

Array = NDArray[np.float64]


def cut_away(points: Array, size: Array, working: Working) -> NDArray[np.bool_]:
    """Whether each of the points (n, 3) of a blank of this size is cut away."""

    def below(surface: Surface) -> Array:
        at = points[:, surface.axis]
        return size[surface.axis] - at if surface.at_high else at

    def between(at: Array, start: float, stop: float | None) -> NDArray[np.bool_]:
        return (at >= start) & (at <= (math.inf if stop is None else stop))

    match working:
        case Rebate(surface, edge, width, depth, start, stop):
            along = points[:, 3 - surface.axis - edge.axis]
            return (below(surface) < depth) & (below(edge) < width) & between(along, start, stop)
        case Easing(surface, edge, radius, start, stop):
            along = points[:, 3 - surface.axis - edge.axis]
            u, v = radius - below(surface), radius - below(edge)
            corner = (u > 0) & (v > 0) & (np.hypot(u, v) > radius)
            return corner & between(along, start, stop)
        case Groove(surface, position, width, depth, start, stop):
            across = points[:, 3 - surface.axis]
            inside = between(across, position, position + width)
            return inside & (below(surface) < depth) & between(points[:, 0], start, stop)
        case Housing(surface, position, width, depth, start, stop):
            inside = between(points[:, 0], position, position + width)
            return inside & (below(surface) < depth) & between(points[:, 1], start, stop)
        case Notch(x, y, length, width):
            return between(points[:, 0], x, x + length) & between(points[:, 1], y, y + width)
        case Mitre(end, angle, long):
            return below(end) < below(long) * math.tan(math.radians(angle))
        case Bevel(surface, edge, width, depth):
            return below(surface) / depth + below(edge) / width < 1
        case Hole(surface, position, diameter, depth):
            first, second = (axis for axis in range(3) if axis != surface.axis)
            off = np.hypot(points[:, first] - position[0], points[:, second] - position[1])
            return (off < diameter / 2) & between(below(surface), 0.0, depth)
        case Mortise(surface, position, extent, depth, round_ends):
            first, second = (axis for axis in range(3) if axis != surface.axis)
            u = np.abs(points[:, first] - position[0] - extent[0] / 2)
            v = np.abs(points[:, second] - position[1] - extent[1] / 2)
            inside = (u < extent[0] / 2) & (v < extent[1] / 2) & (below(surface) < depth)
            if round_ends:
                radius = min(extent) / 2
                past = np.hypot(
                    np.maximum(u - extent[0] / 2 + radius, 0),
                    np.maximum(v - extent[1] / 2 + radius, 0),
                )
                # Only the longer extent has round ends; across it no point is past the radius.
                inside &= past < radius
            return inside
        case PocketHole(surface, end, position, leaves, stop, diameter, screw, angle):
            slope = math.radians(angle)
            inward, down = below(end), below(surface) - leaves
            along = inward * math.cos(slope) - down * math.sin(slope)
            over = inward * math.sin(slope) + down * math.cos(slope)
            off = np.hypot(over, points[:, 3 - surface.axis - end.axis] - position)
            return np.where(along > stop, off < diameter / 2, off < screw / 2)
        case FingerPull(surface, edge, position, radius, depth, start, stop):
            run = 3 - surface.axis - edge.axis
            half = math.sqrt(radius**2 - (radius - depth) ** 2)
            low = -math.inf if start <= 0 else start + half
            high = math.inf if stop is None or stop >= size[run] else stop - half
            along = points[:, run]
            down, over = radius - depth + below(surface), below(edge) - position
            return down**2 + over**2 + (along - np.clip(along, low, high)) ** 2 < radius**2
        case _:
            assert_never(working)
