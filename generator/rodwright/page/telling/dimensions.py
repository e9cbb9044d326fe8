"""The dimensions of a unit in space: those that a drawing of its front and its depth has, without
what the lists say."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.geometry import Box, Vector
from rodwright.page import document as page
from rodwright.pictures.drafting import chains as drafted
from rodwright.pictures.drafting.views import Dimension, Side
from rodwright.unit import Unit

_STEP = 0.07
"""How far apart dimension lines stand, as a share of the unit's longest side."""
_LEAST = 40.0
"""Shorter ones are boards and gaps, mm: the lists say how thick boards are."""
_TOLD = ("columns", "shelves", "slope", "storeys", "overall")
_WAYS: dict[Side, Vector] = {
    "left": (-1.0, 0.0, 0.0),
    "right": (1.0, 0.0, 0.0),
    "above": (0.0, 0.0, 1.0),
    "below": (0.0, 0.0, -1.0),
    "inside": (0.0, 0.0, 0.0),
}


def dimensions_of(unit: Unit) -> tuple[page.Dimension, ...]:
    """Overall sizes, and what is clear between uprights and between levels, at the unit's front;
    its depth at its right.  Texts are in the unit's measure, without its name."""
    return (*_front(unit), *_depth(unit))


def _front(unit: Unit) -> Iterator[page.Dimension]:
    told = [each for each in drafted.chains(unit, "front") if each.name in _TOLD]
    step, front = _step(unit), unit.envelope.low[1]
    for each in drafted.dimensions_of(told):
        if _length(each) >= _LEAST and not each.running:
            x, y, z = _WAYS[each.side]
            far = step * (each.rank + 1)
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
