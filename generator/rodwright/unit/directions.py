"""Directions of the unit frame, as unit vectors."""

from __future__ import annotations

from rodwright.geometry.vectors import Vector

X: Vector = (1.0, 0.0, 0.0)
"""To the right, seen from the front."""
Y: Vector = (0.0, 1.0, 0.0)
"""To the back."""
Z: Vector = (0.0, 0.0, 1.0)
"""Up."""
LEFT: Vector = (-1.0, 0.0, 0.0)
FORWARD: Vector = (0.0, -1.0, 0.0)
DOWN: Vector = (0.0, 0.0, -1.0)
NOWHERE: Vector = (0.0, 0.0, 0.0)
"""No direction at all: of what isn't withdrawn."""
