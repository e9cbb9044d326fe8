"""The workbook read by openpyxl, and its parts as plain XML (ECMA-376, Office Open XML)."""

from __future__ import annotations

import io
import xml.etree.ElementTree as ElementTree
from dataclasses import replace
from fractions import Fraction
from typing import Any
from zipfile import ZipFile

import openpyxl
import pytest

from kit import samples
from rodwright.handover.list_files import lists_xlsx
from rodwright.handover.lists import parts_list
from rodwright.lengths import format_length
from rodwright.mass import unit_weight
from rodwright.unit import Fixing, Joint, JointKind, Unit

SHEET = {"m": "http://schemas.openxmlformats.org/spreadsheetml/2006/main"}
TERMS = "{http://purl.org/dc/terms/}"


def awkward() -> Unit:
    """A unit with texts that a careless writer takes for formulas, and a fixing."""
    unit = samples.bookcase()
    shelf = unit.part("SH1")
    stock = replace(shelf.blank.stock, name="=1+1", material="+44 & <ash>")
    changed = replace(shelf, name="@Shelf", blank=replace(shelf.blank, stock=stock))
    parts = tuple(changed if part.ref == "SH1" else part for part in unit.parts)
    joint = Joint(JointKind.RESTING, "SD1", "SH1", (0, 0, 0), (Fixing("-pin", 4),))
    return replace(unit, title="Étagère & co", parts=parts, joints=(joint,))


def sheet(content: bytes, name: str) -> Any:
    return openpyxl.load_workbook(io.BytesIO(content))[name]


def column(content: bytes, heading: str) -> list[Any]:
    rows = list(sheet(content, "Parts").values)
    at = rows[0].index(heading)
    return [row[at] for row in rows[1:]]


def test_rows_are_the_parts_list_and_a_total() -> None:
    unit = samples.bookcase()
    content = lists_xlsx(unit)
    rows = parts_list(unit)
    assert column(content, "refs") == [", ".join(row.refs) for row in rows] + [None]
    assert column(content, "length mm") == [row.length for row in rows] + [None]
    assert (
        column(content, "quantity")[-1] == len(unit.parts) == sum(column(content, "quantity")[:-1])
    )
    assert column(content, "kg all")[-1] == pytest.approx(unit_weight(unit), abs=5e-4)
    assert sum(column(content, "kg all")[:-1]) == pytest.approx(unit_weight(unit), abs=5e-3)


def test_millimetres_are_numbers() -> None:
    metric = lists_xlsx(samples.bookcase())
    assert {type(value) for value in column(metric, "width mm")[:-1]} == {int}
    assert {type(value) for value in column(metric, "kg all")[:-1]} == {float}


def shown_as_fraction(number: float) -> str:
    """What a spreadsheet shows for a number in the format ``# ??/??``: the nearest fraction of at
    most two digits below (ECMA-376 part 1, 18.8.31, fractions), spaces left out."""
    value = Fraction(number).limit_denominator(99)
    whole, rest = divmod(value, 1)
    return " ".join([str(whole)] * (whole > 0 or rest == 0) + [str(rest)] * (rest > 0))


def test_inches_are_numbers_shown_as_fractions() -> None:
    unit = replace(samples.bookcase(), display_unit="in")
    content = lists_xlsx(unit)
    cells = list(sheet(content, "Parts").iter_rows(min_row=2))[:-1]
    headings = [cell.value for cell in next(sheet(content, "Parts").iter_rows(max_row=1))]
    sizes = {
        "length in": lambda row: row.length,
        "width in": lambda row: row.width,
        "thickness in": lambda row: row.thickness,
        "rough length in": lambda row: row.rough_length,
        "rough width in": lambda row: row.rough_width,
    }
    for heading, size in sizes.items():
        at = headings.index(heading)
        for line, row in zip(cells, parts_list(unit), strict=True):
            cell = line[at]
            assert cell.data_type == "n"
            assert cell.number_format == "# ??/??"
            assert cell.value * 64 == int(cell.value * 64)
            assert abs(cell.value * 25.4 - size(row)) <= 25.4 / 128 + 1e-9
            assert shown_as_fraction(cell.value) == format_length(size(row), "in")
    assert column(content, "lb all")[-1] == pytest.approx(unit_weight(unit) / 0.45359237, abs=1e-3)


@pytest.mark.parametrize(("unit", "paper"), [("mm", "9"), ("in", "1")])
def test_paper_is_a4_or_letter(unit: str, paper: str) -> None:
    """ECMA-376 part 1, 18.3.1.63: paper size 1 is Letter, 9 is A4."""
    content = lists_xlsx(replace(awkward(), display_unit=unit))
    with ZipFile(io.BytesIO(content)) as archive:
        for number in (1, 2, 3):
            tree = ElementTree.fromstring(archive.read(f"xl/worksheets/sheet{number}.xml"))
            page = tree.find("m:pageSetup", SHEET)
            assert page is not None
            assert page.get("paperSize") == paper
            assert (page.get("fitToWidth"), page.get("fitToHeight")) == ("1", "0")


def test_neighbouring_columns_dont_run_together() -> None:
    """Figures end and text begins a character within their cells, and nothing fills its column."""
    for content in (
        lists_xlsx(samples.bookcase()),
        lists_xlsx(replace(awkward(), display_unit="in")),
    ):
        parts = sheet(content, "Parts")
        for cell in (cell for row in parts.iter_rows() for cell in row if cell.value is not None):
            assert cell.alignment.indent == 1
            assert cell.alignment.horizontal in ("left", "right")
            text = shown_as_fraction(cell.value) if "/" in cell.number_format else str(cell.value)
            longest = max(map(len, text.split()))
            assert parts.column_dimensions[cell.column_letter].width >= longest + 3


def test_the_cutting_sheet_has_what_is_needed_for_cutting() -> None:
    parts = sheet(lists_xlsx(samples.bookcase()), "Parts")
    assert [cell.value for cell in parts[1]] == [
        "refs", "name", "quantity", "length mm", "width mm", "thickness mm", "rough length mm",
        "rough width mm", "stock", "material", "grain", "shows", "edges lipped", "edging on",
        "kg each", "kg all",
    ]  # fmt: skip


def test_every_working_has_a_row_of_its_own() -> None:
    unit = samples.bookcase()
    heading, *cells = sheet(lists_xlsx(unit), "Workings").values
    assert heading == ("refs", "name", "measured", "working", "how it lies")
    rows = parts_list(unit)
    workings = [(c[0], c[3]) for c in cells if c[3] not in (None, "none")]
    assert workings == [(", ".join(row.refs), text) for row in rows for text in row.workings]
    assert [c[4] for c in cells if c[4]] == ["\n".join((*row.set_up, *row.lie)) for row in rows]
    assert [c[2] for c in cells if c[4]] == [row.measured for row in rows]
    assert [c[0] for c in cells if c[3] == "none"] == ["BT1", "SH1", "TP1", "BK1"]
    assert cells[-1][0].startswith("Pieces are worked with the face that is named as up on top")


def test_no_text_becomes_a_formula() -> None:
    content = lists_xlsx(awkward())
    with ZipFile(io.BytesIO(content)) as archive:
        for name in ("xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml"):
            tree = ElementTree.fromstring(archive.read(name))
            assert tree.findall(".//m:f", SHEET) == []
            assert tree.findall(".//m:c", SHEET)
    stocks, names = column(content, "stock"), column(content, "name")
    assert "=1+1" in stocks
    assert "@Shelf" in names
    assert "+44 & <ash>" in column(content, "material")
    for row in sheet(content, "Parts").iter_rows():
        assert "f" not in {cell.data_type for cell in row}


def test_characters_that_xml_cant_hold_leave_a_whole_workbook() -> None:
    unit = samples.bookcase()
    shelf = replace(unit.part("SH1"), name="Shelf\x07\ufffe")
    content = lists_xlsx(replace(unit, title="bell \x07 & \x1b", parts=(shelf,), joints=()))
    with ZipFile(io.BytesIO(content)) as archive:
        for name in archive.namelist():
            ElementTree.fromstring(archive.read(name))  # raises where it isn't well-formed
    assert column(content, "name") == ["Shelf\ufffd\ufffd", "total"]


def test_hardware_has_a_sheet_only_if_there_are_any() -> None:
    assert openpyxl.load_workbook(io.BytesIO(lists_xlsx(samples.bookcase()))).sheetnames == [
        "Parts",
        "Workings",
        "Stock",
    ]
    assert list(sheet(lists_xlsx(awkward()), "Hardware").values) == [
        ("hardware", "size", "quantity", "holes", "for"),
        ("-pin", None, 4, None, "resting on pins: SH1"),
    ]


def test_headings_stay_in_sight_and_pages_are_set_up() -> None:
    with ZipFile(io.BytesIO(lists_xlsx(awkward()))) as archive:
        tree = ElementTree.fromstring(archive.read("xl/worksheets/sheet1.xml"))
        book = ElementTree.fromstring(archive.read("xl/workbook.xml"))
    pane = tree.find(".//m:pane", SHEET)
    assert pane is not None
    assert (pane.get("state"), pane.get("ySplit"), pane.get("xSplit")) == ("frozen", "1", None)
    page = tree.find("m:pageSetup", SHEET)
    assert page is not None
    assert (page.get("orientation"), page.get("fitToWidth"), page.get("fitToHeight")) == (
        "landscape",
        "1",
        "0",
    )
    fit = tree.find("m:sheetPr/m:pageSetUpPr", SHEET)
    assert fit is not None
    assert fit.get("fitToPage") == "1"
    titles = [name.text for name in book.findall(".//m:definedName", SHEET)]
    assert "'Parts'!$1:$1" in titles
    header = tree.find(".//m:oddHeader", SHEET)
    assert header is not None
    assert header.text == "&LÉtagère && co"  # an ampersand is doubled, ECMA-376 18.3.1.46


def test_columns_are_wide_enough_for_their_words() -> None:
    parts = sheet(lists_xlsx(samples.bookcase()), "Parts")
    for cells in parts.iter_cols(max_row=parts.max_row):
        longest = max(len(word) for cell in cells for word in str(cell.value or "").split())
        assert parts.column_dimensions[cells[0].column_letter].width > longest


def test_dates_are_fixed() -> None:
    with ZipFile(io.BytesIO(lists_xlsx(awkward()))) as archive:
        assert {member.date_time for member in archive.infolist()} == {(2000, 1, 1, 0, 0, 0)}
        properties = ElementTree.fromstring(archive.read("docProps/core.xml"))
        assert archive.testzip() is None
    assert properties.findtext(f"{TERMS}created") == "2000-01-01T00:00:00Z"
    assert properties.findtext(f"{TERMS}modified") == "2000-01-01T00:00:00Z"
