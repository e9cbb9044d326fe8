"""What sums of prices can be: a bound between two of them is raised to the upper one."""

from __future__ import annotations

from collections.abc import Sequence
from math import gcd

_MOST = 20_000_000
"""Sums followed at most (as bits of one number); beyond, only common divisors are seen."""


def next_sum(least: int, prices: Sequence[int], counts: Sequence[int]) -> int | None:
    """The least sum of prices that is at least so much; None where all together are less.

    ``counts`` are how often each price can be paid.
    """
    if least <= 0:
        return 0
    paid = [(price, count) for price, count in zip(prices, counts, strict=True) if price and count]
    if sum(price * count for price, count in paid) < least:
        return None
    unit = gcd(*(price for price, _ in paid))
    least = -(-least // unit)
    paid = [(price // unit, count) for price, count in paid]
    reach = least + max(price for price, _ in paid)
    if reach > _MOST or len(paid) == 1:
        return least * unit
    sums = _sums(paid, reach) >> least
    return (least + (sums & -sums).bit_length() - 1) * unit


def _sums(paid: list[tuple[int, int]], reach: int) -> int:
    """Bit s is set if s is a sum, up to ``reach``."""
    sums = 1
    mask = (1 << reach + 1) - 1
    for price, count in paid:
        left, step = min(count, reach // price), 1
        while left:
            step = min(step, left)
            sums |= sums << price * step & mask
            left -= step
            step *= 2
    return sums
