"""Mixes of sheets that would be better than those of a plan."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import combinations_with_replacement

from rodwright.cutting.sheets.state import Found, Ground

Mix = tuple[int, ...]
"""How many of each kind of sheet."""

_KINDS = 8
"""How many kinds of sheets may take the place of others at a time."""


def better_mixes(
    ground: Ground, best: Found, bound: int, elsewhere: Counter[int] | None = None
) -> list[Mix]:
    """Mixes next to that of a plan, on which all pieces may go and which would be better; those
    with the most room first.

    One or two sheets give way to none, one or two others.  ``bound`` is what none costs less
    than; ``elsewhere`` are sheets that others need.
    """
    if not best.whole:
        return [_roomier(ground, best)]
    used = best.used
    there = [sheet.count for sheet in ground.problem.sheets]
    for kind, many in (elsewhere or Counter()).items():
        there[kind] -= many
    area = sum(filling.area - filling.free for filling in best.fillings)
    found: dict[Mix, int] = {}
    for given_up in _some(sorted(used), 1, 2):
        if any(many > used[kind] for kind, many in Counter(given_up).items()):
            continue
        for taken in _some(_others(ground, used, there), 0, 2):
            mix = _mix(used, there, given_up, taken)
            if mix is not None and mix not in found:
                room = _room(ground, mix, best, bound, area)
                if room is not None:
                    found[mix] = room
    return sorted(found, key=lambda mix: (-found[mix], mix))


def _some(kinds: list[int], least: int, most: int) -> Iterator[tuple[int, ...]]:
    for many in range(least, most + 1):
        yield from combinations_with_replacement(kinds, many)


def _others(ground: Ground, used: Counter[int], there: Sequence[int]) -> list[int]:
    sheets = ground.problem.sheets
    open_to = [kind for kind in range(len(sheets)) if used[kind] < there[kind]]
    return sorted(open_to, key=lambda kind: sheets[kind].price / sheets[kind].area)[:_KINDS]


def _mix(
    used: Counter[int], there: Sequence[int], given_up: tuple[int, ...], taken: tuple[int, ...]
) -> Mix | None:
    many = used + Counter(taken)
    many.subtract(given_up)
    if any(many[kind] > most for kind, most in enumerate(there)):
        return None
    return tuple(many[kind] for kind in range(len(there)))


def _room(ground: Ground, mix: Mix, best: Found, bound: int, area: int) -> int | None:
    """What area is to spare on a mix; None if it is too small or no better."""
    kinds = [kind for kind, many in enumerate(mix) for _ in range(many)]
    merit = ground.merit(kinds, ())
    room = merit[3] - area
    return room if room >= 0 and bound <= merit[1] and merit < best.merit else None


def _roomier(ground: Ground, best: Found) -> Mix:
    """All there is of what is limited, and twice as much of the rest as what is left over needs."""
    used = best.used
    problem = ground.problem
    mix = []
    for kind, sheet in enumerate(problem.sheets):
        more = 2 * -(-ground.area(best.left) // sheet.area)
        mix.append(min(sheet.count, used[kind] + more))
    return tuple(mix)
