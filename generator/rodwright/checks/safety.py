"""The usual cautions: lifting, tipping, drilling into walls, dust."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.wording import length_in, named
from rodwright.mass import unit_weight, weight
from rodwright.parts import Unit

TWO_PERSON_LIFT = 25.0
"""Weight (kg) from which two people lift: the figure for men lifting close to the body at waist
height in the UK's HSE INDG143 (from memory).  A guideline, not a safe limit."""
TIPPING_HEIGHT = 600.0
"""Height (mm) from which a freestanding unit is fixed to the wall (common practice; the concern of
ASTM F2057 and EN 14749, from memory)."""


def safety(unit: Unit) -> Iterator[Finding]:
    """Cautions that go with the unit's weight, height, place and materials."""
    yield from _lifting(unit)
    height = unit.size[1]
    if unit.opening is None and height > TIPPING_HEIGHT:
        yield Finding(
            Severity.WARNING,
            "tipping",
            f"a freestanding unit {length_in(unit, height)} high can tip over",
            "Fix it to the wall with brackets or straps that suit the wall; follow local rules.",
            figure=height,
            limit=TIPPING_HEIGHT,
            source="common practice; see ASTM F2057, EN 14749 (from memory)",
        )
    if unit.opening is not None:
        yield Finding(
            Severity.NOTE,
            "walls",
            "before drilling into a wall, find the cables and pipes in it",
            "Leave wiring, pipes and anything structural to licensed people; follow local codes.",
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
