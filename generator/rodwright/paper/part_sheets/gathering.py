"""Places of equal workings gathered into lines and rows, as they are marked out and drilled."""

from __future__ import annotations

import math
from collections.abc import Sequence

from rodwright.handover.words import Words
from rodwright.paper.part_sheets.figures import Places, Row

LEAST_ROW = 5
"""So many equal holes, as far apart from one to the next, are read more easily as a row."""
_SAME = 0.01
"""mm: steps that differ by no more are equal."""
_STEPPED = 0.1
"""mm by which the last place may be out where a row is told by its pitch."""
_DIGITS = 6
"""Decimals of a millimetre to which places are equal."""

Point = tuple[float, float]
Grid = tuple[tuple[float, ...], tuple[float, ...]]
"""Places along the one axis and along the other: at each pair of them there is one."""


def grids(points: Sequence[Point]) -> tuple[Grid, ...]:
    """Places in lines along whichever axis makes fewer, lines with the same places together."""
    plain = [(round(a, _DIGITS), round(b, _DIGITS)) for a, b in points]
    ways = [_lines(plain, along) for along in (0, 1)]
    along = 0 if len(ways[0]) <= len(ways[1]) else 1
    alike: dict[tuple[float, ...], list[float]] = {}
    for at, places in sorted(ways[along].items()):
        alike.setdefault(tuple(sorted(places)), []).append(at)
    found = [(places, tuple(ats)) for places, ats in alike.items()]
    return tuple(grid if along == 0 else (grid[1], grid[0]) for grid in found)


def _lines(points: Sequence[Point], along: int) -> dict[float, list[float]]:
    lines: dict[float, list[float]] = {}
    for point in points:
        lines.setdefault(point[1 - along], []).append(point[along])
    return lines


def told_places(words: Words, places: Sequence[float]) -> Places:
    """Places (mm, in their order) as they are printed: each, or a row by its first, its pitch and
    its last where stepping off the pitch comes to it."""
    told: list[str | Row] = []
    at = 0
    while at < len(places):
        end = at + 1
        while end < len(places) and math.isclose(
            places[end] - places[end - 1], places[at + 1] - places[at], abs_tol=_SAME
        ):
            end += 1
        row = places[at:end]
        if len(row) >= LEAST_ROW and _steps_true(words, row):
            pitch = words.ware(_pitch(row))
            told.append(Row(words.say(row[0]), pitch, len(row), words.say(row[-1])))
            at = end
        else:
            told.append(words.say(places[at]))
            at += 1
    return tuple(told)


def _pitch(row: Sequence[float]) -> float:
    return (row[-1] - row[0]) / (len(row) - 1)


def _steps_true(words: Words, row: Sequence[float]) -> bool:
    pitch = _pitch(row)
    metric = words.ware(pitch) != words.say(pitch)
    return metric or abs(words.told(pitch) - pitch) * (len(row) - 1) <= _STEPPED
