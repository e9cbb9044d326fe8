"""Workings measured from a blank's edges as cut, where these aren't its finished ones.

A blank is cut larger by what is trimmed off, and smaller by what edging adds.  Workings keep
their place in the piece: figures from an edge change by what lies between the edge as cut and
the finished one, and what runs out at an edge runs out at the edge as cut too.  A cut that
takes a whole end or edge off goes with it, so that a mitre is cut as long as the blank is.
"""

from __future__ import annotations

from collections.abc import Mapping

from rodwright.geometry import TOUCH, Box, Vector, vector
from rodwright.unit import Bevel, Easing, Part, Refit, Surface, Working
from rodwright.unit.surfaces import HIGH, LOW
from rodwright.unit.workings.frames import plain

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
            at = [
                end
                for end in _ENDS
                if any(each.takes_off(end, blank.size) for each in part.workings)
            ]
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
    length, width, thickness = (plain(sum(each)) for each in zip(low, size, over, strict=True))
    high = [plain(a + b) for a, b in zip(low, size, strict=True)]
    return (length, width, thickness), Box(vector(low), vector(high))


def as_cut(size: Vector, working: Working, grown: Growth) -> Working | None:
    """A working of a finished blank of this size, in the frame of the blank as cut.

    None where nothing of it is left to cut.
    """
    if not grown:
        return working
    low = vector(-grown.get(surface, 0.0) for surface in LOW)
    high = vector(
        extent + grown.get(surface, 0.0) for extent, surface in zip(size, HIGH, strict=True)
    )
    return working.moved(Refit(size, Box(low, high)))


def waits(size: Vector, working: Working, grown: Growth) -> bool:
    """Whether a working can only be made once the piece is trimmed and edged.

    Those are rounded and bevelled arrises of edges that aren't there yet.
    """
    if not isinstance(working, Easing | Bevel):
        return False
    both = (working.surface, working.edge)
    if isinstance(working, Bevel) and (
        all(each.axis != 2 for each in both) or any(working.takes_off(each, size) for each in both)
    ):
        return False
    return any(each in grown for each in both)
