"""What one more size would change."""

from __future__ import annotations

from dataclasses import replace

import pytest

import rodwright.cutting.one_more as module
from kit.cuttings import LEAST, length_plan, offer, sheet_lot
from rodwright.cutting.offers import Offer
from rodwright.cutting.one_more import one_more
from rodwright.cutting.pieces import Piece
from rodwright.cutting.planning import Watch, plan_lots
from rodwright.cutting.progress import Brief
from rodwright.cutting.saws import Saw
from rodwright.cutting.whole import OneMore, Rules
from rodwright.cutting.work import Lot

RULES = Rules(Saw(kerf=3.0))
WHOLE = offer("ply 2440 x 1220", 2440.0, 1220.0, price=74.0)


def changes(lot: Lot, watch: Watch | None = None) -> list[OneMore]:
    (planned,) = plan_lots([lot], RULES, LEAST, 0, Watch())
    return list(one_more(0, planned, RULES, LEAST, 0, "mm", watch or Watch()))


def shelves(count: int, *offers: Offer, length: float = 1200.0) -> Lot:
    """Shelves of 18 mm plywood, 300 mm deep."""
    pieces = (Piece("SH1", length, 300.0, count),)
    return replace(sheet_lot(*offers), pieces=pieces)


def test_half_a_sheet_saves_half_of_what_isnt_needed() -> None:
    """Ten shelves: a whole sheet takes eight, two on half a sheet (by hand)."""
    half = next(each for each in changes(shelves(10, WHOLE)) if each.length == each.width == 1220)
    assert (half.price, half.in_proportion) == (37.0, True)
    assert (half.count, half.saved) == (0, 37.0)
    assert half.used == {"ply 2440 x 1220": 1, "one more size": 1}


def test_sizes_that_are_sold_already_are_not_tried() -> None:
    half = offer("half", 1220.0, 1220.0, price=40.0)
    sizes = {(each.length, each.width) for each in changes(shelves(10, WHOLE, half))}
    assert sizes == {(3050.0, 1525.0), (2500.0, 1250.0), (1220.0, 610.0)}


def test_nothing_is_saved_where_a_sheet_is_full() -> None:
    found = changes(shelves(8, WHOLE))
    assert found
    assert all((each.saved, each.count) == (0.0, 0) for each in found)


def test_what_is_proven_to_save_nothing_isnt_planned_with(monkeypatch: pytest.MonkeyPatch) -> None:
    """Eight shelves of 1219 x 304 leave nothing of a sheet that another could do better."""
    lot = replace(shelves(0, WHOLE), pieces=(Piece("SH1", 1218.0, 302.0, 8),))
    (planned,) = plan_lots([lot], RULES, LEAST, 0, Watch())
    tried: list[Lot] = []
    monkeypatch.setattr(module, "plan_of", lambda each, *_: tried.append(each) or planned.plan)
    assert len(list(one_more(0, planned, RULES, LEAST, 0, "mm", Watch()))) == 4
    assert tried == []


def test_lots_of_which_nothing_is_bought_have_no_choice() -> None:
    assert changes(shelves(8, offer("there", 2440.0, 1220.0, count=1), WHOLE)) == []


def test_sizes_that_are_only_assumed_are_no_choice_either() -> None:
    assert changes(shelves(8, replace(WHOLE, assumed=True))) == []


def test_lengths_are_tried_too() -> None:
    """Three legs of 750 mm: one length of 2400 instead of two of 2000 (by hand)."""
    bought = offer("beech", 2000.0, 0.0, price=20.0, kind="length", thickness=45.0, section=45.0)
    lot = replace(
        length_plan().lot,
        pieces=(Piece("LG1", 750.0, 0.0, 3),),
        supplies=(bought.supply,),
        offers=(bought,),
    )
    first = changes(lot)[0]
    assert (first.length, first.width, first.price) == (2400.0, 0.0, 24.0)
    assert (first.count, first.saved) == (1, 16.0)


def test_nothing_is_tried_once_time_is_over() -> None:
    assert changes(shelves(10, WHOLE), Watch(stopped=True)) == []
    assert changes(shelves(10, WHOLE), Watch(0.0)) == []


def test_a_brief_patience_ends_by_itself() -> None:
    brief = Brief(looks=3)
    assert [brief.over() for _ in range(5)] == [False, False, False, True, True]
    assert brief.stopped and brief.left == 0.0
