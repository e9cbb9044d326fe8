"""In which order parallel cuts are made, so that what is too heavy or too large for the saw is soon
broken down to what isn't."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache

Span = tuple[float, float]


def best_cut(
    spans: Sequence[Span],
    heavy: Callable[[float, float], bool],
    reaches: Callable[[float], bool],
    exact: bool,
) -> tuple[int, bool]:
    """Which of the cuts between parts comes first: the place of the last part before it, and
    whether it is measured from the high edge.

    Parts are cut off one by one from the low edge while what is in hand is neither ``heavy`` (from
    where to where, mm) nor beyond what the saw ``reaches`` (the setting, mm); else with the fewest
    cuts that are made with a saw carried to it, and of as many with the evenest halves.  ``exact``
    says that the last part ends at the high edge, so that it may be measured from there.
    """

    def carried(first: int, cut: int, last: int) -> bool:
        low, high = spans[first][0], spans[last][1]
        if heavy(low, high):
            return True
        settings = [spans[cut][1] - low]
        if exact and last == len(spans) - 1:
            settings.append(high - spans[cut + 1][0])
        return not any(map(reaches, settings))

    @cache
    def fewest(first: int, last: int) -> tuple[int, int]:
        """How many are carried out from one part to another, and where the first cut is."""
        if first == last:
            return 0, first
        low, high = spans[first][0], spans[last][1]
        one_by_one = all(reaches(stop - start) for start, stop in spans[first:last])
        if one_by_one and not heavy(low, high):
            return 0, first
        ways = [
            (
                carried(first, cut, last) + fewest(first, cut)[0] + fewest(cut + 1, last)[0],
                cut != first,
                abs((spans[cut][1] - low) - (high - spans[cut + 1][0])),
                cut,
            )
            for cut in range(first, last)
        ]
        least = min(ways)
        return least[0], least[3]

    last = len(spans) - 1
    cut = fewest(0, last)[1]
    low, high = spans[0][0], spans[last][1]
    others = high - spans[cut + 1][0]
    from_high = exact and not reaches(spans[cut][1] - low) and reaches(others)
    return cut, from_high
