"""The dimensions of a unit in space: those that a drawing of its front and its depth has, without
what the lists say."""

from __future__ import annotations

import math
from collections.abc import Iterator, Set

from rodwright.geometry import Box, Vector
from rodwright.page import document as page
from rodwright.page.telling.clear import DEEP, Clear, clear_spaces
from rodwright.pictures.drafting import chains as drafted
from rodwright.pictures.drafting.views import Dimension, Side
from rodwright.unit import Unit

_STEP = 0.07
"""How far apart dimension lines stand, as a share of the unit's longest side."""
_LEAST = 40.0
"""Shorter ones are boards and gaps, mm: the lists say how thick boards are."""
_TOLD = ("slope", "storeys", "overall")
_WAYS: dict[Side, Vector] = {
    "left": (-1.0, 0.0, 0.0),
    "right": (1.0, 0.0, 0.0),
    "above": (0.0, 0.0, 1.0),
    "below": (0.0, 0.0, -1.0),
    "inside": (0.0, 0.0, 0.0),
}


def dimensions_of(unit: Unit) -> tuple[page.Dimension, ...]:
    """Overall sizes as fitted, and what is clear between uprights and between levels, at the
    unit's front; its depth at its right.  Texts are in the unit's measure, without its name."""
    clear = [each for each in clear_spaces(unit) if math.dist(each.start, each.end) >= _LEAST]
    sides = {each.side for each in clear}
    return (*(_clear(unit, each) for each in clear), *_front(unit, sides), *_depth(unit))


def _clear(unit: Unit, each: Clear) -> page.Dimension:
    """A clear space from board to board, told before the front or beside it."""
    (left, front, foot), (x, y, z) = unit.envelope.low, each.start
    aside = {
        "left": (left - _step(unit) - x, 0.0),
        "below": (0.0, foot - _step(unit) - z),
    }.get(each.side, (0.0, 0.0))
    offset = _point(aside[0], front - y if y - front <= DEEP else 0.0, aside[1])
    return page.Dimension(_point(*each.start), _point(*each.end), offset, each.text)


def _front(unit: Unit, taken: Set[Side]) -> Iterator[page.Dimension]:
    """Sizes of the outside, beyond the sides of it that are ``taken`` already."""
    outside = drafted.chains(unit, "front", fitted=True)
    told = [each for each in outside if each.name in _TOLD]
    step, front = _step(unit), unit.envelope.low[1]
    for each in drafted.dimensions_of(told):
        if _length(each) >= _LEAST and not each.running:
            x, y, z = _WAYS[each.side]
            far = step * (each.rank + (2 if each.side in taken else 1))
            yield page.Dimension(
                _point(each.start[0], front, each.start[1]),
                _point(each.end[0], front, each.end[1]),
                _point(x * far, y * far, z * far),
                each.text,
            )


def _depth(unit: Unit) -> Iterator[page.Dimension]:
    box: Box = unit.envelope
    for chain in drafted.chains(unit, "side"):
        for each in chain.dimensions:
            if chain.name == "overall" and each.along == "x":
                start, end = ((box.high[0], y, box.low[2]) for y in (box.low[1], box.high[1]))
                yield page.Dimension(
                    _point(*start), _point(*end), _point(_step(unit), 0.0, 0.0), each.text
                )


def _step(unit: Unit) -> float:
    return _STEP * max(unit.size)


def _length(dimension: Dimension) -> float:
    axis = 1 if dimension.along == "y" else 0
    return abs(dimension.end[axis] - dimension.start[axis])


def _point(x: float, y: float, z: float) -> Vector:
    return (round(x, 3) + 0.0, round(y, 3) + 0.0, round(z, 3) + 0.0)
