"""What a job takes of people's time: hours by stage, days on site."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import ROUND_HALF_UP, Decimal
from types import MappingProxyType
from typing import get_args

from rodwright.quote.counted import Operation, Stage, Takings
from rodwright.quote.operations import BY_KEY
from rodwright.quote.rates import Rates

DRIVING = "driving"
"""The key of the hours on the road, which no minutes are said for."""
EXTRA = "extra"
"""The key of a job's own lines, which are counted in minutes."""
MINUTES_IN: Mapping[str, Decimal] = MappingProxyType({"h": Decimal(60), "min": Decimal(1)})
"""The minutes in what time is counted in."""
_HOUR = Decimal(60)
_HUNDREDTH = Decimal("0.01")


def minutes_of(operation: Operation, minutes: Mapping[str, Decimal]) -> Decimal | None:
    """Minutes for each of an operation; None where the rates don't say.  What is counted in
    hours or minutes has its own."""
    return MINUTES_IN.get(operation.per, minutes.get(operation.key))


def stage_hours(takings: Takings, rates: Rates) -> tuple[tuple[Stage, Decimal], ...]:
    """Hours of every stage, one person's, to the hundredth, halves up; what the rates say no
    minutes of is left out."""
    totals = dict.fromkeys(get_args(Stage), Decimal(0))
    for each in takings.operations:
        totals[each.stage] += each.count * (minutes_of(each, rates.minutes) or 0)
    return tuple((stage, _hours(total)) for stage, total in totals.items())


def days_on_site(takings: Takings, rates: Rates) -> Decimal:
    """Days on site, all fitters together, to the hundredth, halves up: without the road, wrapping
    and loading."""
    minutes = sum(
        (each.count * (minutes_of(each, rates.minutes) or 0) for each in _on_site(takings)),
        Decimal(0),
    )
    day = _HOUR * rates.hours_a_day * rates.fitters
    return (minutes / day).quantize(_HUNDREDTH, ROUND_HALF_UP)


def is_on_site(operation: Operation) -> bool:
    """Whether it is done at the client's; a job's own lines of fitting are."""
    if operation.key == EXTRA:
        return operation.stage == "fitting"
    return operation.key in BY_KEY and BY_KEY[operation.key].on_site


def _on_site(takings: Takings) -> list[Operation]:
    return [each for each in takings.operations if is_on_site(each)]


def _hours(minutes: Decimal) -> Decimal:
    return (minutes / _HOUR).quantize(_HUNDREDTH, ROUND_HALF_UP)
