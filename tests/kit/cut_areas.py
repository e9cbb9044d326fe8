"""Areas that planes cut of parts, by arithmetic."""

from __future__ import annotations

from shapely import Polygon, box, unary_union

from rodwright.paper.drawings.cutting_planes import CuttingPlane
from rodwright.pictures.drafting.views import Cut
from rodwright.unit import Groove, Housing, Notch, Part, Rebate

FILL_THEIR_BOUNDS = (Groove, Housing, Notch, Rebate)


def area(cut: Cut) -> float:
    """The area of a cut: its outer ring less its holes."""
    shape = Polygon(cut.rings[0], cut.rings[1:])
    assert shape.is_valid
    return float(shape.area)


def areas(cuts: tuple[Cut, ...]) -> dict[str, float]:
    found: dict[str, float] = {}
    for cut in cuts:
        found[cut.ref] = found.get(cut.ref, 0.0) + area(cut)
    return found


def by_arithmetic(part: Part, plane: CuttingPlane) -> float | None:
    """Length or width by thickness where a plane square to the part goes through it, less what is
    let in there; None of a part whose workings there have other shapes."""
    size, placed = part.blank.size, part.placement
    across = next(at for at in range(3) if abs(placed.axes[at][plane.axis]) > 0.999)
    at = placed.to_part(
        tuple(plane.at if axis == plane.axis else placed.origin[axis] for axis in range(3))
    )[across]  # type: ignore[arg-type]
    u, v = (axis for axis in range(3) if axis != across)
    taken = []
    for each in part.workings:
        bounds = each.bounds(size)
        if bounds.low[across] - 1e-6 <= at <= bounds.high[across] + 1e-6:
            if not isinstance(each, FILL_THEIR_BOUNDS):
                return None
            taken.append(box(bounds.low[u], bounds.low[v], bounds.high[u], bounds.high[v]))
    left = box(0.0, 0.0, size[u], size[v]).difference(unary_union(taken))
    return float(left.area)
