"""Cut list, hardware by the box and set-ups against the lists and parts that they come from."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

import rodwright
from rodwright.cutting.whole import Cutting
from rodwright.handover.cut_tables import labels_of
from rodwright.handover.lists import hardware_list, like_parts, parts_list
from rodwright.paper.lists.boxes import LOOSE, boxes_of
from rodwright.paper.lists.saw import saw_list
from rodwright.paper.lists.set_ups import set_ups
from rodwright.unit import Fixing, Joint, JointKind, Unit
from rodwright.unit.shop_part import shop_part

MODELS = sorted(Path("models").resolve().glob("*.yaml"))


@pytest.fixture(scope="module", params=MODELS, ids=lambda path: path.stem)
def unit(request: pytest.FixtureRequest) -> Unit:
    return rodwright.set_out(rodwright.read_spec(request.param))


@pytest.fixture(scope="module")
def alcove() -> tuple[Unit, Cutting]:
    spec = rodwright.read_spec(next(each for each in MODELS if each.stem == "reading-alcove"))
    return rodwright.set_out(spec), rodwright.cut([spec])


def test_the_saw_list_has_every_part_and_its_fence_is_set_from_wide_to_narrow(unit: Unit) -> None:
    blocks = saw_list(unit)
    refs = [ref for block in blocks for group in block.groups for row in group for ref in row.refs]
    assert sorted(refs) == sorted(part.ref for part in unit.parts)
    for block in blocks:
        widths = [{round(row.width, 3) for row in group} for group in block.groups]
        assert all(len(each) == 1 for each in widths)
        assert all(max(a) > max(b) for a, b in pairwise(widths))
        for group in block.groups:
            assert [row.length for row in group] == sorted(
                (row.length for row in group), reverse=True
            )


def test_sizes_in_the_saw_list_are_those_of_the_parts_list(unit: Unit) -> None:
    cut = {row.refs: {row.rough_length, row.rough_width} for row in parts_list(unit)}
    for block in saw_list(unit):
        for row in (row for group in block.groups for row in group):
            assert {row.length, row.width} == cut[row.refs]


def test_a_plan_gives_the_pieces_that_are_truly_cut(alcove: tuple[Unit, Cutting]) -> None:
    unit, cutting = alcove
    wanted = Counter(
        label.ref
        for planned in cutting.lots
        for piece in planned.lot.pieces
        for label in labels_of(planned.lot, piece)
    )
    told: Counter[str] = Counter()
    for block in saw_list(unit, cutting):
        assert block.quantity == sum(row.quantity for group in block.groups for row in group)
        told.update(ref for group in block.groups for row in group for ref in row.refs)
    assert told == wanted


def test_boxes_hold_the_hardware_list(unit: Unit) -> None:
    boxes = boxes_of(unit)
    assert [(each.name, each.size, each.count) for each in boxes.articles] == [
        (row.name, row.size, row.quantity) for row in hardware_list(unit)
    ]
    assert all(len(each.counts) == len(boxes.names) for each in boxes.articles)
    assert all(any(each.counts[at] for each in boxes.articles) for at in range(len(boxes.names)))
    assert all(each.buy >= each.count for each in boxes.articles)


def test_a_joint_is_in_the_box_of_what_comes_to_it(alcove: tuple[Unit, Cutting]) -> None:
    unit, _ = alcove
    screw, feet = Fixing("wood screw", 21, "4 x 40 mm"), Fixing("levelling foot", 4)
    joint = Joint(JointKind.SCREWED, "SD1", "ST1", (0.0, 0.0, 0.0), (screw,))
    boxes = boxes_of(replace(unit, joints=(joint,), fixings=(feet,)))
    assert boxes.names == ("face frame", LOOSE)
    rows = {each.name: (each.counts, each.buy) for each in boxes.articles}
    # A tenth of 21 screws over, rounded up; feet are bought as they are counted.
    assert rows == {"wood screw": ((21, 0), 24), "levelling foot": ((0, 4), 4)}


def test_set_ups_make_every_working_once(unit: Unit) -> None:
    wanted = 0
    for parts in like_parts(unit):
        shop = shop_part(parts)
        wanted += len(parts) * len((*shop.part.workings, *shop.later))
    rows = set_ups(unit)
    assert sum(row.times for row in rows) == wanted
    assert len({(row.tool, row.setting) for row in rows}) == len(rows)


def test_what_a_joiner_sets_for_the_alcove(alcove: tuple[Unit, Cutting]) -> None:
    rows = {(row.setting): (row.times, row.refs) for row in set_ups(alcove[0])}
    # Two stiles and two rails, mitred at both ends.
    assert rows["mitre, 45° off square"] == (8, ("ST1", "ST2", "RL1", "RL2"))
    # Four doubled shelves of 18 mm, let in at both ends.
    assert rows["housing 36 wide, 6 deep"][0] == 8
