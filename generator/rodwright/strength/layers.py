"""Boards laid on each other that slip a little: the gamma method of EN 1995-1-1, annex B.

The annex is from memory; it is exact for a sine-shaped load on two simple supports.  Lengths in
mm, moduli in N/mm2; layers from the bottom upwards, each over the whole width of its own.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate
from math import isinf, pi

from rodwright.strength.sections import Rectangle

__all__ = ["Layers", "Seam"]


@dataclass(frozen=True, slots=True)
class Seam:
    """What joins two layers: the slip modulus of a fastener (N/mm; inf: glue, 0: nothing), and how
    far the fasteners stand apart along the span (mm), as if all stood in one row."""

    slip: float
    spacing: float = 1.0


@dataclass(frozen=True)
class Layers:
    """Two or three layers from the bottom up, the seams between them, and their span (mm).

    Raises:
        ValueError: they are not two or three layers with a seam between each two.
    """

    parts: tuple[Rectangle, ...]
    seams: tuple[Seam, ...]
    span: float

    def __post_init__(self) -> None:
        if not 2 <= len(self.parts) <= 3 or len(self.seams) != len(self.parts) - 1:
            raise ValueError("the gamma method is for two or three layers, a seam between each two")

    @cached_property
    def gammas(self) -> tuple[float, ...]:
        """How much of each layer works with the middle one (of two: the upper): 0 to 1."""
        outer = [_gamma(self.parts[0], self.seams[0], self.span)]
        if len(self.parts) == 3:
            return (*outer, 1.0, _gamma(self.parts[2], self.seams[1], self.span))
        return (*outer, 1.0)

    @cached_property
    def levers(self) -> tuple[float, ...]:
        """How far each layer's middle lies above the neutral line (mm)."""
        tops = tuple(accumulate(part.height for part in self.parts))
        middles = [top - part.height / 2 for top, part in zip(tops, self.parts, strict=True)]
        weights = [g * part.axial for g, part in zip(self.gammas, self.parts, strict=True)]
        line = sum(w * at for w, at in zip(weights, middles, strict=True)) / sum(weights)
        return tuple(at - line for at in middles)

    @cached_property
    def bending(self) -> float:
        """The effective EI, N mm2: ``sum(E I + gamma E A a^2)``."""
        rows = zip(self.parts, self.gammas, self.levers, strict=True)
        return sum(part.bending + gamma * part.axial * lever**2 for part, gamma, lever in rows)

    def stress(self, number: int, moment: float) -> float:
        """The greatest stress (N/mm2, by size) in a layer under a moment (N mm)."""
        part = self.parts[number]
        reach = self.gammas[number] * abs(self.levers[number]) + part.height / 2
        return abs(moment) * part.modulus * reach / self.bending

    def fastener_force(self, seam: int, shear: float) -> float:
        """What each fastener of a seam bears (N) under a shear force (N); glued: per mm."""
        outer = 0 if seam == 0 else 2
        flow = self.gammas[outer] * self.parts[outer].axial * abs(self.levers[outer])
        return flow * self.seams[seam].spacing * abs(shear) / self.bending


def _gamma(part: Rectangle, seam: Seam, span: float) -> float:
    """``1 / (1 + pi^2 E A s / (K L^2))``."""
    if isinf(seam.slip):
        return 1.0
    if seam.slip == 0:
        return 0.0
    return 1 / (1 + pi**2 * part.axial * seam.spacing / (seam.slip * span**2))
