"""Does the unit go into its opening, and does it leave the usual gaps?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import length_in
from rodwright.parts import Unit

USUAL_GAP = (6.0, 8.0)
"""How much smaller than its opening a unit is made, in all, mm (common practice, no source)."""
_ROUNDING = 1e-6


def fit(unit: Unit) -> Iterator[Finding]:
    """The unit's overall sizes against the tightest of its opening."""
    if unit.opening is None:
        return
    width, height, depth = unit.size
    for what, size, opening in (
        ("width", width, unit.opening.width),
        ("height", height, unit.opening.height),
        ("depth", depth, unit.opening.depth),
    ):
        if opening is None:
            continue
        gap = opening - size
        if gap < -_ROUNDING:
            yield Finding(
                Severity.ERROR,
                "larger than the opening",
                f"the unit's {what} of {length_in(unit, size)} is {length_in(unit, -gap)} more "
                f"than the opening's",
                f"Make its {what} smaller, or measure the opening again.",
                figure=size,
                limit=opening,
                source="the opening's tightest reading",
            )
        elif what != "depth" and not USUAL_GAP[0] <= gap + _ROUNDING <= USUAL_GAP[1] + 2e-6:
            low, high = (length_in(unit, limit) for limit in USUAL_GAP)
            yield Finding(
                Severity.NOTE,
                "fitting gap",
                f"in {what} the unit leaves {length_in(unit, gap)} of the opening; usual is {low} "
                f"to {high}",
                "Mind that it can be put in, and that packers and frame can fill what is left.",
                figure=gap,
                limit=USUAL_GAP[0] if gap < USUAL_GAP[0] else USUAL_GAP[1],
            )
