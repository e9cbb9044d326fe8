"""The numbers of cuts on a sheet: where each is made, in their order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.cutting.steps import SheetSteps, Step
from rodwright.cutting.steps.cuts import Line
from rodwright.pictures.cutting_labels import SHARES, Labels
from rodwright.pictures.cutting_rooms import Segment, around, crosses, lies_in, sheet_lines
from rodwright.pictures.cutting_sheet import EDGE, KEPT, Area, Frame, Shown
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Fill, Lettering, Point, Stroke, rounded

_CUT_SIZES = (2.4, 2.0, 1.6)
_OUTSIDE = (2.6, 6.0)
"""How far outside a sheet a cut's number stands."""
_NEAR = 3.0
_MARGIN = 8.0
"""Beside a sheet, for numbers."""


def number_cuts(
    labels: Labels, sheet: SheetSteps, pieces: Sequence[Shown], frame: Frame, within: Area
) -> None:
    """The numbers of cuts: outside the sheet where a cut ends at its edge, else on the cut."""
    lines = [*sheet_lines(sheet, pieces, frame), *labels.leaders]
    missing = []
    for step in sheet.steps:
        if step.line is None:
            continue
        spot = _spot(labels, step, step.line, lines, frame, within)
        if spot is None:
            missing.append(str(step.number))
            continue
        middle, size, half = spot
        box = Area(
            middle[0] - half[0], middle[1] - half[1], middle[0] + half[0], middle[1] + half[1]
        )
        labels.taken.append(box)
        ring = rounded((box.left, box.top), (box.right, box.bottom), 0.95 * half[1])
        labels.marks += [
            Fill((ring,), KEPT),
            Stroke((ring,), EDGE),
            Lettering((middle[0], middle[1] + 0.35 * size), str(step.number), size),
        ]
    if missing:
        labels.told.append(f"cuts without room for their number: {', '.join(missing)}")


def _spot(
    labels: Labels,
    step: Step,
    line: Line,
    lines: Sequence[Segment],
    frame: Frame,
    within: Area,
) -> tuple[Point, float, tuple[float, float]] | None:
    """Where a cut's number stands, in which size, and half its extent."""
    ends = _on_paper(line, frame)
    for size in _CUT_SIZES:
        half = (max(text_width(str(step.number), size) / 2 + 0.5, 0.65 * size), 0.65 * size)
        for middle, outside in _candidates(ends, frame, within):
            box = around(middle, half)
            free = not any(box.meets(each) for each in labels.taken)
            if not free or not lies_in(box, within):
                continue
            own = None if outside else ends
            if not any(crosses(box, each, own) for each in lines):
                return middle, size, half
    return None


def _candidates(
    ends: tuple[Point, Point], frame: Frame, within: Area
) -> Iterator[tuple[Point, bool]]:
    (x0, y0), (x1, y1) = ends
    right, top = within.right - _MARGIN, frame.foot - frame.deep
    for away in _OUTSIDE:
        if abs(y0 - y1) < 1e-6:
            if abs(x0 - frame.left) < 0.01:
                yield (x0 - away, y0), True
            if abs(x1 - right) < 0.01:
                yield (x1 + away, y1), True
        elif abs(y0 - frame.foot) < 0.01:
            yield (x0, y0 + away), True
        elif abs(y1 - top) < 0.01:
            yield (x1, y1 - away), True
    for share in SHARES:
        yield (x0 + share * (x1 - x0), y0 + share * (y1 - y0)), False
    yield from _beside_edge(ends, frame, right)


def _beside_edge(
    ends: tuple[Point, Point], frame: Frame, right: float
) -> Iterator[tuple[Point, bool]]:
    """Outside the sheet, right beside a cut that runs close along its edge."""
    (x0, y0), (x1, y1) = ends
    middle, top = ((x0 + x1) / 2, (y0 + y1) / 2), frame.foot - frame.deep
    if abs(y0 - y1) < 1e-6:
        if y0 - top < _NEAR:
            yield (middle[0], top - _OUTSIDE[0]), True
    elif right - x0 < _NEAR:
        yield (right + _OUTSIDE[0], middle[1]), True


def _on_paper(line: Line, frame: Frame) -> tuple[Point, Point]:
    (x0, y0), (x1, y1) = line
    if frame.flat:
        return (frame.point(x0, 0.0), (frame.point(x1, 0.0)[0], frame.foot - frame.deep))
    return frame.point(x0, y0), frame.point(x1, y1)
