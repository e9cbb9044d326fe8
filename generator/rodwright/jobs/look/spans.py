"""How far a figure is tried, by what, and how it is written."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace

from rodwright.lengths import LengthUnit, parse_length
from rodwright.problems import Problem, ProblemsError, printable
from rodwright.wishes.reading.documents import Data

_UNITS = {
    **dict.fromkeys(("mm", "cm", "m"), ""),
    **{"inch": "in", "inches": "in", "in": "in", '"': "in", "″": "in", "”": "in", "''": "in"},
}
_MM_PER = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4}
"""The inch is exactly 25.4 mm (see :mod:`rodwright.lengths`)."""
_STEPS = {
    "mm": (1.0, 0.5, 0.1),
    "cm": (0.1, 0.05, 0.01),
    "m": (0.001,),
    "in": (1 / 16, 1 / 32, 1 / 64),
}
"""What a length may be moved by, the coarsest that it is a multiple of: 1 mm or 1/16 in."""
_FOOT = 12.0
_FEET_STEPS = (1.0, *_STEPS["in"])
"""Inches: what stands in feet and whole inches is tried in these."""
_SHARE_STEPS = (0.25, 0.05, 0.01, 0.001)
_MOST_SHARES = 4.0
"""Shares are tried up to so many, or twice as many as there are."""
_MANY_SHARES = 10.0
"""Whoever writes so many means parts of a hundred, say, and tries whole ones."""
_FEET = re.compile(
    r"[^a-z'′’]*?(?P<foot>\s*(?:ft|foot|feet|['′’](?!['′’])))"
    r"(?:(?P<between>\s*-?\s*)[0-9¼-¾⅐-⅞].*?(?P<inch>\s*(?:inches|inch|in|[\"″”]|''|′′|’’)))?",
    re.IGNORECASE,
)
_INCH_MARKS = {"'": '"', "′": "″", "’": "”"}
_OWN = re.compile(r"(?:[^\W\d_]+|[\"'′″’”]+)\s*$")
_BARE = re.compile(r"[\s0-9./⁄¼-¾⅐-⅞-]+")
_SUFFIX = re.compile(r"\s*(?:[^\W\d]+|[\"'′″’”]+)\s*$")
"""The unit that a length was written with, with the space before it."""
_NARROW = 100.0
"""mm.  Longer lengths are tried within narrower bounds."""


@dataclass(frozen=True, slots=True)
class Span:
    """A figure's ``number`` in ``unit`` (none for a count), and between what it is tried.

    The number of a length in ``ft`` is in inches; ``feet`` is what stands behind its feet, between
    feet and inches and behind these, or would.
    """

    unit: str
    number: float | None
    least: float = 0.0
    most: float = 0.0
    step: float = 0.0
    feet: tuple[str, str, str] | None = None


def span_of(
    value: float | str,
    unit: LengthUnit,
    least: int | None,
    most: int | None,
    *,
    count: bool,
    alone: bool = False,
) -> Span:
    """The span of a count between ``least`` and ``most``, or of a length or share as written in a
    file in ``unit``; a share that is ``alone`` takes all that is left, so that it has no slider."""
    if count:
        now = int(value)
        far = max(2 * now, now + 4)
        return Span("", now, least or 0, far if most is None else min(far, most), 1)
    own: str = unit
    if isinstance(value, str):
        found = _OWN.search(value)
        if found and "share" in found[0]:
            return Span("share", None) if alone else _of_shares(float(value[: found.start()]))
        if feet := feet_in(value):
            number = parse_length(value, unit) / _MM_PER["in"]
            steps = _FEET_STEPS if number >= _FOOT else _STEPS["in"]
            return replace(_of_length(number, "in", steps), unit="ft", feet=feet)
        if found:
            word = found[0].strip().lower()
            own = _UNITS.get(word, unit) or word
    return _of_length(parse_length(value, unit) / _MM_PER[own], own, _STEPS[own])


def feet_in(value: str) -> tuple[str, str, str] | None:
    """What a length in feet has behind its feet, between feet and inches, and behind these; or, in
    feet alone, what would match.  None where it isn't in feet."""
    found = _FEET.fullmatch(value.strip())
    if found is None:
        return None
    foot = found["foot"]
    if found["inch"] is not None:
        return foot, found["between"], found["inch"]
    mark = foot.strip()
    inch = _INCH_MARKS.get(mark)
    return foot, " ", foot.removesuffix(mark) + (inch or "in")


def _of_shares(number: float) -> Span:
    steps = (1.0, *_SHARE_STEPS) if number >= _MANY_SHARES else _SHARE_STEPS
    step = next((each for each in steps if _is_multiple(number, each)), steps[-1])
    least = step
    if number >= _MANY_SHARES:
        least = max(math.floor(number / 4 / step), 1) * step
    most = math.ceil(max(_MOST_SHARES, 2 * number) / step) * step
    return Span("share", number, round(least, 6), round(most, 6), step)


def _is_multiple(number: float, step: float) -> bool:
    return abs(number / step - round(number / step)) < 1e-6


def _of_length(number: float, unit: str, steps: tuple[float, ...]) -> Span:
    number = round(number, 6)
    step = next((each for each in steps if _is_multiple(number, each)), steps[-1])
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


def spelt(value: str, standing: Data) -> str:
    """A figure as it is to be written: a bare one gets the unit, or the share, of what stands
    there.

    Raises:
        ProblemsError: feet and inches stand there, and it is bare.
    """
    figure = value.strip()
    if not isinstance(standing, str) or not _BARE.fullmatch(figure):
        return figure
    suffix = _SUFFIX.search(standing)
    if suffix is None:
        return figure
    feet = feet_in(standing)
    if feet is not None and standing.rstrip().endswith(feet[2]):
        raise ProblemsError(
            [
                Problem(
                    f"`{printable(figure)}` may be feet or inches here",
                    f"Write `{printable(figure + feet[0])}` or `{printable(figure + feet[2])}`.",
                )
            ]
        )
    if suffix[0].strip() in ("share", "shares"):
        return f"{figure} share" if figure == "1" else f"{figure} shares"
    return figure + suffix[0].rstrip()
