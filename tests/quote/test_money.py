"""Money is rounded once, halves away from nothing."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.quote.money import rounded, rounded_up
from rodwright.trade.currencies import decimals_of

MONEY = st.decimals(0, 10**9, places=2)


@pytest.mark.parametrize(
    ("amount", "decimals", "found"),
    [
        # Halves go up, and the nearest below them down: worked out in the head.
        ("0.005", 2, "0.01"),
        ("0.0049999999999999999999999999999999999999", 2, "0.00"),
        ("1.005", 2, "1.01"),
        ("2.675", 2, "2.68"),
        ("0.125", 2, "0.13"),
        ("0.135", 2, "0.14"),
        ("-0.005", 2, "-0.01"),
        ("999999999.995", 2, "1000000000.00"),
        ("1234.5", 0, "1235"),
        ("0.0005", 3, "0.001"),
    ],
)
def test_rounding(amount: str, decimals: int, found: str) -> None:
    told = rounded(Decimal(amount), decimals)
    assert str(told) == found


def test_a_third_keeps_its_digits() -> None:
    assert rounded(Fraction(1, 3), 4) == Decimal("0.3333")
    assert rounded(Fraction(2, 3), 4) == Decimal("0.6667")


@given(st.fractions(-1000, 1000), st.integers(0, 4))
def test_it_is_never_more_than_half_a_coin_off(amount: Fraction, decimals: int) -> None:
    off = abs(Fraction(rounded(amount, decimals)) - amount)
    assert off <= Fraction(1, 2 * 10**decimals)
    assert rounded(-amount, decimals) == -rounded(amount, decimals)


@given(MONEY, st.decimals("0.01", 1000, places=2))
def test_rounding_up_goes_to_the_next_multiple(amount: Decimal, step: Decimal) -> None:
    found = rounded_up(amount, step)
    assert amount <= found < amount + step
    assert Fraction(found) % Fraction(step) == 0


def test_the_coins_of_currencies() -> None:
    """ISO 4217 (from memory): no sen, a thousand fils to the dinar, a hundred cents."""
    assert [decimals_of(each) for each in ("JPY", "KWD", "EUR", "USD", "GBP")] == [0, 3, 2, 2, 2]
