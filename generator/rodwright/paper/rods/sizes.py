"""How large a working is, in the few words that a rod's table has room for."""

from __future__ import annotations

import math
from collections.abc import Iterator

from rodwright.lengths import LengthUnit, format_length, ware_size
from rodwright.unit import Part, Working


def size_of(working: Working, part: Part, unit: LengthUnit) -> str:
    """``18 wide, 6 deep``, ``5 dia., 10 deep``: lengths in ``unit``."""
    return ", ".join(_told(working, part, unit))


def _told(working: Working, part: Part, unit: LengthUnit) -> Iterator[str]:
    figures = working.figures(part.blank.size)
    if figures.drill is not None:
        yield f"{ware_size(figures.drill, unit)} dia."
    elif figures.across:
        sides = " x ".join(format_length(each, unit) for each in figures.across)
        yield f"{sides} wide" if len(figures.across) == 1 else sides
    if figures.depth is not None:
        through = figures.depth == math.inf
        yield "right through" if through else f"{format_length(figures.depth, unit)} deep"
