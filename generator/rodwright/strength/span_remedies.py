"""What would do where a shelf doesn't hold, each tried."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from rodwright.amounts import GRAVITY, RUN_WEIGHTS
from rodwright.lengths import LengthUnit, at_least, at_most, format_length
from rodwright.strength.span import (
    Carried,
    Plank,
    Trial,
    greatest_load,
    greatest_span,
    least_thickness,
    trial,
)

__all__ = ["span_remedies"]


def span_remedies(
    planed: Callable[[float], Plank | None],
    plank: Plank,
    carried: Carried,
    tried: Trial,
    limit: float,
    unit: LengthUnit,
) -> Iterator[tuple[str, Trial]]:
    """A shorter span, a thicker board, less on it: what each is, and the shelf so; ``planed`` gives
    the shelf of a thickness, ``unit`` is the maker's. What doesn't hold either isn't told."""

    def length(mm: float) -> str:
        return f"{format_length(mm, unit)} {unit}"

    shorter = at_most(greatest_span(plank, carried, limit) or 0.0, unit)
    if shorter > 0:
        yield f"a span of {length(shorter)}", trial(plank, carried, shorter, limit)
    least = least_thickness(planed, carried, tried.span, limit, above=plank.thickness)
    thicker = planed(at_least(least, unit)) if least is not None else None
    if thicker is not None:
        yield f"{length(thicker.thickness)} thick", trial(thicker, carried, tried.span, limit)
    row = greatest_load(plank, tried.span, limit)
    if row and not carried.standing:
        said = RUN_WEIGHTS[unit].said(row / GRAVITY * 1000)
        yield f"no more than {said} on it", trial(plank, Carried(row=row), tried.span, limit)
