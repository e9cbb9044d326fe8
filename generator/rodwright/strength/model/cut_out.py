"""How much of a level's stiffness is left where something is cut out of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.strength.bearings import moduli_of
from rodwright.strength.level_parts import Level
from rodwright.strength.level_sections import sections_along
from rodwright.strength.model.lines import NEAR

WEAK = 0.8
"""Where less than this share is left, a level is divided closer."""


@dataclass(frozen=True, slots=True)
class Left:
    """From ``start`` to ``stop`` (x, unit frame, mm), ``share`` of the whole section's EI."""

    start: float
    stop: float
    share: float


def weakened(level: Level) -> Iterator[tuple[str, tuple[Left, ...]]]:
    """For each pack of glued layers of a level, by the ref of its lowest: what is left along it.

    Raises:
        ValueError: its workings leave nothing of it somewhere.
    """
    for ply in level.plies:
        bare = replace(level, plies=(replace(ply, strips=()),), beside=())
        sections = sections_along(bare, lambda part: moduli_of(part, 0, 0.0))
        whole = max(each.bending for each in sections)
        yield (
            ply.layers[0].ref,
            tuple(Left(each.start, each.stop, each.bending / whole) for each in sections),
        )


def weak_places(left: Sequence[Left]) -> Iterator[float]:
    """Where a level is to be divided because little is left of it there."""
    for each in left:
        if each.share < WEAK and each.stop - each.start < NEAR * 2:
            middle = (each.start + each.stop) / 2
            yield from (middle - NEAR, middle + NEAR)


def share_left(left: Sequence[Left], start: float, stop: float) -> float:
    """What is left on the whole between two places: what gives way adds up along a beam."""
    gives = total = 0.0
    for each in left:
        length = min(stop, each.stop) - max(start, each.start)
        if length > 0:
            gives += length / each.share
            total += length
    return total / gives if gives else 1.0
