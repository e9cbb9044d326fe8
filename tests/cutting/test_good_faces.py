"""Pieces that show both faces don't come from what has one good face, at least cost."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from kit.cuttings import LEAST, length_plan, offer
from rodwright.cutting.pieces import Piece
from rodwright.cutting.planning import plan_of
from rodwright.cutting.plans import CannotCutError, Plan
from rodwright.cutting.progress import Patience
from rodwright.cutting.saws import Saw
from rodwright.cutting.whole import Rules
from rodwright.cutting.work import Lot

KERF = 3.0
RULES = Rules(Saw(kerf=KERF))


def lot_of(pieces: Sequence[tuple[str, float, int]], *offers: Any) -> Lot:
    """Lengths, each with the good faces it needs."""
    return replace(
        length_plan().lot,
        pieces=tuple(Piece(name, length) for name, length, _ in pieces),
        labels={},
        supplies=tuple(each.supply for each in offers),
        offers=offers,
        faces={name: faces for name, _, faces in pieces},
    )


def bar(name: str, length: float, faces: int, price: float, count: int | None = None) -> Any:
    made = offer(name, length, 0.0, count=count, price=price, kind="length", thickness=45.0)
    return replace(made, show_faces=faces)


def plan(lot: Lot) -> Plan:
    return plan_of(lot, RULES, LEAST, 0, Patience())


def kept(lot: Lot, found: Plan) -> bool:
    good = {each.supply.name: each.show_faces for each in lot.offers}
    return all(
        lot.faces[each.piece] <= good[layout.stock]
        for layout in found.layouts
        for each in layout.placed
    )


def test_the_cheaper_of_two_ways_is_taken() -> None:
    """Both go on one good bar of 20; one after the other on a good one of 20 and a bad one of 5."""
    lot = lot_of(
        [("both", 900.0, 2), ("one", 900.0, 1)],
        bar("good", 2000.0, 2, 20.0),
        bar("bad", 1000.0, 1, 5.0),
    )
    found = plan(lot)
    assert found.used == {"good": 1}
    assert (found.cost, found.bound, found.proven) == (20.0, 10.0, False)


def test_what_shows_less_comes_from_what_is_cheap() -> None:
    """A good bar holds one piece only: the other comes from a bad one."""
    lot = lot_of(
        [("both", 900.0, 2), ("one", 900.0, 1)],
        bar("good", 1000.0, 2, 20.0),
        bar("bad", 1000.0, 1, 5.0),
    )
    found = plan(lot)
    assert found.used == {"good": 1, "bad": 1}
    assert kept(lot, found)
    assert found.cost == 25.0
    assert not found.proven


def test_where_it_makes_no_difference_the_plan_is_proven() -> None:
    lot = lot_of(
        [("one", 900.0, 1), ("two", 950.0, 2)],
        bar("good", 1000.0, 2, 5.0),
        bar("bad", 1000.0, 1, 5.0),
    )
    found = plan(lot)
    assert kept(lot, found)
    assert (found.cost, found.bound, found.proven) == (10.0, 10.0, True)


def test_no_good_ones() -> None:
    lot = lot_of([("both", 900.0, 2)], bar("bad", 1000.0, 1, 5.0))
    with pytest.raises(CannotCutError, match="both"):
        plan(lot)


def test_time_that_is_up_is_told() -> None:
    lot = lot_of(
        [("both", 900.0, 2), ("one", 900.0, 1)],
        bar("good", 1000.0, 2, 20.0),
        bar("bad", 1000.0, 1, 5.0),
    )
    patience = Patience()
    patience.stop()
    found = plan_of(lot, RULES, LEAST, 0, patience)
    assert found.stopped
    assert kept(lot, found)


def least_cost(pieces: Sequence[tuple[str, float, int]], offers: Sequence[Any]) -> float | None:
    """The least that bars cost which hold all pieces, each one good enough; by HiGHS."""
    bars = [
        (each.supply.length, each.show_faces, each.supply.price)
        for each in offers
        for _ in range(len(pieces) if each.supply.count is None else each.supply.count)
    ]
    count, there = len(pieces), len(bars)
    costs = np.concatenate([[price for _, _, price in bars], np.zeros(count * there)])
    upper = np.ones(there + count * there)
    rows, low, high = [], [], []
    for number, (long, _, _) in enumerate(bars):
        row = np.zeros(there + count * there)
        row[number] = -(long + KERF)
        for piece, (_, length, _) in enumerate(pieces):
            row[there + piece * there + number] = length + KERF
        rows.append(row)
        low.append(-np.inf)
        high.append(0.0)
    for piece, (_, _, faces) in enumerate(pieces):
        row = np.zeros(there + count * there)
        row[there + piece * there : there + (piece + 1) * there] = 1.0
        rows.append(row)
        low.append(1.0)
        high.append(1.0)
        for number, (_, good, _) in enumerate(bars):
            if good < faces:
                upper[there + piece * there + number] = 0.0
    found = milp(
        costs,
        constraints=LinearConstraint(np.array(rows), low, high),
        bounds=Bounds(0, upper),
        integrality=np.ones(len(costs)),
    )
    return round(float(found.fun), 6) if found.success else None


@settings(max_examples=40)
@given(
    st.lists(st.tuples(st.integers(200, 900), st.integers(0, 2)), min_size=1, max_size=5),
    st.lists(
        st.tuples(st.integers(900, 2000), st.integers(1, 2), st.integers(1, 9)),
        min_size=1,
        max_size=2,
    ),
)
def test_nothing_is_cheaper_than_the_bound_and_what_is_proven_is_best(
    sizes: list[tuple[int, int]], sold: list[tuple[int, int, int]]
) -> None:
    pieces = [(f"P{n}", float(length), faces) for n, (length, faces) in enumerate(sizes)]
    offers = [
        bar("free", 1000.0, 1, 0.0, 1),
        bar("best", 2400.0, 2, 10.0),
        *(bar(f"S{n}", long, good, cost) for n, (long, good, cost) in enumerate(sold)),
    ]
    lot = lot_of(pieces, *offers)
    found, best = plan(lot), least_cost(pieces, offers)
    assert best is not None
    assert Counter(each.piece for layout in found.layouts for each in layout.placed) == Counter(
        name for name, _, _ in pieces
    )
    assert kept(lot, found)
    assert found.bound <= best + 1e-6
    assert best <= found.cost + 1e-6
    if found.proven:
        assert found.cost == pytest.approx(best)
