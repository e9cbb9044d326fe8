"""What a fixing to the wall has to hold so that a unit can't tip over."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from rodwright.strength.balance import Asked
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.strength.steadying import Means
from rodwright.trade.stability import FIXED_BELOW_TOP, NEWTON, RESTRAINT, STATICS
from rodwright.unit import Unit

FIXING = "what a fixing to the wall has to hold"


def restraint(unit: Unit, means: Means, asked: Sequence[Asked], alone: Sequence[Asked]) -> Result:
    """The pull on what holds a unit to its wall, in the worst of all that is asked of it;
    ``alone`` is what is asked with one drawer open at a time (none where that makes no
    difference)."""
    newtons, limit = means.force(asked) / NEWTON, RESTRAINT.value / NEWTON
    return Result(
        Group.STABILITY,
        "the unit",
        (),
        FIXING,
        newtons,
        limit,
        "N",
        "T = (P H + sum F f - W x) / z",
        STATICS,
        (
            Input("z", "height of the fixing", means.fixed_at, "mm", FIXED_BELOW_TOP.source),
            Input("R", "what a restraint is tried with", limit, "N", RESTRAINT.source),
        ),
        limit_source=RESTRAINT.source,
        notes=_WALLS[unit.loading.wall],
        remedies=tuple(_remedies(means, asked, alone, newtons)),
    )


def _remedies(
    means: Means, asked: Sequence[Asked], alone: Sequence[Asked], newtons: float
) -> Iterator[Remedy]:
    """More restraints, and what would make do without any."""
    limit = RESTRAINT.value / NEWTON
    if newtons > limit:
        count = math.ceil(newtons / limit)
        tried = means.weight(RESTRAINT.value)
        share = newtons / count
        yield Remedy(f"{count} restraints that hold {tried} each", share, share <= limit)
    if newtons > 0:
        if alone and all(each.stands for each in alone):
            yield Remedy(means.interlock, 0.0, True)
        for said, _ in means.changes(asked):
            yield Remedy(said, 0.0, True)


_LOCAL = "follow local codes"
_WALLS: dict[str | None, tuple[str, ...]] = {
    None: ("what wall it stands at isn't said: write `wall` into the spec", _LOCAL),
    "masonry": ("into masonry with a plug and screw whose maker gives that load", _LOCAL),
    "studs": ("into a stud, not between studs", _LOCAL),
    "plasterboard": ("plasterboard alone doesn't hold it: find a stud or a nogging", _LOCAL),
}
