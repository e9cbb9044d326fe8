"""The lists as files, read back by other readers than wrote them."""

from __future__ import annotations

import csv
import io
import json
from dataclasses import replace

import pytest
from openpyxl import load_workbook

from kit.samples import bookcase
from rodwright.handover.list_files import (
    edges_csv,
    hardware_csv,
    lists_xlsx,
    parts_csv,
)
from rodwright.handover.lists import parts_list
from rodwright.handover.lists_json import parts_json
from rodwright.handover.tables import (
    Column,
    csv_bytes,
    fill_sheet,
    new_workbook,
    workbook_bytes,
)
from rodwright.lengths import parse_length
from rodwright.mass import unit_weight
from rodwright.unit import Fixing, Joint, JointKind, Unit


def read(content: bytes) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(content.decode("utf-8-sig"), newline="")))


def hostile() -> Unit:
    """A unit whose texts are awkward for lists: quotes, commas, accents, formulas."""
    unit = bookcase()
    shelf = unit.part("SH1")
    stock = replace(shelf.blank.stock, name="=1+1", material='bouleau, "extra" façade')
    changed = replace(shelf, name="@Shelf", blank=replace(shelf.blank, stock=stock))
    parts = tuple(changed if part.ref == "SH1" else part for part in unit.parts)
    return replace(unit, title="Étagère & co", parts=parts)


def test_csv_lines_end_and_quote_as_rfc_4180_has_it() -> None:
    content = parts_csv(hostile())
    assert content.startswith(b"\xef\xbb\xbfrefs,")  # the byte order mark, once
    assert content.endswith(b"\r\n")  # RFC 4180, section 2, rule 1
    assert content.count(b"\n") == content.count(b"\r\n")
    assert b'"bouleau, ""extra"" fa\xc3\xa7ade"' in content  # rules 6 and 7
    rows = list(csv.reader(io.StringIO(content.decode("utf-8-sig"), newline=""), strict=True))
    assert {len(row) for row in rows} == {len(rows[0])}  # rule 4
    assert len(rows) == 1 + len(parts_list(hostile()))


def test_csv_figures() -> None:
    side, *_ = read(parts_csv(bookcase()))
    assert side["refs"] == "SD1, SD2"
    assert (side["length mm"], side["width mm"], side["thickness mm"]) == ("1000", "300", "18")
    assert side["quantity"] == "2"
    # 1000 x 300 x 18 less three housings of 300 x 18 x 6, at 680 kg/m3.
    assert side["kg each"] == "3.606"
    assert float(side["kg all"]) == 7.212
    assert "housing 18 x 6 deep at 482 from the bottom end, on the face" in side["workings"]
    assert side["measured"] == "as cut"
    assert side["how it lies"].startswith("face up, x from the bottom end, y from the face edge")


def test_csv_tenths_of_a_millimetre() -> None:
    unit = bookcase()
    shelf = unit.part("SH1")
    changed = replace(shelf, blank=replace(shelf.blank, length=602.512))
    assert read(parts_csv(replace(unit, parts=(changed,))))[0]["length mm"] == "602.5"


def test_csv_inches_are_decimals_with_fractions_beside_them() -> None:
    unit = replace(bookcase(), display_unit="in")
    records = read(parts_csv(unit))
    # 1000 mm is 39.37008 in (NIST SP 811: 1 in = 25.4 mm); the nearest 64th is 39 24/64.
    assert (records[0]["length in"], records[0]["length in as fraction"]) == (
        "39.3701",
        "39 3/8 in",
    )
    for record, row in zip(records, parts_list(unit), strict=True):
        for key, size in (
            ("length in", row.length),
            ("width in", row.width),
            ("thickness in", row.thickness),
            ("rough length in", row.rough_length),
            ("rough width in", row.rough_width),
        ):
            assert abs(float(record[key]) * 25.4 - size) <= 0.0026
            fraction = parse_length(record[f"{key} as fraction"], "mm")  # it names its own unit
            assert abs(fraction - size) <= 25.4 / 128 + 1e-9


def test_csv_fractions_below_one_are_not_taken_for_dates() -> None:
    unit = replace(bookcase(), display_unit="in")
    shelf = unit.part("SH1")
    stock = replace(shelf.blank.stock, name="3/4")
    changed = replace(
        shelf,
        blank=replace(shelf.blank, length=25.4 * 23.625, thickness=25.4 * 23 / 32, stock=stock),
    )
    record = read(parts_csv(replace(unit, parts=(changed,))))[0]
    assert (record["length in"], record["length in as fraction"]) == ("23.625", "23 5/8 in")
    assert (record["thickness in"], record["thickness in as fraction"]) == ("0.7188", "23/32 in")
    assert record["stock"] == "'3/4"


def test_csv_weights_and_edges_in_inches_are_pounds_and_feet() -> None:
    unit = replace(bookcase(), display_unit="in")
    side, *_ = read(parts_csv(unit))
    # 3.605904 kg / 0.45359237 (NIST SP 811, appendix B.8).
    assert (side["lb each"], side["lb all"]) == ("7.95", "15.899")
    assert "kg each" not in side


# What may begin a formula: OWASP's page "CSV Injection" (from memory), and the same behind spaces
# or quotes, which spreadsheets drop.
FORMULAS = [
    "=1+1", "+1", "-1", "@SUM(A1)", " =1+1", "\u00a0=1", "\t=1", "\r=1", "\n=1", "\ttext",
    "\u3000@x", "＝1+1", "＋1", "－1", "＠x", '"=1+1', "'=1+1",
]  # fmt: skip


@pytest.mark.parametrize("text", FORMULAS)
def test_no_text_begins_like_a_formula_in_a_list(text: str) -> None:
    columns = [Column("name")]
    (record,) = read(csv_bytes(columns, [[text]]))
    assert record["name"].startswith("'")
    book = new_workbook("Lists")
    fill_sheet(book.active, "Lists", columns, [[text]], "mm")
    cell = load_workbook(io.BytesIO(workbook_bytes(book))).active["A2"]
    assert cell.data_type == "s"
    assert cell.quotePrefix


@pytest.mark.parametrize("text", ["3 = 1 + 2", "a-b", "side = left", "“=”", "5 mm"])
def test_other_text_stays_as_it_is(text: str) -> None:
    assert csv_bytes([Column("name")], [[text]]).decode("utf-8-sig") == f"name\r\n{text}\r\n"


def test_csv_text_that_looks_like_a_formula_gets_an_apostrophe() -> None:
    record = next(row for row in read(parts_csv(hostile())) if row["refs"] == "SH1")
    assert record["stock"] == "'=1+1"
    assert record["name"] == "'@Shelf"


def test_json_holds_rows_totals_and_hardware() -> None:
    joint = Joint(JointKind.RESTING, "SD1", "SH1", (0, 0, 0), (Fixing("shelf pin", 2),))
    unit = replace(bookcase(), joints=(joint, joint))
    document = json.loads(parts_json(unit))
    assert document["totals"]["parts"] == len(unit.parts) == 10
    assert document["totals"]["weight"] == round(unit_weight(unit), 3)
    assert document["hardware"] == [
        {
            "name": "shelf pin",
            "size": "",
            "quantity": 4,
            "holes": [],
            "uses": ["resting on pins: SH1"],
        }
    ]
    assert document["edges"] == []
    assert sum(row["quantity"] for row in document["parts"]) == 10
    for record, row in zip(document["parts"], parts_list(unit), strict=True):
        assert record["length"] == row.length
        assert tuple(record["workings"]) == row.workings
    assert "near end" in document["words"]
    assert document["parts"][1]["shows"] == ["upper face"]
    assert read(hardware_csv(unit)) == [
        {
            "hardware": "shelf pin",
            "size": "",
            "quantity": "4",
            "holes": "",
            "for": "resting on pins: SH1",
        }
    ]


def test_the_same_unit_gives_the_same_bytes() -> None:
    for write in (parts_csv, hardware_csv, edges_csv, lists_xlsx, parts_json):
        assert write(hostile()) == write(hostile())
