"""What would change if one more size could be bought."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rodwright.cutting.bounds.least_cost import free_bound
from rodwright.cutting.offcuts import Least
from rodwright.cutting.offers import Offer
from rodwright.cutting.planning import Watch, plan_of
from rodwright.cutting.plans import CannotCutError
from rodwright.cutting.pricing import PricedBy, amount, offer_of, priced_by
from rodwright.cutting.sheet_problem import Rules as SheetRules
from rodwright.cutting.sheet_question import problem_of
from rodwright.cutting.supplies import Supply
from rodwright.cutting.whole import ONE_MORE, OneMore, Rules
from rodwright.cutting.work import Lot, LotPlan
from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit
from rodwright.trade.stock_sizes import BOARD_LENGTHS, SHEET_SIZES


def one_more(
    at: int, planned: LotPlan, rules: Rules, least: Least, seed: int, unit: LengthUnit, watch: Watch
) -> Iterator[OneMore]:
    """What each size that is usually sold would change for a lot (of number ``at``), if it could be
    bought too, at a price in proportion to its area (or its length).

    Only for lots of which something is bought, in sizes that are said.  A size that can be
    proven to save nothing isn't planned with, and the search with any other is short: what is saved
    is at least so much.
    """
    bought = [
        each.supply
        for each in (offer_of(planned.lot, name) for name in planned.plan.used)
        if not each.at_hand
    ]
    if not bought or planned.plan.left or any(each.assumed for each in planned.lot.offers):
        return
    rate = sum(each.price for each in bought) / sum(amount(each) for each in bought)
    cents = 4 if priced_by(planned.lot) is PricedBy.SIZE else 2
    for size in _sizes(planned.lot, bought, unit):
        if watch.over():
            return
        extra = Supply(ONE_MORE, *size, None, trim=bought[0].trim)
        extra = replace(extra, price=round(rate * amount(extra), cents))
        if rate and extra.price:
            yield _changed(at, planned, extra, rules, least, seed, watch)


def _sizes(lot: Lot, bought: list[Supply], unit: LengthUnit) -> Iterator[tuple[float, float]]:
    """Sizes that the lot can't be bought in: length along the grain, and width."""
    if lot.kind == "sheet":
        across = any(each.turned for each in lot.offers)
        usual = [size[::-1] if across else size for size in SHEET_SIZES[unit]]
    else:
        widths = dict.fromkeys(each.width for each in bought)
        usual = [(length, width) for width in widths for length in BOARD_LENGTHS[unit]]
    known = [(each.length, each.width) for each in _sold(lot)]
    for size in usual:
        if not any(_alike(size, other) for other in known):
            yield size


def _sold(lot: Lot) -> Iterator[Supply]:
    return (each for each in lot.supplies if not offer_of(lot, each.name).at_hand)


def _alike(one: tuple[float, float], other: tuple[float, float]) -> bool:
    return all(abs(a - b) <= TOUCH for a, b in zip(one, other, strict=True))


def _changed(
    at: int, planned: LotPlan, extra: Supply, rules: Rules, least: Least, seed: int, watch: Watch
) -> OneMore:
    lot, cost = planned.lot, planned.plan.cost
    more = replace(lot, supplies=(*lot.supplies, extra), offers=(*lot.offers, _offer(lot, extra)))
    size = (extra.length, extra.width)
    nothing = OneMore(at, *size, extra.price, in_proportion=True, count=0, saved=0.0)
    if not _may_save(more, cost, rules):
        return nothing
    try:
        plan = plan_of(more, rules, least, seed, watch.brief())
    except CannotCutError:  # pragma: no cover
        return nothing
    if plan.left or plan.cost > cost - _LEAST_SAVED:
        return nothing
    fewer = len(planned.plan.layouts) - len(plan.layouts)
    return replace(nothing, count=fewer, saved=cost - plan.cost, used=plan.used)


_LEAST_SAVED = 0.005
"""Less than half a cent is no saving."""


def _offer(lot: Lot, extra: Supply) -> Offer:
    thick = lot.thickness
    return Offer(extra, lot.kind, lot.material, thick, thick, at_hand=False, price=extra.price)


def _may_save(lot: Lot, cost: float, rules: Rules) -> bool:
    """Whether a plan of a lot may cost less than this, as far as bounds tell."""
    if lot.kind != "sheet":
        return True
    question = SheetRules(guillotine=rules.router is None)
    problem = problem_of(lot.pieces, lot.supplies, question, kerf=rules.between)
    bound = free_bound(problem)
    return bound is not None and problem.money.length(bound) < cost - _LEAST_SAVED
