"""Which offcuts are kept, and what is written on them."""

from __future__ import annotations

import pytest

from rodwright.cutting.offcuts import Least, kept_offcuts, plan_identity, worth_keeping
from rodwright.cutting.plans import Layout, Offcut, Placed, Plan
from rodwright.cutting.supplies import Supply
from rodwright.cutting.work import Lot, LotPlan

LEAST = Least(length=400, width=150, board_length=300, board_width=40)


def _planned(*offcuts: Offcut, kind: str = "sheet") -> LotPlan:
    lot = Lot("ply 18", kind, "birch plywood", 18, 680, (), {}, (Supply("sheet", 2440, 1220),))  # type: ignore[arg-type]
    layout = Layout("sheet", (Placed("A", 0, 0, 100, 100),), offcuts)
    return LotPlan(lot, Plan((layout, layout), 2.0, 2.0, proven=True, kerf=3.2))


@pytest.mark.parametrize(
    ("kind", "length", "width", "kept"),
    [
        ("sheet", 400, 150, True),
        ("sheet", 150, 400, True),
        ("sheet", 399, 399, False),
        ("sheet", 1000, 149, False),
        ("board", 300, 40, True),
        ("board", 40, 300, False),
        ("board", 1000, 39, False),
        ("length", 300, 0, True),
        ("length", 299, 0, False),
    ],
)
def test_what_is_worth_keeping(kind: str, length: float, width: float, kept: bool) -> None:
    assert worth_keeping(kind, length, width, LEAST) is kept


def test_offcuts_are_named_in_their_order_over_all_lots() -> None:
    large, small = Offcut(0, 0, 600, 300), Offcut(0, 0, 90, 90)
    lots = [_planned(large, small), _planned(large)]
    kept = kept_offcuts(lots, plan_identity(lots), LEAST)
    assert [(each.name.split("-")[1], each.lot, each.layout) for each in kept] == [
        ("1", 0, 0), ("2", 0, 1), ("3", 1, 0), ("4", 1, 1),
    ]  # fmt: skip
    assert len({each.name.split("-")[0] for each in kept}) == 1
    assert {each.offcut for each in kept} == {large}


def test_a_plan_is_told_from_others_and_from_itself_with_another_rack() -> None:
    one, other = [_planned(Offcut(0, 0, 600, 300))], [_planned(Offcut(0, 0, 600, 301))]
    found = {plan_identity(one), plan_identity(other), plan_identity(one, "another rack")}
    assert len(found) == 3
    assert plan_identity(one) == plan_identity([_planned(Offcut(0, 0, 600, 300))])
