"""Pieces with slanted ends laid head to tail, so that two slants share one cut.

Two neighbours of one width, of which one is turned half round, face each other with parallel
slants, or with slants of which the lesser decides how near they lie.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache
from itertools import pairwise
from math import prod
from typing import NamedTuple

from rodwright.cutting.boards.problem import BoardProblem

_STATES = 20_000
"""How many states are looked at for the best order; beyond, the nearest fit is taken."""

_DEEPEST = 200
"""Pieces in a row for which the best order is looked for."""

Turned = tuple[int, bool]
"""An item by its place in the problem, and whether it is turned half round."""

Ends = tuple[int, int, int]
"""A width and the slants of the near and the far end."""


class _State(NamedTuple):
    """The piece that was laid last: its kind, which way round, its width and its ends' slants."""

    kind: int
    flipped: bool
    width: int
    near: int
    far: int


def head_to_tail(problem: BoardProblem, items: Sequence[int]) -> tuple[list[Turned], int]:
    """The order that needs least length, and what it saves against square ends."""
    kinds: dict[Ends, list[int]] = {}
    square = []
    for item in sorted(items):
        size = problem.items[item]
        if size.slanted:
            kinds.setdefault((size.width, *size.slants), []).append(item)
        else:
            square.append((item, False))
    if not kinds:
        return square, 0
    ends = tuple(sorted(kinds))
    counts = tuple(len(kinds[each]) for each in ends)
    row = _best(problem, ends, counts)
    queues = {each: iter(kinds[each]) for each in ends}
    order = [(next(queues[ends[kind]]), flipped) for kind, flipped in row]
    return order + square, saved(problem, order)


def saved(problem: BoardProblem, order: Sequence[Turned]) -> int:
    """By how much a row is shorter than with square ends."""
    return sum(nearer(problem, one, other) for one, other in pairwise(order))


def nearer(problem: BoardProblem, one: Turned, other: Turned) -> int:
    """By how much two neighbours lie nearer each other than two square ends would."""
    before, after = problem.items[one[0]], problem.items[other[0]]
    if one[1] == other[1] or before.width != after.width:
        return 0
    far, near = before.slants[not one[1]], after.slants[other[1]]
    return problem.saving(before.width, far, near)


def _best(problem: BoardProblem, ends: tuple[Ends, ...], counts: tuple[int, ...]) -> list[Turned]:
    """The order of kinds of ends that saves most."""

    def gain(state: _State, choice: _State) -> int:
        if state.width != choice.width or state.flipped == choice.flipped:
            return 0
        return problem.saving(state.width, state.far, choice.near)

    if sum(counts) > _DEEPEST or prod(n + 1 for n in counts) * len(ends) * 4 > _STATES:
        return _nearest(ends, list(counts), gain)

    @cache
    def most(left: tuple[int, ...], state: _State) -> tuple[int, list[Turned]]:
        best: tuple[int, list[Turned]] = (-1, [])
        for choice in _choices(ends, left):
            kind = choice.kind
            rest = (*left[:kind], left[kind] - 1, *left[kind + 1 :])
            further, row = most(rest, choice)
            whole = gain(state, choice) + further
            if whole > best[0]:
                best = (whole, [(kind, choice.flipped), *row])
        return best if best[0] >= 0 else (0, [])

    return most(counts, _State(0, False, 0, 0, 0))[1]


def _choices(ends: Sequence[Ends], left: Sequence[int]) -> list[_State]:
    """The pieces that may come next, either way round."""
    return [
        _State(kind, flipped, width, *(slants[::-1] if flipped else slants))
        for kind, (width, *slants) in enumerate(ends)
        if left[kind]
        for flipped in (False, True)
    ]


def _nearest(
    ends: Sequence[Ends], left: list[int], gain: Callable[[_State, _State], int]
) -> list[Turned]:
    row: list[Turned] = []
    state = _State(0, False, 0, 0, 0)
    while any(left):
        last = state
        state = max(_choices(ends, left), key=lambda each: (gain(last, each), each.far))
        row.append((state.kind, state.flipped))
        left[state.kind] -= 1
    return row


def required(problem: BoardProblem, items: Sequence[int]) -> int:
    """The length that some pieces in a row need, with the kerf."""
    whole = sum(problem.items[item].length for item in items)
    if not problem.joints:
        return whole
    return whole - head_to_tail(problem, items)[1]
