"""Checks: parts, solids and meshes are read, findings come out, nothing is changed."""

from __future__ import annotations

from itertools import chain

from rodwright.checks.alike import said_once
from rodwright.checks.binding import binding
from rodwright.checks.breaking import breaking
from rodwright.checks.carrying_in import carrying_in
from rodwright.checks.catches import catches
from rodwright.checks.cross_grain import cross_grain
from rodwright.checks.driving import driving
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.fit import fit
from rodwright.checks.fixing_places import fixing_places
from rodwright.checks.fixings_hold import fixings_hold
from rodwright.checks.hanging import hanging
from rodwright.checks.holding import holding
from rodwright.checks.levelling import levelling
from rodwright.checks.lifting import lifting
from rodwright.checks.lipping import lippings
from rodwright.checks.measuring import measuring
from rodwright.checks.motions import motions
from rodwright.checks.open_below import open_below
from rodwright.checks.racking import racking
from rodwright.checks.safety import safety
from rodwright.checks.sagging import sagging
from rodwright.checks.shelves_in import shelves_in
from rodwright.checks.stock import stock_sizes
from rodwright.checks.tipping import tipping
from rodwright.checks.unknown_stiffness import unknown_stiffness
from rodwright.checks.uprights import uprights
from rodwright.checks.wall_fixings import wall_fixings
from rodwright.checks.weak_joints import weak_joints
from rodwright.checks.workings import workings
from rodwright.unit import Unit

__all__ = ["BY_STRENGTH", "CHECKS", "check_parts", "check_solids", "check_strength"]

CHECKS = (
    measuring,
    fit,
    levelling,
    workings,
    weak_joints,
    fixing_places,
    fixings_hold,
    driving,
    holding,
    racking,
    breaking,
    sagging,
    unknown_stiffness,
    uprights,
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
    lifting,
    wall_fixings,
    safety,
)
"""Each gives findings from the parts of a unit, in the order in which they are told."""

BY_STRENGTH = (
    fixing_places,
    fixings_hold,
    racking,
    breaking,
    sagging,
    unknown_stiffness,
    uprights,
    tipping,
    hanging,
    lifting,
    wall_fixings,
)
"""Those that go by results of strength, stability and weight."""


def check_strength(unit: Unit) -> tuple[Finding, ...]:
    """What :func:`check_parts` finds of strength, stability and weight.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    return tuple(chain.from_iterable(check(unit) for check in BY_STRENGTH))


def check_parts(unit: Unit) -> tuple[Finding, ...]:
    """What the parts alone show, by arithmetic: no solid is built.

    The gravest come first; what is the same for several parts is said once.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    found = chain.from_iterable(check(unit) for check in CHECKS)
    order = list(Severity)
    return tuple(sorted(said_once(unit, found), key=lambda finding: order.index(finding.severity)))


def check_solids(unit: Unit) -> tuple[Finding, ...]:
    """What only the solids show: collisions, gaps that are too small, joints that don't meet.

    Raises:
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.checks.collisions import collisions

    return collisions(unit)
