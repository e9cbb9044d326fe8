"""Room for labels along a line: each as near its place as the others let it be; mm of paper."""

from __future__ import annotations

from collections.abc import Sequence


def spread(places: Sequence[float], apart: float, low: float, high: float) -> list[float]:
    """Places (in rising order) moved so that they lie so far apart and within ``low`` and ``high``,
    with the least sum of squared moves: isotonic regression by pooling adjacent violators (Barlow,
    Bartholomew, Bremner and Brunk 1972, from memory).

    Raises:
        ValueError: there is no room for so many.
    """
    count = len(places)
    if (count - 1) * apart > high - low + 1e-9:
        raise ValueError(f"no room for {count} labels {apart:g} apart")
    pools: list[tuple[float, int]] = []
    for number, place in enumerate(places):
        mean, size = place - number * apart, 1
        while pools and pools[-1][0] > mean:
            before, others = pools.pop()
            mean = (before * others + mean * size) / (others + size)
            size += others
        pools.append((mean, size))
    found: list[float] = []
    for mean, size in pools:
        found += [mean + number * apart for number in range(len(found), len(found) + size)]
    least = [max(at, low + number * apart) for number, at in enumerate(found)]
    return [min(at, high - (count - 1 - number) * apart) for number, at in enumerate(least)]
