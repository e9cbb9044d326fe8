"""Do shelves, tops, bottoms, rails and worktops sag too far under what they carry?"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from rodwright.amounts import RUN_WEIGHTS
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import held_to, length_in, named, weight_in
from rodwright.checks.rules import Rule
from rodwright.strength.levels import REACHES, SAGS, SPAN, STANDING, levels
from rodwright.strength.results import Remedy, Result
from rodwright.unit import Load, Unit

MOST_TOLD = 4
"""How many remedies a finding tells; `rodwright strength` tells all."""


def sagging(unit: Unit) -> Iterator[Finding]:
    """A finding for each level that sags farther than it may, with what would do."""
    told = set()
    for result in levels(unit):
        # One that sags too far loaded all over is not told once more of being loaded by turns.
        if result.what.startswith(SAGS) and not result.holds and result.parts not in told:
            told.add(result.parts)
            yield _sags(unit, result)


def _sags(unit: Unit, result: Result) -> Finding:
    figure, limit = result.figure or 0.0, result.limit or 0.0
    sags, most = held_to(unit, figure, limit)
    under, when = said_load(unit, result), result.what.removeprefix(SAGS).strip()
    of = REACHES if any(each.what == REACHES for each in result.inputs) else SPAN
    helps = would_do(result.remedies, lambda each: length_in(unit, each))
    return Finding(
        Severity.WARNING,
        Rule.SAGS_TOO_FAR,
        f"{named(unit.part(result.parts[0]))} sags {sags} {when}{under}; "
        f"{most} ({of}/{unit.loading.limit:g}) is the limit",
        helps,
        result.parts,
        figure,
        limit,
        source=str(result.limit_source or "the limit is the spec's own"),
        case=(under, when, helps),
    )


def said_load(unit: Unit, result: Result) -> str:
    """What a level is under: ``under books (37 kg/m, assumed)``."""
    refs = set(result.parts)
    there = [load for load in unit.loading.loads if load.ref in refs and load.mass > 0]
    said = list(dict.fromkeys(_said(unit, load) for load in there))
    if any(each.what == STANDING for each in result.inputs):
        said.append(STANDING)
    return f" under {' and '.join(said or ['its own weight'])}"


def _said(unit: Unit, load: Load) -> str:
    measure = RUN_WEIGHTS[unit.display_unit]
    per_metre = max(
        (end for each in load.stretches for end in (each.at_start, each.at_stop)), default=0.0
    )
    weighs = measure.said(per_metre, 0) if per_metre else weight_in(unit, load.mass)
    told = weighs if load.source is not None or load.assumed else ""
    inside = ", ".join(filter(None, (told, "assumed" if load.assumed else "")))
    return f"{load.said} ({inside})" if inside else load.said


def would_do(remedies: tuple[Remedy, ...], shown: Callable[[float], str]) -> str:
    """What would hold, with what each then gives; where nothing does, the best of what was
    tried."""
    do = [each for each in remedies if each.holds][:MOST_TOLD]
    if not do and not remedies:
        return "Carry it at more places, or put less on it."
    if not do:
        best = min(remedies, key=lambda each: each.figure)
        return f"Nothing that was tried alone would do: the best is {_told(best, shown)}."
    return f"Would do: {'; '.join(_told(each, shown) for each in do)}."


def _told(remedy: Remedy, shown: Callable[[float], str]) -> str:
    if remedy.cost is None:
        return f"{remedy.what}: {shown(remedy.figure)}"
    way = "dearer" if remedy.cost >= 0 else "cheaper"
    return f"{remedy.what}: {shown(remedy.figure)}, {abs(remedy.cost):.2f} {way}"
