"""What a unit takes besides its stock: edging, hardware, finishes."""

from __future__ import annotations

import re
from collections.abc import Iterator
from decimal import Decimal

from rodwright.amounts import RUNS
from rodwright.handover.edge_list import edge_list
from rodwright.handover.lists import hardware_list
from rodwright.lengths import format_length
from rodwright.quote.counted import Material
from rodwright.quote.from_site import wall_fixings
from rodwright.quote.from_surfaces import coated
from rodwright.quote.prices import price_for
from rodwright.quote.rates import Price, Rates
from rodwright.quote.tally import exact
from rodwright.trade.finishes import TINS
from rodwright.unit import Unit

_IN_INCHES = re.compile(r" \([^)]* in\)")


def edgings(unit: Unit, rates: Rates) -> Iterator[Material]:
    """Edging by material and section, as long as it is to be got: a tenth more than its edges."""
    run = RUNS[rates.unit]
    for row in edge_list(unit):
        if row.kind == "lipping":
            continue
        key = f"{row.material} edging"
        found = price_for(rates, (key, f"{row.material.partition(',')[0]} edging"))
        price = None
        if found is not None:
            key, said = found
            size = (run.one * 1000, row.width, row.thickness)
            price = said.each(*size) if said.power else said.amount
        sides = " x ".join(
            format_length(each, unit.display_unit) for each in (row.width, row.thickness)
        )
        name = f"{row.material} edging, {sides} {unit.display_unit}"
        count = exact(row.run_to_get(run))
        yield Material("edging", key, name, count, run.symbol, price, "edges and a tenth")


def hardware(unit: Unit, rates: Rates) -> Iterator[Material]:
    """The hardware list, article by article, by its name and size or by its name alone."""
    for row in hardware_list(unit):
        name = f"{row.name}, {row.size}" if row.size else row.name
        found = price_for(rates, (name, *_names(row.name)))
        key, price, lacks = _for_one(row.name, found, "piece")
        yield Material(
            "hardware", key, name + lacks, exact(row.quantity), "piece", price, "hardware list"
        )


def at_the_wall(unit: Unit, rates: Rates, spacing: float | None = None) -> Iterator[Material]:
    """A screw for each fixing to the wall, a plug but where it is known to go into studs, and in an
    opening a pair of packers (common practice, no source); ``spacing`` as in
    :func:`~rodwright.quote.from_site.fitted`."""
    points = wall_fixings(unit, spacing)
    plugs = 0 if unit.loading.wall == "studs" else 1
    packers = 0 if unit.opening is None else 2
    for what, each in (("wall screw", 1), ("wall plug", plugs), ("packer", packers)):
        if count := points * each:
            key, price, lacks = _for_one(what, price_for(rates, (what,)), "piece")
            name = what + lacks
            yield Material("hardware", key, name, exact(count), "piece", price, "fixing points")


def _names(name: str) -> tuple[str, ...]:
    """What an article may be called: as it is listed, without the inches beside its mm, and by its
    kind alone (`concealed hinge` of `concealed hinge, 35 mm (1 3/8 in) cup`)."""
    return name, _IN_INCHES.sub("", name), name.partition(",")[0]


def finishes(unit: Unit, rates: Rates) -> Iterator[Material]:
    """What every coat takes at the most that its tin says; by the litre, or the quart.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    tin = TINS[rates.unit]
    for each in coated(unit):
        for coat in each.coats:
            key, price, lacks = _for_one(coat.what, price_for(rates, (coat.what,)), tin.symbol)
            litres = coat.litres(each.area)[1]
            yield Material(
                "finish",
                key,
                _called(coat.what, each.finish.kind, each.finish.name or each.finish.colour)
                + lacks,
                exact(litres / tin.litre),
                tin.symbol,
                price,
                f"{coat.coats} {'coat' if coat.coats == 1 else 'coats'}",
            )


def _for_one(
    key: str, found: tuple[str, Price] | None, per: str
) -> tuple[str, Decimal | None, str]:
    """What the rates call something that is priced one by one, and what one costs; a price by
    length, area or volume says nothing of it, and what it is to be said by comes last."""
    if found is None:
        return key, None, ""
    if found[1].power:
        return found[0], None, f", by the {per}"
    return found[0], found[1].amount, ""


def _called(what: str, kind: str, colour: str) -> str:
    """What a coat is of: the coloured one by its colour."""
    return f"{what} {colour}" if colour and what == kind else what
