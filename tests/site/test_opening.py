from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon, box

from rodwright.problems import Problems, ProblemsError
from rodwright.site.opening import tightest
from rodwright.spec.models import OpeningSpec


def _tightest(**readings: object) -> tuple[float, float, float | None]:
    problems = Problems()
    opening = tightest(OpeningSpec.model_validate(readings), problems)
    problems.raise_if_any()
    return opening.width, opening.height, opening.depth


def test_the_tightest_reading_counts() -> None:
    readings = {"width": {"bottom": 900, "top": 890}, "height": {"left": 2000, "right": 1990}}
    assert _tightest(**readings, depth={"left": 300, "middle": 290}) == (890.0, 1990.0, 290.0)


@settings(max_examples=60, deadline=None)
@given(st.floats(800, 1500), st.floats(-20, 20), st.floats(-15, 15), st.floats(1800, 2500))
def test_plumb_width_of_a_leaning_opening(
    bottom: float, taper: float, lean: float, height: float
) -> None:
    """No wider plumb strip lies in the quadrilateral, by shapely; at most the tape's 0.5 mm off."""
    top = bottom + taper
    shape = Polygon([(0, 0), (bottom, 0), (lean + top, height), (lean, height)])
    readings = {
        "width": {"bottom": bottom, "top": top},
        "height": height,
        "diagonals": {
            "rising": math.hypot(lean + top, height),
            "falling": math.hypot(bottom - lean, height),
        },
    }
    width, _, _ = _tightest(**readings)
    left = max(0.0, lean)
    assert shape.buffer(1e-6).contains(box(left, 0, left + width, height))
    assert not shape.contains(box(left - 0.01, 0, left + width + 0.51, height))


@pytest.mark.parametrize(
    "readings",
    [
        {"width": {}, "height": 2000},
        {"width": {"bottom": 900, "top": 90}, "height": 2000},
        {"width": 900, "height": 2000, "diagonals": {"rising": 1000, "falling": 2190}},
    ],
)
def test_readings_that_cannot_be(readings: dict[str, object]) -> None:
    with pytest.raises(ProblemsError):
        _tightest(**readings)
