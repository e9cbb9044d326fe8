"""The edge list and the totals by stock, figures by hand."""

from __future__ import annotations

import csv
import io
import json
from dataclasses import replace
from typing import Any

import openpyxl
import pytest

from kit.specs import unit_from
from rodwright.handover.edge_list import edge_list
from rodwright.handover.list_files import edges_csv, lists_xlsx
from rodwright.handover.lists_json import parts_json
from rodwright.handover.totals import stock_totals
from rodwright.jobs.new import model_names, model_path
from rodwright.mass import unit_weight
from rodwright.setout import set_out_unit
from rodwright.unit import Role
from rodwright.wishes import read_spec

SIZE = "size: {width: 800, height: 1000, depth: 300}\n"
LIPPED: dict[str, Any] = {
    "interior": {"shelves": {"count": 3}},
    "lipping": {"stock": "ash", "thickness": 10},
    "edging": {"material": "veneer", "thickness": 0.6, "colour": "birch", "edges": ["sides"]},
}


def test_metres_of_lipping_and_edging() -> None:
    """Three strips of 764, and two edges of 1000, each with a tenth more, up to a tenth."""
    lipping, edging = edge_list(unit_from(SIZE, **LIPPED))
    assert (lipping.kind, lipping.material, lipping.stock) == ("lipping", "ash", "ash")
    assert (lipping.width, lipping.thickness, lipping.strips) == (18.0, 10.0, 3)
    assert lipping.net == pytest.approx(2.292)
    assert lipping.to_get == 2.6
    assert (edging.kind, edging.material, edging.stock) == ("edging", "veneer, birch", "")
    assert (edging.width, edging.thickness, edging.refs) == (18.0, 0.6, ("SD1", "SD2"))
    assert (edging.net, edging.to_get) == (2.0, 2.2)


def test_edges_of_a_maker_in_inches_are_in_feet() -> None:
    """2292 mm are 7.52 ft (the foot is 304.8 mm), 8.27 with a tenth more."""
    unit = replace(unit_from(SIZE, **LIPPED), display_unit="in")
    lipping, edging = csv.DictReader(io.StringIO(edges_csv(unit).decode("utf-8-sig")))
    assert (lipping["net ft"], lipping["to get ft (with 10%)"]) == ("7.52", "8.3")
    assert (edging["net ft"], edging["to get ft (with 10%)"]) == ("6.56", "7.3")
    assert (lipping["thickness in"], lipping["thickness in as fraction"]) == ("0.3937", "25/64 in")


def test_layers_share_a_strip() -> None:
    edging = {"material": "veneer", "thickness": 1}
    unit = unit_from(SIZE, interior={"shelves": {"count": 2, "layers": 2}}, edging=edging)
    (row,) = edge_list(unit)
    assert (row.width, row.strips, row.refs) == (36.0, 2, ("SH1a", "SH2a"))
    assert row.net == pytest.approx(2 * 0.764)


def test_edges_as_csv_and_sheet() -> None:
    unit = unit_from(SIZE, **LIPPED)
    text = edges_csv(unit).decode("utf-8-sig")
    assert text.splitlines() == [
        "kind,material,stock,thickness mm,width mm,strips,net m,to get m (with 10%),on",
        'lipping,ash,ash,10,18,3,2.29,2.6,"LP1, LP2, LP3"',
        'edging,"veneer, birch",,0.6,18,2,2.0,2.2,"SD1, SD2"',
    ]
    sheet: Any = openpyxl.load_workbook(io.BytesIO(lists_xlsx(unit)))["Edges"]
    (_, *records) = csv.reader(io.StringIO(text))
    rows = [[str(cell) if cell is not None else "" for cell in row] for row in sheet.values]
    assert [[*row[:5], row[-1]] for row in rows[1:]] == [[*r[:5], r[-1]] for r in records]


def test_totals_of_each_stock() -> None:
    """Two sides of 1000 x 300 cut 0.6 narrower, four panels of 764 x 300 of which three have a
    strip of 10 in front, and the strips, cut 6 longer and 2 wider."""
    sheet, board = stock_totals(unit_from(SIZE, **LIPPED))
    area = 2 * 1.0 * 0.2994 + 2 * 0.764 * 0.3 + 3 * 0.764 * 0.29
    assert (sheet.stock.name, sheet.parts) == ("ply", 7)
    assert sheet.area == pytest.approx(area)
    finished = area + 2 * 1.0 * 0.0006
    assert sheet.weight == pytest.approx(finished * 0.018 * sheet.stock.density)
    assert (board.stock.name, board.parts) == ("ash", 3)
    assert board.metres == pytest.approx(3 * 0.770)
    assert board.volume == pytest.approx(3 * 0.770 * 0.020 * 0.010)
    assert board.weight == pytest.approx(3 * 0.764 * 0.018 * 0.010 * board.stock.density)


def test_totals_of_each_stock_go_into_the_workbook_and_the_json() -> None:
    """1.722 m2 are 18.54 sq ft, 2.31 m 7.58 ft; 770 x 20 x 10 mm thrice 0.20 board ft of 2359.7
    cm3 (NIST SP 811, appendix B.8)."""
    unit = unit_from(SIZE, **LIPPED)
    area = 2 * 1.0 * 0.2994 + 2 * 0.764 * 0.3 + 3 * 0.764 * 0.29
    book = openpyxl.load_workbook(io.BytesIO(lists_xlsx(replace(unit, display_unit="in"))))
    heading, ply, ash = book["Stock"].values
    assert heading == (
        "stock", "material", "thickness in", "parts", "area sq ft", "run ft", "volume board ft",
        "lb all",
    )  # fmt: skip
    assert ply[:1] + ply[3:7] == ("ply", 7, pytest.approx(area / 0.3048**2, abs=0.006), None, None)
    assert ash[:1] + ash[3:7] == ("ash", 3, None, 7.58, 0.2)
    document = json.loads(parts_json(replace(unit, display_unit="in")))
    sheet, board = document["stock"]
    assert sheet["area"] == pytest.approx(area, abs=1e-4)
    assert (board["name"], board["kind"], board["run"], board["volume"]) == (
        "ash", "board", 2.31, 0.000462,
    )  # fmt: skip
    told = document["figures_in"]
    assert (told["net"], told["length"], told["area"], told["weight"]) == ("m", "mm", "m2", "kg")
    rows = [*document["parts"], *document["edges"], *document["stock"]]
    figures = {key for row in rows for key, value in row.items() if isinstance(value, float)}
    assert figures <= set(told)


@pytest.mark.parametrize("name", model_names())
def test_totals_add_up_over_every_model(name: str) -> None:
    unit = set_out_unit(read_spec(model_path(name)).spec)
    totals = stock_totals(unit)
    assert sum(total.parts for total in totals) == len(unit.parts)
    assert sum(total.weight for total in totals) == pytest.approx(unit_weight(unit))
    lippings = [part for part in unit.parts if part.role is Role.LIPPING]
    rows = [row for row in edge_list(unit) if row.kind == "lipping"]
    assert sorted(ref for row in rows for ref in row.refs) == sorted(p.ref for p in lippings)
    assert sum(row.net for row in rows) == pytest.approx(
        sum(part.blank.length for part in lippings) / 1000
    )
