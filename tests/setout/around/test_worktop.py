"""Worktops against sizes worked out by hand.

How a worktop is fixed is common practice, no source, unless a check says otherwise.
"""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import STOCK, of_role, problems_of, setting_from, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.rules import Rule
from rodwright.mass import mass_of
from rodwright.setout.carcass.box import set_out_carcass
from rodwright.setout.carcass.spaces import whole_space
from rodwright.solids import solid_of
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import Hole, JointKind, Mortise, Role

SIZE = (
    "size: {width: 800, height: 900, depth: 400}\n"
    + STOCK
    + "  oak25: {kind: board, material: oak, thickness: 25}\n"
)
ALCOVE = "opening: {width: 820, height: 2400, depth: 420}\n" + SIZE
PLINTH = {"kind": "plinth", "height": 100}


def test_nine_hundred_overall_leaves_775_for_the_sides() -> None:
    """900 less a worktop of 25 and a plinth of 100."""
    unit = unit_from(SIZE, base=PLINTH, worktop={"stock": "oak25"})
    assert {part.blank.length for part in of_role(unit, Role.SIDE)} == {775.0}
    (top,) = of_role(unit, Role.WORKTOP)
    assert top.bounds().low[2] == 875.0
    assert unit.size[1] == 900.0


def test_its_overhangs() -> None:
    """Past the frame in front, past the sides, and past an applied back: 400 + 20 + 10 deep."""
    unit = unit_from(
        SIZE,
        worktop={"stock": "oak25", "overhang": {"front": 20, "sides": 15, "rear": 10}},
        face_frame={"stock": "ash", "width": 45},
        back={"stock": "thin"},
    )
    (top,) = of_role(unit, Role.WORKTOP)
    assert top.blank.size == (830.0, 430.0, 25.0)
    assert top.bounds().low[:2] == (-15.0, -42.0)


def test_openings_given_as_lengths_lie_under_it() -> None:
    text = SIZE.replace("height: 900, ", "")
    unit = unit_from(
        text, worktop={"stock": "oak25"}, interior={"shelves": {"openings": [200, 300]}}
    )
    assert unit.size[1] == 18 + 300 + 18 + 200 + 18 + 25


def test_layers_are_glued_face_to_face() -> None:
    unit = unit_from(SIZE, worktop={"stock": "ply", "layers": 2})
    layers = of_role(unit, Role.WORKTOP)
    assert [part.ref for part in layers] == ["WT1a", "WT1b"]
    assert {part.blank.rough_size for part in layers} == {(806.0, 426.0, 18.0)}
    assert {part.blank.length for part in of_role(unit, Role.SIDE)} == {864.0}
    kinds = [joint.kind for joint in unit.joints]
    assert kinds.count(JointKind.FACE_GLUED) == 1


@pytest.mark.parametrize(
    ("stock", "top", "kind"),
    [
        ("ply", "between", JointKind.SCREWED),
        ("oak25", "between", JointKind.BUTTONED),
        ("oak25", "over", JointKind.BUTTONED),
        ("oak25", "none", JointKind.BUTTONED),
    ],
)
def test_solid_wood_is_left_free_to_move(stock: str, top: str, kind: JointKind) -> None:
    unit = unit_from(SIZE, carcass={"stock": "ply", "top": top}, worktop={"stock": stock})
    (worktop,) = of_role(unit, Role.WORKTOP)
    held = [joint for joint in unit.joints if joint.second == worktop.ref]
    assert {joint.kind for joint in held} == {kind}
    assert len(held) == (2 if top == "none" else 1)
    assert kind.meets
    assert check_solids(unit) == ()


def test_slots_lie_across_the_grain_behind_a_fixed_front_row() -> None:
    """Two bays of 373, with screws 90 in from their ends: four in a row; rows 50 in from front
    and rear.

    White oak swells by 0.00365 of its width for each % of moisture (Wood Handbook, table of
    dimensional change coefficients, from memory); 300 mm of it from 6 to 12 % by 6.6 mm, so
    slots for 4.5 mm are 4.5 + 2 x 6.6 = 17.6, and 18 long.
    """
    columns = [{"width": "1 share"}, {"width": "1 share"}]
    unit = unit_from(SIZE, worktop={"stock": "oak25"}, interior={"columns": columns})
    (panel,) = of_role(unit, Role.TOP)
    holes = [each for each in panel.workings if isinstance(each, Hole)]
    slots = [each for each in panel.workings if isinstance(each, Mortise)]
    assert sorted(each.position for each in holes) == [
        (90.0, 50.0), (283.0, 50.0), (481.0, 50.0), (674.0, 50.0),
    ]  # fmt: skip
    assert sorted(each.position for each in slots) == [
        (87.75, 341.0), (280.75, 341.0), (478.75, 341.0), (671.75, 341.0),
    ]  # fmt: skip
    assert {each.extent for each in slots} == {(4.5, 18.0)}
    assert {each.depth for each in slots} == {18.0}
    mass, solid = mass_of(panel.shape), solid_of(panel.shape)
    assert mass.volume == pytest.approx(solid.Volume(), rel=1e-6)
    (held,) = [joint for joint in unit.joints if joint.kind is JointKind.BUTTONED]
    assert {(each.name, each.count, each.size) for each in held.fixings} == {
        ("wood screw", 8, "4 x 35 mm"),  # 18 and three quarters of 25, no more
        ("washer", 8, "for 4 mm screws"),
    }


def test_buttons_have_slots_in_both_sides() -> None:
    unit = unit_from(SIZE, carcass={"stock": "ply", "top": "none"}, worktop={"stock": "oak25"})
    for side in of_role(unit, Role.SIDE):
        slots = [each for each in side.workings if isinstance(each, Mortise)]
        assert len(slots) == 2
        assert {each.depth for each in slots} == {9.0}  # half of 18
        assert {each.extent for each in slots} == {(8.0, 60.0)}
        assert {each.position[0] for each in slots} == {875.0 - 12 - 8}
    buttons = [fix for joint in unit.joints for fix in joint.fixings if "button" in fix.name]
    assert sum(each.count for each in buttons) == 4


@pytest.mark.parametrize(
    ("more", "cover"),
    [
        ({}, 18.0),
        ({"worktop": {"stock": "oak25"}}, 15.0),  # 3 below the overhang
        ({"worktop": {"stock": "oak25", "overhang": {"front": 0}}}, 18.0),
        ({"cornice": {"stock": "ash", "height": 50, "rise": 44}}, 9.0),
        ({"cornice": {"stock": "ash", "height": 50, "rise": 10}}, 0.0),
    ],
)
def test_overlay_fronts_stay_under_what_stands_out(more: dict[str, Any], cover: float) -> None:
    setting = setting_from(SIZE, **more)
    with setting.bench.wished_at(("carcass",)):
        set_out_carcass(setting)
    front = whole_space(setting.rod, setting.carcass).front
    assert front.cover_high == pytest.approx(cover)
    assert front.cover_low == 18.0


def test_in_an_opening_it_may_reach_to_the_walls() -> None:
    """The carcass is 20 narrower than the opening: 10 at each side, 20 behind."""
    wish = {"stock": "oak25", "overhang": {"sides": 10, "rear": 20}}
    unit = unit_from(ALCOVE, worktop=wish)
    assert of_role(unit, Role.WORKTOP)[0].blank.size == (820.0, 440.0, 25.0)
    assert not [each for each in check_parts(unit) if each.rule is Rule.LARGER_THAN_OPENING]


@pytest.mark.parametrize(
    ("text", "more", "where"),
    [
        (ALCOVE, {"worktop": {"overhang": {"sides": 11}}}, "worktop.overhang.sides"),
        (ALCOVE, {"worktop": {"overhang": {"rear": 21}}}, "worktop.overhang.rear"),
        (SIZE, {"worktop": {"stock": "elm"}}, "worktop.stock"),
        (SIZE, {"worktop": {"fixing": "buttons"}}, "worktop.fixing"),
        (
            SIZE,
            {"worktop": {"fixing": "slotted"}, "carcass": {"stock": "ply", "top": "none"}},
            "worktop.fixing",
        ),
        (
            SIZE,
            {"face_frame": {"stock": "ash", "width": 45, "overhang": {"top": 5}}},
            "face_frame.overhang.top",
        ),
        (SIZE.replace("900", "40"), {"worktop": {"layers": 2}}, "worktop"),
    ],
)
def test_what_nobody_can_make(text: str, more: dict[str, Any], where: str) -> None:
    worktop = {"stock": "oak25"} | more.pop("worktop", {})
    found = problems_of(text, worktop=worktop, **more)
    assert [each.split(":")[0] for each in found] == [where]


@pytest.mark.parametrize(
    ("height", "plinth", "thickness", "side"),
    [(900, 150, 30, 720), (850, 100, 30, 720), (900, 150, 40, 710)],
)
def test_kitchen_heights_add_up(height: int, plinth: int, thickness: int, side: float) -> None:
    """Worktops at 850 or 900 over a toe recess at least 100 high and 50 deep are the
    co-ordinating sizes of EN 1116 (from memory); sides of 720 are common practice, no source."""
    stock = f"  worktop: {{kind: sheet, material: birch plywood, thickness: {thickness}}}\n"
    unit = unit_from(
        f"size: {{width: 600, height: {height}, depth: 560}}\n" + STOCK + stock,
        base={"kind": "levellers", "height": plinth, "board": {}},
        worktop={"stock": "worktop", "overhang": {"front": 40}},
    )
    assert {part.blank.length for part in of_role(unit, Role.SIDE)} == {side}
    assert of_role(unit, Role.WORKTOP)[0].blank.width == 600.0
    (board,) = of_role(unit, Role.PLINTH)
    # 3 less than its gap, to go in under the carcass.
    assert (board.blank.width, board.bounds().low[1]) == (plinth - 3, 50.0)


@pytest.mark.parametrize("hung", ["inset", "overlay"])
@pytest.mark.parametrize(
    "head", [{"worktop": {"stock": "oak25"}}, {"cornice": {"stock": "ash", "height": 60}}]
)
def test_doors_clear_what_stands_out_over_them(hung: str, head: dict[str, Any]) -> None:
    doors = {"doors": {"stock": "ply", "hung": hung}}
    unit = unit_from(SIZE, base=PLINTH, interior=doors, **head)
    lowest = min(
        part.bounds().low[2] for part in unit.parts if part.role in (Role.WORKTOP, Role.CORNICE)
    )
    (door,) = of_role(unit, Role.DOOR)
    assert door.bounds().high[2] <= lowest - 3
    assert door.bounds().low[2] >= 100
    assert check_solids(unit) == ()


@pytest.mark.parametrize(
    ("stock", "fixing", "held"),
    [("oak25", "screwed", True), ("oak25", "slotted", False), ("ply", "screwed", False)],
)
def test_solid_wood_screwed_down_is_found(stock: str, fixing: str, held: bool) -> None:
    unit = unit_from(SIZE, worktop={"stock": stock, "fixing": fixing})
    (top,) = of_role(unit, Role.WORKTOP)
    found = [
        each
        for each in check_parts(unit)
        if each.rule is Rule.HELD_ACROSS_GRAIN and top.ref in each.parts
    ]
    assert bool(found) is held


@pytest.mark.parametrize("unit_name", ["mm", "in"])
@pytest.mark.parametrize("stock", ["oak", "ply"])
def test_screws_of_a_worktop_are_bored_as_the_list_says(unit_name: str, stock: str) -> None:
    """Round holes and slots alike."""
    text = f"""unit: {unit_name}
size: {{width: 800 mm, height: 800 mm, depth: 500 mm}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18 mm}}
  oak: {{kind: board, material: european oak, thickness: 27 mm}}
"""
    unit = unit_from(text, worktop={"stock": stock})
    (panel,) = of_role(unit, Role.TOP)
    sizes = trade_sizes(unit.display_unit)
    bored = {
        sizes.say(each.diameter if isinstance(each, Hole) else min(each.extent))
        for each in panel.workings
        if isinstance(each, Hole | Mortise) and each.use == "screw"
    }
    (wide,) = bored
    (screws,) = [
        fixing
        for joint in unit.joints
        for fixing in joint.fixings
        if fixing.name == "wood screw" and unit.part(joint.second).role is Role.WORKTOP
    ]
    assert screws.pilot.startswith(f"clearance {wide}, ")
