"""Counts become exact figures by one door."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.quote.tally import exact, operations_of


@pytest.mark.parametrize(
    ("amount", "said"),
    [(2.0, "2"), (100.0, "100"), (1.0004, "1"), (1.0005, "1.001"), (0.1 + 0.2, "0.300"), (3, "3")],
)
def test_amounts_are_rounded_to_the_thousandth_halves_up(amount: float, said: str) -> None:
    assert str(exact(amount)) == said


@given(st.floats(0, 1e6))
def test_no_amount_moves_by_more_than_half_a_thousandth(amount: float) -> None:
    assert abs(exact(amount) - Decimal(amount)) <= Decimal("0.0005000001")


def test_counts_of_an_operation_are_summed_before_they_are_rounded() -> None:
    (found,) = operations_of([("rebate", 0.0004)] * 5, "mm")
    assert (found.key, found.count, found.per) == ("rebate", Decimal("0.002"), "m")


def test_what_comes_to_nothing_is_left_out() -> None:
    assert operations_of([("rebate", 0.0), ("groove", 0.0001)], "mm") == ()


def test_a_count_of_no_operation_is_refused() -> None:
    with pytest.raises(KeyError):
        operations_of([("polishing brass", 1)], "mm")
