"""How a plan is told: whole sentences, as they are read."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.cuttings import cutting, length_plan, offer, sheet_lot, sheet_plan
from rodwright.cutting.plans import Plan
from rodwright.cutting.saws import Saw
from rodwright.cutting.shopping import shopping_rows
from rodwright.cutting.whole import Cutting, OneMore, Rules
from rodwright.cutting.work import LotPlan
from rodwright.handover.cut_sequence import steps_of
from rodwright.handover.cut_words import (
    cautions,
    lot_summary,
    lot_title,
    numbers_said,
    offer_title,
    one_more_lines,
    proof_said,
    refs_said,
    row_said,
    to_pay_said,
    unused_said,
)


@pytest.mark.parametrize(
    ("cost", "bound", "proven", "said"),
    [
        (148.0, 148.0, True, "proven best (least cost)"),
        (148.0, 144.6, False, "at most 2.3 % could be saved: none can cost less than 144.60"),
        (100.0, 99.96, False, "at most 0.1 % could be saved: none can cost less than 99.96"),
        (100.0, 0.0, False, "whether that is the best isn't known"),
        (100.0, 100.0, False, "none costs less (bound 100.00)"),
    ],
)
def test_how_good_a_plan_is(cost: float, bound: float, proven: bool, said: str) -> None:
    plan = Plan((), cost, bound, proven, kerf=3.0)
    assert proof_said(sheet_plan().lot, plan, "mm") == said


def test_a_lot_in_a_line() -> None:
    assert lot_summary(sheet_plan(), "mm") == "2 sheets, 74.00, proven best (least cost)"
    assert lot_summary(length_plan(), "mm") == (
        "2 lengths, 4.0 m, at most 2 % could be saved: none can take less than 3.9 m"
    )


def test_what_is_all_at_hand_and_what_is_estimated() -> None:
    there = sheet_lot(offer("KD7F-3", 2440.0, 1220.0, count=2))
    plan = replace(sheet_plan().plan.layouts[1])
    at_hand = LotPlan(there, Plan((plan,), 0.0, 0.0, proven=True, kerf=3.0))
    assert lot_summary(at_hand, "mm") == (
        "1 sheet, nothing to buy, whether fewer sheets would do isn't proven"
    )
    fewest = replace(at_hand, plan=replace(at_hand.plan, fewest=True))
    assert lot_summary(fewest, "mm") == "1 sheet, nothing to buy, proven best (fewest sheets)"
    no_price = replace(length_plan(), plan=replace(length_plan().plan, bound=4.0, proven=True))
    assert lot_summary(no_price, "mm") == "2 lengths, 4.0 m, proven best (least wood)"
    planned = sheet_plan()
    guessed = offer("half", 1220.0, 1220.0)
    lot = replace(
        planned.lot,
        supplies=(*planned.lot.supplies, guessed.supply),
        offers=(*planned.lot.offers, guessed),
    )
    assert lot_summary(replace(planned, lot=lot), "mm") == (
        "2 sheets, 74.00 by estimate, proven best (least cost)"
    )


def test_a_search_that_was_stopped_says_so() -> None:
    planned = length_plan()
    stopped = replace(planned, plan=replace(planned.plan, stopped=True))
    assert lot_summary(stopped, "mm").endswith(", stopped before the end of the search")
    # What is proven wants no more searching, but for a larger offcut.
    best = sheet_plan()
    best = replace(best, plan=replace(best.plan, stopped=True))
    assert lot_summary(best, "mm") == "2 sheets, 74.00, proven best (least cost)"


def test_a_proof_holds_for_the_strips_that_panels_were_divided_into() -> None:
    planned = sheet_plan()
    glued = replace(planned, lot=replace(planned.lot, glued_up=True))
    assert lot_summary(glued, "mm") == (
        "2 sheets, 74.00, proven best (least cost), by the strips that its panels are glued up of"
    )


def test_what_a_lot_is_of() -> None:
    assert lot_title(sheet_plan().lot, "mm") == "birch plywood, 18 mm"
    assert lot_title(length_plan().lot, "mm") == "beech, 45 x 45 mm"
    assert lot_title(replace(sheet_plan().lot, thickness=19.05), "in") == "birch plywood, 3/4 in"


def test_what_is_bought_in_a_line() -> None:
    plan = cutting()
    assert [row_said(plan, row) for row in shopping_rows(plan)] == [
        "1 sheet of birch plywood, 18 mm, 2440 x 1220 mm",
        "1 sheet of birch plywood, 18 mm, 900 x 500 mm",
        "2 lengths of beech, 45 x 45 mm, 2000 mm",
    ]


def test_a_sawn_board_is_told_by_both_thicknesses() -> None:
    sawn = offer("ash 27", 2600.0, 160.0, kind="board", thickness=27.0, sawn_thickness=27.0)
    lot = replace(sheet_plan().lot, kind="board", material="european ash", thickness=22.0)
    assert offer_title(lot, sawn, "mm") == "european ash, sawn 27, planed 22 mm"
    thick = replace(sawn, sawn_thickness=None)
    assert offer_title(lot, thick, "mm") == "european ash, 27 thick, planed 22 mm"
    assert offer_title(lot, replace(sawn, lies=22.0), "mm") == "european ash, 22 mm"


def test_what_stays_in_the_rack_in_a_line() -> None:
    planned = sheet_plan()
    assert unused_said(cutting(planned), 0) == ""
    more = (
        offer("K1", 500.0, 300.0, count=1, entry="K1"),
        offer("K2", 400.0, 300.0, count=3, entry="K2"),
    )
    lot = replace(
        planned.lot,
        offers=(*planned.lot.offers, *more),
        supplies=(*planned.lot.supplies, *(each.supply for each in more)),
    )
    assert unused_said(cutting(replace(planned, lot=lot)), 0) == "left in the rack: K1, 3 of K2"


def test_what_has_no_price_is_never_counted_as_nothing() -> None:
    rows = shopping_rows(cutting())
    assert to_pay_said(rows) == "74.00 and what has no price"
    assert to_pay_said(rows[:2]) == "74.00"
    assert to_pay_said(rows[2:]) == "not known, as no price is given"


def test_one_more_size() -> None:
    then = {"one more size": 2, "KD7F-3": 1}
    changes = (
        OneMore(0, 1220.0, 610.0, 18.5, True, 0, 37.0, then),
        OneMore(0, 1220.0, 1220.0, 40.0, False, -1, 7.5, {"one more size": 1}),
        OneMore(0, 2500.0, 1250.0, 77.7, True, 0, 0.0),
        OneMore(1, 2400.0, 0.0, 2.4, True, 0, 0.0),
    )
    assert one_more_lines(cutting(one_more=changes)) == (
        "birch plywood, 18 mm: 2 of 1220 x 610 mm (at 18.50 each, by its area as nobody said a "
        "price) and your KD7F-3 instead of 1 of 2440 x 1220 mm and your KD7F-3: 37.00 less",
        "nothing would be saved with another usual size of beech, 45 x 45 mm",
    )


def test_cautions_are_few_and_suit_what_is_cut() -> None:
    def told(plan: Cutting) -> tuple[str, ...]:
        return cautions(plan, steps_of(plan))

    saw = told(cutting())
    assert len(saw) <= 6
    assert saw[0].startswith("Dust:")
    assert any(line.startswith("Saw: guard and riving knife on") for line in saw)
    # 2.44 x 1.22 x 0.018 m of 680 kg/m3, by hand.
    assert saw[-1] == "The heaviest weighs 36 kg before it is cut: 3 people lift it."
    router = told(cutting(sheet_plan(), rules=Rules(Saw(), Saw("router", kerf=6.0))))
    assert any(line.startswith("Router: clamp or hold the sheet") for line in router)
    assert not any("riving knife" in line for line in router)
    assert not any("heaviest" in line for line in told(cutting(length_plan())))


def test_numbers_in_runs() -> None:
    assert numbers_said((1,)) == "1"
    assert numbers_said((1, 2, 3, 5, 7, 8)) == "1-3, 5, 7-8"


@pytest.mark.parametrize("router", [None, Saw("router", kerf=3.0)])
def test_the_refs_of_a_sheet(router: Saw | None) -> None:
    plan = cutting(rules=Rules(Saw(kerf=3.0), router))
    sheets, lengths = steps_of(plan)
    assert [refs_said(sheets, each) for each in sheets.sheets] == ["SD1, SD2", "SH1"]
    assert refs_said(lengths, lengths.sheets[0]) == "LG1, LG2, LG3, LG4"
