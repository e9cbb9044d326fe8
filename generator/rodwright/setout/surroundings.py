"""What stays round the unit in its room, for pictures of it there."""

from __future__ import annotations

from typing import Literal

from rodwright.geometry import Box
from rodwright.setout.setting import Setting
from rodwright.unit import Obstacle, Surroundings
from rodwright.wishes.cutouts import CutoutSpec, PipeCutout, SkirtingCutout

SOCKET_DEPTH = 9.0
"""How far a socket's plate stands off the wall, mm (common practice, no source)."""


def surroundings_of(setting: Setting) -> Surroundings:
    """The sloping ceiling and what the unit is cut out round, as the spec has them."""
    obstacles = tuple(_obstacle(setting, wish) for wish in setting.spec.cutouts)
    return Surroundings(setting.slope.ceiling if setting.slope else None, obstacles)


def _obstacle(setting: Setting, wish: CutoutSpec) -> Obstacle:
    outside = setting.rod.outside
    wall, width = outside.rear + (outside.gap_behind or 0.0), outside.width
    if isinstance(wish, SkirtingCutout):
        box = Box((0.0, wall - wish.depth, 0.0), (width, wall, wish.height))
        return Obstacle("skirting", box, 0)
    first, second = wish.at
    if not isinstance(wish, PipeCutout):
        low = (first, wall - SOCKET_DEPTH, second)
        return Obstacle("socket", Box(low, (first + wish.width, wall, second + wish.height)))
    half, rear = wish.diameter / 2, outside.rear
    runs: Literal[0, 1, 2]
    if wish.runs == "upright":
        runs, middle = 2, (first, rear - second, 0.0)
        ends = (0.0, outside.overall)
    elif wish.runs == "back":
        runs, middle, ends = 1, (first, rear, second), (setting.rod.inside.shelf_rear, wall)
    else:
        runs, middle, ends = 0, (0.0, rear - first, second), (0.0, width)
    return Obstacle("pipe", Box(middle, middle).grown(half).spanning(runs, *ends), runs)
