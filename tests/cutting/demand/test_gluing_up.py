"""Panels of solid wood: strips wide enough once they are jointed, and as little wood as can be."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil, floor, inf

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from rodwright.cutting.demand.gluing_up import glue_up
from rodwright.cutting.supplies import Supply, Trim
from rodwright.trade import gluing_up as trade
from rodwright.trade.gluing_up import JOINT_WORTH, LESS_WOOD, NARROWEST_STRIP

KERF = 3.2
JOINTING = trade.JOINTING["mm"]
OVER_LENGTH, OVER_WIDTH = trade.OVER_LENGTH["mm"], trade.OVER_WIDTH["mm"]


def boards(*sizes: tuple[float, float, int | None]) -> list[Supply]:
    return [Supply(f"{n}", length, width, count) for n, (length, width, count) in enumerate(sizes)]


def test_a_worktop_by_hand() -> None:
    """1690 x 505 is glued up 1702 x 511.  Of boards 150 wide it takes four strips: 511 and three
    joints that take 3 each, 520 in all, 130 each."""
    panel = glue_up(1690.0, 505.0, boards((2400.0, 150.0, None)), KERF)
    assert panel is not None
    assert panel.strips == pytest.approx((130.0,) * 4)
    assert (panel.length, panel.width) == (1702.0, 511.0)


def test_two_strips_abreast() -> None:
    """Of boards 265 wide two strips of 257 take two, and so do four of 130, which are two more
    joints; of boards 240 wide only four come out of two, if they are 115 and not 130."""
    panel = glue_up(1690.0, 505.0, boards((2400.0, 265.0, None)), KERF)
    assert panel is not None
    assert panel.strips == pytest.approx((257.0, 257.0))
    narrow = glue_up(1690.0, 445.0, boards((2400.0, 240.0, 2)), KERF)
    assert narrow is not None
    assert narrow.strips == pytest.approx((227.0, 227.0))
    more = glue_up(1690.0, 455.0, boards((2400.0, 240.0, None), (2400.0, 120.0, None)), KERF)
    assert more is not None
    assert more.strips == pytest.approx((232.0, 232.0))


def test_boards_of_several_widths_are_used_as_they_are_where_that_saves_wood() -> None:
    """300 wide is glued up 306: equal strips take both of the 200s; 200 and 120 are just enough,
    the second ripped to the 112 that are left."""
    rack = boards((2000.0, 200.0, 2), (2000.0, 120.0, 1))
    panel = glue_up(900.0, 300.0, rack, KERF)
    assert panel is not None
    assert panel.strips == pytest.approx((200.0, 306.0 + 2 * JOINTING - 200.0))


def test_inches_are_round() -> None:
    """60 x 20 in is glued up 60 1/2 x 20 1/4: of boards 6 in wide four strips, and three joints
    that take 1/8 in each, 20 5/8 in all, 5 5/32 in each."""
    panel = glue_up(1524.0, 508.0, boards((2438.4, 152.4, None)), KERF, "in")
    assert panel is not None
    assert (panel.length, panel.width) == pytest.approx((60.5 * 25.4, 20.25 * 25.4))
    assert panel.strips == pytest.approx((5.15625 * 25.4,) * 4, abs=1e-9)


def test_boards_that_are_too_short_or_too_few_give_none() -> None:
    assert glue_up(1690.0, 505.0, boards((1700.0, 600.0, None)), KERF) is None
    assert glue_up(1690.0, 505.0, boards((2400.0, 150.0, 3)), KERF) is None
    assert glue_up(1690.0, 505.0, [], KERF) is None


def test_what_is_left_of_the_length_counts() -> None:
    """Strips of 150 come twice out of 3500, of 210 once out of 3000: three of 130 and their joints
    are 150 x 3500 / 2 each, two of 196.5 are 210 x 3000 each."""
    rack = boards((3500.0, 150.0, None), (3000.0, 210.0, None))
    panel = glue_up(1690.0, 384.0, rack, KERF)
    assert panel is not None
    assert panel.strips == pytest.approx((132.0,) * 3)


def test_bad_ends_and_edges_are_off_before() -> None:
    trim = Trim(near=400.0, far=400.0, face=10.0, back=10.0)
    assert glue_up(1690.0, 250.0, [Supply("short", 2400.0, 300.0, None, 0.0, trim)], KERF) is None
    panel = glue_up(1500.0, 300.0, [Supply("long", 2400.0, 180.0, None, 0.0, trim)], KERF)
    assert panel is not None
    assert panel.strips == pytest.approx((154.5, 154.5))


REST = 1200.0 / (1000.0 + OVER_LENGTH)
"""What is left of the boards' length counts with the strip."""
WIDTHS = st.integers(60, 300).map(float)
RACK = st.lists(
    st.tuples(st.just(1200.0), WIDTHS, st.integers(1, 4)),
    min_size=1,
    max_size=4,
    unique_by=lambda size: size[1],
)


def least_of_whole_boards(wide: float, rack: list[tuple[float, float, int]]) -> float | None:
    """The least wood, and joints, of strips as wide as their boards; by HiGHS."""
    gains = np.array([floor(width - 2 * JOINTING) for _, width, _ in rack])
    costs = np.array([width * REST + JOINT_WORTH for _, width, _ in rack])
    wanted = ceil(wide - 2 * JOINTING)
    found = milp(
        costs,
        constraints=LinearConstraint(gains[np.newaxis], lb=wanted),
        bounds=Bounds(0, [count for _, _, count in rack]),
        integrality=np.ones(len(rack)),
    )
    return float(found.fun) if found.success else None


def cost_of_equal(strips: Sequence[float], rack: list[tuple[float, float, int]]) -> float:
    """The width of board that equal strips take, and their joints, board by board."""
    each = sorted(
        board * REST / abreast
        for _, board, there in rack
        if (abreast := floor((board + KERF + 1e-6) / (strips[0] + KERF)))
        for _ in range(there * abreast)
    )
    count = len(strips)
    return sum(each[:count]) + JOINT_WORTH * count if len(each) >= count else inf


def least_of_equal(wide: float, rack: list[tuple[float, float, int]]) -> float | None:
    """The least that equal strips take, none of them too narrow if others can be had."""
    found = {}
    for count in range(2, 25):
        strip = ceil((wide + 2 * JOINTING * (count - 1)) / count * 10 - 1e-5) / 10
        found[strip] = cost_of_equal((strip,) * count, rack)
    wider = [cost for strip, cost in found.items() if strip >= NARROWEST_STRIP and cost < inf]
    others = [cost for cost in found.values() if cost < inf]
    return min(wider) if wider else others[0] if others else None


@given(RACK, st.integers(1, 400))
def test_strips_make_the_panel_with_as_little_wood_as_can_be(
    rack: list[tuple[float, float, int]], wider: int
) -> None:
    width = max(board for _, board, _ in rack) + wider
    panel = glue_up(1000.0, width, boards(*rack), KERF)
    wide = width + OVER_WIDTH
    whole, equal = least_of_whole_boards(wide, rack), least_of_equal(wide, rack)
    assert (panel is None) == (whole is None and equal is None)
    assume(panel is not None)
    assert panel is not None
    assert panel.length == 1000.0 + OVER_LENGTH
    # Each strip loses at every edge that is glued.
    jointed = sum(panel.strips) - 2 * JOINTING * (len(panel.strips) - 1)
    assert jointed >= wide - 1e-6
    assert max(panel.strips) <= max(board for _, board, _ in rack) + 1e-6
    same = max(panel.strips) - min(panel.strips) < 1e-6
    if equal is not None and (whole is None or whole >= equal * (1 - LESS_WOOD)):
        assert same
        assert cost_of_equal(panel.strips, rack) == pytest.approx(equal)
    else:
        assert whole is not None
        *others, _ = panel.strips
        assert sum(others) * REST + len(panel.strips) * JOINT_WORTH < whole
        assert {*others} <= {board for _, board, _ in rack}
