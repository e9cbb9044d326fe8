"""Convex bodies between planes: their corners, told apart by scipy's half-space intersection."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.spatial import HalfspaceIntersection

from rodwright.geometry import Box, Vector, along, dot, times
from rodwright.geometry.halfspaces import beyond, box_planes, moved, patch, turned, vertices

BOX = Box((-30.0, -20.0, -10.0), (30.0, 20.0, 10.0))
WAY = st.tuples(*[st.floats(-1.0, 1.0)] * 3).filter(lambda way: dot(way, way) > 0.1)
UNIT = WAY.map(lambda way: times(way, dot(way, way) ** -0.5))
REACH = st.floats(2.0, 40.0)


def test_a_box_has_its_corners() -> None:
    found = vertices(box_planes(BOX))
    assert set(found) == set(BOX.corners())
    assert patch(found) == BOX.centre


@given(st.lists(st.tuples(UNIT, REACH), max_size=4))
def test_planes_leave_the_body_that_scipy_finds(cuts: list[tuple[Vector, float]]) -> None:
    planes = [*box_planes(BOX), *((times(way, reach), way) for way, reach in cuts)]
    rows = [[*normal, -dot(at, normal)] for at, normal in planes]
    known = HalfspaceIntersection(np.array(rows), np.zeros(3)).intersections
    assume(np.isfinite(known).all())
    found = np.array(vertices(planes))
    assert found.min(axis=0) == pytest.approx(known.min(axis=0), abs=1e-5)
    assert found.max(axis=0) == pytest.approx(known.max(axis=0), abs=1e-5)


@given(UNIT, REACH, st.floats(-20.0, 20.0))
def test_a_plane_moved_is_farther_by_that(way: Vector, reach: float, by: float) -> None:
    plane = (times(way, reach), way)
    origin = (0.0, 0.0, 0.0)
    assert beyond(plane, origin) == pytest.approx(-reach)
    assert beyond(moved(plane, by), origin) == pytest.approx(-reach - by)
    assert beyond(turned(plane), origin) == pytest.approx(reach)


def test_nothing_is_left_beyond_a_box() -> None:
    assert vertices([*box_planes(BOX), ((-31.0, 0.0, 0.0), (1.0, 0.0, 0.0))]) == []


def test_bodies_that_touch_along_an_edge_share_no_patch() -> None:
    beside = BOX.moved((60.0, 40.0, 0.0))
    over = BOX.moved(along(2, 20.0))
    assert patch(vertices([*box_planes(BOX), *box_planes(beside)])) is None
    assert patch(vertices([*box_planes(BOX), *box_planes(over)])) == (0.0, 0.0, 10.0)
