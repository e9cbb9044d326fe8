"""The rates file: what a workshop asks for an hour, for materials, and on top of them.

The docstring under each field is its description in the JSON Schema and in docs/rates.md.  Amounts
are decimals, exactly as written.
"""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Annotated, Any, Literal

from pydantic import AfterValidator, Field
from pydantic_core import CoreSchema, PydanticCustomError, core_schema

from rodwright.wishes.fields import InShort, SpecModel, Text
from rodwright.wishes.made_by import Name
from rodwright.wishes.money import Currency, Figure, Money
from rodwright.wishes.prices import ExactPrice, ExactPriceField


class _Percent:
    """Reads `15 %` as 0.15, exactly, up to a limit; ``of`` says what it is a share of."""

    def __init__(self, most: int, of: str) -> None:
        self._most, self._of = most, of

    def _read(self, value: Any) -> Decimal:
        text = str(value)
        number = isinstance(value, int | float) and not isinstance(value, bool)
        if isinstance(value, Decimal):  # read before, as the one value of a group of keys
            return value
        if number and value == 0:
            return Decimal(0)
        found = _PERCENT.fullmatch(text) if isinstance(value, str) else None
        if found is None:
            raise PydanticCustomError(
                "percent",
                "`{value}` {fault}",
                {
                    "value": text,
                    "fault": "doesn't say whether it is per cent"
                    if number and value > 0
                    else "can't be read as a share",
                    "remedy": f"Write it in per cent of {self._of}, with the sign and a decimal "
                    "point: `15 %`, `7.5 %`.",
                },
            )
        share = Decimal(found["number"])
        if share > self._most:
            raise PydanticCustomError(
                "percent",
                "`{value}` can't be: {most} % of {of} is the most that is taken",
                {
                    "value": text,
                    "most": self._most,
                    "of": self._of,
                    "remedy": "Check the figure, and what it is a share of.",
                },
            )
        return share.scaleb(-2)

    def __get_pydantic_core_schema__(self, *_: object) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(self._read)

    def __get_pydantic_json_schema__(self, *_: object) -> dict[str, Any]:
        return {"title": "a share in per cent", "type": "string"}


_PERCENT = re.compile(r"\s*(?P<number>[0-9]{1,3}(?:\.[0-9]{1,4})?)\s*%\s*")


def _most(limit: int, what: str) -> AfterValidator:
    def at_most(value: Decimal) -> Decimal:
        if value > limit:
            raise PydanticCustomError(
                "amount",
                "`{value}` is more than {limit} {what}",
                {
                    "value": f"{value:f}",
                    "limit": f"{limit:,}",
                    "what": what,
                    "remedy": "Check the figure.",
                },
            )
        return value

    return AfterValidator(at_most)


Minutes = Annotated[Figure, _most(10_000, "minutes")]
"""Minutes for one."""
Hours = Annotated[Figure, _most(24, "hours")]
"""Hours of a day."""
Key = Annotated[Text, Field(max_length=200)]
"""What a rates file calls an operation, or something that is bought."""


def _a_price(price: ExactPrice) -> ExactPrice:
    if price.number > _DEAREST:
        raise PydanticCustomError(
            "price",
            "`{value}` is no price that anybody asks",
            {"value": f"{price.number:f}", "remedy": f"At most {_DEAREST:,}."},
        )
    return price


_DEAREST = 10**9


class WorkshopSpec(SpecModel):
    """Whose rates they are, for the head of a quote."""

    name: Name | None = None
    """Name of the workshop."""
    address: Annotated[tuple[Name, ...], Field(max_length=6, strict=False)] = ()
    """Its address, line by line."""
    telephone: Name | None = None
    """Its telephone number, in quotes."""
    email: Name | None = None
    """Its address for mail."""
    tax_number: Name | None = None
    """What it is registered under for tax, in quotes."""


class HourSpec(SpecModel):
    """What an hour of labour costs, stage by stage."""

    any: Money
    """At every stage that isn't named below."""
    setting_out: Money | None = None
    """Reading the drawings, setting out, marking."""
    cutting: Money | None = None
    """Handling and cutting sheets and boards, planing."""
    machining: Money | None = None
    """Joints, holes, edges."""
    assembly: Money | None = None
    """Gluing and screwing up, doors and drawers."""
    finishing: Money | None = None
    """Sanding and finishing."""
    fitting: Money | None = None
    """Loading, driving, work on site."""


_TaxRate = Annotated[Decimal, _Percent(60, "the price before tax")]


class TaxSpec(SpecModel):
    """The tax that the client pays on top of the price."""

    name: Name = "tax"
    """What it is called on a quote: `VAT`, `sales tax`."""
    rate: _TaxRate
    """Its rate, of the price before tax; what is due in your case an accountant knows."""


class PaymentSpec(SpecModel):
    """A payment."""

    when: Name
    """When it is due, in the client's words: `with the order`."""
    share: Annotated[Decimal, _Percent(100, "the total")]
    """Its share of the total, tax and all."""


class TravelSpec(SpecModel):
    """The way to the site."""

    visits: Annotated[int, Field(ge=0, le=1000)] = 0
    """How many; 0 for one to each day on site, and one to measure an opening."""
    hours: Hours = Decimal(0)
    """On the road for each visit, there and back; each fitter's are counted."""
    cost: Money = Decimal(0)
    """What each visit costs besides: fuel, tolls, parking."""


class ExtraSpec(SpecModel):
    """What comes with every job beside what is counted: time, something bought, or both."""

    what: Name
    """What it is, in your words: `sharpening`, `disposal`; the client never reads it."""
    minutes: Minutes | None = None
    """Minutes that one person takes for it."""
    stage: (
        Literal["setting_out", "cutting", "machining", "assembly", "finishing", "fitting"] | None
    ) = None
    """When it is done; what is done at `fitting` is time on site."""
    price: Money | None = None
    """What you pay for it, before tax."""


class RatesSpec(SpecModel):
    """A workshop's rates."""

    unit: Literal["mm", "in"] = "mm"
    """What runs, areas and weights are in that minutes and prices are for: with `mm` metres, m2 and
    kg, with `in` feet, square feet and pounds."""
    currency: Currency
    """Currency of every amount here, three capital letters by ISO 4217: `EUR`, `USD`.  Nothing is
    ever converted; a spec or rack that says another is refused."""
    workshop: WorkshopSpec = WorkshopSpec()
    """Whose rates they are, for the head of the quote."""
    hour: Annotated[HourSpec, InShort(Money, "any")]
    """What an hour of labour costs you, tax on wages and all: one amount, or keys."""
    minutes: Annotated[dict[Key, Minutes], Field(max_length=500)] = Field(default={})
    """How many minutes each operation takes, by its name in the table of operations."""
    prices: Annotated[
        dict[Key, Annotated[ExactPriceField, AfterValidator(_a_price)]], Field(max_length=5_000)
    ] = Field(default={})
    """What materials cost before tax, each under its name: for one, or by length, area or volume
    (`14.50`, `6.20/m`, `38/m2`, `7.50/board ft`).  A price in the spec or the rack goes first."""
    waste: Annotated[Decimal, _Percent(200, "the net area")]
    """What is bought more than is in the piece, of the net area or run, where there is no cutting
    plan to say it."""
    consumables: Annotated[Decimal, _Percent(100, "materials")] = Decimal(0)
    """Glue, abrasives, filler, tape, blades: what is used up and not counted, of stock, edging,
    hardware and finish."""
    overhead: Annotated[Decimal, _Percent(500, "materials and labour")]
    """Rent, machines, insurance, the office: of materials and labour."""
    margin: Annotated[Decimal, _Percent(90, "the price before tax")]
    """What is left to you, of the price before tax and not of the cost: a margin of `20 %` on a
    cost of 80 asks for 100, which is a markup of 25 % on the cost."""
    round_up_to: Annotated[Money, Field(gt=0)] | None = None
    """What the price before tax is rounded up to a multiple of: `10`; to the cent unless said."""
    tax: Annotated[TaxSpec, InShort(_TaxRate, "rate")]
    """The tax on top: its rate (`21 %`; `0` for none), or keys."""
    payments: Annotated[tuple[PaymentSpec, ...], Field(max_length=12, strict=False)] = ()
    """When it is paid, in shares that add up to 100 %; all of it when it is done unless said."""
    extras: Annotated[tuple[ExtraSpec, ...], Field(max_length=100, strict=False)] = ()
    """Lines of your own that come with every job."""
    valid_days: Annotated[int, Field(ge=1, le=3650)] = 30
    """For how many days a quote holds."""
    hours_a_day: Annotated[Hours, Field(gt=0)]
    """How many hours a day on site has."""
    fitters: Annotated[int, Field(ge=1, le=100)]
    """How many fit on site."""
    travel: TravelSpec = TravelSpec()
    """The way to the site."""
