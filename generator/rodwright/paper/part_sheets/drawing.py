"""The drawings of a part: each side that is worked, with running dimensions from the datum.

Superimposed running dimensions (ISO 129-1, from memory): one line with its origin at the datum, an
arrow at each place and the figure beside it, so that nothing is stepped off.  Above a view stand
the numbers of its workings.  Labels are spread so that none overlaps another.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from rodwright.lengths import LengthUnit
from rodwright.paper.part_sheets.entries import Group
from rodwright.paper.part_sheets.labels import SIZE, Label, dimensions, numbers
from rodwright.paper.part_sheets.laying import Laying
from rodwright.paper.part_sheets.on_paper import FAN, OUT, lay
from rodwright.paper.part_sheets.patches import Patch
from rodwright.paper.part_sheets.seen import Facing
from rodwright.paper.part_sheets.sheets import Laid
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Drawing
from rodwright.unit import Bevel, Easing, Mitre, Surface
from rodwright.unit.surfaces import HIGH, LOW

SCALES = {
    "mm": (1, 2, 5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 100, 200),
    "in": (1, 2, 4, 6, 8, 10, 12, 16, 20, 24, 32, 48, 96),
}
"""What one mm of paper stands for: those of ISO 5455 (from memory) or of inch rules, and some
between, since nothing is measured off a sheet (common practice, no source)."""
LYING: dict[LengthUnit, tuple[float, float]] = {"mm": (297.0, 210.0), "in": (279.4, 215.9)}
"""mm: A4 (ISO 216) and Letter (ASME Y14.1, size A, from memory), lying."""
MARGINS = (32.0, 28.0)
"""mm of a page's width and height that its margins take."""
_MOST_HIGH, _FAIRLY_HIGH = 62.0, 48.0
"""mm of paper: no face is drawn higher, nor lower than the second to save a page."""
_LEAST_HIGH = (9.0, 9.0, 14.0)
"""mm of paper that an end, an edge and a face are high at least: what would be lower is drawn
higher than its scale, and says so."""
_MANY = 12
"""A view with more workings than that has its table on the next page."""
_CROWD = 30
"""In a view with more workings than that lines of figures end at its edge."""
_OVER = 40.0
"""mm of paper by which a row of labels is longer than the view at most."""
_LONG_TEXT, _SHORT_TEXT = 31.0, 22.0
"""mm of paper that the text at a number takes at most."""
_SHORTEST = 60.0
_RIGHT = 16.0
_CAPTION = 5.0
_TITLE, _FACTS, _TYPE, _LEADING = 17.0, 4, 3.0, 4.3
"""Of a page, mm: its title and the space below its sizes (roughly); lines of sizes beside each
other; their type, and from one line to the next."""
_COLUMNS = 0.55, 0.4
"""Part of the page's width that sizes take, and the order of work beside them."""
_LINE = 4.6
"""mm of a line of its table (roughly)."""


@dataclass(frozen=True, slots=True)
class Shown:
    """A side of a part with its workings, and its drawing."""

    surface: Surface
    groups: tuple[Group, ...]
    drawing: Drawing


def drawings(laid: Laid, page: tuple[float, float]) -> tuple[Shown, ...]:
    """The face that is up, then whatever else is worked; ``page`` is as wide and as high as it
    lies, mm."""
    room = page[0] - MARGINS[0], page[1] - MARGINS[1]
    by_surface: dict[Surface, list[Group]] = {Surface.FACE: []}
    for group in laid.groups:
        by_surface.setdefault(_shown_on(laid, group), []).append(group)
    order = (Surface.FACE, Surface.REVERSE, *(s for s in (*LOW, *HIGH) if s.axis != 2))
    return tuple(
        Shown(each, tuple(by_surface[each]), _view(laid, each, tuple(by_surface[each]), room))
        for each in order
        if each in by_surface
    )


def _shown_on(laid: Laid, group: Group) -> Surface:
    """The surface on which a working is drawn."""
    working = group.workings[0]
    if isinstance(working, Patch):
        return working.surface
    side = working.worked_from(laid.piece.blank.size)
    if side is not None:
        return side
    if isinstance(working, Mitre | Bevel | Easing):
        return Surface.FACE
    surface: Surface = getattr(working, "surface", Surface.FACE)
    return Surface.FACE if surface.axis == 2 else surface


def _view(
    laid: Laid, surface: Surface, groups: tuple[Group, ...], page: tuple[float, float]
) -> Drawing:
    datum = laid.datum
    facing = Facing.of(datum, surface)
    below, beside = (dimensions(laid, facing, groups, way) for way in (0, 1))
    longest = _LONG_TEXT if surface.axis == 2 and len(groups) <= _MANY else _SHORT_TEXT
    above = numbers(laid, facing, groups, longest)
    left = 6.0 + OUT + FAN + _longest(beside)
    head = _CAPTION + (_longest(above) + 2.0 + FAN if above else 2.0)
    foot = 2.5 + OUT + FAN + _longest(below)
    room = page[0] - left - _RIGHT
    high = page[1] - _head(laid, page[0]) - head - foot
    if len(groups) <= _MANY:
        high = min(max(high - _LINE * (3 + 1.2 * len(groups)), _FAIRLY_HIGH), _MOST_HIGH)
    scale = _scale(laid, room, high)
    first, second = (datum.size[axis] / scale for axis in facing.across)
    least = _LEAST_HIGH[surface.axis]
    taller = math.ceil(least / second) if second < 0.8 * least else 1
    if len(groups) > _CROWD:
        below, beside = ([replace(each, into=0.0) for each in labels] for labels in (below, beside))
    room = min(room, first + _OVER)
    laying = Laying(laid, facing, groups, scale, taller, left, head, room)
    marks, width, height = lay(laying, below, beside, above)
    name, ref = datum.words.name(surface), laid.sheet.refs[0]
    return Drawing(
        round(max(left + max(first, _SHORTEST) + _RIGHT, width), 3),
        round(max(head + second * taller + foot, height), 3),
        f"{ref}, {name}",
        f"the {name} of {ref} with its workings dimensioned",
        marks,
        "mm",
    )


def _head(laid: Laid, wide: float) -> float:
    """mm of a page that its title, its sizes and the order of work take, roughly."""

    def lines(texts: Sequence[str], share: float) -> int:
        return sum(math.ceil(text_width(each, _TYPE) / (share * wide)) for each in texts)

    sheet = laid.sheet
    told = ["; ".join(sheet.lie), "; ".join(sheet.held_by)]
    facts = _FACTS + lines(told, _COLUMNS[0]) + (1 if sheet.held_by else 0)
    return _TITLE + _LEADING * max(facts, lines(sheet.work, _COLUMNS[1]))


def _longest(labels: Sequence[Label]) -> float:
    return max(text_width(each.text, SIZE) for each in labels)


def _scale(laid: Laid, room: float, high: float) -> int:
    """The largest scale at which a part's face goes into the room; its edges have the same."""
    length, width, _ = laid.datum.size
    scales = SCALES[laid.sheet.unit]
    return next(
        (each for each in scales if length / each <= room and width / each <= high), scales[-1]
    )
