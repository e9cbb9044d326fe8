"""What a unit that hangs asks of its fixings, by the wall; and of the back it hangs by."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import weight_in
from rodwright.checks.rules import Rule
from rodwright.strength.back_ties import TIED
from rodwright.strength.hanging import (
    BACK_BENDS,
    CARRIES,
    PULL,
    PULLED_THROUGH,
)
from rodwright.strength.hanging import hanging as worked_out
from rodwright.strength.hanging_fixings import IN_MASONRY, IN_PLASTERBOARD, IN_STUDS
from rodwright.strength.paths import GRAVITY
from rodwright.strength.results import Result
from rodwright.trade.wall_fixings import BOARD_FAILS, PLUG, SCREW
from rodwright.unit import Unit

_JUDGED = "The wall is for a builder or engineer to judge; follow local codes."
_GIVES = {
    BACK_BENDS: "it hangs by its back, which is bent round its fixings by",
    PULLED_THROUGH: "it hangs by its back, and the head of each fixing is pulled with",
    TIED: "the screws that tie its back to the case are used to this share of what they may carry:",
}


def wall_fixings(unit: Unit) -> Iterator[Finding]:
    """Findings about how a unit is fixed to the wall that it hangs on."""
    found = {result.what: result for result in worked_out(unit)}
    if not found:
        return
    pull = found[PULL].figure or 0.0
    if IN_PLASTERBOARD in found:
        yield _refused(unit, found[IN_PLASTERBOARD])
    elif unit.loading.wall is None:
        yield _asked(unit, found, pull)
    else:
        result = found[IN_MASONRY] if IN_MASONRY in found else found[IN_STUDS]
        yield _needed(unit, result, pull) if result.holds else _too_few(unit, result, pull)
    if not found[CARRIES].holds:
        yield _heavy(unit, found[CARRIES])
    for what in _GIVES:
        if what in found and not found[what].holds:
            yield _gives(found[what])


def _refused(unit: Unit, result: Result) -> Finding:
    each = (result.figure or 0.0) / GRAVITY
    return Finding(
        Severity.ERROR,
        Rule.PLASTERBOARD_ALONE,
        f"it hangs in plasterboard alone: each fixing at its top would be pulled with "
        f"{weight_in(unit, each, 1)}, for years, and the board breaks round any fixing",
        f"Fix it into studs (`wall: studs`) or noggings put in behind the board, or stand it on "
        f"the floor. {_JUDGED}",
        figure=each,
        limit=0.0,
        measure="kg",
        source=str(BOARD_FAILS.source),
    )


def _pulled(unit: Unit, pull: float) -> str:
    return f"it is pulled off the wall at its top with {weight_in(unit, pull / GRAVITY)} in all"


def _asked(unit: Unit, found: dict[str, Result], pull: float) -> Finding:
    plugs, screws = found[IN_MASONRY], found[IN_STUDS]
    fit = "" if screws.holds else f", but only {screws.limit:.0f} surely meet a stud"
    return Finding(
        Severity.NOTE,
        Rule.WALL_NOT_SAID,
        f"{_pulled(unit, pull)}; what the wall is isn't said: masonry takes "
        f"{plugs.figure:.0f} plugs at the top that carry {weight_in(unit, PLUG.value / GRAVITY)} "
        f"each, studs {screws.figure:.0f} screws of {_screw()}{fit}; as many more at the bottom",
        "Write `wall: masonry` or `wall: studs`; plasterboard alone carries no cabinet.",
        figure=pull / GRAVITY,
        measure="kg",
        source=f"statics; {PLUG.source}",
    )


def _needed(unit: Unit, result: Result, pull: float) -> Finding:
    what = "plugs" if result.what == IN_MASONRY else f"screws of {_screw()} in studs"
    return Finding(
        Severity.NOTE,
        Rule.HANGING,
        f"{_pulled(unit, pull)}: that takes {result.figure:.0f} {what} there, as many more at the "
        f"bottom, and there is room for {result.limit:.0f}",
        f"{result.notes[1][0].upper()}{result.notes[1][1:]}. {_JUDGED}",
        figure=result.figure,
        limit=result.limit,
        measure="fixings",
        source=str(result.limit_source),
    )


def _too_few(unit: Unit, result: Result, pull: float) -> Finding:
    what = "plugs" if result.what == IN_MASONRY else f"screws of {_screw()} in studs"
    helps = "; or ".join(each.what for each in result.remedies if each.holds)
    return Finding(
        Severity.ERROR,
        Rule.TOO_FEW_FIXINGS_FIT,
        f"{_pulled(unit, pull)}: that takes {result.figure:.0f} {what}, and only "
        f"{result.limit:.0f} surely fit behind it",
        f"It takes {helps}. {_JUDGED}" if helps else f"Make it lighter, or two. {_JUDGED}",
        figure=result.figure,
        limit=result.limit,
        measure="fixings",
        source=str(result.limit_source),
    )


def _heavy(unit: Unit, result: Result) -> Finding:
    weighs, tested = (weight_in(unit, each or 0.0) for each in (result.figure, result.limit))
    return Finding(
        Severity.WARNING,
        Rule.HEAVIER_THAN_TESTED,
        f"it hangs with {weighs} in all, and wall cabinets are tried with {tested}",
        "Make two of it, put less in it, or stand it on the floor.",
        figure=result.figure,
        limit=result.limit,
        measure="kg",
        source=str(result.limit_source),
    )


def _gives(result: Result) -> Finding:
    helps = "; or ".join(
        f"{each.what}: {each.figure:.2f}" for each in result.remedies if each.holds
    )
    more = f"Take {helps}." if helps else "Take a thicker `back.stock`, with more screws."
    unit = f" {result.measure}" if result.measure else ""
    return Finding(
        Severity.ERROR,
        Rule.HUNG_BACK_GIVES,
        f"{_GIVES[result.what]} {result.figure:.2f}{unit}; {result.limit:.2f} is the most",
        more,
        result.parts,
        result.figure,
        result.limit,
        result.measure,
        str(result.limit_source),
        case=(result.what,),
    )


def _screw() -> str:
    diameter, length = SCREW
    return f"{diameter:g} x {length:g} mm"
