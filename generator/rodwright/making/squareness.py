"""The two diagonals to measure before the glue sets; mm."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import dist

import numpy as np

from rodwright.geometry import Box
from rodwright.making.bodies import body_of
from rodwright.unit import Unit

_BAR = 0.25
"""A board is a side of a frame if it is no more than this share of the whole across."""
_LONG = 0.4
"""And no less than this share of it along."""
_EQUAL = 0.05
"""mm; diagonals as near as this are equal."""


@dataclass(frozen=True, slots=True)
class Diagonals:
    """The diagonals of a frame or a carcass over its outside corners: ``rising`` from its lower
    left to its upper right, ``falling`` from its upper left to its lower right, as it is seen
    along ``axis`` (1: from the front; 2: from above, where lower is the front); and
    how wide and high it is between them."""

    rising: float
    falling: float
    axis: int
    size: tuple[float, float]

    @property
    def equal(self) -> bool:
        """Whether the two are equal when it is square."""
        return abs(self.rising - self.falling) < _EQUAL


def diagonals(unit: Unit, refs: Sequence[str]) -> Diagonals | None:
    """The diagonals of what some parts make; None of what is no frame: two boards each way."""
    boxes = [unit.part(ref).bounds() for ref in refs]
    whole = Box.of_boxes(boxes)
    planes = [pair for pair in ((0, 2), (0, 1)) if _is_frame(boxes, whole, *pair)]
    if not planes:
        return None
    u, v = max(planes, key=lambda pair: whole.size[pair[0]] * whole.size[pair[1]])
    points = np.concatenate([body_of(unit.part(ref)).corners.reshape(-1, 3) for ref in refs])
    flat = points[:, [u, v]]
    low, high = flat.min(axis=0), flat.max(axis=0)
    share = (flat - low) / (high - low)
    ends = [
        flat[at].tolist()
        for at in (
            (share[:, 0] + share[:, 1]).argmin(),
            (share[:, 0] + share[:, 1]).argmax(),
            (share[:, 0] - share[:, 1]).argmin(),
            (share[:, 0] - share[:, 1]).argmax(),
        )
    ]
    across, up = (high - low).tolist()
    axis = 3 - u - v
    return Diagonals(dist(ends[0], ends[1]), dist(ends[2], ends[3]), axis, (across, up))


def _is_frame(boxes: Sequence[Box], whole: Box, u: int, v: int) -> bool:
    return all(
        sum(
            box.size[along] >= _LONG * whole.size[along]
            and box.size[across] <= _BAR * whole.size[across]
            for box in boxes
        )
        >= 2
        for along, across in ((u, v), (v, u))
    )
