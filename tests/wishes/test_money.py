"""Amounts of money, exact."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError
from ruamel.yaml import YAML

from rodwright.wishes.money import Money

READ = TypeAdapter(Money)


def read(written: object) -> Decimal:
    found: Decimal = READ.validate_python(written)
    return found


@given(st.decimals(0, 10**9, places=2))
def test_what_was_written_is_what_is_read(amount: Decimal) -> None:
    """Through a YAML reader, which makes a binary float of it."""
    assert read(YAML(typ="safe").load(f"{amount:f}")) == amount
    assert read(f"{amount:f}") == amount


@pytest.mark.parametrize(
    "written",
    [
        "38,50",
        "$38",
        "38 EUR",
        "1e3",
        "",
        True,
        None,
        float("nan"),
        float("inf"),
        "١٢",
        [],
    ],
)
def test_what_is_no_amount(written: object) -> None:
    with pytest.raises(ValidationError, match="can't be read as an amount of money"):
        read(written)


@pytest.mark.parametrize("written", ["-1", -1, "-0.5", -38.5])
def test_what_is_less_than_nothing(written: object) -> None:
    with pytest.raises(ValidationError, match="is less than nothing"):
        read(written)


@pytest.mark.parametrize("written", [1_000_000_001, "0.00001"])
def test_what_nobody_asks(written: object) -> None:
    with pytest.raises(ValidationError, match="no amount of money that anybody asks"):
        read(written)
