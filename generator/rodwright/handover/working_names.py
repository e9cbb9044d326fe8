"""Short names of workings, for the faces that they leave in a STEP file.

``row for adjustable shelves, 5 mm, 10 deep``: what it is, what it is for, how wide and how deep; no
place, since the face has that.  Nouns are the list's (:mod:`rodwright.handover.workings`).
Only plain letters, so that programs which don't decode others can still find them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from rodwright.geometry import TOUCH, Vector
from rodwright.handover.bores import in_rows, pocket_name
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
            what = "row" if in_row else "hole"
            sizes = [ware(diameter), "right through" if depth is None else deep(depth)]
        case Groove(_, _, width, depth) | Housing(_, _, width, depth) | Rebate(_, _, width, depth):
            what, sizes = type(working).__name__.lower(), [say(width), deep(depth)]
        case Mortise(surface, _, extent, depth):
            through = depth >= size[surface.axis] - TOUCH
            sides = sorted(extent, reverse=True) if working.round_ends else extent
            what = pocket_name(working)
            sizes = [say(*sides), "right through" if through else deep(depth)]
        case Notch(_, _, length, width):
            what, sizes = "notch", [say(length, width), "right through"]
        case PocketHole(diameter=diameter, angle=angle):
            what, sizes = "pocket hole", [ware(diameter), f"at {_degrees(angle)}"]
        case Easing(_, _, radius):
            what, sizes = "eased arris", [f"{say(radius)} radius"]
        case Mitre(_, angle, long):
            what, sizes = "mitre" if long.axis == 1 else "bevel", [_degrees(angle)]
        case Bevel():
            what, sizes = "bevel", [_degrees(working.angle)]
    use = "" if isinstance(working, Mitre | Bevel | Easing) else working.use
    if what == "leaf recess":
        use = "hinge"
    if use and in_row and not use.endswith("s"):
        use += "s"
    return ", ".join([f"{what} for {use}" if use else what, *sizes])


def _degrees(angle: float) -> str:
    return f"{round(angle, 1):g} degrees"
