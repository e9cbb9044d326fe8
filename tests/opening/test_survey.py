from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Polygon, box

from kit.quadrilaterals import quadrilateral, read
from rodwright.opening.survey import Survey, measure, usable_opening, with_shape
from rodwright.problems import Problems
from rodwright.unit import Opening
from rodwright.wishes.opening import FitSpec, OpeningSpec


def _measure(readings: dict[str, Any]) -> Survey:
    problems = Problems()
    found = measure(OpeningSpec.model_validate(readings), problems)
    problems.raise_if_any()
    assert found is not None
    return found


def _usable(readings: dict[str, Any], **fit: float) -> Opening:
    return usable_opening(_measure(readings), FitSpec.model_validate(fit))


def test_the_tightest_reading_counts() -> None:
    readings = {"width": {"bottom": 900, "top": 890}, "height": {"left": 2000, "right": 1990}}
    opening = _usable(readings | {"depth": {"left": 300, "middle": 290}})
    assert (opening.width, opening.height, opening.depth) == (890.0, 1990.0, 290.0)


def test_a_reading_elsewhere_counts_too() -> None:
    others = {"bottom": 900.0, "top": 900.0, "others": [{"at": 1500.0, "width": 888.0}]}
    assert _usable({"width": others, "height": 2000.0}).width == 888.0


def test_the_rear_counts_too() -> None:
    readings = {"width": 900.0, "height": 2000.0, "depth": 300.0}
    rear = {"back": {"width": 893.0, "height": 1985.0}}
    opening = _usable(readings | rear)
    assert (opening.width, opening.height) == (893.0, 1985.0)


@settings(max_examples=40)
@given(st.tuples(*[st.floats(-6, 6)] * 6), st.floats(1000, 3000), st.floats(1000, 2600))
def test_the_unit_goes_into_the_true_opening(moves: Any, width: float, height: float) -> None:
    """By shapely: with every reading exact, the unit in its place crosses nothing."""
    corners = quadrilateral(width, height, moves)
    survey, fit = _measure(read(corners)), FitSpec()
    opening = usable_opening(survey, fit)
    size = opening.width - 2 * fit.sides, opening.height - fit.top
    shape = with_shape(opening, survey, fit, *size).shape
    assert shape is not None
    drawn = Polygon(shape.front.corners)
    assert drawn.buffer(0.01).covers(box(0.0, 0.0, *size))
    assert size[0] <= shape.least_width + 1e-6
    assert size[1] <= shape.least_height + 1e-6


def test_gaps_asked_for_are_kept_and_the_worst_case_goes_in() -> None:
    """A unit without gaps is made as small as the readings may turn out; one with wide gaps
    already is."""
    readings = {"width": 1200.0, "height": 2400.0}
    survey = _measure(readings)
    assert survey.least[0] < 1195.0
    tight = _usable(readings, sides=0.0, top=0.0)
    assert tight.width == pytest.approx(survey.least[0], abs=0.5)
    assert tight.width <= survey.least[0]
    assert _usable(readings, sides=6.0, top=10.0).width == 1200.0


def test_more_readings_let_a_unit_be_larger() -> None:
    full = read(quadrilateral(1200.0, 2400.0, (0.0,) * 6))
    few = {"width": 1200.0, "height": 2400.0}
    assert _measure(full).least[0] > _measure(few).least[0] + 2.0


def test_a_unit_stands_on_the_high_spot_of_the_floor() -> None:
    readings = {
        "width": 1000.0,
        "height": 2000.0,
        "level": {"floor": {"out": 6.0, "over": 1000.0, "rises": "right"}},
    }
    survey = _measure(readings)
    shape = with_shape(usable_opening(survey, FitSpec()), survey, FitSpec(), 993.0, 1980.0).shape
    assert shape is not None
    (_, left), (_, right) = shape.front.corners[:2]
    assert left == pytest.approx(-6.0, abs=0.6)
    assert 0.0 <= right < 0.1
