"""Can the unit be carried in, stood up and slid into its place?  By formula alone."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in
from rodwright.checks.rules import Rule
from rodwright.unit import Unit
from rodwright.way.carry import StepKind
from rodwright.way.remedies import Remedy, remedies, steps_for

_SOURCE = "plane geometry; see rodwright.way.formulas"


def carrying_in(unit: Unit) -> Iterator[Finding]:
    """What stands in the way of the finished unit, and which remedies do away with it."""
    way = unit.way_in
    if way is None:
        return
    stuck = [step for step in steps_for(unit, way) if not step.passes]
    if stuck:
        remedy = _told(remedies(unit, way))
    for step in stuck:
        at_opening = step.kind is StepKind.OPENING
        yield Finding(
            Severity.WARNING,
            Rule.WAY_TOO_TIGHT,
            f"{step.place}: the finished unit is {length_in(unit, -step.spare)} short "
            f"({step.tight}) when held at its best, {step.held}",
            ("`rodwright way-in` looks for a tilted path.  " if at_opening else "") + remedy,
            figure=step.spare,
            limit=0.0,
            source=_SOURCE,
        )
    yield Finding(
        Severity.CAUTION,
        Rule.CARRYING_IN,
        "turning a large piece on stairs and round corners crushes hands and backs",
        "Walk the way empty first, agree on who leads, keep nobody below the load on stairs, and "
        "take doors off their hinges; stairs are not worked out here.",
        measure="",
        brief="Carrying in: walk the way empty first; nobody below the load on stairs.",
    )


def _told(tried: tuple[Remedy, ...]) -> str:
    works = [remedy.what for remedy in tried if remedy.works]
    if not works:
        return "None of the remedies tried would do alone; make it smaller, or find another way."
    return f"It would do to {'; or to '.join(works)}."
