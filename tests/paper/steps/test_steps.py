"""The pages of the steps: every move has its number, its picture and its words."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import pytest

from kit.samples import bookcase
from kit.specs import unit_from
from rodwright import read_spec, set_out
from rodwright.geometry import Box
from rodwright.making.depths import depth_of
from rodwright.making.order import order_of
from rodwright.making.steps import Order, Step
from rodwright.paper.sections import Section
from rodwright.paper.steps.joint_words import joints_said
from rodwright.paper.steps.pictures import HIGHEST, WIDTH, before
from rodwright.paper.steps.plan import plan_of
from rodwright.paper.steps.section import pictures, steps_section
from rodwright.paper.steps.words import comes_from, lie_said, refs_said, way_said
from rodwright.unit import Housing, Joint, JointKind, Rebate, Role, Unit
from rodwright.unit.directions import DOWN, FORWARD, LEFT, X, Y

MODELS = Path(__file__).parents[3] / "models"
GREYS = {"#33302c", "#8a8a8a", "#ffffff", "none"}


def _unit(name: str) -> Unit:
    return set_out(read_spec(MODELS / f"{name}.yaml"))


def _section(name: str) -> Section:
    unit = _unit(name)
    return steps_section(unit, order_of(unit))


@pytest.fixture(scope="module")
def alcove() -> Section:
    return _section("reading-alcove")


def test_moves_are_numbered_through_and_each_has_its_picture(alcove: Section) -> None:
    moves = [move for stage in alcove.data["stages"] for move in stage["moves"]]
    assert [move["number"] for move in moves] == list(range(1, len(moves) + 1))
    assert [move["picture"] for move in moves] == list(alcove.files)


def test_pictures_are_small_line_drawings_in_black_and_grey(alcove: Section) -> None:
    for name, content in alcove.files.items():
        assert len(content) < 60_000, name
        root = ElementTree.fromstring(content)
        assert float(root.attrib["width"].removesuffix("mm")) == WIDTH
        assert float(root.attrib["height"].removesuffix("mm")) <= HIGHEST
        colours = {
            element.attrib[key]
            for element in root.iter()
            for key in ("fill", "stroke")
            if key in element.attrib
        }
        assert colours <= GREYS, name


def test_nothing_in_a_picture_lies_outside_it(alcove: Section) -> None:
    for name, content in alcove.files.items():
        root = ElementTree.fromstring(content)
        high = float(root.attrib["height"].removesuffix("mm"))
        for path in root.iter("{http://www.w3.org/2000/svg}path"):
            numbers = [float(each) for each in re.findall(r"-?\d+(?:\.\d+)?", path.attrib["d"])]
            if "aria-label" not in path.attrib:  # lettering has curves of its own
                assert all(-0.5 <= x <= WIDTH + 0.5 for x in numbers[::2]), name
                assert all(-0.5 <= y <= high + 0.5 for y in numbers[1::2]), name


def test_every_part_that_is_put_together_is_named() -> None:
    unit = _unit("reading-alcove")
    plan = plan_of(unit, order_of(unit))
    told = {ref for each in plan.stages for step in each.stage.steps for ref in step.refs}
    assert told == {part.ref for part in unit.parts}


def test_a_glue_up_says_dry_fit_glue_clamps_and_diagonals(alcove: Section) -> None:
    carcass = next(each for each in alcove.data["stages"] if each["title"].startswith("Carcass"))
    labels = [row["label"] for row in carcass["lead"]]
    assert labels == ["Lies", "First", "Dry fit", "Glue", "Clamps", "Square", "Weighs"]
    layers = [line for each in alcove.data["stages"] for line in each["after"] if "layers" in line]
    assert any(line.startswith("SH1a, SH1b") and "trim them together" in line for line in layers)


def test_a_unit_of_one_board_says_that_there_is_nothing_to_put_together() -> None:
    whole = bookcase()
    unit = replace(whole, parts=whole.parts[:1], joints=(), clearances=())
    section = steps_section(unit, order_of(unit))
    assert "one board" in section.data["one_board"]
    assert section.data["stages"] == [] and section.files == {}


def test_a_step_without_a_straight_way_says_what_is_in_the_way() -> None:
    whole = bookcase()
    first, second = whole.parts[:2]
    unit = replace(whole, parts=(first, second), joints=(), clearances=())
    order = Order(
        (
            Step((first.ref,), (), (0.0, 0.0, 0.0), 0.0, ()),
            Step(
                (second.ref,),
                (first.ref,),
                LEFT,
                20.0,
                (),
                free=False,
                why=f"{first.ref} in the way",
            ),
        )
    )
    (stage,) = steps_section(unit, order).data["stages"]
    (move,) = stage["moves"]
    assert f"{first.ref} in the way" in move["trouble"]


def test_words_of_ways() -> None:
    assert comes_from(X) == "from the left"
    assert comes_from(DOWN) == "from above"
    assert comes_from((-0.7071, 0.0, -0.7071)) == "aslant, from the right and above"
    assert way_said(Y, 305.0, 300.0, "mm") == "Slide it in from the front, 300 mm"
    assert way_said(Y, 305.0, 0.0, "mm") == "Slide it in from the front"
    assert way_said(DOWN, 33.0, 6.0, "mm") == "Put it on from above; it goes in by 6 mm"
    assert way_said(LEFT, 700.0, 6.0, "mm") == "Bring it in from the right; it goes in by 6 mm"
    assert way_said(FORWARD, 18.0, 0.0, "mm") == "Put it against, from the back"
    assert way_said(X, 300.0, 254.0, "in") == "Slide it in from the left, 10 in"
    assert way_said((0.0, 0.0, 0.0), 0.0, 0.0, "mm") == "It comes first"
    assert "on its back" in lie_said([X, LEFT, DOWN], None)
    assert "Front down" in lie_said([FORWARD], None)
    assert "Front up" in lie_said([Y], None)
    part = bookcase().parts[0]
    assert lie_said([X, X], part) == f"Lay {part.ref} flat, the side up that takes the pieces."


def test_refs_are_told_in_runs() -> None:
    assert refs_said(["SH2", "SH1", "SH3", "SD1", "SH5"]) == "SD1, SH1 to SH3, SH5"
    assert refs_said(["SH10b", "SH9b", "SH8b"]) == "SH8b to SH10b"
    assert refs_said(["SH1", "SH2"]) == "SH1, SH2"
    assert refs_said([f"A{i}" for i in range(0, 20, 2)], 3) == "A0, A2, A4 and 7 more"


def test_what_is_drawn_together_at_once_is_drawn_apart_and_doors_that_stand_open_are_told() -> None:
    whole = bookcase()
    first, second = whole.parts[:2]
    unit = replace(whole, parts=(first, second), joints=(), clearances=())
    refs = (first.ref, second.ref)
    at_once = Step(refs, (), (0.0, 0.0, 0.0), 0.0, (), drawn=((20.0, 0.0, 0.0), (-20.0, 0.0, 0.0)))
    section = steps_section(unit, Order((at_once,)))
    (move,) = section.data["stages"][0]["moves"]
    assert move["way"].startswith("Draw all of it together at once")
    assert move["pieces"].endswith("all together")
    (picture,) = section.files.values()
    together = steps_section(unit, Order((replace(at_once, drawn=()),)))
    assert [picture] != list(together.files.values())
    begun = Step((first.ref,), (), (0.0, 0.0, 0.0), 0.0, ())
    later = Step((second.ref,), (first.ref,), Y, 20.0, (), opened=(first.ref,))
    (stage,) = steps_section(unit, Order((begun, later))).data["stages"]
    assert f"{first.ref} open meanwhile" in stage["moves"][0]["way"]


def test_handles_go_on_with_the_door_that_is_hung() -> None:
    section = _section("pottery-dresser")
    doors = next(each for each in section.data["stages"] if each["title"] == "Doors")
    hardware = [row for move in doors["moves"] for row in move["hardware"]]
    assert any("knob" in row for row in hardware)


def test_panels_that_are_caught_in_a_glue_up_stay_loose() -> None:
    section = _section("linen-cupboard")
    rows = {
        each["title"]: {row["label"]: row["text"] for row in each["lead"]}
        for each in section.data["stages"]
    }
    carcass = next(lead for title, lead in rows.items() if title.startswith("Carcass"))
    assert carcass["No glue"].startswith("BK1: loose")
    door = next(lead for title, lead in rows.items() if title.startswith("Door 1"))
    assert door["No glue"].startswith("DOP1: loose")


def test_every_model_has_pages_and_names_within_its_pictures() -> None:
    for path in sorted(MODELS.glob("*.yaml")):
        unit = set_out(read_spec(path))
        order = order_of(unit)
        plan = plan_of(unit, order)
        moves = [move for each in plan.stages for move in each.moves]
        assert [move.number for move in moves] == list(range(1, len(moves) + 1)), path.stem
        for each in plan.stages:
            # Stages of two moves at most are drawn here: all that a picture needs room for.
            if len(each.moves) < 3:
                assert len(list(pictures(unit, each))) == len(each.moves)


def test_a_name_points_at_what_shows() -> None:
    """Behind a panel nothing is pointed at, beside it it is."""
    panel = Box((0.0, 0.0, 0.0), (18.0, 400.0, 800.0))
    towards = (0.5, -0.8, 0.33)
    assert before(panel, (-30.0, 200.0, 300.0), towards)
    assert not before(panel, (-30.0, -200.0, 300.0), towards)
    assert not before(panel, (60.0, 200.0, 300.0), towards)


def test_every_kind_of_joint_has_its_words() -> None:
    for kind in JointKind:
        joint = Joint(kind, "SD1", "SH1", (0.0, 0.0, 0.0))
        for own, other in (("SH1", "SD1"), ("SD1", "SH1")):
            (said,) = joints_said([joint], [own])
            assert other in said and own not in said and len(said.split()) > 1


def test_the_part_with_the_housing_takes_the_other() -> None:
    at = (0.0, 0.0, 0.0)
    joints = [
        Joint(JointKind.HOUSING, "TP1", "DV1", at),
        Joint(JointKind.HOUSING, "TP1", "DV2", at),
        Joint(JointKind.GROOVE, "TP1", "BK1", at),
        Joint(JointKind.REBATE, "SD1", "TP1", at),
    ]
    assert joints_said(joints, ["TP1"]) == [
        "in a rebate of SD1",
        "DV1, DV2 go into its housings",
        "BK1 goes into its groove",
    ]
    assert joints_said(joints[:1], ["DV1"]) == ["in a housing of TP1"]


def test_no_member_of_a_frame_is_joined_to_itself() -> None:
    at = (0.0, 0.0, 0.0)
    joints = [
        *(Joint(JointKind.MITRE, st, rl, at) for st in ("ST1", "ST2") for rl in ("RL1", "RL2")),
        *(Joint(JointKind.DOWEL, rl, "ST3", at) for rl in ("RL1", "RL2")),
        *(Joint(JointKind.DOWEL, st, "RL3", at) for st in ("ST1", "ST3")),
    ]
    assert joints_said(joints, ["ST1", "ST2", "ST3", "RL1", "RL2", "RL3"]) == [
        "RL1, RL2 mitred to ST1, ST2",
        "ST3 dowelled to RL1, RL2",
        "RL3 dowelled to ST1, ST3",
    ]


def test_a_side_with_packers_goes_as_deep_as_its_joints() -> None:
    unit = unit_from("""
size: {width: 1000, height: 900, depth: 340}
carcass: {stock: ply, corners: housed}
interior: {drawers: {count: 2, hung: inset, bottom: {stock: thin}}}
face_frame: {stock: ash, width: 45}
""")
    side = unit.part("SD2")
    (step,) = (
        each for each in order_of(unit).steps if "SD2" in each.refs and each.within != "side SD2"
    )
    assert len(step.refs) > 1
    (housing,) = {each.depth for each in side.workings if isinstance(each, Rebate | Housing)}
    assert depth_of(unit, step) == pytest.approx(housing)
    assert step.travel > housing


CABINET = """
unit: in
size: {width: 48, height: 34 1/2, depth: 15}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 3/4}
  thin: {kind: sheet, material: birch plywood, thickness: 1/4}
carcass: {stock: ply, corners: housed}
interior:
  columns:
    - {width: 1 share, shelves: {count: 1, fixed: false}, doors: {hung: overlay, count: 1}}
    - {width: 16, drawers: {count: 2, hung: overlay, stock: ply, bottom: {stock: thin}}}
back: {stock: thin, fixing: grooved}
"""


def test_drawers_doors_and_loose_shelves_go_into_a_carcass_that_stands() -> None:
    unit = unit_from(CABINET)
    section = steps_section(unit, order_of(unit))
    leads = {
        each["title"]: {row["label"]: row["text"] for row in each["lead"]}
        for each in section.data["stages"]
    }
    for title in ("Drawers", "Doors", "Loose shelves"):
        assert leads[title]["Stands"].startswith("Stand it up where it is to stand")
        assert "Lies" not in leads[title]
    carcass = next(lead for title, lead in leads.items() if title.startswith("Carcass"))
    assert "DV1, SD2 before the work is closed" in carcass["Slides"]
    assert [title for title, lead in leads.items() if lead.get("Slides")] == ["Carcass, glued up"]
    (hung,) = (
        move
        for each in section.data["stages"]
        if each["title"] == "Drawers"
        for move in each["moves"]
    )
    assert hung["joints"][-1].endswith("before it is hung")
    assert any("not below 50 F" in line for line in section.data["general"])


def test_members_of_a_frame_are_trimmed_before_they_are_glued() -> None:
    section = _section("library-wall")
    (frame,) = (each for each in section.data["stages"] if each["title"].startswith("Face frame"))
    labels = [row["label"] for row in frame["lead"]]
    assert labels.index("Trim") < labels.index("Dry fit")
    (told,) = (row["text"] for row in frame["lead"] if row["label"] == "Trim")
    unit = _unit("library-wall")
    for part in unit.parts:
        if part.role in (Role.STILE, Role.RAIL):
            assert f"to {part.blank.size[0]:g} long" in told
    assert frame["after"] == []
