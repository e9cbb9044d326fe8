"""What dowels, loose tenons and biscuits bear that are glued into two parts.

Millimetres, newtons, N/mm2; common practice, no source, unless said.  What is allowed is
the ultimate load over :data:`rodwright.trade.fastenings.SAFETY`.

Glue between end grain and anything counts for nothing here: even at best it gives a quarter of the
wood's strength (Wood Handbook, ch. 10, from memory), and nobody sees how good it was.
"""

from __future__ import annotations

from math import pi, sqrt

from rodwright.lengths import from_inches
from rodwright.trade.fastenings import SAFETY, Bears
from rodwright.trade.sources import Source

_INCH = from_inches("1")
_POUND = 4.4482216
_PSI = _POUND / _INCH**2

_DOWEL_DRAWN = Source(
    "Eckelman, Withdrawal strength of dowel joints, Forest Products J. 1969 and 1979: 0.834 D "
    "L^0.89 (0.95 S1 + S2), lb and in",
    seen=False,
)
_DOWEL_SHEARED = Source(
    "the dowel shears across: its section times the shear strength of its wood along the grain",
    seen=False,
)
_TENON_SHEARED = Source(
    "the tenon shears across: 2/3 of its section times the shear strength of its wood", seen=False
)
_CHEEKS_TURNED = Source("the glued cheeks shear about their middle: torsion of a glued patch")
_CHEEKS_DRAWN = Source("the glued cheeks shear in the weaker wood", seen=False)

BEECH_SHEAR = 13.0
"""Shear strength of beech along its grain, N/mm2, which dowels and biscuits are made of (Lavers,
The strength properties of timber, from memory: 16; less a fifth for what is bought)."""
SPIRAL = 0.9
"""Share that a spiral groove leaves of a plain dowel's withdrawal (Eckelman, from memory)."""
SOUND = (3.0, 8.6)
"""What dowels of 8 mm were drawn out at, N/mm2 of their glued surface, from 85 % to 25 % humidity
(Podlena et al., BioResources 15(1), 2020, abstract; no Wood Handbook figure).  The formula isn't
let go past the upper one."""
BISCUIT_SHARE = 0.7
"""Share of its length times its width that an oval biscuit has (geometry of an ellipse, rounded
down; no source)."""


def dowel_drawn(diameter: float, depth: float, shear: float) -> Bears:
    """A glued dowel drawn out of a part that it is ``depth`` mm deep in, whose shear strength is
    ``shear`` N/mm2.

    Raises:
        ValueError: a figure isn't above 0.
    """
    _sound(diameter, depth, shear)
    strength = (0.95 * shear + BEECH_SHEAR) / _PSI
    pounds = 0.834 * (diameter / _INCH) * (depth / _INCH) ** 0.89 * strength * SPIRAL
    load = min(pounds * _POUND, SOUND[1] * pi * diameter * depth)
    return Bears(
        load,
        load / SAFETY,
        f"0.834 D L^0.89 (0.95 S1 + S2) x {SPIRAL:g} / {SAFETY:g}",
        _DOWEL_DRAWN,
    )


def dowel_sheared(diameter: float) -> Bears:
    """A beech dowel cut across where two parts meet.

    Raises:
        ValueError: the diameter isn't above 0.
    """
    _sound(diameter, 1.0, 1.0)
    load = pi * diameter**2 / 4 * BEECH_SHEAR
    return Bears(load, load / SAFETY, f"pi D^2/4 x {BEECH_SHEAR:g} / {SAFETY:g}", _DOWEL_SHEARED)


def tenon_sheared(thickness: float, width: float, shear: float = BEECH_SHEAR) -> Bears:
    """A flat tenon or a biscuit cut across where two parts meet, ``width`` mm wide there.

    Raises:
        ValueError: a figure isn't above 0.
    """
    _sound(thickness, width, shear)
    load = 2 / 3 * thickness * width * shear
    return Bears(load, load / SAFETY, f"2/3 t b x {shear:.3g} / {SAFETY:g}", _TENON_SHEARED)


def cheeks_drawn(area: float, shear: float) -> Bears:
    """A flat tenon or a biscuit drawn out of a part: ``area`` mm2 of each of its two glued cheeks
    in wood of this shear strength, N/mm2.

    Raises:
        ValueError: a figure isn't above 0.
    """
    _sound(area, 1.0, shear)
    load = 2 * area * min(shear, BEECH_SHEAR)
    return Bears(load, load / SAFETY, f"2 A fv / {SAFETY:g}", _CHEEKS_DRAWN)


def cheeks_turned(width: float, depth: float, shear: float) -> Bears:
    """A flat tenon turned in its mortise, in the plane of its two glued cheeks, each ``width`` by
    ``depth`` mm: N mm.  The glue shears about their middle, most at the corners: M = 2 fv J / r, J
    = b d (b^2 + d^2) / 12.

    Raises:
        ValueError: a figure isn't above 0.
    """
    _sound(width, depth, shear)
    square = width**2 + depth**2
    polar, corner = width * depth * square / 12, sqrt(square) / 2
    moment = 2 * min(shear, BEECH_SHEAR) * polar / corner
    return Bears(moment, moment / SAFETY, f"2 fv J / r / {SAFETY:g}", _CHEEKS_TURNED)


def _sound(*figures: float) -> None:
    if min(figures) <= 0:
        raise ValueError("what is glued in needs its sizes and the wood's strength")
