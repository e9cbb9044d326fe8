"""Results about one part of a unit."""

from __future__ import annotations

import pytest

from kit.results import BREAKS, SAG, STANDS
from kit.specs import unit_from
from rodwright.jobs.strength import about
from rodwright.problems import ProblemsError
from rodwright.strength.results import Result

SPEC = "size: {width: 800, height: 500, depth: 300}\ninterior: {shelves: 1}\n"


@pytest.mark.parametrize(
    ("ref", "results"), [("SH1", (SAG, BREAKS)), (" sd1", (BREAKS, STANDS)), ("BT1", ())]
)
def test_results_about_a_part(ref: str, results: tuple[Result, ...]) -> None:
    assert about(unit_from(SPEC), (SAG, BREAKS, STANDS), ref).results == results


def test_a_part_that_is_none_is_named_with_the_nearest() -> None:
    with pytest.raises(ProblemsError) as told:
        about(unit_from(SPEC), (SAG,), "SH7")
    (problem,) = told.value.problems
    assert "no part `SH7`" in problem.message
    assert "`SH1`" in problem.remedy and "rodwright parts" in problem.remedy
