"""Checks: parts, solids and meshes are read, findings come out, nothing is changed."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from itertools import chain

from rodwright.checks.binding import binding
from rodwright.checks.carrying_in import carrying_in
from rodwright.checks.catches import catches
from rodwright.checks.driving import driving
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.fit import fit
from rodwright.checks.fixings import fixings
from rodwright.checks.hanging import hanging
from rodwright.checks.holding import holding
from rodwright.checks.levelling import levelling
from rodwright.checks.lipping import lippings
from rodwright.checks.motions import motions
from rodwright.checks.movement import cross_grain
from rodwright.checks.open_below import open_below
from rodwright.checks.opening import opening
from rodwright.checks.safety import safety
from rodwright.checks.shelves_in import shelves_in
from rodwright.checks.stock import stock_sizes
from rodwright.checks.tipping import tipping
from rodwright.checks.wording import named, opened
from rodwright.checks.workings import workings
from rodwright.unit import Unit

__all__ = ["check_parts", "check_solids"]

_CHECKS = (
    opening,
    fit,
    levelling,
    workings,
    fixings,
    driving,
    holding,
    lippings,
    open_below,
    shelves_in,
    stock_sizes,
    carrying_in,
    motions,
    catches,
    binding,
    cross_grain,
    tipping,
    hanging,
    safety,
)


def check_parts(unit: Unit) -> tuple[Finding, ...]:
    """What the parts alone show, by arithmetic: no solid is built.

    The gravest come first; what is the same for several parts is said once.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    found = chain.from_iterable(check(unit) for check in _CHECKS)
    order = list(Severity)
    return tuple(sorted(_said_once(unit, found), key=lambda finding: order.index(finding.severity)))


def check_solids(unit: Unit) -> tuple[Finding, ...]:
    """What only the solids show: collisions, gaps that are too small, joints that don't meet.

    Raises:
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.checks.collisions import collisions

    return collisions(unit)


def _said_once(unit: Unit, found: Iterable[Finding]) -> list[Finding]:
    """Findings that differ only in their parts, made into one that names them all."""
    gathered: dict[tuple[object, ...], Finding] = {}
    for finding in found:
        plain = finding.message
        for ref in finding.parts:
            part = unit.part(ref)
            kind = part.name.removeprefix("Left ").removeprefix("Right ")
            for name in (named(part), opened(part)):
                plain = plain.replace(name, kind)
        # Sums from either side of a unit differ in their last digits.
        figures = (
            None if each is None else round(each, 6) for each in (finding.figure, finding.limit)
        )
        key = (finding.severity, finding.rule, plain, *figures)
        first = gathered.get(key)
        if first is None:
            gathered[key] = finding
        else:
            new = tuple(ref for ref in finding.parts if ref not in first.parts)
            gathered[key] = replace(first, parts=first.parts + new)
    return [_with_others(finding) for finding in gathered.values()]


def _with_others(finding: Finding) -> Finding:
    others = [ref for ref in finding.parts if f"({ref})" not in finding.message]
    if not others or len(others) == len(finding.parts):  # it speaks of the unit, not of a part
        return finding
    return replace(finding, message=f"{finding.message}; likewise {', '.join(others)}")
