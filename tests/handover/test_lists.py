"""The parts list and the hardware list."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.samples import ASH, bookcase
from kit.specs import unit_from
from rodwright.handover.lists import HardwareRow, common_name, hardware_list, parts_list
from rodwright.jobs.new import model_names, model_path
from rodwright.mass import unit_weight
from rodwright.setout import set_out
from rodwright.unit import Edging, Fixing, Joint, JointKind, Part, Role, Surface, Unit
from rodwright.unit.finish import Finish
from rodwright.wishes import read_spec


def test_rows_of_the_sample_bookcase() -> None:
    rows = parts_list(bookcase())
    assert [(row.refs, row.name) for row in rows] == [
        (("SD1", "SD2"), "Side"),
        (("BT1",), "Bottom"),
        (("SH1",), "Shelf"),
        (("TP1",), "Top"),
        (("BK1",), "Back"),
        (("ST1",), "Left stile"),
        (("ST2",), "Right stile"),
        (("RL1",), "Bottom rail"),
        (("RL2",), "Top rail"),
    ]


def test_a_row_in_full() -> None:
    side = parts_list(bookcase())[0]
    assert (side.length, side.width, side.thickness) == (1000.0, 300.0, 18.0)
    assert (side.stock, side.material, side.grain) == ("case", "birch plywood", "lengthwise")
    assert side.workings == tuple(
        f"housing 18 x 6 deep at {at} from the bottom end, on the face" for at in (0, 482, 982)
    )
    assert side.lie == (
        "length bottom to top",
        "SD1: face edge rear, face right",
        "SD2: face edge front, face left",
    )
    assert (side.measured, side.up) == ("as cut", "face")
    assert side.reference == "x from the bottom end, y from the face edge"
    assert (side.second_side, side.notes) == ("", ())
    assert side.shows == ("reverse",)
    # 1000 x 300 x 18 less three housings of 300 x 18 x 6, at 680 kg/m3.
    assert math.isclose(side.weight_each, (1000 * 300 * 18 - 3 * 300 * 18 * 6) * 680e-9)
    assert side.weight == 2 * side.weight_each
    assert side.label == "SD1 Side, 2 off"


def test_handed_pieces_are_rows_of_their_own() -> None:
    """The left and right stiles are eased on opposite edges: one can't be turned into the other."""
    names = [row.name for row in parts_list(bookcase())]
    assert "Left stile" in names
    assert "Right stile" in names


def test_what_tells_pieces_apart_tells_rows_apart() -> None:
    unit = bookcase()
    side = unit.part("SD2")
    for changed in (
        replace(side, lipped=("front",)),
        replace(side, edged=(Edging(Surface.FACE_EDGE, "veneer", 0.6),)),
        replace(side, blank=replace(side.blank, stock=ASH)),
        replace(side, blank=replace(side.blank, trim_length=20.0)),
        replace(side, workings=side.workings[:1]),
        replace(side, name="Right end"),
    ):
        parts = tuple(changed if part.ref == "SD2" else part for part in unit.parts)
        assert parts_list(replace(unit, parts=parts))[0].refs == ("SD1",)


def test_rough_sizes_carry_what_is_trimmed_off() -> None:
    unit = bookcase()
    rail = unit.part("RL1")
    blank = replace(rail.blank, trim_length=20.0, trim_width=5.0)
    row = parts_list(replace(unit, parts=(replace(rail, blank=blank),)))[0]
    assert (row.length, row.rough_length) == (800.0, 820.0)
    assert (row.width, row.rough_width) == (45.0, 50.0)


@settings(max_examples=30)
@given(st.permutations(bookcase().parts))
def test_every_part_is_on_the_list_once_and_the_weights_add_up(parts: list[Part]) -> None:
    unit = replace(bookcase(), parts=tuple(parts))
    rows = parts_list(unit)
    assert sorted(ref for row in rows for ref in row.refs) == sorted(p.ref for p in unit.parts)
    assert math.isclose(sum(row.weight for row in rows), unit_weight(unit), rel_tol=1e-9)


def test_common_names() -> None:
    assert common_name(("Left side", "Right side")) == "Side"
    assert common_name(("Mid stile", "Mid stile")) == "Mid stile"
    assert common_name(("Shelf",)) == "Shelf"


def test_hardware_is_counted_over_joints_and_unit() -> None:
    pins = Fixing("shelf pin", 2, "5 mm", "5 mm")
    screws = Fixing("wood screw", 3, "4 x 40 mm", "clearance 4.5 mm, pilot 2.5 mm")
    joints = (
        Joint(JointKind.RESTING, "SD1", "SH1", (0, 0, 0), (pins,)),
        Joint(JointKind.RESTING, "SD2", "SH1", (0, 0, 0), (pins, screws)),
        Joint(
            JointKind.SCREWED,
            "SD2",
            "TP1",
            (0, 0, 0),
            (replace(screws, count=2, pilot="pilot 3 mm"),),
        ),
        Joint(JointKind.BUTT, "SD2", "BK1", (0, 0, 0)),
    )
    feet = (Fixing("foot", 4, "100 mm"), Fixing("wood screw", 16, "4 x 16 mm"))
    unit: Unit = replace(bookcase(), joints=joints, fixings=feet)
    assert hardware_list(unit) == (
        HardwareRow("foot", "100 mm", 4, (), ()),
        HardwareRow("shelf pin", "5 mm", 4, ("5 mm",), ("resting on pins: SH1",)),
        HardwareRow("wood screw", "4 x 16 mm", 16, (), ()),
        HardwareRow(
            "wood screw",
            "4 x 40 mm",
            5,
            ("clearance 4.5 mm, pilot 2.5 mm", "pilot 3 mm"),
            ("resting on pins: SH1", "butted and screwed: TP1"),
        ),
    )


def test_many_refs_and_ways_to_drill_are_only_counted() -> None:
    joints = tuple(
        Joint(
            JointKind.DOWEL,
            "SD1",
            f"SH{number}",
            (0, 0, 0),
            (Fixing("dowel", 2, "8 x 40 mm", f"8 mm, {20 + number} mm deep"),),
        )
        for number in range(1, 11)
    )
    (row,) = hardware_list(replace(bookcase(), joints=joints))
    assert row.quantity == 20
    assert row.uses == ("dowel: SH1, SH2, SH3, SH4, SH5, SH6, SH7, SH8, and 2 more",)
    assert row.holes == (*(f"8 mm, {20 + number} mm deep" for number in range(1, 5)), "and 6 more")


def test_edging_makes_the_blank_smaller_and_is_named_by_place() -> None:
    unit = bookcase()
    shelf = unit.part("SH1")
    surfaces = (Surface.FACE_EDGE, Surface.BACK_EDGE, Surface.NEAR_END)
    edged = tuple(Edging(surface, "abs", 2.0) for surface in surfaces)
    blank = replace(shelf.blank, trim_length=10.0)
    row = parts_list(replace(unit, parts=(replace(shelf, blank=blank, edged=edged),)))[0]
    assert row.edged == ("front edge", "rear edge", "left end")
    assert (row.length, row.rough_length) == (776.0, 784.0)
    assert (row.width, row.rough_width) == (300.0, 296.0)


@pytest.mark.parametrize("name", model_names())
def test_everything_bought_says_what_it_is_for(name: str) -> None:
    unit = set_out(read_spec(model_path(name)))
    assert [row.name for row in hardware_list(unit) if not row.uses] == []


def test_pieces_of_two_finishes_are_two_rows() -> None:
    text = (
        "size: {width: 800, height: 900, depth: 300}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "  front: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "interior: {rows: [{height: 1 share, shelves: 1}, {height: 1 share, shelves: 1}]}\n"
    )
    unit = unit_from(text)
    (row,) = [row for row in parts_list(unit) if row.role is Role.SHELF]
    assert row.finish == ""
    painted = replace(
        unit,
        parts=tuple(
            replace(part, finish=Finish("paint", "#2e8b57")) if part.ref == row.refs[0] else part
            for part in unit.parts
        ),
    )
    rows = [row for row in parts_list(painted) if row.role is Role.SHELF]
    assert [(each.refs, each.finish) for each in rows] == [
        (row.refs[:1], "paint #2e8b57, satin"),
        (row.refs[1:], ""),
    ]
