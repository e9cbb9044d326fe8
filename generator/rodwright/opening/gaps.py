"""The gap round a unit that stands in its opening, and the packers in it.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import ceil
from typing import Literal

from rodwright.opening.readings import TAPE_ERROR
from rodwright.opening.silhouettes import Silhouette, SlopeLine
from rodwright.trade.gaps import BATTEN_LIMIT, NEGLIGIBLE, WIDEST_STRIP
from rodwright.unit import EdgeLine, LinePoint, OpeningPlane, OpeningShape

_FROM_END = 100.0
"""From a corner to the first fixing point (common practice, no source)."""
_BENT = 1.0
_NEAR = 0.05
"""Places nearer each other than this share of a side are one."""

SIDES = ("left", "right", "top", "slope", "bottom")
_LEVEL: Mapping[str, SlopeLine] = {}


@dataclass(frozen=True, slots=True)
class Gap:
    """The gap at one place: along ``side`` of the unit, ``at`` from its lower or left end; for the
    top, from the unit's left.

    At the edge under a slope it is square to the slope, and ``at`` goes along it.  ``error`` is
    the bound on it, nineteen times in twenty.
    """

    side: str
    plane: str
    at: float
    gap: float
    error: float = 0.0

    @property
    def most(self) -> float:
        """The most it may be."""
        return self.gap + self.error


@dataclass(frozen=True, slots=True)
class Packing:
    """The packers at one fixing point, thickest first; ``left_over`` is what they don't fill
    (negative where they are thicker than the gap).

    ``by`` is what fills the gap: packers; a batten first, where packers as thick as that hold no
    screw; a foot that is turned out; or nothing, under a base that can't be packed up so far.
    """

    gap: Gap
    packers: tuple[float, ...]
    by: Literal["packers", "batten", "foot", "nothing"] = "packers"

    @property
    def left_over(self) -> float:
        """The gap less the packers."""
        return self.gap.gap - sum(self.packers)


@dataclass(frozen=True, slots=True)
class Standing:
    """What a unit stands on: the ``places`` (x, mm) at which it is packed, or at which its
    ``feet`` are turned out, and how far it can follow a floor that falls away (None: as far as
    may be)."""

    places: tuple[float, ...]
    feet: bool = False
    levelling: float | None = None


def edge_at(line: EdgeLine, along: float) -> float:
    """Where a line lies across at a place along it; its first and last stretch go on."""
    a, b = _stretch(line, along)
    return a.across + (along - a.along) / (b.along - a.along) * (b.across - a.across)


def error_at(line: EdgeLine, along: float) -> float:
    """The bound on the gap at a place along a line."""
    a, b = _stretch(line, along)
    share = min(1.0, max(0.0, (along - a.along) / (b.along - a.along)))
    return a.error + share * (b.error - a.error)


def _stretch(line: EdgeLine, along: float) -> tuple[LinePoint, LinePoint]:
    stretches = list(pairwise(line))
    return next((each for each in stretches if along <= each[1].along), stretches[-1])


def gap_at(plane: OpeningPlane, size: tuple[float, float], side: str, at: float) -> float:
    """The gap between a plane and a unit of this width and height, ``at`` along its side.

    Measured level at the sides, plumb above and below; negative where they cross.
    """
    width, height = size
    across = edge_at(plane.line(side), at)
    if side == "right":
        return across - width
    return across - height if side == "top" else -across


def bent_at(plane: OpeningPlane, side: str, low: float, high: float) -> tuple[float, ...]:
    """Two places along a side, and where its line bends between them."""
    bent = (point.along for point in plane.line(side)[1:-1])
    return (low, *(at for at in bent if low < at < high), high)


def is_bent(plane: OpeningPlane, size: tuple[float, float], gap: Gap) -> bool:
    """Whether a gap is noticeably (1 mm) off one to an edge straight from end to end."""
    length = side_length(gap.side, size)
    start, end = (gap_at(plane, size, gap.side, at) for at in (0.0, length))
    return abs(gap.gap - start - gap.at / length * (end - start)) > _BENT


def gap_along(
    plane: str, shape: OpeningShape, size: tuple[float, float], side: str, places: Iterable[float]
) -> tuple[Gap, ...]:
    """The gaps at places along a side, with their errors."""
    found = shape.planes[plane]
    line = found.line(side)
    return tuple(
        Gap(side, plane, at, gap_at(found, size, side, at), error_at(line, at)) for at in places
    )


def gap_map(
    shape: OpeningShape, size: tuple[float, float], under: Mapping[str, SlopeLine] = _LEVEL
) -> tuple[Gap, ...]:
    """The gap at both ends and the middle of every side, and where its line bends elsewhere, in
    every plane that was measured; ``under`` are the lines of a slope over the unit, by plane.
    Nothing of a side that stays open."""
    found: list[Gap] = []
    left_out = open_sides(shape, size, under)
    for name, plane in shape.planes.items():
        outline = Silhouette(*size, under.get(name))
        for side in SIDES:
            run = None if side in left_out else outline.run(side)
            if run is None:
                continue
            if side == "slope":
                found += slope_gaps(name, outline)
                continue
            middle = sum(run) / 2
            bent = bent_at(plane, side, *run)
            places = [at for at in bent if abs(at - middle) > _NEAR * (run[1] - run[0])]
            found += gap_along(name, shape, size, side, sorted((*places, middle)))
    return tuple(found)


def slope_gaps(plane: str, outline: Silhouette) -> tuple[Gap, ...]:
    """The gap at both ends and the middle of the edge under a slope, square to it.

    Its error is that of the tape: how true the slope itself was read isn't known.
    """
    if outline.slope is None:
        return ()
    length, gap = outline.slope_length, outline.slope.gap
    return tuple(
        Gap("slope", plane, at, gap, TAPE_ERROR) for at in (0.0, length / 2, length) if length
    )


def open_sides(
    shape: OpeningShape, size: tuple[float, float], under: Mapping[str, SlopeLine] = _LEVEL
) -> tuple[str, ...]:
    """The sides at which a unit leaves more of its opening, in front, than any strip closes: it
    was made smaller on purpose."""
    outline = Silhouette(*size, under.get("front"))
    return tuple(
        side
        for side in ("left", "right", "top")
        if (run := outline.run(side)) is not None
        and min(
            each.gap
            for each in gap_along("front", shape, size, side, bent_at(shape.front, side, *run))
        )
        > WIDEST_STRIP
    )


def packing(
    shape: OpeningShape,
    size: tuple[float, float],
    stocked: Sequence[float],
    spacing: float,
    stands: Standing | None = None,
    under: Mapping[str, SlopeLine] = _LEVEL,
) -> tuple[Packing, ...]:
    """The packers at every fixing point of both sides and under the unit.

    ``spacing`` is the largest distance between fixing points; without ``stands`` the unit is
    packed all along its foot.  The top is not packed: it must be free to come out.  ``under`` are
    the lines of a slope over the unit, by plane: a side ends there.  A side that stays open has no
    packers.
    """
    on = stands or Standing(fixing_points(size[0], spacing))
    left_out = open_sides(shape, size, under)
    found: list[Packing] = []
    for plane in shape.planes:
        outline = Silhouette(*size, under.get(plane))
        for side in ("left", "right"):
            run = outline.run(side)
            if run is None or side in left_out:
                continue
            places = fixing_points(run[1], spacing)
            found += [_packed(gap, stocked) for gap in gap_along(plane, shape, size, side, places)]
        for gap in gap_along(plane, shape, size, "bottom", on.places):
            if on.levelling is not None and gap.gap > on.levelling + NEGLIGIBLE:
                found.append(Packing(gap, (), "nothing"))
            else:
                found.append(Packing(gap, (), "foot") if on.feet else _packed(gap, stocked))
    return tuple(found)


def _packed(gap: Gap, stocked: Sequence[float]) -> Packing:
    if gap.gap > BATTEN_LIMIT:
        return Packing(gap, (), "batten")
    return Packing(gap, packers(gap.gap, stocked))


def fixing_points(length: float, spacing: float) -> tuple[float, ...]:
    """Places along a side: near both ends, and between them at most ``spacing`` apart."""
    start = min(_FROM_END, length / 4)
    steps = max(1, ceil((length - 2 * start) / spacing - 1e-9))
    step = (length - 2 * start) / steps
    return tuple(start + number * step for number in range(steps + 1))


def packers(gap: float, stocked: Sequence[float]) -> tuple[float, ...]:
    """Packers for a gap: the one nearest it, on top of thickest ones where one isn't enough.

    None for a gap that half the thinnest packer is nearer to.
    """
    ordered = sorted(stocked)
    chosen: list[float] = []
    while gap > ordered[-1] + ordered[0] / 2:
        chosen.append(ordered[-1])
        gap -= ordered[-1]
    nearest = min((0.0, *ordered), key=lambda each: (abs(each - gap), each))
    return (*chosen, nearest) if nearest else tuple(chosen)


def side_length(side: str, size: tuple[float, float]) -> float:
    """How long a side of a unit of this width and height is, mm."""
    return size[1] if side in ("left", "right") else size[0]
