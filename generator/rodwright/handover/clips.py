"""Doors and drawers that open, wait and shut again: when, and how far."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.geometry import Box
from rodwright.pictures.opened import opened_motions
from rodwright.unit import Motion, Slide, Swing, Unit

OPENING = "doors and drawers"
"""What the clip is called."""
_MOVING, _OPEN, _SHUT = 1.5, 2.0, 1.0
"""Seconds that something moves, and that all stands open and shut before the clip begins anew; by
eye."""
_STEPS = 8
"""Straight stretches that a movement is told in: it begins and ends gently."""


@dataclass(frozen=True, slots=True)
class Move:
    """A motion as far as it opens, and its ``keys``: seconds, and the share that it stands open."""

    motion: Motion
    keys: tuple[tuple[float, float], ...]


@dataclass(frozen=True, slots=True)
class Clip:
    """All that moves, and how long it takes, seconds; the clip's end is its beginning."""

    moves: tuple[Move, ...]
    length: float


def opening(unit: Unit) -> Clip:
    """Every door and drawer as far as pictures have them open; what is behind doors waits."""
    motions = opened_motions(unit)
    late = [_is_behind_doors(unit, motion, motions) for motion in motions]
    top = _MOVING * (2 if any(late) else 1)
    length = 2 * top + _OPEN + _SHUT
    moves = []
    for motion, waits in zip(motions, late, strict=True):
        begin = _MOVING if waits else 0.0
        end = 2 * top + _OPEN - begin
        up, down = _eased(begin, 0.0, 1.0), _eased(end - _MOVING, 1.0, 0.0)
        whole = {0.0: 0.0, **dict(up), **dict(down), length: 0.0}
        moves.append(Move(motion, tuple(whole.items())))
    return Clip(tuple(moves), length)


def _eased(begin: float, low: float, high: float) -> list[tuple[float, float]]:
    found = []
    for step in range(_STEPS + 1):
        share = step / _STEPS
        gently = share * share * (3 - 2 * share)
        found.append((round(begin + _MOVING * share, 4), low + (high - low) * gently))
    return found


def _is_behind_doors(unit: Unit, motion: Motion, all_: Sequence[Motion]) -> bool:
    """Whether a drawer comes out through where a shut door is."""
    if not isinstance(motion, Slide):
        return False
    drawer = _box(unit, motion)
    for other in all_:
        door = _box(unit, other)
        if (
            isinstance(other, Swing)
            and door.low[1] < drawer.low[1]
            and all(door.low[axis] < drawer.high[axis] for axis in (0, 2))
            and all(drawer.low[axis] < door.high[axis] for axis in (0, 2))
        ):
            return True
    return False


def _box(unit: Unit, motion: Motion) -> Box:
    return Box.of_boxes(unit.part(ref).bounds() for ref in motion.refs)
