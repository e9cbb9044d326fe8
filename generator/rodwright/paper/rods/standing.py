"""What a unit stands on and hangs by, on its rods: adjustable feet and fixings to the wall.

They are bought in and have no workings: where they go is the trade's rule, by which the set-out
counts feet and the strength of what hangs is reckoned.  Lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.geometry import TOUCH, Box
from rodwright.paper.rods.marks import Mark
from rodwright.strength.hanging import carrying_back
from rodwright.trade.feet import FOOT, FOOT_INSET
from rodwright.trade.wall_fixings import BELOW_TOP, FROM_END, LEAST_BACK
from rodwright.unit import CASE, Part, Role, Unit


def standing_marks(unit: Unit, part: Part, axis: int) -> Iterator[Mark]:
    """The middles of the outermost feet on a bottom, and of the fixings through a back that is
    thick enough to hang by."""
    feet = part.role is Role.BOTTOM and any(each.name == FOOT for each in unit.fixings)
    if feet and axis != 2:
        low, high = _case(unit, axis)
        for at in (low + FOOT_INSET, high - FOOT_INSET):
            yield from _on(part, axis, "outermost feet", at)
    back = carrying_back(unit) if unit.hung and part.role is Role.BACK else None
    if back is not None and back.ref == part.ref and back.blank.thickness >= LEAST_BACK - TOUCH:
        low, high = _case(unit, axis)
        if axis == 0:
            for at in (low + FROM_END, high - FROM_END):
                yield from _on(part, axis, "outermost fixings to the wall", at)
        if axis == 2:
            yield from _on(part, axis, "upper fixings to the wall", high - BELOW_TOP)


def _case(unit: Unit, axis: int) -> tuple[float, float]:
    """Where the outside of the carcass begins and ends."""
    box = Box.of_boxes(part.bounds() for part in unit.parts if part.role in (*CASE, Role.BACK))
    return box.low[axis], box.high[axis]


def _on(part: Part, axis: int, what: str, at: float) -> Iterator[Mark]:
    """A mark, where it lies on its part."""
    bounds = part.bounds()
    if bounds.low[axis] + TOUCH < at < bounds.high[axis] - TOUCH:
        yield Mark(at, (), what, "middle", kind="ware")
