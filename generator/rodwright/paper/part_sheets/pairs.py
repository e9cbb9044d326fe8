"""Handed pairs: parts that are each other's mirror images, so that one isn't made twice."""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from dataclasses import dataclass
from itertools import combinations

from rodwright.geometry import Vector
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Hole,
    Mitre,
    Mortise,
    Notch,
    Part,
    PocketHole,
    Rebate,
    Surface,
    Working,
)

Flips = tuple[bool, bool, bool]
"""Which axes of a part run the other way."""
_MIRRORS: tuple[Flips, ...] = (
    (False, True, False), (True, False, False), (False, False, True), (True, True, True),
)  # fmt: skip
"""Those that mirror a piece: an odd number of axes."""
_TURNS: tuple[Flips, ...] = (
    (False, False, False), (True, True, False), (True, False, True), (False, True, True),
)  # fmt: skip
"""Those that turn it over."""
_DIGITS = 3
"""Decimals of a millimetre to which places are equal."""


@dataclass(frozen=True, slots=True)
class Hands:
    """The refs of the parts that are a part's mirror image; none where it has none."""

    mirrored: tuple[str, ...] = ()


def hands(rows: Sequence[Sequence[Part]]) -> dict[str, Hands]:
    """For the first ref of each row of equal pieces, the row that is its mirror image."""
    found = {row[0].ref: Hands() for row in rows}
    like: dict[Hashable, list[Sequence[Part]]] = {}
    for row in rows:
        if row[0].workings:
            blank = row[0].blank
            same = (blank.stock.name, blank.size, blank.grain, row[0].role)
            like.setdefault(same, []).append(row)
    for alike in like.values():
        for one, other in combinations(alike, 2):
            if _mirrored(one[0], other[0]):
                for mine, theirs in ((one, other), (other, one)):
                    if not found[mine[0].ref].mirrored:
                        found[mine[0].ref] = Hands(tuple(part.ref for part in theirs))
    return found


def _mirrored(one: Part, other: Part) -> bool:
    """Whether a part is the mirror image of another, and can't be turned into it."""
    there = _shape(other, (False, False, False))
    return any(_shape(one, flips) == there for flips in _MIRRORS) and not any(
        _shape(one, flips) == there for flips in _TURNS
    )


def _shape(part: Part, flips: Flips) -> frozenset[Hashable]:
    size = part.blank.size
    edged = {("edged", _surface(each.surface, flips)) for each in part.edged}
    return frozenset(_told(each, size, flips) for each in part.workings) | edged


def _told(working: Working, size: Vector, flips: Flips) -> Hashable:
    """What a working takes, where axes run the other way."""
    box = working.bounds(size)
    low = tuple(
        round(extent - high if flip else at, _DIGITS) + 0.0
        for at, high, extent, flip in zip(box.low, box.high, size, flips, strict=True)
    )
    extents = tuple(round(each, _DIGITS) for each in box.size)
    return (working.called, low, extents, *_more(working, size, flips))


def _more(working: Working, size: Vector, flips: Flips) -> tuple[Hashable, ...]:
    """What a working's box doesn't say."""

    def on(*surfaces: Surface) -> Hashable:
        return frozenset(_surface(each, flips) for each in surfaces)

    match working:
        case Mitre() | Bevel():
            return tuple(
                round(-part if flip else part, _DIGITS) + 0.0
                for _, normal in working.planes(size)
                for part, flip in zip(normal, flips, strict=True)
            )
        case Hole():
            through = working.depth is None or working.depth >= size[working.surface.axis]
            return () if through else (on(working.surface),)
        case Mortise():
            return (on(working.surface), working.round_ends)
        case PocketHole():
            return (on(working.surface, working.end), working.angle, working.stop, working.screw)
        case FingerPull():
            return (on(working.surface, working.edge), working.radius)
        case Easing() | Rebate():
            return (on(working.surface, working.edge),)
        case Notch():
            return ()
    return (on(working.surface),)


def _surface(surface: Surface, flips: Flips) -> Surface:
    return surface.opposite if flips[surface.axis] else surface
