"""Workings measured from a blank's edges as cut, where these aren't its finished ones.

A blank is cut larger by what is trimmed off, and smaller by what edging adds.  Workings keep
their place in the piece: figures from an edge change by what lies between the edge as cut and
the finished one, and what runs out at an edge runs out at the edge as cut too.  A cut that
takes a whole end or edge off goes with it, so that a mitre is cut as long as the blank is.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import replace

from rodwright.geometry import TOUCH, Box, Vector, vector
from rodwright.unit import (
    Bevel,
    Easing,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Part,
    PocketHole,
    Rebate,
    Surface,
    Working,
)
from rodwright.unit.laid import takes_off
from rodwright.unit.surfaces import HIGH, LOW

_DIGITS = 9
"""Decimals of a millimetre that moved figures keep."""
_ENDS = (Surface.NEAR_END, Surface.FAR_END)
_EDGES = (Surface.FACE_EDGE, Surface.BACK_EDGE)

Growth = Mapping[Surface, float]
"""By how much (mm) the blank as cut reaches past each finished surface, less than 0 where
edging makes up the rest; surfaces that stay are left out."""


def glued_up(part: Part) -> bool:
    """Whether a part is a layer that is glued to others before it gets its size."""
    return bool(part.blank.trim_length and part.blank.trim_width)


def trims(part: Part) -> dict[Surface, float]:
    """What is trimmed off each end and edge, mm.

    It is where the blank says.  Where it doesn't, layers that are glued up are trimmed evenly
    all round, and a member that is mitred or bevelled at both ends evenly at both; else all of
    the length is at the one end that is cut so, or at the far end, so that the near end is
    true from the first (common practice, no source).
    """
    blank = part.blank
    left_on: dict[Surface, float] = {}
    for amount, both in ((blank.trim_length, _ENDS), (blank.trim_width, _EDGES)):
        at = [each for each in both if each in blank.trim_at]
        if not at and both == _ENDS and not glued_up(part):
            at = [end for end in _ENDS if any(takes_off(each, end, blank.size)
                                              for each in part.workings)]  # fmt: skip
            at = at or [Surface.FAR_END]
        at = at or list(both)
        left_on |= {each: amount / len(at) for each in at if amount}
    return left_on


def growth(part: Part) -> dict[Surface, float]:
    """By how much the blank as cut reaches past each finished surface, mm."""
    grown = trims(part)
    for each in part.edged:
        grown[each.surface] = grown.get(each.surface, 0.0) - each.thickness
    return {surface: amount for surface, amount in grown.items() if abs(amount) > TOUCH}


def outlines(part: Part) -> tuple[Vector, Box]:
    """Size of the blank as cut, and the finished outline in its frame, mm."""
    size, grown = part.blank.size, growth(part)
    low = [grown.get(surface, 0.0) for surface in LOW]
    over = [grown.get(surface, 0.0) for surface in HIGH]
    length, width, thickness = (_plain(sum(each)) for each in zip(low, size, over, strict=True))
    high = [_plain(a + b) for a, b in zip(low, size, strict=True)]
    return (length, width, thickness), Box(vector(low), vector(high))


def as_cut(size: Vector, working: Working, grown: Growth) -> Working | None:
    """A working of a finished blank of this size, in the frame of the blank as cut.

    None where nothing of it is left to cut.
    """
    return _Cut(size, grown).moved(working) if grown else working


def waits(size: Vector, working: Working, grown: Growth) -> bool:
    """Whether a working can only be made once the piece is trimmed and edged.

    Those are rounded and bevelled arrises of edges that aren't there yet.
    """
    if not isinstance(working, Easing | Bevel):
        return False
    both = (working.surface, working.edge)
    if isinstance(working, Bevel) and (
        all(each.axis != 2 for each in both) or any(takes_off(working, each, size) for each in both)
    ):
        return False
    return any(each in grown for each in both)


class _Cut:
    """Moves workings of a finished blank to the edges as cut."""

    def __init__(self, size: Vector, grown: Growth) -> None:
        self._finished, self._grown = size, grown
        self._before = [grown.get(surface, 0.0) for surface in LOW]
        after = [grown.get(surface, 0.0) for surface in HIGH]
        self._size = [sum(each) for each in zip(size, self._before, after, strict=True)]

    def moved(self, working: Working) -> Working | None:
        match working:
            case Rebate(surface, edge, width, depth, start, stop):
                run = self._span(3 - surface.axis - edge.axis, start, stop)
                width, depth = self._from(edge, width), self._from(surface, depth)
                if run is None or width <= TOUCH or depth <= TOUCH:
                    return None
                return replace(working, width=width, depth=depth, start=run[0], stop=run[1])
            case Groove(surface, at, width, _, start, stop):
                return self._channel(working, 3 - surface.axis, 0, at, width, start, stop)
            case Housing(_, at, width, _, start, stop):
                return self._channel(working, 0, 1, at, width, start, stop)
            case Notch(x, y, length, width):
                along, across = self._stretch(0, x, length), self._stretch(1, y, width)
                if along is None or across is None:
                    return None
                return replace(working, x=along[0], y=across[0], length=along[1], width=across[1])
            case Mitre():
                return self._mitre(working)
            case Easing(surface, edge, _, start, stop):
                run = self._span(3 - surface.axis - edge.axis, start, stop)
                return run and replace(working, start=run[0], stop=run[1])
            case Hole(surface, position, _, depth):
                if depth is not None and (depth := self._from(surface, depth)) <= TOUCH:
                    return None
                return replace(working, position=self._place(surface, position), depth=depth)
            case Mortise():
                return self._mortise(working)
            case Bevel():
                return self._bevel(working)
            case PocketHole(surface, end, at):
                out = self._grown.get(end, 0.0)
                slope = math.radians(working.angle)
                return replace(
                    working,
                    position=_plain(at + self._before[3 - surface.axis - end.axis]),
                    exit=_plain(working.exit + out * math.tan(slope)),
                    stop=_plain(working.stop + out / math.cos(slope)),
                )

    def _from(self, surface: Surface, length: float) -> float:
        """A length into the piece from one of its surfaces."""
        return _plain(length + self._grown.get(surface, 0.0))

    def _stretch(self, axis: int, at: float, extent: float) -> tuple[float, float] | None:
        """Where something begins and how far it reaches; to the edge as cut where it ran out."""
        low = 0.0 if at <= TOUCH else max(0.0, at + self._before[axis])
        end = at + extent
        out = end >= self._finished[axis] - TOUCH
        high = self._size[axis] if out else min(self._size[axis], end + self._before[axis])
        return (_plain(low), _plain(high - low)) if high - low > TOUCH else None

    def _span(
        self, axis: int, start: float, stop: float | None
    ) -> tuple[float, float | None] | None:
        """The same of what has a start and a stop, None for right through."""
        end = self._finished[axis] if stop is None else stop
        reach = self._stretch(axis, start, end - start)
        if reach is None:
            return None
        high = _plain(sum(reach))
        return reach[0], None if high >= self._size[axis] - TOUCH else high

    def _channel(
        self,
        working: Groove | Housing,
        across: int,
        run: int,
        at: float,
        width: float,
        start: float,
        stop: float | None,
    ) -> Working | None:
        place, ends = self._stretch(across, at, width), self._span(run, start, stop)
        depth = self._from(working.surface, working.depth)
        if place is None or ends is None or depth <= TOUCH:
            return None
        return replace(
            working, position=place[0], width=place[1], depth=depth, start=ends[0], stop=ends[1]
        )

    def _place(self, surface: Surface, position: tuple[float, float]) -> tuple[float, float]:
        first, second = surface.across
        return (
            _plain(position[0] + self._before[first]),
            _plain(position[1] + self._before[second]),
        )

    def _mortise(self, mortise: Mortise) -> Working | None:
        depth = self._from(mortise.surface, mortise.depth)
        first, second = mortise.surface.across
        along = self._stretch(first, mortise.position[0], mortise.extent[0])
        across = self._stretch(second, mortise.position[1], mortise.extent[1])
        if along is None or across is None or depth <= TOUCH:
            return None
        place, extent = (along[0], across[0]), (along[1], across[1])
        return replace(mortise, position=place, extent=extent, depth=depth)

    def _mitre(self, mitre: Mitre) -> Working:
        """Goes with its end; where its long points are moved it is told as a bevel."""
        out = self._grown.get(mitre.long, 0.0)
        if not out:
            return mitre
        reach = self._size[mitre.long.axis] - out
        depth = reach * math.tan(math.radians(mitre.angle))
        return Bevel(mitre.end, mitre.long.opposite, _plain(reach), _plain(depth))

    def _bevel(self, bevel: Bevel) -> Working | None:
        """Stays where it is, but goes with an end or edge that it takes off whole."""
        share = 1.0
        for surface, leg in ((bevel.surface, bevel.depth), (bevel.edge, bevel.width)):
            if not takes_off(bevel, surface, self._finished):
                share += self._grown.get(surface, 0.0) / leg
        if share <= 0:
            return None
        return replace(bevel, width=_plain(bevel.width * share), depth=_plain(bevel.depth * share))


def _plain(length: float) -> float:
    return round(length, _DIGITS) + 0.0
