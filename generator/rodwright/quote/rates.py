"""A workshop's rates, as plain data; money in decimals of one currency."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from math import prod

from rodwright.lengths import LengthUnit
from rodwright.quote.counted import Stage
from rodwright.quote.money import rounded


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
class Price:
    """A price for one of what it is a price of (``power`` 0), or for ``of`` mm, mm2 or mm3."""

    amount: Decimal
    of: Decimal = Decimal(1)
    power: int = 0

    def each(self, length: float, width: float = 0.0, thickness: float = 0.0) -> Decimal:
        """What one piece of a size in mm costs, to four decimals; sizes count to a thousandth."""
        sizes = [Fraction(round(each * 1000), 1000) for each in (length, width, thickness)]
        amount = Fraction(self.amount) * prod(sizes[: self.power], start=Fraction(1))
        return rounded(amount / Fraction(self.of), _DECIMALS_OF_PRICES)


_DECIMALS_OF_PRICES = 4


@dataclass(frozen=True, slots=True)
class Travel:
    """The way to the site: how many ``visits`` (0: as many as the work takes), ``hours`` on the
    road for each of them there and back, and what each ``cost`` besides (fuel, parking)."""

    visits: int = 0
    hours: Decimal = Decimal(0)
    cost: Decimal = Decimal(0)


@dataclass(frozen=True, slots=True)
class Extra:
    """What comes with every job beside what is counted: ``what`` it is, the ``minutes`` that it
    takes at a ``stage`` (None: no time), and its ``price`` (None: nothing is bought)."""

    what: str
    stage: Stage | None = None
    minutes: Decimal | None = None
    price: Decimal | None = None


@dataclass(frozen=True, slots=True)
class Rates:
    """What a workshop asks.

    ``currency`` is an ISO 4217 code; runs, areas and weights that minutes and prices are for are
    in ``unit``.  ``hour`` is what an hour of labour costs at each stage; ``minutes`` are for
    each operation by its key, ``prices`` for each material by its key.  ``waste``, ``overhead``,
    ``margin`` and ``tax`` are shares (0.15: 15 %): of the net area or run of what has no cutting
    plan; of materials and labour; of the price before tax; of the price before tax.
    ``consumables`` are a share of all that is bought but the work of others; ``extras`` come with
    every job.
    ``round_up_to`` is what the price before tax is rounded up to a multiple of (None: to the
    cent).  ``deposits`` add up to the whole.  ``hours_a_day`` is how long a day on site is and
    ``fitters`` how many are there.  ``valid`` is for how many days the price holds.
    """

    currency: str
    hour: Mapping[Stage, Decimal]
    minutes: Mapping[str, Decimal]
    prices: Mapping[str, Price]
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
    unit: LengthUnit = "mm"
    travel: Travel = Travel()
    round_up_to: Decimal | None = None
    consumables: Decimal = Decimal(0)
    extras: tuple[Extra, ...] = ()
