"""Do shelves, tops, bottoms, rails and worktops sag too far under what they carry?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.amounts import RUN_WEIGHTS
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import held_to, length_in, named, stress_in, weight_in
from rodwright.checks.rules import Rule
from rodwright.strength.levels import REACHES, SPAN, STANDING, levels
from rodwright.strength.results import Beyond, Remedy, Result
from rodwright.strength.sagging import SAGS
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
    helps = would_do(unit, result)
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


def would_do(unit: Unit, result: Result) -> str:
    """What would hold of a level, with what each then gives; where nothing does, the best of what
    was tried."""
    do = [each for each in result.remedies if each.holds][:MOST_TOLD]
    if do:
        return f"Would do: {'; '.join(_told(unit, result, each) for each in do)}."
    if not result.remedies:
        return "Carry it at more places, or put less on it."
    best = min(result.remedies, key=lambda each: _farthest(result, each))
    return f"Nothing that was tried alone would do: the best is {_told(unit, result, best)}."


def _farthest(result: Result, remedy: Remedy) -> float:
    """How many times over its limit a remedy leaves what is farthest beyond."""
    limit = remedy.limit or result.limit or 1.0
    return max(remedy.figure / limit, *(each.figure / each.limit for each in remedy.beyond), 0.0)


def _told(unit: Unit, result: Result, remedy: Remedy) -> str:
    told = f"{remedy.what}: {_shown(unit, remedy.figure, result.measure)}"
    if remedy.cost is not None:
        way = "dearer" if remedy.cost >= 0 else "cheaper"
        told += f", {abs(remedy.cost):.2f} {way} each, net"
    return told + "".join(_but(unit, each) for each in remedy.beyond)


def _but(unit: Unit, other: Beyond) -> str:
    most = _shown(unit, other.limit, other.measure)
    return f", but its {other.what} is {_shown(unit, other.figure, other.measure)}, at most {most}"


def _shown(unit: Unit, figure: float, measure: str) -> str:
    return length_in(unit, figure) if measure == "mm" else stress_in(unit, figure)
