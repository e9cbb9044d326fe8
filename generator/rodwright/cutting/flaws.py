"""Flaws of what a sheet or board is cut into: which it has, and how large it is without them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from rodwright.cutting.supplies import Flaw

_NOISE = 1e-5
"""mm: what reaches no further in isn't in it."""
_Sides = tuple[float, float, float, float]
"""From, along and across, and to."""


def flaws_within(
    flaws: Iterable[Flaw], x: float, y: float, length: float, width: float
) -> tuple[Flaw, ...]:
    """The flaws of a part of a sheet or board (mm, in its frame), as far as they are in it and
    measured from its own near corner; ``width`` is 0 for what has none."""
    found = []
    for flaw in flaws:
        near, far = max(flaw.x - x, 0.0), min(flaw.x + flaw.length - x, length)
        face, back = min(max(flaw.y - y, 0.0), width), min(flaw.y + flaw.width - y, width)
        if far - near > _NOISE and (back - face > _NOISE or not width):
            # What is added up along a board has noise.
            sides = (near, face, far - near, max(0.0, back - face))
            at_x, at_y, long, wide = (round(each, 6) for each in sides)
            found.append(Flaw(at_x, at_y, long, wide, flaw.why))
    return tuple(found)


class Clear(NamedTuple):
    """A rectangle that is free of flaws, mm, by its near corner."""

    x: float
    y: float
    length: float
    width: float


def clear_of(flaws: Iterable[Flaw], length: float, width: float) -> list[Clear]:
    """The largest rectangles of something that are free of its flaws, each of which lies in no
    other; ``width`` is 0 for what has none."""
    high = width or 1.0
    free: list[_Sides] = [(0.0, 0.0, length, high)]
    for flaw in flaws:
        top = flaw.y + flaw.width if width else high
        taken = (flaw.x, flaw.y, flaw.x + flaw.length, top)
        parts = {part for each in free for part in _beside(each, taken)}
        free = [each for each in parts if not any(_lies_in(each, one) for one in parts)]
    return [Clear(x0, y0, x1 - x0, (y1 - y0) if width else 0.0) for x0, y0, x1, y1 in sorted(free)]


def flaws_said(flaws: Sequence[Flaw]) -> str:
    """``with a flaw: old screw holes``; nothing where there is none."""
    if not flaws:
        return ""
    why = ", ".join(dict.fromkeys(each.why for each in flaws if each.why))
    many = "a flaw" if len(flaws) == 1 else f"{len(flaws)} flaws"
    return f"with {many}: {why}" if why else f"with {many}"


def _beside(free: _Sides, taken: _Sides) -> Iterator[_Sides]:
    """The largest rectangles of one that are free of what is taken."""
    left, low, right, high = free
    x0, y0, x1, y1 = taken
    if left >= x1 or right <= x0 or low >= y1 or high <= y0:
        yield free
        return
    if x0 > left:
        yield left, low, x0, high
    if x1 < right:
        yield x1, low, right, high
    if y0 > low:
        yield left, low, right, y0
    if y1 < high:
        yield left, y1, right, high


def _lies_in(one: _Sides, other: _Sides) -> bool:
    """Whether one lies in another that isn't the same."""
    inside = all(one[at] >= other[at] and one[at + 2] <= other[at + 2] for at in (0, 1))
    return inside and one != other
