"""From the strengths that are published to what a piece may be loaded with."""

from __future__ import annotations

from typing import Literal

from rodwright.trade.creep import Duration, ServiceClass, kmod, partial_factor
from rodwright.trade.mechanics import Mechanics
from rodwright.trade.sources import Figure, Source

Strength = Literal["bending", "bending_across", "shear_strength", "bearing"]
"""The strengths of :class:`Mechanics`."""

VARIATION: dict[Strength, float] = {
    "bending": 0.16, "bending_across": 0.16, "shear_strength": 0.14, "bearing": 0.28,
}  # fmt: skip
"""Coefficients of variation of clear wood: modulus of rupture, shear parallel to the grain and
compression square to it (Wood Handbook FPL-GTR-190 (2010), table 5-6; from memory)."""
FIFTH = 1.645
"""Standard deviations below the mean that one piece in twenty of a normal distribution falls short
of (any table of the normal distribution; common practice, no source)."""


def lower_twentieth(mean: Figure, variation: float) -> Figure:
    """What nineteen pieces in twenty reach, of a strength whose mean is known: ``mean x (1 - 1.645
    variation)``.

    For clear, straight-grained wood, which is what means are published of: a board with knots or
    sloping grain has less, and no figure for that is in it.

    Raises:
        ValueError: ``variation`` isn't between 0 and 0.6.
    """
    if not 0.0 <= variation < 0.6:
        raise ValueError(f"a coefficient of variation of {variation:g} leaves no strength")
    return Figure(
        mean.value * (1.0 - FIFTH * variation),
        mean.measure,
        Source(
            f"{mean.source.work}; lower twentieth by the coefficient of variation of Wood Handbook "
            "table 5-6",
            seen=False,
        ),
    )


def design_strength(
    of: Mechanics, which: Strength, duration: Duration, service_class: ServiceClass = 1
) -> Figure | None:
    """What a piece may be stressed with, N/mm2: ``kmod f / gammaM`` (EN 1995-1-1, 2.4.1).

    Where the strength known is a mean, f is its lower twentieth.  None where strength or kmod
    isn't known; its source names all that went into it.
    """
    strength: Figure | None = getattr(of, which)
    left = kmod(of.table, duration, service_class, of.unlisted) if of.table else None
    if strength is None or left is None:
        return None
    known = strength if of.characteristic else lower_twentieth(strength, VARIATION[which])
    partial = partial_factor(of.table)
    works = (
        f"{known.source.work}; kmod {left.value:g}, {left.source.work}; gammaM {partial.value:g}"
    )
    return Figure(
        left.value * known.value / partial.value,
        strength.measure,
        Source(works, known.source.seen and left.source.seen and partial.source.seen),
    )
