"""A frame scribed tight into an opening that is out of square: angles, mitres and lengths.

By plane trigonometry on the opening's corners; lengths in mm, angles in degrees.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import atan2, degrees, hypot

from rodwright.lengths import LengthUnit, format_length
from rodwright.unit import Quadrilateral

Point = tuple[float, float]
Line = tuple[Point, Point]

_CORNERS = ("bottom left", "bottom right", "top right", "top left")


@dataclass(frozen=True, slots=True)
class FrameMember:
    """A stile or rail: lengths over the long and the short points, and its end cuts.

    ``start_cut`` and ``end_cut`` are saw settings away from a square cut, at its lower or
    left end and at the other: above zero where the outer edge is the longer one.
    """

    name: str
    outer: float
    inner: float
    start_cut: float
    end_cut: float

    @property
    def long_points(self) -> float:
        """Length over the long points."""
        return max(self.outer, self.inner)

    @property
    def short_points(self) -> float:
        """Length over the short points."""
        return min(self.outer, self.inner)


@dataclass(frozen=True, slots=True)
class FittedFrame:
    """The corners' true angles by name, and the members in the order to cut and fit them."""

    angles: dict[str, float]
    members: tuple[FrameMember, ...]
    trim: float
    unit: LengthUnit = "mm"

    @property
    def order(self) -> tuple[str, ...]:
        """What to do, in order (common practice, no source)."""
        trim = f"{format_length(self.trim, self.unit)} {self.unit}" if self.trim else "a little"
        return (
            "Set a bevel to each corner, halve it, and try the mitres on offcuts first.",
            f"Cut every member {trim} long.",
            "Fit the rails first: trim each until it sits between the walls.",
            "Then the stiles: trim an end at a time, bow them slightly and spring them in.",
        )


def fit_frame(
    corners: Quadrilateral,
    stile_width: float,
    rail_width: float,
    mitred: bool,
    trim: float,
    unit: LengthUnit = "mm",
) -> FittedFrame:
    """A frame of four members whose outer edges are the opening's.

    Mitred members meet on the line from the outer to the inner corner, which halves the
    corner where stiles and rails are equally wide; butted rails stand between the stiles.
    """
    widths = (rail_width, stile_width, rail_width, stile_width)
    edges = [(corners[i], corners[(i + 1) % 4]) for i in range(4)]
    inner = [_inset(edge, width) for edge, width in zip(edges, widths, strict=True)]
    bottom, _, top, _ = edges
    in_bottom, in_right, in_top, in_left = inner
    a, b, c, d = corners
    e, f = _meet(in_left, in_bottom), _meet(in_right, in_bottom)
    g, h = _meet(in_right, in_top), _meet(in_left, in_top)
    if mitred:
        members = (
            _member("Bottom rail", (a, b), (e, f)),
            _member("Top rail", (d, c), (h, g)),
            _member("Left stile", (a, d), (e, h)),
            _member("Right stile", (b, c), (f, g)),
        )
    else:
        members = (
            _member("Bottom rail", (_meet(in_left, bottom), _meet(in_right, bottom)), (e, f)),
            _member("Top rail", (_meet(in_left, top), _meet(in_right, top)), (h, g)),
            _member("Left stile", (a, d), (_meet(in_left, bottom), _meet(in_left, top))),
            _member("Right stile", (b, c), (_meet(in_right, bottom), _meet(in_right, top))),
        )
    angles = {
        name: _angle(corners[number - 1], corners[number], corners[(number + 1) % 4])
        for number, name in enumerate(_CORNERS)
    }
    return FittedFrame(angles, members, trim, unit)


def _member(name: str, outer: Line, inner: Line) -> FrameMember:
    (ax, az), (bx, bz) = outer
    length = hypot(bx - ax, bz - az)
    along = ((bx - ax) / length, (bz - az) / length)

    def lag(start: Point, end: Point) -> tuple[float, float]:
        x, z = end[0] - start[0], end[1] - start[1]
        return along[0] * x + along[1] * z, abs(along[0] * z - along[1] * x)

    first, last = lag(outer[0], inner[0]), lag(outer[1], inner[1])
    return FrameMember(
        name,
        length,
        hypot(inner[1][0] - inner[0][0], inner[1][1] - inner[0][1]),
        degrees(atan2(first[0], first[1])),
        degrees(atan2(-last[0], last[1])),
    )


def _inset(edge: Line, by: float) -> Line:
    (ax, az), (bx, bz) = edge
    length = hypot(bx - ax, bz - az)
    x, z = -(bz - az) / length * by, (bx - ax) / length * by
    return (ax + x, az + z), (bx + x, bz + z)


def _meet(first: Line, second: Line) -> Point:
    (ax, az), (bx, bz) = first
    (cx, cz), (dx, dz) = second
    across = (bx - ax) * (dz - cz) - (bz - az) * (dx - cx)
    share = ((cx - ax) * (dz - cz) - (cz - az) * (dx - cx)) / across
    return ax + share * (bx - ax), az + share * (bz - az)


def _angle(before: Point, at: Point, after: Point) -> float:
    x, z = before[0] - at[0], before[1] - at[1]
    u, w = after[0] - at[0], after[1] - at[1]
    return degrees(atan2(abs(x * w - z * u), x * u + z * w))
