"""One plain shelf: span, load and thickness are each other's answers, and what closed forms say."""

from __future__ import annotations

from dataclasses import replace
from math import inf

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rodwright.strength.span import (
    Carried,
    Plank,
    greatest_load,
    greatest_span,
    least_thickness,
    trial,
)

BARE = Plank(300.0, 18.0, 9000.0)
INERTIA = 300.0 * 18.0**3 / 12


def test_span_by_the_closed_form() -> None:
    row = 0.3
    expected = (384 * 9000.0 * INERTIA / (5 * row * 200)) ** (1 / 3)
    assert greatest_span(BARE, Carried(row=row), 200) == pytest.approx(expected, rel=1e-6)
    fixed = replace(BARE, turning=inf)
    wider = (384 * 9000.0 * INERTIA / (row * 200)) ** (1 / 3)
    assert greatest_span(fixed, Carried(row=row), 200) == pytest.approx(wider, rel=1e-6)


def test_ways_to_say_a_load() -> None:
    by_row = trial(BARE, Carried(row=0.3), 900.0, 200)
    assert trial(BARE, Carried(spread=0.001), 900.0, 200).sag == pytest.approx(by_row.sag)
    assert trial(BARE, Carried(whole=270.0), 900.0, 200).sag == pytest.approx(by_row.sag)
    standing = trial(BARE, Carried(standing=270.0), 900.0, 200)
    assert standing.sag == pytest.approx(270.0 * 900**3 / 48 / 9000 / INERTIA)
    assert standing.carried == pytest.approx(by_row.carried) == pytest.approx(270.0)


def test_creep_by_hand() -> None:
    """Own weight lasts whole, what is stored by 0.8 (EN 1990, category E)."""
    creeping = replace(BARE, creep=0.8, weight=1.2e-4)
    found = trial(creeping, Carried(row=0.3), 900.0, 200)
    own, stored = 1.2e-4 * 300, 0.3
    at_once = 5 * (own + stored) * 900**4 / 384 / 9000 / INERTIA
    assert found.at_once == pytest.approx(at_once)
    share = (own + 0.8 * stored) / (own + stored)
    assert found.sag == pytest.approx(at_once * (1 + 0.8 * share))


def test_shear_gives_too() -> None:
    found = trial(replace(BARE, shear=60.0), Carried(row=0.3), 900.0, 200)
    bending = 5 * 0.3 * 900**4 / 384 / 9000 / INERTIA
    assert found.sag == pytest.approx(bending * (1 + 0.96 * (9000 / 60) * (18 / 900) ** 2))


def test_strength_governs_what_is_weak() -> None:
    weak = replace(BARE, strength=2.0, weight=1e-4)
    span = greatest_span(weak, Carried(row=0.3), 200)
    assert span is not None
    found = trial(weak, Carried(row=0.3), span, 200)
    assert found.governs == "bending strength"
    load = 1.35 * 1e-4 * 300 + 1.5 * 0.3
    assert found.stress == pytest.approx(0.75 * load * span**2 / 300 / 18**2)
    assert found.stress == pytest.approx(2.0, rel=1e-6)
    assert trial(BARE, Carried(row=0.3), span, 200).governs == "sag"


def test_no_end_and_no_hope() -> None:
    assert greatest_span(BARE, Carried(row=1e-9), 200) is None
    assert greatest_load(replace(BARE, weight=1.0), 2000.0, 200) is None
    assert least_thickness(lambda _: None, Carried(row=0.3), 900.0, 200) is None


@settings(max_examples=25)
@given(
    depth=st.floats(100, 600),
    thickness=st.floats(10, 45),
    modulus=st.floats(1500, 15000),
    row=st.floats(0.05, 1.0),
    creep=st.floats(0, 2.25),
    turning=st.sampled_from([0.0, 1e6, inf]),
)
def test_each_answer_is_the_others_question(
    depth: float, thickness: float, modulus: float, row: float, creep: float, turning: float
) -> None:
    plank = Plank(depth, thickness, modulus, 60.0, turning, 7e-6 * thickness, creep, 10.0)
    span = greatest_span(plank, Carried(row=row), 200)
    assert span is not None
    assert greatest_load(plank, span, 200) == pytest.approx(row, rel=1e-4)

    def planed(thick: float) -> Plank:
        return replace(plank, thickness=thick, weight=7e-6 * thick)

    least = least_thickness(planed, Carried(row=row), span, 200)
    assert least == pytest.approx(thickness, rel=1e-4)
