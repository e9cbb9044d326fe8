"""Lines of shear, moment, slope and sag along one piece of a beam, as polynomials."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Polynomial = NDArray[np.float64]
"""Coefficients of u, the lowest first; u runs from 0 to 1 along the piece."""

SAME = 1e-9
"""Figures whose sizes differ by less than this share are equal."""

_REAL = 1e-6
"""A root whose imaginary part is less is counted as real."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of a beam from ``start`` to ``stop`` (mm) with nothing but spread loads on it.

    Sag in mm (down is positive), slope in rad, moment in N mm (sagging is positive), shear in N
    (what is left of the cut pushes up).
    """

    start: float
    stop: float
    sag: Polynomial
    slope: Polynomial
    moment: Polynomial
    shear: Polynomial

    def along(self, at: float) -> float:
        """Where a place (mm from the beam's left end) lies along the piece, from 0 to 1."""
        return min(1.0, max(0.0, (at - self.start) / (self.stop - self.start)))

    def at(self, along: float) -> float:
        """The place (mm) that lies so far along the piece."""
        return self.start + along * (self.stop - self.start)


@dataclass(frozen=True, slots=True)
class Peak:
    """The greatest of something (by its size; it keeps its sign), and its place in mm."""

    at: float
    value: float


def value(polynomial: Polynomial, along: float) -> float:
    """A polynomial's value at a place from 0 to 1."""
    found = 0.0
    for coefficient in polynomial[::-1]:
        found = found * along + float(coefficient)
    return found


def integral(polynomial: Polynomial, length: float, begin: float = 0.0) -> Polynomial:
    """The integral along a piece of a length (mm), with its value at the piece's start."""
    return np.concatenate(([begin], polynomial * length / np.arange(1, polynomial.size + 1)))


def turning_places(polynomial: Polynomial, low: float, high: float) -> Iterator[float]:
    """Where between two places it can be greatest or least: the two, and where it runs level."""
    yield low
    yield high
    gradient = np.trim_zeros(polynomial[1:] * np.arange(1, polynomial.size), "b")
    if gradient.size > 1:
        for root in np.roots(gradient[::-1] / np.abs(gradient).max()):
            if abs(root.imag) < _REAL and low < root.real < high:
                yield float(root.real)


def peak(
    pieces: tuple[Piece, ...],
    lines: tuple[Polynomial, ...],
    start: float,
    stop: float,
    size: Callable[[float], float] = abs,
) -> Peak:
    """The greatest by ``size`` of a line, given piece by piece, between two places (mm).

    Of equal ones it is the leftmost; where none has a size above 0, 0 at ``start``.
    """
    best = Peak(start, 0.0)
    for piece, line in zip(pieces, lines, strict=True):
        if piece.stop < start or piece.start > stop:
            continue
        for along in sorted(turning_places(line, piece.along(start), piece.along(stop))):
            found = value(line, along)
            if size(found) > size(best.value) * (1 + SAME):
                best = Peak(piece.at(along), found)
    return best
