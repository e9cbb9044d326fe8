"""What is found of several parts alike is told once."""

from __future__ import annotations

from collections.abc import Hashable, Iterable

from rodwright.checks.findings import Finding
from rodwright.unit import Unit

_DECIMALS = 6
"""Sums from either side of a unit differ in their last digits."""


def said_once(unit: Unit, found: Iterable[Finding]) -> tuple[Finding, ...]:
    """Findings that are alike but for their parts, made into one that names them all."""
    gathered: dict[Hashable, list[Finding]] = {}
    for finding in found:
        gathered.setdefault(alike(unit, finding), []).append(finding)
    return tuple(
        first.likewise(ref for other in others for ref in other.parts)
        for first, *others in gathered.values()
    )


def alike(unit: Unit, finding: Finding) -> Hashable:
    """What two findings share that are one but for their parts: rule, case, figures, and the roles
    of those parts.  One of the whole unit is like no other."""
    if not finding.parts:
        return object()
    figures = (*finding.case, finding.figure, finding.limit)
    return (
        finding.severity,
        finding.rule,
        *(round(each, _DECIMALS) if isinstance(each, float) else each for each in figures),
        *(unit.part(ref).role for ref in finding.parts),
    )
