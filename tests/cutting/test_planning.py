"""Lots are planned one after another: what they share, and how long they may take."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

import pytest

import rodwright.cutting.planning as planning
from kit.cuttings import LEAST, length_plan, offer
from rodwright.cutting.pieces import Piece
from rodwright.cutting.planning import LotError, Watch, plan_lots
from rodwright.cutting.plans import CannotCutError, Plan
from rodwright.cutting.progress import Patience
from rodwright.cutting.saws import Saw
from rodwright.cutting.whole import Rules
from rodwright.cutting.work import Lot, LotPlan

RULES = Rules(Saw(kerf=3.0))


def legs(count: int, *offers: Any, name: str = "beech") -> Lot:
    """Legs of 720 mm from lengths."""
    lot = length_plan().lot
    return replace(
        lot,
        name=name,
        pieces=(Piece("LG1", 720.0, 0.0, count),),
        supplies=tuple(each.supply for each in offers),
        offers=offers,
    )


def at_hand(name: str, count: int, *, entry: str = "") -> Any:
    return offer(
        name, 1500.0, 0.0, count=count, kind="length", thickness=45.0, section=45.0, entry=entry
    )


BOUGHT = offer("beech 2000", 2000.0, 0.0, price=20.0, kind="length", thickness=45.0, section=45.0)


LONG = (Piece("LG1", 2001.0, 0.0, 1),)


def planned(*lots: Lot, watch: Watch | None = None) -> tuple[LotPlan, ...]:
    return plan_lots(lots, RULES, LEAST, 0, watch or Watch())


def test_what_is_at_hand_is_used_first() -> None:
    (plan,) = planned(legs(6, at_hand("there", 2), BOUGHT))
    assert plan.plan.used == {"there": 2, "beech 2000": 1}
    assert plan.plan.cost == 20.0


@pytest.mark.parametrize("entry", ["", "legs behind the door"])
def test_nothing_at_hand_is_used_twice(entry: str) -> None:
    both = (at_hand("there", 2, entry=entry), BOUGHT)
    one, other = planned(legs(2, *both), legs(4, *both, name="beech 2"))
    assert one.plan.used == {"there": 1}
    assert other.plan.used == {"there": 1, "beech 2000": 1}
    assert [(each.name, each.count) for each in other.lot.supplies] == [
        ("there", 1),
        ("beech 2000", None),
    ]
    last = planned(legs(4, *both), legs(2, *both, name="beech 2"))[1]
    assert [each.name for each in last.lot.supplies] == ["beech 2000"]
    assert [each.supply.name for each in last.lot.offers] == ["beech 2000"]


def test_what_is_proven_holds_whichever_lot_has_what_they_share() -> None:
    """Each alone would be cut from what is at hand, for nothing: the second has to buy, which isn't
    proven to be best."""
    both = (at_hand("there", 1), BOUGHT)
    one, other = planned(legs(2, *both), legs(2, *both, name="beech 2"))
    assert (one.plan.cost, one.plan.bound, one.plan.proven) == (0.0, 0.0, True)
    assert (other.plan.cost, other.plan.bound, other.plan.proven) == (20.0, 0.0, False)


def test_what_is_called_alike_but_is_another_entry_stays() -> None:
    one, other = planned(
        legs(4, at_hand("there", 2, entry="a")), legs(4, at_hand("there", 2, entry="b"))
    )
    assert one.plan.used == other.plan.used == {"there": 2}


def test_a_lot_that_cant_be_cut_is_named() -> None:
    with pytest.raises(LotError) as caught:
        planned(legs(2, BOUGHT), replace(legs(1, BOUGHT, name="long"), pieces=LONG))
    assert caught.value.lot.name == "long"
    assert caught.value.why.reason == "too large"


Asked = list[tuple[float | None, bool]]


@pytest.fixture
def shares(monkeypatch: pytest.MonkeyPatch) -> Asked:
    """How long each lot may take, and whether it was stopped before it began."""
    found: Asked = []

    def plan_of(_lot: Lot, _rules: Any, _least: Any, _seed: int, patience: Patience) -> Plan:
        found.append((patience.seconds, patience.stopped))
        return Plan((), 0.0, 0.0, proven=True, kerf=3.0, stopped=patience.stopped)

    monkeypatch.setattr(planning, "plan_of", plan_of)
    return found


def test_lots_share_the_time_that_is_left(shares: Asked, monkeypatch: pytest.MonkeyPatch) -> None:
    moments = iter([100.0, 104.0, 111.0])
    monkeypatch.setattr(planning, "monotonic", lambda: next(moments))
    lots = [legs(2, BOUGHT, name=str(at)) for at in range(3)]
    planned(*lots, watch=Watch(10.0, _began=100.0))
    # 10 s for three, 6 s for two, and none is left for the last.
    assert [seconds for seconds, _ in shares] == [pytest.approx(10 / 3), 3.0, 0.0]


def test_without_a_limit_there_is_none(shares: Asked) -> None:
    planned(legs(2, BOUGHT))
    assert shares == [(None, False)]


def test_what_follows_a_stop_is_stopped_from_the_start(shares: Asked) -> None:
    watch = Watch()

    def told(lot: Lot, _cost: float, _bound: float) -> None:
        if lot.name == "1":
            watch.stop()

    watch.told = told
    planned(*(legs(2, BOUGHT, name=str(at)) for at in range(3)), watch=watch)
    assert [stopped for _, stopped in shares] == [False, True, True]
    assert watch.over()


def test_an_interruption_within_a_search_ends_the_later_ones_too(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    begun: list[bool] = []

    def plan_of(_lot: Lot, _rules: Any, _least: Any, _seed: int, patience: Patience) -> Plan:
        begun.append(patience.stopped)
        patience.stop()  # as whoever searches does when it comes
        return Plan((), 0.0, 0.0, proven=False, kerf=3.0, stopped=True)

    monkeypatch.setattr(planning, "plan_of", plan_of)
    planned(legs(2, BOUGHT), legs(2, BOUGHT))
    assert begun == [False, True]


def test_progress_is_told_by_lots() -> None:
    told: list[tuple[str, float, float]] = []

    def tell(lot: Lot, cost: float, bound: float) -> None:
        told.append((lot.name, cost, bound))

    lots: Sequence[Lot] = [legs(6, BOUGHT, name="one"), legs(3, BOUGHT, name="other")]
    plans = planned(*lots, watch=Watch(told=tell))
    assert list(dict.fromkeys(name for name, _, _ in told)) == ["one", "other"]
    for each in plans:
        costs = [cost for name, cost, _ in told if name == each.lot.name]
        assert costs[0] == float("inf")
        assert costs[-1] == each.plan.cost


def test_stopped_before_it_began_a_search_still_gives_a_whole_plan() -> None:
    watch = Watch(stopped=True)
    (plan,) = planned(legs(9, BOUGHT), watch=watch)
    assert not plan.plan.left
    assert sum(len(each.placed) for each in plan.plan.layouts) == 9


def test_cannot_cut_says_why() -> None:
    error = LotError(length_plan().lot, CannotCutError("grain", ("LG1",)))
    assert str(error) == "beech: grain: LG1"
