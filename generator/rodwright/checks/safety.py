"""The usual cautions: drilling into walls, glass, dust."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.opening.cautions import SERVICES
from rodwright.trade.materials import is_glass
from rodwright.unit import Unit


def safety(unit: Unit) -> Iterator[Finding]:
    """Cautions that go with the unit's place and materials."""
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
