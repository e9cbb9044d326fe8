"""What is clear between the boards of a carcass, seen from its front, each where it is so.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import partial

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.geometry.halfspaces import Plane, beyond, box_planes
from rodwright.geometry.vectors import minus
from rodwright.lengths import format_length
from rodwright.pictures.drafting import seen
from rodwright.pictures.drafting.bands import Interval, Row, rows, stretches
from rodwright.pictures.drafting.chains import chain
from rodwright.pictures.drafting.views import Side
from rodwright.unit import LEVELS, UPRIGHTS, Part, Unit

_IN = 1.0
"""How far behind the front of boards, and off their ends, it is measured, mm."""
_BESIDE = 200.0
"""What is measured so near to the unit's edge (mm) is told beside the unit, else in its place."""

DEEP = 100.0
"""What lies deeper behind the unit's front than this (mm) isn't told before it."""

_Body = tuple[Plane, ...]


@dataclass(frozen=True, slots=True)
class Clear:
    """A clear space: its ends lie on boards; ``side`` of the unit is where it is told."""

    start: Vector
    end: Vector
    text: str
    side: Side


def clear_spaces(unit: Unit) -> Iterator[Clear]:
    """Clear widths between uprights and clear heights between levels; what a slope cuts off is
    left out of them.  Texts are in the unit's measure, those of a row add up."""
    columns = rows(seen.rectangles(unit, UPRIGHTS, "front"), 0)
    levels = rows(seen.levels(unit), 1, seen.between_columns(unit))
    yield from _of_rows(unit, columns, 0)
    yield from _of_rows(unit, levels, 2)


def _of_rows(unit: Unit, found: Sequence[Row], axis: int) -> Iterator[Clear]:
    """The clear spaces along an axis; of one row, the first that reaches there, beside the unit."""
    if not found:
        return
    boards = [part for part in unit.parts if part.role in (*UPRIGHTS, *LEVELS)]
    bodies = [_body(part) for part in boards]
    depths = sorted({round(part.bounds().low[1], 3) + _IN for part in boards})
    edge, front = unit.envelope.low[2 - axis], unit.envelope.low[1] + DEEP
    beside = next((row for row in found if row.band[0] - edge <= _BESIDE), None)
    ends = (
        min(row.boards[0][0] for row in found),
        max(end for row in found for _, end in row.boards),
    )
    for row in found:
        places = _places(row, boards, 2 - axis, middle_first=row is not beside)
        side: Side = "below" if axis == 0 else "left"
        told = chain("", row.boards, ends, ("y", "inside", 0.0), unit.display_unit).dimensions
        for (low, high, filled), each in zip(stretches(row.boards, ends), told, strict=True):
            if filled:
                continue
            look = partial(_clear_at, bodies, axis, (low, high))
            near = [(at, y) for at in places for y in depths if y <= front]
            deep = [(at, y) for at in places for y in depths if y > front]
            middle = [(row.middle, y) for y in depths if y <= front]
            tried = ((near, True), (middle, False), (deep, True))
            seen_at = ((spot, look(spot), all_of) for spots, all_of in tried for spot in spots)
            for spot, gap, all_of in seen_at:
                if gap is None or (all_of and not _same(gap, (low, high))):
                    continue
                is_near = all_of and row is beside and spot[0] - edge <= _BESIDE
                text = each.text if all_of else format_length(gap[1] - gap[0], unit.display_unit)
                start, end = (_point(axis, along, spot) for along in gap)
                yield Clear(start, end, text, side if is_near else "inside")
                break


def _places(
    row: Row, boards: Sequence[Part], across: int, *, middle_first: bool
) -> tuple[float, ...]:
    """Where across its band a row may be measured: beside the ends of boards, and in its middle."""
    low, high = row.band
    ends = {end for part in boards for end in _extent(part.bounds(), across)}
    tried = sorted({low + _IN, *(end + _IN for end in ends if low < end + _IN < high)})
    return (row.middle, *tried) if middle_first else (*tried, row.middle)


def _extent(box: Box, axis: int) -> Interval:
    return box.low[axis], box.high[axis]


def _point(axis: int, along: float, spot: tuple[float, float]) -> Vector:
    across, depth = spot
    return (along, depth, across) if axis == 0 else (across, depth, along)


def _same(found: Interval, wanted: Interval) -> bool:
    return all(abs(a - b) <= TOUCH for a, b in zip(found, wanted, strict=True))


def _clear_at(
    bodies: Sequence[_Body], axis: int, within: Interval, spot: tuple[float, float]
) -> Interval | None:
    """The longest stretch between two boards on the line through a spot (across, and in depth)
    along an axis, within another; None where there is none."""
    point = _point(axis, within[0], spot)
    filled = sorted(found for body in bodies if (found := _met(body, point, axis)))
    gaps: list[Interval] = []
    reached = None
    for low, high in filled:
        if reached is not None and low > reached + TOUCH:
            gaps.append((reached, low))
        reached = high if reached is None else max(reached, high)
    inside = [gap for gap in gaps if seen.is_inside(gap, within)]
    return max(inside, key=lambda gap: gap[1] - gap[0], default=None)


def _body(part: Part) -> _Body:
    """The planes that bound what flat cuts leave of a part, unit frame."""
    size, placed = part.blank.size, part.placement
    cuts = [plane for each in part.workings for plane in each.planes(size)]
    origin = placed.to_unit((0.0, 0.0, 0.0))
    return tuple(
        (placed.to_unit(at), minus(placed.to_unit(normal), origin))
        for at, normal in (*box_planes(Box.of_size(size)), *cuts)
    )


def _met(body: _Body, point: Vector, axis: int) -> Interval | None:
    """From where to where a line through a point along an axis runs in a convex body."""
    low, high = float("-inf"), float("inf")
    for plane in body:
        lean, past = plane[1][axis], beyond(plane, point)
        if abs(lean) < 1e-9:
            if past > 0:
                return None
        elif lean > 0:
            high = min(high, point[axis] - past / lean)
        else:
            low = max(low, point[axis] - past / lean)
    return (low, high) if high - low > TOUCH else None
