"""The usual cautions: lifting, drilling into walls, dust."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import named, weight_in
from rodwright.checks.rules import Rule
from rodwright.mass import unit_weight, weight
from rodwright.opening.cautions import SERVICES
from rodwright.trade.materials import is_glass
from rodwright.unit import Unit

TWO_PERSON_LIFT = 25.0
"""Weight (kg) from which two people lift: the figure for men lifting close to the body at waist
height in the UK's HSE INDG143 (from memory).  A guideline, not a safe limit."""


def safety(unit: Unit) -> Iterator[Finding]:
    """Cautions that go with the unit's weight, place and materials."""
    yield from _lifting(unit)
    if unit.opening is not None:
        yield Finding(
            Severity.CAUTION,
            Rule.CABLES_AND_PIPES,
            "before drilling into a wall, find the cables and pipes in it",
            "Leave wiring, pipes and anything structural to licensed people; follow local codes.",
            measure="",
            brief=SERVICES.brief,
        )
    for service, who in (("socket", "electrician"), ("pipe", "plumber")):
        if service in unit.services:
            yield Finding(
                Severity.CAUTION,
                Rule.SERVICES_IN_CUT_OUT,
                f"a {service} stays where the unit is cut out round it",
                f"Leave it in reach, and leave work on it to a licensed {who}; turn the supply off "
                "before you cut or drill near it, and follow local codes.",
                measure="",
                brief=f"The {service}: supply off before cutting near it; work on it is for a "
                f"licensed {who}.",
            )
    stocks = [part.blank.stock for part in unit.parts]
    sheets = {stock.material for stock in stocks if stock.kind == "sheet"}
    if any(is_glass(material) for material in sheets):
        yield Finding(
            Severity.CAUTION,
            Rule.GLASS,
            "glass that breaks in a door or a low shelf cuts",
            "Order it as safety glass, toughened or laminated, cut, drilled and polished by the "
            "glazier; local codes say where it must be.",
            measure="",
            brief="Glass: order safety glass, cut, drilled and polished by the glazier.",
        )
    dusty = sorted(material for material in sheets if not is_glass(material))
    if dusty:
        yield Finding(
            Severity.CAUTION,
            Rule.DUST,
            f"cutting {' and '.join(dusty)} makes fine dust that harms the lungs",
            "Extract it at the saw and wear a fitted mask.",
            measure="",
            brief="Dust: extract it at the saw and wear a fitted mask.",
        )


def _lifting(unit: Unit) -> Iterator[Finding]:
    whole = unit_weight(unit)
    source = "HSE INDG143, guideline figure (from memory)"
    heavy = sorted(
        (part for part in unit.parts if weight(part) > TWO_PERSON_LIFT), key=weight, reverse=True
    )
    if heavy:
        first, *others = heavy
        most = weight_in(unit, weight(first))
        more = f", and {len(others)} more than {weight_in(unit, TWO_PERSON_LIFT)}" if others else ""
        yield Finding(
            Severity.CAUTION,
            Rule.HEAVY_PART,
            f"{named(first)} weighs {most}{more}",
            "Have two people lift each.",
            (first.ref,),
            weight(first),
            TWO_PERSON_LIFT,
            "kg",
            source,
            brief=f"Lifting: {first.ref} weighs {most}{more}; two people lift each.",
        ).likewise(part.ref for part in others)
    if whole > TWO_PERSON_LIFT:
        yield Finding(
            Severity.CAUTION,
            Rule.HEAVY_UNIT,
            f"the whole unit weighs {weight_in(unit, whole)}",
            "Assemble it where it will stand, or lift it with enough people.",
            (),
            whole,
            TWO_PERSON_LIFT,
            "kg",
            source,
            brief=f"Lifting: the whole weighs {weight_in(unit, whole)}; assemble it where it will "
            "stand.",
        )
