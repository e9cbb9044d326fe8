"""What is seen of a part's surface: its outline and what is cut into it; mm from the datum."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import shapely

from rodwright.geometry import TOUCH
from rodwright.paper.part_sheets.datum import Datum
from rodwright.paper.part_sheets.patches import Patch
from rodwright.paper.part_sheets.slants import crossings, taken_axes
from rodwright.unit import (
    Bevel,
    Hole,
    Mitre,
    Mortise,
    Notch,
    Surface,
    Working,
)
from rodwright.unit.surfaces import LOW

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Facing:
    """A surface as it is looked at: ``across`` are the part axes that run to the right and up on
    paper, each with whether its datum lies at the right or at the top."""

    surface: Surface
    across: tuple[int, int]
    turned: tuple[bool, bool]

    @classmethod
    def of(cls, datum: Datum, surface: Surface) -> Facing:
        """The piece is rolled about its length for edges and the second face, so that the datum
        end stays at the left; an end is looked at with the worked face at the top."""
        up, near = datum.origin[2] is Surface.FACE, not datum.origin[1].at_high
        match surface:
            case Surface.FACE:
                return cls(surface, (0, 1), (False, not near))
            case Surface.REVERSE:
                return cls(surface, (0, 1), (False, near))
            case Surface.FACE_EDGE:
                return cls(surface, (0, 2), (False, up))
            case Surface.BACK_EDGE:
                return cls(surface, (0, 2), (False, not up))
            case Surface.NEAR_END:
                return cls(surface, (1, 2), (near, up))
            case Surface.FAR_END:
                return cls(surface, (1, 2), (not near, up))

    @property
    def top(self) -> Surface:
        """The surface at the top of the paper."""
        axis = self.across[1]
        low_at_top = {
            Surface.FACE: False,
            Surface.REVERSE: True,
            Surface.FACE_EDGE: False,
            Surface.BACK_EDGE: True,
            Surface.NEAR_END: False,
            Surface.FAR_END: False,
        }[self.surface]
        return LOW[axis] if low_at_top else LOW[axis].opposite


@dataclass(frozen=True, slots=True)
class Seen:
    """The outline of a surface, and lines of sloping cuts on it: seen ones, and covered ones."""

    outline: shapely.Polygon
    lines: tuple[tuple[Point, Point], ...]
    covered: tuple[tuple[Point, Point], ...]


def seen(datum: Datum, facing: Facing, workings: Sequence[Working]) -> Seen:
    """What a surface looks like before anything is cut into it."""
    first, second = facing.across
    size = datum.size
    outline = shapely.box(0.0, 0.0, size[first], size[second])
    lines: list[tuple[Point, Point]] = []
    covered: list[tuple[Point, Point]] = []
    for each in workings:
        if isinstance(each, Notch) and facing.surface.axis == 2:
            outline = outline.difference(shape(datum, facing, each))
        elif isinstance(each, Mitre | Bevel):
            axes = taken_axes(each)
            if set(axes) == set(facing.across):
                outline = outline.difference(_fallen(datum, facing, each))
            elif facing.surface.axis in axes:
                _across(datum, facing, each, lines, covered)
    return Seen(_largest(outline), tuple(lines), tuple(covered))


def _across(
    datum: Datum,
    facing: Facing,
    cut: Mitre | Bevel,
    lines: list[tuple[Point, Point]],
    covered: list[tuple[Point, Point]],
) -> None:
    """The line where a cut that slopes away from a surface begins, and where it comes out."""
    (axis,) = set(taken_axes(cut)) - {facing.surface.axis}
    other = next(each for each in facing.across if each != axis)
    for surface, along in crossings(datum.size, cut):
        if surface.axis != facing.surface.axis or not TOUCH < along < datum.size[axis] - TOUCH:
            continue
        at = datum.from_datum(axis, along)
        line = ((at, 0.0), (at, datum.size[other]))
        if axis == facing.across[1]:
            line = ((0.0, at), (datum.size[other], at))
        (lines if surface is facing.surface else covered).append(line)


def _fallen(datum: Datum, facing: Facing, cut: Mitre | Bevel) -> shapely.Polygon:
    """What falls off at a cut that is square to the surface."""
    ((point, normal),) = cut.planes(datum.size)
    first, second = facing.across
    far = 4 * max(datum.size)
    along = (-normal[second], normal[first])
    corners = [
        (
            point[first] + way * far * along[0] + out * normal[first],
            point[second] + way * far * along[1] + out * normal[second],
        )
        for way, out in ((-1, 0.0), (1, 0.0), (1, far), (-1, far))
    ]
    return shapely.Polygon(
        [(datum.from_datum(first, x), datum.from_datum(second, y)) for x, y in corners]
    )


def _largest(found: shapely.Geometry) -> shapely.Polygon:
    parts = [each for each in shapely.get_parts(found) if isinstance(each, shapely.Polygon)]
    return max(parts, key=lambda each: each.area)


def shape(datum: Datum, facing: Facing, working: Working | Patch) -> shapely.Polygon:
    """What a working takes, seen square to a surface."""
    first, second = facing.across
    if isinstance(working, Hole) and set(working.surface.across) == {first, second}:
        at = (
            datum.from_datum(axis, place)
            for axis, place in zip(working.surface.across, working.position, strict=True)
        )
        return shapely.Point(*at).buffer(working.diameter / 2, quad_segs=12)
    box = working.bounds(datum.size)
    low = [datum.from_datum(axis, box.low[axis], box.size[axis]) for axis in (first, second)]
    extents = [box.size[axis] for axis in (first, second)]
    if isinstance(working, Mortise) and working.round_ends and min(extents) < max(extents):
        radius = min(extents) / 2
        line = shapely.LineString(
            [
                (low[0] + radius, low[1] + radius),
                (low[0] + extents[0] - radius, low[1] + extents[1] - radius),
            ]
        )
        return line.buffer(radius, quad_segs=12)
    return shapely.box(low[0], low[1], low[0] + extents[0], low[1] + extents[1])


def rings(found: shapely.Geometry) -> Iterator[tuple[Point, ...]]:
    """The outlines of a shape."""
    for each in shapely.get_parts(found):
        if isinstance(each, shapely.Polygon) and not each.is_empty:
            for ring in (each.exterior, *each.interiors):
                yield tuple((x, y) for x, y in ring.coords)
