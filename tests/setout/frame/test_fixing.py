"""What holds a face frame together and to its carcass; sizes are common practice, no source."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import problems_of, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.rules import Rule
from rodwright.handover.lists import hardware_list
from rodwright.unit import Joint, JointKind, Role, Unit

SIZE = "size: {width: 800, height: 1000, depth: 300}\n"
FRAME = {"stock": "ash", "width": 45}
MEMBERS = (Role.STILE, Role.RAIL)


def _unit(**frame: Any) -> Unit:
    return unit_from(SIZE, carcass={"stock": "ply"}, face_frame=FRAME | frame)


def _between(unit: Unit, *roles: Role) -> list[Joint]:
    """The joints of frame members with parts of these roles."""
    return [
        joint
        for joint in unit.joints
        if unit.part(joint.second).role in MEMBERS and unit.part(joint.first).role in roles
    ]


@pytest.mark.parametrize("corners", ["mitred", "butted"])
def test_corners_are_dowelled_unless_said(corners: str) -> None:
    """In members 45 x 22 two dowels of 8: a third of 22 is 7.3, and 4 diameters are 32 of 45."""
    unit = _unit(corners=corners)
    joints = _between(unit, *MEMBERS)
    assert len(joints) == 4
    assert {joint.kind for joint in joints} == {
        JointKind.MITRE if corners == "mitred" else JointKind.DOWEL
    }
    for joint in joints:
        (dowels,) = joint.fixings
        assert (dowels.name, dowels.count, dowels.size) == ("dowel", 2, "8 x 40 mm")
    assert check_solids(unit) == ()


@pytest.mark.parametrize(
    ("joint", "corners", "name"),
    [
        ("biscuits", "butted", "biscuit"),
        ("loose_tenons", "mitred", "loose tenon"),
        ("loose_tenons", "butted", "loose tenon"),
        ("pocket_screws", "butted", "pocket screw"),
    ],
)
def test_the_maker_chooses(joint: str, corners: str, name: str) -> None:
    unit = unit_from(
        SIZE,
        carcass={"stock": "ply"},
        face_frame=FRAME | {"joint": joint, "corners": corners, "width": 65},
    )
    assert {each.name for joined in _between(unit, *MEMBERS) for each in joined.fixings} == {name}


def test_pocket_screws_have_lengths_in_which_they_are_sold() -> None:
    """38 mm for members 22 mm thick, as the tables of pocket screws have it (from memory)."""
    unit = _unit(joint="pocket_screws", corners="butted", width=65)
    sizes = {each.size for joined in _between(unit, *MEMBERS) for each in joined.fixings}
    assert sizes == {"4 x 38 mm"}


def test_narrow_mid_rails_take_what_goes_in() -> None:
    """24 are four dowels of 6; in 22 there is a loose tenon."""
    for width, name in ((24, "dowel"), (22, "loose tenon")):
        rows = {"rows": [{"height": "1 share"}, {"height": "1 share"}]}
        unit = unit_from(
            SIZE, carcass={"stock": "ply"}, face_frame=FRAME | {"mid_rails": width}, interior=rows
        )
        (mid,) = [part.ref for part in unit.parts if part.name == "Mid rail"]
        joints = [joint for joint in _between(unit, *MEMBERS) if joint.second == mid]
        assert {each.name for joint in joints for each in joint.fixings} == {name}


@pytest.mark.parametrize("joint", ["pocket_screws", "biscuits"])
def test_what_has_no_room_is_told_once(joint: str) -> None:
    """Pocket screws don't draw a mitre together; the smallest biscuit wants more than 30."""
    corners = "mitred" if joint == "pocket_screws" else "butted"
    frame = FRAME | {"width": 30, "joint": joint, "corners": corners}
    (said,) = problems_of(SIZE, face_frame=frame)
    assert said.startswith("face_frame.joint: members 30 mm wide and 22 mm thick have no room for")


@pytest.mark.parametrize(
    ("fixing", "kind", "names"),
    [
        ("biscuits", JointKind.BISCUIT, {"biscuit"}),
        ("dowels", JointKind.DOWEL, {"dowel"}),
        ("screws", JointKind.SCREWED, {"wood screw", "plug"}),
    ],
)
def test_the_frame_is_fixed_to_every_edge_behind_it(
    fixing: str, kind: JointKind, names: set[str]
) -> None:
    """Sides, top and bottom, no more than 250 apart and 60 from the ends; it is in the list."""
    unit = _unit(fixing=fixing)
    held = [each for each in _between(unit, Role.SIDE, Role.TOP, Role.BOTTOM) if each.fixings]
    assert {joint.first for joint in held} == {"SD1", "SD2", "TP1", "BT1"}
    assert {joint.kind for joint in held} == {kind}
    for joint in held:
        long = 1000 if unit.part(joint.first).role is Role.SIDE else 776
        assert (joint.fixings[0].count - 1) * 250 >= long - 2 * 60 - 30
    assert names <= {row.name for row in hardware_list(unit)}


def test_glue_alone_is_told_where_only_end_grain_is_glued() -> None:
    rules = [each.rule for each in check_parts(_unit(joint="glue"))]
    assert rules.count(Rule.FRAME_ONLY_GLUED) == 1
    assert Rule.FRAME_ONLY_GLUED not in {each.rule for each in check_parts(_unit())}


def test_no_loose_shelf_is_fixed_to_the_frame() -> None:
    unit = unit_from(
        SIZE,
        carcass={"stock": "ply"},
        face_frame=FRAME,
        interior={"shelves": {"count": 2, "fixed": False}},
    )
    assert not [joint for joint in _between(unit, Role.SHELF) if joint.fixings]


@pytest.mark.parametrize(("wood", "pilot"), [("oak", "2.5"), ("pine", "2")])
def test_pilots_of_a_frames_screws_go_by_the_carcass(wood: str, pilot: str) -> None:
    """Wood Handbook (FPL-GTR-190), ch. 8 (from memory): 90 % of the root in hardwood, 70 % in
    softwood."""
    text = f"""size: {{width: 800, height: 900, depth: 300}}
stock:
  case: {{kind: board, material: {wood}, thickness: 20}}
  frame: {{kind: board, material: ash, thickness: 22}}
"""
    unit = unit_from(
        text,
        carcass={"stock": "case"},
        face_frame={"stock": "frame", "width": 45, "fixing": "screws"},
    )
    holes = {
        fixing.pilot.split("pilot ")[1]
        for joint in unit.joints
        for fixing in joint.fixings
        if fixing.name == "wood screw" and unit.part(joint.second).role in (Role.STILE, Role.RAIL)
    }
    assert holes == {f"{pilot} mm"}
