"""A cutting plan on a page: what `cut` says of it, whole sentences as they are read."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from dataclasses import replace

from kit.cuttings import cutting, length_plan, sheet_plan
from rodwright.cutting.pieces import Piece
from rodwright.page import document as page
from rodwright.page.telling import cutting_sheet


def _table(sheet: page.Sheet, title: str) -> page.Table:
    return next(each for each in sheet.tables if each.title == title)


def test_what_to_buy_stands_first_with_its_cost() -> None:
    """By hand: one sheet at 74.00; of two lengths no price is known."""
    sheet = cutting_sheet(cutting())
    assert sheet.tables[0].title == "To buy"
    space = "\u00a0"
    assert sheet.tables[0].rows == (
        ("birch plywood, 18 mm", f"2440{space}x{space}1220", "1", "74.00", "74.00"),
        ("beech, 45 x 45 mm", "2000", "2", "?", "?"),
    )
    assert sheet.words[0].startswith("To pay: 74.00 and what has no price. ")
    assert "Without a price, and not in the sum: 2 lengths of beech, 45 x 45 mm, 2000 mm." in (
        sheet.notes
    )
    assert any("behind the door" in each for each in sheet.notes)


def test_before_the_pictures_stands_only_what_has_to_be_known_first() -> None:
    sheet = cutting_sheet(cutting())
    assert len(sheet.words) == 1
    # What is dangerous is told with the rest, below the pictures.
    assert len(sheet.notes) >= 3


def test_each_lot_says_how_good_its_plan_is() -> None:
    sheet = cutting_sheet(cutting())
    ply = _table(sheet, "birch plywood, 18 mm")
    assert ply.note == "2 sheets, 74.00, proven best (least cost)."
    assert [row[2] for row in ply.rows] == ["SD1, SD2", "SH1"]
    assert ply.refs == (("SD1", "SD2"), ("SH1",))
    legs = _table(sheet, "beech, 45 x 45 mm")
    assert "could be saved: none can take less than" in legs.note
    # By hand: of 2.98 m2 of plywood and 0.45 m2 of offcut, two sides of 0.6 and a shelf of 0.22.
    became = _table(sheet, "What becomes of it").rows[0]
    assert became[1:3] == ("3.43\u00a0m2", "1.42\u00a0m2")


def test_each_lot_has_its_pictures() -> None:
    sheet = cutting_sheet(cutting())
    captions = [each.caption for each in sheet.drawings]
    assert captions == [
        "birch plywood, 18 mm: 2 sheets, 74.00, proven best (least cost) (1 of 2)",
        "birch plywood, 18 mm: 2 sheets, 74.00, proven best (least cost) (2 of 2)",
        f"beech, 45 x 45 mm: {_table(sheet, 'beech, 45 x 45 mm').note.removesuffix('.')}",
    ]
    for each in sheet.drawings:
        assert ET.fromstring(each.svg).tag == "{http://www.w3.org/2000/svg}svg"


def test_what_found_no_place_is_told_first() -> None:
    planned = sheet_plan()
    short = replace(planned, plan=replace(planned.plan, left=(Piece("SD1", 2000.0, 300.0, 2),)))
    sheet = cutting_sheet(cutting(short, length_plan()))
    assert sheet.words[0] == "There is no place for 2 x SD1: there is too little stock."
