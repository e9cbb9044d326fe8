"""Random wishes of a maker in inches: refused with a remedy, or a unit without a collision, bored
with drills that are sold."""

from __future__ import annotations

import re

import pytest
from hypothesis import HealthCheck, assume, given, settings

from kit.specs import STOCK, unit_from
from kit.wishes import Wish, wishes
from rodwright.checks import check_solids
from rodwright.problems import ProblemsError
from rodwright.unit import Hole, Unit
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.schema import Shape
from test_inches_throughout import METRIC_WARE, with_units

_STOCK = re.sub(r"thickness: (\d+)", r"thickness: \1 mm", STOCK).replace("2440, 1220", "96, 48")


def _unit(wish: Wish) -> Unit:
    try:
        return unit_from(f"unit: in\n{_STOCK}", **with_units(wish, Shape.of(UnitSpec)))
    except ProblemsError as error:
        assert all(problem.where and problem.remedy for problem in error.problems)
        assume(False)
        raise


@settings(
    max_examples=60,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(wishes())
def test_units_in_inches_go_together(wish: Wish) -> None:
    unit = _unit(wish)
    assert check_solids(unit) == ()
    for part in unit.parts:
        for working in part.workings:
            if isinstance(working, Hole) and working.use == "pipe":
                continue  # as wide as the pipe and its clearance, whatever cuts it
            if isinstance(working, Hole) and working.diameter not in METRIC_WARE:
                drill = working.diameter / 25.4 * 64
                assert drill == pytest.approx(round(drill), abs=1e-4), (part.ref, working)
