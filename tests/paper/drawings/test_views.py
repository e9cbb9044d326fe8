"""The views of drawings: which there are, and what they say, held to the parts by hand."""

from __future__ import annotations

import math

import pytest

from kit.samples import bookcase
from kit.specs import unit_from
from rodwright.paper.drawings.sheets import sheets_of
from rodwright.pictures.drafting.views import View
from rodwright.unit import Unit

CUPBOARD = """
size: {width: 1000, height: 900, depth: 450}
base: {kind: plinth, height: 80, stock: ply}
interior:
  columns:
    - {width: 1 share, shelves: {count: 1}, doors: {hung: overlay, stock: ply}}
    - width: 1 share
      drawers: {count: 2, hung: overlay, front_stock: ply, stock: ply, bottom: {stock: thin}}
back: {stock: thin, fixing: rebated}
"""


def views(unit: Unit) -> dict[str, View]:
    return {view.name: view for sheet in sheets_of(unit) for view in sheet.views}


def told(view: View) -> list[list[str]]:
    """The figures of each chain."""
    chains: dict[tuple[str, str], list[str]] = {}
    for each in view.dimensions:
        chains.setdefault((each.side, each.chain), []).append(each.text)
    return list(chains.values())


def test_a_bookcase_has_its_sheets() -> None:
    found = [(sheet.name, [view.name for view in sheet.views]) for sheet in sheets_of(bookcase())]
    assert found == [
        ("general", ["Front", "From the left", "From above"]),
        ("sections", ["Carcass", "Section A-A", "Section B-B"]),
        ("details", ["Bottom front, A-A", "Bottom rear, A-A", "Left front, B-B", "Left rear, B-B"]),
    ]


def test_sections_of_a_bookcase_by_hand() -> None:
    found = views(bookcase())
    assert told(found["Section A-A"]) == [
        ["18", "464", "18", "482", "18"],
        ["45", "910", "45"],
        ["18", "500", "1000"],
        ["6", "300", "22"],
        ["328"],
        ["1000"],
    ]
    assert told(found["Section B-B"]) == [
        ["45", "710", "45"],
        ["18", "764", "18"],
        ["22", "300", "6"],
        ["800"],
        ["328"],
    ]
    assert told(found["Left front, B-B"]) == [["18", "27"], ["22"]]


def test_a_cupboard_says_how_its_doors_and_drawers_go() -> None:
    unit = unit_from(CUPBOARD)
    found = views(unit)
    (triangle,) = found["Front"].moved
    door = next(part for part in unit.parts if part.ref == "DO1").bounds()
    # Hinged at the left: the point of the triangle is at the middle of its left edge.
    assert triangle[1] == (door.low[0], (door.low[2] + door.high[2]) / 2)
    assert {x for x, _ in (triangle[0], triangle[2])} == {door.high[0]}
    # In plan the door's leaf reaches as far out as it is wide, and a little for its hinge.
    reach = -min(y for path in found["From above"].moved for _, y in path)
    assert reach >= door.size[0]
    assert [each.text for each in found["From above"].dimensions if each.side == "right"]
    assert "Carcass" in found
    refs = {note.text for note in found["Carcass"].notes}
    assert refs == {
        part.ref for part in unit.parts if part.ref[:2] in ("SD", "BT", "TP", "DV", "SH", "BK")
    }


def test_hidden_panels_are_dashed_where_no_line_shows() -> None:
    unit = unit_from(CUPBOARD)
    front = views(unit)["Front"]
    shelf = next(part for part in unit.parts if part.ref == "SH1").bounds()
    levels = {round(a[1], 3) for a, b in front.hidden if abs(a[1] - b[1]) < 1e-6}
    assert {round(shelf.low[2], 3), round(shelf.high[2], 3)} <= levels


def test_layers_of_a_shelf_share_their_note() -> None:
    unit = unit_from(
        "size: {width: 800, height: 900, depth: 300}\n"
        "interior: {shelves: {count: 1, layers: 2, fixed: true}}\n"
    )
    found = views(unit)
    for name in ("Front", "Section A-A"):
        refs = [note.text for note in found[name].notes]
        assert "SH1a/b" in refs
        assert not {"SH1a", "SH1b"} & set(refs)
    # The section tells the layers as one board.
    assert ["18", "414", "36", "414", "18"] in told(found["Section A-A"])


def test_details_are_broken_off_where_boards_run_on() -> None:
    detail = views(bookcase())["Left front, B-B"]
    side = next(cut for cut in detail.cuts if cut.ref == "SD1")
    # 18 mm across: the side runs on to the back; its other three sides are edges.
    assert [math.dist(*line) for line in side.broken] == [pytest.approx(18.0)]
    stile = next(cut for cut in detail.cuts if cut.ref == "ST1")
    assert not stile.broken


def test_what_is_cut_out_is_dimensioned_where_it_is_looked_into() -> None:
    unit = unit_from(
        "size: {width: 900, height: 1200, depth: 400}\n"
        "interior: {shelves: {count: 1, fixed: true}}\n"
        "back: {stock: thin, fixing: applied}\n"
        "cutouts:\n"
        "  - {kind: socket, at: [300, 200], width: 150, height: 90}\n"
        "  - {kind: pipe, at: [100, 120], diameter: 40}\n"
        "  - {kind: skirting, height: 100, depth: 18}\n"
    )
    found = views(unit)
    # The socket's hole is 5 larger all round than its plate: 295 from the left, 195 up.
    front = found["Front"]
    assert "socket" in {note.text for note in front.notes}
    assert ["295", "160"] in told(front)
    assert ["195", "100"] in told(front)
    # The pipe's is 5 larger all round than the pipe; its middle is 100 from the left, and 120 from
    # the rear of the unit.
    plan = found["Section B-B"]
    assert "pipe" in {note.text for note in plan.notes}
    assert ["75", "50"] in told(plan)
    assert ["50", "95"] in told(plan)
    # The skirting's notch is 3 more than the skirting; 6 of its 18 are taken by the back.
    side = found["Section A-A"]
    assert "skirting" in {note.text for note in side.notes}
    assert ["103"] in told(side)


def test_an_opening_is_drawn_as_far_as_its_ceiling_slopes() -> None:
    """By hand: at 45 degrees 800 down are 800 across; what is off the ceiling is told square to it,
    and nothing of the walls and the top that lies over it."""
    unit = unit_from("""
opening: {width: {bottom: 1400, middle: 1400, top: 1400}, height: 2000, depth: 400}
slope: {falls: right, low: 1200, pitch: 45, clearance: 6}
""")
    found = views(unit)["In the opening"]
    sizes = {each.side: each.text for each in found.dimensions if each.chain.startswith("opening")}
    assert sizes == {"left": "2000", "right": "1200", "above": "600", "below": "1400"}
    assert "gap 6, square" in [each.text for each in found.notes]
    off = 1400 - unit.size[0]
    for line in found.outline:
        for x, z in line:
            assert z <= 1200 + (1400 - off / 2 - x) + 0.01
