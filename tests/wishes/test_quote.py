"""What a spec says of its quote."""

from __future__ import annotations

from decimal import Decimal

import pytest

from rodwright.problems import ProblemsError
from rodwright.wishes.quote import QuoteSpec
from rodwright.wishes.reading.files import parse_spec

SPEC = """
title: Alcove
size: {width: 800, height: 900, depth: 300}
stock: {case: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}}
carcass: {stock: case}
"""


def quote_of(written: str) -> QuoteSpec:
    return parse_spec(f"{SPEC}quote: {written}", "alcove.yaml").spec.quote


def test_a_client_may_be_a_name() -> None:
    quote = quote_of("{client: Anna Berg}")
    assert quote.client is not None
    assert (quote.client.name, quote.client.address) == ("Anna Berg", ())


def test_all_of_it() -> None:
    quote = quote_of(
        """
  client: {name: Anna Berg, address: [3 Mill Lane, Hillford]}
  site: [The Old Mill, Hillford]
  number: Q-17
  date: 2026-05-31
  included: [Two visits to measure]
  not_included: [Plastering]
  bought_in:
    - {what: Glass shelves, price: 140.10}
    - {what: An electrician}
  terms: [Half a year of guarantee]
"""
    )
    assert quote.date == "2026-05-31"
    assert [(each.what, each.price) for each in quote.bought_in] == [
        ("Glass shelves", Decimal("140.10")),
        ("An electrician", None),
    ]


@pytest.mark.parametrize(
    ("written", "told"),
    [
        ("{date: 31.5.2026}", "isn't a date"),
        ("{bought_in: [{what: Glass, price: -3}]}", "`-3` is less than nothing"),
        ("{bought_in: [{what: Glass, price: a lot}]}", "can't be read as an amount of money"),
        ("{bought_in: [{price: 3}]}", "what"),
        ("{customer: Anna}", "customer"),
    ],
)
def test_what_is_refused(written: str, told: str) -> None:
    with pytest.raises(ProblemsError) as refused:
        quote_of(written)
    (problem,) = refused.value.problems
    assert told in str(problem)
    assert problem.line == 6
