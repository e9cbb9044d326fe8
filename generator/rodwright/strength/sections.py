"""Sections of boards: one rectangle, or several glued, screwed or only laid together.

Millimetres, N/mm2, N mm2.  Across the section, ``front`` is counted from the shelf's front edge
backwards and ``height`` upwards; moments are positive where a shelf sags, stresses where they pull.
Sections of several moduli are transformed to one, as any text on strength of materials has it (EN
1995-1-1, 9.1.1, from memory): all strains lie in one plane.  A sagging shelf is taken as kept from
going sideways, unless ``unheld`` is asked for.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from functools import cached_property
from math import cosh, pi, sqrt, tanh

__all__ = [
    "RECTANGLE",
    "Rectangle",
    "Section",
    "edges_of_lipped",
    "stress_factor",
    "torsion_factor",
]

RECTANGLE = 5 / 6
"""The share of a rectangle's area that counts in shear (Wood Handbook FPL-GTR-190 (2010), equation
9-2; read in outline)."""

_TERMS = range(1, 60, 2)
_STIFF_COSH = 300.0
"""Beyond this argument a hyperbolic cosine is as good as infinite."""


@dataclass(frozen=True, slots=True)
class Rectangle:
    """A part of a section: ``width`` front to back and ``height`` (mm), modulus of elasticity E and
    shear modulus G (N/mm2), and where its front lower corner lies (mm)."""

    width: float
    height: float
    modulus: float
    shear: float = 0.0
    front: float = 0.0
    bottom: float = 0.0

    @property
    def area(self) -> float:
        """mm2."""
        return self.width * self.height

    @property
    def axial(self) -> float:
        """EA, N."""
        return self.modulus * self.area

    @property
    def bending(self) -> float:
        """EI about its own horizontal axis, N mm2."""
        return self.modulus * self.width * self.height**3 / 12

    @property
    def sideways(self) -> float:
        """EI about its own upright axis, N mm2."""
        return self.modulus * self.height * self.width**3 / 12

    @property
    def middle(self) -> tuple[float, float]:
        """How far back and how high its middle lies, mm."""
        return (self.front + self.width / 2, self.bottom + self.height / 2)

    @property
    def torsion(self) -> float:
        """GJ, N mm2."""
        long, short = max(self.width, self.height), min(self.width, self.height)
        return self.shear * torsion_factor(long / short) * long * short**3


@dataclass(frozen=True)
class Section:
    """Parts that are joined along their whole length without slip.

    The first is the board; the others are joined to it along lines at half its height, by which
    the shear centre goes.
    """

    parts: tuple[Rectangle, ...]

    @cached_property
    def axial(self) -> float:
        """EA of all, N."""
        return sum(part.axial for part in self.parts)

    @cached_property
    def centroid(self) -> tuple[float, float]:
        """Where the elastic centroid lies: how far back and how high, mm."""
        return (self._mean(0), self._mean(1))

    @cached_property
    def bending(self) -> float:
        """EI about the horizontal axis through the centroid, N mm2."""
        return self._about(1, 1) + self.separate

    @cached_property
    def sideways(self) -> float:
        """EI about the upright axis, N mm2."""
        return self._about(0, 0) + sum(part.sideways for part in self.parts)

    @cached_property
    def product(self) -> float:
        """E times the product of inertia, N mm2: nothing where front and back, or top and bottom,
        mirror each other."""
        return self._about(0, 1)

    @cached_property
    def unheld(self) -> float:
        """EI against loads from above if nothing keeps it from going sideways, N mm2."""
        return self.bending - self.product**2 / self.sideways

    @cached_property
    def separate(self) -> float:
        """EI of the parts laid together without glue, each bending about its own axis, N mm2."""
        return sum(part.bending for part in self.parts)

    @cached_property
    def torsion(self) -> float:
        """GJ, N mm2: the sum of the parts', as for open sections of thin walls; a shelf and
        its lipping have up to a twelfth more."""
        return sum(part.torsion for part in self.parts)

    @cached_property
    def sliding(self) -> float:
        """GA' in shear, N: five sixths of each rectangle's GA."""
        return RECTANGLE * sum(part.shear * part.area for part in self.parts)

    @cached_property
    def shear_centre(self) -> float:
        """How far back (mm) a load must stand so that the section goes straight down.

        Each part takes of a shear force what its own bending and its shear along the glue line ask
        (equilibrium of a slice of each part), through its middle; for a lipped shelf within 3% of
        its depth of what a finite element analysis gives.
        """
        level, height = self.parts[0].middle[1], self.centroid[1]
        shares = [
            part.bending + part.axial * (part.middle[1] - height) * (part.middle[1] - level)
            for part in self.parts
        ]
        return sum(
            share * part.middle[0] for share, part in zip(shares, self.parts, strict=True)
        ) / sum(shares)

    @cached_property
    def warping(self) -> float:
        """EIw, N mm4: what stiffens it against a twist that isn't even, by the bending of each part
        about its own axis; for a lipped shelf within a ninth of what finite elements give."""
        centre = self.shear_centre
        return sum(
            part.bending * (part.width**2 / 12 + (part.middle[0] - centre) ** 2)
            for part in self.parts
        )

    def stresses(self, number: int, moment: float) -> tuple[float, float]:
        """The stress (N/mm2) at the bottom and top of a part under a moment (N mm)."""
        part = self.parts[number]
        curvature = moment / self.bending
        below = self.centroid[1] - part.bottom
        return (
            part.modulus * curvature * below,
            part.modulus * curvature * (below - part.height),
        )

    def shear_flow(self, numbers: Collection[int], shear: float) -> float:
        """What a glue line bears along the grain (N/mm) that joins these parts to the others, under
        a shear force (N): ``q = V E S / EI``."""
        first = sum(
            self.parts[number].axial * (self.parts[number].middle[1] - self.centroid[1])
            for number in numbers
        )
        return abs(shear * first / self.bending)

    def _mean(self, axis: int) -> float:
        return sum(part.axial * part.middle[axis] for part in self.parts) / self.axial

    def _about(self, one: int, other: int) -> float:
        """The parts' axial stiffness times their distances from the centroid along two axes."""
        middle = self.centroid
        return sum(
            part.axial * (part.middle[one] - middle[one]) * (part.middle[other] - middle[other])
            for part in self.parts
        )


def edges_of_lipped(
    section: Section, depth: float, sag: float, span: float, load: float
) -> tuple[float, float]:
    """The sag (mm) of the front and the back edge of a lipped shelf, at midspan.

    ``sag`` (mm) is what the section sags as a beam; ``load`` (N/mm) lies in the middle of the
    ``depth`` (mm) and so twists what is stiffer at its front, by ``m``, the load times its distance
    from the shear centre.  Twisting and bending of the parts as they twist share it: with ``a = L
    sqrt(GJ / EIw)`` the twist at midspan is ``m / GJ (L^2/8 - EIw/GJ (1 - 1/cosh(a/2)))`` (V. Z.
    Vlasov, Thin-walled elastic beams, from memory; ends kept from twisting, free to warp).
    """
    centre = section.shear_centre
    ratio = section.warping / section.torsion
    bend = span / sqrt(ratio) / 2
    held = 1 - (1 / cosh(bend) if bend < _STIFF_COSH else 0.0)
    twist = load * (depth / 2 - centre) / section.torsion * (span**2 / 8 - ratio * held)
    return (sag - twist * centre, sag + twist * (depth - centre))


def torsion_factor(slimness: float) -> float:
    """beta in a rectangle's torsion constant ``J = beta a t^3``, for ``a/t`` of 1 and more.

    De Saint-Venant's series (Timoshenko & Goodier, Theory of Elasticity, chapter 10, from memory).

    Raises:
        ValueError: the slimness is below 1.
    """
    if slimness < 1:
        raise ValueError(f"a rectangle is at least as long as thick, not {slimness} of it")
    series = sum(tanh(n * pi * slimness / 2) / n**5 for n in _TERMS)
    return (1 - 192 / pi**5 / slimness * series) / 3


def stress_factor(slimness: float) -> float:
    """alpha in a rectangle's greatest stress by torsion ``T / (alpha a t^2)``; as above.

    Raises:
        ValueError: the slimness is below 1.
    """
    beta = torsion_factor(slimness)
    bends = ((n, n * pi * slimness / 2) for n in _TERMS)
    series = sum(1 / n**2 / cosh(bend) for n, bend in bends if bend < _STIFF_COSH)
    return beta / (1 - 8 / pi**2 * series)
