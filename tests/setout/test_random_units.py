"""Random wishes: either told why they make no unit, or a unit whose parts agree with each other."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from rodwright.checks import check_solids
from rodwright.mass import mass_of, unit_weight, weight
from rodwright.parts import Unit
from rodwright.problems import ProblemsError
from rodwright.solids import solid_of
from specs import unit_from

shelves = st.fixed_dictionaries(
    {
        "count": st.integers(1, 4),
        "layers": st.integers(1, 2),
        "fixed": st.booleans(),
        "ends": st.sampled_from(["butted", "housed"]),
        "stopped": st.sampled_from([0, 10]),
        "setback": st.sampled_from([0, 15]),
        "spacing": st.sampled_from(["openings", "centres"]),
    }
)


def _space(depth: int) -> st.SearchStrategy[dict[str, Any]]:
    leaf = st.one_of(st.just({}), st.builds(lambda each: {"shelves": each}, shelves))
    if depth == 0:
        return leaf
    inner = _space(depth - 1)

    def divided(key: str, size: str) -> st.SearchStrategy[dict[str, Any]]:
        spaces = st.lists(
            st.builds(lambda space: {size: "1 share"} | space, inner), min_size=2, max_size=3
        )
        return st.builds(lambda each: {key: each}, spaces)

    return st.one_of(leaf, divided("columns", "width"), divided("rows", "height"))


@st.composite
def wishes(draw: st.DrawFn) -> dict[str, Any]:
    wish: dict[str, Any] = {
        "size": {
            "width": draw(st.integers(700, 2400)),
            "height": draw(st.integers(700, 2400)),
            "depth": draw(st.integers(200, 600)),
        },
        "carcass": {
            "stock": "ply",
            "corners": draw(st.sampled_from(["butted", "housed"])),
            "top": draw(st.sampled_from(["between", "over", "none"])),
            "bottom": draw(st.sampled_from(["between", "over", "none"])),
        },
        "interior": draw(_space(2)),
    }
    fixing = draw(st.sampled_from([None, "applied", "rebated", "grooved"]))
    if fixing:
        wish["back"] = {"stock": "thin", "fixing": fixing}
    framed = draw(st.booleans())
    if framed:
        wish["face_frame"] = {
            "stock": "ash",
            "width": draw(st.integers(30, 70)),
            "corners": draw(st.sampled_from(["mitred", "butted"])),
            "rails": draw(st.sampled_from(["both", "top", "bottom"])),
            "eased": draw(st.sampled_from([0, 4])),
            "mid_stiles": draw(st.sampled_from([None, 40])),
        }
    if draw(st.booleans()):
        edges = ["shelves", *draw(st.sampled_from([[], ["dividers"], ["sides", "top", "bottom"]]))]
        wish["lipping"] = {"stock": "ash", "thickness": 12, "edges": edges}
    return wish


def _unit(wish: dict[str, Any]) -> Unit:
    try:
        return unit_from("unit: mm\n", **wish)
    except ProblemsError as error:
        assert all(problem.where and problem.remedy for problem in error.problems)
        assume(False)
        raise


@settings(
    max_examples=120,
    deadline=None,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(wishes())
def test_parts_meet_where_they_should_and_nowhere_else(wish: dict[str, Any]) -> None:
    unit = _unit(wish)
    assert check_solids(unit) == ()
    assert sum(weight(part) for part in unit.parts) == pytest.approx(unit_weight(unit))
    for shape in unit.shapes:
        mass, solid = mass_of(shape), solid_of(shape)
        assert mass.volume == pytest.approx(solid.Volume(), rel=1e-6)
        assert mass.centroid == pytest.approx(solid.Center().toTuple(), abs=1e-3)
