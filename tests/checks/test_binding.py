"""Fronts of solid wood that swell shut, by the Wood Handbook's coefficients (table 13-5).

European oak goes with the white oaks: 0.00365 of its width a per cent flat-sawn, 0.00180
quarter-sawn; over the default range, from 6 to 12 %, 0.0219 and 0.0108 of it.
"""

from __future__ import annotations

import pytest

from kit.specs import of_role, unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.unit import JointKind, Role, Unit

FLAT, QUARTER = 0.00365 * 6, 0.00180 * 6
TEXT = """
size: {{width: 500, height: {height}, depth: 500}}
interior:
  drawers: {{count: {count}, front_stock: front, bottom: {{stock: thin}}, {more}}}
back: {{stock: thin}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}}
  thin: {{kind: sheet, material: birch plywood, thickness: 6, size: [2440, 1220]}}
  front: {{kind: {kind}, material: {material}, thickness: 22{sawn}}}
"""


def _unit(
    height: float = 312.0,
    count: int = 1,
    more: str = "",
    kind: str = "board",
    material: str = "european oak",
    sawn: str = "",
) -> Unit:
    return unit_from(
        TEXT.format(height=height, count=count, more=more, kind=kind, material=material, sawn=sawn)
    )


def _binds(unit: Unit) -> list[Finding]:
    return [each for each in check_parts(unit) if each.rule is Rule.FRONT_SWELLS_SHUT]


def _above_its_screws(unit: Unit, number: int = 0) -> float:
    """From the row of screws that holds a front up to its upper edge."""
    front = of_role(unit, Role.DRAWER_FRONT)[number]
    (joint,) = (
        each for each in unit.joints if each.kind is JointKind.BUTTONED and each.second == front.ref
    )
    return front.bounds().high[2] - joint.at[2]


def test_a_high_inset_front_of_oak_swells_shut() -> None:
    """A front 273 high with 1.5 above and below it grows 273 x 0.0219 = 6.0, most of it upwards
    from its lower screws: the box stands 12 over the front's edge, its bottom ends 16 above that,
    and the screws are 15 above the bottom."""
    unit = _unit(more="gap: 1.5")
    (front,) = of_role(unit, Role.DRAWER_FRONT)
    assert front.blank.width == pytest.approx(273.0)
    assert _above_its_screws(unit) == pytest.approx(273 - 12 - 16 - 15)
    (found,) = _binds(unit)
    assert (found.severity, found.rule) == (Severity.WARNING, Rule.FRONT_SWELLS_SHUT)
    assert found.figure == pytest.approx(230 * FLAT)
    assert found.limit == pytest.approx(1.5)
    assert "swells 5 mm into its gap of 1.5 mm to Top (TP1)" in found.message
    assert "13-5" in found.source
    # The remedies' figures: 5.04 up to the next half millimetre, and 230 x 0.0108 = 2.48.
    assert "gap of 5.5 mm" in found.remedy
    assert "`sawn: quarter`" in found.remedy and "leave 2.5 mm" in found.remedy
    assert "sheet" in found.remedy


def test_what_the_remedies_say_helps() -> None:
    assert not _binds(_unit(more="gap: 5.5"))
    assert not _binds(_unit(more="gap: 2.5", sawn=", sawn: quarter"))
    assert not _binds(_unit(more="gap: 1.5", kind="sheet", material="oak plywood"))


def test_fronts_one_above_the_other_share_their_gap() -> None:
    """Each grows upwards towards the one above it, and that one a little downwards."""
    unit = _unit(height=915, count=3, more="gap: 2")
    upper, middle, lower = of_role(unit, Role.DRAWER_FRONT)
    high = upper.blank.width
    up = _above_its_screws(unit)
    found = {each.parts: each for each in _binds(unit)}
    assert set(found) == {(upper.ref,), (upper.ref, middle.ref, lower.ref)}
    assert found[(upper.ref,)].figure == pytest.approx(up * FLAT)
    assert found[upper.ref, middle.ref, lower.ref].figure == pytest.approx(high * FLAT)


@pytest.mark.parametrize(("hung", "edges"), [("inset", 2), ("overlay", 1)])
def test_overlay_fronts_bind_only_between_each_other(hung: str, edges: int) -> None:
    """Nothing is above the upper one."""
    unit = _unit(height=600, count=2, more=f"gap: 2, hung: {hung}")
    assert len(_binds(unit)) == edges


def test_a_front_on_a_box_of_the_same_wood_swells_with_it_from_its_runners() -> None:
    unit = _unit(more="gap: 2, stock: front, slides: {kind: runners}")
    (found,) = _binds(unit)
    (front,) = of_role(unit, Role.DRAWER_FRONT)
    # The box stands on the floor of its space, 2 below the front.
    assert found.figure == pytest.approx((front.bounds().high[2] - 18.0) * FLAT)


def test_the_moisture_decides() -> None:
    """230 mm above the screws close 1.5 at 1.5 / 230 / 0.00365 = 1.787 % more."""
    for most, shut in ((7.78, False), (7.79, True)):
        text = TEXT.format(
            height=312, count=1, more="gap: 1.5", kind="board", material="european oak", sawn=""
        )
        unit = unit_from(text + f"moisture: {{least: 6, most: {most}}}\n")
        assert bool(_binds(unit)) is shut


def test_a_door_hung_beside_another_doors_hinges_has_its_own_swelling_only() -> None:
    """Two overlay slabs hung at the left: the right one's hinges hold the edge at their gap.

    By hand: a carcass 800 wide with a divider; each door is 399 - 1 - 1 = 398 wide, and closes
    398 x 0.0219 = 8.72 of the gap of 2 at its right, the right one none at all.
    """
    unit = unit_from(
        "size: {width: 800, height: 600, depth: 400}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "  oak: {kind: board, material: european oak, thickness: 22}\n"
        "interior:\n"
        "  columns:\n"
        "    - {width: 1 share, doors: {hung: overlay, stock: oak}}\n"
        "    - {width: 1 share, doors: {hung: overlay, stock: oak}}\n"
    )
    (found,) = _binds(unit)
    left = of_role(unit, Role.DOOR)[0]
    assert found.figure == pytest.approx(left.blank.width * FLAT)
    assert f"gap of {9:g} mm" in found.remedy and QUARTER < FLAT
