"""A job's costing: every line priced, summed up to what is asked.

Each line is rounded to the currency's smallest coin, and every sum is of rounded lines, so that
what is printed adds up::

    line of material   count x price, with the waste on top where the count is net
    consumables        stock, edging, hardware and finish x consumables
    line of labour     count x minutes / 60 x what an hour of its stage costs
    cost               all lines
    overhead           cost x overhead
    price before tax   (cost + overhead) / (1 - margin), rounded up if the maker wants it
    margin             price before tax - cost - overhead
    tax                price before tax x tax
    total              price before tax + tax
    payments           total x share; the last one is the rest

Margin is a share of the price (a margin of 20 % on 80.00 asks for 100.00); as a share of the cost
it would be a markup.  Both words are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from rodwright.quote.counted import Material, MaterialKind, Operation, Stage, Takings
from rodwright.quote.hours import days_on_site, minutes_of, stage_hours
from rodwright.quote.money import rounded, rounded_up
from rodwright.quote.rates import Deposit, Rates
from rodwright.trade.currencies import decimals_of

CONSUMABLES = "consumables: glue, abrasives, filler and the like"
"""What a maker reads of them."""
TAKE_CONSUMABLES: tuple[MaterialKind, ...] = ("stock", "edging", "hardware", "finish")
"""What their share is of: not of the work of others, nor of the way to the site."""


@dataclass(frozen=True, slots=True)
class MaterialLine:
    """A material and what it comes to, to the cent (None: it has no price)."""

    material: Material
    amount: Decimal | None


@dataclass(frozen=True, slots=True)
class LabourLine:
    """An operation, the minutes for each, what an hour of it costs, and what it comes to, to the
    cent (None: nobody said the minutes)."""

    operation: Operation
    minutes: Decimal | None
    hour: Decimal
    amount: Decimal | None


@dataclass(frozen=True, slots=True)
class Costing:
    """What one way of making the unit (``option``: empty where there are no others) costs.

    ``missing`` says which prices and minutes nobody gave, in a maker's words; while there are any,
    all from ``overhead`` to ``total`` is None and there are no ``payments``.  ``cost`` is all
    materials and labour that have a price, ``net`` the price before tax, ``margin`` what of it is
    left over cost and overhead.  ``hours`` and ``days_on_site`` are of what has minutes.
    """

    option: str
    currency: str
    materials: tuple[MaterialLine, ...]
    labour: tuple[LabourLine, ...]
    missing: tuple[str, ...]
    cost: Decimal
    overhead: Decimal | None
    margin: Decimal | None
    net: Decimal | None
    tax: Decimal | None
    total: Decimal | None
    payments: tuple[tuple[str, Decimal], ...]
    hours: tuple[tuple[Stage, Decimal], ...]
    days_on_site: Decimal

    def spent_on(self, kind: MaterialKind) -> Decimal:
        """What all materials of a kind come to, as far as they have prices."""
        return _sum(self, (each.amount for each in self.materials if each.material.kind == kind))

    def worked_at(self, stage: Stage) -> Decimal:
        """What all labour of a stage comes to, as far as it has minutes."""
        return _sum(self, (each.amount for each in self.labour if each.operation.stage == stage))

    @property
    def labour_cost(self) -> Decimal:
        """What all labour comes to, as far as it has minutes."""
        return _sum(self, (each.amount for each in self.labour))

    @property
    def all_hours(self) -> Decimal:
        """The hours of all stages, as each is rounded."""
        return sum((hours for _, hours in self.hours), Decimal(0))

    @property
    def earned_an_hour(self) -> Decimal | None:
        """What the maker has for an hour of the work once materials and overhead are paid: labour
        and margin by the hours they take (None: no total, or no hours)."""
        minutes = _minutes(self.labour)
        if self.margin is None or not minutes:
            return None
        kept = Fraction(self.labour_cost) + Fraction(self.margin)
        return rounded(kept * 60 / minutes, decimals_of(self.currency))


def cost(takings: Takings, rates: Rates, option: str = "") -> Costing:
    """What a job costs at a workshop's rates, and what is asked for it."""
    decimals = decimals_of(rates.currency)
    materials = tuple(_material(each, rates, decimals) for each in takings.materials)
    materials = (*materials, *_consumables(materials, rates, decimals))
    labour = tuple(_labour(each, rates, decimals) for each in takings.operations)
    missing = tuple(dict.fromkeys((*_without_price(materials), *_without_minutes(labour))))
    nothing = rounded(Decimal(0), decimals)
    amounts = (*(each.amount for each in materials), *(each.amount for each in labour))
    spent = sum((each for each in amounts if each is not None), nothing)
    asked = _Asked.nothing() if missing else _asked(spent, rates, decimals)
    return Costing(
        option,
        rates.currency,
        materials,
        labour,
        missing,
        spent,
        asked.overhead,
        asked.margin,
        asked.net,
        asked.tax,
        asked.total,
        asked.payments,
        stage_hours(takings, rates),
        days_on_site(takings, rates),
    )


# --- lines -----------------------------------------------------------------------------


def _material(material: Material, rates: Rates, decimals: int) -> MaterialLine:
    if material.price is None:
        return MaterialLine(material, None)
    count = Fraction(material.count) * (1 + Fraction(rates.waste) if material.wasted else 1)
    return MaterialLine(material, rounded(count * Fraction(material.price), decimals))


def _consumables(
    lines: Iterable[MaterialLine], rates: Rates, decimals: int
) -> Iterator[MaterialLine]:
    """A line of what is used up, which nobody counts; none where the rates have no share for it."""
    if not rates.consumables:
        return
    bought = (line.amount for line in lines if line.material.kind in TAKE_CONSUMABLES)
    spent = sum((each for each in bought if each is not None), rounded(Decimal(0), decimals))
    used = Material(
        "consumables",
        "consumables",
        CONSUMABLES,
        spent,
        rates.currency,
        rates.consumables,
        "share of materials",
    )
    yield _material(used, rates, decimals)


def _labour(operation: Operation, rates: Rates, decimals: int) -> LabourLine:
    hour, minutes = rates.hour[operation.stage], minutes_of(operation, rates.minutes)
    if minutes is None:
        return LabourLine(operation, None, hour, None)
    hours = Fraction(operation.count) * Fraction(minutes) / 60
    return LabourLine(operation, minutes, hour, rounded(hours * Fraction(hour), decimals))


def _without_price(lines: Iterable[MaterialLine]) -> Iterator[str]:
    for each in lines:
        if each.amount is None:
            if each.material.kind == "bought in":
                yield f"the price of `{each.material.name}` under `bought_in:` of the spec"
            else:
                yield f"the price of `{each.material.key}` under `prices:`"


def _without_minutes(lines: Iterable[LabourLine]) -> Iterator[str]:
    for each in lines:
        if each.amount is None:
            yield f"the minutes of `{each.operation.key}` under `minutes:`"


def _minutes(lines: Iterable[LabourLine]) -> Fraction:
    return sum(
        (
            Fraction(each.operation.count) * Fraction(each.minutes)
            for each in lines
            if each.minutes is not None
        ),
        Fraction(0),
    )


def _sum(costing: Costing, amounts: Iterable[Decimal | None]) -> Decimal:
    nothing = rounded(Decimal(0), decimals_of(costing.currency))
    return sum((each for each in amounts if each is not None), nothing)


# --- what is asked ---------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _Asked:
    """From the cost to what is paid."""

    overhead: Decimal | None
    margin: Decimal | None
    net: Decimal | None
    tax: Decimal | None
    total: Decimal | None
    payments: tuple[tuple[str, Decimal], ...]

    @classmethod
    def nothing(cls) -> _Asked:
        return cls(None, None, None, None, None, ())


def _asked(spent: Decimal, rates: Rates, decimals: int) -> _Asked:
    overhead = rounded(Fraction(spent) * Fraction(rates.overhead), decimals)
    net = rounded(Fraction(spent + overhead) / (1 - Fraction(rates.margin)), decimals)
    if rates.round_up_to is not None:
        net = rounded_up(net, rates.round_up_to)
    tax = rounded(Fraction(net) * Fraction(rates.tax), decimals)
    total = net + tax
    payments = tuple(_payments(total, rates.deposits, decimals))
    return _Asked(overhead, net - spent - overhead, net, tax, total, payments)


def _payments(
    total: Decimal, deposits: Sequence[Deposit], decimals: int
) -> Iterator[tuple[str, Decimal]]:
    """Each its share, never more than is left; the last one what is left."""
    left = total
    for number, each in enumerate(deposits, start=1):
        share = rounded(Fraction(total) * Fraction(each.share), decimals)
        amount = left if number == len(deposits) else min(share, left)
        left -= amount
        yield each.when, amount
