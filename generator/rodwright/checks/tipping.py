"""Can a unit tip over: freestanding, or built in and not yet fixed?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, weight_in
from rodwright.checks.rules import Rule
from rodwright.strength.restraint import FIXING, IN_MASONRY, IN_STUDS, IN_UNIT
from rodwright.strength.results import Result
from rodwright.strength.storage import scope_of
from rodwright.strength.tipping import (
    ALONE,
    BY_ITSELF,
    CLIMBED,
    CLIMBED_SHELVES,
    CLOTHED,
    DOORS_OPEN,
    PULLED,
)
from rodwright.strength.tipping import tipping as tipping_of
from rodwright.trade.stability import CHILD, FIX_FROM, NEWTON, PULL
from rodwright.unit import Role, Slide, Unit
from rodwright.unit.facts import is_on_feet

_FIX = "Fix it to the wall, with brackets or straps that suit it; follow local rules."


def tipping(unit: Unit) -> Iterator[Finding]:
    """Warnings of a freestanding unit that tips over, and a caution of one that is built in and
    tips until it is fixed."""
    results: dict[str, Result] = {}
    for each in tipping_of(unit):
        worse = each.what in results and results[each.what].holds
        if each.what not in results or (worse and not each.holds):
            results[each.what] = each
    if not results:
        return
    if unit.opening is not None:
        yield from _until_fixed(unit, results)
        return
    opens = list(_opened(unit, results))
    yield from opens or _tall(unit, results)


def _opened(unit: Unit, results: Mapping[str, Result]) -> Iterator[Finding]:
    """It tips with its drawers or its doors open: by itself, under a load, under a child; told of
    what tips it, or of all that opens."""
    drawers = any(isinstance(each, Slide) for each in unit.motions)
    opens = dict.fromkeys(ref for each in unit.motions for ref in each.refs)
    rule = Rule.TIPS_WITH_DRAWERS_OUT if drawers else Rule.TIPS_WITH_DOORS_OPEN
    named = [*_all_that_fail(results, BY_ITSELF), *_all_that_fail(results, DOORS_OPEN)]
    every = "every drawer is drawn out" if drawers else "every door stands open"
    if named:
        filled = named[0].what.rpartition(", ")[2]
        said = f"freestanding, {filled}, it tips over by its own weight when {every}"
        yield _warning(unit, rule, named[0], said, results, opens)
        return
    for result in _all_that_fail(results, ALONE):
        load = weight_in(unit, max(result.figure or 0.0, 0.0), 1)
        said = f"freestanding, {load} on the front of {result.subject} tips it over"
        yield _warning(unit, rule, result, said, results, opens)
        return
    for result in _all_that_fail(results, CLIMBED):
        load = weight_in(unit, max(result.figure or 0.0, 0.0), 1)
        said = f"freestanding on a carpet, with all that opens open, {load} on the front of one "
        yield _warning(unit, rule, result, f"{said}tips it over", results, opens)


def _tall(unit: Unit, results: Mapping[str, Result]) -> Iterator[Finding]:
    """A pull at the top of what is high, or a child on a shelf of it, tips it; or it is fixed
    whatever its figures, unless it is worked at."""
    pulled, height = results[PULLED], unit.size[1]
    if height <= FIX_FROM.value:
        return
    at = next(each.value for each in pulled.inputs if each.symbol == "H")
    pull = weight_in(unit, max(pulled.figure or 0.0, 0.0), 1)
    said = f"a level pull of {pull} at {length_in(unit, at)}"
    tips = [(pulled, f"{said} does it")] if not pulled.holds else []
    for climbed in _all_that_fail(results, CLIMBED_SHELVES):
        load = weight_in(unit, max(climbed.figure or 0.0, 0.0), 1)
        child = weight_in(unit, CHILD.value)
        on_it = f"on a carpet, {load} on the front of a shelf does it, and a child weighs {child}"
        tips.append((climbed, on_it))
    if tips:
        does = "; ".join(each for _, each in tips)
        said = f"a freestanding unit {length_in(unit, height)} high can tip over: {does}"
        yield _warning(unit, Rule.TALL_AND_FREESTANDING, tips[0][0], said, results)
        return
    asked = weight_in(unit, PULL.value, 1)
    yield Finding(
        Severity.NOTE,
        Rule.TALL_AND_FREESTANDING,
        f"a freestanding unit {length_in(unit, height)} high: it takes {said} to tip it, {asked} "
        f"is asked{_tests(unit, results)}",
        _nevertheless(unit, results),
        figure=height,
        limit=FIX_FROM.value,
        source=str(FIX_FROM.source),
    )


def _nevertheless(unit: Unit, results: Mapping[str, Result]) -> str:
    """What is done about a high unit that stands what it is tried with."""
    if any(part.role is Role.WORKTOP for part in unit.parts):
        return (
            "It is worked at, and stands what it was tried with: it may stand free. Where children "
            f"can climb it, fix it to the wall. {_holding(unit, results)}"
        )
    return (
        f"{_FIX} Storage higher than {length_in(unit, FIX_FROM.value)} is fixed whatever its "
        f"figures. {_holding(unit, results)}{_hung(unit)}"
    )


def _hung(unit: Unit) -> str:
    """A hint for what may hang: what has a base, or is worked at, stands."""
    stands = any(part.role in {Role.PLINTH, Role.LEG, Role.WORKTOP} for part in unit.parts)
    return "" if stands or is_on_feet(unit) else " If it hangs on the wall, write `hung: true`."


def _tests(unit: Unit, results: Mapping[str, Result]) -> str:
    """Which published test is meant for the unit, if one is, and what it fails of that."""
    if not scope_of(unit).within:
        return ""
    clothes = any(
        "clothes" in load.said.casefold() and not load.assumed for load in unit.loading.loads
    )
    asked = (
        (CLOTHED, "clothing in its drawers, all out"),
        (PULLED, f"a pull of {weight_in(unit, PULL.value, 1)} at its top"),
        (CLIMBED, f"a child of {weight_in(unit, CHILD.value)} on what is open"),
    )
    fails = [
        f"{said} ({_borne(unit, results[what])})"
        for what, said in asked
        if what in results and not results[what].holds
    ]
    where = "" if clothes else " if clothing may be kept in it"
    verdict = f"it fails {', '.join(fails)}" if fails else "by these figures it stands all of it"
    return f"; ASTM F2057-23 applies (16 CFR 1261){where}: {verdict}"


def _borne(unit: Unit, result: Result) -> str:
    """What it stands of what it fails."""
    if result.measure == "kg" and (result.figure or 0.0) > 0:
        return f"it stands {weight_in(unit, result.figure or 0.0, 1)}"
    return "it falls by itself"


def _until_fixed(unit: Unit, results: Mapping[str, Result]) -> Iterator[Finding]:
    """What tips a unit that is built in, before it is fixed."""
    falls = [*_all_that_fail(results, BY_ITSELF), *_all_that_fail(results, DOORS_OPEN)]
    pulled = results[PULLED]
    if not falls and pulled.holds:
        return
    if falls:
        open_ones = "drawers out" if falls[0].what.startswith(BY_ITSELF) else "doors open"
        said = f"it tips over by its own weight with its {open_ones}"
        short = f"with its {open_ones} it tips"
    else:
        short = f"a pull of {weight_in(unit, pulled.figure or 0.0, 1)} at its top tips it"
        said = f"a level pull of {weight_in(unit, pulled.figure or 0.0, 1)} at its top tips it over"
    worst = falls[0] if falls else pulled
    yield Finding(
        Severity.CAUTION,
        Rule.TIPS_UNTIL_FIXED,
        f"until it is fixed to the wall, {said}",
        "Have it held until it is fixed, and put in drawers, doors and contents after that.",
        figure=worst.figure,
        limit=worst.limit,
        measure=worst.measure,
        source=str(worst.source),
        brief=f"Until it is fixed: have it held; {short}.",
    )


def _all_that_fail(results: Mapping[str, Result], begins: str) -> list[Result]:
    return [each for what, each in results.items() if what.startswith(begins) and not each.holds]


def _fixings(results: Mapping[str, Result]) -> Iterator[str]:
    """How many of what a fixing to the wall takes."""
    yield from (each.what for each in results[FIXING].remedies if each.figure > 0)
    walls = {IN_MASONRY: "plugs in masonry", IN_STUDS: "screws in studs"}
    some = [f"{results[what].figure:.0f} {said}" for what, said in walls.items() if what in results]
    if some:
        yield " or ".join(some)
    if IN_UNIT in results:
        own = results[IN_UNIT]
        yield f"{own.figure:.0f} screws in {own.parts[0]}"


def _holding(unit: Unit, results: Mapping[str, Result]) -> str:
    """What a fixing to the wall has to hold, and what it takes."""
    fixing = results[FIXING]
    force = fixing.figure or 0.0
    at, worst = (
        next(each.value for each in fixing.inputs if each.symbol == symbol)
        for symbol in ("z", "T1")
    )
    least = " (what restraints are tried with)" if worst < force else ""
    more = f": {', '.join(_fixings(results))}"
    if unit.loading.wall == "plasterboard":
        more += f"; {fixing.notes[0]}"
    held = weight_in(unit, force * NEWTON)
    return f"At {length_in(unit, at)} the fixing has to hold {held}{least}{more}."


def _warning(
    unit: Unit,
    rule: Rule,
    result: Result,
    said: str,
    results: Mapping[str, Result],
    opens: Iterable[str] = (),
) -> Finding:
    """A warning of a result, with all that would help, by its figures; where the result is of no
    part, of the parts that ``opens`` names."""
    fixing = results[FIXING]
    others = [each.what for each in fixing.remedies if not each.figure]
    instead = f" It would do without if it had {', or '.join(others)}." if others else ""
    hung = _hung(unit) if rule is Rule.TALL_AND_FREESTANDING else ""
    return Finding(
        Severity.WARNING,
        rule,
        f"{said}{_tests(unit, results)}",
        f"{_FIX} {_holding(unit, results)}{instead}{hung}",
        result.parts or tuple(opens),
        result.figure,
        result.limit,
        result.measure,
        f"{result.source}; {result.limit_source}" if result.limit_source else str(result.source),
    )
