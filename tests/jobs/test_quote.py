"""A quote as it is written: files, prices, what is missing."""

from __future__ import annotations

import json
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from kit.office import WITHOUT_OFFICE, reckoned
from kit.pages import text_of
from kit.quotes import rates_of
from rodwright.checks.findings import Severity
from rodwright.jobs.quote import Quoted, quote, quoted_json
from rodwright.jobs.quote.ways import Way, ways_of
from rodwright.jobs.rates import parse_rates
from rodwright.problems import ProblemsError
from rodwright.quote.costing import CONSUMABLES
from rodwright.quote.counted import Material
from rodwright.quote.rates import Extra, Price, Rates
from rodwright.quote.starter import starter_rates
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.files import parse_spec

SPEC = """
title: Small alcove
date: 2026-05-31
size: {width: 800, height: 900, depth: 300}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220], price: 74}
carcass: {stock: case}
interior: {shelves: 2}
finish: oil
quote:
  client: Anna Berg
  bought_in: [{what: Glass, price: 140.10}]
"""
OPTIONS = """
options:
  - {name: Painted, change: {finish: {kind: paint, colour: ivory}}, note: Two coats.}
  - {name: Deeper, change: {size: {depth: 400}}}
"""
IN_INCHES = """
title: Small bookcase
unit: in
size: {width: 34, height: 40, depth: 11}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 3/4, size: [96, 48], price: 81}
carcass: {stock: case}
interior: {shelves: 2}
finish: lacquer
"""


def _spec(text: str) -> SpecFile:
    return parse_spec(text, "alcove.yaml")


EXTRAS = (
    Extra("Sharpening", "machining", Decimal(20)),
    Extra("Skip", price=Decimal("25.10")),
)


def _rates(text: str, currency: str = "EUR") -> Rates:
    """Rates to start from, and 1.25 for all that those have no price of."""
    spec = _spec(text)
    rates = parse_rates(starter_rates(currency, "in" if "unit: in" in text else "mm"), "rates.yaml")
    lacking = {
        each.key: Price(Decimal("1.25"))
        for way in ways_of(spec, rates, None)
        for each in way.takings.materials
        if each.price is None
    }
    return replace(rates, prices={**rates.prices, **lacking}, extras=EXTRAS)


def _quoted(text: str, rates: Rates, folder: Path) -> Quoted:
    return quote(_spec(text), rates, folder, pictures="drawings")


def _pdf_text(folder: Path) -> str:
    return " ".join(text_of(folder / "quote.pdf", "layout").split())


@pytest.fixture(scope="module", params=[(SPEC, "EUR"), (IN_INCHES, "USD")], ids=["EUR", "USD"])
def written(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> tuple[Quoted, str]:
    """A quote in mm and one in inches, with all prices."""
    text, currency = request.param
    folder = tmp_path_factory.mktemp("quote")
    return _quoted(text, _rates(text, currency), folder), currency


def test_the_total_is_the_same_on_paper_and_in_json(written: tuple[Quoted, str]) -> None:
    made, currency = written
    (costing,) = made.costings
    assert costing.total is not None
    assert made.missing == ()
    told = _pdf_text(made.folder)
    assert f"Total {currency} {costing.total:,}" in told
    # What is the maker's own stands in the costing alone.
    assert "Sharpening" in {each.operation.name for each in costing.labour}
    assert {"Skip", CONSUMABLES} <= {each.material.name for each in costing.materials}
    assert not any(each in told.lower() for each in ("sharpening", "skip", "consumables"))
    document = json.loads((made.folder / "quote.json").read_text(encoding="utf-8"))
    assert Decimal(document["options"][0]["total"]) == costing.total
    assert set(made.files) <= {each.name for each in made.folder.iterdir()}
    assert json.loads(quoted_json(made))["options"] == document["options"]


@WITHOUT_OFFICE
def test_the_total_is_the_same_in_the_workbook(written: tuple[Quoted, str], tmp_path: Path) -> None:
    """As another program reckons it."""
    made, _ = written
    summary = reckoned(made.folder / "costing.xlsx", tmp_path)["Summary"]
    totals = [row[1].value for row in summary.iter_rows() if row[0].value == "total"]
    assert [Decimal(repr(each)) for each in totals] == [made.costings[0].total]


def test_options_are_costed_each_and_share_a_plan_where_they_are_cut_alike() -> None:
    rates = _rates(SPEC)
    plain, painted, deeper = ways_of(_spec(SPEC + OPTIONS), rates, None)
    assert [each.name for each in (plain, painted, deeper)] == ["Small alcove", "Painted", "Deeper"]
    assert painted.note == "Two coats."

    def stock(way: Way) -> list[Material]:
        return [each for each in way.takings.materials if each.kind == "stock"]

    assert stock(plain) == stock(painted)
    assert plain.takings != painted.takings
    (glass,) = (each for each in deeper.takings.materials if each.name == "Glass")
    assert (glass.kind, glass.count, glass.price) == ("bought in", 1, Decimal("140.10"))


def test_a_missing_price_leaves_no_total_anywhere(tmp_path: Path) -> None:
    text = SPEC.replace(", price: 140.10", "")
    rates = _rates(SPEC)
    made = _quoted(text, rates, tmp_path)
    assert any("Glass" in each for each in made.missing)
    assert [each.total for each in made.costings] == [None]
    told = _pdf_text(tmp_path)
    assert "Draft: it is not priced yet" in told
    assert "EUR" not in told
    document = json.loads((tmp_path / "quote.json").read_text(encoding="utf-8"))
    assert document["options"][0]["total"] is None
    assert any("Glass" in each for each in document["options"][0]["missing"])


def test_no_prices_at_all(tmp_path: Path) -> None:
    text = SPEC.replace(", price: 74", "").replace(", price: 140.10", "")
    made = _quoted(text, rates_of(minutes={}), tmp_path)
    assert len(made.missing) > 5
    assert made.costings[0].total is None
    assert "Total not priced yet" in _pdf_text(tmp_path)


def test_where_nothing_can_be_planned_stock_goes_by_area() -> None:
    text = SPEC.replace("[2440, 1220]", "[700, 300]")
    (way,) = ways_of(_spec(text), _rates(SPEC), None)
    assert any("needs 900 x 300 mm" in each for each in way.no_plan)
    assert any(each.wasted for each in way.takings.materials if each.kind == "stock")


def test_another_currency_is_refused_before_the_work(tmp_path: Path) -> None:
    with pytest.raises(ProblemsError, match="USD"):
        _quoted(f"currency: USD\n{SPEC}", _rates(SPEC), tmp_path)
    option = "options: [{name: Abroad, change: {currency: USD}}]"
    with pytest.raises(ProblemsError, match="USD"):
        _quoted(f"currency: EUR\n{SPEC}{option}\n", _rates(SPEC), tmp_path)
    assert not list(tmp_path.iterdir())


def test_what_the_user_has_there_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "quote.pdf").write_bytes(b"mine")
    with pytest.raises(ProblemsError, match="in the way"):
        _quoted(SPEC, _rates(SPEC), tmp_path)
    assert (tmp_path / "quote.pdf").read_bytes() == b"mine"


def test_an_option_that_makes_no_unit_is_told_at_its_place() -> None:
    text = f"{SPEC}\noptions:\n  - {{name: Thin, change: {{size: {{width: 30}}}}}}\n"
    with pytest.raises(ProblemsError) as refused:
        ways_of(_spec(text), _rates(SPEC), None)
    assert (
        refused.value.problems[0].line
        == text.splitlines().index("  - {name: Thin, change: {size: {width: 30}}}") + 1
    )


def test_a_unit_with_errors_is_quoted_as_a_draft(tmp_path: Path) -> None:
    """Six hundred kilograms a metre on shelves of 2.3 m break them."""
    text = SPEC.replace("width: 800", "width: 2300") + "loads: 600 kg/m\n"
    made = _quoted(text, _rates(text), tmp_path)
    errors = sum(each.severity is Severity.ERROR for each in made.findings)
    assert errors
    assert made.costings[0].total is not None
    assert f"Draft: its design has {errors} fault" in _pdf_text(tmp_path)
