"""Lengths as whole numbers, so that what fits to a hair fits: no rounding error adds up."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import gcd

_FINEST = 1_000_000
"""Parts of a millimetre told apart: 1/64 in is 396,875 of them."""


@dataclass(frozen=True, slots=True)
class Grid:
    """A step, in millionths of a millimetre, of which all lengths of a problem are multiples."""

    step: int

    @staticmethod
    def of(lengths: Iterable[float]) -> Grid:
        """The coarsest grid that has all of some lengths (mm) on it."""
        return Grid(gcd(*(round(each * _FINEST) for each in lengths)) or _FINEST)

    def whole(self, length: float) -> int:
        """A length (mm) in steps."""
        return round(length * _FINEST / self.step)

    def exact(self, length: float) -> float:
        """A length (mm) in steps, that need not be whole ones."""
        return length * _FINEST / self.step

    def length(self, whole: int) -> float:
        """Steps as a length in mm."""
        return whole * self.step / _FINEST
