"""Counts by the keys of operations, and the one door from lengths to exact figures."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import ROUND_HALF_UP, Decimal

from rodwright.lengths import LengthUnit
from rodwright.quote.counted import Operation
from rodwright.quote.operations import BY_KEY, OPERATIONS, measure_of

Count = tuple[str, float]
"""The key of an operation and how much of it, in m, m2, kg or things."""

_THOUSANDTH = Decimal("0.001")


def exact(amount: float) -> Decimal:
    """An amount as a decimal: to the thousandth, halves up; whole ones without decimals.

    Counts, runs, areas, weights and litres become decimals here and nowhere else; from here on
    nothing is a float.
    """
    found = Decimal(repr(float(amount))).quantize(_THOUSANDTH, ROUND_HALF_UP)
    whole = found.to_integral_value()
    return whole if whole == found else found


def operations_of(counts: Iterable[Count], unit: LengthUnit) -> tuple[Operation, ...]:
    """Counts summed up by operation, in the order of the table and the measures of a rates file in
    ``unit``; what comes to nothing is left out.

    Raises:
        KeyError: a count is of no operation.
    """
    totals = dict.fromkeys(BY_KEY, 0.0)
    for key, amount in counts:
        totals[key] += amount
    found = []
    for kind in OPERATIONS:
        measure = measure_of(kind.per, unit)
        count = exact(measure.of(totals[kind.key]))
        if count:
            found.append(Operation(kind.key, kind.name, kind.stage, count, measure.symbol))
    return tuple(found)
