from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon

from kit.planes import BELLIED, CORNERS, STRAIGHT, outline
from rodwright.opening.gaps import (
    Standing,
    fixing_points,
    gap_at,
    gap_map,
    packers,
    packing,
)
from rodwright.unit import OpeningPlane, OpeningShape, Quadrilateral

SIZE = (1193.0, 1993.0)
STOCKED = (1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0)
SHAPE = OpeningShape(STRAIGHT, None, 1190.0, 1990.0)


@pytest.mark.parametrize("side", ["left", "right", "top", "bottom"])
@pytest.mark.parametrize("share", [0.0, 0.3, 0.5, 0.8, 1.0])
@pytest.mark.parametrize("plane", [STRAIGHT, BELLIED], ids=["straight", "bellied"])
def test_gaps_by_shapely(side: str, share: float, plane: OpeningPlane) -> None:
    """The distance along a level or plumb line from the unit's side to the opening's outline."""
    upright = side in ("left", "right")
    at = share * SIZE[1 if upright else 0]
    start, end = {
        "left": ((0.0, at), (-99.0, at)),
        "right": ((SIZE[0], at), (SIZE[0] + 99.0, at)),
        "top": ((at, SIZE[1]), (at, SIZE[1] + 99.0)),
        "bottom": ((at, 0.0), (at, -99.0)),
    }[side]
    met = LineString([start, end]).intersection(Polygon(outline(plane)).exterior)
    assert gap_at(plane, SIZE, side, at) == pytest.approx(met.distance(Point(start)), abs=1e-9)


def test_the_map_goes_all_round_every_plane() -> None:
    shape = OpeningShape(STRAIGHT, STRAIGHT, 1190.0, 1990.0)
    found = gap_map(shape, SIZE)
    assert len(found) == 2 * 4 * 3
    assert {(each.side, each.plane) for each in found} == {
        (side, plane) for side in ("left", "right", "top", "bottom") for plane in ("front", "rear")
    }


@settings(max_examples=200)
@given(st.floats(0, 60))
def test_packers_come_within_half_a_step(gap: float) -> None:
    """Sizes up to 6 mm are 1 mm apart, those above 2 mm, so half of that is left at most."""
    chosen = packers(gap, STOCKED)
    assert abs(gap - sum(chosen)) <= 1.0 + 1e-9
    if gap <= 6.5:
        assert len(chosen) <= 1
        assert abs(gap - sum(chosen)) <= 0.5 + 1e-9
    assert set(chosen) <= set(STOCKED)


def test_a_schedule() -> None:
    found = packing(SHAPE, SIZE, STOCKED, 500.0)
    left = [each for each in found if each.gap.side == "left"]
    assert [each.gap.at for each in left] == pytest.approx([100.0, 548.25, 996.5, 1444.75, 1893.0])
    assert [each.packers for each in left] == [(8.0,), (8.0,), (6.0,), (5.0,), (3.0,)]
    assert {each.gap.side for each in found} == {"left", "right", "bottom"}


@settings(max_examples=50)
@given(st.floats(50, 4000), st.floats(50, 900))
def test_fixing_points_are_no_further_apart_than_asked(length: float, spacing: float) -> None:
    points = fixing_points(length, spacing)
    assert points[0] == min(100.0, length / 4)
    assert points[-1] == pytest.approx(length - points[0])
    steps = [b - a for a, b in pairwise(points)]
    assert max(steps) <= spacing + 1e-6
    assert max(steps) == pytest.approx(min(steps))


def test_more_than_twenty_is_packed_from_a_batten() -> None:
    """Common practice, no source."""
    for out, by in ((20.0, "packers"), (20.1, "batten")):
        corners = ((-out, 0.0), CORNERS[1], CORNERS[2], (-out, 2001.0))
        shape = OpeningShape(OpeningPlane.straight(corners), None, 1190.0, 1990.0)
        found = packing(shape, SIZE, STOCKED, 500.0)
        left = [each for each in found if each.gap.side == "left"]
        assert {each.by for each in left} == {by}
        assert all(bool(each.packers) == (by == "packers") for each in left)


@pytest.mark.parametrize(
    ("levelling", "feet", "by"),
    [
        (0.0, False, "nothing"),
        (10.0, False, "packers"),
        (9.0, False, "nothing"),
        (10.0, True, "foot"),
        (9.0, True, "nothing"),
        (None, False, "packers"),
    ],
)
def test_what_a_base_follows(levelling: float | None, feet: bool, by: str) -> None:
    fallen: Quadrilateral = ((-3.0, -10.0), (1197.0, 0.0), (1199.0, 2003.0), (-3.0, 2001.0))
    shape = OpeningShape(OpeningPlane.straight(fallen), None, 1190.0, 1990.0)
    stands = Standing((0.0, 1193.0), feet, levelling)
    found = packing(shape, SIZE, STOCKED, 500.0, stands)
    low, high = [each for each in found if each.gap.side == "bottom"]
    assert low.gap.gap == pytest.approx(9.975, abs=0.01)
    assert low.by == by
    assert high.by == ("foot" if feet else "packers")
    assert bool(low.packers) == (by == "packers")
