"""Where texts stand beside the lines of a rod: in the order of the lines, near them, and never on
each other.

Places and heights are of the paper, mm, growing along the rod.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Wanted:
    """A text so high that wants its middle ``at`` a place; those of a ``rank`` above 0 go without
    where they have no room, the highest first."""

    at: float
    height: float
    rank: int = 0


def placed(wanted: Sequence[Wanted], low: float, high: float) -> list[float | None]:
    """The middle of each text between two ends; None of those that stay without.

    ``wanted`` is in the order of its places.  Texts of rank 0 move aside for each other by the
    least sum of squares (the pool-adjacent-violators algorithm; Best and Chakravarti, Mathematical
    Programming 47, 1990, from memory).  The others stand where they belong or not at all, and so
    do all of them where those of rank 0 together have no room.
    """
    found: list[float | None] = [None] * len(wanted)
    first = [number for number, each in enumerate(wanted) if each.rank == 0]
    if sum(wanted[number].height for number in first) <= high - low:
        spread = _spread([wanted[each] for each in first], low, high)
        for number, at in zip(first, spread, strict=True):
            found[number] = at
    left = [number for number, at in enumerate(found) if at is None]
    taken = [
        (at - each.height / 2, at + each.height / 2)
        for at, each in zip(found, wanted, strict=True)
        if at is not None
    ]
    for number in sorted(left, key=lambda each: wanted[each].rank):
        each = wanted[number]
        at = min(max(each.at, low + each.height / 2), high - each.height / 2)
        span = (at - each.height / 2, at + each.height / 2)
        if all(span[1] <= start or stop <= span[0] for start, stop in taken):
            taken.append(span)
            found[number] = at
    return found


def _spread(wanted: Sequence[Wanted], low: float, high: float) -> list[float]:
    """Middles in order, each at least half of both heights from the next, near what is wanted."""
    offsets, reach = list[float](), 0.0
    for each in wanted:
        offsets.append(reach + each.height / 2)
        reach += each.height
    pools: list[tuple[float, int]] = []
    for each, offset in zip(wanted, offsets, strict=True):
        pools.append((each.at - offset, 1))
        while len(pools) > 1 and pools[-2][0] > pools[-1][0]:
            (mean, count), (other, more) = pools.pop(), pools.pop()
            pools.append(((mean * count + other * more) / (count + more), count + more))
    starts = [min(max(mean, low), high - reach) for mean, count in pools for _ in range(count)]
    return [start + offset for start, offset in zip(starts, offsets, strict=True)]
