"""Does a face frame leave a hole between its bottom rail and a bottom that stands off the floor?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH
from rodwright.unit import Role, Unit


def open_below(unit: Unit) -> Iterator[Finding]:
    """A bottom whose underside is above the bottom rail: one looks, or opens a front, onto what is
    under it."""
    bottom = next((part for part in unit.parts if part.role is Role.BOTTOM), None)
    rails = [part for part in unit.parts if part.role is Role.RAIL]
    if bottom is None or not rails:
        return
    # Of all rails only the bottom one can end below the bottom's underside.
    rail = min(rails, key=lambda part: part.bounds().low[2])
    under, over = bottom.bounds(), rail.bounds()
    hole = under.low[2] - over.high[2]
    if hole <= TOUCH:
        return
    flush = under.low[2] - (under.high[2] - over.high[2])
    lower = f"lower the bottom to {length_in(unit, flush)} (`carcass.bottom_height`)"
    yield Finding(
        Severity.WARNING,
        Rule.OPEN_BELOW_BOTTOM,
        f"between {named(rail)} and {named(bottom)} {length_in(unit, hole)} stay open: doors and "
        f"drawers open onto a hole, and one looks in under the bottom",
        "Write `face_frame.corners: butted`, so that the rail reaches up to the bottom"
        + (f"; or {lower}, which is flush." if flush >= 0 else "."),
        (rail.ref, bottom.ref),
        hole,
        0.0,
    )
