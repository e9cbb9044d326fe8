"""A good pattern of a sheet when pieces are limited: cut as if they weren't, part by part.

The best pattern with any number of each piece is followed from cut to cut until a part needs no
more of a piece than there are; that is filled, and what is left of the sheet is thought out
anew with what is left of the pieces.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from rodwright.cutting.bounds.any_number import (
    Ground,
    best_puts,
    best_values,
    parts_of,
    whole_of,
)
from rodwright.cutting.bounds.dual_feasible import Whole
from rodwright.cutting.sheet_problem import Put


def construct(on: Ground, values: Sequence[int], counts: Sequence[int]) -> tuple[Put, ...]:
    """Pieces that lie well together, never more of one than there are.

    The lengths of the sheet must be exact, or rounded up.
    """
    left = list(counts)
    found: list[Put] = []
    open_ = [whole_of(on)]
    worth, best = _anew(on, values, left)
    while open_:
        part = open_.pop()
        puts = best_puts(on, worth, best, part)
        used = Counter(put.size for put in puts)
        if any(many > left[size] for size, many in used.items()):
            divided = parts_of(on, worth, best, part)
            assert not isinstance(divided, Put)
            open_ += sorted(divided, key=lambda each: -int(best[each.i, each.j]))
            continue
        found += puts
        for size, many in used.items():
            left[size] -= many
        if any(not left[size] for size in used):
            worth, best = _anew(on, values, left)
    return tuple(found)


def _anew(on: Ground, values: Sequence[int], left: Sequence[int]) -> tuple[list[int], Whole]:
    worth = [value if many else 0 for value, many in zip(values, left, strict=True)]
    return worth, best_values(on, worth)
