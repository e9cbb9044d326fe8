"""What is written of the way in and can't be right is named with its place and a remedy."""

from __future__ import annotations

import pytest

from kit.specs import problems_of, unit_from
from rodwright.unit.way import Corner, Doorway, Mouth, WayIn

OPENING = "opening: {width: 1209, height: 2027, depth: 318}\n"
FREE = "size: {width: 800, height: 1000, depth: 300}\n"


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        (FREE + "way_in: {doors: [{width: 76, height: 1980}]}", "way_in.doors.0.width: 76 mm"),
        (FREE + "way_in: {doors: [{width: 760, height: 198}]}", "way_in.doors.0.height: 198 mm"),
        (FREE + "way_in: {corners: [{before: 900, after: 85}]}", "way_in.corners.0.after: 85 mm"),
        (FREE + "way_in: {ceiling: 240}", "way_in.ceiling: 240 mm can't be a ceiling"),
        (FREE + "way_in: {skirting: {height: 120, thickness: 18}}", "way_in.skirting: `skirting`"),
        (OPENING + "way_in: {mouth: {thickness: 25}}", "way_in.mouth: a mouth needs"),
        (OPENING + "way_in: {mouth: {width: 1300, thickness: 25}}", "way_in.mouth.width: "),
        (OPENING + "way_in: {mouth: {width: 1100, thickness: 400}}", "way_in.mouth.thickness: "),
        (
            OPENING + "way_in: {skirting: {height: 18, thickness: 620}}",
            "way_in.skirting.thickness: skirting 620 mm thick",
        ),
    ],
)
def test_what_cannot_be(text: str, problem: str) -> None:
    (found,) = problems_of(text)
    assert found.startswith(problem)


def test_what_can_be() -> None:
    unit = unit_from(
        OPENING + "way_in: {ceiling: 2.4 m, hands: 0, doors: [{width: 760, height: 1980}], "
        "corners: [{before: 900, after: 850}], mouth: {width: 1180, thickness: 25}}"
    )
    assert unit.way_in == WayIn(
        2400.0,
        (Doorway(760.0, 1980.0),),
        (Corner(900.0, 850.0, 2400.0),),
        mouth=Mouth(1180.0, None, 25.0),
        hands=0.0,
    )
