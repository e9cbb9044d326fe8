"""What holds a back that is let into the carcass."""

from __future__ import annotations

import math
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.specs import of_role, unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.unit import Fixing, Hole, Joint, JointKind, Role, Unit

SIZE = "size: {width: 800, height: 900, depth: 300}\n"
BACKS = """stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  thin: {kind: sheet, material: birch plywood, thickness: 6}
  rear: {kind: sheet, material: birch plywood, thickness: 9}
  pine: {kind: board, material: pine, thickness: 10}
"""
RULE = Rule.NOTHING_TO_HANG_BY


def _unit(**more: Any) -> Unit:
    return unit_from(SIZE + BACKS, carcass={"stock": "ply"}, **more)


def _rim(unit: Unit) -> list[Joint]:
    case = (Role.SIDE, Role.TOP, Role.BOTTOM)
    return [
        joint
        for joint in unit.joints
        if unit.part(joint.second).role is Role.BACK and unit.part(joint.first).role in case
    ]


def _fixing(joint: Joint) -> Fixing:
    (fixing,) = joint.fixings
    return fixing


def _told(unit: Unit, rule: Rule) -> list[Finding]:
    return [each for each in check_parts(unit) if each.rule == rule]


def test_a_back_in_a_rebate_is_pinned_all_round() -> None:
    """8 of it lie in rebates of 9 with 1 left round it: pins of 1.25 keep three diameters to both
    edges (EN 1995-1-1, table 8.2, from memory), 100 apart at the most."""
    unit = _unit(back={"stock": "thin", "fixing": "rebated"})
    (back,) = of_role(unit, Role.BACK)
    rim = _rim(unit)
    assert [joint.kind for joint in rim] == [JointKind.REBATE] * 4
    for joint in rim:
        pins = _fixing(joint)
        assert (pins.name, pins.size) == ("panel pin", "1.25 x 25 mm")
        upright = unit.part(joint.first).role is Role.SIDE
        length = back.blank.length if upright else back.blank.width
        assert length - 80 - 100 * (pins.count - 1) <= 36


def test_pins_come_in_inches() -> None:
    text = """unit: in
size: {width: 32, height: 36, depth: 12}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 3/4}
  thin: {kind: sheet, material: birch plywood, thickness: 1/4}
"""
    unit = unit_from(text, carcass={"stock": "ply"}, back={"stock": "thin", "fixing": "rebated"})
    assert {_fixing(joint).size for joint in _rim(unit)} == {"1 in"}


@pytest.mark.parametrize("unit_name", ["mm", "in"])
def test_the_back_of_what_hangs_is_screwed_into_its_rebates(unit_name: str) -> None:
    """Screws keep two diameters to the inner face of what they go into, and their holes 3 mm of
    wood to the edge of the back (common practice, no source)."""
    text = f"unit: {unit_name}\n" + "".join(
        line for line in (SIZE + BACKS).splitlines(keepends=True)
    ).replace("800, height: 900, depth: 300", "800 mm, height: 900 mm, depth: 300 mm")
    if unit_name == "in":
        text = text.replace("thickness: 18", "thickness: 3/4").replace(
            "thickness: 9", "thickness: 3/8"
        )
        text = text.replace("thickness: 6", "thickness: 1/4").replace(
            "thickness: 10", "thickness: 3/8"
        )
    more: dict[str, Any] = {"carcass": {"stock": "ply"}, "hung": True}
    unit = unit_from(text, back={"stock": "rear", "fixing": "rebated"}, **more)
    (back,) = of_role(unit, Role.BACK)
    rim = _rim(unit)
    assert len(rim) == 4
    assert {_fixing(joint).name for joint in rim} == {"wood screw"}
    holes = [each for each in back.workings if isinstance(each, Hole)]
    assert len(holes) == sum(_fixing(joint).count for joint in rim)
    for hole in holes:
        x, y = hole.position
        edge = min(x, y, back.blank.length - x, back.blank.width - y)
        assert edge >= hole.diameter / 2 + 3.0 - 1e-6
    thin = 3.0 if unit_name == "mm" else 0.112 * 25.4
    inner = [part.bounds() for part in of_role(unit, Role.SIDE)]
    for hole in holes:
        at = back.placement.to_unit((*hole.position, 0.0))
        into = [max(box.low[0] - at[0], at[0] - box.high[0]) for box in inner]
        if min(into) < 0:
            assert min(into) <= -2 * thin + 1e-6
    assert not _told(unit, RULE)
    assert not _told(unit, Rule.HOLE_NEAR_EDGE)


def test_what_hangs_by_pins_is_told() -> None:
    """A carcass 12 thick has no room for screws in its rebates."""
    text = (SIZE + BACKS).replace("thickness: 18", "thickness: 12")
    back = {"stock": "rear", "fixing": "rebated"}
    unit = unit_from(text, carcass={"stock": "ply"}, back=back, hung=True)
    assert {_fixing(joint).name for joint in _rim(unit)} == {"panel pin"}
    (found,) = _told(unit, RULE)
    assert (found.severity, found.figure, found.limit) == (Severity.WARNING, 0.0, 4.0)
    assert "no screw holds that to the carcass" in found.message


def test_a_grooved_back_that_hangs_is_to_be_glued() -> None:
    unit = _unit(back={"stock": "rear", "fixing": "grooved"}, hung=True)
    assert not _told(unit, RULE)
    (found,) = _told(unit, Rule.BACK_TO_BE_GLUED)
    assert found.remedy == "Glue it into them all round."
    wood = _unit(back={"stock": "pine", "fixing": "grooved"}, hung=True)
    assert _told(wood, RULE)


@pytest.mark.parametrize("split", [False, True])
def test_a_back_of_solid_wood_is_free_to_move(split: bool) -> None:
    """Its grain stands upright: fixed at the middle of its width above and below, and nowhere
    else, it is held across its grain by nothing."""
    unit = _unit(
        back={"stock": "pine", "fixing": "rebated", "split": split, "clearance": 6, "depth": 12},
        interior={"columns": [{"width": "1 share", "shelves": {"count": 1}}, {"width": "1 share"}]},
    )
    backs = {part.ref: part for part in of_role(unit, Role.BACK)}
    fixed = [joint for joint in unit.joints if joint.second in backs and joint.fixings]
    assert len(fixed) == 2 * len(backs)
    for joint in fixed:
        assert unit.part(joint.first).role in (Role.TOP, Role.BOTTOM)
        box = backs[joint.second].bounds()
        assert joint.at[0] == pytest.approx(box.centre[0], abs=3.0)
        assert (joint.kind, _fixing(joint).count) == (JointKind.BUTTONED, 1)
    assert not _told(unit, Rule.HELD_ACROSS_GRAIN)
    assert not _told(unit, Rule.NO_ROOM_TO_SWELL)
    assert not _told(unit, Rule.BACK_SEAM_UNFIXED)


def test_a_back_of_solid_wood_that_hangs_is_told() -> None:
    back = {"stock": "pine", "fixing": "rebated", "clearance": 1}
    assert _told(_unit(back=back, hung=True), RULE)


def test_rebates_that_leave_solid_wood_no_room_are_told() -> None:
    back = {"stock": "pine", "fixing": "rebated", "clearance": 1}
    (found,) = _told(_unit(back=back), Rule.NO_ROOM_TO_SWELL)
    assert "its rebates leave it 2 mm" in found.message


def test_a_rebate_too_shallow_for_pins_is_told() -> None:
    unit = _unit(back={"stock": "thin", "fixing": "rebated", "depth": 5})
    assert not any(joint.fixings for joint in _rim(unit))
    (found,) = _told(unit, Rule.NOTHING_HOLDS_IT)
    assert "too little wood for pins" in found.message


@settings(max_examples=40)
@given(
    carcass=st.integers(12, 30),
    back=st.integers(3, 20),
    width=st.integers(250, 1500),
    hung=st.booleans(),
)
def test_no_rebated_sheet_is_left_unfixed(carcass: int, back: int, width: int, hung: bool) -> None:
    text = f"""size: {{width: {width}, height: 900, depth: 300}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: {carcass}}}
  rear: {{kind: sheet, material: birch plywood, thickness: {back}}}
"""
    wish = {"stock": "rear", "fixing": "rebated"}
    unit = unit_from(text, carcass={"stock": "ply"}, back=wish, hung=hung)
    rim = _rim(unit)
    assert len(rim) == 4
    names = {_fixing(joint).name for joint in rim}
    assert len(names) == 1
    if hung and carcass >= 18:
        assert names == {"wood screw"}
    assert math.isclose(sum(_fixing(joint).count for joint in rim) % 2, 0)
    assert not _told(unit, Rule.NOTHING_HOLDS_IT)


@pytest.mark.parametrize(
    ("columns", "told"),
    [
        ({"columns": [{"width": "1 share"}, {"width": "1 share"}]}, True),
        (
            {
                "rows": [
                    {"height": "1 share", "columns": [{"width": "1 share"}, {"width": "1 share"}]},
                    {"height": "1 share"},
                ]
            },
            False,
        ),
        ({"shelves": {"count": 2}}, False),
    ],
)
def test_a_back_too_wide_for_a_sheet_can_be_split_on_a_divider(
    columns: dict[str, Any], told: bool
) -> None:
    text = """size: {width: 1500, height: 900, depth: 300}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  thin: {kind: sheet, material: birch plywood, thickness: 6, size: [2440, 1220]}
"""
    back = {"stock": "thin", "fixing": "rebated"}
    unit = unit_from(text, carcass={"stock": "ply"}, interior=columns, back=back)
    (found,) = _told(unit, Rule.LARGER_THAN_SHEET)
    assert ("`back.split: true`" in found.remedy) == told
    if told:
        assert "behind DV1" in found.remedy
        split = unit_from(
            text, carcass={"stock": "ply"}, interior=columns, back=back | {"split": True}
        )
        assert not _told(split, Rule.LARGER_THAN_SHEET)
