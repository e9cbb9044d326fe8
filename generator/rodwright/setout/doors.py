"""Doors: slab or frame and panel, inset or overlay, single or in pairs."""

from __future__ import annotations

from rodwright.spec.doors import DoorsSpec

AIR = 2.0
"""Left between an inset door and what stands behind it, mm (common practice, no source)."""


def behind(wish: DoorsSpec, front_plane: float, thickness: float) -> float:
    """The y (>= 0, mm, unit frame) that the contents of a space stay behind.

    ``front_plane`` is the y of the front of what surrounds the door, ``thickness`` the
    door's.  An overlay door takes nothing of the space.
    """
    if wish.hung == "overlay":
        return 0.0
    return max(0.0, front_plane + thickness + AIR)
