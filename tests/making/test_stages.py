"""Stages: what is glued in one go, with which clamps, how square, and with which hardware."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from math import hypot
from pathlib import Path

import pytest
from hypothesis import HealthCheck, assume, given, settings

from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright import hardware_list, read_spec, set_out
from rodwright.making.glue_lines import Clamps, glue_up, is_glued
from rodwright.making.hardware import fixings_by_step
from rodwright.making.order import order_of
from rodwright.making.squareness import diagonals
from rodwright.making.stages import moves, stages_of
from rodwright.problems import ProblemsError
from rodwright.trade.gluing import SLOW_TIME, GlueTime, clamps_along
from rodwright.unit import JointKind, Role, Unit

FOLDER = Path(__file__).parents[2] / "models"
MODELS = sorted(FOLDER.glob("*.yaml"))
BOOKCASE = """
title: Bookcase
unit: mm
size: {width: 900, height: 1200, depth: 300}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18}
  thin: {kind: sheet, material: birch plywood, thickness: 6}
carcass: {stock: case, corners: housed}
interior: {shelves: {count: 2}}
back: {stock: thin}
"""


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_steps_have_all_the_hardware_of_the_list_and_each_is_in_one_stage(path: Path) -> None:
    _nothing_is_lost(set_out(read_spec(path)))


@settings(
    max_examples=25,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(wishes())
def test_nothing_of_random_units_is_lost_in_stages(wish: Wish) -> None:
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        assume(False)
        raise
    _nothing_is_lost(unit)


def _nothing_is_lost(unit: Unit) -> None:
    """All hardware and every step is in the stages, once."""
    order = order_of(unit)
    found: Counter[tuple[str, str]] = Counter()
    for fixings in fixings_by_step(unit, order):
        for each in fixings:
            found[each.name.casefold(), each.size] += each.count
    assert found == {(row.name.casefold(), row.size): row.quantity for row in hardware_list(unit)}
    stages = stages_of(unit, order)
    assert Counter(id(step) for stage in stages for step in stage.steps) == Counter(
        map(id, order.steps)
    )
    for stage in stages:
        for making in stage.makings:
            # What is made alike has as many steps, and moves take all of them in their order.
            assert len(making.steps) == len(stage.makings[0].steps)
            assert [step for move in moves(unit, making) for step in move] == list(making.steps)


def _made(unit: Unit) -> dict[str, int]:
    """Which stage each part comes in first, at the bench."""
    found: dict[str, int] = {}
    for number, stage in enumerate(stages_of(unit, order_of(unit))):
        for step in stage.steps:
            for ref in step.refs:
                found.setdefault(ref, number)
    return found


def test_a_sub_assembly_is_made_before_what_it_goes_into() -> None:
    for path in MODELS:
        unit = set_out(read_spec(path))
        stages = stages_of(unit, order_of(unit))
        made: set[str] = set()
        for stage in stages:
            for step in stage.steps:
                if step.brings:
                    assert step.brings in made, path.stem
            made |= {making.name for making in stage.makings}


def test_a_bookcase_is_glued_in_one_go_and_its_back_waits() -> None:
    unit = unit_from(BOOKCASE)
    carcass, back = stages_of(unit, order_of(unit))
    assert carcass.glued and not back.glued
    (making,) = carcass.makings
    assert making.glue is not None
    # Bottom and two shelves in housings at both ends, the top in a rebate at both.
    assert len(making.glue.lines) == 8
    deep = {ref: unit.part(ref).bounds().size[1] for ref in making.refs}
    expected = sum(
        min(deep[line.joint.first], deep[line.joint.second]) for line in making.glue.lines
    )
    assert making.glue.metres == pytest.approx(expected / 1000, rel=1e-3)
    # One front and one back at each of four levels, over the width and two pads.
    assert making.glue.clamps == (Clamps(8, 0, pytest.approx(900 + 2 * 20)),)
    assert [part for step in back.steps for part in step.refs] == ["BK1"]


def test_diagonals_are_those_of_pythagoras() -> None:
    unit = unit_from(BOOKCASE)
    found = diagonals(unit, ["SD1", "SD2", "BT1", "TP1"])
    assert found is not None and found.equal and found.axis == 1
    assert found.rising == pytest.approx(hypot(900, 1200)) == pytest.approx(1500)
    assert diagonals(unit, ["SD1"]) is None
    assert diagonals(unit, ["SD1", "SH1", "SH2"]) is None


def test_under_a_slope_the_diagonals_differ() -> None:
    unit = set_out(read_spec(FOLDER / "hostel-eaves.yaml"))
    found = diagonals(unit, [part.ref for part in unit.parts if part.role is not Role.BACK])
    assert found is not None and not found.equal


def test_a_drawer_is_measured_from_above() -> None:
    unit = set_out(read_spec(FOLDER / "tape-drawers.yaml"))
    (first, *_) = unit.motions
    box = [ref for ref in first.refs if unit.part(ref).role in (Role.DRAWER_SIDE, Role.DRAWER_END)]
    found = diagonals(unit, box)
    assert found is not None and found.axis == 2 and found.equal
    assert found.rising == pytest.approx(hypot(*found.size))


def test_a_glue_up_too_long_for_any_glue_is_split_between_its_steps() -> None:
    unit = set_out(read_spec(FOLDER / "library-wall.yaml"))
    turns = [stage for stage in stages_of(unit, order_of(unit)) if stage.turns > 1]
    assert turns
    for stage in turns:
        making = stage.makings[0]
        assert making.glue is not None
        joining = [step for step in making.steps if step.joints]
        assert making.glue.time.minutes <= SLOW_TIME.value or len(joining) == 1
    whole = glue_up(unit, [step for stage in turns for step in stage.steps])
    assert whole is not None and whole.time.minutes > SLOW_TIME.value


def test_shelves_that_are_lipped_alike_are_one_stage() -> None:
    unit = set_out(read_spec(FOLDER / "record-cabinet.yaml"))
    most = max(stages_of(unit, order_of(unit)), key=lambda stage: len(stage.makings))
    assert len(most.makings) == 9
    assert {len(making.steps) for making in most.makings} == {2}


def test_what_moves_or_can_be_undone_is_not_glued() -> None:
    for path in MODELS:
        unit = set_out(read_spec(path))
        for joint in unit.joints:
            if joint.kind.free or any("screw" in each.name for each in joint.fixings):
                assert not is_glued(unit, joint)


def test_a_sheet_back_is_glued_into_its_grooves_where_the_unit_hangs() -> None:
    unit = set_out(read_spec(FOLDER / "linen-cupboard.yaml"))
    (groove, *_) = (
        joint
        for joint in unit.joints
        if joint.kind is JointKind.GROOVE and unit.part(joint.second).role is Role.BACK
    )
    assert not is_glued(unit, groove)
    assert is_glued(replace(unit, hung=True), groove)


def test_time_and_clamps_are_counted() -> None:
    # Ten joints and four metres of glue line, eight clamps: 5 + 2 + 2 minutes.
    assert GlueTime.of(10, 4.0, 8) == GlueTime(9.0)
    assert GlueTime(9.0).quick and not GlueTime(12.0).quick
    assert GlueTime(12.0).slow and not GlueTime(25.0).slow
    assert [clamps_along(length, 200.0) for length in (90, 110, 400, 401, 1000)] == [1, 2, 2, 3, 5]
