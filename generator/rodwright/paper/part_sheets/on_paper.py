"""A view of a part brought to paper: its lines, its dimensions, its numbers and its marks."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from rodwright.geometry import TOUCH
from rodwright.paper.part_sheets.labels import SIZE, Label
from rodwright.paper.part_sheets.laying import (
    FINE,
    NARROW,
    RISE,
    WIDE,
    Laying,
    Placed,
    Spot,
    arrow,
    circle,
)
from rodwright.paper.part_sheets.patches import Patch
from rodwright.paper.part_sheets.room import spread
from rodwright.paper.part_sheets.seen import rings, seen, shape
from rodwright.paper.part_sheets.signs import CAPTION, captioned, edging
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import DARK, Fill, Lettering, Mark, Stroke
from rodwright.unit import Bevel, Mitre

OUT, FAN = 4.0, 5.0
"""mm of paper: from a view to its dimension line, and from there to the figures."""
_CLEAR = 1.5
_APART = 3.3
"""mm from the middle of one label to the next."""
_DASHES = (2.0, 0.8)
_BESIDE = 90.0
"""mm of paper that figures beside a view take at most."""
_LEAST_HOLE = 0.9
"""mm of paper: holes are drawn no smaller."""


def lay(
    laying: Laying, below: Sequence[Label], beside: Sequence[Label], above: Sequence[Label]
) -> tuple[tuple[Mark, ...], float, float]:
    """The marks of a view, and how wide and how high a page they need, mm."""
    drawn = len(below) + len(beside) + len(above)
    tall = (len(_fitted(beside, _BESIDE)) - 1) * _APART
    middle = (laying.top + laying.bottom) / 2
    over = middle - tall / 2 - CAPTION - 4.0
    if over < 0:
        laying = replace(laying, top=laying.top - over)
        middle -= over
    half = max((laying.bottom - laying.top) / 2 + 2.0, tall / 2)
    ends = laying.left - 2.0, laying.left + laying.room
    along = _placed(_fitted(below, laying.room), laying.x, *ends)
    up = _placed(_fitted(beside, _BESIDE), laying.y, middle - half, middle + half)
    told = _placed(_fitted(above, laying.room), laying.x, *ends)
    marks = (
        *_view(laying),
        *edging(laying, along, up, told),
        *_below(laying, along),
        *_beside(laying, up),
        *_above(laying, told),
        *captioned(laying, whole=len(along) + len(up) + len(told) == drawn),
    )
    right, low = _reach(marks)
    return marks, right + 1.0, low + 1.0


def _reach(marks: Sequence[Mark]) -> Spot:
    """How far marks reach to the right and down."""
    far = [
        spot for mark in marks if isinstance(mark, Stroke) for line in mark.lines for spot in line
    ]
    for mark in marks:
        if isinstance(mark, Lettering):
            (x, y), long = mark.at, text_width(mark.text, mark.size)
            if mark.upwards:
                far.append((x, y + (long if mark.anchor == "end" else 0.0)))
            else:
                far.append((x + (long if mark.anchor == "start" else 0.0), y))
    return max(x for x, _ in far), max(y for _, y in far)


def _fitted(labels: Sequence[Label], room: float) -> list[Label]:
    """As many labels as there is room for, the first and the last among them."""
    most = max(2, int(room / _APART) + 1)
    if len(labels) <= most:
        return list(labels)
    step = (len(labels) - 1) / (most - 1)
    return [labels[round(number * step)] for number in range(most)]


def _placed(
    labels: Sequence[Label], page: Callable[[float], float], low: float, high: float
) -> list[Placed]:
    shown = sorted(labels, key=lambda each: page(each.at))
    places = [page(each.at) for each in shown]
    spots = spread(places, _APART, low, high)
    return [Placed(*each) for each in zip(shown, places, spots, strict=True)]


def _view(laying: Laying) -> list[Mark]:
    """Its outline, and what is cut into it."""
    datum, workings = laying.laid.datum, laying.laid.piece.workings
    found = seen(datum, laying.facing, workings)
    lines = [tuple(map(laying.page, ring)) for ring in rings(found.outline)]
    lines += [tuple(map(laying.page, line)) for line in found.lines]
    cut: list[tuple[Spot, ...]] = []
    covered = [tuple(map(laying.page, line)) for line in found.covered]
    for each in (working for group in laying.groups for working in group.workings):
        if isinstance(each, Mitre | Bevel):
            continue
        taken = shape(datum, laying.facing, each)
        low, high = taken.bounds[:2], taken.bounds[2:]
        if max(high[0] - low[0], high[1] - low[1]) / laying.scale < _LEAST_HOLE:
            x, y = laying.page(((low[0] + high[0]) / 2, (low[1] + high[1]) / 2))
            cut.append(circle(x, y, _LEAST_HOLE / 2))
        else:
            shown = taken.intersection(found.outline)
            drawn = covered if isinstance(each, Patch) else cut
            drawn += [tuple(map(laying.page, ring)) for ring in rings(shown)]
    marks: list[Mark] = [Stroke(tuple(lines), WIDE)]
    if cut:
        marks.append(Stroke(tuple(cut), NARROW))
    if covered:
        marks.append(Stroke(tuple(covered), NARROW, dashes=_DASHES))
    return marks


def _gap(placed: Sequence[Placed], one: Placed) -> float:
    """How far a place is on paper from the one before it on its way from the datum."""
    before = (each for each in placed if each.label.at < one.label.at - TOUCH)
    return abs(one.place - max(before, key=lambda each: each.label.at).place)


def _below(laying: Laying, placed: Sequence[Placed]) -> list[Mark]:
    """The running dimensions along the view; their figures are read from the right."""
    line = laying.bottom + _CLEAR + OUT
    foot = line + FAN
    fine: list[tuple[Spot, ...]] = []
    marks: list[Mark] = []
    for each in placed:
        inner = laying.bottom + 0.8
        if each.label.into and not laying.facing.turned[1]:
            inner = laying.y(each.label.into)
        fine.append(((each.place, inner), (each.place, line), (each.at, foot)))
        at = (each.at + RISE * SIZE, foot + 0.6)
        marks.append(Lettering(at, each.label.text, SIZE, "end", upwards=True))
        if each.label.at > TOUCH:
            way = -1.0 if laying.facing.turned[0] else 1.0
            marks.append(arrow((each.place, line), (way, 0.0), _gap(placed, each)))
    origin = laying.x(0.0)
    return [
        *marks,
        Stroke(tuple(fine), FINE),
        Stroke((((laying.left, line), (laying.right, line)),), NARROW),
        Stroke((circle(origin, line, 0.8),), NARROW),
    ]


def _beside(laying: Laying, placed: Sequence[Placed]) -> list[Mark]:
    """The running dimensions up the view; their figures are read level."""
    line = laying.left - _CLEAR - OUT
    foot = line - FAN
    fine: list[tuple[Spot, ...]] = []
    marks: list[Mark] = []
    for each in placed:
        inner = laying.left - 0.8
        if each.label.into and not laying.facing.turned[0]:
            inner = laying.x(each.label.into)
        fine.append(((inner, each.place), (line, each.place), (foot, each.at)))
        at = (foot - 0.6, each.at + RISE * SIZE)
        marks.append(Lettering(at, each.label.text, SIZE, "end"))
        if each.label.at > TOUCH:
            way = 1.0 if laying.facing.turned[1] else -1.0
            marks.append(arrow((line, each.place), (0.0, way), _gap(placed, each)))
    origin = laying.y(0.0)
    return [
        *marks,
        Stroke(tuple(fine), FINE),
        Stroke((((line, laying.top), (line, laying.bottom)),), NARROW),
        Stroke((circle(line, origin, 0.8),), NARROW),
    ]


def _above(laying: Laying, placed: Sequence[Placed]) -> list[Mark]:
    """The numbers of the workings, each with a line that ends in a dot on it."""
    if not placed:
        return []
    foot = laying.top - FAN
    fine: list[tuple[Spot, ...]] = []
    marks: list[Mark] = []
    for each in placed:
        y = laying.y(each.label.into)
        fine.append(((each.place, y), (each.place, laying.top - 1.0), (each.at, foot)))
        at = (each.at + RISE * SIZE, foot - 0.6)
        marks.append(Lettering(at, each.label.text, SIZE, "start", upwards=True))
        marks.append(Fill((circle(each.place, y, 0.45),), DARK))
    return [*marks, Stroke(tuple(fine), FINE)]
