"""Operations at the machines: from the workings of parts, and what is glued on their edges."""

from __future__ import annotations

from collections.abc import Iterator
from typing import assert_never

from rodwright.geometry import Vector
from rodwright.handover.edge_list import edge_list
from rodwright.quote.tally import Count
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Unit,
    Working,
)

_METRE = 1e3
_LET_IN = ("dowel", "biscuit", "loose tenon")
"""Uses of holes and slots that are counted by what is let into them, since those of a face frame
are marked from its place and are no workings."""
_WITH_SCREWS = ("screw", "hinge plate")
"""Uses of holes that are bored as their screws are driven, and counted by those alone."""
_HOLES = {"adjustable shelves": "shelf_hole", "hinge cup": "hinge_cup"}


def machined(unit: Unit) -> Iterator[Count]:
    """What is cut into all parts, and their edges."""
    for part in unit.parts:
        for working in part.workings:
            yield from _of_working(working, part.blank.size)
    for row in edge_list(unit):
        yield row.kind, row.net


def _of_working(working: Working, size: Vector) -> Iterator[Count]:
    match working:
        case Mitre():
            yield ("mitre" if working.called == working.word else "bevel"), 1
        case Bevel() if working.worked_from(size) is None:
            yield "bevel", 1
        case Bevel() | Easing() | Rebate() | Groove():
            key = "easing" if isinstance(working, Bevel) else working.kind
            yield key, _run(working, size)
        case Hole(use=use) | Mortise(use=use):
            with_screw = isinstance(working, Hole) and use in _WITH_SCREWS
            if use not in _LET_IN and not with_screw:
                yield _HOLES.get(use, working.kind), 1
        case Housing() | Notch() | PocketHole() | FingerPull():
            yield working.word.replace(" ", "_"), 1
        case _:
            assert_never(working)


def _run(working: Bevel | Easing | Rebate | Groove, size: Vector) -> float:
    """How long it is along its surface or arris, m."""
    if isinstance(working, Groove):
        axis = working.run
    else:
        axis = 3 - working.surface.axis - working.edge.axis
    return working.bounds(size).size[axis] / _METRE
