"""Places along a line: as few as they may be, evenly."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.geometry import TOUCH
from rodwright.geometry.spacing import count_along, spread, spread_between, steps_of

LENGTH = st.floats(100.0, 4000.0)
STEP = st.floats(20.0, 600.0)


@given(LENGTH, STEP)
def test_steps_are_the_fewest_that_are_short_enough(length: float, most: float) -> None:
    steps = steps_of(length, most)
    assert length / steps <= most * (1 + TOUCH)
    assert steps == 1 or length / (steps - 1) > most


def test_a_length_of_so_many_steps_to_the_bit_takes_no_more() -> None:
    assert steps_of(0.1 + 0.2, 0.1) == 3
    assert steps_of(-50.0, 100.0) == 1


@given(st.floats(-1000.0, 1000.0), LENGTH, st.floats(0.0, 45.0), STEP)
def test_places_are_even_and_no_farther_apart_than_they_may_be(
    low: float, length: float, edge: float, spacing: float
) -> None:
    count = count_along(length, edge, spacing)
    places = spread(low, low + length, edge, count)
    steps = [after - before for before, after in pairwise(places)]
    assert len(places) == count >= 2
    assert places[0] == low + edge
    assert places[-1] == pytest.approx(low + length - edge)
    assert steps == pytest.approx([steps[0]] * len(steps))
    assert max(steps) <= spacing * (1 + TOUCH)


@given(st.floats(-1000.0, 1000.0), LENGTH, st.floats(5.0, 60.0), STEP)
def test_pieces_leave_equal_clear_lengths(
    low: float, length: float, width: float, most: float
) -> None:
    high = low + length
    starts = spread_between(low, high, width, most)
    ends = [low, *(start + width for start in starts)]
    clear = [start - end for end, start in zip(ends, [*starts, high], strict=True)]
    assert clear == pytest.approx([clear[0]] * len(clear))
    assert max(clear) <= most + TOUCH * (most + width)
