"""What a part sheet says, on parts whose answers are known."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from kit.panels import panel, unit_of
from kit.specs import unit_from
from rodwright.paper.part_sheets import PartSheet, part_sheets
from rodwright.paper.part_sheets.figures import Entry, Row, Stretch
from rodwright.setout import set_out
from rodwright.unit import Hole, Surface, Unit
from rodwright.wishes import read_spec

MODELS = Path(__file__).parents[3] / "models"


@pytest.fixture(scope="module")
def alcove() -> Unit:
    return set_out(read_spec(MODELS / "reading-alcove.yaml"))


@pytest.fixture(scope="module")
def wall() -> Unit:
    return set_out(read_spec(MODELS / "archive-wall.yaml"))


def sheet(unit: Unit, ref: str) -> PartSheet:
    return next(each for each in part_sheets(unit) if ref in each.refs)


def entries(found: PartSheet) -> list[Entry]:
    return [entry for operation in found.operations for entry in operation.entries]


def told(found: PartSheet, kind: str) -> list[tuple[object, ...]]:
    return [
        (entry.figures.get("x"), entry.figures.get("y"), entry.purpose)
        for entry in entries(found)
        if entry.kind == kind
    ]


def test_both_sides_are_measured_from_their_front_edges_and_bottom_ends(wall: Unit) -> None:
    left, right = sheet(wall, "SD1"), sheet(wall, "SD2")
    for each in (left, right):
        assert (each.lies.end, each.lies.edge) == ("bottom end", "front edge")
    assert (left.lies.up, left.lies.edge_lies) == ("right face", "far")
    assert (right.lies.up, right.lies.edge_lies) == ("left face", "near")
    figures = [[(e.kind, dict(e.figures)) for e in entries(each)] for each in (left, right)]
    names = [
        str(each).replace("left face", "face").replace("right face", "face") for each in figures
    ]
    assert names[0] == names[1]
    assert left.hands.mirrored == ("SD2",)
    assert right.hands.mirrored == ("SD1",)


def test_housings_say_which_shelf_goes_there(wall: Unit) -> None:
    assert told(sheet(wall, "SD1"), "housing") == [
        (Stretch("438", "456"), Stretch("8", "464"), "SH2"),
        (Stretch("1076", "1094"), Stretch("8", "464"), "SH1"),
    ]


def test_holes_say_what_goes_there(wall: Unit) -> None:
    assert told(sheet(wall, "SD1"), "hole") == [
        (("530.5", "562.5", "978.5", "1010.5"), ("37",), "hinge plate, door 1"),
        (
            (Row("690.5", "32", 5, "818.5"), Row("1166.3", "32", 36, "2286.3")),
            ("37", "427"),
            "row for loose shelves",
        ),
    ]
    cups = told(sheet(wall, "DO1"), "hole")
    assert cups[0] == (("98.5", "546.5"), ("22.5",), "hinge cup, door 1, door 9")


def test_a_door_is_cut_under_and_edged_before_it_is_bored(wall: Unit) -> None:
    assert sheet(wall, "DO1").work == (
        "Cut 634.8 x 303.5 x 19 out of front, grain along the length: 0.6 under at both ends and "
        "both edges for the edging.",
        "Edge both ends and both edges with oak veneer, 0.6 thick: it is then 636 x 304.7.",
        "Pencil the face mark on the rear face and the edge mark on the left edge; measure from "
        "the left edge and the bottom end.",
        "Rear face up, bottom end at your left, left edge towards you: nos. 1 to 2.",
    )


def test_layers_are_glued_up_before_anything_else(alcove: Unit) -> None:
    assert sheet(alcove, "SH1a").work[1].startswith("Glue it up in layers (SH1a to SH1b")
    lipping = sheet(alcove, "LP2").work
    assert lipping[1].startswith("Glue it to SH1a, SH1b, SH2a and 5 more, then trim it flush to ")


def test_slides_have_their_lines_on_uprights_and_boxes() -> None:
    unit = set_out(read_spec(MODELS / "tape-drawers.yaml"))
    upright, box = sheet(unit, "SD1"), unit.part("DRS7")
    lines = [each for each in upright.marks if each.kind == "line"]
    assert [each.purpose for each in lines] == [
        f"slide of drawer {number}, middle line, begins 2 before the front edge"
        for number in (4, 3, 2, 1)
    ]
    low = unit.part("SD1").bounds().low
    middle, first, last = box.bounds().centre[2], box.bounds().low[1], box.bounds().high[1]
    assert first - low[1] == pytest.approx(-2)
    assert lines[0].figures["x"] == (f"{middle - low[2]:g}",)
    assert lines[0].figures["y"] == Stretch("front edge", f"{last - low[1]:g}")
    (own,) = (each for each in sheet(unit, "DRS7").marks if each.kind == "line")
    assert own.purpose == "slide, middle line"
    assert own.into == ("left face",)
    assert own.figures["y"] == (f"{middle - box.bounds().low[2]:g}",)
    assert own.figures["x"] == Stretch("front end", "rear end")


def test_holes_of_the_other_face_hide_no_slide() -> None:
    wish = """
title: Cabinet
size: {width: 1200, height: 800, depth: 400}
carcass: {stock: ply, corners: housed}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
interior:
  columns:
    - {width: 1 share, shelves: {count: 1, fixed: false}}
    - {width: 500, drawers: {count: 2, hung: overlay}}
"""
    unit = unit_from(wish)
    upright = sheet(unit, "DV1")
    assert any(each.purpose == "row for loose shelves" for each in entries(upright))
    told = [each.purpose for each in upright.marks]
    out = unit.part("DV1").bounds().low[1] - unit.part("DRS1").bounds().low[1]
    assert out > 0
    assert told == [
        f"slide of drawer {number}, middle line, begins {out:g} before the front edge"
        for number in (2, 1)
    ]


def test_what_is_measured_from_a_trimmed_end_says_how_far_in_that_is() -> None:
    found = set_out(read_spec(MODELS / "linen-cupboard.yaml"))
    stile = sheet(found, "ST1")
    assert stile.work[1].endswith(
        "measure from the face edge and the near end, 2 in from the end as cut."
    )
    assert stile.work[-1] == "Trim both ends when it is fitted, to 2036 long."


def test_a_grid_of_holes_is_one_entry() -> None:
    holes = [
        Hole(Surface.FACE, (20.0 + 32 * a, 30.0 + 60 * b), 5.0, 10.0)
        for a in range(8)
        for b in range(2)
    ]
    (found,) = part_sheets(unit_of(panel(*holes)))
    (entry,) = entries(found)
    assert entry.count == 16
    assert entry.figures["x"] == (Row("20", "32", 8, "244"),)
    assert entry.figures["y"] == ("30", "90")


def test_a_pitch_that_would_not_come_to_the_last_hole_is_not_told() -> None:
    holes = [Hole(Surface.FACE, (20.0 + 30.037 * at, 30.0), 5.0, 10.0) for at in range(8)]
    (found,) = part_sheets(unit_of(panel(*holes)))
    (entry,) = entries(found)
    assert entry.figures["x"] == ("20", "50", "80.1", "110.1", "140.1", "170.2", "200.2", "230.3")


def test_metric_ware_is_told_as_it_is_sold_in_a_sheet_in_inches() -> None:
    unit = unit_from(
        """
unit: in
size: {width: 30, height: 36, depth: 12}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 3/4, size: [96, 48]}
  thin: {kind: sheet, material: birch plywood, thickness: 1/4, size: [96, 48]}
carcass: {stock: ply, corners: butted}
back: {stock: thin, fixing: applied}
interior:
  columns:
    - {width: 1 share, doors: {hung: overlay, count: 1}}
    - {width: 1 share, shelves: {count: 1, fixed: true}}
"""
    )
    door = next(each for each in part_sheets(unit) if each.name == "Door")
    cup = next(each for each in entries(door) if "cup" in each.purpose)
    assert cup.figures["diameter"] == "35 mm (1 3/8)"


@pytest.mark.parametrize("model", sorted(MODELS.glob("*.yaml")), ids=lambda path: path.stem)
def test_what_goes_there_is_joined_to_the_part(model: Path) -> None:
    """The refs were found by where things lie; the joints say the same."""
    unit = set_out(read_spec(model))
    joined = {frozenset((joint.first, joint.second)) for joint in unit.joints}
    told = 0
    for found in part_sheets(unit):
        for entry in (*entries(found), *found.marks):
            if entry.kind not in ("mitre", "bevel", "eased arris"):
                assert entry.purpose, (found.refs, entry)
            for ref in re.findall(r"\b[A-Z]{2,3}[0-9]+[a-z]?\b", entry.purpose):
                told += 1
                if ref not in found.refs:
                    pairs = [frozenset((ref, own)) for own in found.refs]
                    assert joined.intersection(pairs), (found.refs, entry)
    assert told > 0


def test_every_fixing_of_a_part_is_told_on_its_sheet(wall: Unit) -> None:
    for found in part_sheets(wall):
        refs = set(found.refs)
        names = {
            fixing.name
            for joint in wall.joints
            if refs & {joint.first, joint.second}
            for fixing in joint.fixings
        }
        assert {name for name in names if any(name in each for each in found.held_by)} == names


def test_pocket_screws_say_where_they_go() -> None:
    unit = unit_from(
        """
size: {width: 900, height: 900, depth: 400}
carcass: {stock: ply, corners: dowelled}
back: {stock: thin, fixing: applied}
interior:
  columns:
    - {width: 1 share, shelves: {count: 1, ends: pocket-screwed}}
    - {width: 1 share, shelves: {count: 1, fixed: true}}
"""
    )
    shelf = sheet(unit, "SH1")
    assert [each.purpose for each in entries(shelf) if each.kind == "pocket hole"] == [
        "pocket screw to SD1",
        "pocket screw to DV1",
    ]


@pytest.mark.parametrize(("stopped", "squared"), [(0, False), (20, True)])
def test_stopped_ends_that_take_a_square_piece_are_squared(stopped: int, squared: bool) -> None:
    unit = unit_from(
        "size: {width: 600, height: 800, depth: 300}\n"
        f"interior: {{shelves: {{count: 1, ends: housed, stopped: {stopped}}}}}\n"
    )
    found = sheet(unit, "SD1")
    (number,) = (each.number for each in entries(found) if each.purpose == "SH1")
    said = [each for each in found.work if each.startswith("Square the stopped ends")]
    assert any(f" {number} " in each for each in said) is squared


def test_screws_without_bored_places_are_marked_from_the_pieces_in_place() -> None:
    unit = unit_from(
        "size: {width: 900, height: 800, depth: 380}\nbase: {kind: plinth, height: 90}\n"
        "interior: {drawers: {count: 2, hung: overlay}}\n"
    )
    (bottom,) = (each for each in sheet(unit, "BT1").held_by if "PL1" in each)
    assert "clearance" in bottom
    assert bottom.endswith(", marked from the pieces in place")
    (front,) = (each for each in sheet(unit, "DRE1").held_by if "DRF1" in each)
    assert "in place" not in front
