"""All that there is goes down to the floor, the base or the wall, no more and no less."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import rodwright
from kit.specs import unit_from
from kit.wishes import wishes
from rodwright.mass import unit_weight
from rodwright.problems import ProblemsError
from rodwright.strength.carriers import Ground
from rodwright.strength.paths import GRAVITY, paths
from rodwright.unit import LEVELS, Unit
from rodwright.unit.loading import Load, Loading, Lump, Stretch

MODELS = sorted((Path(__file__).parents[2] / "models").glob("*.yaml"))
SIZE = "size: {width: 1000, height: 900, depth: 400}\n"


def laden(unit: Unit, kg_per_m: float = 30.0) -> Unit:
    """A unit with books on every level part, and something heavy on the first."""
    loads = []
    for part in unit.parts:
        if part.role in LEVELS:
            box = part.bounds()
            left, right = box.low[0], box.high[0]
            stretch = Stretch(left, right, kg_per_m, 2 * kg_per_m)
            loads.append(Load(part.ref, "books", (stretch,), (Lump((left + right) / 3, 4.0),)))
    return replace(unit, loading=Loading(tuple(loads)))


def assert_in_balance(unit: Unit) -> None:
    """What comes down is what there is, and in the same place from left to right."""
    found = paths(unit)
    weighs = unit_weight(unit) + sum(load.mass for load in unit.loading.loads)
    assert found.total == pytest.approx(weighs * GRAVITY, rel=1e-6)


@pytest.mark.parametrize("model", MODELS, ids=lambda each: each.stem)
def test_models_are_in_balance(model: Path) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model))
    assert_in_balance(unit)
    assert_in_balance(laden(unit))


@settings(max_examples=60)
@given(wishes(), st.floats(0, 80))
def test_any_unit_is_in_balance(wish: dict[str, Any], kg_per_m: float) -> None:
    try:
        unit = unit_from("title: Any\n", **wish)
    except ProblemsError:
        return
    assert_in_balance(laden(unit, kg_per_m))


@settings(max_examples=30)
@given(wishes())
def test_any_unit_that_hangs_is_in_balance(wish: dict[str, Any]) -> None:
    wish = {key: value for key, value in wish.items() if key not in {"base", "worktop"}}
    try:
        unit = unit_from("title: Any\nhung: true\n", **wish)
    except ProblemsError:
        return
    assert_in_balance(laden(unit))
    assert {where for where, _, _ in paths(unit).given} == {Ground.WALL}
