"""A sheet as marks on paper, ready for SVG and PNG."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

import numpy as np

from rodwright.pictures.drafting.figures import (
    CHAIN,
    CLEAR,
    DASHES,
    DOUBLE,
    FINE,
    FINEST,
    NARROW,
    WIDE,
)
from rodwright.pictures.drafting.hatching import hatched
from rodwright.pictures.drafting.letters import Rect
from rodwright.pictures.drafting.on_paper import DraftedView
from rodwright.pictures.drafting.room import Array, as_array, broken
from rodwright.pictures.drafting.sheets import Sheet
from rodwright.pictures.drafting.views import Line, Point
from rodwright.pictures.ink import DARK, Drawing, Fill, Mark, Stroke
from rodwright.pictures.pens import thinned

_ZIGZAG = (1.6, 2.4)
"""How far a zigzag stands out to either side, and how long it is."""
LEAST_HIDDEN = 0.8
"""Shorter hidden stretches (mm on paper), such as the facets of a small hole, are left out."""


def draw(sheet: Sheet, description: str, more: Sequence[Mark] = ()) -> Drawing:
    """The drawing of a sheet; ``more`` marks lie on top of the views' lines."""
    marks: list[Mark] = []
    for view in sheet.views:
        marks += view_marks(view)
    marks += more
    for view in sheet.views:
        marks += told_marks(view)
    marks += _block_marks(sheet)
    return Drawing(
        sheet.paper.width, sheet.paper.height, sheet.titles.title, description, tuple(marks), "mm"
    )


def view_marks(view: DraftedView) -> Iterator[Mark]:
    """The lines of a view, broken round its texts."""
    texts = [each.rect.grown(CLEAR / 2) for each in view.texts()]
    shown = _on_paper(view, view.view.visible, texts)
    covered = _on_paper(view, view.view.hidden, texts)
    cuts = [
        (cut, tuple(tuple(map(view.page, ring)) for ring in cut.rings)) for cut in view.view.cuts
    ]
    for lines in hatched(cuts):
        yield from _stroke(broken(lines, texts), FINE)
    yield from _stroke(_on_paper(view, view.view.outline, texts), FINE)
    for pen, pieces in thinned(as_array(covered), NARROW, FINEST, as_array(shown)).items():
        lengths = np.linalg.norm(pieces[:, 1] - pieces[:, 0], axis=1)
        yield from _stroke(_as_lines(pieces[lengths >= LEAST_HIDDEN]), pen, DASHES)
    for line in view.view.moved:
        yield from patterned(tuple(map(view.page, line)), DOUBLE, NARROW, texts)
    for pen, pieces in thinned(as_array(shown), WIDE, FINEST).items():
        yield from _stroke(_as_lines(pieces), pen)
    off = {frozenset((view.page(a), view.page(b))) for cut, _ in cuts for a, b in cut.broken}
    sides = [
        (a, b) for _, rings in cuts for r in rings for a, b in zip(r, (*r[1:], *r[:1]), strict=True)
    ]
    yield from _stroke(broken([e for e in sides if frozenset(e) not in off], texts), WIDE)
    for side in sides:
        if frozenset(side) in off:
            yield from _stroke(broken(list(pairwise(_zigzag(*side))), texts), NARROW)


def _zigzag(start: Point, end: Point) -> list[Point]:
    """A line where something is broken off, with a zigzag in its middle (line type 01.1 with
    zigzags, from memory); short ones are straight."""
    length = math.dist(start, end)
    if length < _ZIGZAG[1] * 3:
        return [start, end]
    x, y = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    high, long = _ZIGZAG
    turns = ((-0.5, 0.0), (-0.2, high), (0.2, -high), (0.5, 0.0))
    middle = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    bent = [
        (middle[0] + x * long * at - y * off, middle[1] + y * long * at + x * off)
        for at, off in turns
    ]
    return [start, *bent, end]


def told_marks(view: DraftedView) -> Iterator[Mark]:
    """What is told of a view: cutting planes, dimensions, notes and its caption."""
    texts = [each.rect.grown(CLEAR / 2) for each in view.texts()]
    for plane in view.plane_lines:
        yield from patterned(plane, CHAIN, NARROW, texts)
    for end in view.plane_ends:
        yield from _stroke([end.line], WIDE)
        yield from _stroke([end.shaft], NARROW)
        yield Fill((end.head,), DARK)
    lines = [line for each in view.dimensions for line in each.lines]
    lines += [line for note in view.notes for line in note.leader]
    yield from _stroke(lines, NARROW)
    for ring in (
        *(ring for each in view.dimensions for ring in each.arrows),
        *(ring for note in view.notes for ring in note.ends),
    ):
        yield Fill((ring,), DARK)
    for text in view.texts():
        yield text.lettering()


def patterned(
    line: Sequence[tuple[float, float]],
    pattern: Sequence[float],
    width: float,
    texts: Sequence[Rect] = (),
) -> Iterator[Mark]:
    """A line of dashes and dots, as the pieces that are drawn of it."""
    points = np.array(line, dtype=np.float64)
    steps = np.linalg.norm(np.diff(points, axis=0), axis=1)
    along = np.concatenate([[0.0], np.cumsum(steps)])
    pieces: list[Line] = []
    at, turn = 0.0, 0
    while at < along[-1]:
        end = min(at + pattern[turn % len(pattern)], float(along[-1]))
        if turn % 2 == 0:
            inner = along[(along > at) & (along < end)]
            stops = np.concatenate([[at], inner, [end]])
            xs, ys = (np.interp(stops, along, points[:, axis]) for axis in (0, 1))
            ends = list(zip(xs.tolist(), ys.tolist(), strict=True))
            pieces += pairwise(ends)
        at, turn = end, turn + 1
    yield from _stroke(broken(pieces, texts), width)


def _on_paper(view: DraftedView, lines: Iterable[Line], texts: Sequence[Rect]) -> list[Line]:
    return broken([view.line(line) for line in lines], texts)


def _stroke(
    lines: Iterable[Line], width: float, dashes: tuple[float, float] | None = None
) -> Iterator[Mark]:
    lines = tuple(lines)
    if lines:
        yield Stroke(lines, width, dashes=dashes)


def _as_lines(ends: Array) -> list[Line]:
    return [((ax, ay), (bx, by)) for (ax, ay), (bx, by) in ends.tolist()]


def _block_marks(sheet: Sheet) -> Iterator[Mark]:
    left, top, right, bottom = sheet.frame
    frame = ((left, top), (right, top), (right, bottom), (left, bottom), (left, top))
    yield Stroke((frame, *sheet.block.wide), WIDE)
    yield Stroke(sheet.block.narrow, NARROW)
    yield Stroke(sheet.block.symbol, 0.35)
    yield Stroke(sheet.block.axes, FINE, dashes=(2.0, 0.6))
    for text in sheet.block.texts:
        yield text.lettering()
