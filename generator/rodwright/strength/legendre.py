"""Legendre's polynomials along a length, and integrals of their products."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


@lru_cache(maxsize=32)
def gauss_rule(count: int) -> tuple[Array, Array]:
    """Gauss's places from -1 to 1 and weights, exact for polynomials of degree 2 count - 1.

    From the eigenvalues of the recurrence (Golub & Welsch, Mathematics of Computation 23, 1969,
    from memory).
    """
    n = np.arange(1, count)
    beside = n / np.sqrt(4.0 * n**2 - 1)
    places, vectors = np.linalg.eigh(np.diag(beside, 1) + np.diag(beside, -1))
    return places, 2 * vectors[0] ** 2


def legendre(count: int, places: Array, derivative: int = 0) -> Array:
    """The first ``count`` polynomials at places from -1 to 1, a row each, or their derivatives.

    By the recurrence ``(n + 1) P(n+1) = (2n + 1) x P(n) - n P(n-1)``, differentiated.
    """
    table = np.zeros((derivative + 1, count, len(places)))
    table[0, 0] = 1.0
    for n in range(count - 1):
        for d in range(derivative + 1):
            risen = places * table[d, n] + (d * table[d - 1, n] if d else 0.0)
            before = table[d, n - 1] if n else 0.0
            table[d, n + 1] = ((2 * n + 1) * risen - n * before) / (n + 1)
    return np.asarray(table[derivative])


@dataclass(frozen=True, slots=True)
class Axis:
    """``count`` polynomials along a length (mm), counted from its low end."""

    length: float
    count: int

    def at(self, place: float, derivative: int = 0) -> Array:
        """Their values, or derivatives by mm, at a place (mm)."""
        where = np.array([2 * place / self.length - 1])
        return legendre(self.count, where, derivative)[:, 0] * (2 / self.length) ** derivative

    def products(self, one: int, other: int) -> Array:
        """The integrals of products of their derivatives of two orders, mm."""
        places, weights = gauss_rule(self.count + 1)
        rows = (legendre(self.count, places, order) for order in (one, other))
        scale = (2 / self.length) ** (one + other) * self.length / 2
        first, second = rows
        return np.asarray((first * weights) @ second.T * scale)

    def integrals(self, low: float, high: float) -> Array:
        """Their integrals between two places (mm)."""
        places, weights = gauss_rule(self.count + 1)
        along = (low + high) / 2 + places * (high - low) / 2
        values = legendre(self.count, 2 * along / self.length - 1)
        return np.asarray(values @ weights * (high - low) / 2)
