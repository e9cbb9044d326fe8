"""Amounts of money and other decimals, exactly as they are written."""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Annotated, Any

from pydantic import Field
from pydantic_core import CoreSchema, PydanticCustomError, core_schema

_WRITTEN = re.compile(r"\s*(?P<number>[0-9]+(?:\.[0-9]*)?|\.[0-9]+)\s*")
_MOST = Decimal(10**9)
_DECIMALS = 4


class _Read:
    """Reads a decimal of 0 or more, of up to a thousand million and four decimals.

    A YAML number comes as a float: the shortest text that gives it back is what was written, to
    15 figures (IEEE 754, binary64).
    """

    def __init__(self, what: str, remedy: str) -> None:
        self._what, self._remedy = what, remedy

    def _read(self, value: Any) -> Decimal:
        text = str(value)
        found = None
        if isinstance(value, int | float | str | Decimal) and not isinstance(value, bool):
            found = _WRITTEN.fullmatch(text)
        if found is None:
            raise PydanticCustomError(
                "money",
                "`{value}` {fault}",
                {
                    "value": text,
                    "fault": "is less than nothing"
                    if re.fullmatch(rf"\s*-{_WRITTEN.pattern}", text)
                    else f"can't be read as {self._what}",
                    "remedy": self._remedy,
                },
            )
        amount = Decimal(found["number"])
        if amount > _MOST or -int(amount.as_tuple().exponent) > _DECIMALS:
            raise PydanticCustomError(
                "money",
                "`{value}` is no {what} that anybody asks",
                {
                    "value": text,
                    "what": self._what.partition(" ")[2],
                    "remedy": f"At most {_MOST:,}, with at most {_DECIMALS} decimals.",
                },
            )
        return amount

    def __get_pydantic_core_schema__(self, *_: Any) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(self._read)

    def __get_pydantic_json_schema__(self, *_: Any) -> dict[str, Any]:
        return {
            "title": self._what,
            "anyOf": [{"type": "number", "minimum": 0}, {"type": "string"}],
        }


Money = Annotated[
    Decimal,
    _Read(
        "an amount of money",
        "Write a number like `120` or `38.50`: a decimal point, no comma, no sign of a currency.",
    ),
]
"""An amount of money, 0 or more, in the currency of the rates: `120`, `38.50`."""
Figure = Annotated[
    Decimal, _Read("a figure", "Write a number like `12` or `2.5`: a decimal point, no comma.")
]
"""Any other decimal, 0 or more."""
Currency = Annotated[str, Field(pattern="^[A-Z]{3}$")]
"""A currency by its code of ISO 4217: three capital letters."""
