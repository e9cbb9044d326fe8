"""Screws and the like, as they are counted and named: by what they go through and into."""

from __future__ import annotations

from rodwright.lengths import LengthUnit, format_length
from rodwright.trade.screws import (
    COUNTERBORE,
    LEAST_SLOT,
    LEAST_THROUGH,
    MOST_THROUGH,
    WOOD_SCREW,
    Grip,
)
from rodwright.trade.sizes import TradeSizes
from rodwright.unit import Fixing


def screws(
    sizes: TradeSizes,
    count: int,
    length: float,
    drilled: str,
    *,
    kind: str = WOOD_SCREW,
    diameter: float | None = None,
    on: str = "",
) -> Fixing:
    """So many screws of a length, and of a diameter if it isn't the usual one, mm; what is
    ``drilled`` for them, in words; and the ref of what they are ``on``."""
    wide = sizes.screw if diameter is None else diameter
    size = sizes.screw_size(wide, length)
    return Fixing(kind, count, size, drilled, on, diameter=wide, length=length)


def screws_through(
    sizes: TradeSizes, through: float, into: float, count: int, held: Grip = "sheet"
) -> Fixing:
    """Screws through one thickness (mm) into another, whose far side they don't break.

    4 mm or no. 8 screws with a clearance hole and a pilot hole for them, and a counterbore where
    they are too short for all of it (common practice, no source).
    """
    sunk = max(0.0, sizes.round_up(through - MOST_THROUGH))
    left = through - sunk
    most = max(LEAST_THROUGH[sizes.unit], min(2.5 * left, left + 0.75 * into))
    length = sizes.longest_screw(most)
    wide = sizes.usual(COUNTERBORE)
    bored = f"counterbore {sizes.say(wide)}, {sizes.say(sunk)} deep, " if sunk else ""
    return screws(sizes, count, length, f"{bored}{sizes.holes(sizes.screw, held)}")


def slot_for(sizes: TradeSizes, wide: float, moves: float, least: float = LEAST_SLOT) -> float:
    """Length (mm) of a slot in which something ``wide`` follows wood that ``moves`` so far either
    way; no less than ``least``."""
    return max(sizes.usual(least), sizes.round_up(wide + 2 * moves))


def washers(sizes: TradeSizes, count: int) -> Fixing:
    """Washers under the heads of such screws, where they go through slots."""
    return Fixing("washer", count, f"for {sizes.screw_name(sizes.screw)} screws")


def bumpers(thick: float, on: str, unit: LengthUnit) -> Fixing:
    """What an overlay front of this ref closes against: one near each corner that opens first, so
    that it doesn't strike what it covers (common practice, no source)."""
    return Fixing("bumper", 2, f"{format_length(thick, unit)} {unit} thick, stuck on", on=on)
