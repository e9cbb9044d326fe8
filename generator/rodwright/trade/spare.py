"""Spares: what is bought over of small things."""

from __future__ import annotations

SPARE = 0.1
"""Part of the count that is bought over, rounded up (common practice, no source)."""
SMALL = ("screw", "dowel", "biscuit", "pin", "plug", "washer", "nail", "bumper", "clip", "button")
"""What gets lost, or breaks as it is driven (common practice, no source): the last word of what
such things are called."""


def has_spares(name: str) -> bool:
    """Whether some of an article of this name are bought over."""
    words = name.casefold().split()
    return any(word.rstrip("s") in SMALL for word in words)
