"""A quote as JSON keeps every digit."""

from __future__ import annotations

import json
import re
from decimal import Decimal
from pathlib import Path
from typing import Any

from hypothesis import given

from kit.quotes import KINDS, STAGES, material, operation, rates_of, some_rates, takings
from rodwright.quote.costing import cost
from rodwright.quote.counted import Takings
from rodwright.quote.levers import levers_of
from rodwright.quote.quote_json import quote_document
from rodwright.quote.rates import Rates


def numbers(value: Any) -> list[object]:
    """All figures that aren't text."""
    if isinstance(value, dict):
        return [found for each in value.values() for found in numbers(each)]
    if isinstance(value, list):
        return [found for each in value for found in numbers(each)]
    return [value] if isinstance(value, float) else []


@given(takings(), some_rates())
def test_what_is_read_adds_up_to_what_was_costed(job: Takings, rates: Rates) -> None:
    costing = cost(job, rates, "oak")
    document = quote_document("Alcove", [costing], {"oak": levers_of(job, rates)}, rates)
    read = json.loads(json.dumps(document))
    assert numbers(read) == []
    (option,) = read["options"]
    lines = [Decimal(each["amount"]) for each in (*option["materials"], *option["labour"])]
    assert sum(lines) == Decimal(option["cost"])
    parts = ("cost", "overhead", "margin", "tax")
    assert sum(Decimal(option[each]) for each in parts) == Decimal(option["total"]) == costing.total
    paid = [Decimal(each["amount"]) for each in option["payments"]]
    assert sum(paid) == Decimal(option["total"])
    assert all("e" not in each["price"].lower() for each in option["materials"])


def test_what_nobody_said_is_null() -> None:
    costing = cost(Takings((material("stock", "ash", "0.001", None),), ()), rates_of())
    (option,) = quote_document("Alcove", [costing], {}, rates_of())["options"]
    assert option["total"] is option["materials"][0]["amount"] is None
    assert (option["materials"][0]["count"], option["cost"]) == ("0.001", "0.00")
    assert option["missing"] == ["the price of `ash` under `prices:`"]


def keys(value: Any) -> set[str]:
    """All keys but those that are kinds of material or stages."""
    if isinstance(value, dict):
        named = {key for key in value if key not in (*KINDS, *STAGES)}
        return named.union(*map(keys, value.values()))
    return set().union(*map(keys, value)) if isinstance(value, list) else set()


def test_the_page_tells_of_every_key() -> None:
    job = Takings(
        (material("stock", "ash", "2", "20.00"),), (operation("rip", "cutting", "7", "cut"),)
    )
    rates = rates_of()
    document = quote_document("Alcove", [cost(job, rates)], {"": levers_of(job, rates)}, rates)
    page = (Path(__file__).parents[2] / "docs" / "json.md").read_text(encoding="utf-8")
    assert keys(document) - set(re.findall(r"`(\w+)`", page)) == set()
    assert {"amount", "change", "minutes"} <= keys(document)
