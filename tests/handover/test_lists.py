"""The parts list and the fixings list."""

from __future__ import annotations

import math
from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from rodwright.handover.lists import FixingsRow, common_name, fixings_list, parts_list
from rodwright.mass import unit_weight
from rodwright.parts import Fixing, Joint, JointKind, Part, Unit
from samples import ASH, bookcase


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
        f"housing 18 x 6 deep at {at} from the bottom end, on the reverse" for at in (0, 482, 982)
    )
    assert side.lie == (
        "length bottom to top",
        "SD1: face edge front, face left",
        "SD2: face edge rear, face right",
    )
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


@settings(max_examples=30, deadline=None)
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


def test_fixings_are_counted_over_all_joints() -> None:
    pins, screws = Fixing("shelf pin, 5 mm", 2), Fixing("screw 4 x 40", 3)
    joints = (
        Joint(JointKind.RESTING, "SD1", "SH1", (0, 0, 0), (pins,)),
        Joint(JointKind.RESTING, "SD2", "SH1", (0, 0, 0), (pins, screws)),
        Joint(JointKind.BUTT, "SD2", "BK1", (0, 0, 0)),
    )
    unit: Unit = replace(bookcase(), joints=joints)
    assert fixings_list(unit) == (
        FixingsRow("screw 4 x 40", 3),
        FixingsRow("shelf pin, 5 mm", 4),
    )
