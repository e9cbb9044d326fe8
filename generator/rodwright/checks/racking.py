"""A carcass that sways too far, or folds, when it is pushed; and what would brace it."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import held_to, length_in, moves_in, past_limit, stress_in, weight_in
from rodwright.checks.rules import Rule
from rodwright.lengths import at_most
from rodwright.strength.back_fixings import EACH_CARRIES
from rodwright.strength.paths import GRAVITY
from rodwright.strength.racking import (
    BUCKLES,
    FRONT_TO_BACK,
    PUSH,
    SIDEWAYS,
    SWAY_LIMIT,
    SWAY_SOURCE,
    fixed_to_wall,
    folds_empty,
)
from rodwright.strength.racking import racking as worked_out
from rodwright.strength.results import Remedy, Result
from rodwright.unit import FACE_FRAME, Role, Unit


def racking(unit: Unit) -> Iterator[Finding]:
    """Findings about a carcass that nothing braces, or not enough."""
    for result in worked_out(unit):
        if result.figure is None:
            if not fixed_to_wall(unit):
                yield _not_known(unit, result)
        elif result.what == SIDEWAYS:
            yield from _sideways(unit, result)
        elif not result.holds and result.what == FRONT_TO_BACK:
            yield _sways(unit, result, "from front to back", Rule.SWAYS_TOO_FAR)
        elif not result.holds and result.what == BUCKLES:
            yield _buckles(unit, result)
        elif not result.holds and result.what == EACH_CARRIES:
            yield _works_loose(unit, result)


def _braced(unit: Unit) -> bool:
    roles = {part.role for part in unit.parts}
    return Role.BACK in roles or roles.issuperset(FACE_FRAME)


def _not_known(unit: Unit, result: Result) -> Finding:
    """Of a carcass of unknown wood: worse where neither back nor face frame braces it."""
    braced = _braced(unit)
    bare = "" if braced else "; it has neither a back nor a face frame to keep it square"
    brace = "" if braced else "; or give it a `back`, or fix it to the wall and say so (`wall`)"
    return Finding(
        Severity.NOTE if braced else Severity.WARNING,
        Rule.SWAY_UNKNOWN,
        f"how far the carcass sways when it is pushed can't be worked out{bare}: {result.lacking}",
        f"Give what is known of it, with where it comes from, or choose a material that is known "
        f"(docs/materials.md){brace}.",
        result.parts,
        measure="",
        case=(result.lacking,),
    )


def _sideways(unit: Unit, result: Result) -> Iterator[Finding]:
    braced = _braced(unit)
    if fixed_to_wall(unit):
        # The wall braces it, once it is fixed; until then it has to stand by itself.
        if not braced and folds_empty(unit):
            yield _folds_until_fixed(unit, result)
    elif not result.holds:
        rule = Rule.SWAYS_TOO_FAR if braced else Rule.NOTHING_BRACES_IT
        yield _sways(unit, result, "sideways", rule)
    elif not braced:
        yield Finding(
            Severity.NOTE,
            Rule.OPEN_BACK,
            f"without a back, only the carcass's joints keep it square: pushed with "
            f"{_push(unit)} at the top it sways {moves_in(unit, result.figure or 0.0)}",
            "Fix it to the wall, or give it a `back`, if it is to carry more than was said.",
            result.parts,
            result.figure,
            result.limit,
            source=str(SWAY_SOURCE),
        )


def _sways(unit: Unit, result: Result, way: str, rule: Rule) -> Finding:
    figure, limit = result.figure or 0.0, result.limit or 0.0
    folds = figure >= limit * SWAY_LIMIT * (1 - 1e-9)
    sways, most = held_to(unit, figure, limit)
    what = (
        "its joints don't keep it upright, glue not counted"
        if folds
        else f"it sways {sways} {way}, and {most} is the most (height over {SWAY_LIMIT:g})"
    )
    pushed = f"pushed with {_push(unit)} at the top, with all that stands in it,"
    return Finding(
        Severity.WARNING,
        rule,
        f"{pushed} {what}",
        _helps(unit, result.remedies),
        result.parts,
        figure,
        limit,
        source=str(SWAY_SOURCE),
        case=(way,),
    )


def _folds_until_fixed(unit: Unit, result: Result) -> Finding:
    return Finding(
        Severity.WARNING,
        Rule.NOTHING_BRACES_IT,
        "its joints don't keep it upright by themselves, glue not counted, until the wall holds it",
        f"Fix each upright to the wall. {_helps(unit, result.remedies)}",
        result.parts,
        result.figure,
        (result.figure or 0.0) / SWAY_LIMIT,
        source=str(SWAY_SOURCE),
    )


def _helps(unit: Unit, remedies: tuple[Remedy, ...]) -> str:
    """What would do, with what it would then sway; where nothing tried does, the best of it."""
    if not remedies:
        return "Give it stiffer legs or joints, or fix it to the wall."
    do = [each for each in remedies if each.holds] or [min(remedies, key=lambda one: one.figure)]
    said = "; or ".join(f"{each.what} ({moves_in(unit, each.figure)})" for each in do)
    return f"It would sway less with {said}. `rodwright strength` has the figures."


def _buckles(unit: Unit, result: Result) -> Finding:
    sheared, most = past_limit(
        result.figure or 0.0, result.limit or 0.0, lambda each: stress_in(unit, each, 2)
    )
    return Finding(
        Severity.WARNING,
        Rule.BACK_BUCKLES,
        f"pushed at the top, the back is sheared by {sheared} and buckles at {most}",
        "Take a thicker `back.stock`, or split it (`back.split`).",
        result.parts,
        result.figure,
        result.limit,
        "N/mm2",
        str(result.limit_source),
    )


def _works_loose(unit: Unit, result: Result) -> Finding:
    carries, most = past_limit(
        result.figure or 0.0, result.limit or 0.0, lambda each: weight_in(unit, each / GRAVITY, 1)
    )
    apart = next(each.value for each in result.inputs if each.symbol == "s")
    closer = at_most(apart * (result.limit or 0.0) / (result.figure or 1.0), unit.display_unit)
    return Finding(
        Severity.WARNING,
        Rule.BACK_FIXINGS_GIVE,
        f"pushed at the top, each screw or pin of the back carries {carries}, and {most} is the "
        "most",
        f"Set them {length_in(unit, closer)} apart at most instead of {length_in(unit, apart)}, "
        "or glue the back on too.",
        result.parts,
        result.figure,
        result.limit,
        "N",
        str(result.limit_source),
    )


def _push(unit: Unit) -> str:
    return weight_in(unit, PUSH / GRAVITY)
