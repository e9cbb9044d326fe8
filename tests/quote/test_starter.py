"""The rates that a maker starts from are enough for a first quote."""

from __future__ import annotations

import pytest

from kit.specs import unit_from
from rodwright.jobs.new import model_names, model_path
from rodwright.jobs.rates import parse_rates
from rodwright.quote.bought import hardware
from rodwright.quote.costing import cost
from rodwright.quote.starter import starter_rates
from rodwright.quote.takings import takings_of
from rodwright.setout import set_out
from rodwright.wishes import read_spec
from rodwright.wishes.reading.options import option_specs


@pytest.mark.parametrize("name", model_names())
def test_every_ready_model_has_a_price(name: str) -> None:
    for option, spec in option_specs(read_spec(model_path(name))):
        unit = set_out(spec)
        rates = parse_rates(starter_rates("EUR", unit.display_unit), "rates.yaml")
        found = cost(takings_of(unit, None, rates), rates, option)
        assert found.missing == (), option
        assert found.total is not None and found.net is not None
        assert 0 < found.cost < found.net < found.total
        assert sum(amount for _, amount in found.payments) == found.total


def test_inches_beside_a_cup_change_nothing() -> None:
    unit = unit_from(
        "unit: in\nsize: {width: 30, height: 34, depth: 16}\n"
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 3/4}\n"
        "interior: {columns: [{width: 1 share, doors: {stock: ply, hung: overlay}}, "
        "{width: 1 share}]}\n"
    )
    rates = parse_rates(starter_rates("USD", "in"), "rates.yaml")
    hinges = [each for each in hardware(unit, rates) if "(1 3/8 in) cup" in each.name]
    assert [each.price for each in hinges] == [rates.prices["concealed hinge"].amount]
