"""What a fixing to the wall has to hold so that a unit can't tip over."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace

from rodwright.strength.balance import Asked
from rodwright.strength.holds import into_of
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.strength.steadying import Means
from rodwright.strength.told_support import said
from rodwright.trade.fastenings import ROOT, SHEET_STEEL, Into, pressed_on_steel, screw_drawn
from rodwright.trade.mechanics import Family
from rodwright.trade.sources import Source
from rodwright.trade.stability import FIX_FROM, FIXED_BELOW_TOP, NEWTON, RESTRAINT, STATICS
from rodwright.trade.wall_fixings import (
    LEAST_FIXINGS,
    PLASTERBOARD,
    PLUG,
    SCREW,
    STUD_GRAVITY,
    STUD_WIDTH,
)
from rodwright.unit import TRAITS, Part, Role, Unit

FIXING = "what a fixing to the wall has to hold"
IN_MASONRY = "plugs of a fixing to a wall of masonry, needed"
IN_STUDS = "screws of a fixing to studs, needed"
IN_UNIT = "screws of a fixing to the wall in the unit, needed"
BRACKET_SCREW = (4.0, 16.0)
"""Diameter and length of the screws of a bracket, mm (common practice, no source)."""


def restraint(unit: Unit, means: Means, asked: Sequence[Asked], alone: Sequence[Asked]) -> Result:
    """The pull on what holds a unit to its wall, in the worst of all that is asked of it, and no
    less than a restraint is tried with where it is to be fixed at all; ``alone`` is what is asked
    with one drawer open at a time (none where that makes no difference)."""
    worst, limit = means.force(asked) / NEWTON, RESTRAINT.value / NEWTON
    fixed = worst > 0 or unit.size[1] > FIX_FROM.value
    newtons = max(worst, limit) if fixed else 0.0
    return Result(
        Group.STABILITY,
        "the unit",
        (),
        FIXING,
        newtons,
        limit,
        "N",
        "T = max(T1, R), T1 = (P H + sum F f - W x) / z",
        STATICS,
        (
            Input("z", "height of the fixing", means.fixed_at, "mm", FIXED_BELOW_TOP.source),
            Input("T1", "by statics, in the worst trial", worst, "N", STATICS),
            Input("R", "what a restraint is tried with", limit, "N", RESTRAINT.source),
        ),
        limit_source=RESTRAINT.source,
        notes=_WALLS[unit.loading.wall],
        remedies=tuple(_remedies(means, asked, alone, worst)),
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


_LOCAL = "follow local codes; the wall is its builder's to judge"
_WALLS: dict[str | None, tuple[str, ...]] = {
    None: ("what wall it stands at isn't said: write `wall` into the spec", _LOCAL),
    "masonry": (_LOCAL,),
    "studs": ("into a stud, not between studs", _LOCAL),
    "plasterboard": ("plasterboard alone doesn't hold it: find a stud or a nogging", _LOCAL),
}


def anchors(unit: Unit, newtons: float) -> Iterator[Result]:
    """How many fixings hold a pull, in the wall that the unit stands at (either kind, where it
    isn't said) and in the unit itself."""
    if newtons <= 0:
        return
    wall = unit.loading.wall
    if wall in {None, "masonry"}:
        yield _needed(IN_MASONRY, newtons, PLUG.value, "a plug, drawn", PLUG.source, LEAST_FIXINGS)
    if wall != "masonry":
        diameter, length = SCREW
        deep = length - PLASTERBOARD - SHEET_STEEL
        stud = Into(Family.SOLID_WOOD, STUD_GRAVITY.value, 2 * STUD_WIDTH, "face")
        drawn = screw_drawn(stud, diameter, deep)
        what = f"a screw {said(unit, diameter)} thick, {said(unit, round(deep))} in a stud, drawn"
        yield _needed(IN_STUDS, newtons, drawn.allowed, what, drawn.source, LEAST_FIXINGS)
    part = _held_by(unit)
    into = into_of(part, 2) if part is not None else None
    if part is None or into is None:
        return
    diameter, length = BRACKET_SCREW
    deep = min(length, part.blank.thickness) - SHEET_STEEL
    aside = pressed_on_steel(diameter, ROOT * diameter, (into, deep))
    what = (
        f"a screw {said(unit, diameter)} thick, {said(unit, round(deep, 1))} in {part.ref} through "
        "a bracket, pressed aside"
    )
    found = _needed(IN_UNIT, newtons, aside.allowed, what, aside.source, LEAST_FIXINGS)
    yield replace(found, subject=f"{part.role.value} {part.ref}", parts=(part.ref,))


def _needed(what: str, newtons: float, each: float, one: str, source: Source, least: int) -> Result:
    return Result(
        Group.STABILITY,
        "the unit",
        (),
        what,
        float(max(least, math.ceil(newtons / each - 1e-9))),
        None,
        "",
        "n = T/R",
        STATICS,
        (
            Input("T", "what they have to hold", newtons, "N"),
            Input("R", f"what one may bear: {one}", each, "N", source),
        ),
    )


def _held_by(unit: Unit) -> Part | None:
    """The part that brackets are screwed to: the top, or the highest level or worktop there is."""
    levels = [part for part in unit.parts if TRAITS[part.role].level or part.role is Role.WORKTOP]
    tops = [part for part in levels if part.role is Role.TOP] or levels
    return max(tops, key=lambda part: part.bounds().high[2], default=None)
