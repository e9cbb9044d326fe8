"""Can what the unit stands on follow the floor?  It stands on the floor's high spot."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in
from rodwright.checks.rules import Rule
from rodwright.opening.floor import floor_fall
from rodwright.opening.gaps import Gap
from rodwright.trade.gaps import BATTEN_LIMIT, NEGLIGIBLE
from rodwright.unit import Unit
from rodwright.unit.facts import carcass_size, plinth_boards

_SOURCE = "the readings, and `base`"


def levelling(unit: Unit) -> Iterator[Finding]:
    """The floor's fall under the unit against what its base can follow, and what is packed."""
    if unit.levelling is None:
        return
    plinth = plinth_boards(unit)
    if unit.opening is None or unit.opening.shape is None:
        if plinth and unit.levelling:
            yield Finding(
                Severity.NOTE,
                Rule.PLINTH_PACKED_UP,
                f"the plinth stands on the floor's high spot, and may be packed up to "
                f"{length_in(unit, unit.levelling)} off the low side",
                "Level it first, and fix the carcass to it once it lies true.",
                figure=unit.levelling,
                source="`base.levelling`",
            )
        return
    fall = floor_fall(unit)
    likely, most = (length_in(unit, each) for each in (fall.gap, fall.most))
    if fall.gap > unit.levelling + NEGLIGIBLE:
        yield Finding(
            Severity.WARNING,
            Rule.BASE_CANNOT_LEVEL,
            f"under the unit the floor falls by {likely} from its high spot (up to {most}), and "
            f"its base levels out {length_in(unit, unit.levelling)}",
            "Give the base more (`base.levelling`, or feet with a larger range), or make the "
            "plinth higher and scribe it to the floor.",
            figure=round(fall.gap, 1),
            limit=unit.levelling,
            source=_SOURCE,
        )
    elif plinth and fall.gap > NEGLIGIBLE:
        yield Finding(
            Severity.NOTE,
            Rule.PLINTH_PACKED_UP,
            f"the plinth stands on the floor's high spot and is packed up by {likely} (up to "
            f"{most}) {_where(unit, fall)}, of the {length_in(unit, unit.levelling)} allowed",
            "Level it first, and fix the carcass to it once it lies true; a strip in front covers "
            "the gap under it."
            + (" Pack it on a batten, not on packers alone." if fall.gap > BATTEN_LIMIT else ""),
            figure=round(fall.gap, 1),
            limit=unit.levelling,
            source=_SOURCE,
        )


def _where(unit: Unit, gap: Gap) -> str:
    third = carcass_size(unit)[0] / 3
    if gap.at < third:
        return "at the left"
    return "at the right" if gap.at > 2 * third else "in the middle"
