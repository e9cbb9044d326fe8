"""A rates file as plain data, one to start from, and what is said of one that can't be."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from rodwright.cutting.rack import Rack
from rodwright.jobs.rates import new_rates, parse_rates, read_rates, refuse_other_currency
from rodwright.lengths import LengthUnit
from rodwright.problems import ProblemsError
from rodwright.quote.operations import operations_in
from rodwright.quote.rates import Deposit, Extra, Price, Travel, Workshop
from rodwright.quote.starter import starter_rates
from rodwright.wishes.reading.files import parse_spec

RATES = """\
currency: EUR
workshop: {name: Two Benches, address: [1 Mill Lane, Oldtown], tax_number: "X 12"}
hour: {any: 48.50, fitting: 55}
minutes: {rip: 1.5}
prices:
  "wood screw, 4 x 40 mm": 0.0455
  birch plywood 18 mm: 25.10/m2
waste: 15 %
overhead: 12.5 %
margin: 20 %
tax: {name: VAT, rate: 21 %}
payments:
  - {when: with the order, share: 40 %}
  - {when: when it is done, share: 60 %}
valid_days: 21
hours_a_day: 7.5
fitters: 2
travel: {visits: 2, hours: 0.75, cost: 12.40}
round_up_to: 5
"""
SHORT = """\
currency: JPY
hour: 4500
waste: 0
overhead: 10 %
margin: 10 %
tax: 0
hours_a_day: 8
fitters: 1
"""


def told(text: str) -> list[str]:
    with pytest.raises(ProblemsError) as error:
        parse_rates(text, "rates.yaml")
    return [str(each) for each in error.value.problems]


def test_what_a_workshop_asks() -> None:
    rates = parse_rates(RATES, "rates.yaml")
    assert (rates.currency, rates.unit, rates.valid) == ("EUR", "mm", 21)
    assert (rates.hour["cutting"], rates.hour["fitting"]) == (Decimal("48.50"), 55)
    assert rates.minutes == {"rip": Decimal("1.5")}
    assert rates.prices == {
        "wood screw, 4 x 40 mm": Price(Decimal("0.0455")),
        "birch plywood 18 mm": Price(Decimal("25.1"), Decimal(10**6), 2),
    }
    shares = (rates.waste, rates.overhead, rates.margin, rates.tax)
    assert [str(each) for each in shares] == ["0.15", "0.125", "0.20", "0.21"]
    assert rates.deposits == (
        Deposit("with the order", Decimal("0.4")),
        Deposit("when it is done", Decimal("0.6")),
    )
    assert rates.travel == Travel(2, Decimal("0.75"), Decimal("12.40"))
    assert (rates.round_up_to, rates.hours_a_day, rates.fitters) == (5, Decimal("7.5"), 2)
    address = ("1 Mill Lane", "Oldtown")
    assert rates.workshop == Workshop("Two Benches", address, tax_number="X 12")


def test_extras_and_consumables_are_read() -> None:
    """With the starter file's own examples, uncommented."""
    text = starter_rates("EUR", "mm")
    for line in ("extras:", "  - {what: sharp", "  - {what: disp"):
        assert f"# {line}" in text
        text = text.replace(f"# {line}", line)
    rates = parse_rates(text, "rates.yaml")
    assert rates.consumables == Decimal("0.04")
    assert rates.extras == (
        Extra("sharpening", "machining", Decimal(20)),
        Extra("disposal", price=Decimal("25.00")),
    )


def test_what_may_be_left_out() -> None:
    rates = parse_rates(SHORT, "rates.yaml")
    assert (rates.tax, rates.tax_name, rates.waste) == (0, "tax", 0)
    assert rates.deposits == (Deposit("when it is done", Decimal(1)),)
    assert (rates.minutes, rates.prices, rates.round_up_to) == ({}, {}, None)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (
            ("hour: {any: 48.50, fitting: 55}\n", ""),
            "rates.yaml:1:1: the rates file needs `hour`\n  Add `hour:` and a number, text or the "
            "keys `any`, `setting_out`, `cutting`, `machining`, `assembly`, `finishing` and "
            "`fitting`. What an hour of labour costs you, tax on wages and all: one amount, or "
            "keys.",
        ),
        (
            ("rip: 1.5", "rips: 1.5"),
            "rates.yaml:4:17: `rips` isn't an operation that is counted\n  Did you mean `rip`? "
            "What comes with every job beside them goes under `extras:`.",
        ),
        (
            ("rip: 1.5", "rip: -1.5"),
            "rates.yaml:4:16: `rip`: `-1.5` is less than nothing\n  Write a number like `12` or "
            "`2.5`: a decimal point, no comma.",
        ),
        (
            ("0.0455", "0,05"),
            "rates.yaml:6:28: `wood screw, 4 x 40 mm`: `0,05` can't be read as a price\n"
            "  A decimal point, not a comma: Write it like `14.50` for one, or `6.20/m`, `38/m2`, "
            "`1850/m3`, `7.50/board ft`.",
        ),
        (
            ("0.0455", ".nan"),
            "rates.yaml:6:28: `.nan` isn't a number that can be used here\n  Write it like `18` or "
            "`602.5`; put it in quotes if it is a name.",
        ),
        (
            ("cost: 12.40", "cost: 1e12"),
            "rates.yaml:18:40: `cost`: `1000000000000.0` is no amount of money that anybody asks\n"
            "  At most 1,000,000,000, with at most 4 decimals.",
        ),
        (
            ("valid_days:", "extras: [{what: hire}]\nvalid_days:"),
            "rates.yaml:15:10: `hire` takes no time and costs nothing\n  Say its `minutes` and "
            "their `stage`, its `price`, or all three.",
        ),
        (
            ("valid_days:", "extras: [{what: sharpening, minutes: 20}]\nvalid_days:"),
            "rates.yaml:15:10: `sharpening` says only one of `minutes` and `stage`\n  Say both, so "
            "that the minutes cost what an hour of that stage does; or neither.",
        ),
        (
            ("share: 60 %", "share: 59.5 %"),
            "rates.yaml:12:1: the payments add up to 99.5 % of the total\n  Change their shares so "
            "that they add up to 100 %.",
        ),
        (
            ("rate: 21 %", "rate: 200 %"),
            "rates.yaml:11:24: `rate`: `200 %` can't be: 60 % of the price before tax is the most "
            "that is taken\n  Check the figure, and what it is a share of.",
        ),
        (
            ("{name: VAT, rate: 21 %}", "21"),
            "rates.yaml:11:6: `tax`: `21` doesn't say whether it is per cent\n"
            "  Write it in per cent of the price before tax, with the sign and a decimal point: "
            "`15 %`, `7.5 %`.",
        ),
        (
            ("any: 48.50", "any: -48.50"),
            "rates.yaml:3:13: `any`: `-48.5` is less than nothing\n"
            "  Write a number like `120` or `38.50`: a decimal point, no comma, no sign of a "
            "currency.",
        ),
        (
            ("margin: 20 %", "margin: 0.2"),
            "rates.yaml:10:9: `margin`: `0.2` doesn't say whether it is per cent\n"
            "  Write it in per cent of the price before tax, with the sign and a decimal point: "
            "`15 %`, `7.5 %`.",
        ),
        (
            ("round_up_to: 5", "round_up_to: 0.005"),
            "rates.yaml:19:14: 0.005 isn't a multiple of 0.01, the smallest amount in EUR\n"
            "  Round up to a whole amount: `10`, say.",
        ),
        (
            ("  birch plywood 18 mm", '  "Wood screw  4 x 40 mm": 1\n  birch plywood 18 mm'),
            "rates.yaml:7:28: `Wood screw  4 x 40 mm` has two prices: here and as `wood screw, "
            "4 x 40 mm`\n  Keep one.",
        ),
        (
            ("currency: EUR", "currency: Euro"),
            "rates.yaml:1:11: `currency` isn't in the right form; `Euro` is text\n"
            "  Currency of every amount here, three capital letters by ISO 4217: `EUR`, `USD`. "
            "Nothing is ever converted; a spec or rack that says another is refused.",
        ),
    ],
)
def test_what_is_said_of_one_that_cant_be(change: tuple[str, str], said: str) -> None:
    assert told(RATES.replace(*change)) == [said]


def test_one_that_isnt_there(tmp_path: Path) -> None:
    with pytest.raises(ProblemsError, match="there is no file"):
        read_rates(tmp_path / "rates.yaml")


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_one_to_start_from_has_every_operation(tmp_path: Path, unit: LengthUnit) -> None:
    file = tmp_path / "rates.yaml"
    new_rates(file, "GBP", inches=unit == "in")
    rates = read_rates(file)
    assert (rates.currency, rates.unit) == ("GBP", unit)
    assert rates.minutes == {each.key: each.minutes for each in operations_in(unit)}
    assert "EVERY FIGURE HERE IS INVENTED" in file.read_text()
    with pytest.raises(ProblemsError, match="is there already"):
        new_rates(file, "GBP")


@pytest.mark.parametrize("code", ["pounds", "gbp", "£", "", "EUR\nhour: 1"])
def test_a_currency_that_is_none_writes_nothing(tmp_path: Path, code: str) -> None:
    with pytest.raises(ProblemsError, match="isn't the code of a currency"):
        new_rates(tmp_path / "rates.yaml", code)
    assert not list(tmp_path.iterdir())


SPEC = """\
title: Box
currency: USD
size: {width: 600, height: 600, depth: 300}
stock: {case: {kind: sheet, material: birch plywood, thickness: 18}}
carcass: {stock: case}
"""


def test_nothing_is_converted() -> None:
    rates = parse_rates(RATES, "rates.yaml")
    with pytest.raises(ProblemsError) as error:
        refuse_other_currency(parse_spec(SPEC, "box.yaml"), None, rates)
    assert str(error.value).startswith(
        "box.yaml:2:11: the prices here are in USD, and the rates are in EUR"
    )
    euro = parse_spec(SPEC.replace("USD", "EUR"), "box.yaml")
    silent = parse_spec(SPEC.replace("currency: USD\n", ""), "box.yaml")
    for spec in (euro, silent):
        refuse_other_currency(spec, Rack("rack.yaml", "", "mm", (), currency="EUR"), rates)
    with pytest.raises(ProblemsError, match=r"rack\.yaml: the prices here are in GBP"):
        refuse_other_currency(euro, Rack("rack.yaml", "", "mm", (), currency="GBP"), rates)
