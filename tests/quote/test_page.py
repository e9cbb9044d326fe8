"""The client's quote: what stands on it, and what never does."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

from kit.pages import Page, pages_of, text_of
from kit.quotes import material, operation, rates_of
from kit.specs import unit_from
from rodwright.quote.costing import Costing, cost
from rodwright.quote.counted import Takings
from rodwright.quote.letter import BoughtIn, Letter
from rodwright.quote.page import Offered, Quotation, page_data, quote_pdf
from rodwright.quote.rates import Rates, Workshop
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit

SPEC = "size: {width: 800, height: 900, depth: 300}\nfinish: oil"
UNIT = laid_unit(unit_from(SPEC))
SHOP = Workshop("Hillford Joinery", ("The Old Mill",), "01234 567890", "us@hill.example", "GB 12")
RATES = rates_of(workshop=SHOP)
LETTER = Letter(
    client="Anna Berg",
    address=("3 Mill Lane",),
    number="Q-17",
    date="2026-05-31",
    not_included=("Decorating.",),
    bought_in=(BoughtIn("Glass, cut and polished.", Decimal(140)),),
    terms=("Half a year of guarantee.",),
)
TAKES = Takings(
    (material("stock", "ply", "2", "74.10"), material("bought in", "glass", "1", "140")),
    (operation("rip", "cutting", "11"), operation("standing", "fitting", "1")),
)
"""By hand, in EUR: 2 x 74.10 + 140 = 288.20; 11 x 1.5 min and 35 min at 48 an hour are 13.20 and
28.00; cost 329.40; overhead 12 % 39.528, so 39.53; price before tax 368.93 / 0.8 = 461.1625, so
461.16; tax 21 % 96.8436, so 96.84; total 558.00; payments 40 % 223.20, 35 % 195.30, rest 139.50."""


def _picture(width: int, height: int) -> bytes:
    file = BytesIO()
    Image.new("RGB", (width, height), (180, 150, 110)).save(file, format="JPEG")
    return file.getvalue()


def _offered(option: str = "", takes: Takings = TAKES, unit: Unit = UNIT) -> Offered:
    return Offered(unit, cost(takes, RATES, option), _picture(60, 90), "")


def _quotation(*offered: Offered, letter: Letter = LETTER, errors: int = 0) -> Quotation:
    return Quotation(offered or (_offered(),), letter, RATES, errors)


def _pages(quotation: Quotation, folder: Path) -> tuple[Page, ...]:
    file = folder / "quote.pdf"
    file.write_bytes(quote_pdf(quotation, "a4"))
    return pages_of(file)


def _text(pages: tuple[Page, ...]) -> str:
    return " ".join(page.text for page in pages)


def _lines(folder: Path) -> str:
    """The file's text as it is laid out, spaces as one."""
    return " ".join(text_of(folder / "quote.pdf", "layout").split())


def _hidden(costing: Costing) -> set[str]:
    """The maker's own amounts."""
    lines = [each.amount for each in (*costing.materials, *costing.labour)]
    own = (costing.cost, costing.overhead, costing.margin, costing.labour_cost, *lines)
    return {f"{each:,}" for each in own if each is not None}


def test_the_price_and_all_beside_it(tmp_path: Path) -> None:
    pages = _pages(_quotation(), tmp_path)
    text = _lines(tmp_path)
    for said in (
        "Hillford Joinery",
        "Tax number GB 12",
        "Anna Berg",
        "quote Q-17",
        "31 May 2026",
        "until 30 June 2026",
        "Price before tax EUR 461.16",
        "VAT 21 % EUR 96.84",
        "Total EUR 558.00",
        "with the order EUR 223.20",
        "before it is fitted EUR 195.30",
        "when it is done EUR 139.50",
        "Glass, cut and polished.",
        "Decorating.",
        "Half a year of guarantee.",
        "Bringing it and fitting it on site.",
        "800",
        "900",
        "300",
    ):
        assert said in text, said
    assert len(pages) <= 3


def test_nothing_of_the_makers_costs_is_on_it(tmp_path: Path) -> None:
    quotation = _quotation()
    words = set(_text(_pages(quotation, tmp_path)).split())
    assert not words & _hidden(quotation.offered[0].costing)
    assert not words & {"overhead", "margin", "markup", "hours", "minutes", "cost", "costs"}


def test_without_a_price_there_is_no_total(tmp_path: Path) -> None:
    unpriced = Takings((material("stock", "ply", "2", None),), TAKES.operations)
    text = _text(_pages(_quotation(_offered(takes=unpriced)), tmp_path))
    assert "Draft: it is not priced yet" in text
    assert "Total not priced yet" in text
    assert "EUR" not in text
    assert "Payments" not in text


@pytest.mark.parametrize(("errors", "said"), [(1, "has 1 fault to"), (3, "has 3 faults to")])
def test_a_unit_with_errors_makes_a_draft(errors: int, said: str) -> None:
    assert said in page_data(_quotation(errors=errors))["banner"]
    assert not page_data(_quotation())["banner"]


def test_options_stand_side_by_side_with_what_differs(tmp_path: Path) -> None:
    white = laid_unit(unit_from(SPEC.replace("oil", "{kind: paint, colour: white}")))
    dearer = Takings((*TAKES.materials, material("finish", "paint", "3", "20")), TAKES.operations)
    quotation = _quotation(_offered("Oiled"), _offered("Painted", dearer, white))
    told = page_data(quotation)
    assert [each["name"] for each in told["options"]] == ["Oiled", "Painted"]
    assert [[fact["word"] for fact in each["facts"]] for each in told["options"]] == [
        ["Finish"],
        ["Finish"],
    ]
    text = _text(_pages(quotation, tmp_path))
    # 60.00 more is 67.20 with overhead: (368.93 + 67.20) / 0.8 = 545.1625; tax 114.48.
    assert "Oiled EUR 461.16 EUR 96.84 EUR 558.00" in text
    assert "Painted EUR 545.16 EUR 114.48 EUR 659.64" in text


def test_what_is_to_know_of_an_option_is_told() -> None:
    lacquered = laid_unit(unit_from(SPEC.replace("oil", "lacquer")))
    told = page_data(_quotation(_offered("Lacquered", unit=lacquered), _offered("Oiled")))
    assert sum("catch fire by themselves" in each for each in told["to_know"]) == 1
    assert len(set(told["to_know"])) == len(told["to_know"])


HOSTILE = "=cmd|'x'!A0 #set page(paper: \"a0\") *b* _i_ $y$ `raw` <x> @ref \\ " + "W" * 60


@pytest.mark.parametrize("wide", [False, True])
def test_whatever_a_maker_writes_is_text_within_the_page(tmp_path: Path, wide: bool) -> None:
    unit = replace(UNIT, title=HOSTILE)
    long = "It runs on and on, over many lines of paper. " * 12
    letter = replace(
        LETTER,
        client="#" * 80,
        address=("M" * 80,) * 6,
        site=("W" * 80,) * 6,
        included=(long,) * 8,
        not_included=(HOSTILE,) * 3,
    )
    picture = _picture(90, 60) if wide else _picture(30, 90)
    offered = [
        replace(_offered(name, unit=unit), picture=picture, note=long[:400])
        for name in ("One", HOSTILE, "Three", "W" * 90, "Five", "Six", "Seven")
    ]
    pages = _pages(_quotation(*offered, letter=letter), tmp_path)
    assert '#set page(paper: "a0")' in _text(pages)
    for page in pages:
        assert not page.outside(22)  # points: 8 mm, which all printers print
        assert not page.overlapping()
        assert (round(page.width), round(page.height)) == (595, 842)


def test_what_is_included_and_to_know_is_not_torn_apart(tmp_path: Path) -> None:
    """Whatever stands before it: its lines are on the page of their heading."""
    for high in (60, 75, 90):
        offered = [
            replace(_offered(name), picture=_picture(60, high), note="Some words of it. " * 6)
            for name in ("One", "Two", "Three")
        ]
        texts = [page.text for page in _pages(_quotation(*offered), tmp_path)]
        for heading, last in (
            ("Please know", "licensed to do it"),
            ("Not included", "Decorating."),
        ):
            assert any(heading in text and last in text for text in texts), (high, heading)


def test_without_tax_there_is_but_a_total() -> None:
    untaxed: Rates = rates_of(tax=Decimal(0))
    quotation = Quotation((Offered(UNIT, cost(TAKES, untaxed), _picture(60, 90)),), LETTER, untaxed)
    assert page_data(quotation)["prices"]["heads"] == ["Total"]


def test_equal_quotes_are_equal_byte_for_byte() -> None:
    assert quote_pdf(_quotation(), "letter") == quote_pdf(_quotation(), "letter")
