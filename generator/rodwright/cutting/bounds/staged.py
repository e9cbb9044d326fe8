"""Any number of each piece in a few stages of cuts: a dynamic programme, stage by stage.

The last stage leaves single pieces, which one more cut may trim to size; a stage before it
divides a rectangle one way into what the stages behind it fill best (P. C. Gilmore and R. E.
Gomory, Multistage cutting stock problems of two and more dimensions, Operations Research 13, 1965;
from memory).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from rodwright.cutting.bounds.any_number import (
    Ground,
    alone,
    cut_of,
    divide,
    of_one_piece,
    whole_of,
)
from rodwright.cutting.bounds.dual_feasible import Whole
from rodwright.cutting.sheet_problem import Put, Rules


@dataclass(frozen=True, slots=True)
class Staged:
    """The best values of rectangles with no cut, one stage, and so on: ``best[k]`` with k of
    them, the first of which divides along an axis: ``axes[k - 1]``, 0 the length, 1 the width."""

    axes: tuple[int, ...]
    best: tuple[Whole, ...]

    @property
    def most(self) -> int:
        """Of the whole sheet, by all stages."""
        return int(self.best[-1][-1, -1])


def orders(rules: Rules) -> tuple[tuple[int, ...], ...]:
    """Which way each stage may divide, the last stage first.

    A cut along the length divides the width.  A head cut is taken as one more stage before all
    others, which allows more than one.
    """
    assert rules.stages is not None
    firsts = {"across": (0,), "along": (1,), None: (0, 1)}[rules.first_cut]
    found = [tuple((first + k) % 2 for k in reversed(range(rules.stages))) for first in firsts]
    if rules.head_cuts:
        found = [axes if axes and axes[-1] == 0 else (*axes, 0) for axes in found]
        longest = max(found, key=len)
        found = [longest] if all(axes == longest[-len(axes) :] for axes in found) else found
    return tuple(found)


def staged(on: Ground, values: Sequence[int], axes: tuple[int, ...]) -> Staged:
    """The best values by stages that divide these ways, the last first."""
    best = [of_one_piece(on, values)]
    for axis in axes:
        filled = np.ascontiguousarray(best[-1] if axis == 0 else best[-1].T).copy()
        side = (on.along, on.across)[axis]
        before = None
        while before is None or (filled != before).any():
            before = filled.copy()
            divide(filled, side)
        best.append(filled if axis == 0 else np.ascontiguousarray(filled.T))
    return Staged(axes, tuple(best))


def staged_puts(on: Ground, values: Sequence[int], found: Staged) -> tuple[Put, ...]:
    """Pieces that are together worth the best of the whole sheet, where they lie."""
    puts: list[Put] = []
    left = [(len(found.axes), whole_of(on))]
    while left:
        stage, part = left.pop()
        best = found.best[stage]
        if not best[part.i, part.j]:
            continue
        if stage == 0:
            put = alone(on, values, best, part)
            assert put is not None
            puts.append(put)
        elif found.best[stage - 1][part.i, part.j] == best[part.i, part.j]:
            left.append((stage - 1, part))
        else:
            cut = cut_of(on, best, part, found.axes[stage - 1])
            assert cut is not None
            left += [(stage, each) for each in cut]
    return tuple(puts)
