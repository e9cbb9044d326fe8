"""Rates as they are written."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest
from pydantic import ValidationError

from rodwright.wishes.rates import RatesSpec

LEAST: dict[str, Any] = {
    "currency": "EUR",
    "hour": 48.5,
    "waste": "15 %",
    "overhead": "12.5%",
    "margin": "20 %",
    "tax": {"name": "VAT", "rate": "21 %"},
    "hours_a_day": 7.5,
    "fitters": 2,
}


def read(**changes: Any) -> RatesSpec:
    return RatesSpec.model_validate(LEAST | changes)


def told(**changes: Any) -> str:
    with pytest.raises(ValidationError) as error:
        read(**changes)
    (fault,) = error.value.errors()
    return str(fault["msg"])


def test_what_is_written_is_read_exactly() -> None:
    rates = read(prices={"oak": "7.505/board ft", "hinge": 3.1}, minutes={"rip": 1.5})
    assert rates.hour.any == Decimal("48.5")
    assert (rates.waste, rates.overhead) == (Decimal("0.15"), Decimal("0.125"))
    assert rates.tax.rate == Decimal("0.21")
    # A foot is 304.8 mm exactly, a board foot 2,359,737.216 mm3.
    oak = rates.prices["oak"]
    assert (oak.number, oak.of, oak.power) == (Decimal("7.505"), Decimal("2359737.216"), 3)
    assert rates.prices["hinge"].number == Decimal("3.1")
    assert rates.minutes == {"rip": Decimal("1.5")}


def test_an_hour_may_differ_by_stage() -> None:
    hour = read(hour={"any": 48, "fitting": "55.00"}).hour
    assert (hour.any, hour.fitting, hour.cutting) == (48, Decimal("55.00"), None)


@pytest.mark.parametrize(
    ("share", "said"),
    [
        (0.15, "`0.15` doesn't say whether it is per cent"),
        (15, "`15` doesn't say whether it is per cent"),
        ("15", "`15` can't be read as a share"),
        ("-15 %", "`-15 %` can't be read as a share"),
        ("12,5 %", "`12,5 %` can't be read as a share"),
        ("nan %", "`nan %` can't be read as a share"),
        (True, "`True` can't be read as a share"),
        ("501 %", "`501 %` can't be: 500 % of materials and labour is the most that is taken"),
    ],
)
def test_what_is_no_share(share: object, said: str) -> None:
    assert told(overhead=share) == said


def test_nothing_is_nothing_per_cent() -> None:
    assert read(waste=0).waste == 0


def test_a_tax_may_be_its_rate_alone() -> None:
    tax = read(tax="7.25 %").tax
    assert (tax.name, tax.rate) == ("tax", Decimal("0.0725"))
    assert read(tax=0).tax.rate == 0


def test_limits() -> None:
    assert read(margin="90 %").margin == Decimal("0.9")
    assert "is the most that is taken" in told(margin="90.1 %")
    assert read(tax={"name": "VAT", "rate": "60 %"}).tax.rate == Decimal("0.6")
    with pytest.raises(ValidationError, match="60 % of the price before tax is the most"):
        read(tax={"name": "VAT", "rate": "200 %"})
    assert read(minutes={"rip": 10_000}).minutes["rip"] == 10_000
    assert told(minutes={"rip": 10_001}) == "`10001` is more than 10,000 minutes"
    assert told(hours_a_day=24.5) == "`24.5` is more than 24 hours"
    assert told(prices={"oak": "1000000001"}) == "`1000000001` is no price that anybody asks"
    assert read(prices={"oak": "1000000000"}).prices["oak"].number == 10**9


@pytest.mark.parametrize("code", ["euro", "EURO", "€", "E1R", ""])
def test_a_currency_is_three_capital_letters(code: str) -> None:
    told(currency=code)
