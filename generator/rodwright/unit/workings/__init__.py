"""Workings: what can be cut into a blank, in its part's frame; mm."""

from __future__ import annotations

from rodwright.unit.workings.bores import Hole, PocketHole
from rodwright.unit.workings.channels import Groove, Housing, Mortise, Notch, Rebate
from rodwright.unit.workings.slants import Bevel, Easing, Mitre

__all__ = [
    "Bevel",
    "Easing",
    "Groove",
    "Hole",
    "Housing",
    "Mitre",
    "Mortise",
    "Notch",
    "PocketHole",
    "Rebate",
    "Working",
]

Working = Rebate | Groove | Housing | Notch | Mitre | Easing | Hole | Bevel | Mortise | PocketHole
"""Anything that can be cut into a blank.  Workings only take material away, and what is
taken is the union of their removals, so their order never changes the shape.

``use`` is what one is cut for, in the maker's words (``adjustable shelves``), empty where nothing
says so.  It doesn't tell workings apart: pieces that are cut alike are alike."""
