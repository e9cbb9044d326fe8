"""Rates to count by, for tests of what units take."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from typing import Any

from rodwright.lengths import LengthUnit
from rodwright.quote.counted import Material, Takings
from rodwright.quote.operations import operations_in
from rodwright.quote.rates import Price, Rates

_NOTHING = Decimal(0)


def rates_in(unit: LengthUnit = "mm", prices: dict[str, Price] | None = None, **more: Any) -> Rates:
    """Starter minutes, the prices that are given, and two fitters of 8 hours a day."""
    minutes = {each.key: each.minutes for each in operations_in(unit)}
    hours = dict.fromkeys(
        ("setting out", "cutting", "machining", "assembly", "finishing", "fitting"), Decimal(40)
    )
    plain = Rates(
        currency="EUR",
        hour=hours,  # type: ignore[arg-type]
        minutes=minutes,
        prices=prices or {},
        waste=Decimal("0.15"),
        overhead=_NOTHING,
        margin=_NOTHING,
        tax=_NOTHING,
        tax_name="",
        deposits=(),
        valid=30,
        hours_a_day=Decimal(8),
        fitters=2,
        unit=unit,
    )
    return replace(plain, **more)


def each_for(amount: str) -> Price:
    """A price for one of whatever it is counted in."""
    return Price(Decimal(amount))


def counts(takings: Takings) -> dict[str, Decimal]:
    """How much of every operation, by its key."""
    return {each.key: each.count for each in takings.operations}


def material(takings: Takings, key: str) -> Material:
    """The one material of a key."""
    (found,) = (each for each in takings.materials if each.key == key)
    return found
