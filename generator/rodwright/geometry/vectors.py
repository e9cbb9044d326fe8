"""Vectors and the transforms of frames; mm."""

from __future__ import annotations

Vector = tuple[float, float, float]


Matrix = tuple[tuple[float, float, float, float], ...]


def cross(a: Vector, b: Vector) -> Vector:
    """Vector product."""
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
