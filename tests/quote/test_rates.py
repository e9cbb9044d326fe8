"""What a price by length, area or volume comes to for a piece."""

from __future__ import annotations

from decimal import Decimal

import pytest

from rodwright.quote.rates import Price


@pytest.mark.parametrize(
    ("price", "each"),
    [
        (Price(Decimal("74.00")), "74.0000"),
        # 2440 x 1220 mm: 2.9768 m2 at 25.00 is 74.42.
        (Price(Decimal("25.00"), Decimal(10**6), 2), "74.4200"),
        # 2.44 m at 1.605 is 3.9162.
        (Price(Decimal("1.605"), Decimal(1000), 1), "3.9162"),
        # 2.44 x 1.22 x 0.018 m is 0.0535824 m3; at 1850 it is 99.12744.
        (Price(Decimal(1850), Decimal(10**9), 3), "99.1274"),
    ],
)
def test_what_a_piece_costs(price: Price, each: str) -> None:
    assert str(price.each(2440, 1220, 18)) == each


def test_a_foot_is_exact() -> None:
    """Eight feet at 1.25 a foot, by hand."""
    assert Price(Decimal("1.25"), Decimal("304.8"), 1).each(2438.4) == 10
