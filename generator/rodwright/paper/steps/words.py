"""The words of the steps: ways, refs, joints, weights, clamps; figures in the maker's unit."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from math import ceil

from rodwright.amounts import RUNS, WEIGHTS, format_weight
from rodwright.geometry import Vector
from rodwright.lengths import LengthUnit, format_length
from rodwright.making.glue_lines import Clamps, GlueUp
from rodwright.making.squareness import Diagonals
from rodwright.strength.lifting import Hands
from rodwright.strength.pieces import lifted
from rodwright.trade.gluing import CLAMPED, FULL_STRENGTH, OPEN_TIME, SLOW_TIME
from rodwright.trade.lifting import ROUND_IT, people
from rodwright.unit import Fixing, Part, Unit

_FROM = (("left", "right"), ("front", "back"), ("below", "above"))
"""Where a piece comes from that goes along +x or -x, +y or -y, +z or -z."""
_ASIDE = 0.1
"""A way with less of an axis than this doesn't go along it."""
_SLIDES = 100.0
"""A piece that goes farther than this (mm) past others slides in."""
_INTO = 0.5
"""A piece that goes less than this (mm) into a joint is put against."""
_CLAMPS: dict[LengthUnit, float] = {"mm": 10.0, "in": 25.4}
"""Openings of clamps are told in steps of so much, mm."""
_COLD: dict[LengthUnit, str] = {"mm": "10 C", "in": "50 F"}
"""Below this PVA glue doesn't set (common practice, no source)."""
_AXES = ("across", "front to back", "up and down")
_SEVERAL = 8
"""Refs that are listed before the rest is counted."""


def refs_said(refs: Iterable[str], most: int = _SEVERAL) -> str:
    """Refs in the order of their numbers, those that follow each other as a run: ``SD2, SH1 to
    SH4``."""
    found = sorted(dict.fromkeys(refs), key=_numbered)
    runs: list[list[str]] = []
    for ref in found:
        if runs and _next_to(runs[-1][-1]) == ref:
            runs[-1].append(ref)
        else:
            runs.append([ref])
    said = [text for run in runs for text in ([f"{run[0]} to {run[-1]}"] if len(run) > 2 else run)]
    more = len(said) - most
    return ", ".join(said) if more <= 0 else f"{', '.join(said[:most])} and {more} more"


def _numbered(ref: str) -> tuple[str, int, str]:
    found = re.fullmatch(r"(\D*)(\d*)(.*)", ref)
    assert found is not None
    return found[1], int(found[2] or 0), found[3]


def _next_to(ref: str) -> str:
    found = re.fullmatch(r"(\D+)(\d+)(\D*)", ref)
    return f"{found[1]}{int(found[2]) + 1}{found[3]}" if found else ""


def length_said(mm: float, unit: LengthUnit) -> str:
    """A length with its measure."""
    return f"{format_length(mm, unit)} {unit}"


def comes_from(towards: Vector) -> str:
    """Where a piece comes from, by the sides of the unit as it stands."""
    sides = [_FROM[axis][towards[axis] < 0] for axis in range(3) if abs(towards[axis]) > _ASIDE]
    if not sides:
        return ""
    named = [each if each in ("above", "below") else f"the {each}" for each in sides]
    aslant = "aslant, " if len(sides) > 1 else ""
    return f"{aslant}from {' and '.join(named)}"


def way_said(towards: Vector, travel: float, depth: float, unit: LengthUnit) -> str:
    """Which way a piece goes in, and how deep into its joints; ``travel`` is all its way."""
    where = comes_from(towards)
    if not where:
        return "It comes first"
    far = travel > _SLIDES
    if depth > _SLIDES:
        return f"Slide it in {where}, {length_said(depth, unit)}"
    if depth >= _INTO:
        verb = "Bring it in" if far else "Put it on"
        return f"{verb} {where}; it goes in by {length_said(depth, unit)}"
    return f"Slide it in {where}" if far else f"Put it against, {where}"


_ON_ITS_BACK = "Lay the work on its back, on packers that clamps go under; all comes level."
_LIES = {
    (1, (True,)): "Front up: all is put down onto it.",
    (1, (False,)): "Front down, on a blanket: all is put down onto it.",
    (1, (False, True)): "Begin with the front down, then turn it over.",
    (2, (False,)): "As it stands in use: all comes from above.",
    (2, (True,)): "On its head: all is put down onto it.",
}
"""How the work lies if all comes along one axis, one way (True: along it) or both."""


def lie_said(ways: Sequence[Vector], leads: Part | None) -> str:
    """Which way up the work lies, so that most of what comes is put down onto it; ``leads`` is a
    panel that it is all put flat on, where there is one."""
    axes = {axis for way in ways for axis in range(3) if abs(way[axis]) > _ASIDE}
    signs = {way[axis] > 0 for way in ways for axis in axes if abs(way[axis]) > _ASIDE}
    if not axes:
        return ""
    if leads is not None and len(axes) == 1:
        if len(signs) == 1:
            return f"Lay {leads.ref} flat, the side up that takes the pieces."
        return f"Lay {leads.ref} flat: one side first, then turn it over."
    if len(axes) == 1:
        return _LIES.get((axes.pop(), tuple(sorted(signs))), _ON_ITS_BACK)
    return _ON_ITS_BACK if axes == {0, 2} else "As it stands in use; turn it as the steps need."


def fixings_said(fixings: Iterable[Fixing]) -> list[str]:
    """Hardware: name, size, count and what is drilled for each, equal ones added up."""
    counts: dict[tuple[str, str, str], int] = {}
    for each in fixings:
        key = (each.name, each.size, each.pilot)
        counts[key] = counts.get(key, 0) + each.count
    return [
        f"{count} x {name}{f', {size}' if size else ''}{f' ({pilot})' if pilot else ''}"
        for (name, size, pilot), count in sorted(counts.items())
    ]


def mass_said(mass: float, unit: LengthUnit) -> str:
    """A weight to a tenth; what weighs less counts as that."""
    return format_weight(max(mass, WEIGHTS[unit].one / 10), unit)


def weight_said(unit: Unit, refs: Sequence[str]) -> str:
    """What some parts weigh as one, and how many people lift them, if more than one, as `check` has
    it."""
    hands = Hands.of(lifted([unit.part(ref) for ref in refs]))
    count = hands.people
    mass = mass_said(hands.piece.lot.mass, unit.display_unit)
    if hands.piece.pane > 0:
        mass += " with glass: gloves, suction lifters"
    if count == 1:
        return mass
    if count is None:
        return f"{mass}, from a platform"
    if count > ROUND_IT.value:
        hands_on = people(round(ROUND_IT.value))
        return f"{mass}, too much to carry: on skates or a sack truck, {hands_on} to steady it"
    return f"{mass}, {people(count)}"


def glue_said(glue: GlueUp, unit: LengthUnit) -> str:
    """How much is glued, how long that takes, and with what glue it can be done."""
    time, count = glue.time, len(glue.lines)
    joints = f"{count} glued {'joint' if count == 1 else 'joints'}, {RUNS[unit].said(glue.metres)}"
    takes = f"about {max(1, round(time.minutes))} min for one person"
    if time.quick:
        with_what = f"within the {OPEN_TIME.value:g} min that ordinary PVA glue stays open"
    elif time.slow:
        with_what = (
            f"more than the {OPEN_TIME.value:g} min of ordinary PVA glue: use a slow-setting glue "
            f"({SLOW_TIME.value:g} min), or two people"
        )
    else:
        with_what = "too long even for slow-setting glue: two people, both spreading"
    return f"{joints} of glue line, {takes}: {with_what}."


def general_said(unit: LengthUnit) -> list[str]:
    """What holds for every glue-up."""
    least, most = (f"{each:g}" for each in CLAMPED)
    return [
        "Dry fit first, always: joints close by hand and light taps, and the diagonals are right. "
        "What has to be forced dry won't go together wet.",
        f"Clamps stay on {least} to {most} min with PVA glue (its tin comes first; longer in the "
        f"cold, and not below {_COLD[unit]}). Full strength after {FULL_STRENGTH.value:g} h: "
        "until then it isn't planed, drilled or stood on.",
        "Glue that comes out is taken off when it is like rubber, from inside corners at once: it "
        "shows under any finish.",
    ]


def clamps_said(clamps: Sequence[Clamps], unit: LengthUnit) -> str:
    """How many clamps, which way, and how far they open."""
    said = [
        f"{each.count} at the mitres, or a band right round"
        if each.axis is None
        else f"{each.count} {_AXES[each.axis]}, opening at least "
        f"{length_said(ceil(each.opening / _CLAMPS[unit] - 1e-9) * _CLAMPS[unit], unit)}"
        for each in clamps
    ]
    return f"{'; '.join(said)}. A pad or a stiff caul under every jaw." if said else ""


def diagonals_said(found: Diagonals, unit: LengthUnit) -> str:
    """What the two diagonals measure when it is square."""
    seen = "from the front" if found.axis == 1 else "from above"
    rising, falling = (length_said(each, unit) for each in (found.rising, found.falling))
    if found.equal:
        return (
            f"Over the outside corners, seen {seen}: both {rising}. "
            "If one is longer, press along it until they are equal."
        )
    return (
        f"Over the outside corners, seen {seen}: lower left to upper right {rising}, upper left to "
        f"lower right {falling}: they differ, its outline is no rectangle."
    )
