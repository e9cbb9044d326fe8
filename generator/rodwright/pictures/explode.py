"""How far each part moves in an exploded view.

Parts that touch are pulled apart along one axis: the one in which they reach least into each
other, with a preference for the way either is withdrawn.  Everything else about them stays
aligned, and nothing moves farther than it must: one small linear programme an axis says
so.  When it is done, no two parts' bounding boxes overlap.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.optimize import linprog
from scipy.sparse import coo_array

from rodwright.geometry import TOUCH, Vector
from rodwright.pictures.camera import Array
from rodwright.unit import JointKind, Unit

GAPS = (0.055, 0.20, 0.055)
"""Gap between parts pulled apart along x, y and z, as a share of the unit's longest side.

Along y it is wider: seen from the front, things there cover each other.
"""
LAYER_GAP = 1.5
"""Gap between glued layers, as a multiple of the thinner one's thickness."""
PREFERRED = 12.0
"""Parts go the way they are withdrawn unless it is this much (mm) farther than another way."""
NEAR = 3.0
"""Parts this close (mm) count as touching: an adjustable shelf stands a little off its uprights."""

OUT_OF_LINE, PULLED, OFF_PLACE, SHORT = 1.0, 0.1, 0.02, 10.0
"""What a millimetre costs: between joined parts, and where one is withdrawn along the axis;
from a part's own place; and short of the gap a part is withdrawn by."""


@dataclass(frozen=True, slots=True)
class _Rule:
    """Along its axis, the part ``before`` stays ``least`` mm short of the part ``after``,
    measured in how much they are moved apart."""

    before: int
    after: int
    least: float


def explode(unit: Unit) -> dict[str, Vector]:
    """By how much each part (by ref) is moved, unit frame, mm."""
    boxes = [part.bounds() for part in unit.parts]
    low = np.array([box.low for box in boxes])
    high = np.array([box.high for box in boxes])
    pulls = np.array([part.withdraw for part in unit.parts])
    gaps = np.array(GAPS) * max(unit.size)
    number = {part.ref: i for i, part in enumerate(unit.parts)}
    joined = [(number[joint.first], number[joint.second], joint.kind) for joint in unit.joints]
    layers = {(a, b) for a, b, kind in joined if kind is JointKind.FACE_GLUED}
    wishes = np.abs(pulls) * gaps
    axis_of: dict[tuple[int, int], int] = {}
    rules: tuple[list[_Rule], ...] = ([], [], [])
    for first, second in _meeting(low, high, -NEAR, sides=2):
        axis, depth = _parting(low, high, pulls, first, second)
        gap = float(gaps[axis])
        if (first, second) in layers or (second, first) in layers:
            gap = min(gap, LAYER_GAP * min(unit.parts[i].blank.thickness for i in (first, second)))
            for layer in (first, second):
                wishes[layer] = np.minimum(wishes[layer], gap)
        axis_of[first, second] = axis
        rules[axis].append(_ordered(low + high, first, second, axis, depth + gap))
    touching = sorted({(min(a, b), max(a, b)) for a, b, _ in joined} & axis_of.keys())
    moves = np.zeros_like(low)
    while True:
        for axis in range(3):
            level = [pair for pair in touching if axis_of[pair] != axis]
            moves[:, axis] = _least_moves(
                rules[axis], level, np.sign(pulls[:, axis]) * wishes[:, axis]
            )
        clashes = _meeting(low + moves, high + moves, TOUCH, sides=3)
        for first, second in clashes:
            apart = np.maximum(low[first] - high[second], low[second] - high[first])
            axis = int(np.argmax(apart))
            least = min(0.0, float(gaps[axis] - apart[axis]))
            rules[axis].append(_ordered(low + high, first, second, axis, least))
        if not clashes:
            return {
                part.ref: (float(x), float(y), float(z))
                for part, (x, y, z) in zip(unit.parts, moves, strict=True)
            }


def _meeting(low: Array, high: Array, least: float, sides: int) -> list[tuple[int, int]]:
    """Pairs of boxes that reach more than ``least`` mm into each other along every axis, and
    truly overlap along at least this many of them."""
    pairs: list[tuple[int, int]] = []
    for first in range(len(low) - 1):
        rest = slice(first + 1, None)
        depth = np.minimum(high[first], high[rest]) - np.maximum(low[first], low[rest])
        meets = (depth > least).all(axis=1) & ((depth > TOUCH).sum(axis=1) >= sides)
        pairs += [(first, int(other) + first + 1) for other in np.flatnonzero(meets)]
    return pairs


def _parting(low: Array, high: Array, pulls: Array, first: int, second: int) -> tuple[int, float]:
    """The axis two meeting boxes are pulled apart along, and how deep they reach there."""
    ahead = low[second] + high[second] - low[first] - high[first]
    depth = np.where(ahead > 0, high[first] - low[second], high[second] - low[first])
    depth = np.where(np.abs(ahead) > TOUCH, depth, np.inf)
    withdrawn = (pulls[second] * ahead > TOUCH) | (pulls[first] * ahead < -TOUCH)
    axis = int(np.argmin(np.round(depth - PREFERRED * withdrawn, 6)))
    if not np.isfinite(depth[axis]):
        raise ValueError("two parts have the same bounding box")
    return axis, float(depth[axis])


def _ordered(twice_centre: Array, first: int, second: int, axis: int, least: float) -> _Rule:
    """The order in which boxes stand along an axis never turns, so rules never contradict."""
    if twice_centre[first, axis] > twice_centre[second, axis]:
        first, second = second, first
    return _Rule(first, second, least)


def _least_moves(rules: list[_Rule], level: list[tuple[int, int]], wishes: Array) -> Array:
    """The cheapest moves along one axis that keep its rules.

    Unknowns: each part's move, its size, each level pair's difference, and how much each
    withdrawn part falls short of its wish (a signed move).
    """
    count, pairs = len(wishes), len(level)
    pulled = np.flatnonzero(wishes)
    if not rules and not len(pulled):
        return np.zeros(count)
    size, skew, short = count, 2 * count, 2 * count + pairs
    rows: list[tuple[dict[int, float], float]] = [
        ({rule.before: 1.0, rule.after: -1.0}, -rule.least) for rule in rules
    ]
    for i in range(count):
        rows += [({i: sign, size + i: -1.0}, 0.0) for sign in (1.0, -1.0)]
    for j, (a, b) in enumerate(level):
        rows += [({a: sign, b: -sign, skew + j: -1.0}, 0.0) for sign in (1.0, -1.0)]
    for j, i in enumerate(pulled.tolist()):
        rows.append(({i: -float(np.sign(wishes[i])), short + j: -1.0}, -abs(float(wishes[i]))))
    unknowns = short + len(pulled)
    entries = [(r, c, v) for r, (row, _) in enumerate(rows) for c, v in row.items()]
    row_of, column_of, values = zip(*entries, strict=True)
    cost = np.concatenate(
        [
            np.zeros(count),
            np.full(count, OFF_PLACE),
            np.array([PULLED if wishes[a] or wishes[b] else OUT_OF_LINE for a, b in level]),
            np.full(len(pulled), SHORT),
        ]
    )
    bounds = [(None, None)] * count + [(0.0, None)] * (unknowns - count)
    answer = linprog(
        cost,
        A_ub=coo_array((values, (row_of, column_of)), shape=(len(rows), unknowns)).tocsr(),
        b_ub=[limit for _, limit in rows],
        bounds=bounds,
        method="highs",
    )
    if not answer.success:
        raise RuntimeError(f"no exploded view found: {answer.message}")
    return np.round(np.asarray(answer.x[:count]), 3) + 0.0
