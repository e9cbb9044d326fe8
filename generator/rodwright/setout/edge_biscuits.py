"""Biscuits let into the edges of boards that are fitted last, and so aren't set out to the slot.

Lengths in mm.
"""

from __future__ import annotations

from math import ceil

from rodwright.parts import Fixing
from rodwright.setout.bench import TOUCH
from rodwright.setout.joints.slots import BISCUITS, LEAST_FLOOR, SLOT_WIDTH, slot_length

EDGE, SPACING = 60.0, 250.0
"""From the end of an edge to the middle of its first biscuit, and the greatest distance between
two, mm (common practice, no source)."""


def edge_biscuits(length: float, depth: float) -> Fixing:
    """Biscuits along an edge so long, the largest whose slot leaves wood in parts ``depth`` thick.

    They are counted and not cut in the model: the slots are marked from the pieces once they
    lie in place.
    """
    size = next(
        (each for each, (_, _, slot) in BISCUITS.items()
         if slot <= depth - LEAST_FLOOR and slot_length(slot) <= length - 2 * LEAST_FLOOR),
        "0",
    )  # fmt: skip
    long, wide, slot = BISCUITS[size]
    count = 1
    if length > 2 * EDGE:
        count = max(2, ceil((length - 2 * EDGE) / SPACING - TOUCH) + 1)
    return Fixing(
        "biscuit", count, f"size {size}, {long} x {wide} mm",
        f"slot {SLOT_WIDTH:g} mm wide, {slot:g} mm deep in both, marked from the pieces in place",
    )  # fmt: skip
