"""The rates that a maker starts from are enough for a first quote."""

from __future__ import annotations

import pytest

from rodwright.jobs.new import model_names, model_path
from rodwright.jobs.rates import parse_rates
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
