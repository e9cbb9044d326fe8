"""Which offcuts are kept, and what is written on them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from rodwright.cutting.offcuts import Least, kept_offcuts, plan_identity, worth_keeping
from rodwright.cutting.plans import Layout, Offcut, Placed, Plan
from rodwright.cutting.supplies import Flaw, Supply
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


def test_an_offcut_keeps_what_is_in_it_of_flaws() -> None:
    holes = Flaw(500, 100, 100, 900, "old screw holes")
    beside = Flaw(0, 1100, 2440, 120, "stain")
    planned = _planned(Offcut(480.0, 200.0, 1000.0, 500.0))
    (supply,) = planned.lot.supplies
    lot = replace(planned.lot, supplies=(replace(supply, flaws=(holes, beside)),))
    for each in kept_offcuts([replace(planned, lot=lot)], "ab" * 8, LEAST):
        assert each.flaws == (Flaw(20.0, 0.0, 100.0, 500.0, "old screw holes"),)


@pytest.mark.parametrize(
    ("kind", "offcut", "flaw", "kept"),
    [
        ("sheet", Offcut(0, 0, 1000, 160), Flaw(400, 0, 50, 160), True),
        ("sheet", Offcut(0, 0, 1000, 160), Flaw(399, 0, 202, 160), False),
        ("sheet", Offcut(0, 0, 1000, 160), Flaw(450, 75, 50, 20), True),
        ("sheet", Offcut(0, 0, 849, 160), Flaw(399, 75, 51, 20), False),
        ("sheet", Offcut(0, 0, 849, 160), Flaw(399, 150, 51, 10), True),
        ("board", Offcut(100, 10, 500, 50), Flaw(399, 0, 2, 100), False),
        ("board", Offcut(100, 10, 500, 50), Flaw(399, 0, 2, 20), True),
        ("length", Offcut(100, 0, 500, 0), Flaw(399, 0, 2, 0), False),
        ("length", Offcut(100, 0, 500, 0), Flaw(400, 0, 2, 0), True),
    ],
)
def test_what_is_clear_of_flaws_has_to_be_worth_keeping(
    kind: str, offcut: Offcut, flaw: Flaw, kept: bool
) -> None:
    planned = _planned(offcut, kind=kind)
    (supply,) = planned.lot.supplies
    lot = replace(planned.lot, supplies=(replace(supply, flaws=(flaw,)),))
    assert bool(kept_offcuts([replace(planned, lot=lot)], "ab" * 8, LEAST)) is kept


def test_a_plan_is_told_from_others_and_from_itself_with_another_rack() -> None:
    one, other = [_planned(Offcut(0, 0, 600, 300))], [_planned(Offcut(0, 0, 600, 301))]
    found = {plan_identity(one), plan_identity(other), plan_identity(one, "another rack")}
    assert len(found) == 3
    assert plan_identity(one) == plan_identity([_planned(Offcut(0, 0, 600, 300))])
