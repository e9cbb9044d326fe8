"""How far the floor falls away under a unit that stands on its high spot."""

from __future__ import annotations

from rodwright.opening.gaps import Gap, bent_at, gap_along
from rodwright.unit import Role, Unit
from rodwright.unit.facts import carcass_size, plinth_boards


def floor_fall(unit: Unit) -> Gap:
    """The widest gap under what the unit stands on, in whatever plane: how far (mm) the floor
    falls away from its high spot.

    Raises:
        ValueError: the unit has no opening with a shape.
    """
    if unit.opening is None or unit.opening.shape is None:
        raise ValueError("nothing is known of the floor")
    shape, size = unit.opening.shape, carcass_size(unit)
    legs = tuple(part for part in unit.parts if part.role is Role.LEG)
    stands = [part.bounds() for part in plinth_boards(unit) or legs]
    low = min((box.low[0] for box in stands), default=0.0)
    high = max((box.high[0] for box in stands), default=size[0])
    return max(
        (
            gap
            for name, plane in shape.planes.items()
            for gap in gap_along(name, shape, size, "bottom", bent_at(plane, "bottom", low, high))
        ),
        key=lambda gap: gap.gap,
    )
