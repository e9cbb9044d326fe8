"""Any unit gives figures of the whole carcass, and none that can't be."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import chain
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings

import rodwright
from kit.specs import unit_from
from kit.wishes import wishes
from rodwright.checks.findings import Severity
from rodwright.checks.racking import racking as racking_found
from rodwright.checks.uprights import uprights as uprights_found
from rodwright.checks.wall_fixings import wall_fixings as hanging_found
from rodwright.problems import ProblemsError
from rodwright.strength.bearings import bearings
from rodwright.strength.ground import ground
from rodwright.strength.hanging import hanging
from rodwright.strength.paths import paths
from rodwright.strength.racking import racking
from rodwright.strength.results import Result
from rodwright.strength.uprights import uprights
from rodwright.unit import JointKind, Unit

MODELS = sorted((Path(__file__).parents[2] / "models").glob("*.yaml"))


def _all(unit: Unit) -> list[Result]:
    return list(chain(racking(unit), uprights(unit), ground(unit), hanging(unit)))


def assert_sound(unit: Unit) -> None:
    for result in _all(unit):
        figures = [result.figure, result.limit, *(each.value for each in result.inputs)]
        figures += [each.figure for each in result.remedies]
        for figure in figures:
            assert figure is None or (math.isfinite(figure) and figure >= 0), result
        assert result.figure is not None or result.lacking
        assert result.limit is None or result.limit_source is not None
        if not result.holds and result.remedies:
            assert any(each.holds for each in result.remedies) or result.figure is not None
    for finding in chain(racking_found(unit), uprights_found(unit), hanging_found(unit)):
        assert finding.message
        assert finding.remedy
        if finding.severity in {Severity.ERROR, Severity.WARNING}:
            assert finding.figure is not None


@settings(max_examples=40)
@given(wishes())
def test_any_unit_gives_sound_figures(wish: dict[str, Any]) -> None:
    try:
        unit = unit_from("title: Any\n", **wish)
    except ProblemsError:
        return
    assert_sound(unit)
    if "base" not in wish and "worktop" not in wish:
        assert_sound(replace(unit, hung=True))


@pytest.mark.parametrize("model", MODELS, ids=lambda each: each.stem)
def test_models_stand_and_are_braced(model: Path) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model))
    assert_sound(unit)
    assert all(each.holds for each in chain(racking(unit), uprights(unit)))
    found = chain(racking_found(unit), uprights_found(unit))
    assert not [each for each in found if each.severity in {Severity.ERROR, Severity.WARNING}]


@pytest.mark.parametrize("model", MODELS, ids=lambda each: each.stem)
def test_shelves_between_two_seats_bring_as_much_as_their_bearings(model: Path) -> None:
    """What a level part on two uprights brings to each is the same either way."""
    unit = rodwright.set_out(rodwright.read_spec(model))
    down = paths(unit)
    compared = 0
    sliding = {joint.first for joint in unit.joints if joint.kind is JointKind.SLIDING}
    for ref, bearing in bearings(unit).items():
        if ref in sliding:
            continue
        lies_alone = len(bearing.seats) == 2 and len(bearing.level.refs) == 1
        if not lies_alone or bearing.lines or bearing.standing or bearing.grounded:
            continue
        for seat in bearing.seats:
            brought = (
                sum(
                    each.force
                    for each in down.taken[seat.on]
                    if each.of != seat.on
                    and abs(each.at[2] - seat.joint.at[2]) < 1e-6
                    and _from(unit, each.of, ref)
                )
                if seat.joint and seat.on
                else None
            )
            if brought is not None:
                compared += 1
                assert brought == pytest.approx(seat.reaction, rel=0.06), (ref, seat.on)
    assert compared or model.stem in {
        "hostel-eaves",
        "library-wall",
        "tape-drawers",
        "record-cabinet",
    }


def _from(unit: Unit, ref: str, level: str) -> bool:
    """Whether a part is the level or a lipping on it."""
    if ref == level:
        return True
    return any(joint.first == level and joint.second == ref for joint in unit.joints)
