"""The swing check against brute force: polygons turned step by step in shapely."""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import affinity

from rodwright.checks.sweeping import first_contact, overlap, rectangle, turned

LENGTH = st.floats(5, 400).map(lambda value: round(value, 1))
PLACE = st.floats(-400, 400).map(lambda value: round(value, 1))
RECTANGLE = st.builds(
    lambda x, y, width, depth: (x, y, x + width, y + depth), PLACE, PLACE, LENGTH, LENGTH
)
ANGLE = st.floats(5, 180).map(lambda value: round(value, 1))


@given(RECTANGLE, RECTANGLE, PLACE, PLACE, ANGLE, st.booleans())
def test_first_contact_is_where_stepping_finds_it(
    moving: tuple[float, ...],
    still: tuple[float, ...],
    x: float,
    y: float,
    angle: float,
    back: bool,
) -> None:
    angle = -angle if back else angle
    found = first_contact(rectangle(*moving), (x, y), angle, rectangle(*still))
    door, post = shapely.box(*moving), shapely.box(*still)

    def at(degrees: float) -> shapely.Geometry:
        return affinity.rotate(door, math.copysign(degrees, angle), origin=(x, y))

    if found == 0:
        assert door.distance(post) == 0
        return
    until = abs(angle) if found is None else found
    steps = [until * number / 90 for number in range(90)]
    assert all(at(step).intersection(post).area < 1e-6 for step in steps)
    if found is not None:
        assert at(found).distance(post) < 1e-6
    else:
        assert at(angle).intersection(post).area < 1e-6


@given(RECTANGLE, RECTANGLE, st.floats(0, 360))
def test_overlap_says_whether_they_are_apart(
    one: tuple[float, ...], other: tuple[float, ...], angle: float
) -> None:
    first = turned(rectangle(*one), (0.0, 0.0), angle)
    depth = overlap(first, rectangle(*other))
    shared = shapely.Polygon(first).intersection(shapely.box(*other)).area
    if abs(depth) > 1e-6:
        assert (depth > 0) == (shared > 0)


def test_contact_by_hand() -> None:
    """A door 400 x 18 hung at its front left corner, and a post whose near corner lies 10 to
    the left of that and 100 in front: the face meets it at a quarter turn and atan(10 / 100)."""
    door, post = rectangle(0, 0, 400, 18), rectangle(-60, -100, -10, 0)
    met = first_contact(door, (0.0, 0.0), -110.0, post)
    assert met == pytest.approx(90 + math.degrees(math.atan(0.1)))
    assert first_contact(door, (0.0, 0.0), -95.0, post) is None


def test_overlap_from_the_start() -> None:
    assert first_contact(rectangle(0, 0, 9, 9), (0.0, 0.0), 90.0, rectangle(1, 1, 2, 2)) == 0.0
