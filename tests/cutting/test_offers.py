"""What parts of a stock can be cut from: the rack's entries and the spec's own sizes."""

from __future__ import annotations

from dataclasses import replace

import pytest

from rodwright.cutting.offers import (
    NoStockError,
    Offer,
    less,
    lot_kind,
    offcut_of,
    same_lot,
    supplies_of,
    uses_of,
)
from rodwright.cutting.rack import Entry, Rack
from rodwright.cutting.supplies import Flaw, Trim
from rodwright.lengths import LengthUnit
from rodwright.trade.stock_sizes import BOARD_LENGTHS, BOARD_WIDTHS
from rodwright.unit import Grain
from rodwright.unit.stock import Edges, Piece, Sold, Stock
from rodwright.unit.stock import Flaw as StockFlaw

PLY = Stock(
    "case",
    "sheet",
    "birch plywood",
    18.0,
    Grain.LENGTHWISE,
    680.0,
    "given",
    "#dcc59b",
    size=(2440.0, 1220.0),
    price=74.0,
)
ASH = Stock("ash", "board", "ash", 22.0, Grain.LENGTHWISE, 680.0, "given", "#d9c19c")


def rack_of(*entries: Entry) -> Rack:
    return Rack("rack.yaml", "", "mm", entries)


def names(offers: tuple[Offer, ...]) -> list[str]:
    return [each.supply.name for each in offers]


def test_a_sheet_of_a_spec_is_bought_as_many_as_wanted() -> None:
    (offer,) = supplies_of([PLY])
    assert names((offer,)) == ["case 2440 x 1220"]
    assert (offer.supply.length, offer.supply.width) == (2440.0, 1220.0)
    assert (offer.supply.count, offer.supply.price, offer.price) == (None, 74.0, 74.0)
    assert not offer.at_hand and not offer.assumed


def test_other_sizes_and_pieces_at_hand() -> None:
    stock = replace(
        PLY,
        sold=(Sold(1220.0, 1220.0, 41.0), Sold(1220.0, 610.0)),
        pieces=(Piece(800.0, 600.0, 2),),
        trim=Edges(5.0, 6.0, 7.0, 8.0),
    )
    at_hand, whole, half, quarter = supplies_of([stock])
    assert (at_hand.supply.count, at_hand.supply.price, at_hand.price) == (2, 0.0, 0.0)
    assert at_hand.supply.trim == Trim()
    assert whole.supply.trim == half.supply.trim == Trim(5.0, 6.0, 7.0, 8.0)
    assert half.price == 41.0
    # Not priced: by its area at what the two others cost together.
    rate = (74.0 + 41.0) / (2440 * 1220 + 1220 * 1220)
    assert quarter.price is None
    assert quarter.supply.price == pytest.approx(rate * 1220 * 610)


def test_without_any_price_area_is_the_price() -> None:
    (offer,) = supplies_of([replace(PLY, price=None)])
    assert offer.price is None
    assert offer.supply.price == pytest.approx(2.44 * 1.22)


def test_grain_across_is_turned_by_a_quarter_and_not_mirrored() -> None:
    """A flaw near the far end of the sheet and its face edge.  Turned so that the grain runs along
    x, the old face edge is the near end, and the old far end the face edge."""
    flaw = StockFlaw(2300.0, 50.0, 100.0, 30.0, "knot")
    piece = Piece(2440.0, 1220.0, 1, Edges(1.0, 2.0, 3.0, 4.0), (flaw,))
    stock = replace(PLY, grain=Grain.CROSSWISE, size=None, pieces=(piece,))
    offer = supplies_of([stock])[0]
    assert offer.turned
    assert (offer.supply.length, offer.supply.width) == (1220.0, 2440.0)
    assert offer.supply.flaws == (Flaw(50.0, 40.0, 30.0, 100.0, "knot"),)
    assert offer.supply.trim == Trim(near=3.0, far=4.0, face=2.0, back=1.0)


def test_nothing_said_of_boards_for_sale_is_assumed_and_told_as_such() -> None:
    offers = supplies_of([ASH])
    assert all(each.assumed and each.price is None for each in offers)
    sizes = {(each.supply.length, each.supply.width) for each in offers}
    assert sizes == {
        (length, width) for length in BOARD_LENGTHS["mm"] for width in BOARD_WIDTHS["mm"]
    }
    inches = supplies_of([ASH], unit="in")
    assert inches[0].supply.name == "ash 96 x 6"


def test_sawn_boards_lose_half_of_what_planing_takes_at_each_edge() -> None:
    stock = replace(
        ASH, sawn_thickness=27.0, planing=6.0, trim=Edges(40.0, 40.0), sold=(Sold(3000.0, 150.0),)
    )
    (offer,) = supplies_of([stock])
    assert offer.supply.trim == Trim(40.0, 40.0, 3.0, 3.0)
    assert (offer.thickness, offer.lies) == (22.0, 27.0)


def test_a_section_is_only_cut_to_length() -> None:
    stock = replace(ASH, section=45.0, price=4.0)
    assert lot_kind(stock) == "length"
    offers = supplies_of([stock])
    assert [each.supply.width for each in offers] == [0.0] * len(offers)
    assert [each.supply.price for each in offers] == [
        pytest.approx(4.0 * length / 1000) for length in BOARD_LENGTHS["mm"]
    ]
    assert all(each.section == 45.0 for each in offers)


SHEET = Entry("B18", "sheet", "Birch ply", 18.2, Piece(2440.0, 1220.0, 3), price=80.0, where="loft")
OFFCUT = Entry("K-1", "sheet", "birch plywood", 18.0, Piece(700.0, 500.0, 1, show_faces=1))


def test_a_rack_has_what_is_there_and_what_is_bought() -> None:
    there, bought, offcut = supplies_of([PLY], rack_of(SHEET, OFFCUT))
    assert names((there, bought, offcut)) == ["B18", "B18, bought", "K-1"]
    assert (there.supply.count, there.supply.price, there.where) == (3, 0.0, "loft")
    assert (bought.supply.count, bought.supply.price) == (None, 80.0)
    assert offcut.show_faces == 1


def test_what_is_bought_has_no_flaws_of_what_is_there() -> None:
    stained = replace(
        SHEET,
        piece=replace(
            SHEET.piece,
            trim=Edges(5.0, 5.0, 5.0, 5.0),
            flaws=(StockFlaw(920.0, 820.0, 300.0, 400.0),),
        ),
    )
    there, bought = supplies_of([PLY], rack_of(stained))
    assert len(there.supply.flaws) == 1 and there.where == "loft"
    assert (bought.supply.flaws, bought.where) == ((), "")
    assert bought.supply.trim == there.supply.trim == Trim(5.0, 5.0, 5.0, 5.0)


@pytest.mark.parametrize(("unit", "most"), [("mm", 25.0), ("in", 25.4)])
def test_a_bought_board_has_no_worse_ends_than_usual(unit: LengthUnit, most: float) -> None:
    checked = Entry(
        "A1", "board", "ash", 22.0, Piece(2600.0, 160.0, 2, Edges(90.0, 10.0)), price=30.0
    )
    there, bought = supplies_of([ASH], replace(rack_of(checked), unit=unit))
    assert there.supply.trim == Trim(90.0, 10.0)
    assert bought.supply.trim == Trim(most, 10.0)


def test_boards_of_which_nothing_is_known_have_usual_ends() -> None:
    assert {each.supply.trim for each in supplies_of([ASH])} == {Trim(25.0, 25.0)}
    said = replace(ASH, trim=Edges(10.0, 0.0))
    assert {each.supply.trim for each in supplies_of([said])} == {Trim(10.0, 0.0)}
    sold = replace(ASH, sold=(Sold(3000.0, 150.0),))
    assert supplies_of([sold])[0].supply.trim == Trim()
    # Bought in its section it is planed all round, and square at its ends.
    section = replace(ASH, section=45.0)
    assert {each.supply.trim for each in supplies_of([section])} == {Trim()}


def test_the_specs_own_sizes_are_bought_where_the_rack_has_no_price_of_them() -> None:
    offers = supplies_of([PLY], rack_of(OFFCUT))
    assert names(offers) == ["K-1", "case 2440 x 1220"]


def test_pieces_of_a_spec_dont_count_beside_a_rack_that_has_some() -> None:
    """They may be the very ones that the rack file lists."""
    stock = replace(PLY, pieces=(Piece(800.0, 600.0, 2),))
    assert names(supplies_of([stock], rack_of(OFFCUT))) == ["K-1", "case 2440 x 1220"]
    other = replace(OFFCUT, material="mdf", grain=Grain.NONE)
    assert names(supplies_of([stock], rack_of(other))) == ["case at hand", "case 2440 x 1220"]


def test_nothing_is_assumed_to_be_sold_where_the_rack_says_what_is() -> None:
    board = Entry("A1", "board", "ash", 22.0, Piece(2000.0, 140.0, 0), price=9.0)
    assert names(supplies_of([ASH], rack_of(board))) == ["A1, bought"]
    there = replace(board, piece=Piece(2000.0, 140.0, 3), price=None)
    assert names(supplies_of([ASH], rack_of(there)))[:2] == ["A1", "ash 2400 x 150"]


def test_a_rack_that_has_the_wood_in_other_thicknesses_alone() -> None:
    thin = Entry("A1", "board", "ash", 15.0, Piece(2000.0, 140.0, 3))
    thick = replace(thin, name="A2", thickness=52.0)
    with pytest.raises(NoStockError) as told:
        supplies_of([ASH], rack_of(thin, thick, SHEET))
    assert told.value.message == "there is no ash 22 mm thick: `rack.yaml` has 15 mm and 52 mm"
    # What the spec says is sold can be bought, and of other wood the rack says nothing.
    sold = replace(ASH, sold=(Sold(2400.0, 150.0),))
    assert names(supplies_of([sold], rack_of(thin))) == ["ash 2400 x 150"]
    assert supplies_of([ASH], rack_of(SHEET))[0].assumed


def test_parts_with_two_good_faces_come_from_what_has_two() -> None:
    assert names(supplies_of([PLY], rack_of(SHEET, OFFCUT), show_faces=2)) == ["B18", "B18, bought"]


@pytest.mark.parametrize(
    ("entry", "does"),
    [
        (replace(OFFCUT, thickness=18.39), True),
        (replace(OFFCUT, thickness=18.45), False),
        (replace(OFFCUT, thickness=17.5), False),
        (replace(OFFCUT, material="Baltic birch"), True),
        (replace(OFFCUT, material="poplar plywood"), False),
        (replace(OFFCUT, kind="board"), False),
        (replace(OFFCUT, grain=Grain.NONE), False),
    ],
)
def test_which_sheets_of_a_rack_do(entry: Entry, does: bool) -> None:
    assert ("K-1" in names(supplies_of([PLY], rack_of(entry)))) is does


@pytest.mark.parametrize(
    ("thickness", "does"), [(21.7, True), (21.5, False), (30, True), (31, False)]
)
def test_a_thicker_board_is_planed(thickness: float, does: bool) -> None:
    board = Entry("A1", "board", "ash", thickness, Piece(2000.0, 140.0, 1))
    offers = supplies_of([replace(ASH, sold=(Sold(2400.0, 150.0),))], rack_of(board))
    assert ("A1" in names(offers)) is does
    if does:
        assert (offers[0].thickness, offers[0].lies) == (22.0, thickness)


def test_quarter_sawn_parts_come_from_quarter_sawn_boards() -> None:
    quarter = replace(ASH, sawn="quarter")
    flat = Entry("A1", "board", "ash", 22.0, Piece(2000.0, 140.0, 1))
    right = replace(flat, name="A2", material="ash, quarter-sawn")
    assert names(supplies_of([quarter], rack_of(flat, right)))[0] == "A2"
    assert not same_lot(ASH, quarter)


def test_equal_pieces_of_two_specs_are_the_same_ones() -> None:
    one = replace(PLY, pieces=(Piece(800.0, 600.0, 2), Piece(500.0, 400.0, 1)))
    other = replace(PLY, name="ply", pieces=(Piece(800.0, 600.0, 3),), price=70.0)
    assert same_lot(one, other)
    offers = supplies_of([one, other])
    assert [(each.supply.length, each.supply.count) for each in offers if each.at_hand] == [
        (800.0, 3),
        (500.0, 1),
    ]
    assert [each.price for each in offers if not each.at_hand] == [74.0], "the higher of two prices"


def test_what_one_lot_uses_is_gone_for_the_next() -> None:
    rack = rack_of(SHEET, OFFCUT)
    offers = supplies_of([PLY], rack)
    used = {"B18": 2, "K-1": 1, "B18, bought": 4}
    left = less(offers, used)
    assert [(each.supply.name, each.supply.count) for each in left] == [
        ("B18", 1),
        ("B18, bought", None),
    ]
    uses = uses_of(rack, offers, used)
    assert [(each.entry, each.count) for each in uses] == [("B18", 2), ("K-1", 1)]
    assert uses[0].was == SHEET.fingerprint


def test_a_fingerprint_is_of_the_wood_alone() -> None:
    piece = SHEET.piece
    same = replace(SHEET, name="X", price=None, where="", piece=replace(piece, count=1))
    assert same.fingerprint == SHEET.fingerprint
    for other in (
        replace(SHEET, thickness=18.0),
        replace(SHEET, material="oak plywood"),
        replace(SHEET, grain=Grain.CROSSWISE),
        replace(SHEET, piece=replace(piece, length=2400.0)),
        replace(SHEET, piece=replace(piece, trim=Edges(near=5.0))),
        replace(SHEET, piece=replace(piece, flaws=(StockFlaw(0.0, 0.0, 10.0, 10.0),))),
        replace(SHEET, piece=replace(piece, show_faces=1)),
    ):
        assert other.fingerprint != SHEET.fingerprint


def test_an_offcut_keeps_what_it_was_cut_from() -> None:
    board = Entry(
        "A1", "board", "ash", 22.0, Piece(2000.0, 140.0, 1), sawn_thickness=27.0, planing=6.0
    )
    offer = supplies_of([ASH], rack_of(board))[0]
    comes = offcut_of(offer, "KD7F-1", 900.0, 60.0, "A1")
    assert (comes.kind, comes.material, comes.thickness) == ("board", "ash", 22.0)
    assert (comes.sawn_thickness, comes.length, comes.width) == (27.0, 900.0, 60.0)
    assert comes.flaws == ()
    knot = Flaw(100.0, 0.0, 30.0, 60.0, "knot")
    assert offcut_of(offer, "KD7F-1", 900.0, 60.0, "A1", (knot,)).flaws == (knot,)
