"""A panel to cut workings into, and a unit of such, for tests of what is said of them."""

from __future__ import annotations

from typing import Any

from kit.samples import PLYWOOD, X, Y
from rodwright.geometry import Box
from rodwright.unit import Blank, Grain, Part, Placement, Role, Unit, Working


def panel(*workings: Working, length: float = 400.0, width: float = 120.0) -> Part:
    """A piece of birch plywood 18 thick, flat at the origin, which carries nothing."""
    blank = Blank(length, width, 18.0, PLYWOOD, Grain.LENGTHWISE)
    return Part(
        "P1", "Panel", Role.PACKER, "Test", blank, Placement((0.0, 0.0, 0.0), X, Y), workings
    )


def unit_of(*parts: Part, **more: Any) -> Unit:
    """A unit of parts put together by hand, too small to tip over."""
    return Unit("Test", Box((0, 0, 0), (10, 10, 10)), parts, **more)
