"""How far a figure is tried: what a slider goes from and to, and by what."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from rodwright.lengths import LengthUnit, parse_length

_UNITS = {
    **dict.fromkeys(("mm", "cm", "m", "ft"), ""),
    **{"inch": "in", "inches": "in", "in": "in", '"': "in", "″": "in", "”": "in", "''": "in"},
    **{"foot": "ft", "feet": "ft", "'": "ft", "′": "ft", "’": "ft"},
}
_MM_PER = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "ft": 304.8}
"""The inch is exactly 25.4 mm (see :mod:`rodwright.lengths`)."""
_STEPS = {
    "mm": (1.0, 0.5, 0.1),
    "cm": (0.1, 0.05, 0.01),
    "m": (0.001,),
    "in": (1 / 16, 1 / 32, 1 / 64),
}
"""What a length may be moved by, the coarsest that it is a multiple of: 1 mm or 1/16 in."""
_OWN = re.compile(r"(?:[^\W\d_]+|[\"'′″’”]+)\s*$")
_NARROW = 100.0
"""mm.  Longer lengths are tried within narrower bounds."""


@dataclass(frozen=True, slots=True)
class Span:
    """A figure's ``number`` in ``unit`` (none for a count), and between what it is tried."""

    unit: str
    number: float | None
    least: float = 0.0
    most: float = 0.0
    step: float = 0.0


def span_of(
    value: float | str, unit: LengthUnit, least: int | None, most: int | None, *, count: bool
) -> Span:
    """The span of a count between ``least`` and ``most``, or of a length or share as written in a
    file in ``unit``; a share, and a length in feet, has no slider."""
    if count:
        now = int(value)
        far = max(2 * now, now + 4)
        return Span("", now, least or 0, far if most is None else min(far, most), 1)
    own: str = unit
    if isinstance(value, str):
        found = _OWN.search(value)
        if found and "share" in found[0]:
            return Span("share", None)
        if found:
            word = found[0].strip().lower()
            own = _UNITS.get(word, unit) or word
    if own == "ft":
        return Span("ft", None)
    return _of_length(parse_length(value, unit) / _MM_PER[own], own)


def _of_length(number: float, unit: str) -> Span:
    number = round(number, 6)
    fits = (each for each in _STEPS[unit] if abs(number / each - round(number / each)) < 1e-6)
    step = next(fits, _STEPS[unit][-1])
    if not number:
        return Span(unit, 0.0, 0.0, 2.0 if unit == "in" else 50 / _MM_PER[unit], step)
    wide = number * _MM_PER[unit] < _NARROW
    low, high = (number / 2, number * 2) if wide else (number * 0.6, number * 1.5)
    grid = 10 ** math.floor(math.log10(number)) / 2
    least = math.floor(low / grid) * grid
    # A slider counts its steps from its least.
    least = max(math.floor(least / step), 1) * step
    most = math.ceil(math.ceil(high / grid) * grid / step) * step
    return Span(unit, number, round(least, 6), round(most, 6), step)
