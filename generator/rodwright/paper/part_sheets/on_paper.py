"""A view of a part brought to paper: its lines, its dimensions, its numbers and its marks."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from rodwright.geometry import TOUCH
from rodwright.paper.part_sheets.entries import Group
from rodwright.paper.part_sheets.labels import SIZE, Label
from rodwright.paper.part_sheets.marks import Patch
from rodwright.paper.part_sheets.room import spread
from rodwright.paper.part_sheets.seen import Facing, rings, seen, shape
from rodwright.paper.part_sheets.sheets import Laid
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import DARK, Fill, Lettering, Mark, Stroke
from rodwright.unit import Bevel, Grain, Mitre, Surface
from rodwright.unit.surfaces import HIGH, LOW

Spot = tuple[float, float]
OUT, FAN = 4.0, 5.0
"""mm of paper: from a view to its dimension line, and from there to the figures."""
_CLEAR = 1.5
_APART = 3.3
"""mm from the middle of one label to the next."""
_WIDE, _NARROW, _FINE, _THICK = 0.5, 0.25, 0.13, 0.9
_BAND = 1.8
"""mm of paper: from an edge to the line beside it that marks its edging."""
_ARROW, _BARB = 1.8, 0.35
_DASHES = (2.0, 0.8)
_LOOP = (
    (0.0, 0.0), (0.1, 1.8), (0.5, 3.4), (1.2, 4.6), (2.0, 5.0), (2.5, 4.5), (2.3, 3.7), (1.5, 3.3),
    (0.5, 3.6), (-0.7, 4.4), (-1.8, 5.4),
)  # fmt: skip
"""The face mark, from its tail, mm of paper (as it is pencilled; common practice, no source)."""
_WHITE = "#ffffff"
_BESIDE = 90.0
"""mm of paper that figures beside a view take at most."""
_LEAST_HOLE = 0.9
"""mm of paper: holes are drawn no smaller."""
_CAPTION = 3.2
_RISE = 0.36
"""From the baseline to the middle of figures, as a share of the size."""


@dataclass(frozen=True, slots=True)
class Laying:
    """Where a view is laid down: its upper left corner, and the ``room`` that labels have beside
    each other; what is ``taller`` is drawn so many times higher than its scale."""

    laid: Laid
    facing: Facing
    groups: tuple[Group, ...]
    scale: float
    taller: float
    left: float
    top: float
    room: float

    @property
    def size(self) -> Spot:
        """Of the surface, mm."""
        first, second = self.facing.across
        return self.laid.datum.size[first], self.laid.datum.size[second]

    @property
    def right(self) -> float:
        """Of the view on paper."""
        return self.left + self.size[0] / self.scale

    @property
    def bottom(self) -> float:
        """Of the view on paper."""
        return self.top + self.size[1] / self.scale * self.taller

    def x(self, at: float) -> float:
        """Of the page, of a place along the first axis from its datum."""
        return self.left + (self.size[0] - at if self.facing.turned[0] else at) / self.scale

    def y(self, at: float) -> float:
        """Of the page, of a place along the second axis from its datum."""
        up = self.size[1] - at if self.facing.turned[1] else at
        return self.bottom - up / self.scale * self.taller

    def page(self, spot: Spot) -> Spot:
        """A place of the view on the page."""
        return self.x(spot[0]), self.y(spot[1])


@dataclass(frozen=True, slots=True)
class _Placed:
    """A label, where on the page its place is along its side of the view, and where it stands."""

    label: Label
    place: float
    at: float


def lay(
    laying: Laying, below: Sequence[Label], beside: Sequence[Label], above: Sequence[Label]
) -> tuple[tuple[Mark, ...], float, float]:
    """The marks of a view, and how wide and how high a page they need, mm."""
    tall = (len(_fitted(beside, _BESIDE)) - 1) * _APART
    middle = (laying.top + laying.bottom) / 2
    over = middle - tall / 2 - _CAPTION - 4.0
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
        *_edging(laying, along, up, told),
        *_below(laying, along),
        *_beside(laying, up),
        *_above(laying, told),
        *_captioned(laying),
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
) -> list[_Placed]:
    shown = sorted(labels, key=lambda each: page(each.at))
    places = [page(each.at) for each in shown]
    spots = spread(places, _APART, low, high)
    return [_Placed(*each) for each in zip(shown, places, spots, strict=True)]


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
            cut.append(_circle(x, y, _LEAST_HOLE / 2))
        else:
            shown = taken.intersection(found.outline)
            drawn = covered if isinstance(each, Patch) else cut
            drawn += [tuple(map(laying.page, ring)) for ring in rings(shown)]
    marks: list[Mark] = [Stroke(tuple(lines), _WIDE)]
    if cut:
        marks.append(Stroke(tuple(cut), _NARROW))
    if covered:
        marks.append(Stroke(tuple(covered), _NARROW, dashes=_DASHES))
    return marks


def _circle(x: float, y: float, radius: float) -> tuple[Spot, ...]:
    turns = (2 * math.pi * step / 16 for step in range(17))
    return tuple((x + radius * math.cos(turn), y + radius * math.sin(turn)) for turn in turns)


def _edging(
    laying: Laying, below: Sequence[_Placed], beside: Sequence[_Placed], above: Sequence[_Placed]
) -> list[Mark]:
    """Edges that are edged or lipped: a thick line beside them, and a letter clear of other
    lines."""
    if laying.facing.surface.axis != 2:
        return []
    sheet, name = laying.laid.sheet, laying.laid.datum.words.name
    edged = {each: "E" for each, _, _ in sheet.edged}
    marks: list[Mark] = []
    for surface in (*LOW[:2], *HIGH[:2]):
        lipped = any(name(surface).startswith(each) for each in sheet.lipped)
        letter = edged.get(name(surface), "L" if lipped else "")
        if not letter:
            continue
        upright = surface.axis == 0
        if upright:
            lines = beside if surface is Surface.NEAR_END else []
            out = laying.left - _BAND if surface is Surface.NEAR_END else laying.right + _BAND
            ends = laying.top, laying.bottom
        else:
            top = surface is laying.facing.top
            lines = above if top else below
            out = laying.top - _BAND if top else laying.bottom + _BAND
            ends = laying.left, laying.right
        at = _clearest(ends, [each.place for each in lines])
        line = ((out, ends[0]), (out, ends[1])) if upright else ((ends[0], out), (ends[1], out))
        x, y = (out, at) if upright else (at, out)
        wide, tall = text_width(letter, SIZE) / 2 + 0.3, 1.3
        white = (
            (x - wide, y - tall),
            (x + wide, y - tall),
            (x + wide, y + tall),
            (x - wide, y + tall),
        )
        marks += [
            Stroke((line,), _THICK),
            Fill((white,), _WHITE),
            Lettering((x, y + _RISE * SIZE), letter, SIZE),
        ]
    return marks


def _clearest(ends: Spot, lines: Sequence[float]) -> float:
    """The place between two ends that is farthest from lines, near the middle if it can be."""
    places = [ends[0] + (ends[1] - ends[0]) * share / 20 for share in range(2, 19)]
    return max(
        places,
        key=lambda at: (
            min([3.0, *(abs(at - each) for each in lines)]),
            -abs(at - sum(ends) / 2),
        ),
    )


def _arrow(tip: Spot, way: Spot, room: float = _ARROW) -> Fill:
    """An arrowhead, shorter where there is no room for a whole one."""
    (x, y), (dx, dy) = tip, way
    long = min(_ARROW, room)
    wide = _BARB * long / _ARROW
    back = (x - dx * long, y - dy * long)
    side = (-dy * wide, dx * wide)
    ring = (tip, (back[0] + side[0], back[1] + side[1]), (back[0] - side[0], back[1] - side[1]))
    return Fill((ring,), DARK)


def _gap(placed: Sequence[_Placed], one: _Placed) -> float:
    """How far a place is on paper from the one before it on its way from the datum."""
    before = (each for each in placed if each.label.at < one.label.at - TOUCH)
    return abs(one.place - max(before, key=lambda each: each.label.at).place)


def _below(laying: Laying, placed: Sequence[_Placed]) -> list[Mark]:
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
        at = (each.at + _RISE * SIZE, foot + 0.6)
        marks.append(Lettering(at, each.label.text, SIZE, "end", upwards=True))
        if each.label.at > TOUCH:
            way = -1.0 if laying.facing.turned[0] else 1.0
            marks.append(_arrow((each.place, line), (way, 0.0), _gap(placed, each)))
    origin = laying.x(0.0)
    return [
        *marks,
        Stroke(tuple(fine), _FINE),
        Stroke((((laying.left, line), (laying.right, line)),), _NARROW),
        Stroke((_circle(origin, line, 0.8),), _NARROW),
    ]


def _beside(laying: Laying, placed: Sequence[_Placed]) -> list[Mark]:
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
        at = (foot - 0.6, each.at + _RISE * SIZE)
        marks.append(Lettering(at, each.label.text, SIZE, "end"))
        if each.label.at > TOUCH:
            way = 1.0 if laying.facing.turned[1] else -1.0
            marks.append(_arrow((line, each.place), (0.0, way), _gap(placed, each)))
    origin = laying.y(0.0)
    return [
        *marks,
        Stroke(tuple(fine), _FINE),
        Stroke((((line, laying.top), (line, laying.bottom)),), _NARROW),
        Stroke((_circle(line, origin, 0.8),), _NARROW),
    ]


def _above(laying: Laying, placed: Sequence[_Placed]) -> list[Mark]:
    """The numbers of the workings, each with a line that ends in a dot on it."""
    if not placed:
        return []
    foot = laying.top - FAN
    fine: list[tuple[Spot, ...]] = []
    marks: list[Mark] = []
    for each in placed:
        y = laying.y(each.label.into)
        fine.append(((each.place, y), (each.place, laying.top - 1.0), (each.at, foot)))
        at = (each.at + _RISE * SIZE, foot - 0.6)
        marks.append(Lettering(at, each.label.text, SIZE, "start", upwards=True))
        marks.append(Fill((_circle(each.place, y, 0.45),), DARK))
    return [*marks, Stroke(tuple(fine), _FINE)]


def _captioned(laying: Laying) -> list[Mark]:
    """What is looked at, its scale, which way the grain runs, and the mark of the datum edge."""
    sheet, facing = laying.laid.sheet, laying.facing
    name = laying.laid.datum.words.name(facing.surface)
    said = [
        name[:1].upper() + name[1:],
        *(["face side"] if name == sheet.lies.face else []),
        *(["shows"] if name in sheet.shows else []),
        f"scale 1:{laying.scale:g}",
    ]
    if laying.taller > 1:
        said.append(f"not to scale across: drawn {laying.taller:g} times as high")
    text = ", ".join(said)
    marks: list[Mark] = [Lettering((0.0, _CAPTION), text, _CAPTION, "start")]
    if facing.surface.axis == 2:
        marks += [*_grain(laying, text_width(text, _CAPTION) + 6.0), *_signs(laying)]
    return marks


def _grain(laying: Laying, left: float) -> list[Mark]:
    """An arrow both ways along the grain."""
    grain = laying.laid.piece.blank.grain
    if grain is Grain.NONE:
        return []
    x, y = left + text_width("grain", _CAPTION) + 2.0, 2.2
    if grain is Grain.LENGTHWISE:
        ends, way = ((x, y), (x + 12.0, y)), (1.0, 0.0)
    else:
        ends, way = ((x + 2.0, y - 2.0), (x + 2.0, y + 2.4)), (0.0, 1.0)
    return [
        Lettering((left, _CAPTION), "grain", _CAPTION, "start"),
        Stroke((ends,), _NARROW),
        _arrow(ends[1], way),
        _arrow(ends[0], (-way[0], -way[1])),
    ]


def _signs(laying: Laying) -> list[Mark]:
    """The trade's marks: of the face edge, a V whose point is at it; of the face side, a loop whose
    tail runs out at the face edge."""
    y, x = laying.y(0.0), laying.right + 5.0
    inward = -1.0 if y > (laying.top + laying.bottom) / 2 else 1.0
    arms = ((x - 1.6, y + 3.2 * inward), (x, y), (x + 1.6, y + 3.2 * inward))
    lines: list[tuple[Spot, ...]] = [arms]
    name = laying.laid.datum.words.name
    if name(laying.facing.surface) == laying.laid.sheet.lies.face:
        lines.append(tuple((x + 5.5 + over, y + inward * up) for over, up in _LOOP))
    return [Stroke(tuple(lines), 0.4), Stroke((((x - 3.0, y), (x + 8.5, y)),), _FINE)]
