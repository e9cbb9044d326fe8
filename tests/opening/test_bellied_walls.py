"""A wall is the line through its readings."""

from __future__ import annotations

import random
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from scipy.optimize import least_squares
from shapely import LineString, Point, Polygon

from kit.planes import outline
from kit.quadrilaterals import quadrilateral, read
from rodwright.opening.adjustment import SIGMAS
from rodwright.opening.bends import bends_of
from rodwright.opening.closings import closings
from rodwright.opening.gaps import gap_along, gap_at
from rodwright.opening.outlines import outlines, spread_out
from rodwright.opening.readings import BOW_ERROR, Reading
from rodwright.opening.survey import Survey, measure, usable_opening, with_shape
from rodwright.problems import Problems
from rodwright.unit import OpeningShape
from rodwright.wishes.opening import FitSpec, OpeningSpec

FIT = FitSpec()
HEIGHT = 2000.0
BELLIED: dict[str, Any] = {
    "width": {
        "bottom": 1013.0,
        "middle": 1001.0,
        "top": 1012.0,
        "others": [{"at": 500.0, "width": 1006.0}, {"at": 1500.0, "width": 1005.0}],
    },
    "height": HEIGHT,
}
READ_AT = ((0.0, 1013.0), (500.0, 1006.0), (1000.0, 1001.0), (1500.0, 1005.0), (2000.0, 1012.0))


def _survey(readings: dict[str, Any]) -> Survey:
    problems = Problems()
    found = measure(OpeningSpec.model_validate(readings), problems)
    problems.raise_if_any()
    assert found is not None
    return found


def _stood(readings: dict[str, Any]) -> tuple[OpeningShape, tuple[float, float]]:
    survey = _survey(readings)
    opening = usable_opening(survey, FIT)
    size = opening.width - 2 * FIT.sides, opening.height - FIT.top
    shape = with_shape(opening, survey, FIT, *size).shape
    assert shape is not None
    return shape, size


def test_the_gap_beside_the_unit_is_what_was_read() -> None:
    """Both gaps together are the width read less the unit's, by numpy's interpolation."""
    shape, size = _stood(BELLIED)
    assert size[0] == 994.0
    for at in (0.0, 250.0, 500.0, 800.0, 1000.0, 1300.0, 1500.0, 1900.0):
        both = sum(gap_at(shape.front, size, side, at) for side in ("left", "right"))
        read_here = float(np.interp(at, *zip(*READ_AT, strict=True)))
        assert both == pytest.approx(read_here - 994.0, abs=0.1)
    # In the middle it stands midway between the bellies.
    assert gap_at(shape.front, size, "left", 1000.0) == pytest.approx(3.5, abs=0.01)


def test_either_wall_may_have_all_of_the_belly() -> None:
    """11.5 lacks in the middle: at the foot one side may have as little as 3.5 and the other all
    of the rest, while in the middle, where the unit is nearest both, far less is open."""
    shape, size = _stood(BELLIED)
    foot, middle = gap_along("front", shape, size, "left", (0.0, 1000.0))
    assert foot.gap == pytest.approx(9.5, abs=0.3)
    assert foot.most >= 13.0
    assert foot.gap - foot.error >= 3.0
    assert middle.error < 0.7 * foot.error


def test_the_largest_cut_follows_the_belly() -> None:
    shape, size = _stood(BELLIED)
    left, _, _ = closings(shape, size, {})
    assert left.strip == max(each.gap + each.error for each in left.gaps)
    assert left.cut > 6.0
    assert len(left.gaps) == 5


def test_a_wall_that_bellies_away_leaves_the_unit_as_it_was() -> None:
    hollow = {"bottom": 1001.0, "middle": 1011.0, "top": 1001.0}
    shape, size = _stood({"width": hollow, "height": HEIGHT})
    assert size[0] == pytest.approx(994.0, abs=0.5)
    assert gap_at(shape.front, size, "left", 1000.0) == pytest.approx(8.5, abs=0.2)


def test_heights_belly_too() -> None:
    heights = {"left": 2000.0, "middle": 1988.0, "right": 2000.0}
    shape, size = _stood({"width": 1000.0, "height": heights})
    middle = size[0] / 2
    both = sum(gap_at(shape.front, size, side, middle) for side in ("bottom", "top"))
    assert both == pytest.approx(1988.0 - size[1], abs=0.1)
    assert gap_at(shape.front, size, "bottom", middle) == pytest.approx(0.0, abs=0.05)
    assert gap_at(shape.front, size, "bottom", 0.0) == pytest.approx(6.0, abs=0.2)


def test_the_rear_bellies_by_its_own_readings() -> None:
    rear = {"bottom": 1012.0, "middle": 1003.0, "top": 1012.0}
    readings = {"width": 1013.0, "height": HEIGHT, "depth": 300.0, "back": {"width": rear}}
    shape, size = _stood(readings)
    assert shape.rear is not None
    both = sum(gap_at(shape.rear, size, side, 1000.0) for side in ("left", "right"))
    assert both == pytest.approx(1003.0 - size[0], abs=0.3)


def test_the_unit_stands_clear_by_shapely() -> None:
    shape, size = _stood(BELLIED)
    ring = Polygon(outline(shape.front))
    assert ring.is_valid
    for at in np.linspace(10.0, size[1] - 10.0, 25):
        met = LineString([(0.0, at), (-99.0, at)]).intersection(ring.exterior)
        assert gap_at(shape.front, size, "left", at) == pytest.approx(
            met.distance(Point(0.0, at)), abs=1e-6
        )


def test_a_slip_alone_is_refused_and_a_belly_read_three_times_is_not() -> None:
    """By 30 mm: one reading in the middle may be a slip; with others that say so, walls belly."""
    alone = {"bottom": 1012.0, "middle": 982.0, "top": 1012.0}
    problems = Problems()
    assert measure(OpeningSpec.model_validate({"width": alone, "height": HEIGHT}), problems) is None
    (problem,) = problems.error().problems
    assert problem.where == ("opening", "width", "middle")
    assert "read it above and below as well" in problem.remedy
    others = [{"at": 500.0, "width": 990.0}, {"at": 1500.0, "width": 989.0}]
    survey = _survey({"width": alone | {"others": others}, "height": HEIGHT})
    assert survey.rectangle.width == pytest.approx(982.0, abs=0.5)


@pytest.mark.parametrize("seed", range(4))
def test_the_straight_lines_are_those_of_scipy_with_bellies_as_unknowns(seed: int) -> None:
    """Corners and their errors, by scipy's least squares with one more unknown for every reading
    between the corners: a belly that is 0 but for its bow.  Eliminating it is what a larger error
    of the reading does (C. Ghilani, *Adjustment Computations*, on weighted parameters; from
    memory)."""
    chance = random.Random(seed)
    moves = tuple(chance.uniform(-6, 6) for _ in range(6))
    readings = read(quadrilateral(1200.0, 2000.0, moves))  # type: ignore[arg-type]
    readings["width"]["middle"] = 1190.0 + chance.uniform(-3, 3)
    readings["width"]["others"] = [{"at": 500.0, "width": 1193.0 + chance.uniform(-3, 3)}]
    readings["height"]["middle"] = 1999.0
    (plane,) = _survey(readings).planes
    bowed = [each for each in plane.readings if each.bow]
    assert max(each.bow for each in bowed) > 2 * BOW_ERROR

    def model(corners: Any, reading: Reading) -> float:
        points = np.vstack([[0.0, 0.0], np.reshape(corners, (3, 2))])
        (a, b, s), (c, d, t) = reading.first, reading.second
        span = (1 - t) * points[c] + t * points[d] - (1 - s) * points[a] - s * points[b]
        if reading.kind == "distance":
            return float(np.hypot(*span))
        return float(span[0] / span[1] if reading.kind == "plumb" else span[1] / span[0]) * (
            reading.over
        )

    def residuals(unknowns: Any) -> list[float]:
        bellies = dict(zip(map(id, bowed), unknowns[6:], strict=True))
        found = [
            SIGMAS * (model(unknowns[:6], r) - bellies.get(id(r), 0.0) - r.value) / r.tape
            for r in plane.readings
        ]
        return found + [SIGMAS * bellies[id(r)] / r.bow for r in bowed]

    start = [1200.0, 0.0, 1200.0, 2000.0, 0.0, 2000.0, *(0.0 for _ in bowed)]
    other = least_squares(residuals, start, jac="3-point", xtol=1e-14, ftol=1e-14, gtol=1e-14)
    assert np.ravel(plane.corners)[2:] == pytest.approx(other.x[:6], abs=1e-3)
    covariance = np.linalg.inv(other.jac.T @ other.jac)[:6, :6]
    assert np.array(plane.covariance) / plane.looseness**2 == pytest.approx(
        covariance, rel=1e-2, abs=1e-3
    )
    # The lines go through the readings, so a bend is all that the straight lines leave of one.
    bends = bends_of(plane)
    assert [bend.share for bend in bends.walls] == pytest.approx([0.25, 0.5], abs=0.01)
    for bend in bends.walls:
        (reading,) = [
            each for each in bowed if each.first[2] == bend.share and "width" in each.name
        ]
        assert bend.inwards == pytest.approx(model(other.x[:6], reading) - reading.value, abs=1e-3)


def test_shapes_are_spread_as_the_covariance_has_it() -> None:
    """Of the shapes that are looked at, by numpy: mean, covariance, and no trend between them."""
    drawn = spread_out(600, 20)
    assert drawn[0] == pytest.approx(np.zeros(20))
    rest = drawn[1:]
    assert np.abs(rest.mean(axis=0)).max() < 0.06
    assert rest.std(axis=0) == pytest.approx(np.ones(20), abs=0.06)
    assert np.abs(np.corrcoef(rest.T) - np.eye(20)).max() < 0.2
    survey = _survey(read(quadrilateral(1200.0, 2000.0, (0.0,) * 6)))
    (shape,) = outlines(survey.planes, survey.bends, 0.0)
    right = shape["right"][1:, -1, :]
    covariance = np.array(survey.planes[0].covariance)[2:4, 2:4]
    found = np.cov(right[:, 1], right[:, 0])
    assert found == pytest.approx(covariance, abs=0.12 * covariance.max())


def test_lines_begin_and_end_at_the_corners() -> None:
    shape, _ = _stood(BELLIED)
    plane = shape.front
    a, b, c, d = plane.corners
    for side, ends in (("left", (a, d)), ("right", (b, c))):
        line = plane.line(side)
        assert [(p.across, p.along) for p in (line[0], line[-1])] == list(ends)
        assert all(low.along < high.along for low, high in pairwise(line))
    assert [(p.along, p.across) for p in (plane.bottom[0], plane.bottom[-1])] == [a, b]
    assert [(p.along, p.across) for p in (plane.top[0], plane.top[-1])] == [d, c]
