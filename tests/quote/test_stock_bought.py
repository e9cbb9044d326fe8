"""Stock by its cutting plan and by area, priced by hand."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from kit.cuttings import cutting, length_plan, offer, sheet_lot, sheet_plan
from kit.panels import panel, unit_of
from kit.samples import PLYWOOD
from kit.takings import each_for, rates_in
from rodwright.cutting.whole import Cutting
from rodwright.quote.counted import Material
from rodwright.quote.rates import Price, Rates
from rodwright.quote.stock_bought import by_area, by_plan
from rodwright.unit import Grain, Unit
from rodwright.unit.stock import Blank, Piece, Sold, Stock

D = Decimal
PLY = replace(PLYWOOD, price=None)
OAK = Stock("oak", "board", "european oak", 22.0, Grain.LENGTHWISE, 700.0, "", "#ddccaa")
BEECH = Stock("beech", "board", "beech", 45.0, Grain.LENGTHWISE, 720.0, "", "#ddccaa", section=45.0)


def unit_in(stock: Stock, length: float = 1000.0, width: float = 100.0) -> Unit:
    blank = Blank(length, width, stock.thickness, stock, Grain.LENGTHWISE)
    return unit_of(replace(panel(), blank=blank))


def planned(plan: Cutting, rates: Rates, stock: Stock = PLY) -> list[Material]:
    return [*by_plan(unit_in(stock), plan, rates)]


def area(stock: Stock, rates: Rates) -> Material:
    (found,) = by_area(unit_in(stock), rates)
    return found


def test_sheets_are_bought_whole_and_those_of_the_rack_count_by_area() -> None:
    """One sheet of 2440 x 1220 at 74.00; an offcut of 900 x 500 from the rack, which has no price
    of its own: 0.45 m2 of 2.9768 m2, 74 x 0.45 / 2.9768 = 11.18651."""
    bought, racked = planned(cutting(sheet_plan()), rates_in())
    assert (bought.count, bought.price, bought.per) == (1, D("74.0000"), "sheet")
    assert (bought.basis, bought.wasted) == ("cutting plan", False)
    assert bought.name == "birch plywood, 18 mm, 2440 x 1220"
    assert (racked.count, racked.price) == (1, D("11.1865"))
    assert racked.basis == "cutting plan, from the rack"


def test_what_is_at_hand_counts_at_what_another_of_its_size_costs() -> None:
    plan = sheet_plan()
    offers = (
        offer("ply 2440 x 1220", 2440.0, 1220.0, price=74.0),
        offer("KD7F-3, bought", 900.0, 500.0, price=15.5, entry="KD7F-3"),
        offer("KD7F-3", 900.0, 500.0, count=1, entry="KD7F-3"),
    )
    lot = replace(plan, lot=sheet_lot(*offers))
    assert [each.price for each in planned(cutting(lot), rates_in())] == [74, D("15.5")]


def test_boards_at_hand_count_at_their_price_by_the_metre() -> None:
    """A board 2.4 m long at 9.80 the metre: 23.52."""
    board = replace(OAK, price=9.8)
    there = offer("oak at hand", 2400.0, 150.0, count=2, kind="board", thickness=22.0)
    plan = sheet_plan()
    lot = replace(
        sheet_lot(replace(there, material="european oak"), plan.lot.offers[1]),
        kind="board",
        material="european oak",
        thickness=22.0,
    )
    layout = replace(plan.plan.layouts[0], stock="oak at hand")
    whole = replace(plan, lot=lot, plan=replace(plan.plan, layouts=(layout,)))
    (found,) = planned(cutting(whole), rates_in(), board)
    assert (found.price, found.per, found.basis) == (D("23.52"), "board", "cutting plan, at hand")


@pytest.mark.parametrize(
    ("price", "each"),
    [
        # For a sheet, for a m2 (2.9768 x 25), for a m3 (2.9768 x 0.018 x 1000).
        (each_for("70.00"), "70"),
        (Price(D(25), D(10) ** 6, 2), "74.42"),
        (Price(D(1000), D(10) ** 9, 3), "53.5824"),
    ],
)
def test_sheets_without_a_price_have_that_of_the_rates(price: Price, each: str) -> None:
    plan = sheet_plan()
    lot = sheet_lot(offer("ply 2440 x 1220", 2440.0, 1220.0), plan.lot.offers[1])
    rates = rates_in(prices={"Birch Plywood, 18 mm": price})
    bought, _ = planned(cutting(replace(plan, lot=lot)), rates)
    assert (bought.price, bought.key) == (D(each), "Birch Plywood, 18 mm")


def test_a_price_that_nobody_said_is_none_and_is_named() -> None:
    (legs,) = planned(cutting(length_plan()), rates_in(), BEECH)
    assert (legs.price, legs.key, legs.count) == (None, "beech 45 mm", 2)
    assert (legs.name, legs.per) == ("beech, 45 x 45 mm, 2000", "length")


def test_boards_of_a_plan_aren_t_priced_by_the_piece() -> None:
    """Whole boards come in many sizes: a price for one, or by the metre, says too little."""
    board = offer("oak 2400 x 150", 2400.0, 150.0, kind="board", thickness=22.0)
    plan = sheet_plan()
    lot = replace(
        sheet_lot(replace(board, material="european oak")),
        kind="board",
        material="european oak",
        thickness=22.0,
    )
    layout = replace(plan.plan.layouts[0], stock="oak 2400 x 150")
    whole = cutting(replace(plan, lot=lot, plan=replace(plan.plan, layouts=(layout,))))
    (said,) = planned(whole, rates_in(prices={"european oak": Price(D(3000), D(10) ** 9, 3)}), OAK)
    # 2.4 x 0.15 x 0.022 m3 at 3000.
    assert said.price == D("23.76")
    own = {"european oak 22 mm, 2400 x 150": each_for("30")}
    (said,) = planned(whole, rates_in(prices=own), OAK)
    assert said.price == 30
    for price in (each_for("30"), Price(D(9), D(1000), 1)):
        (found,) = planned(whole, rates_in(prices={"european oak": price}), OAK)
        assert (found.price, found.key) == (None, "european oak")
        assert found.name == "european oak, 22 mm, 2400 x 150, by the m2 or m3"


@pytest.mark.parametrize("size", ["2440 x 1220", "1220 x 2440"])
def test_a_price_of_the_very_size_comes_first(size: str) -> None:
    plan = sheet_plan()
    lot = sheet_lot(offer("ply 2440 x 1220", 2440.0, 1220.0), plan.lot.offers[1])
    prices = {
        "birch plywood 18 mm": Price(D(25), D(10) ** 6, 2),
        f"birch plywood 18 mm, {size}": each_for("70"),
    }
    bought, _ = planned(cutting(replace(plan, lot=lot)), rates_in(prices=prices))
    assert (bought.price, bought.key) == (70, f"birch plywood 18 mm, {size}")
    sheet = replace(PLY, size=(2440.0, 1220.0))
    assert area(sheet, rates_in(prices=prices)).price == 70


def test_a_plan_of_what_no_part_is_of_is_refused() -> None:
    with pytest.raises(ValueError, match="no part of this unit is of beech"):
        planned(cutting(length_plan()), rates_in())


def test_sheets_by_area() -> None:
    """0.1 m2 of 2.9768 m2: 0.0336 of a sheet."""
    found = area(replace(PLY, size=(2440.0, 1220.0), price=74.0), rates_in())
    assert (found.count, found.per, found.price) == (D("0.034"), "sheet", 74)
    assert (found.wasted, found.basis) == (True, "by area")


def test_sheets_that_are_sold_in_another_size_cost_in_proportion() -> None:
    """A half sheet of 1220 x 1220 at 41: a whole one 82."""
    stock = replace(PLY, size=(2440.0, 1220.0), sold=(Sold(1220.0, 1220.0, 41.0),))
    assert area(stock, rates_in()).price == 82


def test_boards_by_area() -> None:
    """A board of 2.4 x 0.15 m at 36.00: 100 the m2, or 9.2903 the sq ft of 0.09290304 m2."""
    stock = replace(OAK, sold=(Sold(2400.0, 150.0, 36.0),))
    metric, inches = area(stock, rates_in()), area(stock, rates_in("in"))
    assert (metric.count, metric.per, metric.price) == (D("0.1"), "m2", 100)
    # 0.1 / 0.09290304
    assert (inches.count, inches.per, inches.price) == (D("1.076"), "sq ft", D("9.2903"))


def test_boards_at_hand_by_area() -> None:
    """9 the metre of boards 150 wide: 60 the m2."""
    stock = replace(OAK, price=9.0, pieces=(Piece(2400.0, 150.0, 4),))
    assert area(stock, rates_in()).price == 60


@pytest.mark.parametrize(
    ("price", "sawn", "each"),
    [
        # 3000 the m3: 22 mm thick 66 the m2, of 27 mm sawn 81; 50 the m2 whatever it is.
        (Price(D(3000), D(10) ** 9, 3), None, "66"),
        (Price(D(3000), D(10) ** 9, 3), 27.0, "81"),
        (Price(D(50), D(10) ** 6, 2), None, "50"),
        # By the metre, or the piece, of no width that is known.
        (Price(D(9), D(1000), 1), None, None),
        (each_for("36"), None, None),
    ],
)
def test_boards_by_the_rates(price: Price, sawn: float | None, each: str | None) -> None:
    rates = rates_in(prices={"european oak": price})
    found = area(replace(OAK, sawn_thickness=sawn), rates)
    assert found.price == (None if each is None else D(each))
    assert found.name == "european oak, 22 mm" + ("" if each else ", by the m2 or m3")


def test_lengths_by_the_metre_or_the_foot() -> None:
    """4 the metre, 1.2192 the foot; a length of 2 m at 9: 4.5 the metre."""
    stock = replace(BEECH, price=4.0)
    assert (area(stock, rates_in()).price, area(stock, rates_in()).count) == (4, 1)
    inches = area(stock, rates_in("in"))
    assert (inches.price, inches.per, inches.count) == (D("1.2192"), "ft", D("3.281"))
    sold = replace(BEECH, sold=(Sold(2000.0, 45.0, 9.0),))
    assert area(sold, rates_in()).price == D("4.5")
    rated = rates_in(prices={"beech": Price(D(5), D(1000), 1)})
    assert area(BEECH, rated).price == 5
