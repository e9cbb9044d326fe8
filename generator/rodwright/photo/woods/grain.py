"""From the part frame to one in which the grain runs along x.

The grain's frame: x along the grain, y across it, z through the thickness from 0, mm.  Of fronts
through which the grain runs on, x and y are measured in the unit, so that figures meet.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from rodwright.photo.woods.chance import Numbers
from rodwright.unit import Grain, Part


@dataclass(frozen=True, slots=True)
class GrainFrame:
    """Which axis of the part each axis of the grain's frame is, with its sign, and what is added.

    ``size`` is the part's along the grain, across it and through; across, of fronts that the grain
    runs through, that of any panel they may be cut from.
    """

    axes: tuple[int, int, int]
    signs: tuple[float, float, float]
    shift: tuple[float, float, float]
    size: tuple[float, float, float]

    def places(self, points: Numbers) -> Numbers:
        """Points of the part frame in the grain's."""
        return self.directions(points) + np.array(self.shift, np.float32)

    def directions(self, normals: Numbers) -> Numbers:
        """Directions of the part frame in the grain's."""
        turned: Numbers = normals[:, list(self.axes)] * np.array(self.signs, np.float32)
        return turned


_RUN = 1800.0
"""mm: fronts of one run may have several widths, and are glued up as one panel."""


def grain_frame(part: Part) -> GrainFrame:
    """The frame of a part's grain."""
    axes = (1, 0, 2) if part.blank.grain is Grain.CROSSWISE else (0, 1, 2)
    along, across, through = (part.blank.size[axis] for axis in axes)
    size = (along, across, through)
    if not part.grain_run:
        return GrainFrame(axes, (1.0, 1.0, 1.0), (0.0, 0.0, 0.0), size)
    signs, shift = [], []
    for axis in axes:
        direction = part.placement.axes[axis]
        sign = 1.0 if max(direction, key=abs) > 0 else -1.0
        start = sum(a * b for a, b in zip(direction, part.placement.origin, strict=True)) * sign
        signs.append(sign)
        shift.append(start)
    # Through the thickness each front has its own plies: from 0, whichever way it is turned.
    shift[2] = 0.0 if signs[2] > 0 else through
    return GrainFrame(
        axes, (signs[0], signs[1], signs[2]), (shift[0], shift[1], shift[2]), (along, _RUN, through)
    )


def key_of(part: Part, seed: int) -> tuple[object, ...]:
    """The words that decide a part's chance: its ref, or the run of fronts that it is of."""
    return (seed, "run", part.grain_run) if part.grain_run else (seed, "part", part.ref)
