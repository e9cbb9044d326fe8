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


def test_a_unit_longer_than_ten_metres_is_drawn_in_stretches_that_can_be_read() -> None:
    unit = unit_from(
        "size: {width: 10400, height: 2000, depth: 400}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [12000, 2500]}\n"
        "interior:\n"
        "  columns:\n" + "    - {width: 1 share, shelves: {count: 1}}\n" * 8
    )
    drawn = drawn_sheets(unit, A4)
    views = {view.view.name: each for each in drawn for view in each.sheet.views}
    assert views["Front"].sheet.scale == 50
    fronts = [name for name in views if name.startswith("Front, part")]
    assert len(fronts) >= 4
    assert all(views[name].sheet.scale <= 20 for name in fronts)
    noted = [
        note.text
        for each in drawn
        for view in each.sheet.views
        if view.view.name in fronts
        for note in view.view.notes
    ]
    # Every shelf is told once, every divider at which a stretch ends twice.
    assert all(noted.count(f"SH{number}") == 1 for number in range(1, 9))
    assert sorted(noted.count(f"DV{number}") for number in range(1, 8)) == [1] * (
        8 - len(fronts)
    ) + [2] * (len(fronts) - 1)
    # What is clear between the uprights is the same in all of them.
    widths = [
        dimension.text
        for each in drawn
        for view in each.sheet.views
        if view.view.name in fronts
        for dimension in view.view.dimensions
        if dimension.chain.startswith("columns") and dimension.text != "18"
    ]
    assert len(widths) == 8
    assert {float(each) for each in widths} <= {1279.7, 1279.8}


def test_every_part_of_two_hundred_has_its_ref() -> None:
    unit = unit_from(
        "size: {width: 5400, height: 2600, depth: 300}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [6000, 3000]}\n"
        "interior:\n"
        "  columns:\n" + "    - {width: 1 share, shelves: {count: 21}}\n" * 9
    )
    assert len(unit.parts) >= 200
    noted = {note.text for each in sheets_of(unit) for v in each.views for note in v.notes}
    assert {part.ref for part in unit.parts} <= noted
