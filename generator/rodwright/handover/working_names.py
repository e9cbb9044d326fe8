"""Short names of workings, for the faces that they leave in a STEP file.

``row for adjustable shelves, 5 mm, 10 deep``: what it is, what it is for, how wide and how deep; no
place, since the face has that.  Nouns are the list's (:mod:`rodwright.handover.workings`).
Only plain letters, so that programs which don't decode others can still find them.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace

from rodwright.geometry import Vector
from rodwright.handover.bores import in_rows
from rodwright.lengths import LengthUnit, format_length, ware_size
from rodwright.unit import Hole, Slant, Working
from rodwright.unit.workings.removal import Figures


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
    what = "row" if in_row else working.called
    use = "" if isinstance(working, Slant) else working.use
    if what == "leaf recess":
        use = "hinge"
    if use and in_row and not use.endswith("s"):
        use += "s"
    return ", ".join([f"{what} for {use}" if use else what, *_sizes(working.figures(size), unit)])


def _sizes(figures: Figures, unit: LengthUnit) -> Iterator[str]:
    if figures.across:
        sides = (format_length(length, unit) for length in figures.across)
        yield f"{' x '.join(sides)} {unit}"
    if figures.drill is not None:
        bare = ware_size(figures.drill, unit)
        yield f"{bare[:-1]} {unit})" if bare.endswith(")") else f"{bare} {unit}"
    if figures.depth is not None:
        through = figures.depth == math.inf
        yield "right through" if through else f"{format_length(figures.depth, unit)} deep"
    if figures.angle is not None:
        yield f"{'at ' if figures.drill else ''}{round(figures.angle, 1):g} degrees"
    if figures.radius is not None:
        yield f"{format_length(figures.radius, unit)} {unit} radius"
