"""Sheets as they were filled at any time, put together to the cheapest plan."""

from __future__ import annotations

from collections.abc import Iterable

from rodwright.cutting.free.covering import how_many
from rodwright.cutting.sheets.filling import Filling
from rodwright.cutting.sheets.state import Found, Ground

_MOST = 3000
"""Of how many sheets, the best filled."""


def covered(ground: Ground, seen: Iterable[Filling]) -> Found | None:
    """The cheapest plan of fillings, as far as it is found; pieces that are on two are taken off
    one."""
    known = sorted(seen, key=lambda filling: filling.free / filling.area)[:_MOST]
    many = how_many(ground.problem, [filling.pattern() for filling in known])
    if many is None:
        return None
    missing = [size.count for size in ground.problem.sizes]
    chosen = []
    for filling, times in zip(known, many, strict=True):
        for _ in range(times):
            chosen.append(filling.copy())
            _take_off_doubles(chosen[-1], missing)
    left = [size for size, times in enumerate(missing) for _ in range(times)]
    return ground.found(chosen, left)


def _take_off_doubles(filling: Filling, missing: list[int]) -> None:
    """Note what is on a sheet as no longer missing, and take off what wasn't."""
    doubles = []
    for field in filling.fields:
        for leaf in field.leaves():
            if missing[leaf.size]:
                missing[leaf.size] -= 1
            else:
                doubles.append((field, leaf))
    filling.take_off(doubles)
