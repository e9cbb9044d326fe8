"""Vectors and the transforms of frames; mm."""

from __future__ import annotations

from collections.abc import Iterable

Vector = tuple[float, float, float]


Matrix = tuple[tuple[float, float, float, float], ...]


def vector(values: Iterable[float]) -> Vector:
    """Three numbers, of whatever kind, as a vector.

    Raises:
        ValueError: there aren't three of them.
    """
    x, y, z = map(float, values)
    return (x, y, z)


def along(axis: int, length: float) -> Vector:
    """The vector of a length along an axis: 0 for x, 1 for y, 2 for z."""
    return (
        length if axis == 0 else 0.0,
        length if axis == 1 else 0.0,
        length if axis == 2 else 0.0,
    )


def plus(a: Vector, b: Vector) -> Vector:
    """Sum of two vectors."""
    return (a[0] + b[0], a[1] + b[1], a[2] + b[2])


def minus(a: Vector, b: Vector) -> Vector:
    """The vector from ``b`` to ``a``."""
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def times(a: Vector, factor: float) -> Vector:
    """A vector times a number."""
    return (a[0] * factor, a[1] * factor, a[2] * factor)


def dot(a: Vector, b: Vector) -> float:
    """Scalar product."""
    return 0.0 + a[0] * b[0] + a[1] * b[1] + a[2] * b[2]  # from 0: never -0.0


def cross(a: Vector, b: Vector) -> Vector:
    """Vector product."""
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
