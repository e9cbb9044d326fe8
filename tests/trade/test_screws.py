"""Screws as they are sold: one list of lengths, and pocket screws by what they come out of."""

from __future__ import annotations

import pytest

from rodwright.lengths import LengthUnit, from_inches
from rodwright.setout.fixings import screws_through, slot_for
from rodwright.trade.screws import LEAST_SLOT, LEAST_THROUGH, LENGTHS, POCKET_LENGTHS, pocket_length
from rodwright.trade.sizes import trade_sizes

UNITS: tuple[LengthUnit, ...] = ("mm", "in")


@pytest.mark.parametrize("unit", UNITS)
def test_every_length_is_told_from_the_next_and_the_longest_is_found(unit: LengthUnit) -> None:
    sizes = trade_sizes(unit)
    assert sorted(set(LENGTHS[unit])) == list(LENGTHS[unit])
    assert [sizes.longest_screw(each) for each in LENGTHS[unit]] == list(LENGTHS[unit])


@pytest.mark.parametrize("length", [90.0, 120.0])
def test_long_screws_are_in_the_list(length: float) -> None:
    assert length in LENGTHS["mm"]


@pytest.mark.parametrize("unit", UNITS)
def test_no_screw_through_wood_is_of_those_that_hold_fittings_alone(unit: LengthUnit) -> None:
    sizes = trade_sizes(unit)
    thin = screws_through(sizes, 3.0, 12.0, 2)
    assert thin.size == sizes.screw_size(sizes.screw, LEAST_THROUGH[unit])
    assert LENGTHS[unit][0] < LEAST_THROUGH[unit] in LENGTHS[unit]


@pytest.mark.parametrize(
    ("thickness", "metric", "inch"),
    [(16.0, 25.0, "1"), (18.0, 32.0, "1 1/4"), (22.0, 38.0, "1 1/2"), (40.0, 64.0, "2 1/2")],
)
def test_pocket_screws_by_the_thickness_they_come_out_of(
    thickness: float, metric: float, inch: str
) -> None:
    """As the tables of pocket screws have it (from memory)."""
    assert pocket_length(thickness, "mm") == metric
    assert pocket_length(thickness, "in") == from_inches(inch)
    for unit in UNITS:
        assert pocket_length(thickness, unit) in {length for _, length in POCKET_LENGTHS[unit]}


@pytest.mark.parametrize("unit", UNITS)
def test_a_slot_lets_a_screw_follow_the_wood_either_way(unit: LengthUnit) -> None:
    sizes = trade_sizes(unit)
    hole = sizes.clearance(sizes.screw)
    for moves in (0.0, 1.3, 4.0, 9.7):
        long = slot_for(sizes, hole, moves)
        assert long >= max(sizes.usual(LEAST_SLOT), hole + 2 * moves) - 1e-6
        assert long / sizes.step == pytest.approx(round(long / sizes.step))
