"""Plans against brute force and against another solver's model, on random small questions."""

from __future__ import annotations

from functools import cache
from itertools import pairwise, permutations, product
from math import hypot, inf

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from kit.cutting_checker import check_boards
from rodwright.cutting import CannotCutError, Piece, Plan, Supply, plan_boards

KERFS = st.sampled_from([0.0, 1.0, 3.2])
PRICES = st.sampled_from([0.0, 1.0, 2.5, 4.0])
STOCK = st.lists(
    st.tuples(st.integers(20, 60), st.sampled_from([None, 1, 2]), PRICES), min_size=1, max_size=3
)


def supplies(stock: list[tuple[int, int | None, float]]) -> list[Supply]:
    return [
        Supply(f"s{n}", length, count=count, price=price)
        for n, (length, count, price) in enumerate(stock)
    ]


def planned(pieces: list[Piece], stock: list[Supply], kerf: float) -> Plan | None:
    """The plan, held to the checker; None if there is none."""
    try:
        plan = plan_boards(pieces, stock, kerf=kerf)
    except CannotCutError:
        return None
    check_boards(plan, pieces, stock, kerf=kerf)
    return plan


def least_cost(lengths: list[int], stock: list[Supply], kerf: float) -> float:
    """Every way to share pieces out among boards."""

    @cache
    def cheapest(left: int, used: tuple[int, ...]) -> float:
        if not left:
            return 0.0
        best = inf
        first = left & -left
        taken = left
        while taken:
            if taken & first:
                held = [length for n, length in enumerate(lengths) if taken >> n & 1]
                needed = sum(held) + kerf * (len(held) - 1)
                for n, supply in enumerate(stock):
                    there = supply.count is None or used[n] < supply.count
                    if there and needed <= supply.length + 1e-9:
                        further = (*used[:n], used[n] + 1, *used[n + 1 :])
                        best = min(best, supply.price + cheapest(left & ~taken, further))
            taken = (taken - 1) & left
        return best

    return cheapest((1 << len(lengths)) - 1, (0,) * len(stock))


@settings(max_examples=60)
@given(st.lists(st.integers(5, 40), min_size=1, max_size=6), STOCK, KERFS)
def test_lengths_against_brute_force(
    lengths: list[int], stock: list[tuple[int, int | None, float]], kerf: float
) -> None:
    pieces = [Piece(f"p{n}", length) for n, length in enumerate(lengths)]
    plan = planned(pieces, supplies(stock), kerf)
    best = least_cost(lengths, supplies(stock), kerf)
    if plan is None or plan.left:
        assert best == inf
    else:
        assert plan.cost == pytest.approx(best)
        assert plan.bound <= best + 1e-9


def assigned(lengths: list[int], stock: list[Supply], kerf: float) -> float:
    """The least cost by HiGHS through scipy: which piece lies on which board, board by board."""
    boards = [s for s in stock for _ in range(s.count or len(lengths))]
    many, each = len(boards), len(lengths)
    cost = np.concatenate([[board.price for board in boards], np.zeros(many * each)])
    once = np.hstack([np.zeros((each, many)), np.tile(np.eye(each), many)])
    room = np.zeros((many, len(cost)))
    for n, board in enumerate(boards):
        room[n, n] = -(board.length + kerf)
        room[n, many + n * each : many + (n + 1) * each] = np.array(lengths) + kerf
    limits = [LinearConstraint(once, 1, 1), LinearConstraint(room, -np.inf, 0)]
    found = milp(cost, integrality=np.ones(len(cost)), bounds=Bounds(0, 1), constraints=limits)
    return float(found.fun)


@pytest.mark.parametrize("seed", range(6))
def test_lengths_against_another_model(seed: int) -> None:
    random = np.random.default_rng(seed)
    lengths = [int(length) for length in random.integers(300, 1700, 9)]
    stock = [
        Supply("long", 2400, price=11.5),
        Supply("short", 1800, price=8.4),
        Supply("rest", 2000, count=2, price=1),
    ]
    pieces = [Piece(f"p{n}", length) for n, length in enumerate(lengths)]
    plan = planned(pieces, stock, 3.0)
    assert plan is not None
    assert plan.cost == pytest.approx(assigned(lengths, stock, 3.0))
    assert plan.proven


ENDS = st.sampled_from([(0, 0), (40, 40), (40, 0), (0, 40), (20, 40)])


def shortest(pieces: list[Piece], kerf: float) -> float:
    """The least length that some slanted pieces in a row need: every order, either way round."""

    def gap(slant: float) -> float:
        return kerf * hypot(60, slant) / 60 - slant

    best = inf
    for order in permutations(pieces):
        for flipped in product((False, True), repeat=len(order)):
            ends = [p.slants[::-1] if f else p.slants for p, f in zip(order, flipped, strict=True)]
            gaps = (
                gap(min(one[1], other[0])) if turned[0] != turned[1] else kerf
                for (one, other), turned in zip(pairwise(ends), pairwise(flipped), strict=True)
            )
            best = min(best, sum(p.length for p in order) + sum(gaps))
    return best


@settings(max_examples=40)
@given(st.lists(ENDS, min_size=1, max_size=4), KERFS)
def test_slanted_pieces_against_every_order(ends: list[tuple[int, int]], kerf: float) -> None:
    pieces = [Piece(f"p{n}", 200 + n, 60, slants=slants) for n, slants in enumerate(ends)]
    needed = shortest(pieces, kerf)
    plan = planned(pieces, [Supply("board", needed + 0.05, 60)], kerf)
    assert plan is not None
    assert plan.cost == 1
    if len(pieces) > 1:
        plan = planned(pieces, [Supply("board", needed - 0.05, 60)], kerf)
        assert plan is None or plan.cost > 1


@st.composite
def cut_boards(draw: st.DrawFn) -> tuple[list[Piece], Supply, int, float]:
    """Pieces that were ripped and cut from so many boards, and the boards."""
    kerf, boards = draw(st.sampled_from([0.0, 3.0])), draw(st.integers(1, 3))
    supply = Supply("board", 2000, 150)
    pieces: list[Piece] = []
    for _ in range(boards):
        y = 0.0
        while y < supply.width:
            width = min(draw(st.sampled_from([36.0, 47.0, 150.0])), supply.width - y)
            x = 0.0
            while x < supply.length:
                length = min(draw(st.sampled_from([433.0, 700.0, 2000.0])), supply.length - x)
                pieces.append(Piece(f"p{len(pieces)}", length, width))
                x += length + kerf
            y += width + kerf
    return pieces, supply, boards, kerf


@settings(max_examples=30)
@given(cut_boards())
def test_no_bound_is_above_what_pieces_were_cut_from(
    cut: tuple[list[Piece], Supply, int, float],
) -> None:
    pieces, supply, boards, kerf = cut
    plan = planned(pieces, [supply], kerf)
    assert plan is not None
    assert plan.bound <= boards
    assert plan.cost <= boards + 1
