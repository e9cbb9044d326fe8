"""Places along a line, as far apart as they may be."""

from __future__ import annotations

from math import ceil

from rodwright.geometry.tolerance import TOUCH


def steps_of(length: float, most: float) -> int:
    """The fewest equal steps of a length (mm), none longer than ``most``; one at least."""
    return max(1, ceil(length / most - TOUCH))


def count_along(length: float, edge: float, spacing: float) -> int:
    """How many stand along a length (mm): one ``edge`` from either end at least, and as many
    between as leave no more than ``spacing`` from each to the next."""
    return steps_of(length - 2 * edge, spacing) + 1


def spread(low: float, high: float, edge: float, count: int) -> tuple[float, ...]:
    """Places evenly from ``edge`` past ``low`` to ``edge`` before ``high``: two or more."""
    between = high - low - 2 * edge
    return tuple(low + edge + number * between / (count - 1) for number in range(count))


def spread_between(low: float, high: float, width: float, most: float) -> tuple[float, ...]:
    """Where pieces of ``width`` mm begin that leave equal clear lengths on a line.

    Between ``low`` and ``high`` they are as few as leave no more than ``most`` mm clear, or none
    where that is so without them.
    """
    bays = steps_of(high - low + width, most + width)
    clear = (high - low - (bays - 1) * width) / bays
    return tuple(low + number * (clear + width) - width for number in range(1, bays))
