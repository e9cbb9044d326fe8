"""A workshop's rates, as plain data; money in decimals of one currency."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal


@dataclass(frozen=True, slots=True)
class Deposit:
    """A payment: what it is for, and its share of the total, 0 to 1."""

    when: str
    share: Decimal


@dataclass(frozen=True, slots=True)
class Workshop:
    """Whose rates they are, for the head of a quote; what nobody said is empty.

    ``address`` is lines; ``tax_number`` is what the workshop is registered under for tax.
    """

    name: str = ""
    address: tuple[str, ...] = ()
    telephone: str = ""
    email: str = ""
    tax_number: str = ""


@dataclass(frozen=True, slots=True)
class Rates:
    """What a workshop asks.

    ``currency`` is an ISO 4217 code.  ``hour`` is what an hour of labour costs; ``minutes`` are for
    each operation by its key, ``prices`` for each material by its key.  ``waste``, ``overhead``,
    ``margin`` and ``tax`` are shares (0.15: 15 %): of the area of stock that has no cutting plan;
    of materials and labour; of the price before tax; of the price before tax.  ``hours_a_day`` is
    how long a day on site is and ``fitters`` how many are there.  ``valid`` is for how many days
    the price holds.
    """

    currency: str
    hour: Decimal
    minutes: Mapping[str, Decimal]
    prices: Mapping[str, Decimal]
    waste: Decimal
    overhead: Decimal
    margin: Decimal
    tax: Decimal
    tax_name: str
    deposits: tuple[Deposit, ...]
    valid: int
    hours_a_day: Decimal
    fitters: int
    workshop: Workshop = Workshop()
