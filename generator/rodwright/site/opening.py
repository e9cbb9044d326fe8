"""From readings to the tightest width, height and depth."""

from __future__ import annotations

from math import floor

from rodwright.parts import Opening
from rodwright.problems import KeyPath, Problems
from rodwright.spec.fields import SpecModel
from rodwright.spec.models import OpeningSpec, WidthReadings

_TAPE = 0.5
"""A worked-out width is rounded down to this (mm): no tape reads finer."""


def tightest(spec: OpeningSpec, problems: Problems) -> Opening:
    """The tightest width, height and depth of an opening, in mm.

    Diagonals, where given, show how far the walls lean; the width is then that of the
    widest plumb strip between them, for an opening that stands on a level floor.
    Contradictory readings are noted in ``problems``.
    """
    widths = _readings(spec.width, ("opening", "width"), problems)
    heights = _readings(spec.height, ("opening", "height"), problems)
    depths = _readings(spec.depth, ("opening", "depth"), problems) if spec.depth is not None else []
    width, height = min(widths, default=0.0), min(heights, default=0.0)
    if spec.diagonals is not None and widths and heights:
        width = min(width, _plumb_width(spec, widths, heights, problems))
    return Opening(width, height, min(depths) if depths else None)


def _readings(readings: SpecModel | float, where: KeyPath, problems: Problems) -> list[float]:
    say = problems.length
    if isinstance(readings, float):
        return [readings]
    found = [value for value in dict(readings).values() if value is not None]
    if not found:
        places = ", ".join(f"`{name}`" for name in dict(readings))
        problems.add(where, "no reading is given here", f"Give at least one of {places}.")
    elif max(found) > 1.5 * min(found):
        problems.add(
            where,
            f"readings of {say(min(found))} and {say(max(found))} can't be of one opening",
            "Measure again; is one of them in another unit?",
        )
    return found


def _plumb_width(
    spec: OpeningSpec, widths: list[float], heights: list[float], problems: Problems
) -> float:
    """Widest plumb strip in the quadrilateral that widths and diagonals fix.

    With the bottom edge from (0, 0) to (wb, 0) and the top edge from (a, h) to
    (a + wt, h), Pythagoras gives rising^2 - falling^2 = (wt + wb)(2a + wt - wb).
    """
    say = problems.length
    assert spec.diagonals is not None
    rising, falling = spec.diagonals.rising, spec.diagonals.falling
    bottom, top = widths[0], widths[-1]
    if isinstance(spec.width, WidthReadings):
        bottom, top = spec.width.bottom or bottom, spec.width.top or top
    longest = (max(widths) ** 2 + max(heights) ** 2) ** 0.5
    lean = ((rising**2 - falling**2) / (top + bottom) + bottom - top) / 2
    if max(rising, falling) > 1.1 * longest or min(rising, falling) < 0.9 * longest:
        problems.add(
            ("opening", "diagonals"),
            f"diagonals of {say(rising)} and {say(falling)} don't belong to this width and height "
            f"(about {say(longest)})",
            "Measure both again, corner to corner.",
        )
        return min(widths)
    return floor((min(bottom, lean + top) - max(0.0, lean)) / _TAPE) * _TAPE
