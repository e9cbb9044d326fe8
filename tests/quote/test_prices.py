"""What a rates file calls things."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from kit.samples import PLYWOOD
from kit.takings import each_for, rates_in
from rodwright.quote.prices import money, price_for, sized_keys, stock_keys
from rodwright.unit import Grain
from rodwright.unit.stock import Stock

OAK = Stock("oak", "board", "european oak", 22.0, Grain.LENGTHWISE, 700.0, "", "#ddccaa")


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("birch plywood 18 mm", "birch plywood 18 mm"),
        ("Birch Plywood,  18 mm", "birch plywood 18 mm"),
        ("baltic birch 18 mm", "birch plywood 18 mm"),
        ("European Oak 22 mm", "european oak, 22 mm"),
        ("oak-veneered MDF 19 mm", "oak veneered mdf 19 mm"),
        ("wood screw 4 x 50 mm", "wood screw, 4 x 50 mm"),
    ],
)
def test_however_it_is_written(said: str, asked: str) -> None:
    found = price_for(rates_in(prices={said: each_for("7")}), (asked,))
    assert found == (said, each_for("7"))


def test_other_things_have_other_prices() -> None:
    rates = rates_in(prices={"birch plywood 18 mm": each_for("74"), "wood screw": each_for("0.1")})
    assert price_for(rates, ("birch plywood 12 mm", "screw")) is None


def test_the_more_particular_key_comes_first() -> None:
    rates = rates_in(prices={"dowel": each_for("1"), "dowel, 8 x 40 mm": each_for("2")})
    assert price_for(rates, ("dowel, 8 x 40 mm", "dowel")) == ("dowel, 8 x 40 mm", each_for("2"))


def test_sheets_go_by_thickness_and_boards_by_material_too() -> None:
    thick = replace(OAK, thickness=19.05)
    assert stock_keys(replace(PLYWOOD, thickness=12.7), "in") == (
        "birch plywood 1/2 in",
        "birch plywood 12.7 mm",
    )
    assert stock_keys(thick, "in") == (
        "european oak 3/4 in",
        "european oak 19.1 mm",
        "european oak",
    )
    assert stock_keys(thick, "mm")[0] == "european oak 19.1 mm"


def test_one_of_a_size_goes_by_it_either_way_round() -> None:
    assert [*sized_keys(replace(PLYWOOD, thickness=12.7), (2438.4, 1219.2), "in")] == [
        "birch plywood 1/2 in, 96 x 48",
        "birch plywood 1/2 in, 48 x 96",
        "birch plywood 12.7 mm, 2438.4 x 1219.2",
        "birch plywood 12.7 mm, 1219.2 x 2438.4",
    ]


@pytest.mark.parametrize(("amount", "said"), [(0.1, "0.1000"), (36.86405, "36.8641"), (9, "9")])
def test_prices_of_specs_become_decimals_to_four_places(amount: float, said: str) -> None:
    assert money(amount) == Decimal(said)
