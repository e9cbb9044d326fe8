"""Heights under a sloping ceiling: those of the opening are given as if there were none."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.problems import KeyPath, Problems
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.opening import HeightReadings, OpeningSpec

_OF_ONE_TOP = 0.9
"""A height less than this share of the greatest isn't of the same level top: a top that is farther
out of level is refused as too steep."""


def heights_without_slope(spec: UnitSpec, problems: Problems) -> bool:
    """Whether the opening's heights may be as if there were no slope: noted, where one was taken
    under the slope."""
    if spec.slope is None or spec.opening is None:
        return True
    read = list(_heights(spec.opening))
    greatest = max((value for _, value in read), default=0.0)
    low = [(where, value) for where, value in read if value < _OF_ONE_TOP * greatest]
    say = problems.length
    for where, value in low:
        problems.add(
            where,
            f"{say(value)} is a height under the slope; with `slope` in the file, heights are "
            f"given as if there were no slope, and the low side is `slope.low` "
            f"(here {say(spec.slope.low)})",
            f"Leave this one out, or write what it would be without the slope, say "
            f"{say(greatest)}.",
        )
    return not low


def _heights(opening: OpeningSpec) -> Iterator[tuple[KeyPath, float]]:
    """The heights read, in front and at the rear, with their places."""
    planes: list[tuple[KeyPath, HeightReadings | float | None]] = [
        (("opening", "height"), opening.height)
    ]
    if opening.back is not None:
        planes.append((("opening", "back", "height"), opening.back.height))
    for where, height in planes:
        if isinstance(height, HeightReadings):
            for name in ("left", "middle", "right"):
                value = getattr(height, name)
                if value is not None:
                    yield (*where, name), value
            for number, each in enumerate(height.others):
                yield (*where, "others", number, "height"), each.height
        elif height is not None:
            yield where, height
