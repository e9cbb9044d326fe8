"""Prices as they are given: for one piece, or by length, area or volume."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from math import isfinite
from typing import Annotated, Any

from pydantic_core import CoreSchema, PydanticCustomError, core_schema

_METRE, _FOOT = Decimal(1000), Decimal("304.8")
_PER: dict[str, tuple[Decimal, int]] = {
    **dict.fromkeys(("m", "metre", "meter", "lm"), (_METRE, 1)),
    **dict.fromkeys(("ft", "foot", "lf"), (_FOOT, 1)),
    **dict.fromkeys(("m2", "m²", "square metre", "square meter"), (_METRE**2, 2)),
    **dict.fromkeys(("sq ft", "ft2", "ft²", "square foot"), (_FOOT**2, 2)),
    **dict.fromkeys(("m3", "m³", "cubic metre", "cubic meter"), (_METRE**3, 3)),
    **dict.fromkeys(("cu ft", "ft3", "ft³", "cubic foot"), (_FOOT**3, 3)),
    **dict.fromkeys(("board ft", "board foot", "bf"), (_FOOT**3 / 12, 3)),
}
"""mm, mm2 or mm3 that a price is for, and the power of mm that it is.  The foot is 304.8 mm and a
board foot a foot square and an inch thick, as in :mod:`rodwright.amounts`."""
_WRITTEN = re.compile(r"\s*(?P<number>[0-9]+(?:\.[0-9]*)?|\.[0-9]+)\s*(?:(?:/|per)\s*(?P<per>.+))?")
_EXAMPLES = "Write it like `14.50` for one, or `6.20/m`, `38/m2`, `1850/m3`, `7.50/board ft`."


@dataclass(frozen=True, slots=True)
class Price:
    """A price for one piece (``power`` 0), or for ``of`` mm, mm2 or mm3."""

    number: float
    of: float = 1.0
    power: int = 0

    def each(self, length: float, width: float, thickness: float) -> float:
        """What one piece of this size (mm) costs."""
        size = (1.0, length, length * width, length * width * thickness)[self.power]
        return self.number * size / self.of


@dataclass(frozen=True, slots=True)
class ExactPrice:
    """A price in decimals, as it was written: for one (``power`` 0), or ``of`` mm, mm2 or mm3."""

    number: Decimal
    of: Decimal = Decimal(1)
    power: int = 0


def _price(value: Any) -> Price:
    exact = _exact_price(value)
    return Price(float(exact.number), float(exact.of), exact.power)


def _exact_price(value: Any) -> ExactPrice:
    text = str(value)
    found = None
    if isinstance(value, int | float | str) and not isinstance(value, bool):
        found = _WRITTEN.fullmatch(text.lower())
    if found is None or not isfinite(float(found["number"])):
        raise PydanticCustomError(
            "price",
            "`{value}` can't be read as a price",
            {
                "value": text,
                "remedy": f"A decimal point, not a comma: {_EXAMPLES}"
                if "," in text
                else _EXAMPLES,
            },
        )
    number = Decimal(found["number"])
    if found["per"] is None:
        return ExactPrice(number)
    per = " ".join(found["per"].replace(".", "").split())
    if per not in _PER:
        raise PydanticCustomError(
            "price",
            "`{value}`: it isn't known what `{per}` is",
            {"value": text, "per": per, "remedy": _EXAMPLES},
        )
    return ExactPrice(number, *_PER[per])


class _Read:
    def __init__(self, function: Callable[[Any], Price | ExactPrice]) -> None:
        self._function = function

    def __get_pydantic_core_schema__(self, *_: Any) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(self._function)

    def __get_pydantic_json_schema__(self, *_: Any) -> dict[str, Any]:
        return {
            "title": "a price",
            "anyOf": [{"type": "number", "minimum": 0}, {"type": "string"}],
        }


PriceField = Annotated[Price, _Read(_price)]
"""What one costs, or so much of it: `14.50`, `6.20/m`, `38/m2`, `1850/m3`, `7.50/board ft`."""
ExactPriceField = Annotated[ExactPrice, _Read(_exact_price)]
"""The same in decimals, for what is summed up to the cent."""
