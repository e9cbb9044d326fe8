"""How many people lift what is heavy: sheets as bought, parts, doors, drawers, the whole unit."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import weight_in
from rodwright.checks.rules import Rule
from rodwright.strength.lifting import lifting as lifting_of
from rodwright.strength.pieces import STRIPPED, WHOLE
from rodwright.strength.results import Result
from rodwright.trade.lifting import people
from rodwright.unit import Unit


def lifting(unit: Unit) -> Iterator[Finding]:
    """Cautions of what more than one person lifts, by the NIOSH equation, with the HSE's filter."""
    heavy = [each for each in lifting_of(unit) if not each.holds]
    sheets = [each for each in heavy if " as bought, " in each.subject]
    parts = [each for each in heavy if each.parts]
    yield from _heaviest(unit, Rule.HEAVY_SHEET, sheets, "Use a carrier or a truck.")
    yield from _heaviest(
        unit, Rule.HEAVY_PART, parts, "Have so many lift each; hold glass with suction lifters."
    )
    wholes = {each.subject: each for each in heavy if not each.parts}
    if WHOLE in wholes:
        yield _whole(unit, wholes[WHOLE], wholes.get(STRIPPED))


def _heaviest(unit: Unit, rule: Rule, heavy: Sequence[Result], remedy: str) -> Iterator[Finding]:
    """The heaviest of some pieces, and how many others take more than one person."""
    if not heavy:
        return
    first = max(heavy, key=lambda each: each.figure or 0.0)
    refs = [ref for each in heavy for ref in each.parts]
    others = max(len(refs), len(heavy)) - 1
    weighs = weight_in(unit, first.figure or 0.0)
    short = first.parts[0] if first.parts else first.subject.partition(" as bought")[0]
    brief = f"; {_more(rule, others)}" if others else ""
    count = next(int(each.value) for each in first.inputs if each.symbol == "n")
    more = f", and {_more(rule, others)} that one person doesn't lift" if others else ""
    yield Finding(
        Severity.CAUTION,
        rule,
        f"{first.subject} weighs {weighs}{more}; {first.notes[0]}",
        remedy,
        first.parts,
        first.figure,
        first.limit,
        first.measure,
        str(first.limit_source),
        brief=f"Lifting: {short} weighs {weighs}{f': {people(count)}' if count else ''}{brief}.",
    ).likewise(refs)


def _more(rule: Rule, others: int) -> str:
    """How many others, and of what."""
    kind = "sheet" if rule is Rule.HEAVY_SHEET else "part"
    return f"{others} more {kind}{'' if others == 1 else 's'}"


def _whole(unit: Unit, whole: Result, stripped: Result | None) -> Finding:
    """The whole, and what is left of it without what comes off."""
    weighs = weight_in(unit, whole.figure or 0.0)
    left = ""
    if stripped is not None:
        left = (
            f" Without doors, drawers, loose shelves and what is fitted round it, "
            f"{weight_in(unit, stripped.figure or 0.0)} are left: {stripped.notes[0]}."
        )
    return Finding(
        Severity.CAUTION,
        Rule.HEAVY_UNIT,
        f"the whole unit weighs {weighs}; {whole.notes[0]}",
        f"Assemble it where it will stand, or bring it in on skates or a sack truck.{left}",
        (),
        whole.figure,
        whole.limit,
        whole.measure,
        str(whole.limit_source),
        brief=f"Lifting: the whole weighs {weighs}; assemble it where it will stand.",
    )
