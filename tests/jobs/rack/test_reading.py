"""A rack file as plain data, and what is said of one that can't be."""

from __future__ import annotations

from pathlib import Path

import pytest

from rodwright.cutting.offers import supplies_of
from rodwright.cutting.saws import Saw
from rodwright.jobs.rack import parse_rack, read_rack
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.unit import Grain
from rodwright.unit.stock import Edges, Flaw, Piece
from rodwright.wishes import read_spec

MODELS = Path(__file__).parents[3] / "models"

RACK = """\
# What stands in the shop.
unit: mm
saws:
  - {kind: table saw, kerf: 3.2, rip: 620, crosscut: 900, lift: 30 kg}
  - {kind: track saw, kerf: 2.2}
router: {tool: 8, spacing: 12}
keep: {length: 350, width: 100}
first_cut: along
stock:
  birch 18: {kind: sheet, material: Birch ply, thickness: 18, size: [2440, 1220], count: 3,
             price: 25/m2, trim: 5, where: loft}
  face: {kind: sheet, material: mdf, thickness: 18, size: [900, 600], count: 1, show_faces: 1}
  oak 1:
    kind: board
    material: european oak
    sawn_thickness: 27
    length: 2400
    width: 150
    count: 2
    bad_ends: {near: 60}
    flaws: [{x: 1000, length: 80, why: knot}]
  par: {kind: length, material: pine, thickness: 20, section: 44, length: 2400, price: 1.50/m}
"""


def told(text: str) -> list[str]:
    with pytest.raises(ProblemsError) as error:
        parse_rack(text, "rack.yaml")
    return [str(each).splitlines()[0] for each in error.value.problems]


def test_what_stands_in_a_rack() -> None:
    rack = parse_rack(RACK, "rack.yaml").rack
    birch, face, oak, par = rack.entries
    assert birch.piece == Piece(2440, 1220, 3, Edges(5, 5, 5, 5))
    assert birch.price == pytest.approx(25 * 2.44 * 1.22)
    assert (birch.grain, birch.where) == (Grain.LENGTHWISE, "loft")
    assert (face.grain, face.piece.show_faces, face.price) == (Grain.NONE, 1, None)
    # 27 mm less 3/16 in is 22.2.
    assert (oak.thickness, oak.sawn_thickness, oak.planing) == (22.0, 27.0, 6.0)
    assert oak.piece == Piece(2400, 150, 2, Edges(near=60), (Flaw(1000, 0, 80, 150, "knot"),))
    assert (par.piece.count, par.section) == (0, 44.0)
    assert par.price == pytest.approx(3.6)
    assert rack.keep == (350.0, 100.0)
    assert rack.keep_board == (400.0, 40.0)
    assert (rack.first_cut, rack.spacing) == ("along", 12.0)


def test_what_it_is_cut_with() -> None:
    rack = parse_rack(RACK, "rack.yaml").rack
    assert rack.saws == (
        Saw("table saw", 3.2, 620.0, 900.0, 30.0),
        Saw("track saw", 2.2),
        Saw("router", 8.0),
    )
    assert parse_rack("stock: {}", "rack.yaml").rack.saws == (Saw(),)


def test_a_rack_in_inches() -> None:
    rack = parse_rack(
        "unit: in\nstock: {B: {kind: board, material: walnut, sawn_thickness: 1, length: 96, "
        "width: 6, count: 1, price: 12/board ft}}",
        "rack.yaml",
    ).rack
    (board,) = rack.entries
    # 4/4 planes to 13/16 in, and 8 ft of 6 in are 4 board feet.
    assert board.thickness == pytest.approx(25.4 * 13 / 16)
    assert board.price == pytest.approx(48)
    assert rack.saws[0].kerf == pytest.approx(3.175)
    assert rack.keep == pytest.approx((16 * 25.4, 6 * 25.4))


def test_a_model_is_cut_from_a_rack() -> None:
    unit = set_out(read_spec(MODELS / "reading-alcove.yaml"))
    case = next(part.blank.stock for part in unit.parts if part.blank.stock.name == "case")
    offers = supplies_of([case], parse_rack(RACK, "rack.yaml").rack)
    names = [each.supply.name for each in offers]
    assert names == ["birch 18", "birch 18, bought", "case 1220 x 1220"]


SHEET = "stock: {a: {kind: sheet, material: mdf, thickness: 18, size: [900, 600], count: 1"


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        (
            f"{SHEET}}}, b: {{kind: board, material: oak, length: 900, width: 90, count: 1}}}}",
            "rack.yaml:1:85: `b` doesn't say how thick it is",
        ),
        (
            SHEET.replace(", count: 1", "}}"),
            "rack.yaml:1:9: `a` says neither how many there are nor",
        ),
        (
            SHEET.replace("mdf", "mdff") + "}}",
            "rack.yaml:1:36: `mdff` isn't a material that is known",
        ),
        (SHEET.replace("count: 1", "count: -1") + "}}", "`count` has to be at least 0; it is `-1`"),
        (SHEET.replace("count: 1", "count: 1.5") + "}}", "`count` takes a whole number"),
        (SHEET + ", price: dear}}", "`price`: `dear` can't be read as a price"),
        (SHEET + ", price: -3}}", "`price`: `-3` can't be read as a price"),
        (SHEET + ", price: 3/m}}", "sheets are sold by the piece or by area, not by length"),
        (SHEET + ", flaws: [{x: 850, length: 60}]}}", "the flaw ends 910 mm from the near end"),
        (
            SHEET + ", trim: 300}}",
            "nothing is left of the sheet: it is 600 mm in width, and 600 mm",
        ),
        (SHEET.replace("600", "3") + "}}", "`a` is 3 mm in width, and a saw's cut is 3.2 mm wide"),
        (SHEET.replace("18,", "1800,") + "}}", "`a` is 1800 mm thick, which can't be right"),
        ("saws: [{kind: table saw, kerf: 32}]", "a saw's cut is at most 12 mm wide; this is 32 mm"),
        ("router: {tool: 80}", "a router's tool is at most 40 mm wide; this is 80 mm"),
        ("saws: [{kind: band saw}]", "`kind` takes `table saw`, `track saw` or `panel saw`"),
        ("first_cut: up", "`first_cut` takes `along` or `across`; `up` isn't one of them"),
        ("stok: {}", "`stok` isn't a key of the rack; did you mean `stock`?"),
        ("carcass: {}", "`carcass` isn't a key of the rack"),
        ("stock: !x {}", "tags (`!` and a name) aren't used in a rack"),
        ("", "rack.yaml:1:1: the file is empty"),
        ("- 1", "the file doesn't hold keys and values"),
    ],
)
def test_what_cant_be_is_told_at_its_place(text: str, problem: str) -> None:
    first = told(text)[0]
    assert problem in first
    assert first.startswith("rack.yaml:1:")


def test_a_rack_that_names_a_stock_twice_is_told_both_places() -> None:
    first = (
        "stock:\n  B18: {kind: sheet, material: mdf, thickness: 18, size: [900, 600], count: 1}\n"
    )
    assert told(first + first.splitlines()[1] + "\n") == [
        "rack.yaml:3:3: `B18` is written twice: here and in line 2, column 3"
    ]
    assert told(first + first.splitlines()[1].replace("B18", "b 18") + "\n") == [
        "rack.yaml:3:3: `b 18` is named twice: here and, as `B18`, in line 2, column 3"
    ]


def test_a_rack_file_that_isnt_there(tmp_path: Path) -> None:
    with pytest.raises(ProblemsError, match="there is no file"):
        read_rack(tmp_path / "rack.yaml")
    with pytest.raises(ProblemsError, match="Give the name of a rack file"):
        read_rack(tmp_path)
