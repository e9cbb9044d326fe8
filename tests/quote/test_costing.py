"""A costing adds up, to the cent."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction
from random import Random
from typing import TypeVar

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.quotes import (
    KINDS,
    MATERIALS,
    OPERATIONS,
    STAGES,
    material,
    operation,
    rates_of,
    some_rates,
    takings,
)
from rodwright.quote.costing import Costing, cost
from rodwright.quote.counted import Material, Operation, Takings
from rodwright.quote.rates import Deposit, Rates
from rodwright.trade.currencies import decimals_of

Some = TypeVar("Some")


def shelf() -> Takings:
    """A small bookcase: a sheet and a half of plywood, a board by area, screws, oil."""
    return Takings(
        (
            material("stock", "birch plywood 18 mm", "2", "74.35"),
            material("stock", "european oak 22 mm", "0.437", "61.90", wasted=True),
            material("hardware", "wood screw, 4 x 50", "48", "0.0455"),
            material("finish", "oil", "0.31", "27.80"),
            material("bought in", "a sheet of glass", "1", "38.50"),
        ),
        (
            operation("rip", "cutting", "11", "cut"),
            operation("crosscut", "cutting", "14", "cut"),
            operation("housing", "machining", "8", "housing"),
            operation("screw", "assembly", "48", "screw"),
            operation("oil", "finishing", "6.175", "m2"),
            operation("standing", "fitting", "1", "carcass"),
            operation("driving", "fitting", "2.5", "h"),
        ),
    )


def test_a_quote_worked_by_hand() -> None:
    found = cost(shelf(), rates_of(), "oiled")
    # Materials, to the cent each:
    #   2 x 74.35                       = 148.70
    #   0.437 x 1.15 x 61.90            = 0.50255 x 61.90 = 31.107845 -> 31.11
    #   48 x 0.0455                     = 2.184 -> 2.18
    #   0.31 x 27.80                    = 8.618 -> 8.62
    #   1 x 38.50                       = 38.50
    assert [str(each.amount) for each in found.materials] == [
        "148.70",
        "31.11",
        "2.18",
        "8.62",
        "38.50",
    ]
    # Labour at 48.00 an hour, so 0.80 a minute:
    #   11 cuts x 1.5 min   = 16.5 min  -> 13.20
    #   14 cuts x 1 min     = 14 min    -> 11.20
    #   8 housings x 4.25   = 34 min    -> 27.20
    #   48 screws x 0.6     = 28.8 min  -> 23.04
    #   6.175 m2 x 5        = 30.875    -> 24.70
    #   1 carcass x 35      = 35 min    -> 28.00
    #   2.5 h x 60          = 150 min   -> 120.00
    assert [str(each.amount) for each in found.labour] == [
        "13.20",
        "11.20",
        "27.20",
        "23.04",
        "24.70",
        "28.00",
        "120.00",
    ]
    assert found.spent_on("stock") == Decimal("179.81")  # 148.70 + 31.11
    assert found.worked_at("cutting") == Decimal("24.40")  # 13.20 + 11.20
    assert found.labour_cost == Decimal("247.34")
    # 148.70 + 31.11 + 2.18 + 8.62 + 38.50 = 229.11; 229.11 + 247.34 = 476.45
    assert str(found.cost) == "476.45"
    # 12 % of 476.45 = 57.174 -> 57.17
    assert str(found.overhead) == "57.17"
    # 476.45 + 57.17 = 533.62; / 0.8 = 667.025 -> 667.03, a half and so up
    assert str(found.net) == "667.03"
    # 667.03 - 533.62 = 133.41
    assert str(found.margin) == "133.41"
    # 21 % of 667.03 = 140.0763 -> 140.08
    assert str(found.tax) == "140.08"
    # 667.03 + 140.08 = 807.11
    assert str(found.total) == "807.11"
    # 40 % of 807.11 = 322.844 -> 322.84; 35 % = 282.4885 -> 282.49; the rest 201.78
    assert [(when, str(amount)) for when, amount in found.payments] == [
        ("with the order", "322.84"),
        ("before it is fitted", "282.49"),
        ("when it is done", "201.78"),
    ]
    # Hours: 30.5 min -> 0.51, 34 -> 0.57, 28.8 -> 0.48, 30.875 -> 0.51, 185 -> 3.08
    assert [(stage, str(hours)) for stage, hours in found.hours] == [
        ("setting out", "0.00"),
        ("cutting", "0.51"),
        ("machining", "0.57"),
        ("assembly", "0.48"),
        ("finishing", "0.51"),
        ("fitting", "3.08"),
    ]
    # 0.51 + 0.57 + 0.48 + 0.51 + 3.08
    assert str(found.all_hours) == "5.15"
    # On site 35 min of a day of two fitters with 7.5 h each: 35 / 900 = 0.0389 days
    assert str(found.days_on_site) == "0.04"
    # 247.34 + 133.41 = 380.75 for 309.175 min: x 60 / 309.175 = 73.8902... an hour
    assert str(found.earned_an_hour) == "73.89"
    assert (found.option, found.currency, found.missing) == ("oiled", "EUR", ())


def test_the_price_before_tax_is_rounded_up_if_a_maker_wants_it() -> None:
    found = cost(shelf(), rates_of(round_up_to=Decimal(10)))
    # 667.03 -> 670; the margin takes what is gained: 670 - 533.62. 21 % of 670 is 140.70.
    assert [str(each) for each in (found.net, found.margin, found.tax, found.total)] == [
        "670.00",
        "136.38",
        "140.70",
        "810.70",
    ]


def test_consumables_are_a_line_of_what_is_bought() -> None:
    found = cost(shelf(), rates_of(consumables=Decimal("0.04")))
    *_, line = found.materials
    # Not of the glass: 148.70 + 31.11 + 2.18 + 8.62 = 190.61; x 0.04 = 7.6244 -> 7.62
    assert (line.material.kind, line.material.count) == ("consumables", Decimal("190.61"))
    assert str(line.amount) == str(found.spent_on("consumables")) == "7.62"
    # 476.45 + 7.62 = 484.07; 12 % is 58.0884 -> 58.09; 542.16 / 0.8 = 677.70
    assert [str(each) for each in (found.cost, found.overhead, found.net)] == [
        "484.07",
        "58.09",
        "677.70",
    ]


def test_without_a_share_there_is_no_line_of_consumables() -> None:
    assert [each.material.kind for each in cost(shelf(), rates_of()).materials][-1] == "bought in"


def test_an_hour_of_each_stage_has_its_own_price() -> None:
    hour = dict.fromkeys(STAGES, Decimal(48)) | {"fitting": Decimal(60)}
    found = cost(shelf(), rates_of(hour=hour))
    assert found.worked_at("fitting") == 35 + 150  # a minute is 1.00
    assert found.worked_at("machining") == Decimal("27.20")


def test_a_currency_without_small_coins() -> None:
    found = cost(Takings((material("stock", "a", "3", "1234.5"),), ()), rates_of(currency="JPY"))
    # 3703.5 -> 3704; 12 % is 444.48 -> 444; 4148 / 0.8 = 5185; 21 % is 1088.85 -> 1089.
    assert [str(each) for each in (found.cost, found.overhead, found.net, found.tax)] == [
        "3704",
        "444",
        "5185",
        "1089",
    ]


def test_without_a_price_there_is_no_total_and_it_says_which() -> None:
    job = shelf()
    lacking = replace(
        job,
        materials=(
            *job.materials,
            replace(material("hardware", "wood screw, 4 x 40", "4", None), key="wood screw"),
            replace(material("hardware", "wood screw, 4 x 50", "4", None), key="wood screw"),
            material("bought in", "an electrician", "1", None),
        ),
        operations=(*job.operations, operation("hinge", "assembly", "4")),
    )
    found = cost(lacking, rates_of())
    assert found.missing == (
        "the price of `wood screw` under `prices:`",
        "the price of `an electrician` under `bought_in:` of the spec",
        "the minutes of `hinge` under `minutes:`",
    )
    asked = (found.overhead, found.margin, found.net, found.tax, found.total, found.earned_an_hour)
    assert asked == (None,) * 6
    assert found.payments == ()
    assert found.cost == Decimal("476.45")
    assert found.materials[-1].amount is found.labour[-1].amount is None


def test_what_costs_nothing_has_a_price() -> None:
    found = cost(Takings((material("stock", "offcut", "3", "0"),), ()), rates_of())
    assert found.missing == ()
    assert str(found.total) == "0.00"
    assert found.earned_an_hour is None


@pytest.mark.parametrize(
    ("total", "paid"), [("0.01", "0.01 0.00 0.00"), ("0.02", "0.01 0.01 0.00")]
)
def test_payments_of_next_to_nothing_are_never_less_than_nothing(total: str, paid: str) -> None:
    deposits = tuple(
        Deposit(each, Decimal(share)) for each, share in zip("abc", (".5", ".4", ".1"), strict=True)
    )
    rates = rates_of(deposits=deposits, overhead=Decimal(0), margin=Decimal(0), tax=Decimal(0))
    found = cost(Takings((material("stock", "a", "1", total),), ()), rates)
    assert " ".join(str(amount) for _, amount in found.payments) == paid


@given(takings(), some_rates())
def test_it_adds_up(job: Takings, rates: Rates) -> None:
    found = cost(job, rates)
    assert found.overhead is not None and found.margin is not None
    assert found.net is not None and found.tax is not None and found.total is not None
    by_kind = sum((found.spent_on(kind) for kind in KINDS), Decimal(0))
    by_stage = sum((found.worked_at(stage) for stage in STAGES), Decimal(0))
    assert by_kind + by_stage == found.cost
    assert by_stage == found.labour_cost
    assert found.cost + found.overhead + found.margin == found.net
    assert found.net + found.tax == found.total
    assert sum(amount for _, amount in found.payments) == found.total
    assert all(amount >= 0 for _, amount in found.payments)
    assert found.margin >= 0
    places = decimals_of(rates.currency)
    for amount in amounts(found):
        assert -int(amount.as_tuple().exponent) == places


def amounts(found: Costing) -> list[Decimal]:
    lines = [each.amount for each in (*found.materials, *found.labour)]
    sums = [found.cost, found.overhead, found.margin, found.net, found.tax, found.total]
    payments = [amount for _, amount in found.payments]
    return [each for each in (*lines, *sums, *payments) if each is not None]


@given(takings(), some_rates(), st.randoms(use_true_random=False))
def test_the_order_of_lines_doesnt_matter(job: Takings, rates: Rates, random: Random) -> None:
    materials, operations = shuffled(job.materials, random), shuffled(job.operations, random)
    mixed = cost(Takings(tuple(materials), tuple(operations)), rates)
    straight = cost(job, rates)
    assert (mixed.total, mixed.payments, mixed.hours) == (
        straight.total,
        straight.payments,
        straight.hours,
    )


def shuffled(some: Sequence[Some], random: Random) -> list[Some]:
    return random.sample(some, len(some))


@given(takings(), some_rates())
def test_twice_as_much_costs_twice_as_much(job: Takings, rates: Rates) -> None:
    """To half a coin a line, twice over."""
    twice = Takings(
        tuple(replace(each, count=2 * each.count) for each in job.materials),
        tuple(replace(each, count=2 * each.count) for each in job.operations),
    )
    coin = Fraction(1, 10 ** decimals_of(rates.currency))
    lines = (len(job.materials) + len(job.operations)) * (1 + Fraction(rates.consumables)) + 1
    off = abs(Fraction(cost(twice, rates).cost) - 2 * Fraction(cost(job, rates).cost))
    assert off <= Fraction(3, 2) * coin * lines


@given(takings(), some_rates(), MATERIALS | OPERATIONS)
def test_more_never_costs_less(job: Takings, rates: Rates, more: Material | Operation) -> None:
    if isinstance(more, Material):
        with_it = replace(job, materials=(*job.materials, more))
    else:
        with_it = replace(job, operations=(*job.operations, more))
    less, found = cost(job, rates).total, cost(with_it, rates).total
    assert less is not None and found is not None and found >= less
