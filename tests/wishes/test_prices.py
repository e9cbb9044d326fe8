"""Prices for one, or by length, area or volume."""

from __future__ import annotations

import pytest
from pydantic import TypeAdapter, ValidationError

from rodwright.wishes.prices import Price, PriceField

READ = TypeAdapter(PriceField)


def read(written: object) -> Price:
    found: Price = READ.validate_python(written)
    return found


@pytest.mark.parametrize(
    ("written", "each"),
    [
        (74, 74.0),
        (14.5, 14.5),
        ("14.50", 14.5),
        ("0", 0.0),
        ("6.20/m", 15.5),
        ("6.20 / m", 15.5),
        ("6.20 per metre", 15.5),
        ("38/m2", 14.25),
        ("38/m²", 14.25),
        ("1850/m3", 18.73125),
    ],
)
def test_what_a_board_costs(written: object, each: float) -> None:
    """2500 x 150 x 27 mm: 2.5 m, 0.375 m2 and 0.010125 m3, by hand."""
    assert read(written).each(2500, 150, 27) == pytest.approx(each)


@pytest.mark.parametrize(
    ("written", "each"),
    [
        ("4/ft", 32.0),
        ("6/sq ft", 24.0),
        ("7.50/board ft", 30.0),
        ("7.50/bf", 30.0),
        ("90/cu ft", 30),
    ],
)
def test_what_a_board_costs_in_feet(written: str, each: float) -> None:
    """8 ft x 6 in x 1 in: 8 ft, 4 sq ft, 4 board feet and 1/3 cubic foot, by hand."""
    assert read(written).each(8 * 304.8, 152.4, 25.4) == pytest.approx(each)


@pytest.mark.parametrize("written", ["abc", "", "-4", -4, True, None, [3], "12,50", "1e3", "nan"])
def test_what_is_no_price(written: object) -> None:
    with pytest.raises(ValidationError, match="can't be read as a price"):
        read(written)


def test_a_price_by_something_else() -> None:
    with pytest.raises(ValidationError, match="it isn't known what `kg` is"):
        read("3/kg")
