"""Random wishes: either told why they make no unit, or a unit whose parts agree with each other."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, assume, given, settings

from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.checks import check_solids
from rodwright.mass import mass_of, unit_weight, weight
from rodwright.problems import ProblemsError
from rodwright.solids import solid_of
from rodwright.unit import Unit


def _unit(wish: Wish) -> Unit:
    try:
        return unit_from("unit: mm\n", **wish)
    except ProblemsError as error:
        assert all(problem.where and problem.remedy for problem in error.problems)
        assume(False)
        raise


@pytest.mark.parametrize("_hundred", range(5))  # so that they can be shared out
@settings(
    max_examples=100,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(wish=wishes())
def test_parts_meet_where_they_should_and_nowhere_else(_hundred: int, wish: Wish) -> None:
    unit = _unit(wish)
    assert check_solids(unit) == ()
    assert sum(weight(part) for part in unit.parts) == pytest.approx(unit_weight(unit))
    for shape in unit.shapes:
        mass, solid = mass_of(shape), solid_of(shape)
        assert mass.volume == pytest.approx(solid.Volume(), rel=1e-6)
        assert mass.centroid == pytest.approx(solid.Center().toTuple(), abs=1e-3)
