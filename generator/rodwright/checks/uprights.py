"""Uprights that buckle or crush what they stand on, and what the floor is to carry."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.amounts import AREA_WEIGHTS
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import named, stress_in, weight_in
from rodwright.checks.rules import Rule
from rodwright.strength.ground import ON_FLOOR, ground
from rodwright.strength.results import Result
from rodwright.strength.uprights import BUCKLES
from rodwright.strength.uprights import uprights as worked_out
from rodwright.unit import Unit


def uprights(unit: Unit) -> Iterator[Finding]:
    """Findings about what carries the unit down to the floor, and the floor."""
    for result in worked_out(unit):
        if not result.holds:
            yield _buckles(unit, result) if result.what == BUCKLES else _crushes(unit, result)
    for result in ground(unit):
        if result.what == ON_FLOOR and not result.holds:
            yield _floor(unit, result)


def _buckles(unit: Unit, result: Result) -> Finding:
    comes, most = (weight_in(unit, each or 0.0) for each in (result.figure, result.limit))
    helps = "; or ".join(each.what for each in result.remedies if each.holds)
    return Finding(
        Severity.ERROR,
        Rule.UPRIGHT_BUCKLES,
        f"{comes} come down {named(unit.part(result.parts[0]))}, which may carry {most} before it "
        "bows out",
        f"It takes {helps}." if helps else "Fix more shelves to it, or make it much thicker.",
        result.parts,
        result.figure,
        result.limit,
        "kg",
        str(result.limit_source),
    )


def _crushes(unit: Unit, result: Result) -> Finding:
    upright, below = (named(unit.part(ref)) for ref in result.parts)
    presses, most = (stress_in(unit, each or 0.0, 2) for each in (result.figure, result.limit))
    return Finding(
        Severity.WARNING,
        Rule.FOOT_CRUSHES,
        f"{upright} presses on {below} with {presses}, and {most} is the most through its "
        "thickness",
        "Let it go past that to the floor, make it thicker, or take harder stock under it.",
        result.parts,
        result.figure,
        result.limit,
        "N/mm2",
        str(result.limit_source),
    )


def _floor(unit: Unit, result: Result) -> Finding:
    puts, most = (_per_area(unit, each or 0.0) for each in (result.figure, result.limit))
    return Finding(
        Severity.CAUTION,
        Rule.FLOOR_LOAD,
        f"with all that is in it, it puts {puts} on the floor under it and the aisle before it; "
        f"floors of houses are designed for {most} all over, and often carry more along a wall",
        "Ask a structural engineer whether the floor carries it, above all on timber joists; "
        "follow local codes.",
        figure=result.figure,
        limit=result.limit,
        measure="kg/m2",
        source=str(result.limit_source),
        brief=f"Floor: {puts}, houses are built for {most}: ask a structural engineer.",
    )


def _per_area(unit: Unit, figure: float) -> str:
    return AREA_WEIGHTS[unit.display_unit].said(figure)
