"""What is bought, what comes from the rack, and what becomes of it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.cuttings import cutting, length_plan, offer, sheet_lot, sheet_plan
from rodwright.cutting.pieces import Inner, Piece
from rodwright.cutting.plans import Layout, Placed, Plan
from rodwright.cutting.pricing import PricedBy, offer_of, priced_by
from rodwright.cutting.shopping import balance_of, paid, shopping_rows, unused_beside, without_price
from rodwright.cutting.work import LotPlan


def test_what_is_bought_comes_before_what_is_at_hand() -> None:
    rows = shopping_rows(cutting())
    assert [(row.supply.name, row.count, row.each, row.sum) for row in rows] == [
        ("ply 2440 x 1220", 1, 74.0, 74.0),
        ("KD7F-3", 1, None, None),
        ("beech 45", 2, None, None),
    ]


def test_what_stays_in_the_rack_though_something_is_bought() -> None:
    planned = sheet_plan()
    more = (
        offer("K1", 500.0, 300.0, count=1, entry="K1"),
        offer("K2", 400.0, 300.0, count=3, entry="K2"),
    )
    lot = replace(
        planned.lot,
        offers=(*planned.lot.offers, *more),
        supplies=(*planned.lot.supplies, *(each.supply for each in more)),
    )
    whole = replace(planned, lot=lot)
    unused = unused_beside(cutting(whole), 0)
    assert [(each.offer.entry, each.count) for each in unused] == [("K1", 1), ("K2", 3)]
    # The next lot, cut from the same rack, takes some of it.
    small = Layout("K2", (Placed("SH1", 0.0, 0.0, 300.0, 279.0),))
    other = LotPlan(lot, Plan((small, small), 0.0, 0.0, proven=True, kerf=3.0))
    unused = unused_beside(cutting(whole, other), 0)
    assert [(each.offer.entry, each.count) for each in unused] == [("K1", 1), ("K2", 1)]
    assert unused_beside(cutting(whole, other), 1) == ()


def test_what_has_no_price_is_named_and_not_in_the_sum() -> None:
    rows = shopping_rows(cutting())
    assert paid(rows) == 74.0
    assert [row.supply.name for row in without_price(rows)] == ["beech 45"]


def test_nothing_is_lost_of_the_balance() -> None:
    balance = balance_of(cutting(), 0)
    assert balance.taken == pytest.approx(2.44 * 1.22 + 0.9 * 0.5)
    assert balance.in_pieces == pytest.approx(2 * 2.0 * 0.3 + 0.8 * 0.279)
    # By hand: 2440 x 614, 437 x 300 twice and 900 x 218 are worth keeping, 97 x 279 isn't.
    assert balance.kept == pytest.approx(2.44 * 0.614 + 2 * 0.437 * 0.3 + 0.9 * 0.218)
    assert balance.lost == pytest.approx(balance.taken - balance.in_pieces - balance.kept)
    assert balance.waste == pytest.approx(balance.lost / balance.taken)


def test_lengths_are_balanced_by_their_run() -> None:
    balance = balance_of(cutting(), 1)
    assert balance.taken == pytest.approx(4.0)
    assert balance.in_pieces == pytest.approx(4 * 0.72)
    assert balance.kept == pytest.approx(2 * 0.554)


def test_mitres_and_cuts_within_a_row_are_no_part_of_pieces() -> None:
    planned = sheet_plan()
    pieces = (
        Piece("SD1", 2000.0, 300.0, 2, slants=(100.0, 50.0)),
        Piece(
            "SH1",
            800.0,
            279.0,
            1,
            inner=(Inner("a", 0, 0, 398.0, 279.0), Inner("b", 401.0, 0, 399.0, 279.0)),
        ),
    )
    lot = replace(planned.lot, pieces=pieces)
    balance = balance_of(cutting(replace(planned, lot=lot)), 0)
    assert balance.in_pieces == pytest.approx(2 * 1.925 * 0.3 + 0.797 * 0.279)


@pytest.mark.parametrize(
    ("prices", "by"),
    [
        ((74.0, 40.0), PricedBy.MONEY),
        ((74.0, None), PricedBy.ESTIMATE),
        ((None, None), PricedBy.SIZE),
    ],
)
def test_what_a_cost_is_in(prices: tuple[float | None, float | None], by: PricedBy) -> None:
    lot = sheet_lot(
        offer("whole", 2440.0, 1220.0, price=prices[0]),
        offer("half", 1220.0, 1220.0, price=prices[1]),
        offer("offcut", 900.0, 500.0, count=1),
    )
    assert priced_by(lot) is by


def test_what_is_all_at_hand_costs_money_that_is_known() -> None:
    assert priced_by(sheet_lot(offer("offcut", 900.0, 500.0, count=1))) is PricedBy.MONEY


def test_a_supply_of_which_nothing_is_said_is_bought_at_its_price() -> None:
    lot = replace(sheet_plan().lot, offers=())
    found = offer_of(lot, "ply 2440 x 1220")
    assert (found.at_hand, found.price) == (False, 74.0)


def test_sheets_that_are_used_up_have_no_waste() -> None:
    lot = sheet_lot(offer("just", 800.0, 279.0, price=1.0))
    whole = Layout("just", (Placed("SH1", 0.0, 0.0, 800.0, 279.0),))
    plan = cutting(LotPlan(lot, Plan((whole,), 1.0, 1.0, proven=True, kerf=3.0)), length_plan())
    assert balance_of(plan, 0).waste == pytest.approx(0.0)
