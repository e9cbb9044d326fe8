"""Units of plain blocks, whose weights and centres are worked out in the head."""

from __future__ import annotations

from typing import Any

from rodwright.geometry import Box, Vector
from rodwright.unit import Blank, Grain, Part, Placement, Role, Stock, Unit

WATER = Stock("block", "sheet", "blocks", 100, Grain.NONE, 1000.0, "test", "#ffffff")
"""A litre weighs a kilogram."""


def block(ref: str, low: Vector, size: Vector, role: Role = Role.SIDE, group: str = "Test") -> Part:
    """A block of 1000 kg/m3 whose low corner stands at ``low``."""
    blank = Blank(*size, WATER, Grain.NONE)
    return Part(ref, "Block", role, group, blank, Placement(low, (1, 0, 0), (0, 1, 0)))


def unit_of_blocks(*parts: Part, **more: Any) -> Unit:
    """A unit of blocks, in the box round them."""
    return Unit("Test", Box.of_boxes(part.bounds() for part in parts), parts, **more)
