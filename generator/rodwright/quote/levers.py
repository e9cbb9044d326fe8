"""What moves a price most: each figure that a maker can change, changed by a tenth.

A tenth is the same for all, so that what they do to the total can be set side by side; nothing is
said of how likely it is.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import get_args

from rodwright.quote.costing import cost
from rodwright.quote.counted import MaterialKind, Stage, Takings
from rodwright.quote.rates import Rates

_MORE = Decimal("1.1")
_ALL: Mapping[MaterialKind, str] = {
    "edging": "all edging",
    "hardware": "all hardware",
    "finish": "all finish",
    "bought in": "all bought-in work",
}


@dataclass(frozen=True, slots=True)
class Lever:
    """A figure that is changed: ``what`` it is, how (``said``, in words), and by how much the total
    changes with it, before it is rounded up to a whole figure."""

    what: str
    said: str
    change: Decimal


def levers_of(takings: Takings, rates: Rates) -> tuple[Lever, ...]:
    """Every figure that moves the total, the strongest first; none where there is no total."""
    plain = replace(rates, round_up_to=None)
    now = cost(takings, plain).total
    found = []
    for what, said, other_takings, other_rates in _changed(takings, plain):
        then = cost(other_takings, other_rates).total
        if now is not None and then is not None and then != now:
            found.append(Lever(what, said, then - now))
    return tuple(sorted(found, key=lambda lever: -abs(lever.change)))


def _changed(takings: Takings, rates: Rates) -> Iterator[tuple[str, str, Takings, Rates]]:
    more = {stage: hour * _MORE for stage, hour in rates.hour.items()}
    yield "an hour of labour", "10 % dearer", takings, replace(rates, hour=more)
    for stage in get_args(Stage):
        yield stage, "10 % more minutes", _slower(takings, stage), rates
    stocks = dict.fromkeys(each.name for each in takings.materials if each.kind == "stock")
    for name in stocks:
        yield name, "10 % dearer", _dearer(takings, "stock", name), rates
    for kind, words in _ALL.items():
        yield words, "10 % dearer", _dearer(takings, kind), rates
    for key in ("waste", "consumables", "overhead", "margin"):
        now = getattr(rates, key)
        said = f"{_percent(now * _MORE)} instead of {_percent(now)}"
        # A share of the price stays under the whole of it.
        yield key, said, takings, replace(rates, **{key: now * _MORE})


def _slower(takings: Takings, stage: Stage) -> Takings:
    """More minutes for each are as much as more of them."""
    return replace(
        takings,
        operations=tuple(
            replace(each, count=each.count * _MORE) if each.stage == stage else each
            for each in takings.operations
        ),
    )


def _dearer(takings: Takings, kind: MaterialKind, name: str | None = None) -> Takings:
    return replace(
        takings,
        materials=tuple(
            replace(each, price=each.price * _MORE)
            if each.price is not None and each.kind == kind and name in (None, each.name)
            else each
            for each in takings.materials
        ),
    )


def _percent(share: Decimal) -> str:
    return f"{(share * 100).normalize():f} %"
