"""What pieces are cut with."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.lengths import LengthUnit, from_inches

SawKind = Literal["table saw", "track saw", "panel saw", "router"]


@dataclass(frozen=True, slots=True)
class Saw:
    """A saw, or a router that cuts sheets to pieces; mm and kg.

    ``kerf`` is the width of its cut (the diameter of a router's tool).  ``rip`` is the widest
    that it rips against its fence, ``crosscut`` the longest that it crosscuts; None is any.
    ``lift`` is the heaviest that is handled on it by those at hand: larger pieces are broken down
    first with a saw that is brought to them, but on a panel saw, on which whole sheets are laid.
    """

    kind: SawKind = "table saw"
    kerf: float = 3.2
    rip: float | None = None
    crosscut: float | None = None
    lift: float = 25.0


KERFS: dict[LengthUnit, dict[SawKind, float]] = {
    "mm": {"table saw": 3.2, "track saw": 2.2, "panel saw": 3.2, "router": 6.0},
    "in": {
        "table saw": from_inches("1/8"),
        "track saw": from_inches("3/32"),
        "panel saw": from_inches("1/8"),
        "router": from_inches("1/4"),
    },
}
"""Widths of cuts unless said, mm (common practice, no source)."""


def usual_saw(kind: SawKind, unit: LengthUnit) -> Saw:
    """A saw, or a router, of which nothing more is said by a maker who works in this unit."""
    return Saw(kind, KERFS[unit][kind])
