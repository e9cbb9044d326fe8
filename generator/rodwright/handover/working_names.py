"""Short names of workings, for the faces that they leave in a STEP file.

``row for adjustable shelves, 5 mm, 10 deep``: what it is, what it is for, how wide and how deep; no
place, since the face has that.  Nouns are the list's (:mod:`rodwright.handover.workings`).
Only plain letters, so that programs which don't decode others can still find them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import assert_never

from rodwright.geometry import TOUCH, Vector
from rodwright.handover.bores import in_rows
from rodwright.lengths import LengthUnit, format_length, ware_size
from rodwright.unit import (
    Bevel,
    Easing,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Slant,
    Working,
)


def working_names(workings: Sequence[Working], size: Vector, unit: LengthUnit) -> tuple[str, ...]:
    """A name for each working of a blank of this size (mm), in their order; lengths in ``unit``."""
    holes: dict[tuple[Hole, str], list[tuple[float, float]]] = {}
    for each in workings:
        if isinstance(each, Hole):
            holes.setdefault(_kind(each), []).append(each.position)
    rows = {kind: in_rows(places) for kind, places in holes.items()}
    return tuple(
        _named(each, size, unit, isinstance(each, Hole) and each.position in rows[_kind(each)])
        for each in workings
    )


def _kind(hole: Hole) -> tuple[Hole, str]:
    """Holes that differ by their place alone; what they are for is told apart too."""
    return replace(hole, position=(0.0, 0.0)), hole.use


def _named(working: Working, size: Vector, unit: LengthUnit, in_row: bool) -> str:
    def say(*lengths: float) -> str:
        return f"{' x '.join(format_length(length, unit) for length in lengths)} {unit}"

    def ware(size: float) -> str:
        bare = ware_size(size, unit)
        return f"{bare[:-1]} {unit})" if bare.endswith(")") else f"{bare} {unit}"

    def deep(depth: float) -> str:
        return f"{format_length(depth, unit)} deep"

    match working:
        case Hole(_, _, diameter, depth):
            sizes = [ware(diameter), "right through" if depth is None else deep(depth)]
        case Groove(_, _, width, depth) | Housing(_, _, width, depth) | Rebate(_, _, width, depth):
            sizes = [say(width), deep(depth)]
        case Mortise(surface, _, extent, depth):
            through = depth >= size[surface.axis] - TOUCH
            sides = sorted(extent, reverse=True) if working.round_ends else extent
            sizes = [say(*sides), "right through" if through else deep(depth)]
        case Notch(_, _, length, width):
            sizes = [say(length, width), "right through"]
        case PocketHole(diameter=diameter, angle=angle):
            sizes = [ware(diameter), f"at {_degrees(angle)}"]
        case Easing(_, _, radius):
            sizes = [f"{say(radius)} radius"]
        case Mitre() | Bevel():
            sizes = [_degrees(working.angle)]
        case _:
            assert_never(working)
    what = "row" if in_row else working.called
    use = "" if isinstance(working, Slant) else working.use
    if what == "leaf recess":
        use = "hinge"
    if use and in_row and not use.endswith("s"):
        use += "s"
    return ", ".join([f"{what} for {use}" if use else what, *sizes])


def _degrees(angle: float) -> str:
    return f"{round(angle, 1):g} degrees"
