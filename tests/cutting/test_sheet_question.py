"""Questions about sheets in whole numbers."""

from __future__ import annotations

from typing import Any

import pytest

from rodwright.cutting import CannotCutError, Flaw, Piece, Supply, Trim
from rodwright.cutting.sheet_problem import Rules, SheetProblem, Spot
from rodwright.cutting.sheet_question import left_of, problem_of

SHEET = Supply("ply", 2440, 1220, price=74.5)


def _problem(pieces: list[Piece], stock: list[Supply], **rest: Any) -> SheetProblem:
    return problem_of(pieces, stock, Rules(), **rest)


def test_a_kerf_is_added_to_pieces_and_to_what_can_be_used_of_a_sheet() -> None:
    trimmed = Supply("ply", 2440, 1220, trim=Trim(near=10, far=5, face=3, back=2))
    problem = _problem([Piece("a", 600, 300, 4)], [trimmed], kerf=3.2)
    (size,), (sheet,) = problem.sizes, problem.sheets
    in_mm = problem.grid.length
    assert (in_mm(size.length), in_mm(size.width)) == (603.2, 303.2)
    assert (in_mm(sheet.length), in_mm(sheet.width)) == (2428.2, 1218.2)
    assert (in_mm(sheet.near), in_mm(sheet.face)) == (10, 3)


def test_equal_pieces_are_one_size_unless_only_some_may_turn() -> None:
    pieces = [
        Piece("a", 600, 300, 2),
        Piece("b", 500, 300),
        Piece("c", 600, 300),
        Piece("d", 600, 300, turning=True),
        Piece("e", 400, 400, turning=True),
    ]
    sizes = _problem(pieces, [SHEET]).sizes
    assert [size.of for size in sizes] == [((0, 2), (2, 1)), ((1, 1),), ((3, 1),), ((4, 1),)]
    assert [size.count for size in sizes] == [3, 1, 1, 1]
    assert [size.turns for size in sizes] == [False, False, True, False]


def test_prices_are_whole_in_steps_of_money() -> None:
    problem = _problem([Piece("a", 600, 300)], [SHEET, Supply("half", 1220, 1220, price=40)])
    assert [problem.money.length(sheet.price) for sheet in problem.sheets] == [74.5, 40]
    assert [sheet.price for sheet in problem.sheets] == [149, 80]


def test_no_more_sheets_are_counted_than_there_are_pieces() -> None:
    stock = [SHEET, Supply("two", 2440, 1220, count=2), Supply("none", 2440, 1220, count=0)]
    sheets = _problem([Piece("a", 600, 300, 7)], stock).sheets
    assert [(sheet.supply, sheet.count) for sheet in sheets] == [(0, 7), (1, 2)]


def test_a_flaw_in_the_kerf_is_not_in_a_piece() -> None:
    flawed = Supply("ply", 1000, 500, flaws=(Flaw(500, 0, 2, 500),))
    (sheet,) = _problem([Piece("a", 500, 500)], [flawed], kerf=3).sheets
    (spot,) = sheet.spots
    assert not spot.under(0, 0, 503, 503)
    assert spot.under(0, 0, 504, 503)
    assert spot.under(501, 0, 100, 503)
    assert not spot.under(502, 0, 100, 503)
    assert spot == Spot(503, 3, 502, 500)


def test_flaws_outside_of_what_is_used_are_forgotten() -> None:
    flawed = Supply("ply", 1000, 500, trim=Trim(near=20), flaws=(Flaw(0, 0, 20, 500),))
    (sheet,) = _problem([Piece("a", 300, 300)], [flawed]).sheets
    assert sheet.spots == ()


@pytest.mark.parametrize(
    ("piece", "supply", "reason"),
    [
        (Piece("a", 2441, 300), SHEET, "too large"),
        (Piece("a", 1300, 1300, turning=True), SHEET, "too large"),
        (Piece("a", 600, 1300), SHEET, "grain"),
        (Piece("a", 2440, 1220), Supply("t", 2440, 1220, trim=Trim(near=1)), "too large"),
        (Piece("a", 700, 400), Supply("f", 1000, 500, flaws=(Flaw(450, 200, 50, 50),)), "flaws"),
        (Piece("a", 600, 300), Supply("none", 2440, 1220, count=0), "not enough"),
    ],
)
def test_what_goes_on_no_sheet_is_told_with_the_reason(
    piece: Piece, supply: Supply, reason: str
) -> None:
    with pytest.raises(CannotCutError) as told:
        _problem([piece, Piece("small", 10, 10)], [supply])
    assert (told.value.reason, told.value.pieces) == (
        reason,
        ("a", "small") if reason == "not enough" else ("a",),
    )


def test_a_piece_that_a_flaw_leaves_room_for_is_not_refused() -> None:
    flawed = Supply("ply", 1000, 500, flaws=(Flaw(250, 0, 50, 500),))
    (sheet,) = _problem([Piece("a", 700, 500)], [flawed]).sheets
    assert sheet.place(14, 10) == (6, 0)  # in steps of 50 mm


@pytest.mark.parametrize(
    ("pieces", "stock", "rest"),
    [
        ([Piece("a", 0, 10)], [SHEET], {}),
        ([Piece("a", 10, 0)], [SHEET], {}),
        ([Piece("a", 10, 10, -1)], [SHEET], {}),
        ([Piece("a", 10, 10)], [Supply("ply", 100, 0)], {}),
        ([Piece("a", 10, 10)], [Supply("ply", 100, 100, price=-1)], {}),
        ([Piece("a", 10, 10)], [Supply("ply", 100, 100, count=-1)], {}),
        ([Piece("a", 10, 10)], [Supply("ply", 100, 100, trim=Trim(far=-1))], {}),
        ([Piece("a", 10, 10)], [SHEET], {"kerf": -1.0}),
    ],
)
def test_figures_that_make_no_sense_are_refused(
    pieces: list[Piece], stock: list[Supply], rest: dict[str, float]
) -> None:
    with pytest.raises(ValueError, match=r"."):
        _problem(pieces, stock, **rest)


def test_what_is_left_are_the_last_of_those_asked_for() -> None:
    pieces = [Piece("a", 60, 30, 2), Piece("b", 50, 30), Piece("c", 60, 30, 3)]
    problem = _problem(pieces, [SHEET])
    assert left_of(problem, (4, 0), pieces) == (Piece("a", 60, 30, 1), Piece("c", 60, 30, 3))
