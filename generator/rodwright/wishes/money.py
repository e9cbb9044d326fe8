"""Amounts of money as they are written: decimals, exact."""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Annotated, Any

from pydantic_core import CoreSchema, PydanticCustomError, core_schema

_WRITTEN = re.compile(r"\s*(?P<number>[0-9]+(?:\.[0-9]*)?|\.[0-9]+)\s*")
_MOST = Decimal(10**9)
_DECIMALS = 4
_REMEDY = "Write a number like `120` or `38.50`: a decimal point, no comma, no sign of a currency."


def _money(value: Any) -> Decimal:
    """The decimal that was written.

    A YAML number comes as a float: the shortest text that gives it back is what was written, to
    15 figures (IEEE 754, binary64).
    """
    text = str(value)
    found = None
    if isinstance(value, int | float | str) and not isinstance(value, bool):
        found = _WRITTEN.fullmatch(text)
    if found is None:
        raise PydanticCustomError(
            "money",
            "`{value}` can't be read as an amount of money",
            {"value": text, "remedy": _REMEDY},
        )
    amount = Decimal(found["number"])
    if amount > _MOST or -int(amount.as_tuple().exponent) > _DECIMALS:
        raise PydanticCustomError(
            "money",
            "`{value}` is no amount of money that anybody asks",
            {"value": text, "remedy": f"At most {_MOST:,}, with at most {_DECIMALS} decimals."},
        )
    return amount


class _Read:
    def __get_pydantic_core_schema__(self, *_: Any) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(_money)

    def __get_pydantic_json_schema__(self, *_: Any) -> dict[str, Any]:
        return {
            "title": "an amount of money",
            "anyOf": [{"type": "number", "minimum": 0}, {"type": "string"}],
        }


Money = Annotated[Decimal, _Read()]
"""An amount of money, 0 or more, in the currency of the rates: `120`, `38.50`."""
