"""Sheets and boards at hand and for sale, from the spec's words to plain sizes."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import problems_of, unit_from
from rodwright.unit import Stock
from rodwright.unit.stock import Edges, Flaw, Piece, Sold

SIZE = "size: {width: 800, height: 500, depth: 300}\n"
SHEET = {"kind": "sheet", "material": "birch plywood", "thickness": 18}
BOARD = {"kind": "board", "material": "oak", "thickness": 22}
CARCASS = {"stock": "x"}


def stock_of(stock: dict[str, Any], unit: str = "mm") -> Stock:
    size = "unit: in\nsize: {width: 30, height: 20, depth: 12}\n" if unit == "in" else SIZE
    return unit_from(size, stock={"x": stock}, carcass=CARCASS).parts[0].blank.stock


def told(stock: dict[str, Any]) -> list[str]:
    return problems_of(SIZE, stock={"x": stock}, carcass=CARCASS)


def test_a_stock_that_says_nothing_of_this_is_as_it_was() -> None:
    stock = stock_of(SHEET | {"size": [2440, 1220]})
    assert (stock.size, stock.pieces, stock.sold) == ((2440.0, 1220.0), (), ())
    assert (stock.trim, stock.show_faces) == (Edges(), 2)
    board = stock_of(BOARD)
    assert (board.sold, board.section, board.sawn_thickness, board.planing) == ((), None, None, 0.0)


def test_sheets_sold_and_at_hand() -> None:
    stock = stock_of(
        SHEET
        | {
            "size": [2440, 1220],
            "price": 74,
            "trim": 10,
            "show_faces": 1,
            "sold": [[1220, 1220], {"size": [1220, 610], "price": "30/m2"}],
            "pieces": [
                {"length": 900, "width": 600, "count": 2},
                {
                    "length": 700,
                    "width": 400,
                    "trim": {"near": 4},
                    "show_faces": 2,
                    "flaws": [
                        {"x": 10, "length": 50, "y": 20, "width": 30, "why": "old screw holes"},
                        {"x": 600, "length": 100, "y": 100},
                    ],
                },
            ],
        }
    )
    assert stock.trim == Edges(10, 10, 10, 10)
    assert stock.sold == (Sold(1220, 1220), Sold(1220, 610, pytest.approx(22.326)))
    assert stock.pieces == (
        Piece(900, 600, 2, Edges(10, 10, 10, 10), (), 1),
        Piece(
            700,
            400,
            1,
            Edges(near=4),
            (Flaw(10, 20, 50, 30, "old screw holes"), Flaw(600, 100, 100, 300)),
            2,
        ),
    )


def test_boards_are_sold_in_every_length_and_width_that_is_said() -> None:
    stock = stock_of(
        BOARD
        | {
            "price": 6,
            "sawn_thickness": 27,
            "bad_ends": 40,
            "sold": [
                {"length": [2400, 3000], "width": [150, 200]},
                {"length": 3600, "width": 150, "price": "2000/m3"},
            ],
            "pieces": [{"length": 1800, "width": 140, "bad_ends": {"far": 100}}],
        }
    )
    assert stock.sold == (
        Sold(2400, 150, pytest.approx(14.4)),
        Sold(3000, 150, pytest.approx(18)),
        Sold(2400, 200, pytest.approx(14.4)),
        Sold(3000, 200, pytest.approx(18)),
        Sold(3600, 150, pytest.approx(2000 * 3.6 * 0.15 * 0.027)),
    )
    assert (stock.trim, stock.planing) == (Edges(40, 40), 6.0)
    assert stock.pieces == (Piece(1800, 140, 1, Edges(far=100)),)


def test_what_planing_takes_off_the_width() -> None:
    sawn = {"kind": "board", "material": "oak", "thickness": "3/4", "sawn_thickness": 1}
    assert stock_of(sawn, "in").planing == pytest.approx(6.35)
    assert stock_of(sawn | {"planing": "1/2"}, "in").planing == pytest.approx(12.7)


def test_lengths_of_a_section() -> None:
    stock = stock_of(
        BOARD | {"section": 300, "sold": [{"length": 2400}], "pieces": [{"length": 1500}]}
    )
    assert stock.section == 300
    assert (stock.sold, stock.pieces) == ((Sold(2400, 300),), (Piece(1500, 300, 1),))


FLAWED = {"length": 900, "width": 600}


@pytest.mark.parametrize(
    ("stock", "problem"),
    [
        (
            SHEET | {"pieces": [FLAWED | {"flaws": [{"x": 850, "length": 60}]}]},
            "stock.x.pieces.0.flaws.0.length: the flaw ends 910 mm from the near end; the sheet is "
            "900 mm long",
        ),
        (
            SHEET | {"pieces": [FLAWED | {"flaws": [{"x": 0, "length": 60, "y": 600}]}]},
            "stock.x.pieces.0.flaws.0.y: the flaw reaches 600 mm from the face edge; the sheet is "
            "600 mm wide",
        ),
        (
            SHEET
            | {"pieces": [FLAWED | {"flaws": [{"x": 0, "length": 60, "y": 580, "width": 30}]}]},
            "stock.x.pieces.0.flaws.0.width: the flaw reaches 610 mm from the face edge; the sheet "
            "is 600 mm wide",
        ),
        (
            SHEET | {"pieces": [{"length": 900, "width": 60}], "trim": 30},
            "stock.x.pieces.0.width: nothing is left of the sheet: it is 60 mm in width, and 60 mm "
            "comes off it",
        ),
        (
            BOARD | {"pieces": [{"length": 900, "width": 60, "bad_ends": 450}]},
            "stock.x.pieces.0.length: nothing is left of the board: it is 900 mm in length, and "
            "900 mm comes off it",
        ),
        (
            SHEET | {"size": [2440, 1220], "sold": [{"size": [1220, 610], "price": "30/m"}]},
            "stock.x.sold.0.price: sheets are sold by the piece or by area, not by length",
        ),
        (BOARD | {"sold": [{"length": 2400}]}, "stock.x.sold.0.width: the boards have no width"),
        (
            BOARD | {"pieces": [{"length": 2400, "width": 95}], "section": 300},
            "stock.x.pieces.0.width: the boards are 95 mm wide, and their `section` is 300 mm",
        ),
        (
            BOARD | {"sawn_thickness": 22},
            "stock.x.sawn_thickness: sawn 22 mm thick, the boards can't be planed to 22 mm",
        ),
    ],
)
def test_what_cant_be_is_told_at_its_place(stock: dict[str, Any], problem: str) -> None:
    assert told(stock) == [problem]
