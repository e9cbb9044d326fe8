"""How near the walls and the ceiling of an opening come to what stands out from a carcass."""

from __future__ import annotations

from rodwright.setout.rod import Rod
from rodwright.site.gaps import gap_at


def side_gap(rod: Rod, low: float, high: float, side: str | None = None) -> float | None:
    """The narrowest gap (mm) beside the carcass between two heights, at one side or both; None
    where there is no opening."""
    if rod.opening is None or rod.opening.shape is None:
        return None
    size = (rod.width, rod.overall)
    return min(
        gap_at(corners, size, each, at)
        for corners in rod.opening.shape.planes.values()
        for each in ((side,) if side else ("left", "right"))
        for at in (low, high)
    )


def gap_over(rod: Rod, left: float, right: float) -> float | None:
    """The narrowest gap (mm) over the whole piece between two x; None without an opening."""
    if rod.opening is None or rod.opening.shape is None:
        return None
    size = (rod.width, rod.overall)
    return min(
        gap_at(corners, size, "top", at)
        for corners in rod.opening.shape.planes.values()
        for at in (left, right)
    )
