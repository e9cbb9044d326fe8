"""Whether two cuts into one piece meet, and how much wood is left between them."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import assert_never

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.unit import (
    Bore,
    Channel,
    FingerPull,
    Hole,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Slant,
    Surface,
    Working,
)

_SAME_AXIS = 0.5
"""mm.  Bores whose axes pass so close belong to one fitting, as a bolt and its nut do."""


@dataclass(frozen=True, slots=True)
class Cut:
    """A working of a blank of this size that a bore may meet, and the box round it."""

    working: Bore | Channel
    size: Vector
    box: Box

    @classmethod
    def of(cls, size: Vector, working: Working) -> Cut | None:
        """The cut of a working; None for those that bores may run into."""
        if isinstance(working, Bore | Channel):
            return cls(working, size, working.bounds(size))
        if isinstance(working, Notch | Slant):
            return None
        assert_never(working)

    def beside(self, other: Cut) -> Cut:
        """So much of it as may come near another: a pocket hole slants, and is nowhere as wide
        and as deep as all of it."""
        if not isinstance(self.working, PocketHole):
            return self
        return replace(self, box=self.working.bounds_beside(self.size, other.box))

    @property
    def surface(self) -> Surface:
        """The surface it is cut in from."""
        return self.working.surface


def wood_between(first: Cut, second: Cut) -> float | None:
    """Wood (mm) between a bore and another cut from the opposite surface, negative where they
    overlap; None where they don't face each other, or one is a hole right through."""
    axis = first.surface.axis
    if second.surface.axis != axis or second.surface is first.surface:
        return None
    bored = [cut.working for cut in (first, second) if isinstance(cut.working, Bore)]
    if not bored or any(isinstance(each, Hole) and each.depth is None for each in bored):
        return None
    first, second = first.beside(second), second.beside(first)
    if not _overlap_across(first, second, axis):
        return None
    low, high = (second, first) if first.surface.at_high else (first, second)
    left = high.box.low[axis] - low.box.high[axis]
    # Two channels' and mortises' tongues have a limit of their own, which is higher.
    holes = any(isinstance(working, Hole) for working in bored)
    return left if holes or left <= TOUCH else None


def runs_into(first: Cut, second: Cut) -> bool:
    """Whether a hole and another cut break into each other, one not lying within the other.

    Bores of one fitting, whose axes meet, and holes on the middle line of a channel or
    wholly in its floor are meant to.
    """
    first, second = first.beside(second), second.beside(first)
    if not isinstance(first.working, Hole):
        first, second = second, first
    hole, other = first.working, second.working
    if not isinstance(hole, Hole) or not first.box.intersects(second.box):
        return False
    axis = first.surface.axis
    if isinstance(other, PocketHole):
        return True
    if isinstance(other, Hole):
        return _holes_collide(first, second)
    if axis in _open_axes(other):
        depth = first.box.low[axis], first.box.high[axis]
        if second.box.spanning(axis, *depth).contains(first.box):
            return False
    return not _on_middle_line(first, second) and _overlap_across(first, second, axis)


def _open_axes(channel: Channel | Mortise | FingerPull) -> set[int]:
    """The axes of the surfaces that a cut is open to all along."""
    if isinstance(channel, Rebate):
        return {channel.surface.axis, channel.edge.axis}
    return {channel.surface.axis}


def _on_middle_line(hole: Cut, other: Cut) -> bool:
    """Whether a hole's axis meets the middle line of a channel or a mortise."""
    size = other.box.size
    run = max((i for i in range(3) if i != other.surface.axis), key=lambda i: size[i])
    free = {run, other.surface.axis, hole.surface.axis}
    return (
        all(
            abs(hole.box.centre[i] - other.box.centre[i]) <= _SAME_AXIS
            for i in range(3)
            if i not in free
        )
        and len(free) < 3
    )


def _holes_collide(first: Cut, second: Cut) -> bool:
    axis, across = first.surface.axis, second.surface.axis
    one, other = first.box.centre, second.box.centre
    radii = [cut.working.diameter / 2 for cut in (first, second) if isinstance(cut.working, Hole)]
    if axis == across:
        apart = math.dist(*([at[i] for i in range(3) if i != axis] for at in (one, other)))
        # One within the other is a stepped or a deepened hole.
        return abs(radii[0] - radii[1]) + _SAME_AXIS < apart < sum(radii) - TOUCH
    third = 3 - axis - across
    return _SAME_AXIS < abs(one[third] - other[third]) < sum(radii) - TOUCH


def _overlap_across(first: Cut, second: Cut, axis: int) -> bool:
    """Whether two cuts overlap seen along an axis, holes along it as discs."""
    if any(lap <= TOUCH for i, lap in enumerate(first.box.overlap(second.box)) if i != axis):
        return False
    discs = [c for c in (first, second) if isinstance(c.working, Hole) and c.surface.axis == axis]
    if not discs:
        return True
    disc = discs[0]
    other = second if disc is first else first
    reach = disc.box.size[(axis + 1) % 3] / 2
    places = [i for i in range(3) if i != axis]
    if len(discs) == 2:
        apart = math.dist(*([c.box.centre[i] for i in places] for c in (first, second)))
        return apart < reach + other.box.size[(axis + 1) % 3] / 2 - TOUCH
    nearest = [min(max(disc.box.centre[i], other.box.low[i]), other.box.high[i]) for i in places]
    return math.dist(nearest, [disc.box.centre[i] for i in places]) < reach - TOUCH
