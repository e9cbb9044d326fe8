"""A worktop that reaches out past its sides: the middle and the ends, each against its limit."""

from __future__ import annotations

import pytest

from kit.carcasses import books, carcass, level, upright
from rodwright.amounts import GRAVITY
from rodwright.checks.sagging import sagging
from rodwright.strength.levels import levels
from rodwright.strength.results import Result
from rodwright.strength.sag_lines import sag_lines
from rodwright.unit import JointKind, Role, Unit

LOAD = 30 * GRAVITY / 1000
"""30 kg/m as N/mm."""
EI = 10_000 * 300 * 20**3 / 12
SPAN = 1000.0
"""Between the inner faces of the sides, mm: the worktop rests on their edges there."""


def _bench(out: float, **more: object) -> Unit:
    """A worktop on two sides 1 m apart, reaching ``out`` mm past their inner faces."""
    sides = [upright(f"SD{n + 1}", n * (SPAN + 20) - 20, (0, 700), Role.SIDE) for n in range(2)]
    x = (-out, SPAN + out)
    joints = [(side.ref, "WT1", JointKind.BUTT) for side in sides]
    top = level("WT1", x, 700, Role.WORKTOP)
    return carcass([*sides, top], joints, books("WT1", x, 30), years=0, **more)


def _sag(unit: Unit) -> Result:
    return next(each for each in levels(unit) if each.what == "sag at once")


def _middle(out: float) -> float:
    """w L^2/(384 EI) (5 L^2 - 24 a^2), by superposition of the ends' moments w a^2/2."""
    return LOAD * SPAN**2 / (384 * EI) * (5 * SPAN**2 - 24 * out**2)


def _tip(out: float) -> float:
    """w a/(24 EI) (3 a^3 + 6 a^2 L - L^3): below zero where the span's sag lifts it."""
    return LOAD * out / (24 * EI) * (3 * out**3 + 6 * out**2 * SPAN - SPAN**3)


@pytest.mark.parametrize("out", [25.0, 30.0, 60.0, 150.0, 300.0])
def test_ends_that_rise_do_not_sag_and_the_middle_counts(out: float) -> None:
    assert _tip(out) < 0
    found = _sag(_bench(out))
    assert found.figure == pytest.approx(_middle(out))
    assert found.limit == pytest.approx(SPAN / 200)
    assert "the span is 1000 mm" in found.notes[0]
    (line,) = sag_lines(_bench(out))
    assert (line.sag, line.limit) == (found.figure, found.limit)
    assert line.at == pytest.approx(SPAN / 2)


def test_a_bench_that_holds_still_holds_with_its_ends_reaching_out() -> None:
    held = {out: list(sagging(_bench(out, limit=400))) for out in (25.0, 40.0)}
    assert held == {25.0: [], 40.0: []}


def test_an_end_that_goes_down_is_held_to_a_span_of_twice_its_length() -> None:
    out = 480.0
    found = _sag(_bench(out))
    assert _tip(out) / (2 * out) > _middle(out) / SPAN
    assert found.figure == pytest.approx(_tip(out))
    assert found.limit == pytest.approx(2 * out / 200)
    assert "it reaches 480 mm past the last" in found.notes[0]
    (told,) = sagging(_bench(out, limit=500))
    assert "(twice its overhang/500) is the limit" in told.message
