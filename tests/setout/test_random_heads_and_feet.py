"""Random bases, worktops, cornices and scribes: told why they can't be, or parts that agree."""

from __future__ import annotations

from typing import Any, get_args

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from kit.specs import STOCK, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.rules import Rule
from rodwright.mass import mass_of, unit_weight, weight
from rodwright.problems import ProblemsError
from rodwright.solids import solid_of
from rodwright.unit import Role, Unit
from rodwright.wishes.joints import JointWord

LEGS = "  leg: {kind: board, material: oak, thickness: 60}\n"


INTERIORS: list[dict[str, Any]] = [
    {"columns": [{"width": "1 share"}, {"width": "2 shares"}]},
    {"doors": {"stock": "ply", "hung": "inset"}},
    {"doors": {"stock": "ply", "hung": "overlay", "count": 2}},
]


@st.composite
def bases(draw: st.DrawFn) -> dict[str, Any]:
    kind = draw(st.sampled_from(["plinth", "toe_board", "legs", "levellers"]))
    wish: dict[str, Any] = {"kind": kind, "height": draw(st.integers(20, 250))}
    toe = draw(st.integers(0, 120))
    if kind == "plinth":
        wish |= {
            "toe_space": toe,
            "sides": draw(st.integers(0, 40)),
            "rear": draw(st.integers(0, 40)),
            "levelling": draw(st.integers(0, 19)),
            "spacing": draw(st.integers(100, 900)),
        }
    elif kind == "toe_board":
        wish["toe_space"] = toe + 1
    elif kind == "legs":
        wish |= {
            "stock": "leg",
            "section": draw(st.integers(25, 60)),
            "inset": draw(st.integers(0, 60)),
            "span": draw(st.integers(150, 1200)),
            "held_by": draw(st.sampled_from(["blocks", "rails"])),
        }
    elif draw(st.booleans()):
        wish["board"] = {"toe_space": toe}
    return wish


@st.composite
def heads(draw: st.DrawFn) -> dict[str, Any]:
    if draw(st.booleans()):
        overhang = {side: draw(st.integers(0, 40)) for side in ("front", "sides", "rear")}
        stock = draw(st.sampled_from(["ply", "ash"]))
        layers = draw(st.integers(1, 3))
        return {"worktop": {"stock": stock, "layers": layers, "overhang": overhang}}
    wish: dict[str, Any] = {"stock": "ash", "height": draw(st.integers(30, 150))}
    wish["returns"] = draw(st.sampled_from(["both", "left", "right", "none"]))
    if draw(st.booleans()):
        wish |= {"place": "standing", "projection": draw(st.integers(0, 21))}
    else:
        wish["rise"] = draw(st.integers(0, 60))
    return {"cornice": wish}


@st.composite
def wishes(draw: st.DrawFn) -> dict[str, Any]:
    wish: dict[str, Any] = {
        "carcass": {
            "stock": "ply",
            "corners": draw(st.sampled_from(get_args(JointWord))),
            "top": draw(st.sampled_from(["between", "over", "none"])),
            "bottom": draw(st.sampled_from(["between", "over", "none"])),
        },
        "interior": draw(st.sampled_from(INTERIORS)),
    }
    if draw(st.booleans()):
        wish["opening"] = {
            "width": {"bottom": draw(st.integers(900, 920)), "top": draw(st.integers(900, 920))},
            "height": draw(st.integers(700, 2400)),
            "depth": draw(st.integers(250, 600)),
        }
        wish["fit"] = {
            "sides": draw(st.integers(5, 40)),
            "top": draw(st.integers(5, 40)),
            "back": 30,
        }
        edges = draw(st.sampled_from([None, ["left", "right"], ["left", "top"]]))
        if edges:
            wish["scribes"] = {
                "stock": "ash",
                "edges": edges,
                "setback": draw(st.sampled_from([0, 10, 22])),
            }
    else:
        wish["size"] = {
            "width": draw(st.integers(400, 2400)),
            "height": draw(st.integers(500, 2400)),
            "depth": draw(st.integers(200, 700)),
        }
    if draw(st.booleans()):
        wish["base"] = draw(bases())
    if draw(st.booleans()):
        wish |= draw(heads())
    fixing = draw(st.sampled_from([None, "applied", "rebated", "grooved"]))
    if fixing:
        wish["back"] = {"stock": "thin", "fixing": fixing}
    front = draw(st.sampled_from(["bare", "framed", "lipped"]))
    if front == "framed":
        wish["face_frame"] = {
            "stock": "ash",
            "width": 45,
            "corners": draw(st.sampled_from(["mitred", "butted"])),
        }
    if front == "lipped":
        wish["lipping"] = {"stock": "ash", "thickness": 10, "edges": ["sides", "top", "bottom"]}
    return wish


def _unit(wish: dict[str, Any]) -> Unit:
    try:
        return unit_from("unit: mm\n" + STOCK + LEGS, **wish)
    except ProblemsError as error:
        assert all(problem.where and problem.remedy for problem in error.problems)
        assume(False)
        raise


@settings(
    max_examples=60,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(wishes())
def test_parts_meet_where_they_should_and_nowhere_else(wish: dict[str, Any]) -> None:
    unit = _unit(wish)
    assert check_solids(unit) == ()
    assert sum(weight(part) for part in unit.parts) == pytest.approx(unit_weight(unit))
    for shape in unit.shapes:
        assert mass_of(shape).volume == pytest.approx(solid_of(shape).Volume(), rel=1e-6)
    height = wish["size"]["height"] if "size" in wish else wish["opening"]["height"]
    fitted = [part.bounds() for part in unit.parts if part.role is not Role.SCRIBE]
    top = max(box.high[2] for box in fitted)
    assert top == pytest.approx(height) if "size" in wish else top < height
    if unit.opening is not None:
        assert Rule.LARGER_THAN_OPENING not in {each.rule for each in check_parts(unit)}
