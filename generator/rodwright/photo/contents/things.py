"""Things that shelves carry: what each looks like, the room that it takes and what it weighs."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry.boxes import Box
from rodwright.photo.scene import Body


@dataclass(frozen=True, slots=True, eq=False)
class Thing:
    """One thing that stands, lies or hangs somewhere: the ``box`` round it (mm, unit frame), its
    ``mass`` in kg, and its ``bodies``.  ``on`` is the ref of what carries it."""

    on: str
    box: Box
    mass: float
    bodies: tuple[Body, ...]
