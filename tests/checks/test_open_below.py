"""A raised bottom behind a face frame: no front opens onto a hole under it."""

from __future__ import annotations

import pytest

from kit.specs import of_role, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.unit import Role, Unit

TEXT = """
size: {{width: 800, height: 900, depth: 400}}
carcass: {{stock: ply, bottom_height: {height}}}
face_frame: {{stock: ash, width: 45, corners: {corners}, rails: {rails}}}
interior: {fronts}
"""
DOORS, DRAWERS = "{doors: {stock: ash}}", "{drawers: {count: 2}}"


def _unit(
    height: float, corners: str, fronts: str = "{shelves: {count: 1}}", rails: str = "both"
) -> Unit:
    return unit_from(TEXT.format(height=height, corners=corners, fronts=fronts, rails=rails))


def _holes(unit: Unit) -> list[Finding]:
    return [each for each in check_parts(unit) if each.rule is Rule.OPEN_BELOW_BOTTOM]


@pytest.mark.parametrize(
    ("height", "width"), [(0, 45), (27, 45), (45, 45), (45.5, 63.5), (100, 118)]
)
@pytest.mark.parametrize("fronts", [DOORS, DRAWERS])
def test_a_butted_rail_follows_the_bottom_and_fronts_stand_on_it(
    height: float, width: float, fronts: str
) -> None:
    """Up to 45 the rail of 45 meets the bottom's edge; above, it reaches to the bottom's upper
    face, 18 higher than its underside, and the front begins 2 above it."""
    unit = _unit(height, "butted", fronts)
    rail = next(part for part in unit.parts if part.name == "Bottom rail")
    assert (rail.blank.width, rail.bounds().low[2]) == (pytest.approx(width), 0.0)
    top = next(part for part in unit.parts if part.name == "Top rail")
    assert top.blank.width == 45
    role = Role.DOOR if fronts == DOORS else Role.DRAWER_FRONT
    lowest = min(part.bounds().low[2] for part in of_role(unit, role))
    assert lowest == pytest.approx(width + 2)
    assert not _holes(unit)
    assert check_solids(unit) == ()


@pytest.mark.parametrize(("height", "open_for"), [(27, 0), (45, 0), (46, 1), (100, 55)])
def test_a_mitred_rail_cannot_follow_and_the_hole_is_told(height: float, open_for: float) -> None:
    found = _holes(_unit(height, "mitred", DOORS))
    assert [each.figure for each in found] == ([pytest.approx(open_for)] if open_for else [])
    for each in found:
        assert (each.severity, each.limit) == (Severity.WARNING, 0.0)
        assert f"{open_for:g} mm stay open" in each.message
        # 45 less 18: rail and bottom are flush at their upper sides.
        assert "butted" in each.remedy and "27 mm" in each.remedy


def test_no_hole_is_told_where_there_is_no_rail() -> None:
    assert not _holes(_unit(100, "butted", rails="top"))
