"""What supplies cost a plan, where prices are known and where they aren't."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from enum import StrEnum

from rodwright.cutting.origins import Origin
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


def origin_of(lot: Lot, supply: str) -> Origin:
    """Where a supply of a lot comes from; bought at a price that isn't known, unless said."""
    return lot.origins.get(supply, Origin())


def priced_by(lot: Lot) -> PricedBy:
    """What the cost of a lot's plan is in."""
    known = {origin_of(lot, each.name).price is not None for each in _bought(lot)}
    if known == {False}:
        return PricedBy.SIZE
    return PricedBy.MONEY if known <= {True} else PricedBy.ESTIMATE


def priced(lot: Lot) -> Lot:
    """A lot with the prices that its plan goes by: nothing for what is at hand, and for what is
    bought its price.  One that isn't known is taken by its size, at what a square metre (or a
    metre) costs of those that are known, on average; where none is known, each counts by its
    size."""
    bought = list(_bought(lot))
    known = {
        each.name: price
        for each in bought
        if (price := origin_of(lot, each.name).price) is not None
    }
    sizes = sum(amount(each) for each in bought if each.name in known)
    rate = sum(known.values()) / sizes if known else 1.0

    def of(supply: Supply) -> Supply:
        if origin_of(lot, supply.name).at_hand:
            return replace(supply, price=0.0)
        return replace(supply, price=known.get(supply.name, rate * amount(supply)))

    return replace(lot, supplies=tuple(map(of, lot.supplies)))


def _bought(lot: Lot) -> Iterable[Supply]:
    return (each for each in lot.supplies if not origin_of(lot, each.name).at_hand)
