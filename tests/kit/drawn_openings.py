"""Openings drawn at random, what is read of them, and whether a unit goes into what was drawn."""

from __future__ import annotations

import math
import random
from dataclasses import dataclass
from typing import Any

from shapely import Polygon, box

from kit.quadrilaterals import told
from rodwright.opening.readings import (
    BOW_ERROR,
    FLOOR_ASSUMED,
    LEVEL_ERROR,
    PLUMB_ASSUMED,
    TAPE_ERROR,
    TOP_ASSUMED,
)

_POINTS = 41


@dataclass(frozen=True)
class Drawn:
    """The true opening: corners, and how far each edge bellies inwards half-way, as an arc of a
    parabola; mm."""

    corners: tuple[tuple[float, float], ...]
    bellies: dict[str, float]

    def at(self, name: str, share: float) -> tuple[float, float]:
        """The point of an edge at a share of it, from below or from the left."""
        first, second, (x, z) = {
            "left": (0, 3, (1, 0)), "right": (1, 2, (-1, 0)),
            "floor": (0, 1, (0, 1)), "top": (3, 2, (0, -1)),
        }[name]  # fmt: skip
        (ax, az), (bx, bz) = self.corners[first], self.corners[second]
        bow = 4 * share * (1 - share) * self.bellies.get(name, 0.0)
        return ax + share * (bx - ax) + bow * x, az + share * (bz - az) + bow * z

    def line(self, name: str) -> list[tuple[float, float]]:
        """Points along an edge."""
        return [self.at(name, number / (_POINTS - 1)) for number in range(_POINTS)]

    @property
    def outline(self) -> Polygon:
        """The whole opening."""
        ring = [*self.line("floor"), *self.line("right")[1:]]
        return Polygon([*ring, *self.line("top")[-2::-1], *self.line("left")[-2:0:-1]])

    def goes_in(self, width: float, height: float) -> bool:
        """Whether a level and plumb rectangle of this size goes in, by shapely: stood on the
        floor's high spot, midway between what is nearest of the walls."""
        left, bottom = sum(x for x, _ in self.corners) / 4 - width / 2, 0.0
        for _ in range(4):
            bottom = max(z for x, z in self.line("floor") if left - 30 <= x <= left + width + 30)
            stands = [bottom - 30, bottom + height + 30]
            lefts = max(x for x, z in self.line("left") if stands[0] <= z <= stands[1])
            rights = min(x for x, z in self.line("right") if stands[0] <= z <= stands[1])
            left = (lefts + rights - width) / 2
        return bool(
            self.outline.buffer(0.05).covers(box(left, bottom, left + width, bottom + height))
        )


def draw_opening(
    chance: random.Random, walls: float | None = None, levels: float | None = None
) -> Drawn:
    """An opening as the readings' assumptions have it: two standard deviations are their bounds.

    ``walls`` and ``levels`` are how far (mm) each wall, and floor and top, belly in at most,
    evenly spread from nothing; unless said they bow either way as is assumed.
    """
    width, height = chance.uniform(600, 2400), chance.uniform(1200, 2600)
    floor, top = (chance.gauss(0, each / 2000) for each in (FLOOR_ASSUMED, TOP_ASSUMED))
    left, right = (chance.gauss(0, PLUMB_ASSUMED / 2000) for _ in range(2))
    a, b = (0.0, 0.0), (width, floor * width)
    d = (left * height, height)
    c = (width + right * height, height + top * width)

    def belly(most: float | None) -> float:
        # A reading crosses two edges, so that each has half of the variance.
        assumed = chance.gauss(0, BOW_ERROR / 2 / math.sqrt(2))
        return assumed if most is None else chance.uniform(0, most)

    bellies = {name: belly(walls) for name in ("left", "right")}
    bellies |= {name: belly(levels) for name in ("floor", "top")}
    return Drawn((a, b, c, d), bellies)


def read_drawn(
    drawn: Drawn,
    chance: random.Random,
    widths: tuple[str, ...] = (),
    heights: tuple[str, ...] = (),
    square: bool = False,
) -> dict[str, Any]:
    """What a tape and a level say of it, as a spec has them.

    Sizes at the places named, or one wherever the tape happened to be held; with ``square``
    diagonals, plumb and level too.
    """
    places = {"bottom": 0.0, "left": 0.0, "middle": 0.5, "top": 1.0, "right": 1.0}

    def tape(first: tuple[float, float], second: tuple[float, float]) -> float:
        return math.dist(first, second) + chance.gauss(0, TAPE_ERROR / 2)

    def across(names: tuple[str, ...], low: str, high: str) -> Any:
        if not names:
            share = chance.random()
            return tape(drawn.at(low, share), drawn.at(high, share))
        return {
            name: tape(drawn.at(low, places[name]), drawn.at(high, places[name])) for name in names
        }

    found: dict[str, Any] = {
        "width": across(widths, "left", "right"),
        "height": across(heights, "floor", "top"),
    }
    if not square:
        return found
    a, b, c, d = drawn.corners
    out = chance.gauss
    found["diagonals"] = {"rising": tape(a, c), "falling": tape(d, b)}
    plumb = {}
    for name, (low, high), inwards in (("left", (a, d), 1), ("right", (b, c), -1)):
        run = 1000 * (high[0] - low[0]) / (high[1] - low[1]) + out(0, LEVEL_ERROR / 2)
        plumb[name] = {
            "out": told(run),
            "over": 1000.0,
            "leans": "in" if run * inwards > 0 else "out",
        }
    level = {}
    over = min(1000.0, math.dist(a, b))
    for name, (low, high) in (("floor", (a, b)), ("top", (d, c))):
        run = over * (high[1] - low[1]) / (high[0] - low[0]) + out(0, LEVEL_ERROR / 2)
        level[name] = {"out": told(run), "over": over, "rises": "right" if run > 0 else "left"}
    return found | {"plumb": plumb, "level": level}
