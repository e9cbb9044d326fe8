"""Do joints bear what is put on them: shelves' and carcass's, drawers', doors'?"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import chain
from types import MappingProxyType

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import named, opened, past_limit, weight_in
from rodwright.checks.rules import Rule
from rodwright.strength.fixings import level_joints
from rodwright.strength.framed_doors import framed_doors
from rodwright.strength.joint_results import (
    CORNERS,
    DRAWN_OUT,
    EDGE,
    FILLED,
    FRAMED,
    FRONT,
    HUNG,
    LOADED,
    RUNS,
    SAGGING,
    TOP_HINGE,
)
from rodwright.strength.moving_parts import moving_joints
from rodwright.strength.results import Remedy, Result
from rodwright.strength.runners_and_frames import frame_joints, runner_joints
from rodwright.unit import Unit

_RULES: Mapping[str, tuple[Severity, Rule, str]] = MappingProxyType({
    LOADED: (
        Severity.ERROR, Rule.JOINT_OVERLOADED,
        "{part} puts {held} on its joint with {other}, which bears {bears}"),
    EDGE: (
        Severity.ERROR, Rule.JOINT_OVERLOADED,
        "{part} puts up to {held} on what holds its edge, which bears {bears}"),
    SAGGING: (
        Severity.WARNING, Rule.FIXINGS_DRAWN,
        "{part} as it sags draws with {held} on what holds it to {other}, which bears {bears}"),
    FILLED: (
        Severity.WARNING, Rule.DRAWER_OVERLOADED,
        "what lies in {moves} puts {held} on a groove of its bottom, which bears {bears}"),
    DRAWN_OUT: (
        Severity.WARNING, Rule.DRAWER_OVERLOADED,
        "{moves}, drawn out, puts {held} on the foremost screw of a slide, which bears {bears}"),
    RUNS: (
        Severity.WARNING, Rule.DRAWER_OVERLOADED,
        "a drawer, drawn out, puts {held} on the foremost screw of {part}, which bears {bears}"),
    FRAMED: (
        Severity.ERROR, Rule.JOINT_OVERLOADED,
        "the face frame and its doors weigh {held}, and what holds them to the carcass bears "
        "{bears}"),
    FRONT: (
        Severity.WARNING, Rule.DRAWER_FRONT_LOOSE,
        "what holds the front of {moves} bears {bears}, and pulls are tested at {held}"),
    CORNERS: (
        Severity.WARNING, Rule.DOOR_TOO_HEAVY,
        "{moves} weighs {held}, and the corners of its frame are for {bears}"),
    HUNG: (
        Severity.WARNING, Rule.DOOR_TOO_HEAVY,
        "{moves} weighs {held}, and its hinges are for {bears}"),
    TOP_HINGE: (
        Severity.WARNING, Rule.DOOR_TOO_HEAVY,
        "{moves} draws with {held} on the screws of its top hinge, which bear {bears}"),
})  # fmt: skip
"""What each figure that fails is told as."""


def fixings_hold(unit: Unit) -> Iterator[Finding]:
    """A finding for each joint that carries more than it bears, with what would bear it."""
    analyses = (level_joints, moving_joints, runner_joints, frame_joints, framed_doors)
    for result in chain.from_iterable(analysis(unit) for analysis in analyses):
        if result.holds or result.figure is None or result.limit is None:
            continue
        severity, rule, said = _RULES[result.what]
        held, bears = past_limit(result.figure, result.limit, lambda each: weight_in(unit, each, 1))
        part, other = (unit.part(ref) for ref in result.parts[:2])
        told = said.format(
            part=named(part),
            other=named(other),
            moves=opened(part),
            held=held,
            bears=bears,
        )
        yield Finding(
            severity,
            rule,
            told,
            _remedy(unit, result),
            result.parts,
            result.figure,
            result.limit,
            result.measure,
            str(result.limit_source),
            case=(result.what, *(each.what for each in result.remedies)),
        )


def _remedy(unit: Unit, result: Result) -> str:
    """What would do, with what it then bears; where nothing does, the most that can be had."""
    does = [each for each in result.remedies if each.holds]
    if does:
        return f"{_first_up(_told(unit, does))}; or put less on it."
    if result.remedies:
        best = max(result.remedies, key=lambda each: each.figure if each.bears else -each.figure)
        return f"Put less on it: even {_told(unit, [best])}."
    return "Put less on it, or hold it up at more places."


def _told(unit: Unit, remedies: list[Remedy]) -> str:
    return ", or ".join(
        f"{each.what} ({'bears' if each.bears else 'puts on one'} "
        f"{weight_in(unit, each.figure, 1)})"
        for each in remedies
    )


def _first_up(text: str) -> str:
    return text[:1].upper() + text[1:]
