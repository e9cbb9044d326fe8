"""In which order units go together."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

from kit.assembly_replay import made_in_order, replay
from kit.blocks import block, unit_of_blocks
from kit.specs import of_role, unit_from
from rodwright.making.hindrances import Hindrances
from rodwright.making.order import order_of
from rodwright.making.steps import Order, Step
from rodwright.setout import set_out
from rodwright.unit import Joint, JointKind, Rebate, Role, Surface
from rodwright.wishes import read_spec

MODELS = sorted((Path(__file__).parents[2] / "models").glob("*.yaml"))

BOOKCASE = """
size: {width: 900, height: 1200, depth: 300}
carcass: {stock: ply, corners: housed}
interior: {shelves: {count: 2}}
back: {stock: thin}
"""


def _way(step: Step) -> str:
    if step.drawn:
        return "together"
    signs = {each: sign for each, sign in zip("xyz", step.towards, strict=True) if abs(sign) > 1e-6}
    return " ".join(f"{'+' if sign > 0 else '-'}{axis}" for axis, sign in signs.items()) or "first"


def _told(order: Order, within: str = "") -> list[str]:
    """Each step of what is made, in short: what comes, and towards where."""
    return [
        f"{step.brings or ' '.join(step.refs)} {_way(step)}"
        for step in order.steps
        if step.within == within
    ]


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_every_model_goes_together_in_its_order(path: Path) -> None:
    unit = set_out(read_spec(path))
    order = order_of(unit)
    assert [step.why for step in order.steps if not step.free] == []
    replay(unit, order)


def test_shelves_stand_in_one_side_before_the_other_goes_on_and_the_back_comes_last() -> None:
    order = order_of(unit_from(BOOKCASE))
    assert _told(order) == ["SD1 first", "BT1 -x", "SH1 -x", "SH2 -x", "TP1 -x", "SD2 -x", "BK1 -y"]
    assert {step.where for step in order.steps} == {"bench"}


def test_a_top_that_lies_over_the_sides_comes_when_both_stand() -> None:
    carcass = {"stock": "ply", "corners": "rebated", "top": "over"}
    order = order_of(unit_from(BOOKCASE, carcass=carcass))
    assert _told(order)[-3:] == ["SD2 -x", "TP1 -z", "BK1 -y"]
    assert len(order.steps[-2].joints) == 2


def test_a_back_in_grooves_is_slid_in_before_the_last_board_shuts_them() -> None:
    order = order_of(unit_from(BOOKCASE, back={"stock": "thin", "fixing": "grooved"}))
    last = order.steps[-1]
    (back,) = (step for step in order.steps if step.refs == ("BK1",))
    assert last.refs == ("SD2",)
    assert [joint.kind for joint in last.joints if joint.second == "BK1"] == [JointKind.GROOVE]
    assert set(back.standing) == set(last.standing) - {"BK1"}


def test_a_panel_goes_into_its_frame_before_the_last_stile() -> None:
    unit = unit_from("""
size: {width: 600, height: 900, depth: 300}
interior: {doors: {count: 1, stock: ash, kind: framed, panel: {stock: thin}}}
""")
    order = order_of(unit)
    made = [step.refs[0] for step in order.steps if step.within == "door 1"]
    assert sorted(made) == ["DOP1", "DOR1", "DOR2", "DOS1", "DOS2"]
    assert made.index("DOP1") < max(made.index("DOS1"), made.index("DOS2"))
    (hung,) = (step for step in order.steps if step.brings == "door 1")
    assert hung == order.steps[-1]
    assert {joint.kind for joint in hung.joints} == {JointKind.HINGED}


def test_a_shelf_is_glued_up_with_its_lipping_and_goes_in_as_one() -> None:
    unit = unit_from(BOOKCASE, lipping={"stock": "oak", "thickness": 8, "edges": ["shelves"]})
    order = order_of(unit)
    assert _told(order, "shelf SH1")[0] == "SH1 first"
    (lipped,) = (step for step in order.steps if step.brings == "shelf SH1")
    assert len(lipped.refs) == 2
    assert {unit.part(ref).role for ref in lipped.refs} == {Role.SHELF, Role.LIPPING}
    replay(unit, order)


def test_in_an_opening_the_base_goes_in_first_and_the_carcass_on_it() -> None:
    unit = unit_from("""
opening: {width: 1008, height: 2006, depth: 400}
carcass: {stock: ply, corners: housed}
interior: {shelves: {count: 2}}
base: {kind: plinth, height: 80}
face_frame: {stock: ash, width: 45, thickness: 22, corners: butted}
""")
    order = order_of(unit)
    site = [step for step in order.steps if step.where == "site"]
    assert [step.brings for step in site] == ["base", "carcass", "face frame"]
    assert all(step.where == "bench" for step in order.steps if step.within)
    assert site[0].towards == (0.0, 1.0, 0.0)


def test_legs_go_under_a_carcass_that_is_made_and_layers_of_a_top_are_glued_up_first() -> None:
    unit = unit_from("""
size: {width: 1200, height: 800, depth: 400}
carcass: {stock: ply, corners: dowelled}
interior: {columns: [{width: 1 share}, {width: 1 share}]}
base: {kind: legs, height: 150, stock: ash}
back: {stock: thin}
worktop: {stock: oak, layers: 2}
""")
    order = order_of(unit)
    come = [step.brings or step.refs[0] for step in order.steps if not step.within]
    assert sorted(come[:6]) == ["BK1", "BT1", "DV1", "SD1", "SD2", "TP1"]
    assert sorted(come[6:-1]) == [f"leg {number}" for number in range(1, 7)]
    assert come[-1] == "worktop WT1a"
    replay(unit, order)


def test_loose_shelves_come_after_doors_that_open_clear_of_them() -> None:
    text = """
size: {width: 600, height: 900, depth: 300}
interior:
  shelves: {count: 2, fixed: false}
  doors: {count: 1, stock: thick, hung: overlay}
back: {stock: thin}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  thin: {kind: sheet, material: birch plywood, thickness: 6}
  thick: {kind: sheet, material: birch plywood, thickness: 16}
"""
    unit = unit_from(text)
    order = order_of(unit)
    assert [step.refs[0][:2] for step in order.steps[-3:]] == ["DO", "SH", "SH"]
    assert [step.opened for step in order.steps[-3:]] == [(), ("DO1",), ("DO1",)]
    replay(unit, order)
    # One that opens in front of the shelves' ends is hung after them.
    unit = unit_from(text.replace("thickness: 16", "thickness: 22"))
    assert [step.refs[0][:2] for step in order_of(unit).steps[-3:]] == ["SH", "SH", "DO"]


def test_a_dowelled_frame_with_mitred_corners_is_drawn_together_at_once() -> None:
    unit = unit_from("""
size: {width: 1200, height: 900, depth: 300}
interior: {columns: [{width: 1 share}, {width: 1 share}]}
face_frame: {stock: ash, width: 45, thickness: 22, corners: mitred, mid_stiles: 38}
""")
    order = order_of(unit)
    (drawn,) = (step for step in order.steps if step.within == "face frame")
    ways = dict(zip(drawn.refs, drawn.drawn, strict=True))
    left, right = (
        next(r for r in ways if unit.part(r).bounds().low[0] == x) for x in (0.0, 1155.0)
    )
    assert ways[left][0] > 1 and ways[right][0] < -1
    replay(unit, order)


def test_a_dowelled_mitred_frame_of_four_comes_together_from_two_halves() -> None:
    unit = unit_from("""
size: {width: 1200, height: 900, depth: 300}
face_frame: {stock: ash, width: 45, thickness: 22, corners: mitred}
""")
    order = order_of(unit)
    halves = [step for step in order.steps if step.within == "face frame"][-1]
    assert len(halves.refs) == 2
    assert halves.brings == " and ".join(halves.refs)
    assert len(halves.joints) == 2
    assert abs(halves.towards[0]) == pytest.approx(math.sqrt(0.5))
    replay(unit, order)


def test_a_housed_shelf_is_driven_along_its_housings_only_where_nothing_else_is_left() -> None:
    mitred = {"stock": "ply", "corners": {"joint": "mitred", "reinforced": "biscuits"}}
    unit = unit_from(BOOKCASE, carcass=mitred)
    order = order_of(unit)
    shelves = [step for step in order.steps if unit.part(step.refs[0]).role is Role.SHELF]
    # The case is closed corner by corner, slantwise, so that its sides can't come to the shelves.
    assert [step.towards[1] for step in shelves] in ([1.0, 1.0], [-1.0, -1.0])
    assert all(step.travel >= 294 for step in shelves)
    replay(unit, order)


def test_a_mitred_frame_that_is_only_glued_is_fitted_member_by_member_the_long_stiles_last() -> (
    None
):
    unit = unit_from("""
opening: {width: 1008, height: 2006, depth: 400}
interior: {columns: [{width: 1 share, shelves: {count: 2, fixed: false}}, {width: 1 share}]}
back: {stock: thin}
face_frame:
  {stock: ash, width: 45, thickness: 22, corners: mitred, joint: glue, mid_stiles: 38}
""")
    order = order_of(unit)
    site = [step.brings or step.refs[0] for step in order.steps if step.where == "site"]
    # The shelves are wider than the openings in the frame.
    assert site == ["carcass", "SH1", "SH2", "RL1", "RL2", "ST3", "ST1", "ST2"]
    replay(unit, order)


def test_what_cannot_be_put_together_is_told() -> None:
    # A block in a rebate, dowelled down into the one face and across into the other.
    rebate = Rebate(Surface.FACE, Surface.FAR_END, 100, 50)
    carrier = replace(block("SD1", (0, 0, 0), (200, 100, 100)), workings=(rebate,))
    bar = block("SH1", (100, 0, 50), (100, 100, 50), Role.SHELF)
    down = Joint(JointKind.DOWEL, "SD1", "SH1", (150, 50, 50))
    across = Joint(JointKind.DOWEL, "SD1", "SH1", (100, 50, 75))
    order = order_of(unit_of_blocks(carrier, bar, joints=(down,)))
    assert [(step.refs, _way(step), step.free) for step in order.steps] == [
        (("SD1",), "first", True),
        (("SH1",), "-z", True),
    ]
    locked = unit_of_blocks(carrier, bar, joints=(down, across))
    order = order_of(locked)
    made_in_order(locked, order)
    assert [(step.free, step.why) for step in order.steps] == [
        (True, ""),
        (
            False,
            "no straight way in: from the front SD1; from behind SD1; from above SD1; from the "
            "left SD1; from the right SD1; from below SD1",
        ),
    ]


def test_what_is_shut_in_on_all_sides_goes_in_before_its_last_wall() -> None:
    walls = [
        block("SD1", (-10, 0, 0), (10, 100, 100)),
        block("SD2", (100, 0, 0), (10, 100, 100)),
        block("BT1", (-10, 0, -10), (120, 100, 10)),
        block("TP1", (-10, 0, 100), (120, 100, 10)),
        block("BK1", (-10, 100, -10), (120, 10, 120)),
        block("BK2", (-10, -10, -10), (120, 10, 120)),
    ]
    inside = block("SH1", (0, 0, 0), (100, 100, 100), Role.SHELF)
    order = order_of(unit_of_blocks(*walls, inside))
    assert all(step.free for step in order.steps)
    last = order.steps[-1]
    assert "SH1" in last.standing


def test_one_board_is_one_step() -> None:
    board = unit_of_blocks(block("SH1", (0, 0, 0), (600, 200, 20), Role.SHELF))
    (step,) = order_of(board).steps
    assert (step.refs, step.standing, step.towards) == (("SH1",), (), (0.0, 0.0, 0.0))


def test_two_hundred_parts_take_few_looks_at_what_lies_near() -> None:
    unit = set_out(read_spec(next(path for path in MODELS if path.stem == "archive-wall")))
    hindrances = Hindrances(unit)
    order_of(unit, hindrances)
    # Every pair in every direction would be 247,254.
    assert len(unit.parts) == 203
    assert hindrances.sweeps.looked < 20 * len(unit.parts)


def test_drawers_of_one_size_are_made_one_after_the_other() -> None:
    unit = set_out(read_spec(next(path for path in MODELS if path.stem == "pottery-dresser")))
    sizes = [
        unit.part(step.refs[0]).blank.length
        for step in order_of(unit).steps
        if step.brings.startswith("drawer")
    ]
    changes = sum(one != other for one, other in pairwise(sizes))
    assert changes == len(set(sizes)) - 1


def test_a_back_never_comes_before_the_boards_it_is_fixed_to() -> None:
    unit = set_out(read_spec(next(path for path in MODELS if path.stem == "pottery-dresser")))
    order = order_of(unit)
    at = {ref: number for number, step in enumerate(order.steps) for ref in step.refs}
    for back in of_role(unit, Role.BACK):
        fixed_to = {joint.first for joint in unit.joints if joint.second == back.ref}
        assert all(at[ref] < at[back.ref] for ref in fixed_to)
