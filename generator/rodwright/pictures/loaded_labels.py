"""Figures beside each level of a loaded unit, in the clear space over it; mm of paper."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

from rodwright.amounts import format_weight
from rodwright.geometry import TOUCH, Box
from rodwright.lengths import LengthUnit, format_length, told_apart
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Lettering, Mark, Point
from rodwright.pictures.paper import Map
from rodwright.pictures.sagged import is_shown, slices
from rodwright.strength.sag_lines import SagLine
from rodwright.unit import Role, Unit

SIZES = (3.6, 3.2, 2.8, 2.4, 2.0, 1.7)
"""Sizes of type, the largest at which all labels fit being taken."""
ARROW = 3.2
"""Height of a load's arrows."""
_LEADING = 1.25
_AWAY = 1.0
"""Clear of lines on every side."""
_STANDS_ON = 2.0
"""What begins this near (mm of the unit) over a level stands on it."""
_TOO_FAR = "too far"


@dataclass(frozen=True, slots=True)
class Label:
    """Lines of text over a level; ``at`` is the middle of the lowest one's baseline."""

    ref: str
    texts: tuple[str, ...]
    at: Point
    size: float

    def marks(self) -> Iterator[Mark]:
        """The text, its last line at the bottom."""
        x, y = self.at
        for number, text in enumerate(reversed(self.texts)):
            yield Lettering((x, y - number * _LEADING * self.size), text, self.size)


@dataclass(frozen=True, slots=True)
class _Space:
    """A clear rectangle over a level and its arrows, on paper."""

    left: float
    right: float
    top: float
    foot: float

    def takes(self, texts: Sequence[str], size: float) -> bool:
        """Whether some lines of text find room."""
        wide = max(text_width(text, size) for text in texts)
        tall = size * (1 + _LEADING * (len(texts) - 1))
        return (
            wide <= self.right - self.left - 2 * _AWAY and tall <= self.foot - self.top - 2 * _AWAY
        )


def labels_of(
    unit: Unit, lines: Sequence[SagLine], to_paper: Map, times: float
) -> tuple[tuple[Label, ...], tuple[str, ...]]:
    """A label for each level, and what is to be told of those that find no room over it."""
    told = [line for line in lines if _is_told(unit, line)]
    boxes = tuple(_boxes(unit, lines, times))
    spaces = {line.ref: tuple(_spaces(line, boxes, to_paper)) for line in told}
    tried = []
    for size in SIZES:
        tried.append([_placed(unit, line, spaces[line.ref], size) for line in told])
        if all(tried[-1]):
            break
    placed = min(tried, key=lambda labels: labels.count(None))
    left_out = [line for line, label in zip(told, placed, strict=True) if label is None]
    return tuple(filter(None, placed)), tuple(": ".join(_wordings(unit, x)[0]) for x in left_out)


def _is_told(unit: Unit, line: SagLine) -> bool:
    """Rails that carry nothing of their own are left out while they hold."""
    rail = unit.part(line.ref).role is Role.CARCASS_RAIL
    return not (rail and line.holds and not line.mass)


def _wordings(unit: Unit, line: SagLine) -> tuple[tuple[str, ...], ...]:
    """What is told of a level, from the fullest wording to the shortest."""
    weight = format_weight(line.mass, unit.display_unit, 0) + "*" * is_assumed(line)
    said = ", ".join(dict.fromkeys(load.said for load in line.loads if load.mass > 0))
    loaded = f"{line.ref}: {weight}" if line.mass else f"{line.ref}"
    fuller = loaded
    if said and line.mass:
        # A weight that was said isn't said twice.
        fuller = f"{line.ref}: {said}" if said.endswith(weight) else f"{line.ref}: {said}, {weight}"
    if line.sag is None or line.limit is None:
        return (fuller, "sag not known"), (loaded, "sag not known"), (f"{loaded}, sag not known",)
    sag, limit = sag_and_limit(line.sag, line.limit, unit.display_unit)
    bad = "" if line.holds else f": {_TOO_FAR}"
    measure = unit.display_unit
    short = f"{sag} of {limit} {measure}{bad}"
    return (
        (fuller, f"sags {sag} {measure}, limit {limit} {measure}{bad}"),
        (fuller, short),
        (loaded, short),
        (f"{loaded}, {short}",),
        *(((loaded, f"{sag} of {limit} {measure}", _TOO_FAR),) if bad else ()),
    )


def is_assumed(line: SagLine) -> bool:
    """Whether something that lies on a level was assumed."""
    return any(load.assumed and load.mass > 0 for load in line.loads)


def sag_and_limit(sag: float, limit: float, unit: LengthUnit) -> tuple[str, str]:
    """A sag and its limit without their unit; what is shown as nothing is less than the least that
    is shown, and two that differ never read alike."""
    shown, most = told_apart(sag, limit, unit)
    least = {"mm": "0.1", "in": "1/64"}[unit]
    return (shown if shown != format_length(0.0, unit) else f"less than {least}", most)


def _placed(unit: Unit, line: SagLine, spaces: Sequence[_Space], size: float) -> Label | None:
    for texts in _wordings(unit, line):
        for space in spaces:
            if space.takes(texts, size):
                middle = (space.left + space.right) / 2
                return Label(line.ref, texts, (middle, space.foot - _AWAY - 0.2 * size), size)
    return None


def _boxes(unit: Unit, lines: Sequence[SagLine], times: float) -> Iterator[Box]:
    """What stands in the way of text: all that is drawn, levels as deep as they are drawn to sag,
    and what slopes in slices."""
    bent = {ref for line in lines for ref in line.refs}
    for part in unit.parts:
        if is_shown(part) and part.ref not in bent:
            yield from slices(part)
    for line in lines:
        deepest = max(down for _, down in line.line)
        yield line.box.spanning(2, low=line.box.low[2] - deepest * times)


def _spaces(line: SagLine, boxes: Sequence[Box], to_paper: Map) -> Iterator[_Space]:
    """The clear spaces over a level, between what stands on it and as high as what is over it, the
    widest first."""
    (left, _, _), (right, _, top) = line.box.low, line.box.high
    over = [
        (box.low[0], box.high[0], box.low[2])
        for box in boxes
        if box.high[2] > top + TOUCH and box.low[0] < right - TOUCH and box.high[0] > left + TOUCH
    ]
    ends = sorted({left, right, *(x for low, high, _ in over for x in (low, high))})
    ends = [x for x in ends if left <= x <= right]
    foot = to_paper((0.0, top))[1] - (ARROW if line.mass else 0.0)
    found = []
    for start, stop in combinations(ends, 2):
        clear = min(
            (z for low, high, z in over if low < stop - TOUCH and high > start + TOUCH),
            default=math.inf,
        )
        if clear > top + _STANDS_ON:
            up = to_paper((0.0, clear))[1] if clear < math.inf else foot - _OVER
            found.append(_Space(to_paper((start, 0.0))[0], to_paper((stop, 0.0))[0], up, foot))
    yield from sorted(found, key=lambda space: space.left - space.right)


_OVER = 14.0
"""Clear over a level over which nothing is."""
