"""Joints that carry too much, and fixings that lie too near an edge."""

from __future__ import annotations

from dataclasses import replace

import pytest

import rodwright
from kit.samples import PLYWOOD
from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Severity
from rodwright.checks.fixing_places import fixing_places
from rodwright.checks.fixings_hold import fixings_hold
from rodwright.checks.rules import Rule
from rodwright.geometry import Box
from rodwright.jobs.new import model_names, model_path
from rodwright.unit import (
    Blank,
    Fixing,
    Grain,
    Hole,
    Joint,
    JointKind,
    Part,
    Placement,
    Role,
    Surface,
    Unit,
)
from rodwright.unit.loading import Load, Loading, Lump, Stretch

SCREWED = """
size: {width: 800, height: 900, depth: 300}
carcass: {stock: ply, corners: housed}
interior: {shelves: {count: 1, fixed: true, ends: screwed}}
"""


def laden(kg: float) -> Unit:
    unit = unit_from(SCREWED)
    box = unit.part("SH1").bounds()
    low, high = box.low[0], box.high[0]
    each = kg / (high - low) * 1000
    load = Load("SH1", "books", (Stretch(low, high, each, each),))
    return replace(unit, loading=Loading((load,)))


def test_a_shelf_that_its_screws_do_not_bear_is_an_error_with_remedies_in_figures() -> None:
    """Two screws bear 44.2 kg at each end; the shelf weighs 2.8 kg itself."""
    assert [each for each in fixings_hold(laden(80.0)) if each.rule is Rule.JOINT_OVERLOADED] == []
    found = [each for each in fixings_hold(laden(100.0)) if each.rule is Rule.JOINT_OVERLOADED]
    assert found
    finding = found[0]
    assert finding.severity is Severity.ERROR
    assert finding.message == (
        "Shelf (SH1) puts 51.4 kg on its joint with Left side (SD1), which bears 44.2 kg"
    )
    assert finding.remedy == (
        "3 wood screws 4 x 50 mm instead of 2 (bears 66.3 kg), or a housing 6 mm deep (bears 197.7 "
        "kg), or 4 dowels 8 x 40 mm instead (bears 53.3 kg); or put less on it."
    )


def test_what_is_just_too_much_is_told_to_be() -> None:
    """Two screws bear 44.2 kg; 44.2 kg to a tenth is put on them, and a little more."""
    found = [each for each in fixings_hold(laden(85.6)) if each.rule is Rule.JOINT_OVERLOADED]
    assert found[0].message == (
        "Shelf (SH1) puts just over 44.2 kg on its joint with Left side (SD1), which bears 44.2 kg"
    )


def test_weights_are_told_in_pounds_to_who_works_in_inches() -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path("hallway-bookcase")))
    assert unit.display_unit == "in"
    lumps = Load("SH1", "an anvil", lumps=(Lump(400.0, 3000.0),))
    found = list(fixings_hold(replace(unit, loading=Loading((lumps,)))))
    assert found
    assert all(" lb" in each.message and " kg" not in each.message for each in found)


@pytest.mark.parametrize("name", model_names())
def test_the_models_hold(name: str) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    assert [*fixings_hold(unit), *fixing_places(unit)] == []


def bored(*, kind: JointKind, diameter: float, across: float, along: float, hole: float) -> Unit:
    """A side, and a shelf whose end is bored once: ``across`` its thickness, ``along`` its depth,
    for a fixing of this diameter, by a hole of that one."""
    use = {JointKind.SCREWED: "screw", JointKind.DOWEL: "dowel"}[kind]
    side = Part(
        "SD1",
        "Side",
        Role.SIDE,
        "Test",
        Blank(900.0, 300.0, 18.0, PLYWOOD, Grain.LENGTHWISE),
        Placement((18.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, 1.0, 0.0)),
    )
    side = replace(side, placement=replace(side.placement, origin=(0.0, 0.0, 0.0)))
    if side.bounds().low[0] < 0:
        side = replace(side, placement=replace(side.placement, origin=(18.0, 0.0, 0.0)))
    shelf = Part(
        "SH1",
        "Shelf",
        Role.SHELF,
        "Test",
        Blank(700.0, 300.0, 18.0, PLYWOOD, Grain.LENGTHWISE),
        Placement((18.0, 0.0, 400.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0)),
        (Hole(Surface.at(0, high=False), (along, across), hole, 20.0, use),),
    )
    name = {JointKind.SCREWED: "wood screw", JointKind.DOWEL: "dowel"}[kind]
    fixing = Fixing(name, 1, f"{diameter:g} x 45 mm", diameter=diameter, length=45.0)
    joint = Joint(kind, "SD1", "SH1", (18.0, 150.0, 409.0), (fixing,))
    return Unit("Test", Box((0, 0, 0), (900, 300, 900)), (side, shelf), (joint,))


@pytest.mark.parametrize(
    ("kind", "diameter", "across", "along", "told"),
    [
        (JointKind.SCREWED, 4.0, 8.0, 20.0, []),
        (JointKind.SCREWED, 4.0, 7.9, 20.0, ["the face"]),
        (JointKind.SCREWED, 4.0, 9.0, 19.9, ["the end"]),
        (JointKind.SCREWED, 4.0, 10.1, 280.1, ["the face", "the end"]),
        (JointKind.DOWEL, 8.0, 8.0, 12.0, []),
        (JointKind.DOWEL, 8.0, 7.9, 12.0, ["the face"]),
        (JointKind.DOWEL, 8.0, 9.0, 11.9, ["the end"]),
    ],
)
def test_fixings_just_inside_and_just_outside(
    kind: JointKind, diameter: float, across: float, along: float, told: list[str]
) -> None:
    """Screws: 2 diameters from a face and 5 from an end; dowels: 1 and 1.5."""
    hole = 2.5 if kind is JointKind.SCREWED else diameter
    unit = bored(kind=kind, diameter=diameter, across=across, along=along, hole=hole)
    found = list(fixing_places(unit))
    assert [each.rule for each in found] == [Rule.FIXING_NEAR_EDGE] * len(told)
    assert [str(each.case[1]) for each in found] == told
    for each in found:
        assert each.parts == ("SH1",)
        assert each.figure is not None
        assert each.limit is not None
        assert each.figure < each.limit


@pytest.mark.parametrize(
    ("hole", "told"),
    [
        (1.9, []),
        (1.8, [Rule.PILOT_TOO_NARROW]),
        (2.5, []),
        (2.7, []),
        (2.8, [Rule.PILOT_TOO_WIDE]),
    ],
)
def test_pilot_holes_just_inside_and_just_outside(hole: float, told: list[Rule]) -> None:
    """In plywood 0.6 of 4 mm less one drill, 1.9; no wider than the root, 2.67."""
    unit = bored(kind=JointKind.SCREWED, diameter=4.0, across=9.0, along=50.0, hole=hole)
    assert [each.rule for each in fixing_places(unit)] == told


def test_a_drawer_with_too_much_in_it_and_a_door_too_heavy_are_told() -> None:
    drawers = unit_from(
        "size: {width: 600, height: 500, depth: 500}\n",
        carcass={"stock": "ply", "corners": "housed"},
        interior={
            "drawers": {
                "count": 2,
                "stock": "ply",
                "bottom": {"stock": "thin"},
                "slides": {"kind": "side"},
            }
        },
    )
    bottom = next(part for part in drawers.parts if part.role is Role.DRAWER_BOTTOM)
    loads = (Load(bottom.ref, "tins", lumps=(Lump(300.0, 150.0),)),)
    found = list(fixings_hold(replace(drawers, loading=Loading(loads))))
    assert Rule.DRAWER_OVERLOADED in {each.rule for each in found}
    assert all("put less" in each.remedy.lower() for each in found)
    fronts = tuple(
        replace(joint, fixings=tuple(replace(f, count=1, length=14.0) for f in joint.fixings))
        if drawers.part(joint.second).role is Role.DRAWER_FRONT
        else joint
        for joint in drawers.joints
    )
    loose = list(fixings_hold(replace(drawers, joints=fronts)))
    assert Rule.DRAWER_FRONT_LOOSE in {each.rule for each in loose}


@pytest.mark.parametrize("kind", ["cup", "butt"])
def test_a_door_too_heavy_for_its_hinges_is_told(kind: str) -> None:
    unit = unit_from(
        "size: {width: 600, height: 700, depth: 300}\n",
        carcass={"stock": "ply", "corners": "housed"},
        interior={"doors": {"count": 1, "stock": "ash", "hinge": {"kind": kind}}},
    )
    assert [each for each in fixings_hold(unit) if each.rule is Rule.DOOR_TOO_HEAVY] == []
    heavy = tuple(
        replace(part, blank=replace(part.blank, stock=replace(part.blank.stock, density=60000.0)))
        if part.role is Role.DOOR
        else part
        for part in unit.parts
    )
    told = [each.rule for each in fixings_hold(replace(unit, parts=heavy))]
    assert Rule.DOOR_TOO_HEAVY in told
    assert check_parts(unit)


def test_a_shelf_that_sags_too_much_draws_on_its_screws() -> None:
    found = {each.rule: each for each in fixings_hold(laden(4000.0))}
    assert found[Rule.FIXINGS_DRAWN].severity is Severity.WARNING


def test_a_runner_and_a_frame_that_carry_too_much_are_told() -> None:
    unit = unit_from(
        "size: {width: 600, height: 600, depth: 500}\n",
        carcass={"stock": "ply", "corners": "housed"},
        face_frame={"stock": "ash", "width": 45},
        interior={
            "drawers": {
                "count": 3,
                "stock": "ply",
                "bottom": {"stock": "thin"},
                "slides": {"kind": "runners"},
            }
        },
    )
    assert [each for each in fixings_hold(unit) if each.rule is Rule.JOINT_OVERLOADED] == []
    bottoms = [part.ref for part in unit.parts if part.role is Role.DRAWER_BOTTOM]
    loads = tuple(Load(ref, "tins", lumps=(Lump(300.0, 200.0),)) for ref in bottoms)
    leaden = tuple(
        replace(part, blank=replace(part.blank, stock=replace(part.blank.stock, density=9e5)))
        if part.role is Role.STILE
        else part
        for part in unit.parts
    )
    heavy = replace(unit, loading=Loading(loads), parts=leaden)
    found = {(each.rule, each.case[0]) for each in fixings_hold(heavy)}
    assert (Rule.DRAWER_OVERLOADED, "load on the foremost screw of a runner") in found
    assert (Rule.JOINT_OVERLOADED, "weight of the frame and its doors") in found
