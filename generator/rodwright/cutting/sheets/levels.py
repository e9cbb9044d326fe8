"""For less money than a plan: of each sum that is paid, the most area it buys, and all that costs
nothing beside it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from rodwright.cutting.sheets.mixes import Mix
from rodwright.cutting.sheets.state import Found, Ground

_SUMS = 500
"""How many sums are followed at a time: those that may buy the most area."""


class _Kind(NamedTuple):
    kind: int
    money: int
    area: int
    there: int


class _Part(NamedTuple):
    """What some sheets cost, their area, and how many of each."""

    money: int
    area: int
    mix: Mix


def cheaper_mixes(ground: Ground, best: Found, bound: int) -> list[Mix]:
    """Mixes that cost less money than a plan and aren't proven to be too cheap (``bound``), on
    which all pieces may go by their area; those with the most room first.

    All sheets that cost nothing are in each: a search leaves empty what it has no use for.
    """
    problem, unit = ground.problem, ground.unit
    below = best.cost // unit
    if not best.whole or not below:
        return []
    free = tuple(sheet.count if sheet.price < unit else 0 for sheet in problem.sheets)
    needed = problem.area - sum(
        sheet.area * many for sheet, many in zip(problem.sheets, free, strict=True)
    )
    paid = [
        _Kind(kind, sheet.price // unit, sheet.area, sheet.count)
        for kind, sheet in enumerate(problem.sheets)
        if sheet.price >= unit
    ]
    parts = [part for part in _parts(paid, free, below, needed) if part.area >= needed]
    parts.sort(key=lambda part: (-part.area, part.mix))
    return [
        part.mix
        for part in parts
        if _cost(ground, part.mix) >= bound and _takes_all(ground, part.mix)
    ]


def _parts(paid: Sequence[_Kind], free: Mix, below: int, needed: int) -> list[_Part]:
    """Of each sum the sheets with the most area, where they may still come to what is needed."""
    parts = [_Part(0, 0, free)]
    order = sorted(paid, key=lambda each: (each.money / each.area, each.kind))
    for number, kind in enumerate(order):
        after = order[number + 1 :]
        dense = max((each.area / each.money for each in after), default=0.0)
        most: dict[int, tuple[float, _Part]] = {}
        for part in parts:
            for more in _with(part, kind, below):
                may = more.area + dense * (below - more.money)
                known = most.get(more.money)
                if may >= needed and (known is None or known[1].area < more.area):
                    most[more.money] = may, more
        ranked = sorted(most.values(), key=lambda each: (-each[0], each[1].money))
        parts = [part for _, part in ranked[:_SUMS]]
    return parts


def _with(part: _Part, kind: _Kind, below: int) -> list[_Part]:
    """A part with none, one, two and so on of a kind of sheet more."""
    most = min(kind.there, (below - 1 - part.money) // kind.money)
    return [
        _Part(
            part.money + many * kind.money,
            part.area + many * kind.area,
            (*part.mix[: kind.kind], many, *part.mix[kind.kind + 1 :]),
        )
        for many in range(most + 1)
    ]


def _cost(ground: Ground, mix: Mix) -> int:
    return sum(sheet.price * many for sheet, many in zip(ground.problem.sheets, mix, strict=True))


def _takes_all(ground: Ground, mix: Mix) -> bool:
    """Whether each piece goes on some sheet of a mix."""
    there = [sheet for sheet, many in zip(ground.problem.sheets, mix, strict=True) if many]
    return all(any(sheet.takes(size) for sheet in there) for size in ground.problem.sizes)
