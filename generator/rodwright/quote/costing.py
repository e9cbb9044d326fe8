"""A job's costing, as plain data: every line priced, summed up to what is asked."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from rodwright.quote.counted import Material, Operation, Stage


@dataclass(frozen=True, slots=True)
class MaterialLine:
    """A material and what it comes to, to the cent."""

    material: Material
    amount: Decimal


@dataclass(frozen=True, slots=True)
class LabourLine:
    """An operation, the minutes for each, and what it comes to, to the cent."""

    operation: Operation
    minutes: Decimal
    amount: Decimal


@dataclass(frozen=True, slots=True)
class Costing:
    """What one way of making the unit (``option``: empty where there are no others) costs.

    ``missing`` says which prices nobody gave, in a maker's words; while there are any, ``net``,
    ``tax`` and ``total`` are None.  ``cost`` is materials and labour, ``net`` the price before tax.
    """

    option: str
    currency: str
    materials: tuple[MaterialLine, ...]
    labour: tuple[LabourLine, ...]
    missing: tuple[str, ...]
    cost: Decimal
    overhead: Decimal
    margin: Decimal | None
    net: Decimal | None
    tax: Decimal | None
    total: Decimal | None
    payments: tuple[tuple[str, Decimal], ...]
    hours: tuple[tuple[Stage, Decimal], ...]
    days_on_site: Decimal
