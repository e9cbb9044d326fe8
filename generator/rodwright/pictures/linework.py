"""Straight lines on a sheet: the same stretch is never drawn twice."""

from __future__ import annotations

import math
from collections.abc import Iterable

Line = tuple[tuple[float, float], tuple[float, float]]
Span = tuple[float, float]

_SAME = 0.02
"""Lines closer than this (mm) lie on one another."""


def tidy(
    visible: Iterable[Line], hidden: Iterable[Line], least: float
) -> tuple[list[Line], list[Line]]:
    """Visible and hidden lines with duplicates merged, and hidden ones left out where a
    visible one lies over them; stretches shorter than ``least`` mm are left out.
    """
    solid, dashed = _on_carriers(visible), _on_carriers(hidden)
    shown: list[Line] = []
    covered: list[Line] = []
    for carrier in sorted(solid.keys() | dashed.keys()):
        over = merged(solid.get(carrier, []), _SAME)
        shown += [_line(carrier, span) for span in over if span[1] - span[0] > least]
        for low, high in merged(dashed.get(carrier, []), _SAME):
            free = _without((low, high), over)
            covered += [_line(carrier, span) for span in free if span[1] - span[0] > least]
    return shown, covered


Carrier = tuple[int, int]
_TURNS = 1_000_000
"""Directions are told apart to a millionth of half a turn."""


def _on_carriers(lines: Iterable[Line]) -> dict[Carrier, list[Span]]:
    """Stretches gathered by the endless line they lie on: its direction and its distance from
    the origin, both rounded."""
    gathered: dict[Carrier, list[Span]] = {}
    for (ax, ay), (bx, by) in lines:
        turn = round(math.atan2(by - ay, bx - ax) / math.pi * _TURNS) % _TURNS
        angle = turn / _TURNS * math.pi
        along_x, along_y = math.cos(angle), math.sin(angle)
        away = round(((ax + bx) * -along_y + (ay + by) * along_x) / 2 / _SAME)
        ends = sorted((ax * along_x + ay * along_y, bx * along_x + by * along_y))
        gathered.setdefault((turn, away), []).append((ends[0], ends[1]))
    return gathered


def merged(spans: list[tuple[float, float]], least: float) -> list[tuple[float, float]]:
    """Spans in order, those that overlap or lie within ``least`` of each other made one."""
    joined: list[tuple[float, float]] = []
    for low, high in sorted(spans):
        if joined and low <= joined[-1][1] + least:
            joined[-1] = (joined[-1][0], max(joined[-1][1], high))
        else:
            joined.append((low, high))
    return joined


def _line(carrier: Carrier, span: Span) -> Line:
    angle, away = carrier[0] / _TURNS * math.pi, carrier[1] * _SAME
    along_x, along_y = math.cos(angle), math.sin(angle)
    (ax, ay), (bx, by) = (
        (along * along_x - away * along_y, along * along_y + away * along_x) for along in span
    )
    return (ax, ay), (bx, by)


def _without(span: Span, taken: list[Span]) -> list[Span]:
    left: list[Span] = []
    low, high = span
    for start, stop in taken:
        if stop <= low or start >= high:
            continue
        if start > low:
            left.append((low, start))
        low = stop
    if low < high:
        left.append((low, high))
    return left
