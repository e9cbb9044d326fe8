"""What holds of every result, whichever analysis gives it: it says what it is of, from what it was
worked out and where that comes from, and it is a number or says what is lacking."""

from __future__ import annotations

import json
from math import isfinite

import pytest
from hypothesis import HealthCheck, assume, given, settings

import rodwright
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.handover.strength_json import strength_json
from rodwright.handover.strength_list import strength_rows
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import ProblemsError
from rodwright.strength import strength_of
from rodwright.unit import Unit


def hold_to(unit: Unit) -> None:
    """All that is true of every result of a unit."""
    results = strength_of(unit)
    refs = {part.ref for part in unit.parts}
    for each in results:
        assert each.subject and each.what and set(each.parts) <= refs
        assert each.source.work
        assert all(source.work for source in each.from_memory)
        assert all(given.symbol and given.what and isfinite(given.value) for given in each.inputs)
        if each.figure is None:
            assert each.lacking, each
        else:
            assert each.figure == each.figure and each.formula and each.inputs, each
        if not each.holds:
            assert each.remedies, each
            assert all(remedy.what and isfinite(remedy.figure) for remedy in each.remedies)
    rows = strength_rows(results, unit.display_unit)
    assert sum(not row.result.holds for row in rows) <= sum(not each.holds for each in results)
    document = json.loads(strength_json(unit, results, breaks=False), parse_constant=pytest.fail)
    assert len(document["results"]) == len(results)


@pytest.mark.parametrize("name", model_names())
def test_of_every_ready_model(name: str) -> None:
    hold_to(rodwright.set_out(rodwright.read_spec(model_path(name))))


@settings(
    max_examples=25,
    derandomize=True,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(wish=wishes())
def test_of_random_units(wish: Wish) -> None:
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        assume(False)
        raise
    hold_to(unit)
