"""The marks of an exploded view's tags."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.pictures.ink import DARK, Fill, Lettering, Mark, Stroke, rounded
from rodwright.pictures.tags import Tag
from rodwright.unit import Part

MANY = 40
"""Units of more parts than this share tags among equal parts in a row."""
LISTED = 3
"""A shared tag lists up to this many refs; of more it names the first and last where their numbers
follow each other, else the first."""
LEADER = 1.2
DOT = 4.0
HIDDEN_DASHES = (7.0, 6.0)


def rows(parts: Sequence[Part]) -> tuple[tuple[str, tuple[int, ...]], ...]:
    """Tags' texts, and which parts (by number) each names, from the left.

    Every part has its own, or in units of many parts, equal parts at one height share one.
    """
    gathered: dict[tuple[object, ...], list[int]] = {}
    for number, part in enumerate(parts):
        alone = number if len(parts) <= MANY else None
        height = round(part.bounds().centre[2])
        key = (alone, part.shape, part.role, part.blank.stock.name, height)
        gathered.setdefault(key, []).append(number)
    found = []
    for row in gathered.values():
        row.sort(key=lambda number: parts[number].bounds().centre[0])
        refs = [parts[number].ref for number in row]
        found.append((_listed(refs), tuple(row)))
    return tuple(found)


def _listed(refs: Sequence[str]) -> str:
    if len(refs) <= LISTED:
        return " ".join(refs)
    numbers = [int("".join(filter(str.isdigit, ref))) for ref in refs]
    if sorted(numbers) == list(range(min(numbers), max(numbers) + 1)):
        return f"{refs[0]} to {refs[-1]}, {len(refs)} off"
    return f"{refs[0]} and {len(refs) - 1} like it"


def tag_marks(tags: Sequence[Tag], size: float) -> tuple[Mark, ...]:
    """Leaders with a dot on the part (dashed to parts that don't show), then the tags."""
    marks: list[Mark] = []
    for hidden, dashes in ((False, None), (True, HIDDEN_DASHES)):
        lines = tuple((tag.anchor.at, tag.port) for tag in tags if tag.anchor.hidden is hidden)
        if lines:
            marks.append(Stroke(lines, LEADER + 2.0, "#ffffff"))
            marks.append(Stroke(lines, LEADER, DARK, dashes))
    for tag in tags:
        x, y = tag.anchor.at
        dot = rounded((x - DOT, y - DOT), (x + DOT, y + DOT), DOT)
        box = rounded(tag.low, tag.high, 0.35 * size)
        middle = ((tag.low[0] + tag.high[0]) / 2, (tag.low[1] + tag.high[1]) / 2 + 0.35 * size)
        marks += [
            Fill((dot,), DARK),
            Fill((box,), "#ffffff"),
            Stroke((box,), LEADER),
            Lettering(middle, tag.anchor.text, size),
        ]
    return tuple(marks)
