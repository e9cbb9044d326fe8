"""Room on a sheet that is drawn: which lines there are, and what they run through."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.cutting.steps import SheetSteps
from rodwright.pictures.cutting_sheet import Area, Frame, Shown, flaw_areas, offcut_areas
from rodwright.pictures.ink import Point

Segment = tuple[Point, Point]


def sheet_lines(sheet: SheetSteps, pieces: Sequence[Shown], frame: Frame) -> list[Segment]:
    """Every line that a number might stand on."""
    stock = sheet.stock
    outlines = [shown.outline for shown in pieces]
    areas = [*offcut_areas(sheet, frame), *flaw_areas(sheet, frame)]
    areas.append(frame.area(0.0, 0.0, stock.length, stock.width))
    outlines += [area.corners() for area in areas]
    return [
        (one, other)
        for outline in outlines
        for one, other in zip(outline, (*outline[1:], outline[0]), strict=True)
    ]


def crosses(box: Area, line: tuple[Point, Point], own: tuple[Point, Point] | None) -> bool:
    """Whether a line runs under a number, other than beside its own cut."""
    (x0, y0), (x1, y1) = line
    low, high = 0.0, 1.0
    for start, stop, near, far in (
        (x0, x1, box.left, box.right),
        (y0, y1, box.top, box.bottom),
    ):
        along = stop - start
        if abs(along) < 1e-9:
            if not near < start < far:
                return False
            continue
        a, b = sorted(((near - start) / along, (far - start) / along))
        low, high = max(low, a), min(high, b)
    if low >= high:
        return False
    return own is None or not _beside(line, own)


def _beside(line: tuple[Point, Point], own: tuple[Point, Point]) -> bool:
    """Whether a line runs along a cut, no farther from it than half a wide kerf."""
    (ax, ay), (bx, by) = own
    length = ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5
    return all(abs((x - ax) * (by - ay) - (y - ay) * (bx - ax)) < 0.45 * length for x, y in line)


def around(middle: Point, half: tuple[float, float]) -> Area:
    """The area about its middle, with half its extent."""
    (x, y), (across, down) = middle, half
    return Area(x - across, y - down, x + across, y + down)


def lies_in(box: Area, within: Area) -> bool:
    """Whether an area lies within another."""
    return (
        within.left <= box.left
        and box.right <= within.right
        and within.top <= box.top
        and box.bottom <= within.bottom
    )
