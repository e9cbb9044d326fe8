"""Views on sheets: numbered, at scales that can be read, none lost."""

from __future__ import annotations

from kit.samples import bookcase
from kit.specs import unit_from
from rodwright.paper.drawings.layout import drawn_sheets
from rodwright.paper.drawings.sheets import sheets_of
from rodwright.pictures.drafting.figures import PAPERS
from rodwright.unit import Unit

A4 = PAPERS["mm"][:1]


def shown(unit: Unit) -> list[str]:
    return [view.view.name for each in drawn_sheets(unit, A4) for view in each.sheet.views]


def test_every_view_of_a_bookcase_is_on_a_numbered_sheet() -> None:
    unit = bookcase()
    assert shown(unit) == [view.name for sheet in sheets_of(unit) for view in sheet.views]
    drawn = drawn_sheets(unit, A4)
    assert [each.sheet.titles.sheet for each in drawn] == [
        (number, len(drawn)) for number in range(1, len(drawn) + 1)
    ]
    assert len({each.name for each in drawn}) == len(drawn)
    assert drawn[0].sheet.titles.supplement == "Front, side and plan"
    assert {each.sheet.paper.name for each in drawn} == {"A4"}
    assert all(each.sheet.scale <= 20 for each in drawn)


def test_a_unit_of_one_board_has_its_sheets() -> None:
    whole = bookcase()
    shelf = whole.part("SH1")
    unit = Unit("One board", shelf.bounds(), (shelf,))
    assert shown(unit)[:3] == ["Front", "From the left", "From above"]


def test_a_unit_longer_than_ten_metres_still_comes_on_paper() -> None:
    unit = unit_from(
        "size: {width: 11000, height: 2400, depth: 400}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [12000, 2500]}\n"
        "interior:\n"
        "  columns:\n" + "    - {width: 1 share, shelves: {count: 4}}\n" * 14
    )
    drawn = drawn_sheets(unit, A4)
    assert shown(unit) == [view.name for sheet in sheets_of(unit) for view in sheet.views]
    assert max(each.sheet.scale for each in drawn) == 100
