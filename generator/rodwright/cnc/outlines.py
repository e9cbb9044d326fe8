"""The outline of a part seen from its worked side, with what is cut right through its edges."""

from __future__ import annotations

from collections.abc import Iterable

import shapely
from shapely.geometry import Polygon, box

from rodwright.geometry import TOUCH, Vector
from rodwright.geometry.halfspaces import Plane
from rodwright.unit import Bevel, Mitre, Notch, Part

_UPRIGHT = 1e-9


def outline(part: Part) -> tuple[Polygon, tuple[tuple[float, Polygon], ...]]:
    """The outline (mm, part frame, seen from +z) of a part, and the areas in which a slanting cut
    leaves it less than its thickness, with the angle (degrees off square) of each cut.

    Notches and cuts square to the face are in the outline; where a cut slants through the
    thickness the outline is that of the larger face.

    Raises:
        ValueError: the cuts leave no single piece.
    """
    size = part.blank.size
    shape = box(0.0, 0.0, size[0], size[1])
    for each in part.workings:
        if isinstance(each, Notch):
            shape = shape.difference(box(each.x, each.y, each.x + each.length, each.y + each.width))
    slanting: list[tuple[float, Polygon]] = []
    for each in part.workings:
        if isinstance(each, Mitre | Bevel):
            (plane,) = each.planes(size)
            larger, smaller = _kept(shape, plane, size)
            shape = larger
            if abs(plane[1][2]) > _UPRIGHT:
                slanting += [(each.angle, area) for area in _areas(larger.difference(smaller))]
    whole = _areas(shape)
    if len(whole) != 1:
        raise ValueError(f"the cuts of {part.ref} leave {len(whole)} pieces")
    left = whole[0]
    clipped = ((angle, area.intersection(left)) for angle, area in slanting)
    return left, tuple((angle, each) for angle, area in clipped for each in _areas(area))


def _kept(shape: Polygon, plane: Plane, size: Vector) -> tuple[Polygon, Polygon]:
    """What a plane leaves of a shape at the face where it leaves more, and at the other."""
    found = sorted(
        (_clipped(shape, plane, z, size) for z in (0.0, size[2])), key=lambda it: it.area
    )
    return found[1], found[0]


def _clipped(shape: Polygon, plane: Plane, z: float, size: Vector) -> Polygon:
    """A shape on this side of a plane, at one height."""
    (x, y, at), (nx, ny, nz) = plane
    across = (nx * nx + ny * ny) ** 0.5
    if across < _UPRIGHT:
        return shape
    # Where the plane meets this height: nx * px + ny * py = offset.
    offset = nx * x + ny * y + nz * (at - z)
    foot = (nx * offset / across**2, ny * offset / across**2)
    along, out = (-ny / across, nx / across), (nx / across, ny / across)
    far = 4 * (size[0] + size[1]) + abs(foot[0]) + abs(foot[1])
    corners = [
        (
            foot[0] + a * far * along[0] + b * far * out[0],
            foot[1] + a * far * along[1] + b * far * out[1],
        )
        for a, b in ((-1, 0), (1, 0), (1, 1), (-1, 1))
    ]
    return shape.difference(Polygon(corners))


def _areas(shape: shapely.Geometry) -> list[Polygon]:
    """The polygons of something that isn't too thin to be seen."""
    parts: Iterable[shapely.Geometry] = getattr(shape, "geoms", [shape])
    return [each for each in parts if isinstance(each, Polygon) and each.area > TOUCH]
