"""Do shelves, tops, bottoms, rails and worktops break, or tear their pins out?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named, past_limit, stress_in
from rodwright.checks.rules import Rule
from rodwright.checks.sagging import said_load, would_do
from rodwright.strength.levels import levels
from rodwright.strength.pin_results import HOLES, PRESSED, TEARS
from rodwright.strength.results import Result
from rodwright.strength.stresses import BENDS, SHEARS
from rodwright.unit import Unit

_BREAKS = {BENDS: "is stressed in bending by", SHEARS: "is stressed in shear by"}
_PINS = {
    HOLES: "presses the wood round its pins' holes with",
    TEARS: "pulls at the wood below its pins' holes with",
    PRESSED: "is pressed by its pins with",
}
_MORE_PINS = (
    "Use thicker pins in deeper holes (`shelves.holes`: `diameter`, `depth`), fix the shelf "
    "(`fixed: true`), or put less on it: it bears {share} % of this."
)


def breaking(unit: Unit) -> Iterator[Finding]:
    """A finding for each level that may break, and for each whose pins or their holes give."""
    for result in levels(unit):
        if result.holds or result.figure is None or result.limit is None:
            continue
        if result.what in _BREAKS:
            yield _breaks(unit, result, result.figure, result.limit)
        elif result.what in _PINS:
            yield _tears(unit, result, result.figure, result.limit)


def _breaks(unit: Unit, result: Result, figure: float, limit: float) -> Finding:
    under = said_load(unit, result)
    stress, most = past_limit(figure, limit, lambda each: stress_in(unit, each))
    helps = would_do(unit, result)
    return Finding(
        Severity.ERROR,
        Rule.BREAKS,
        f"{named(unit.part(result.parts[0]))} may break: it {_BREAKS[result.what]} "
        f"{stress}{under}; {most} is what it may be",
        helps,
        result.parts,
        result.figure,
        result.limit,
        "N/mm2",
        str(result.limit_source),
        case=(result.what, under, helps),
    )


def _tears(unit: Unit, result: Result, figure: float, limit: float) -> Finding:
    under = said_load(unit, result)
    pin = next(each.value for each in result.inputs if each.symbol == "d")
    share = int(limit / figure * 100)
    stress, most = past_limit(figure, limit, lambda each: stress_in(unit, each))
    part = named(unit.part(result.parts[0]))
    return Finding(
        Severity.ERROR,
        Rule.PINS_TEAR_OUT,
        f"{part} {_PINS[result.what]} {stress}{under}, on "
        f"pins of {length_in(unit, pin)}; {most} is what that bears",
        _MORE_PINS.format(share=share),
        result.parts[:-1],
        figure,
        limit,
        "N/mm2",
        str(result.limit_source),
        case=(result.what, under, pin),
    )
