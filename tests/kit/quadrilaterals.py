"""Openings with known corners, and what a tape, a plumb line and a level say of them."""

from __future__ import annotations

import math
from typing import Any

from rodwright.unit import Quadrilateral

WALLS = {"left": (0, 3), "right": (1, 2)}
LEVELS = {"floor": (0, 1), "top": (3, 2)}


def quadrilateral(
    width: float, height: float, moves: tuple[float, float, float, float, float, float]
) -> Quadrilateral:
    """A rectangle with three of its corners moved: bottom right, top right, top left."""
    a, b, c, d, e, f = moves
    return ((0.0, 0.0), (width + a, b), (width + c, height + d), (e, height + f))


def told(out: float) -> float:
    """How far out, as a spec has it: nobody reads less than a hundredth of a millimetre."""
    return abs(out) if abs(out) >= 0.01 else 0.0


def read(corners: Quadrilateral, error: dict[str, float] | None = None) -> dict[str, Any]:
    """Every reading of a plane, as a spec has them; ``error`` adds to some of them by name."""
    added = error or {}

    def length(name: str, first: int, second: int) -> float:
        return math.dist(corners[first], corners[second]) + added.get(name, 0.0)

    def slope(name: str, edge: tuple[int, int], upright: bool) -> float:
        (ax, az), (bx, bz) = (corners[number] for number in edge)
        out = (bx - ax) / (bz - az) if upright else (bz - az) / (bx - ax)
        return 1000.0 * out + added.get(name, 0.0)

    plumb: dict[str, Any] = {}
    for name, edge in WALLS.items():
        out = slope(f"plumb {name}", edge, True) * (1.0 if name == "left" else -1.0)
        plumb[name] = {"out": told(out), "over": 1000.0, "leans": "in" if out > 0 else "out"}
    level: dict[str, Any] = {}
    for name, edge in LEVELS.items():
        out = slope(f"level {name}", edge, False)
        level[name] = {"out": told(out), "over": 1000.0, "rises": "right" if out > 0 else "left"}
    return {
        "width": {"bottom": length("bottom", 0, 1), "top": length("top", 3, 2)},
        "height": {"left": length("left", 0, 3), "right": length("right", 1, 2)},
        "diagonals": {"rising": length("rising", 0, 2), "falling": length("falling", 3, 1)},
        "plumb": plumb,
        "level": level,
    }
