"""The usual cautions: lifting, drilling into walls, dust."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import named
from rodwright.mass import unit_weight, weight
from rodwright.parts import Unit

TWO_PERSON_LIFT = 25.0
"""Weight (kg) from which two people lift: the figure for men lifting close to the body at waist
height in the UK's HSE INDG143 (from memory).  A guideline, not a safe limit."""


def safety(unit: Unit) -> Iterator[Finding]:
    """Cautions that go with the unit's weight, place and materials."""
    yield from _lifting(unit)
    if unit.opening is not None:
        yield Finding(
            Severity.NOTE,
            "walls",
            "before drilling into a wall, find the cables and pipes in it",
            "Leave wiring, pipes and anything structural to licensed people; follow local codes.",
            measure="",
        )
    for service, who in (("socket", "electrician"), ("pipe", "plumber")):
        if service in unit.services:
            yield Finding(
                Severity.NOTE,
                "services",
                f"a {service} stays where the unit is cut out round it",
                f"Leave it in reach, and leave work on it to a licensed {who}; turn the supply off "
                "before you cut or drill near it, and follow local codes.",
                measure="",
            )
    stocks = [part.blank.stock for part in unit.parts]
    dusty = sorted({stock.material for stock in stocks if stock.kind == "sheet"})
    if dusty:
        yield Finding(
            Severity.NOTE,
            "dust",
            f"cutting {' and '.join(dusty)} makes fine dust that harms the lungs",
            "Extract it at the saw and wear a fitted mask.",
            measure="",
        )


def _lifting(unit: Unit) -> Iterator[Finding]:
    whole = unit_weight(unit)
    source = "HSE INDG143, guideline figure (from memory)"
    heavy = [part for part in unit.parts if weight(part) > TWO_PERSON_LIFT]
    for part in heavy:
        yield Finding(
            Severity.NOTE,
            "lifting",
            f"{named(part)} weighs {weight(part):.0f} kg",
            "Have two people lift it.",
            (part.ref,),
            weight(part),
            TWO_PERSON_LIFT,
            "kg",
            source,
        )
    if whole > TWO_PERSON_LIFT:
        yield Finding(
            Severity.NOTE,
            "lifting",
            f"the whole unit weighs {whole:.0f} kg",
            "Assemble it where it will stand, or lift it with enough people.",
            (),
            whole,
            TWO_PERSON_LIFT,
            "kg",
            source,
        )
