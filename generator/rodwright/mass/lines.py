"""What a round takes from wood that isn't whole, by the lengths of lines along it.

Over its section the lengths are integrated by Gauss's rule between the lines at which
something else begins or ends: first by the angle at which the round is reached, then straight
across.  Where another round begins or ends the lengths go as a square root, so the places are
crowded towards both ends of each stretch: by ``(3 u - u^3) / 2`` for u from -1 to 1, whose rate is
nought at the ends, which leaves no root.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import cache
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from rodwright.mass.rounds import Intervals, Round, box_pierced
from rodwright.mass.wood import Wood

Array = NDArray[np.float64]
Line = tuple[float, float, float]
"""a, b and c of a line a * first + b * second = c in the plane of a section."""

_HALF = np.array([
    (0.1252334085114689, 0.2491470458134027),
    (0.3678314989981802, 0.2334925365383546),
    (0.5873179542866175, 0.20316742672306573),
    (0.7699026741943047, 0.16007832854334642),
    (0.9041172563704748, 0.10693932599531907),
    (0.9815606342467192, 0.04717533638651141),
])  # fmt: skip
"""Gauss's rule of twelve places from -1 to 1: those above nought, and their shares (numpy's
`leggauss(12)`, whose module takes longer to load than most units to weigh)."""
EVEN = np.concatenate([-_HALF[::-1, 0], _HALF[:, 0]])
SHARES = np.concatenate([_HALF[::-1, 1], _HALF[:, 1]])
_FINE = 96
"""Places where a round that crosses aslant is near: where it begins and ends is no straight line,
so that nothing breaks the rule there, and the sum is only as good as its places are many."""
_LEVEL = 1e-12


def taken(bar: Round, wood: Wood, near: Sequence[Round]) -> Array:
    """Volume and first moments (part frame) that a round takes after the near ones."""
    first, second, area = _points(bar, _break_lines(bar, wood, near), near)
    points = bar.centre + np.outer(first, bar.frame[0]) + np.outer(second, bar.frame[1])
    along = bar.frame[2]
    low, high = box_pierced(points, along, np.zeros(3), wood.size)
    low = np.maximum(low, bar.start)
    if not bar.slope:
        high = np.minimum(high, bar.ends(points))
    some = high > low
    points, area, low, high = points[some], area[some], low[some], high[some]
    length, moment = _left(low, high, list(_gone(points, along, bar, wood, near)))
    firsts = (area * length) @ points + (area @ moment) * along
    return np.array([area @ length, *firsts])


def _gone(
    points: Array, along: Array, bar: Round, wood: Wood, near: Sequence[Round]
) -> Iterator[Intervals]:
    """Where the lines run in what other workings have taken."""
    lows, highs, normals, reaches = wood.near(bar.box)
    for low, high in zip(lows, highs, strict=True):
        yield box_pierced(points, along, low, high)
    for normal, reach in zip(normals, reaches, strict=True):
        rate = float(normal @ along)
        over = points @ normal - reach
        if abs(rate) < _LEVEL:
            yield np.where(over > 0, -math.inf, math.inf), np.full_like(over, math.inf)
        elif rate > 0:
            yield -over / rate, np.full_like(over, math.inf)
        else:
            yield np.full_like(over, -math.inf), -over / rate
    for other in near:
        yield from other.pierced(points, along)


def _left(low: Array, high: Array, gone: list[Intervals]) -> Intervals:
    """Lengths, and first moments along them, of lines less the union of what is gone."""
    length, moment = high - low, (high**2 - low**2) / 2
    if not gone:
        return length, moment
    starts = np.clip(np.array([start for start, _ in gone]), low, high)
    stops = np.maximum(starts, np.clip(np.array([stop for _, stop in gone]), low, high))
    order = np.argsort(starts, axis=0)
    starts, stops = (np.take_along_axis(each, order, axis=0) for each in (starts, stops))
    reached = np.maximum.accumulate(stops, axis=0)
    starts[1:] = np.maximum(starts[1:], reached[:-1])
    stops = np.maximum(starts, stops)
    return (
        length - (stops - starts).sum(axis=0),
        moment - (stops**2 - starts**2).sum(axis=0) / 2,
    )


def _break_lines(bar: Round, wood: Wood, near: Sequence[Round]) -> list[Line]:
    """Lines of the section at which the length of wood along the bar turns or jumps.

    They are the planes along the bar, and where two planes across it meet.  A circle of
    the same direction meets the bar's own on one more.
    """
    lows, highs, normals, reaches = wood.near(bar.box)
    lows = np.concatenate([np.zeros((1, 3)), lows, [each.box.low for each in near] or lows[:0]])
    highs = np.concatenate([[wood.size], highs, [each.box.high for each in near] or highs[:0]])
    planes = [
        (*bar.frame[:, i], place - bar.centre[i])
        for i in range(3)
        for place in sorted({*lows[:, i].tolist(), *highs[:, i].tolist()})
    ]
    for normal, reach in zip(normals, reaches, strict=True):
        planes.append((*(bar.frame @ normal), reach - normal @ bar.centre))
    planes += [(0.0, 0.0, 1.0, end) for end in (bar.start, bar.stop)]
    lines = [(a, b, c) for a, b, along, c in planes if abs(along) < _LEVEL]
    crossing = [plane for plane in planes if abs(plane[2]) >= _LEVEL]
    for (a, b, along, c), (d, e, other, f) in combinations(crossing, 2):
        lines.append((other * a - along * d, other * b - along * e, other * c - along * f))
    for other in _parallel(bar, near):
        x, y = (bar.frame @ (other.centre - bar.centre))[:2].tolist()
        lines.append((2 * x, 2 * y, x**2 + y**2 + bar.radius**2 - other.radius**2))
    reach = bar.radius * (math.sqrt(2) if bar.section == "corner" else 1.0)
    return [
        (a / slant, b / slant, c / slant)
        for a, b, c in lines
        if (slant := math.hypot(a, b)) > _LEVEL and abs(c) < reach * slant
    ]


def _parallel(bar: Round, near: Sequence[Round]) -> list[Round]:
    return [each for each in near if abs(each.frame[2] @ bar.frame[2]) > 1 - _LEVEL]


@cache
def _rule(fine: bool) -> tuple[Array, Array]:
    """Places of the crowded rule from -1 to 1, and their shares."""
    even, shares = EVEN, SHARES
    if fine:
        from numpy.polynomial.legendre import leggauss

        even, shares = leggauss(_FINE)
    return even * (3 - even**2) / 2, shares * 1.5 * (1 - even**2)


def _points(bar: Round, lines: list[Line], near: Sequence[Round]) -> tuple[Array, Array, Array]:
    """Gauss points of the section, first and second, each with its share of the area."""
    whole_turn, parallel = bar.turn, _parallel(bar, near)
    rule = _rule(len(parallel) < len(near))
    places = np.array([-bar.radius * math.cos(turn) for turn in whole_turn])
    breaks = np.concatenate([places, _outer_breaks(bar, lines)])
    turns = np.arccos(np.clip(-breaks / bar.radius, -1.0, 1.0))
    turn, share = _gauss(np.sort(np.clip(turns, *whole_turn))[None, :], rule)
    turn, share = turn[0], share[0]
    first = -bar.radius * np.cos(turn)
    low, high = bar.across(first)
    stretches = [low, high]
    stretches += [(c - a * first) / b for a, b, c in lines if abs(b) > 1e-9]
    for other in parallel:
        x, y = (bar.frame @ (other.centre - bar.centre))[:2]
        half = np.sqrt(np.maximum(other.radius**2 - (first - x) ** 2, 0.0))
        stretches += [y - half, y + half]
    second, width = _gauss(np.sort(np.clip(np.array(stretches), low, high), axis=0).T, rule)
    area = (share * bar.radius * np.sin(turn))[:, None] * width
    first = np.broadcast_to(first[:, None], second.shape)
    some = area > 0
    return first[some], second[some], area[some]


def _outer_breaks(bar: Round, lines: list[Line]) -> Array:
    """Places along the first axis where break lines stand, cross, or meet the round."""
    found: list[float] = []
    if bar.section == "corner":
        lines = [*lines, (0.0, 1.0, -bar.radius)]
    for a, b, c in lines:
        root = bar.radius**2 - c**2
        if root >= 0:
            found += (a * c - b * math.sqrt(root), a * c + b * math.sqrt(root))
        if abs(b) < 1e-9:
            found.append(c / a)
    for (a, b, c), (d, e, f) in combinations(lines, 2):
        turn = a * e - b * d
        if abs(turn) > 1e-9:
            found.append((c * e - b * f) / turn)
    return np.array(sorted(set(found)))


def _gauss(breaks: Array, rule: tuple[Array, Array]) -> tuple[Array, Array]:
    """Places of the crowded rule between neighbouring breaks of each row, and their shares."""
    nodes, weights = rule
    half = np.diff(breaks, axis=1)[:, :, None] / 2
    middle = breaks[:, :-1, None] + half
    rows = len(breaks)
    return (middle + half * nodes).reshape(rows, -1), (half * weights).reshape(rows, -1)
