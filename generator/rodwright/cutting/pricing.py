"""What the cost of a plan is in, where prices are known and where they aren't."""

from __future__ import annotations

from enum import StrEnum

from rodwright.cutting.offers import Offer
from rodwright.cutting.supplies import Supply
from rodwright.cutting.work import Lot


class PricedBy(StrEnum):
    """What the cost of a plan is in."""

    MONEY = "money"
    """The maker's own: every price is known."""
    ESTIMATE = "estimate"
    """Money too, but some prices are not known, and taken by size from those that are."""
    SIZE = "size"
    """Square metres, or metres of what has no width: no price is known."""


def amount(supply: Supply) -> float:
    """How much wood a supply is: m2, or m where it has no width."""
    if not supply.width:
        return supply.length / 1e3
    return supply.length * supply.width / 1e6


def offer_of(lot: Lot, name: str) -> Offer:
    """Where a supply of a lot comes from, by its name; bought at its price where nothing is said.

    Raises:
        StopIteration: the lot has no such supply.
    """
    found = next((each for each in lot.offers if each.supply.name == name), None)
    if found is not None:
        return found
    supply = next(each for each in lot.supplies if each.name == name)
    thick = lot.thickness
    return Offer(supply, lot.kind, lot.material, thick, thick, at_hand=False, price=supply.price)


def priced_by(lot: Lot) -> PricedBy:
    """What the cost of a lot's plan is in: a supply without a price of its own is planned with one
    by its size."""
    offers = [offer_of(lot, each.name) for each in lot.supplies]
    known = {each.price is not None for each in offers if not each.at_hand}
    if known == {False}:
        return PricedBy.SIZE
    return PricedBy.MONEY if known <= {True} else PricedBy.ESTIMATE
