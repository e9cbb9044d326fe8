"""Joints against what they carry."""

from __future__ import annotations

from dataclasses import replace
from itertools import chain
from math import ceil

import pytest
from hypothesis import HealthCheck, given, settings

import rodwright
from kit.specs import STOCK, unit_from
from kit.wishes import Wish, wishes
from rodwright.amounts import GRAVITY
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import ProblemsError
from rodwright.strength.channels import LEAST_BEARING, housing_bears, notched
from rodwright.strength.fixings import level_joints
from rodwright.strength.framed_doors import framed_doors
from rodwright.strength.holds import holds_of
from rodwright.strength.joint_results import DRAWN_OUT, LOADED, RUNS, SAGGING
from rodwright.strength.meetings import meeting_of
from rodwright.strength.moving_parts import foremost, moving_joints
from rodwright.strength.results import Group, Result
from rodwright.strength.runners_and_frames import frame_joints, runner_joints
from rodwright.trade.fastenings import Into, screw_aside
from rodwright.trade.mechanics import Family
from rodwright.unit import FACE_FRAME, Fixing, Joint, JointKind, Unit
from rodwright.unit.loading import Load, Loading, Lump, Stretch

SCREWED = """
size: {width: 800, height: 900, depth: 300}
carcass: {stock: ply, corners: housed}
interior: {shelves: {count: 1, fixed: true, ends: screwed}}
"""
DRAWERS = """
size: {width: 600, height: 500, depth: 500}
carcass: {stock: ply, corners: housed}
interior: {drawers: {count: 2, stock: ply, bottom: {stock: thin}, slides: {kind: side}}}
"""
DOORS = """
size: {width: 600, height: 1400, depth: 300}
carcass: {stock: ply, corners: housed}
interior: {doors: {count: 1, stock: ash, %s}}
"""


def laden(unit: Unit, kg: float, ref: str = "SH1") -> Unit:
    """The unit with so much spread over a shelf."""
    box = unit.part(ref).bounds()
    low, high = box.low[0], box.high[0]
    each = kg / (high - low) * 1000
    load = Load(ref, "books", (Stretch(low, high, each, each),))
    return replace(unit, loading=replace(Loading(), loads=(load,)))


def the(unit: Unit, what: str) -> Result:
    (found,) = [each for each in level_joints(unit) if each.what == what and "SH1" in each.parts]
    return found


def with_screws(unit: Unit, count: int) -> Unit:
    """The same with another number of screws in each joint of its shelf."""

    def again(joint: Joint) -> Joint:
        if joint.kind is not JointKind.SCREWED or joint.second != "SH1":
            return joint
        return replace(joint, fixings=tuple(replace(f, count=count) for f in joint.fixings))

    return replace(unit, joints=tuple(map(again, unit.joints)))


def test_a_screwed_shelf_by_hand() -> None:
    """Screws 4 x 50 mm, 18 under the head and 32 in the end of birch plywood of gravity 0.63."""
    unit = laden(unit_from(SCREWED), 40.0)
    result = the(unit, LOADED)
    side = Into(Family.PLYWOOD, 0.63, 18.0, "face")
    end = Into(Family.PLYWOOD, 0.63, 18.0, "end")
    screw = screw_aside(4.0, (end, 32.0), (side, 18.0))
    (joint,) = [
        each for each in unit.joints if each.second == "SH1" and each.first == result.parts[1]
    ]
    count = joint.fixings[0].count
    assert result.limit == pytest.approx(count * screw.allowed / GRAVITY, rel=1e-3)
    assert not result.at_least
    weight = 0.764 * 0.300 * 0.018 * 680
    assert result.figure == pytest.approx((40.0 + weight) / 2, rel=0.02)
    assert result.group is Group.JOINTS
    assert result.from_memory


def test_one_screw_too_few_fails_and_the_count_of_its_remedy_holds() -> None:
    unit = unit_from(SCREWED)
    each = the(with_screws(laden(unit, 10.0), 1), LOADED).limit
    assert each is not None
    heavy = laden(unit, 2 * 3.5 * each)
    needed = the(heavy, LOADED).figure
    assert needed is not None
    enough = ceil(needed / each)
    assert the(with_screws(heavy, enough), LOADED).holds
    failing = the(with_screws(heavy, enough - 1), LOADED)
    assert not failing.holds
    (more,) = [each for each in failing.remedies if "instead of" in each.what]
    assert more.what.startswith(f"{enough} wood screws 4 x 50 mm instead of {enough - 1}")
    assert more.holds
    again = the(with_screws(heavy, enough), LOADED)
    assert more.bears
    assert again.limit == pytest.approx(more.figure)


def test_remedies_are_worked_out_and_those_that_do_come_first() -> None:
    failing = the(laden(unit_from(SCREWED), 900.0), LOADED)
    assert not failing.holds
    assert len(failing.remedies) >= 3
    assert [each.holds for each in failing.remedies] == sorted(
        (each.holds for each in failing.remedies), reverse=True
    )
    assert failing.figure is not None
    for each in failing.remedies:
        assert each.bears and each.holds == (each.figure >= failing.figure)


def test_a_sagging_shelf_draws_on_its_screws() -> None:
    light, heavy = (the(laden(unit_from(SCREWED), kg), SAGGING) for kg in (10.0, 40.0))
    assert light.figure is not None
    assert heavy.figure is not None
    assert 0 < light.figure < heavy.figure
    assert light.limit == heavy.limit


def test_what_a_housing_bears_by_hand() -> None:
    """6 mm deep in a side 300 mm deep, bearing 2.0 x 0.7 / 1.3 N/mm2, as that of birch plywood
    isn't known; the wood below is high enough."""
    unit = laden(unit_from(SCREWED.replace("ends: screwed", "ends: housed")), 40.0)
    result = the(unit, LOADED)
    (joint,) = [
        each for each in unit.joints if each.second == "SH1" and each.first == result.parts[1]
    ]
    meeting = meeting_of(unit, joint)
    assert meeting is not None
    long = meeting.patch.size[1]
    by_hand = 6.0 * long * LEAST_BEARING.value / GRAVITY
    assert result.limit == pytest.approx(by_hand, rel=1e-6)
    assert LEAST_BEARING.source in result.from_memory
    deeper = housing_bears(meeting, 9.0)
    assert deeper is not None
    assert deeper.allowed / GRAVITY == pytest.approx(by_hand * 1.5)


def test_notches_by_hand() -> None:
    """EN 1995-1-1, eq. 6.62: 18 notched to 9, bearing 3 mm before it: a = 0.5, 5 / (4.2426 x (0.5 +
    0.8 x 3/18 x sqrt(1.75))) = 1.74, so the whole; 100 notched to 50 at 50: 5 / (10 x (0.5 + 0.4 x
    1.3229)) = 0.4858."""
    assert notched(18.0, 9.0, 3.0) == 1.0
    assert notched(100.0, 50.0, 50.0) == pytest.approx(0.48583, rel=1e-4)
    assert notched(18.0, 18.0, 3.0) == 1.0
    with pytest.raises(ValueError, match="leaves something"):
        notched(18.0, 0.0, 3.0)


def test_the_foremost_of_three_screws_by_hand() -> None:
    """10 kg standing 450 mm before the middle of three over 400: a third of it, and 4500 / 80000 x
    200 = 11.25 kg of its moment."""
    assert foremost(10.0, 450.0, 400.0, 3) == pytest.approx(10 / 3 + 11.25)
    assert foremost(10.0, 0.0, 400.0, 4) == pytest.approx(2.5)
    with pytest.raises(ValueError, match="one screw"):
        foremost(10.0, 450.0, 400.0, 1)


def test_a_drawer_holds_what_it_is_tested_with_unless_the_spec_says_more() -> None:
    unit = replace(unit_from(DRAWERS), loading=Loading())
    results = {each.what: each for each in moving_joints(unit)}
    slides = results["load on the foremost screw, drawn out"]
    assert slides.holds
    bottom = next(part for part in unit.parts if part.ref.startswith("DRB"))
    tested = bottom.blank.length * bottom.blank.width / 1e6 * 73.236
    assert slides.inputs[1].value == pytest.approx(tested, rel=1e-3)
    assert slides.inputs[1].source is not None
    lumps = Load(bottom.ref, "tins", lumps=(Lump(300.0, 120.0),))
    heavy = replace(unit, loading=Loading((lumps,)))
    failing = next(
        each
        for each in moving_joints(heavy)
        if each.what == slides.what and each.inputs[1].value == 120.0
    )
    assert not failing.holds
    assert failing.remedies


@pytest.mark.parametrize("hinge", ["hinge: {kind: cup}", "hinge: {kind: butt}"])
def test_doors_hang_on_their_hinges(hinge: str) -> None:
    results = list(moving_joints(unit_from(DOORS % hinge)))
    assert results
    assert all(each.holds for each in results)


def test_an_unknown_sheet_is_named_with_what_to_give() -> None:
    text = SCREWED + STOCK.replace(
        "ply: {kind: sheet, material: birch plywood",
        "ply: {kind: sheet, density: 700, material: pressed straw",
    )
    unit = laden(unit_from(text), 10.0)
    found = [each for each in level_joints(unit) if "SH1" in each.parts]
    assert found
    assert all(each.figure is None and "pressed straw" in each.lacking for each in found)


@pytest.mark.parametrize("name", model_names())
def test_every_joint_of_the_models_holds(name: str) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    results = [
        *level_joints(unit),
        *moving_joints(unit),
        *runner_joints(unit),
        *frame_joints(unit),
        *framed_doors(unit),
    ]
    assert results
    assert [each.subject for each in results if not each.holds] == []
    for each in results:
        assert each.figure is None or each.figure >= 0
        assert each.formula or each.lacking


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(wishes())
def test_random_units_are_worked_out(wish: Wish) -> None:
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        return
    analyses = (level_joints, moving_joints, runner_joints, frame_joints, framed_doors)
    for each in chain.from_iterable(analysis(unit) for analysis in analyses):
        assert each.figure is None or each.figure >= 0
        for remedy in each.remedies:
            assert remedy.figure > 0


@pytest.mark.parametrize("kind", [JointKind.DOWEL, JointKind.LOOSE_TENON, JointKind.BISCUIT])
def test_more_of_what_is_glued_in_bears_more(kind: JointKind) -> None:
    names = {
        JointKind.DOWEL: ("dowelled", "dowel"),
        JointKind.LOOSE_TENON: ("loose-tenoned", "loose tenon"),
        JointKind.BISCUIT: ("biscuited", "biscuit"),
    }
    word, name = names[kind]
    unit = unit_from(SCREWED.replace("ends: screwed", f"ends: {word}"))
    joint = next(each for each in unit.joints if each.kind is kind)
    meeting = meeting_of(unit, joint)
    assert meeting is not None
    holds = holds_of(joint, meeting)
    assert holds is not None
    assert holds.name == name
    assert holds.aside is not None
    assert holds.aside.allowed > 0
    none = replace(joint, fixings=(Fixing(name, 0),))
    assert holds_of(none, meeting) is None


RUNNERS = """
size: {width: 600, height: 600, depth: 500}
carcass: {stock: ply, corners: housed}
interior: {drawers: {count: 3, stock: ply, bottom: {stock: thin}, slides: {kind: runners}}}
"""
FRAMED = """
size: {width: 800, height: 900, depth: 300}
carcass: {stock: ply, corners: housed}
face_frame: {stock: ash, width: 45}
interior: {shelves: {count: 1}}
"""


def test_a_runner_by_hand() -> None:
    """Drawn out by two thirds, a drawer bears with three quarters of its weight on the front of
    each runner: half, and half of that again by its lever."""
    unit = unit_from(RUNNERS)
    results = list(runner_joints(unit))
    assert results
    for result in results:
        by = {each.symbol: each.value for each in result.inputs}
        assert by["s"] == pytest.approx(2 / 3)
        on_one = foremost(0.75 * by["W"], by["a"], by["l"], int(by["n"]))
        assert result.figure == pytest.approx(on_one)
        assert result.holds


@pytest.mark.parametrize("kind", ["runners", "side"])
def test_of_what_a_drawer_hangs_on_the_weaker_side_is_told(kind: str) -> None:
    """A divider of pine beside a side of birch plywood: screws bear less in it (NDS 2018, 12.3.3:
    by density)."""
    drawers = (
        f"drawers: {{count: 2, stock: ply, bottom: {{stock: thin}}, slides: {{kind: {kind}}}}}"
    )
    empty, chest = "{width: 1 share}", f"{{width: 1 share, {drawers}}}"

    def told(columns: str, divider: str) -> Result:
        unit = unit_from(
            "size: {width: 700, height: 600, depth: 400}\n"
            "carcass: {stock: ply, corners: housed}\n"
            f"interior: {{columns: {columns}, dividers: {{stock: {divider}}}}}\n{STOCK}"
            "  pine: {kind: board, material: pine, thickness: 18}\n"
        )
        # The lower of two drawers runs on the bottom.
        joints = (*runner_joints(unit), *moving_joints(unit))
        return [each for each in joints if each.what in (RUNS, DRAWN_OUT)][-1]

    at_its_right, at_its_left = f"[{empty}, {chest}]", f"[{chest}, {empty}]"
    right, left = told(at_its_right, "pine"), told(at_its_left, "pine")
    assert right.limit == pytest.approx(left.limit)
    assert {"runners": ("RN1", "RN2"), "side": ("DV1", "DV1")}[kind] == (
        next(each for each in right.parts if each[:2] in ("RN", "DV")),
        next(each for each in left.parts if each[:2] in ("RN", "DV")),
    )
    for alike in (told(at_its_right, "ply"), told(at_its_left, "ply")):
        assert alike.limit is not None
        assert right.limit is not None
        assert right.limit < 0.9 * alike.limit


def test_a_frame_hangs_on_its_biscuits() -> None:
    unit = unit_from(FRAMED)
    (result,) = frame_joints(unit)
    assert result.figure is not None
    wood = sum(
        part.blank.length * part.blank.width * part.blank.thickness / 1e9
        for part in unit.parts
        if part.role in FACE_FRAME
    )
    assert result.figure == pytest.approx(wood * 670, rel=0.06)
    assert result.holds
    assert list(frame_joints(unit_from(FRAMED.replace("face_frame", "# face_frame")))) == []


@pytest.mark.parametrize("joint", ["tongued", "dowelled", "loose-tenoned"])
def test_the_corners_of_a_framed_door_by_hand(joint: str) -> None:
    """Two rails: a quarter of the door's weight on each, at half its clear length from either
    corner."""
    unit = unit_from(DOORS % f"kind: framed, panel: {{stock: thin}}, frame: {{joint: {joint}}}")
    (result,) = framed_doors(unit)
    assert result.holds
    by = {each.symbol: each.value for each in result.inputs}
    assert by["r"] == 2
    clear = next(part.blank.length for part in unit.parts if part.ref == result.parts[0]) - 2 * (
        12.0 if joint == "tongued" else 0.0
    )
    assert by["b"] == pytest.approx(clear)
    assert result.limit is not None
    assert result.limit * GRAVITY / 2 / 2 * clear / 2 == pytest.approx(by["M1"])
    heavy = tuple(
        replace(part, blank=replace(part.blank, stock=replace(part.blank.stock, density=3e5)))
        for part in unit.parts
    )
    (failing,) = framed_doors(replace(unit, parts=heavy))
    assert not failing.holds
    assert failing.remedies


def test_outside_fixings_bear_seven_tenths() -> None:
    inside = laden(unit_from(SCREWED), 20.0)
    outside = replace(inside, loading=replace(inside.loading, service_class=3))
    dry, wet = the(inside, LOADED), the(outside, LOADED)
    assert dry.limit is not None
    assert wet.limit == pytest.approx(0.7 * dry.limit)


def test_a_bottom_in_rebates_that_are_open_below_hangs_on_glue() -> None:
    text = """
size: {width: 800, height: 900, depth: 300}
hung: true
carcass: {stock: ply, corners: rebated}
back: {stock: ply}
interior: {shelves: {count: 1}}
"""
    found = [each for each in level_joints(unit_from(text)) if each.what == LOADED]
    (bottom,) = [each for each in found if each.parts[0] == "BT1"]
    assert bottom.limit == 0.0
    assert not bottom.holds
    assert bottom.notes == ("nothing lies under it: only glue on end grain holds it",)
    does = [each for each in bottom.remedies if each.holds]
    assert [each.what.split(" through")[0] for each in does] == [
        "2 wood screws 4 x 40 mm",
        "2 dowels 8 x 40 mm instead",
    ]
    (top,) = [each for each in found if each.parts[0] == "TP1"]
    assert top.holds
    standing = list(level_joints(unit_from(text.replace("hung: true", ""))))
    assert all(each.holds for each in standing)


def test_remedies_are_told_in_inches_to_who_works_in_them() -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path("hallway-bookcase")))
    assert unit.display_unit == "in"
    failing = [each for each in level_joints(laden(unit, 3000.0)) if not each.holds]
    assert failing
    told = [each.what for result in failing for each in result.remedies]
    assert any("no. " in each for each in told)
    assert all(" in" in each and "mm" not in each for each in told)
