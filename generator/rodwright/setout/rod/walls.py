"""How near the walls and the ceiling of an opening come to what stands out from a carcass."""

from __future__ import annotations

from rodwright.opening.gaps import bent_at, gap_at
from rodwright.setout.rod.lines import Rod


def side_gap(rod: Rod, low: float, high: float, side: str | None = None) -> float | None:
    """The narrowest gap (mm) beside the carcass between two heights, at one side or both; None
    where there is no opening."""
    if rod.opening is None or rod.opening.shape is None:
        return None
    size = (rod.outside.width, rod.outside.overall)
    return min(
        gap_at(plane, size, each, at)
        for plane in rod.opening.shape.planes.values()
        for each in ((side,) if side else ("left", "right"))
        for at in bent_at(plane, each, low, high)
    )


def gap_over(rod: Rod, left: float, right: float) -> float | None:
    """The narrowest gap (mm) over the whole piece between two x; None without an opening."""
    if rod.opening is None or rod.opening.shape is None:
        return None
    size = (rod.outside.width, rod.outside.overall)
    return min(
        gap_at(plane, size, "top", at)
        for plane in rod.opening.shape.planes.values()
        for at in bent_at(plane, "top", left, right)
    )
