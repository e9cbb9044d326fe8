"""Can what the unit stands on follow the floor?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.fit import carcass_size
from rodwright.checks.wording import length_in, named
from rodwright.parts import Role, Unit
from rodwright.site.gaps import gap_map

_NEGLIGIBLE = 0.5
"""Less than this (mm) needs no packing."""


def levelling(unit: Unit) -> Iterator[Finding]:
    """The floor's fall under the unit against what its base can follow, and what is packed."""
    if unit.levelling is None:
        return
    packed = [
        part for part in unit.parts if part.role is Role.PLINTH and part.bounds().low[2] > 1e-6
    ]
    if packed:
        high = packed[0].bounds().low[2]
        yield Finding(
            Severity.NOTE,
            "levelling",
            f"the plinth is {length_in(unit, high)} lower than the base, starting with "
            f"{named(packed[0])}",
            "Level it on packers, and fix the carcass to it once it lies true.",
            (packed[0].ref,),
            high,
            source="`base.levelling`",
        )
    if unit.opening is None or unit.opening.shape is None:
        return
    size = carcass_size(unit)
    fall = max(gap.gap for gap in gap_map(unit.opening.shape, size) if gap.side == "bottom")
    if fall > unit.levelling + _NEGLIGIBLE:
        yield Finding(
            Severity.WARNING,
            "levelling",
            f"under the unit the floor falls by {length_in(unit, fall)}, and its base "
            f"levels out {length_in(unit, unit.levelling)}",
            "Give the base more (`base.levelling`, or feet with a larger range), or scribe it.",
            figure=round(fall, 1),
            limit=unit.levelling,
            source="the readings, and `base`",
        )
