from __future__ import annotations

import math
import random
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import least_squares

from kit.quadrilaterals import quadrilateral, read
from rodwright.opening.adjustment import SIGMAS, Plane
from rodwright.opening.doubts import Doubt
from rodwright.opening.readings import EDGES, Reading
from rodwright.opening.survey import measure, solved_planes
from rodwright.problems import Problems
from rodwright.unit import Quadrilateral
from rodwright.wishes.opening import OpeningSpec


def _plane(readings: dict[str, Any], which: int = 0) -> Plane:
    problems = Problems()
    found = solved_planes(OpeningSpec.model_validate(readings), problems)
    problems.raise_if_any()
    assert found is not None
    return found[0][which]


def _problems(readings: dict[str, Any]) -> list[tuple[str, str, str]]:
    problems = Problems()
    measure(OpeningSpec.model_validate(readings), problems)
    return [
        (".".join(map(str, each.where)), each.message, each.remedy)
        for each in problems.error().problems
    ]


def _doubts(readings: dict[str, Any]) -> tuple[Doubt, ...]:
    found = solved_planes(OpeningSpec.model_validate(readings), Problems())
    assert found is not None
    return found[1]


MOVES = st.tuples(*[st.floats(-8, 8)] * 6)


def _scipy(plane: Plane) -> Any:
    """The same readings by scipy's least_squares, written out anew."""

    def model(corners: Any, reading: Reading) -> float:
        points = np.vstack([[0.0, 0.0], np.reshape(corners, (3, 2))])
        (a, b, s), (c, d, t) = reading.first, reading.second
        span = (1 - t) * points[c] + t * points[d] - (1 - s) * points[a] - s * points[b]
        if reading.kind == "distance":
            return float(np.hypot(*span))
        return float(span[0] / span[1] if reading.kind == "plumb" else span[1] / span[0]) * (
            reading.over
        )

    def residuals(corners: Any) -> list[float]:
        return [SIGMAS * (model(corners, r) - r.value) / r.error for r in plane.readings]

    start = [1000.0, 0.0, 1000.0, 2000.0, 0.0, 2000.0]
    return least_squares(residuals, start, jac="3-point", xtol=1e-14, ftol=1e-14, gtol=1e-14)


@settings(max_examples=25)
@given(st.floats(1000, 3000), st.floats(1000, 2600), MOVES, st.integers(0, 999))
def test_corners_and_their_errors_are_those_of_scipy(
    width: float, height: float, moves: Any, seed: int
) -> None:
    chance = random.Random(seed)
    names = ("bottom", "top", "left", "right", "rising", "falling", "plumb left", "level floor")
    noise = {name: chance.gauss(0.0, 0.5) for name in names}
    plane = _plane(read(quadrilateral(width, height, moves), noise))
    other = _scipy(plane)
    assert np.ravel(plane.corners)[2:] == pytest.approx(other.x, abs=1e-3)
    covariance = np.linalg.inv(other.jac.T @ other.jac)
    found = np.array(plane.covariance) / plane.looseness**2
    assert found == pytest.approx(covariance, rel=1e-2, abs=1e-3)
    assert plane.misfit == pytest.approx(2 * other.cost, rel=1e-6, abs=1e-9)


@settings(max_examples=30)
@given(st.floats(1000, 3000), st.floats(1000, 2600), MOVES)
def test_exact_readings_give_the_opening_back(width: float, height: float, moves: Any) -> None:
    """What the assumptions pull away from the truth stays within the errors they leave."""
    corners = quadrilateral(width, height, moves)
    plane = _plane(read(corners))
    for found, true, errors in zip(plane.corners, corners, plane.corner_errors, strict=True):
        for a, b, error in zip(found, true, errors, strict=True):
            assert abs(a - b) <= error + 0.05


def test_errors_hold_nineteen_times_in_twenty() -> None:
    """A hundred and twenty surveys of one opening; readings err by half a millimetre (sigma)."""
    chance = random.Random(4)
    corners = quadrilateral(1200.0, 2000.0, (3.0, 1.0, -2.0, 2.0, 3.0, -1.0))
    names = ["bottom", "top", "left", "right", "rising", "falling"]
    names += ["plumb left", "plumb right", "level floor", "level top"]
    inside = total = 0
    for _ in range(120):
        plane = _plane(read(corners, {name: chance.gauss(0.0, 0.5) for name in names}))
        for found, true, errors in zip(
            plane.corners[1:], corners[1:], plane.corner_errors[1:], strict=True
        ):
            inside += sum(
                abs(a - b) <= error for a, b, error in zip(found, true, errors, strict=True)
            )
            total += 2
    assert 0.92 < inside / total <= 1.0


def test_fewer_readings_leave_larger_errors() -> None:
    full = read(quadrilateral(1200.0, 2000.0, (0.0,) * 6))
    errors = []
    for left_out in ((), ("plumb", "level"), ("plumb", "level", "diagonals")):
        kept = {key: value for key, value in full.items() if key not in left_out}
        errors.append(max(max(each) for each in _plane(kept).corner_errors))
    assert errors == sorted(errors)
    assert errors[2] > 1.5 * errors[0]


@pytest.mark.parametrize("name", ["rising", "falling"])
@pytest.mark.parametrize("error", [14.0, -14.0])
@pytest.mark.parametrize("levelled", [True, False])
def test_a_wrong_diagonal_is_named(name: str, error: float, levelled: bool) -> None:
    corners = quadrilateral(1216.0, 2030.0, (0.0, 2.0, 1.0, -1.0, 3.0, 1.0))
    readings = read(corners, {name: error})
    if not levelled:
        del readings["plumb"], readings["level"]
    ((where, message, remedy),) = _problems(readings)
    assert where == f"opening.diagonals.{name}"
    right = (
        math.dist(corners[0], corners[2]) if name == "rising" else math.dist(corners[3], corners[1])
    )
    told = float(message.rpartition("about ")[2].removesuffix(" mm"))
    assert told == pytest.approx(right, abs=4.0)
    assert remedy == f"Measure again: {name} diagonal."


@pytest.mark.parametrize(
    ("name", "where"),
    [
        ("bottom", "opening.width.bottom"),
        ("top", "opening.width.top"),
        ("left", "opening.height.left"),
        ("right", "opening.height.right"),
        ("plumb left", "opening.plumb.left"),
        ("level floor", "opening.level.floor"),
    ],
)
def test_any_wrong_reading_is_named(name: str, where: str) -> None:
    """Twenty millimetres off, with everything else read: found, if need be with its rivals."""
    corners = quadrilateral(1216.0, 2030.0, (0.0, 2.0, 1.0, -1.0, 3.0, 1.0))
    ((found, _, remedy),) = _problems(read(corners, {name: 20.0}))
    what = where.removeprefix("opening.").replace("level.floor", "level of the floor")
    what = what.replace("plumb.left", "plumb of the left wall").replace(".", " ")
    assert found == where or what in remedy


@settings(max_examples=30)
@given(MOVES, st.randoms(use_true_random=False))
def test_good_readings_are_not_doubted(moves: Any, chance: random.Random) -> None:
    """Within what a tape errs at most, however far out of square the opening is."""
    names = ["bottom", "top", "left", "right", "rising", "falling"]
    names += ["plumb left", "plumb right", "level floor", "level top"]
    noise = {name: chance.uniform(-0.8, 0.8) for name in names}
    problems = Problems()
    readings = read(quadrilateral(1200.0, 2000.0, moves), noise)
    measure(OpeningSpec.model_validate(readings), problems)
    problems.raise_if_any()


def test_small_contradictions_widen_the_errors() -> None:
    """Three millimetres on a diagonal: no reason to measure again, but to be less sure."""
    corners = quadrilateral(1200.0, 2000.0, (0.0,) * 6)
    good, loose = (_plane(read(corners, error)) for error in ({}, {"rising": 3.0}))
    assert good.looseness == 1.0
    assert loose.looseness > 1.2
    assert max(loose.corner_errors)[0] > 1.2 * max(good.corner_errors)[0]
    assert not _doubts(read(corners, {"rising": 3.0}))


def test_a_wall_far_out_of_plumb_is_believed() -> None:
    readings = {
        "width": 900.0,
        "height": 2000.0,
        "plumb": {"left": {"out": 18.0, "over": 1800.0, "leans": "in"}},
    }
    plane = _plane(readings)
    assert plane.corners[3][0] == pytest.approx(20.0, abs=1.5)


def test_readings_that_contradict_each_other_everywhere() -> None:
    corners = quadrilateral(1216.0, 2030.0, (0.0,) * 6)
    ((where, message, remedy),) = _problems(
        read(corners, {"rising": 40.0, "bottom": -60.0, "left": 50.0, "level floor": 30.0})
    )
    assert where == "opening"
    assert "no single one explains it" in message
    assert remedy == "Measure them all again."


def test_the_rear_is_taken_as_the_front_where_it_is_not_read() -> None:
    readings = read(quadrilateral(1200.0, 2000.0, (0.0, 0.0, 4.0, 0.0, 4.0, 0.0)))
    front, rear = (_plane(readings | {"back": {"width": 1190.0}}, which) for which in (0, 1))
    assert rear.name == "rear"
    assert math.dist(rear.corners[0], rear.corners[3]) == pytest.approx(
        math.dist(front.corners[0], front.corners[3]), abs=0.5
    )
    assert math.dist(rear.corners[0], rear.corners[1]) == pytest.approx(1190.0, abs=3.0)


@pytest.mark.parametrize(
    ("readings", "where", "message", "remedy"),
    [
        ({"width": {}, "height": 2000.0}, "opening.width", "no reading", "at least one"),
        (
            {"width": {"bottom": 1216.0, "middle": 121.4, "top": 1209.0}, "height": 2000.0},
            "opening.width.middle", "can't be of one opening", "in cm",
        ),
        (
            {"width": 900.0, "height": {"left": 2000.0, "right": 78.7}},
            "opening.height", "can't be of one opening", "in in",
        ),
        (
            {"width": 900.0, "height": 2000.0, "diagonals": {"rising": 219.3, "falling": 2193.0}},
            "opening.diagonals.rising", "doesn't belong", "in cm",
        ),
        (
            {"width": 900.0, "height": 2000.0, "diagonals": {"rising": 1700.0, "falling": 2193.0}},
            "opening.diagonals.rising", "doesn't belong", "corner to corner",
        ),
        (
            {"width": 900.0, "height": 2000.0,
             "plumb": {"left": {"out": 1800.0, "over": 6.0, "leans": "in"}}},
            "opening.plumb.left", "too steep", "swapped",
        ),
        (
            {"width": 900.0, "height": 2000.0,
             "level": {"floor": {"out": 3.0, "over": 1800.0, "rises": "left"}}},
            "opening.level.floor", "more than the 900 mm there is", "length of the level",
        ),
        (
            {"width": {"middle": 900.0, "others": [{"at": 2500.0, "width": 901.0}]},
             "height": 2000.0},
            "opening.width.others.0.at", "outside an opening", "from the floor",
        ),
        (
            {"width": 900.0, "height": 2000.0, "depth": {"left": 300.0, "right": 30.0}},
            "opening.depth", "can't be of one opening", "another unit",
        ),
    ],
)  # fmt: skip
def test_readings_that_cannot_be(
    readings: dict[str, Any], where: str, message: str, remedy: str
) -> None:
    ((found, told, advised),) = _problems(readings)
    assert found == where
    assert message in told
    assert remedy in advised


def test_edges_run_from_below_and_from_the_left() -> None:
    square: Quadrilateral = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
    for a, b in EDGES.values():
        assert square[b][0] >= square[a][0]
        assert square[b][1] >= square[a][1]


def test_exchanged_diagonals_are_named_beside_a_good_reading_that_they_blame() -> None:
    # The top is 8 to the right of the floor: the rising diagonal is the longer one.
    true = read(quadrilateral(1216.0, 2300.0, (0.0, 0.0, 8.0, 0.0, 8.0, 0.0)))
    diagonals = true["diagonals"]
    exchanged = true | {
        "diagonals": {"rising": diagonals["falling"], "falling": diagonals["rising"]}
    }
    assert not _doubts(true)
    ((_, message, remedy),) = _problems(exchanged)
    assert message.endswith(", or the diagonals are exchanged")
    assert "from the bottom left corner" in remedy


def test_diagonals_whose_exchange_mends_nothing_are_not_said_to_be_exchanged() -> None:
    corners = quadrilateral(1200.0, 2000.0, (0.0,) * 6)
    ((_, message, _),) = _problems(read(corners, {"rising": 40.0}))
    assert "exchanged" not in message
