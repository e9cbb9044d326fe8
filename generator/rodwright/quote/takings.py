"""What a unit takes, counted from its parts, joints and cutting plan."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import ROUND_CEILING, Decimal

from rodwright.cutting.whole import Cutting
from rodwright.quote.bought import at_the_wall, edgings, finishes, hardware
from rodwright.quote.counted import Material, Operation, Takings
from rodwright.quote.from_cuts import cut_by_pieces, cut_by_plan
from rodwright.quote.from_joints import put_together
from rodwright.quote.from_site import fitted
from rodwright.quote.from_surfaces import finished
from rodwright.quote.from_workings import machined
from rodwright.quote.hours import DRIVING, EXTRA, days_on_site
from rodwright.quote.rates import Rates
from rodwright.quote.stock_bought import by_area, by_plan
from rodwright.quote.tally import Count, operations_of
from rodwright.unit import Unit


def takings_of(
    unit: Unit, cutting: Cutting | None, rates: Rates, *, fixing_spacing: float | None = None
) -> Takings:
    """All that a unit takes: what is bought for it, and what is done.

    ``cutting`` is the plan of this unit alone; without one its stock is counted by area and its
    cuts by pieces.  ``fixing_spacing`` is how far apart, in mm, fixings to the sides of an opening
    stand at most (None: as usual).  Of the rates only measures, prices, extras and the way to the
    site are asked, and minutes for how many days that way is driven.  No solid is built.

    Raises:
        ValueError: the plan is of other units too, or leaves pieces without a place; or the
            workings of a part leave nothing of it.
    """
    if cutting is not None and (len(cutting.jobs) != 1 or not cutting.whole):
        raise ValueError("a unit is costed by a whole plan of its own")
    counted = Takings(
        tuple(_materials(unit, cutting, rates, fixing_spacing)),
        operations_of(_counts(unit, cutting, fixing_spacing), rates.unit),
    )
    return _with_driving(_with_extras(counted, rates), unit, rates)


def _materials(
    unit: Unit, cutting: Cutting | None, rates: Rates, spacing: float | None
) -> Iterator[Material]:
    yield from by_area(unit, rates) if cutting is None else by_plan(unit, cutting, rates)
    yield from edgings(unit, rates)
    yield from hardware(unit, rates)
    yield from at_the_wall(unit, rates, spacing)
    yield from finishes(unit, rates)


def _counts(unit: Unit, cutting: Cutting | None, spacing: float | None) -> Iterator[Count]:
    yield "job", 1
    yield "survey", int(_is_measured(unit))
    yield "shape", len(unit.shapes)
    yield from cut_by_pieces(unit) if cutting is None else cut_by_plan(cutting)
    yield from machined(unit)
    yield from put_together(unit)
    yield from finished(unit)
    yield from fitted(unit, spacing)


def _is_measured(unit: Unit) -> bool:
    return unit.opening is not None


def _with_extras(counted: Takings, rates: Rates) -> Takings:
    """With what the rates say that comes with every job."""
    timed = tuple(
        Operation(EXTRA, each.what, each.stage, each.minutes, "min")
        for each in rates.extras
        if each.stage is not None and each.minutes
    )
    bought = tuple(
        Material("bought in", each.what, each.what, Decimal(1), "job", each.price, "the rates")
        for each in rates.extras
        if each.price is not None
    )
    return Takings((*counted.materials, *bought), (*counted.operations, *timed))


def _with_driving(counted: Takings, unit: Unit, rates: Rates) -> Takings:
    """With the way to the site: as often as the rates say, or once for each day there, and once,
    alone, to measure an opening."""
    travel = rates.travel
    days = int(days_on_site(counted, rates).to_integral_value(ROUND_CEILING))
    survey = int(_is_measured(unit))
    visits = travel.visits or days + survey
    people = visits * rates.fitters - (0 if travel.visits else survey * (rates.fitters - 1))
    hours = travel.hours * people
    if hours:
        driving = Operation(DRIVING, "driving, there and back", "fitting", hours, "h")
        counted = replace(counted, operations=(*counted.operations, driving))
    if travel.cost:
        count = Decimal(visits)
        cost = Material("bought in", "travel", "travel", count, "visit", travel.cost, "visits")
        counted = replace(counted, materials=(*counted.materials, cost))
    return counted
