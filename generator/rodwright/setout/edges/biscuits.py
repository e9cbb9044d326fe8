"""Biscuits let into the edges of boards that are fitted last, and so aren't set out to the slot.

Lengths in mm.
"""

from __future__ import annotations

from rodwright.geometry.spacing import count_along
from rodwright.trade.connectors import BISCUITS, SLOT_WIDTH, biscuit_size, slot_depth, slot_length
from rodwright.trade.sizes import TradeSizes
from rodwright.trade.wood_left import SLOT_FLOOR
from rodwright.unit import Fixing

EDGE, SPACING = 60.0, 250.0
"""From the end of an edge to the middle of its first biscuit, and the greatest distance between
two, mm (common practice, no source)."""


def places_on(length: float) -> int:
    """How many biscuits or other fixings an edge so long (mm) takes."""
    return count_along(length, EDGE, SPACING) if length > 2 * EDGE else 1


def edge_biscuits(
    sizes: TradeSizes, length: float, depth: float, most: int | None = None
) -> Fixing:
    """Biscuits along an edge so long, the largest whose slot leaves wood in parts ``depth`` thick.

    No more than ``most`` of them.  They are counted and not cut in the model: the slots are
    marked from the pieces once they lie in place.
    """
    unit = sizes.unit
    fits = (
        each
        for each in BISCUITS
        if slot_depth(each, unit) <= depth - SLOT_FLOOR
        and slot_length(slot_depth(each, unit)) <= length - 2 * SLOT_FLOOR
    )
    size = next(fits, "0")
    count = places_on(length)
    wide, deep = SLOT_WIDTH[unit], slot_depth(size, unit)
    return Fixing(
        "biscuit",
        min(count, most or count),
        biscuit_size(size, unit),
        f"slot {sizes.say(wide)} wide, {sizes.say(deep)} deep in both, marked from the pieces in "
        "place",
        diameter=wide,
        length=BISCUITS[size][0],
        width=BISCUITS[size][1],
    )
